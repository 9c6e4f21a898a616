"""The cells between two cells: no gaps, both ends, and never far from the true line."""

import itertools

from hypothesis import given
from hypothesis import strategies as st

from chartmaker.model.linewalk import cells_between

CELLS = st.tuples(st.integers(-300, 300), st.integers(-300, 300))


@given(CELLS, CELLS)
def test_a_walk_has_both_ends_and_no_gap_and_no_cell_twice(start, end):
    walk = cells_between(start, end)
    assert (walk[0], walk[-1]) == (start, end)
    assert len(walk) == max(abs(end[0] - start[0]), abs(end[1] - start[1])) + 1
    for here, there in itertools.pairwise(walk):
        assert max(abs(there[0] - here[0]), abs(there[1] - here[1])) == 1


@given(CELLS, CELLS)
def test_no_cell_is_further_than_half_a_cell_from_the_line(start, end):
    rise, run = end[0] - start[0], end[1] - start[1]
    steps = max(abs(rise), abs(run))
    for step, (line, stitch) in enumerate(cells_between(start, end)):
        assert abs((line - start[0]) * steps - rise * step) * 2 <= steps
        assert abs((stitch - start[1]) * steps - run * step) * 2 <= steps


@given(CELLS, CELLS)
def test_the_walk_back_passes_the_same_cells_but_for_exact_halves(start, end):
    steps = max(abs(end[0] - start[0]), abs(end[1] - start[1]))
    there, back = cells_between(start, end), tuple(reversed(cells_between(end, start)))
    for step, (one, other) in enumerate(zip(there, back, strict=True)):
        halves = [abs((end[axis] - start[axis]) * step) * 2 % (2 * steps or 1) == steps for axis in (0, 1)]
        for axis in (0, 1):
            assert one[axis] == other[axis] or (halves[axis] and abs(one[axis] - other[axis]) == 1)


def test_a_click_is_one_cell():
    assert cells_between((3, 4), (3, 4)) == ((3, 4),)


def test_a_shallow_line_is_drawn_as_it_is_on_graph_paper():
    assert cells_between((0, 0), (2, 6)) == ((0, 0), (0, 1), (1, 2), (1, 3), (1, 4), (2, 5), (2, 6))
