"""Boundaries: who neighbours whom, and along how much edge."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.knit.boundary import Boundary, measure_boundary
from chartmaker.knit.layout import lay_out
from chartmaker.model.band import Band
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge
from chartmaker.model.round import Round
from tests.builders import chart

GAUGE = Gauge(stitches_per_10cm=25, rounds_per_10cm=40)
"""Stitches 0.4 cm wide, rounds 0.25 cm high."""


def boundary_of(*bands: str, times: int = 1) -> Boundary:
    design = chart(*bands, times=times, gauge=GAUGE)
    return measure_boundary(lay_out(design), GAUGE)


def test_two_sideways_neighbours_share_one_round_height_each_way_round() -> None:
    boundary = boundary_of("A B | .x")
    # Stitch 1 meets stitch 2, and across the join of the round stitch 2 meets stitch 1.
    assert boundary.all_cm[0, 1] == pytest.approx(2 * 0.25)


def test_a_stitch_shares_one_stitch_width_with_the_one_below() -> None:
    boundary = boundary_of("B | ....\nA | ....")
    assert boundary.all_cm[0, 1] == pytest.approx(4 * 0.4)


def test_a_decrease_splits_its_width_among_the_stitches_that_it_eats() -> None:
    boundary = boundary_of("C | . | ^\nA B | .xx")
    assert boundary.all_cm[0, 2] == pytest.approx(0.4 / 3)
    assert boundary.all_cm[1, 2] == pytest.approx(2 * 0.4 / 3)


def test_a_stitch_that_eats_none_shares_nothing_with_the_round_below() -> None:
    boundary = boundary_of("A B | .x. | .+.\nC | ..")
    assert boundary.all_cm[1, 2] == 0
    assert boundary.all_cm[0, 2] == pytest.approx(2 * 0.4)


def test_neighbours_across_counts_that_do_not_meet_are_left_out() -> None:
    boundary = boundary_of("B | .....\nA | ....")
    assert boundary.all_cm[0, 1] == 0


def test_rounds_above_a_break_are_still_measured() -> None:
    boundary = boundary_of("C | .....\nB | .....\nA | ....")
    assert boundary.all_cm[1, 2] == pytest.approx(5 * 0.4)


def test_an_edge_within_one_part_is_boundary_but_not_drawn() -> None:
    boundary = boundary_of("B C | .x\nA C | .x")
    assert boundary.all_cm[0, 1] == pytest.approx(0.4)
    assert boundary.drawn_cm[0, 1] == 0
    assert boundary.drawn_cm[0, 2] == boundary.all_cm[0, 2] > 0


def test_all_edges_together_are_the_edges_of_the_grid() -> None:
    boundary = boundary_of("A B | .xx.\nB C | x..x\nA C | ..x.", times=5)
    both_letters = np.triu(boundary.all_cm).sum()
    assert both_letters == pytest.approx(60 * 0.25 + 40 * 0.4)


cells = st.lists(st.integers(0, 1), min_size=2, max_size=24)


@st.composite
def plain_bands(draw: st.DrawFn) -> Band:
    width = draw(st.integers(2, 24))
    letters = st.sampled_from(["AB", "AC", "BD", "CA"])
    line = st.builds(Round, letters, st.lists(st.integers(0, 1), min_size=width, max_size=width).map(bytes))
    return Band(name="", times=draw(st.integers(1, 5)), rounds=tuple(draw(st.lists(line, min_size=1, max_size=8))))


@given(plain_bands())
def test_the_boundary_is_symmetric(band: Band) -> None:
    boundary = measure_boundary(lay_out(Design(bands=(band,))), GAUGE)
    assert np.array_equal(boundary.all_cm, boundary.all_cm.T)
    assert np.all(boundary.drawn_cm <= boundary.all_cm + 1e-12)


@given(plain_bands(), st.integers(0, 30))
def test_the_boundary_does_not_change_when_the_repeat_is_rotated(band: Band, turn: int) -> None:
    turn %= len(band.rounds[0])
    rotated = tuple(Round(line.letters, line.cells[turn:] + line.cells[:turn]) for line in band.rounds)
    before = measure_boundary(lay_out(Design(bands=(band,))), GAUGE)
    after = measure_boundary(lay_out(Design(bands=(Band(name="", times=band.times, rounds=rotated),))), GAUGE)
    assert np.allclose(before.all_cm, after.all_cm)
    assert np.allclose(before.drawn_cm, after.drawn_cm)


@given(plain_bands())
def test_an_independent_walk_over_the_stitches_finds_the_same_boundary(band: Band) -> None:
    design = Design(bands=(band,))
    measured = measure_boundary(lay_out(design), GAUGE)
    rows = [[line.letter_of(s) for s in range(len(line))] * band.times for line in band.rounds]
    walked = np.zeros((26, 26))
    for number, row in enumerate(rows):
        for stitch, letter in enumerate(row):
            others = [(row[(stitch + 1) % len(row)], 0.25)]
            others += [(rows[number - 1][stitch], 0.4)] if number else []
            for other, length in others:
                first, second = sorted((ord(letter) - 65, ord(other) - 65))
                walked[first, second] += length
    assert np.allclose(np.triu(measured.all_cm), walked)
