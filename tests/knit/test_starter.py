import math
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import HealthCheck, assume, event, given, settings
from hypothesis import strategies as st
from hypothesis.strategies import DrawFn, composite

from chartmaker.appraisal import appraise
from chartmaker.files.design_reading import design_from_text
from chartmaker.files.design_writing import design_to_text
from chartmaker.files.palette_reading import read_palette
from chartmaker.knit.answers import Answers, defaults_for, usual_depth_cm
from chartmaker.knit.brims import BRIM_KINDS, Brim
from chartmaker.knit.crown import PROFILES, Crown
from chartmaker.knit.fit import TOLERANCE_CM
from chartmaker.knit.starter import counts_for, started
from chartmaker.knit.wedge import DECREASES
from chartmaker.model.counts import rounds_not_meeting
from chartmaker.model.gauge import Gauge
from chartmaker.model.hat import SHAPES, Fold
from tests.knit.test_written import assert_knits_as_charted

PALETTE = read_palette(Path(__file__).parents[2] / "palettes" / "allotment.palette.toml")
FINE = Gauge(stitches_per_10cm=30, rounds_per_10cm=34)
OF_LOTS = {"letter-without-lot", "yarn-short", "shade-basis", "round-contrast", "pair-contrast", "other-light"}
"""Checks that judge lots, not knitting."""


def worn_cm(design):
    folded = design.hat.fold.rounds if design.hat.fold else 0
    return (sum(len(band.rounds) for band in design.bands) - folded) * design.gauge.round_height_cm


def made_of(one):
    """What a refusal says, and the design that comes of answers that are not refused."""
    try:
        return "", started(one)
    except ValueError as problem:
        return str(problem), None


@composite
def answers(draw: DrawFn) -> Answers:
    """Whatever a knitter may answer, most of it sensible."""
    gauge = Gauge(stitches_per_10cm=draw(st.floats(10, 50)), rounds_per_10cm=draw(st.floats(12, 60)))
    shape, head_cm = draw(st.sampled_from(SHAPES)), draw(st.floats(30, 66))
    try:
        usual = defaults_for(shape=shape, head_cm=head_cm, gauge=gauge)
    except ValueError:
        assume(False)
    return replace(
        usual,
        brim=Brim(draw(st.sampled_from(list(BRIM_KINDS))), draw(st.floats(0.5, 8))),
        ease_percent=draw(st.floats(-14, 6)),
        depth_cm=min(150, usual.depth_cm * draw(st.floats(0.9, 1.5))),
        crown=Crown(
            profile=draw(st.sampled_from(PROFILES)),
            sections=draw(st.integers(4, 12)),
            decrease=draw(st.sampled_from(DECREASES)),
        ),
        widen_percent=draw(st.floats(20, 70)),
        widen_rounds=draw(st.integers(1, 16)),
        taper_decreases=draw(st.integers(1, 5)),
        motif_repeat=draw(st.none() | st.integers(2, 30)),
    )


@given(one=answers())
@settings(max_examples=120, deadline=None, suppress_health_check=[HealthCheck.too_slow, HealthCheck.filter_too_much])
def test_whatever_is_answered_gives_a_knittable_hat_or_a_sentence(one):
    refusal, design = made_of(one)
    event("refused" if refusal else "made")
    if design is None:
        assert refusal.strip()
        return
    assert not rounds_not_meeting(design)
    if one.depth_cm != usual_depth_cm(one.shape, one.head_cm, one.gauge):
        assert abs(worn_cm(design) - one.depth_cm) <= one.gauge.round_height_cm
    brim_cm = design.bands[0].stitches(0) * one.gauge.stitch_width_cm
    assert abs(brim_cm - one.wanted_cm) <= TOLERANCE_CM
    bad = [f for f in appraise(design).findings if f.severity != "note" and f.check not in OF_LOTS]
    assert not bad, [(f.check, f.message) for f in bad]


@pytest.mark.parametrize("shape", SHAPES)
@pytest.mark.parametrize("kind", BRIM_KINDS)
def test_every_shape_begins_with_every_brim(shape, kind):
    usual = defaults_for(shape=shape, head_cm=56, gauge=FINE)
    design = started(replace(usual, brim=Brim(kind, 4)), PALETTE)
    assert not [f for f in appraise(design).findings if f.severity != "note" and f.check != "yarn-short"]
    assert design_from_text(design_to_text(design), "it") == design


@pytest.mark.parametrize("shape", SHAPES)
def test_a_hat_from_defaults_is_refused_for_no_gauge_and_head_that_are_usual(shape):
    for head_cm in (34, 44, 50, 56, 62):
        for counted in ((18, 24), (22, 26), (26, 30), (30, 34), (36, 40), (40, 48)):
            gauge = Gauge(stitches_per_10cm=counted[0], rounds_per_10cm=counted[1])
            started(defaults_for(shape=shape, head_cm=head_cm, gauge=gauge))


