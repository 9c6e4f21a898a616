"""The written form of rounds: what is drawn is what is read, and it is written as it is drawn."""

import pytest
from hypothesis import given

from chartmaker.model.notation import round_from_text, round_to_text, rounds_from_text, rounds_to_text
from chartmaker.model.round import Round
from tests.strategies import bands, rounds


@given(rounds())
def test_a_round_reads_back_as_it_was_written(line):
    assert round_from_text(round_to_text(line)) == line


@given(bands())
def test_the_rounds_of_a_band_read_back_as_they_were_written(band):
    assert rounds_from_text(rounds_to_text(band.rounds)) == band.rounds


@given(bands())
def test_the_cells_of_a_band_begin_in_one_column(band):
    lines = rounds_to_text(band.rounds).splitlines()
    assert len({line.index("|") for line in lines}) == 1
    assert len(lines) == len(band.rounds)


def test_knitting_runs_from_the_right():
    assert round_from_text("A B C | .x+ | .>^") == Round("ABC", bytes([2, 1, 0]), bytes([3, 1, 0]))


def test_spaces_at_either_end_are_layout():
    assert round_from_text("  AB|  .x  | >. ") == round_from_text("A B | .x | >.")


@pytest.mark.parametrize(
    ("line", "sentence"),
    [
        ("A B", "'A B' is not 'letters | cells' or 'letters | cells | shaping'"),
        ("A | . | . | .", "'A | . | . | .' is not 'letters | cells' or 'letters | cells | shaping'"),
        ("A | .. | ", "the shaping after the second '|' is empty"),
        ("A | ", "a round has no cells"),
        (" | .", "a round has one to three letters, not 0"),
        ("A | . .", "' ' at place 2 is no cell; the signs are . x +"),
        ("A | .X", "'X' at place 2 is no cell; the signs are . x +"),
        ("A | .. | ./", "'/' at place 2 is no shaping sign; the signs are . > < ^ +"),
    ],
)
def test_what_is_no_round_is_told_as_a_sentence(line, sentence):
    with pytest.raises(ValueError) as caught:  # noqa: PT011 - the sentence is compared in full
        round_from_text(line)
    assert str(caught.value) == sentence
