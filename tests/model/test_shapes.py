"""Rectangles and ellipses in a box, against what a box is and the ellipse's own equation."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.ndimage import label
from skimage.draw import ellipse_perimeter

from chartmaker.model.shapes import ellipse, filled_ellipse, filled_rectangle, rectangle

ENDS = st.tuples(st.integers(-40, 40), st.integers(-40, 40))
FILLED = {rectangle: filled_rectangle, ellipse: filled_ellipse}
ALL_WAYS = np.ones((3, 3))
"""Cells that touch at a corner hang together."""


def cells(strips):
    """Give the cells of strips, of which no two may overlap."""
    found = [(row, stitch) for row, first, last in strips for stitch in range(first, last + 1)]
    assert len(set(found)) == len(found)
    return set(found)


def picture(shape, rounds, stitches):
    """Draw a shape in a box of its own, the first round at the bottom."""
    drawn = cells(shape((0, 0), (rounds - 1, stitches - 1)))
    return ["".join(".x"[(row, at) in drawn] for at in range(stitches)) for row in reversed(range(rounds))]


def mask(shape, rounds, stitches):
    """Draw a shape in the middle of an array with a free cell on each side."""
    drawn = np.zeros((rounds + 2, stitches + 2), bool)
    for row, stitch in cells(shape((1, 1), (rounds, stitches))):
        drawn[row, stitch] = True
    return drawn


def box(start, end):
    (low, high), (right, left) = (sorted(pair) for pair in zip(start, end, strict=True))
    return low, high, right, left


def curve(at, most, other):
    """Solve x²/a² + y²/b² = 1 for the coordinate across `at`, a and b being the half-axes `most` and `other`."""
    return other * np.sqrt(np.maximum(0, 1 - (np.asarray(at, float) / most) ** 2)) if most else np.full_like(at, other)


def test_a_rectangle_is_its_four_sides():
    assert picture(rectangle, 4, 5) == ["xxxxx", "x...x", "x...x", "xxxxx"]


def test_an_ellipse_is_drawn_without_gaps_at_the_corners():
    assert picture(ellipse, 5, 5) == [".xxx.", "x...x", "x...x", "x...x", ".xxx."]
    assert picture(ellipse, 4, 9) == ["..xxxxx..", "xx.....xx", "xx.....xx", "..xxxxx.."]


def test_a_filled_ellipse_holds_what_its_outline_does():
    assert picture(filled_ellipse, 4, 4) == [".xx.", "xxxx", "xxxx", ".xx."]


@pytest.mark.parametrize("shape", [*FILLED, *FILLED.values()])
@pytest.mark.parametrize(("rounds", "stitches"), [(1, 1), (1, 2), (1, 9), (2, 2), (2, 9), (9, 1), (9, 2)])
def test_a_box_one_or_two_cells_thick_is_filled_by_every_shape(shape, rounds, stitches):
    assert picture(shape, rounds, stitches) == ["x" * stitches] * rounds


@pytest.mark.parametrize("shape", [*FILLED, *FILLED.values()])
@given(start=ENDS, end=ENDS)
def test_a_shape_is_the_same_dragged_in_any_direction_and_touches_all_sides_of_its_box(shape, start, end):
    drawn = cells(shape(start, end))
    low, high, right, left = box(start, end)
    assert drawn == cells(shape((low, left), (high, right))) == cells(shape((high, right), (low, left)))
    assert {row for row, _ in drawn} == set(range(low, high + 1))
    assert {stitch for _, stitch in drawn} == set(range(right, left + 1))


@pytest.mark.parametrize("shape", [*FILLED, *FILLED.values()])
@given(start=ENDS, end=ENDS)
def test_a_shape_is_the_same_seen_in_a_mirror_on_either_side(shape, start, end):
    drawn = cells(shape(start, end))
    assert drawn == {(row, start[1] + end[1] - stitch) for row, stitch in drawn}
    assert drawn == {(start[0] + end[0] - row, stitch) for row, stitch in drawn}


@pytest.mark.parametrize("shape", FILLED)
@given(rounds=st.integers(1, 50), stitches=st.integers(1, 50))
def test_an_outline_hangs_together_and_parts_what_it_holds_from_what_is_outside(shape, rounds, stitches):
    drawn, filled = mask(shape, rounds, stitches), mask(FILLED[shape], rounds, stitches)
    assert label(drawn, ALL_WAYS)[1] == 1
    outside = label(~drawn)[0]
    assert (filled == (outside != outside[0, 0])).all()


@given(rounds=st.integers(3, 60), stitches=st.integers(3, 60))
def test_a_quarter_of_an_outline_is_a_cell_thick(rounds, stitches):
    """A cell with one beside it and one above or below it could be left out, since those two touch at a corner."""
    drawn = cells(ellipse((0, 0), (rounds - 1, stitches - 1)))
    quarter = {(row, stitch) for row, stitch in drawn if 2 * row >= rounds - 1 and 2 * stitch >= stitches - 1}
    for row, stitch in quarter:
        is_beside = (row, stitch - 1) in quarter or (row, stitch + 1) in quarter
        is_stacked = (row - 1, stitch) in quarter or (row + 1, stitch) in quarter
        assert not (is_beside and is_stacked)


@given(start=ENDS, end=ENDS)
def test_every_cell_of_an_ellipse_is_within_half_a_cell_of_its_equation(start, end):
    low, high, right, left = box(start, end)
    a, b = (left - right) / 2, (high - low) / 2
    for row, stitch in cells(ellipse(start, end)):
        x, y = abs(stitch - (left + right) / 2), abs(row - (low + high) / 2)
        assert min(abs(y - curve(x, a, b)), abs(x - curve(y, b, a))) <= 0.5 + 1e-9


@given(rounds=st.integers(1, 60), stitches=st.integers(1, 60))
def test_a_filled_ellipse_holds_what_its_equation_does_but_for_half_a_cell(rounds, stitches):
    a, b = (stitches - 1) / 2, (rounds - 1) / 2
    filled = mask(filled_ellipse, rounds, stitches)[1:-1, 1:-1]
    y, x = np.abs(np.mgrid[-b : b + 0.25, -a : a + 0.25])
    inside = (np.divide(x, a, out=np.zeros_like(x), where=a > 0)) ** 2
    inside = inside + (np.divide(y, b, out=np.zeros_like(y), where=b > 0)) ** 2 <= 1
    doubtful = (np.abs(y - curve(x, a, b)) <= 0.5 + 1e-9) | (np.abs(x - curve(y, b, a)) <= 0.5 + 1e-9)
    assert (filled == inside)[~doubtful].all()


@given(up=st.integers(2, 30), across=st.integers(2, 30))
def test_an_ellipse_is_scikit_images_to_a_cell(up, across):
    """`skimage.draw.ellipse_perimeter` draws ellipses of whole half-axes, and rounds another way where it is steep."""
    ours = cells(ellipse((-up, -across), (up, across)))
    theirs = set(zip(*map(np.ndarray.tolist, ellipse_perimeter(up, across, up, across)), strict=True))
    theirs = {(row - up, stitch - across) for row, stitch in theirs}
    for first, second in ((ours, theirs), (theirs, ours)):
        for row, stitch in first:
            assert any((row + dy, stitch + dx) in second for dy in (-1, 0, 1) for dx in (-1, 0, 1))
    assert len(ours & theirs) >= 0.7 * len(ours)