def test_written_rounds_of_a_hat_with_a_count_changed_between_brim_and_body_work_out():
    one = replace(Answers(), motif_repeat=10)
    assert counts_for(one).brim != counts_for(one).body
    assert_knits_as_charted(started(one))


def test_folded_brims_tell_the_hat_how_they_fold():
    for kind, way, rounds in (("hem", "in", 14), ("turned-up", "up", 10), ("rolled", "roll", 7)):
        assert started(replace(Answers(), brim=Brim(kind, 4))).hat.fold == Fold(way, rounds)
    assert started(replace(Answers(), brim=Brim("rib-2x2", 4))).hat.fold is None


def test_a_tam_gathers_all_its_widening_in_one_round_unless_it_is_to_take_more():
    tam = defaults_for(shape="tam", head_cm=56, gauge=FINE)
    for rounds in (1, 12):
        widening = next(band for band in started(replace(tam, widen_rounds=rounds)).bands if band.name == "widening")
        assert len(widening.rounds) == rounds


def test_a_stocking_cap_loses_two_stitches_every_second_round():
    # published pattern note: two decreases every second round
    design = started(defaults_for(shape="stocking", head_cm=56, gauge=FINE))
    taper = design.bands[-1]
    begin = design.bands[-2].stitches(0)
    counts = [taper.stitches(index) for index in range(len(taper.rounds))]
    assert counts == [begin - 2 * (number // 2) for number in range(1, len(counts) + 1)]


def test_bands_for_motifs_have_their_letters_ready():
    design = started(replace(Answers(), letters="CDE"))
    assert {line.letters for band in design.bands if band.name == "border" for line in band.rounds} == {"CD"}


def test_a_tam_is_as_deep_as_its_plate():
    design = started(defaults_for(shape="tam", head_cm=56, gauge=FINE))
    brim, rim = design.bands[0].stitches(0), design.bands[3].stitches(0)
    inner, outer = (count / 3 / (2 * math.pi) for count in (brim, rim))
    rib = sum(len(band.rounds) for band in design.bands[:3]) * FINE.round_height_cm
    # down the brim, out to the rim on the underside and back to the middle on top
    assert worn_cm(design) == pytest.approx(rib + (outer - inner) + outer, abs=FINE.round_height_cm)


def test_a_faster_taper_makes_a_shorter_stocking_cap_not_a_longer_body():
    slow, fast = (
        started(replace(defaults_for(shape="stocking", head_cm=56, gauge=FINE), taper_decreases=count))
        for count in (2, 4)
    )
    straight_slow, straight_fast = (worn_cm(d) - len(d.bands[-1].rounds) * FINE.round_height_cm for d in (slow, fast))
    assert straight_fast == pytest.approx(straight_slow, abs=FINE.round_height_cm)
    assert worn_cm(fast) < worn_cm(slow) - 15


def test_the_usual_depth_is_left_to_the_head_and_one_that_is_asked_for_stays():
    assert started(Answers()).hat.depth_cm is None
    assert started(replace(Answers(), depth_cm=25)).hat.depth_cm == 25


def test_a_hat_that_no_depth_was_asked_for_grows_deeper_where_its_brim_and_crown_need_it():
    pointed = started(replace(Answers(), crown=Crown(profile="pointed"), brim=Brim("hem", 6)))
    assert pointed.hat.depth_cm > Answers().depth_cm + 1
    assert abs(worn_cm(pointed) - pointed.hat.depth_cm) < FINE.round_height_cm


@pytest.mark.parametrize(
    ("change", "sentence"),
    [
        ({"depth_cm": 12.0}, "leaves no body: ask for"),
        ({"shape": "stocking", "depth_cm": 30.0}, "brim and taper alone take"),
        ({"head_cm": 20.0, "gauge": Gauge(stitches_per_10cm=5, rounds_per_10cm=6)}, "a hat has at least 24"),
        ({"crown": Crown(profile="pointed", rounds=5)}, "would pucker"),
    ],
)
def test_what_cannot_be_made_is_refused_in_a_sentence(change, sentence):
    with pytest.raises(ValueError, match=sentence):
        started(replace(Answers(), **change))


def test_the_depth_that_a_refusal_asks_for_is_enough():
    with pytest.raises(ValueError, match="ask for") as refusal:
        started(replace(Answers(), depth_cm=12))
    enough = float(str(refusal.value).split("ask for ")[1].split(" cm")[0])
    assert started(replace(Answers(), depth_cm=enough + 0.05))
