"""Rounds added and taken out: where they go, what is never touched, and that the hat still meets."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from chartmaker.knit.depth import depth_of
from chartmaker.knit.depth_edit import add_or_take_rounds, plain_runs, rounds_to_spare
from chartmaker.model.band import Band
from chartmaker.model.counts import rounds_not_meeting
from chartmaker.model.design import Design
from chartmaker.model.hat import Fold, Hat
from chartmaker.model.round import Round
from tests.knit.test_depth import GAUGE, cap, crown, plain
from tests.strategies import designs

MOTIF = Band(name="motif", times=36, rounds=(Round("AB", bytes([0, 1, 0, 1])), Round("AB", bytes([1, 0, 1, 0]))) * 6)


def patterned(*rests: int) -> Design:
    bands = [plain("rib", 10, texture="kkpp")]
    for rest in rests:
        bands += [plain("rest", rest), MOTIF]
    return Design(bands=(*bands, crown(28)), gauge=GAUGE)


def rounds_by_band(design: Design) -> list[int]:
    return [len(band.rounds) for band in design.bands]


def test_plain_rounds_of_the_body_are_worked_more_often() -> None:
    design = cap()
    edit = add_or_take_rounds(design, 7)
    assert edit
    assert edit.text == "Add 7 rounds"
    assert rounds_by_band(edit.applied_to(design)) == [10, 37, 28]
    assert edit.inverse().applied_to(edit.applied_to(design)) == design


def test_plain_rounds_of_the_body_are_worked_less_often() -> None:
    design = cap()
    edit = add_or_take_rounds(design, -1)
    assert edit
    assert edit.text == "Take out 1 round"
    assert rounds_by_band(edit.applied_to(design)) == [10, 29, 28]


def test_rounds_go_from_the_longest_rests_first_and_a_round_stays_between_motifs() -> None:
    design = patterned(5, 2, 3)
    assert rounds_to_spare(design) == 7
    edit = add_or_take_rounds(design, -5)
    assert edit
    after = edit.applied_to(design)
    assert rounds_by_band(after) == [10, 1, 12, 2, 12, 2, 12, 28]
    assert [band for band in after.bands if band.name == "motif"] == [MOTIF] * 3


def test_a_pattern_is_never_cut() -> None:
    with pytest.raises(ValueError, match="8 rounds should go, but only 7 plain ones between brim and crown can"):
        add_or_take_rounds(patterned(5, 2, 3), -8)


def test_a_body_that_is_all_pattern_gets_a_plain_band_below_the_crown() -> None:
    design = Design(bands=(plain("rib", 10, texture="kkpp"), MOTIF, crown(28)), gauge=GAUGE)
    assert rounds_to_spare(design) == 0
    edit = add_or_take_rounds(design, 4)
    assert edit
    after = edit.applied_to(design)
    assert rounds_by_band(after) == [10, 12, 4, 28]
    assert after.bands[2].rounds == (Round("A", bytes(4)),) * 4
    assert not rounds_not_meeting(after)


def test_a_hat_of_rib_grows_in_its_rib() -> None:
    design = Design(bands=(plain("rib", 50, texture="kkpp"), crown(28)), gauge=GAUGE)
    edit = add_or_take_rounds(design, 5)
    assert edit
    assert rounds_by_band(edit.applied_to(design)) == [55, 28]
    assert edit.applied_to(design).bands[0].texture == "kkpp"


def test_rounds_that_a_brim_lies_on_are_not_the_body_s_to_give() -> None:
    design = Design(
        bands=(plain("hem", 9), plain("ridge", 1, texture="p"), plain("body", 12), crown(28)),
        gauge=GAUGE,
        hat=Hat(fold=Fold("in", 9)),
    )
    assert [(run.band, run.first, run.rounds) for run in plain_runs(design)] == [(2, 8, 4)]


def test_too_many_rounds_are_refused_with_the_limit() -> None:
    with pytest.raises(ValueError, match="more than 600"):
        add_or_take_rounds(cap(), 600)


@settings(max_examples=40)
@given(designs(), st.integers(-30, 30))
def test_in_any_design_the_depth_changes_by_just_so_many_rounds_and_nothing_breaks(design: Design, rounds: int) -> None:
    design = replace(design, hat=replace(design.hat, fold=None))  # a fold may be deeper than the whole hat
    try:
        edit = add_or_take_rounds(design, rounds)
    except ValueError:
        return
    after = edit.applied_to(design) if edit else design
    assert depth_of(after).rounds == depth_of(design).rounds + rounds
    assert len(rounds_not_meeting(after)) <= len(rounds_not_meeting(design))
    kept = [line for _, line in after.rounds() if len(line.letters_in_use) > 1]
    assert kept == [line for _, line in design.rounds() if len(line.letters_in_use) > 1] or not plain_runs(design)
