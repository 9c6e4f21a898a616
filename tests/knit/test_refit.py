"""Gauge, head and ease changed under new hats and old ones: what is said to move, and that one edit mends it."""

from dataclasses import replace
from itertools import pairwise
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from chartmaker.appraisal import appraise
from chartmaker.files.design_reading import read_design
from chartmaker.knit.answers import defaults_for
from chartmaker.knit.crown import FLAT, POINTED, Crown
from chartmaker.knit.crown_reading import crown_of
from chartmaker.knit.depth import depth_of
from chartmaker.knit.fit import CROWN, Help, fit
from chartmaker.knit.fit_crown import closest_without_crown, crown_help, with_crown_anew
from chartmaker.knit.fit_help import helps, helps_beside
from chartmaker.knit.moved import have_measurements_moved, moved
from chartmaker.knit.refit import cast_on, crown_puckers, refit
from chartmaker.knit.starter import started
from chartmaker.model.counts import rounds_not_meeting
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge
from chartmaker.model.hat import SHAPES, Fold
from chartmaker.model.units import IMPERIAL
from tests.knit.test_fit import hats_of_bands
from tests.strategies import designs

GAUGE = Gauge(stitches_per_10cm=30, rounds_per_10cm=34)
LOOSER = Gauge(stitches_per_10cm=26, rounds_per_10cm=30)
CAP = read_design(Path(__file__).parents[2] / "examples" / "lockside-cap.hat.toml")

TIMES_AT_132 = (
    "times round: 132 instead of 156 (edge, ridge), 33 instead of 39 (two-coloured rib), "
    "11 instead of 13 (rest, large motif)"
)


def new(shape: str = "cap", *, head_cm: float = 56) -> Design:
    return started(defaults_for(shape=shape, head_cm=head_cm, gauge=GAUGE))


def told_of(design: Design) -> set[str]:
    return {finding.check for finding in appraise(design).findings if finding.severity != "note"}


def help_of_the_crown(design: Design) -> Help:
    (found,) = [one for one in helps(design) if one.kind == CROWN]
    return found


@pytest.mark.parametrize("shape", SHAPES)
@pytest.mark.parametrize(
    "changes",
    [
        {"gauge": LOOSER},
        {"gauge": Gauge(stitches_per_10cm=36, rounds_per_10cm=40)},
        {"head_cm": 61.0},
        {"head_cm": 48.0},
        {"ease_percent": 0.0},
    ],
    ids=str,
)
def test_one_edit_fits_a_new_hat_to_another_gauge_head_or_ease(shape: str, changes: dict[str, object]) -> None:
    design = new(shape)
    if "gauge" in changes:
        other = replace(design, gauge=changes["gauge"])  # type: ignore[arg-type]
    else:
        other = replace(design, hat=replace(design.hat, **changes))  # type: ignore[arg-type]
    edit = refit(other)
    assert edit
    assert edit.text == "Fit the hat anew"
    fitted = edit.applied_to(other)
    assert not told_of(fitted) & {"circumference", "depth", "crown-pucker", "stitch-counts"}
    assert not rounds_not_meeting(fitted)
    assert refit(fitted) is None
    assert edit.inverse().applied_to(fitted) == other


def test_a_hat_that_fits_is_left_as_it_is() -> None:
    assert refit(new()) is None
    assert moved(new(), new()).sentences == ()


def test_what_is_drawn_is_not_cut_and_what_cannot_be_mended_is_said() -> None:
    """The cap's gauge of 22 × 26 makes it 29 cm deep; only rests of two rounds can give one."""
    coarse = replace(CAP, gauge=Gauge(stitches_per_10cm=22, rounds_per_10cm=26))
    found = moved(CAP, coarse)
    assert found.edit
    fitted = found.edit.applied_to(coarse)
    for old, now in zip(CAP.bands, fitted.bands, strict=True):
        if old.name != "rest":
            assert now.rounds == old.rounds
    assert "mend the patterns by hand" in found.sentences[-1]


def test_what_moves_is_told_with_both_measures() -> None:
    design = new()
    found = moved(design, replace(design, gauge=LOOSER))
    assert found.sentences == (
        "156 stitches are 60.0 cm round instead of 52.0 cm",
        "73 rounds are 24.3 cm deep instead of 21.5 cm",
        "cast on 132 instead of 156, 50.8 cm round",
        "6 rounds fewer in the crown",
        TIMES_AT_132,
    )


def test_what_moves_is_told_in_inches_where_those_are_shown() -> None:
    design = new()
    found = moved(design, replace(design, hat=replace(design.hat, head_cm=61)), IMPERIAL)
    assert found.sentences[0] == "head and ease ask for 21.85 in instead of 20.06 in"  # 61 and 56 cm, 9 % less, / 2.54


@pytest.mark.parametrize("title", ["", "another"])
def test_only_gauge_and_what_is_asked_of_the_hat_move_it(title: str) -> None:
    design = new()
    assert not have_measurements_moved(design, replace(design, title=title))
    assert have_measurements_moved(design, replace(design, gauge=LOOSER))
    assert have_measurements_moved(design, replace(design, hat=replace(design.hat, depth_cm=25)))


