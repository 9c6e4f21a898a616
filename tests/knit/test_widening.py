"""A tam's underside: made stitches spread evenly round and over the rounds, and flat on its plate."""

import math
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from chartmaker.knit.layout import lay_out
from chartmaker.knit.profile import profile
from chartmaker.knit.widening import widening_bands
from chartmaker.model.band import Band
from chartmaker.model.counts import rounds_not_meeting
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge
from chartmaker.model.round import Round
from chartmaker.model.stitches import Shaping
from tests.knit.test_written import assert_knits_as_charted

GAUGES = ((22, 26), (28, 30), (30, 34), (36, 40))
gauges = st.sampled_from(GAUGES).map(lambda two: Gauge(stitches_per_10cm=two[0], rounds_per_10cm=two[1]))


def tam(below: int, above: int, gauge: Gauge, rounds: int | None = None) -> Design:
    brim = Band(name="brim", times=below, rounds=(Round("A", b"\0"),) * 6)
    return Design(gauge=gauge, bands=(brim, *widening_bands(below, above, gauge=gauge, rounds=rounds)))


def gaps(signs: bytes) -> list[int]:
    """Stitches from each made one to the next, all the way round."""
    places = [place for place, code in enumerate(signs) if code == Shaping.MAKE]
    return [later - sooner for sooner, later in pairwise([*places, places[0] + len(signs)])]


@given(below=st.integers(60, 200), more=st.floats(0.01, 1.0), gauge=gauges, rounds=st.none() | st.integers(1, 24))
@settings(max_examples=150, deadline=None)
def test_made_stitches_are_spread_evenly_and_never_more_than_every_second(below, more, gauge, rounds):
    above = below + math.ceil(more * below)
    design = tam(below, above, gauge, rounds)
    band = design.bands[1]
    assert not rounds_not_meeting(design)
    assert band.stitches(len(band.rounds) - 1) == above
    shaped = [number for number, line in enumerate(band.rounds, start=1) if line.is_shaped]
    for number in shaped:
        between = gaps(band.rounds[number - 1].shaping * band.times)
        assert max(between) - min(between) <= 1
        assert min(between) >= 2
    between = [later - sooner for sooner, later in pairwise([0, *shaped])]
    assert max(between) - min(between) <= 1
    assert shaped[-1] == len(band.rounds) == (rounds or len(band.rounds))
    assert_knits_as_charted(design)


@given(below=st.integers(60, 200), more=st.floats(0.05, 0.8), gauge=gauges)
@settings(max_examples=100, deadline=None)
def test_a_widening_over_its_own_rounds_lies_flat_and_is_hardly_longer_than_a_disc_s(below, more, gauge):
    """Geometry: a flat ring from radius r to R is R − r wide, so it takes (R − r)/h rounds at least."""
    above = below + math.ceil(more * below)
    design = tam(below, above, gauge)
    outline = profile(lay_out(design), gauge)
    assert not any(outline.puckers)
    fewest = (outline.radius_cm[-1] - outline.radius_cm[0]) / gauge.round_height_cm
    assert fewest / 1.06 <= len(design.bands[1].rounds) <= math.ceil(fewest) + 4


def test_a_beret_widened_by_half_takes_one_round_of_every_third_stitch_when_it_may_gather() -> None:
    """Widen about 50 % after the brim (The Knitter 2017)."""
    band = widening_bands(120, 180, gauge=Gauge(), rounds=1)[0]
    assert (band.times, [len(line) for line in band.rounds]) == (60, [3])


def test_more_than_twice_the_stitches_take_more_than_one_round() -> None:
    with pytest.raises(ValueError, match="100 stitches become 300 in 2 rounds or more"):
        widening_bands(100, 300, gauge=Gauge(), rounds=1)
    assert [len(line) * 100 for line in widening_bands(100, 300, gauge=Gauge(), rounds=2)[0].rounds][-1] == 300


def test_nothing_is_made_where_nothing_widens_and_fewer_are_refused() -> None:
    assert widening_bands(120, 120, gauge=Gauge()) == ()
    with pytest.raises(ValueError, match="cannot end with 110"):
        widening_bands(120, 110, gauge=Gauge())
