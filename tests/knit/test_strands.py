"""Strands behind stitches, against a walk round the circumference that follows each yarn stitch by stitch."""

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.knit.strands import FROM_BEFORE, LONG_FROM_BEFORE, LONG_TO_NEXT, TO_NEXT, strands_behind
from chartmaker.model.notation import rounds_from_text
from tests.strategies import rounds


def walked(line, times, longest):
    """Carry each yarn round the whole hat, from one of its stitches to the next, and note what it passes."""
    cells = [line.letters[part] for part in line.cells] * times
    around = len(cells)
    found = np.zeros((around, 3), dtype=int)
    for at, letter in enumerate(cells):
        part = line.letters.index(letter)
        steps = 1
        while cells[(at + steps) % around] != letter:
            steps += 1
        passed = steps - 1
        if not passed:
            continue
        is_long = passed > longest
        to_next = TO_NEXT + LONG_TO_NEXT * is_long
        from_before = FROM_BEFORE + LONG_FROM_BEFORE * is_long
        found[at, part] |= to_next
        for step in range(1, steps):
            found[(at + step) % around, part] = to_next + from_before
        found[(at + steps) % around, part] |= from_before
    return found


@given(rounds(most=24), st.integers(1, 5), st.integers(0, 8))
def test_strands_are_those_of_a_walk_round_the_circumference(line, times, longest):
    tiled = np.tile(strands_behind(line, longest), (times, 1))
    assert np.array_equal(tiled, walked(line, times, longest))


def test_a_float_runs_over_the_join():
    (line,) = rounds_from_text("A B | ..x..")
    of_figure = strands_behind(line, 9)[:, 1].tolist()
    both = FROM_BEFORE + TO_NEXT
    # The one figure stitch is the third; its yarn goes all the way round to itself, which takes both its halves.
    assert of_figure == [both] * 5


def test_only_floats_over_the_limit_are_long():
    (line,) = rounds_from_text("A B | xx.x....")
    signs = strands_behind(line, 3)[:, 1]
    is_long = (signs & (LONG_FROM_BEFORE | LONG_TO_NEXT)) > 0
    assert is_long.tolist() == [True, True, True, True, True, False, False, True]


def test_a_round_of_one_letter_carries_nothing():
    (line,) = rounds_from_text("A B | ....")
    assert not strands_behind(line, 3).any()