def test_a_crown_that_hinders_is_made_anew_for_the_count_that_the_bands_below_allow() -> None:
    """At 26 stitches 51 cm are 132.5; the crown of 6 times 26 allows 156 and 312, the motif of 12 every 12."""
    other = replace(new(), gauge=LOOSER)
    assert [candidate.stitches for candidate in fit(other).candidates][:2] == [156, 312]
    assert closest_without_crown(other) == 132
    one = help_of_the_crown(other)
    made = one.edit.applied_to(other)
    assert one.candidate.stitches == cast_on(made) == 132
    assert not rounds_not_meeting(made)
    assert not crown_puckers(made)
    assert one.text == "make the crown anew, round in 6 sections: then 132 can be cast on, 50.8 cm round"


def test_no_crown_is_offered_where_the_bands_below_allow_nothing_nearer() -> None:
    assert crown_help(CAP) is None
    assert helps_beside(new(), fit(new())) == ()


def test_a_hat_without_a_crown_is_fitted_by_its_bands_alone() -> None:
    design = new()
    open_top = replace(design, bands=design.bands[:-1], hat=replace(design.hat, head_cm=60))
    edit = refit(open_top)
    assert edit
    assert cast_on(edit.applied_to(open_top)) == 168
    assert not depth_of(edit.applied_to(open_top)).has_crown


def test_a_taper_is_made_anew_as_a_taper_with_its_lines_and_its_pace() -> None:
    """Two decreases every second round, as a stocking cap has them by a published pattern's note."""
    design = new("stocking")
    other = replace(design, gauge=LOOSER)
    edit = refit(other)
    assert edit
    taper = edit.after[-1]
    assert (taper.name, taper.times) == ("taper", 2)
    shaped = [place for place, line in enumerate(taper.rounds) if line.is_shaped]
    assert {later - earlier for earlier, later in pairwise(shaped)} == {2}
    assert help_of_the_crown(other).text.startswith("make the taper anew, decreasing in 2 lines")


@settings(max_examples=40)
@given(designs() | hats_of_bands(), st.sampled_from(SHAPES), st.sampled_from([None, Fold("up", 3)]))
def test_any_design_is_fitted_anew_without_breaking_more_than_it_had(
    design: Design, shape: str, fold: Fold | None
) -> None:
    design = replace(design, hat=replace(design.hat, shape=shape, fold=fold))
    assert isinstance(helps_beside(design, fit(design)), tuple)
    edit = moved(design, design).edit
    if edit:
        fitted = edit.applied_to(design)
        assert len(rounds_not_meeting(fitted)) <= len(rounds_not_meeting(design))
        assert edit.inverse().applied_to(fitted) == design


ELSEWHERE = [
    (shape, head_cm, counted)
    for shape in SHAPES
    for head_cm in (44, 50, 63)
    for counted in ((22, 26), (28, 32), (36, 40))
]


def elsewhere(shape: str, head_cm: float, counted: tuple[int, int]) -> Design:
    """Give a new hat whose head and gauge are others than it was made for."""
    gauge = Gauge(stitches_per_10cm=counted[0], rounds_per_10cm=counted[1])
    made = new(shape)
    return replace(made, gauge=gauge, hat=replace(made.hat, head_cm=head_cm))


@pytest.mark.parametrize(("shape", "head_cm", "counted"), ELSEWHERE)
def test_a_plain_round_that_helps_leaves_a_brim_that_holds_the_hat_on(shape, head_cm, counted):
    misfitting = elsewhere(shape, head_cm, counted)
    for design in (misfitting, fitted(misfitting)):
        for one in helps(design):
            after = one.edit.applied_to(design)
            brim = [band for band in after.bands if "p" in band.texture]
            round_cm = [band.stitches(0) * after.gauge.stitch_width_cm for band in brim]
            assert round_cm
            assert all(abs(cm - after.hat.wanted_cm) <= 1.5 for cm in round_cm), one.text


@pytest.mark.parametrize(("shape", "head_cm", "counted"), ELSEWHERE)
def test_a_hat_that_is_fitted_anew_fits_or_is_told_what_helps(shape, head_cm, counted):
    after = fitted(elsewhere(shape, head_cm, counted))
    if warned(after):
        mended = [one.edit.applied_to(after) for one in helps_beside(after, fit(after))]
        assert any(not warned(hat) for hat in mended)


@pytest.mark.parametrize("counted", [(22, 26), (28, 32), (30, 34), (32, 36), (36, 40)])
@pytest.mark.parametrize("made_at", [(22, 26), (28, 32), (36, 40)])
def test_a_tam_keeps_its_wheel_at_whatever_gauge_it_is_fitted_anew(made_at, counted):
    first, then = (Gauge(stitches_per_10cm=across, rounds_per_10cm=up) for across, up in (made_at, counted))
    design = replace(started(defaults_for(shape="tam", head_cm=56.11, gauge=first)), gauge=then)
    after = fitted(design)
    assert not warned(after)
    assert not crown_puckers(after)
    assert crown_of(after).profile == FLAT


def test_a_cone_keeps_its_slant_at_another_count():
    cap = started(replace(defaults_for(shape="cap", head_cm=56, gauge=GAUGE), crown=Crown(profile=POINTED, rounds=80)))
    made = with_crown_anew(cap, 132)
    # 80 rounds from 156 stitches are 68 from 132.
    assert len(made.bands[-1].rounds) == pytest.approx(80 * 132 / 156, abs=1)


def fitted(design: Design) -> Design:
    edit = refit(design)
    return edit.applied_to(design) if edit else design


def warned(design: Design) -> list[str]:
    return [found.message for found in appraise(design).findings if found.check == "circumference"]
