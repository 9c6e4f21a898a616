"""Floats: how long the yarn runs behind, and where to catch it."""

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.knit.floats import FloatBehind, LongFloat, find_floats, floats_behind, long_floats
from chartmaker.knit.layout import lay_out
from chartmaker.model.band import Band
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge
from chartmaker.model.round import Round
from tests.builders import chart

GAUGE = Gauge(stitches_per_10cm=25, rounds_per_10cm=32)
"""Stitches 0.4 cm wide."""


def floats_of(*bands: str, times: int = 1) -> list[tuple[int, str, int, int]]:
    """Give round, letter, first stitch passed and length of each float, all counted from 0."""
    found = find_floats(lay_out(chart(*bands, times=times)))
    rows = zip(found.round, found.letter, found.start, found.length, strict=True)
    return sorted((int(a), chr(65 + int(b)), int(c), int(d)) for a, b, c, d in rows)


def catches_of(*bands: str, limit_cm: float = 2.5) -> list[LongFloat]:
    fabric = lay_out(chart(*bands, times=1, gauge=GAUGE))
    return list(long_floats(fabric, find_floats(fabric), gauge=GAUGE, limit_cm=limit_cm))


def test_each_letter_floats_behind_the_stitches_between_its_uses() -> None:
    # Read from the right: A is worked at 1, B at 2, 3, 4.
    assert floats_of("A B | xxx.") == [(0, "A", 1, 3), (0, "B", 0, 1)]


def test_a_float_runs_on_across_the_join_of_repeats_and_of_the_round() -> None:
    assert floats_of("A B | .x...", times=2) == [
        (0, "A", 3, 1),
        (0, "A", 8, 1),
        (0, "B", 4, 4),
        (0, "B", 9, 4),
    ]


def test_a_letter_worked_once_in_a_round_passes_all_the_others() -> None:
    assert (0, "B", 1, 7) in floats_of("A B | .......x")


def test_a_plain_round_has_no_float() -> None:
    assert floats_of("A | ....") == []


def test_a_letter_named_but_not_worked_has_no_float() -> None:
    assert floats_of("A B | ....") == []


def test_two_parts_in_one_letter_make_no_float() -> None:
    assert floats_of("A A | .x.x") == []


def test_the_longest_float_of_each_round_is_told() -> None:
    fabric = lay_out(chart("A B | xxx...\nA | ......\nA B | .x.x.x"))
    assert find_floats(fabric).longest().tolist() == [1, 0, 3]


@given(st.lists(st.integers(0, 1), min_size=2, max_size=30), st.integers(1, 4), st.integers(0, 29))
def test_floats_do_not_change_with_where_the_round_begins(cells: list[int], times: int, turn: int) -> None:
    turn %= len(cells)
    lengths = []
    for row in (cells, cells[turn:] + cells[:turn]):
        band = Band(name="", times=times, rounds=(Round("AB", bytes(row)),))
        found = find_floats(lay_out(Design(bands=(band,))))
        lengths.append(sorted(zip(found.letter.tolist(), found.length.tolist(), strict=True)))
    assert lengths[0] == lengths[1]


@given(st.lists(st.integers(0, 1), min_size=2, max_size=30), st.integers(1, 4))
def test_each_letter_s_stitches_and_floats_go_once_round(cells: list[int], times: int) -> None:
    fabric = lay_out(Design(bands=(Band(name="", times=times, rounds=(Round("AB", bytes(cells)),)),)))
    passed = find_floats(fabric).passed()
    for code in set(fabric.letters.tolist()):
        worked = fabric.letters.tolist().count(code)
        assert worked + passed[code] == fabric.counts[0]


def test_two_letters_that_alternate_float_one_stitch_width_for_each_stitch_passed() -> None:
    """Straight and taut, two letters every round: as many stitch widths of float as there are stitches (derived)."""
    fabric = lay_out(chart("A B | .x.x.x\nA B | x.x.x.", times=3))
    assert find_floats(fabric).passed().sum() == len(fabric.letters)


def test_a_float_longer_than_the_limit_is_caught_in_its_middle() -> None:
    (found,) = catches_of("A B | xxxxxxxx.")
    assert (found.letter, found.length) == ("A", 8)
    assert found.length_cm == pytest.approx(3.2)
    assert found.catches == (4,)


def test_a_float_of_just_the_limit_is_left_alone() -> None:
    assert catches_of("A B | xxxxxx.", limit_cm=2.4) == []


def test_a_catch_does_not_stand_above_the_last_round_s_catch() -> None:
    first, second = catches_of("A B | xxxxxxxx.\nA B | xxxxxxxx.")
    assert not set(first.catches) & set(second.catches)


def test_a_round_between_frees_the_place_of_a_catch() -> None:
    first, second = catches_of("A B | xxxxxxxx.\nA | .........\nA B | xxxxxxxx.")
    assert first.catches == second.catches


@given(st.integers(7, 120), st.floats(0.4, 8))
def test_no_free_run_passes_the_limit_once_a_float_is_caught(length: int, limit_cm: float) -> None:
    (found,) = catches_of("A B | " + "x" * length + ".", limit_cm=limit_cm) or [None]
    if found is None:
        assert length * 0.4 <= limit_cm * (1 + 1e-9)
        return
    edges = [found.start - 1, *found.catches, found.start + length]
    runs = [after - before - 1 for before, after in pairwise(edges)]
    assert max(runs) * 0.4 <= limit_cm * (1 + 1e-9) + 1e-9 or limit_cm < 0.4


def walked_behind(letters: str, stitch: int) -> list[tuple[str, int, int]]:
    """Walk back and on from a stitch until each other letter is worked: letter, first stitch passed, length."""
    around = len(letters)
    found = []
    for letter in sorted(set(letters) - {letters[stitch]}):
        first = last = stitch
        while letters[(first - 1) % around] != letter:
            first -= 1
        while letters[(last + 1) % around] != letter:
            last += 1
        found.append((letter, first % around, last - first + 1))
    return found


@given(st.lists(st.text("ABC", min_size=1, max_size=12), min_size=1, max_size=4), st.integers(1, 3), st.data())
def test_the_strands_behind_a_stitch_are_those_that_a_walk_along_the_round_finds(
    lines: list[str], times: int, data: st.DataObject
) -> None:
    rounds = tuple(Round("ABC", bytes("ABC".index(letter) for letter in line)) for line in lines)
    fabric = lay_out(Design(bands=(Band(name="band", times=times, rounds=rounds),)))
    index = data.draw(st.integers(0, len(lines) - 1))
    whole = lines[index] * times
    stitch = data.draw(st.integers(0, len(whole) - 1))
    behind = floats_behind(fabric, find_floats(fabric), index=index, stitch=stitch)
    assert behind == tuple(FloatBehind(*found) for found in walked_behind(whole, stitch))
