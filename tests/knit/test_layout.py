"""Rounds laid out: repeats worked out, counts meeting, who eats whom."""

from hypothesis import given
from hypothesis import strategies as st

from chartmaker.knit.layout import lay_out, parents
from chartmaker.knit.outline import chart_offsets, chart_width
from chartmaker.model.notation import rounds_from_text
from tests.builders import chart


def letters_of(text: str, times: int = 1) -> list[str]:
    fabric = lay_out(chart(text, times=times))
    return ["".join(chr(65 + code) for code in fabric.letters[fabric.round(i)]) for i in range(fabric.rounds)]


def test_stitch_one_is_the_right_most_and_round_one_the_last_line() -> None:
    assert letters_of("A B | ...x\nC D | x...") == ["CCCD", "BAAA"]


def test_a_repeat_is_worked_as_often_as_the_band_says() -> None:
    assert letters_of("A B | .x", times=3) == ["BABABA"]


def test_counts_meet_where_a_round_eats_what_lies_below() -> None:
    fabric = lay_out(chart("A | .. | >.\nA | ..."))
    assert fabric.counts == (3, 2)
    assert fabric.meets == (True, True)


def test_counts_that_do_not_meet_are_told() -> None:
    fabric = lay_out(chart("A | ..\nA | ..."))
    assert fabric.meets == (True, False)
    assert fabric.eaten == (3, 2)


def test_a_shaped_first_round_has_nothing_to_eat() -> None:
    assert lay_out(chart("A | .. | >.")).meets == (False,)


def test_each_stitch_is_paired_with_what_it_eats() -> None:
    # Read from the right: centred double, plain, make one, two together.
    fabric = lay_out(chart("A | .... | >+.^\nA | ......"))
    eater, eaten = parents(fabric)
    assert list(zip((eater - 6).tolist(), eaten.tolist(), strict=True)) == [
        (0, 0),
        (0, 1),
        (0, 2),
        (1, 3),
        (3, 4),
        (3, 5),
    ]


@given(st.integers(1, 8), st.integers(1, 6), st.integers(1, 5))
def test_every_stitch_below_is_eaten_once(width: int, rounds: int, times: int) -> None:
    fabric = lay_out(chart("\n".join([f"A | {'.' * width}"] * rounds), times=times))
    _, eaten = parents(fabric)
    assert eaten.tolist() == list(range(width * times * (rounds - 1)))


def test_a_wedge_with_centred_decreases_narrows_evenly_from_both_sides() -> None:
    rounds = rounds_from_text("A | . | ^\nA | ... | .^.\nA | .....")
    assert chart_offsets(rounds) == (0, 1, 2)
    assert chart_width(rounds) == 5


def test_paired_decreases_at_the_edges_keep_the_columns_true() -> None:
    rounds = rounds_from_text("A | .... | <..>\nA | ......")
    assert chart_offsets(rounds) == (0, 1)


def test_a_decrease_at_the_left_edge_leaves_the_right_edge_straight() -> None:
    rounds = rounds_from_text("A | .... | <...\nA | .....")
    assert chart_offsets(rounds) == (0, 0)


def test_an_increase_widens_the_drawing() -> None:
    rounds = rounds_from_text("A | ...... | +....+\nA | ....")
    assert chart_offsets(rounds) == (1, 0)
    assert chart_width(rounds) == 6


def test_half_columns_add_up_so_that_a_drawing_does_not_drift() -> None:
    # Steps of a half, a whole and a half, two columns in all; each half rounded by itself would make three.
    rounds = rounds_from_text("A | .. | <.\nA | ... | ..<\nA | .... | .<..\nA | .....")
    assert chart_offsets(rounds) == (0, 1, 2, 2)
