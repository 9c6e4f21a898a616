"""The long taper of a stocking cap, against a published one and on the needles."""

from itertools import pairwise

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from chartmaker.knit.layout import lay_out
from chartmaker.knit.profile import profile
from chartmaker.knit.taper import taper_bands
from chartmaker.knit.wedge import DECREASES, PAIRED, takes
from chartmaker.model.band import Band
from chartmaker.model.counts import rounds_not_meeting
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge
from chartmaker.model.round import Round
from tests.knit.test_written import assert_knits_as_charted


def cap(below: int, *bands: Band) -> Design:
    return Design(bands=(Band(name="body", times=below, rounds=(Round("A", b"\0"),) * 6), *bands))


def test_two_decreases_every_second_round_take_96_stitches_to_8() -> None:
    """Published pattern notes: two decreases every second round; a long taper from 96 to 8 stitches."""
    band = taper_bands(96, 8, gauge=Gauge())[0]
    assert (band.times, len(band.rounds)) == (2, 88)
    assert [band.stitches(number) for number in range(4)] == [96, 94, 94, 92]
    assert band.stitches(87) == 8


@given(
    lines=st.integers(2, 8),
    width=st.integers(12, 60),
    decrease=st.sampled_from(DECREASES),
    share=st.floats(1.0, 4.0),
)
@settings(max_examples=120, deadline=None)
def test_a_taper_is_spread_evenly_meets_and_does_not_pucker(lines, width, decrease, share):
    below = lines * width
    ways = (width - 2) // takes(decrease)
    rounds = int(ways * share * 2)
    above = below - ways * takes(decrease) * lines
    assume(below <= 600 and lines * takes(decrease) / 2 < 5)
    band = taper_bands(below, above, gauge=Gauge(), rounds=rounds, lines=lines, decrease=decrease)[0]
    design = cap(below, band)
    assert not rounds_not_meeting(design)
    assert not any(profile(lay_out(design), design.gauge).puckers)
    shaped = [number for number, line in enumerate(band.rounds, start=1) if line.is_shaped]
    between = [later - sooner for sooner, later in pairwise([0, *shaped])]
    assert len(shaped) == ways
    assert max(between) - min(between) <= 1
    assert len(band.rounds) == rounds
    assert band.stitches(rounds - 1) == above
    assert_knits_as_charted(design)


def test_without_an_end_the_fewest_stitches_that_can_be_drawn_up_remain() -> None:
    """Craft pages: 6 to 15 stitches are drawn up."""
    for below, lines, decrease in ((144, 2, "single"), (150, 3, "centred"), (140, 4, PAIRED)):
        band = taper_bands(below, gauge=Gauge(), lines=lines, decrease=decrease)[0]
        left = band.stitches(len(band.rounds) - 1)
        assert 6 <= left <= 6 + lines * takes(decrease)


def test_a_taper_in_too_few_rounds_is_refused() -> None:
    with pytest.raises(ValueError, match="a taper of 20 rounds is too short for 44 rounds that take 2 stitches each"):
        taper_bands(96, 8, gauge=Gauge(), rounds=20)
    with pytest.raises(ValueError, match="too short"):
        taper_bands(96, 8, gauge=Gauge(), rounds=12, lines=8)


def test_lines_that_do_not_divide_or_do_not_reach_the_end_are_refused() -> None:
    with pytest.raises(ValueError, match="5 lines of decreases do not divide 96"):
        taper_bands(96, 8, gauge=Gauge(), lines=5)
    with pytest.raises(ValueError, match="4 lines that take 2 cannot make 12 stitches of 96"):
        taper_bands(96, 12, gauge=Gauge(), lines=4, decrease=PAIRED)
