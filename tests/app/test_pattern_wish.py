"""What is wished for of pictures and words, without a window."""

import numpy as np
import pytest

from chartmaker.app.pattern_reading import LONGEST_SIDE, read_working_copy
from chartmaker.app.pattern_wish import Look, PatternMaker, PictureWish, WordsWish, made_of, of_words
from chartmaker.app.pattern_words import longest_allowed, pattern_words
from chartmaker.appraisal import appraise
from chartmaker.files.problems import UserProblem
from chartmaker.model.motif import longest_float
from chartmaker.model.notation import rounds_from_text, rounds_to_text
from chartmaker.pictures.pattern import Pattern
from chartmaker.pictures.png import png_bytes
from chartmaker.pictures.scaling import Block
from tests.builders import chart

HALVES = np.zeros((4, 8, 3), dtype=np.uint8)
HALVES[:, 4:] = 255
"""Black at the left, white at the right."""


def wish(crop=(0, 0, 8, 4), stitches=8, look=Look()):  # noqa: B008 - a frozen value
    block = Block(stitches=stitches, rounds=1, height_per_width=4.0)
    return PictureWish(pixels=HALVES, crop=crop, block=block, look=look)


def no_step(_done, _total):
    pass


def made(**how):
    return rounds_to_text(PatternMaker().of_picture(wish(**how), no_step).pattern.rounds)


def test_the_part_that_is_framed_is_what_counts():
    assert made() == "A B | xxxx....\n"
    assert made(crop=(3, 0, 7, 2)) == "A B | xx......\n"


def test_a_maker_that_has_the_light_already_makes_what_a_new_one_does():
    maker = PatternMaker()
    looks = (Look(), Look(inverts=True), Look(level=0), Look())
    wishes = [wish(look=look) for look in looks] + [wish(stitches=4), wish(crop=(3, 0, 7, 2)), wish()]
    for each in wishes:
        assert maker.of_picture(each, no_step) == PatternMaker().of_picture(each, no_step)


def test_no_letter_and_one_letter_for_both_parts_are_refused_with_a_sentence():
    with pytest.raises(UserProblem, match="no letter takes part"):
        made(look=Look(method="shade"))
    with pytest.raises(UserProblem, match="ground and figure are both C"):
        made(look=Look(letters="CC"))
    with pytest.raises(UserProblem, match="ground and figure are both C"):
        of_words(WordsWish(text="a", letters="CC"))


def test_words_can_be_ground_on_figure():
    plain, inverted = (of_words(WordsWish(text="l", stitches=6, inverts=inverts)).pattern for inverts in (False, True))
    assert rounds_to_text(plain.rounds).splitlines()[-1] == "A B | .xxxx."
    for one, other in zip(plain.rounds, inverted.rounds, strict=True):
        assert [1 - cell for cell in one.cells] == list(other.cells)


def test_floats_are_counted_with_the_pattern():
    lines = rounds_from_text("A B | x....x.\nA B | x......\nA   | .......")
    assert made_of(Pattern(lines)).longest == (0, 6, 4)
    assert made_of(Pattern(lines)).longest == tuple(map(longest_float, lines))


def test_the_longest_float_that_lies_is_where_the_check_begins_to_complain():
    for stitches in range(1, 20):
        design = chart(f"A B | x{'.' * stitches}", times=20, gauge=(28.0, 32.0))
        appraisal = appraise(design)
        assert bool(appraisal.long_floats) == (stitches > longest_allowed(appraisal))


def test_more_than_two_letters_in_a_round_are_told():
    appraisal = appraise(chart("A B | x.", times=60))
    told = pattern_words(made_of(Pattern(rounds_from_text("A B C | .x+\nA | ..."))), appraisal)
    assert told.startswith("3 stitches × 2 rounds  ·  ! more than two letters in 1 of 2 rounds\n")
    assert pattern_words(made_of(Pattern(rounds_from_text("A | .."))), appraisal).endswith("\nno floats")


def test_a_picture_is_read_to_a_copy_that_is_small_enough_and_can_be_given_up(tmp_path):
    path = tmp_path / "wide.png"
    path.write_bytes(png_bytes(np.full((10, LONGEST_SIDE + 1, 3), 90, dtype=np.uint8)))
    copy = read_working_copy(path, no_step)
    assert (copy.size, copy.side, copy.pixels.shape) == ((LONGEST_SIDE + 1, 10), 2, (5, LONGEST_SIDE // 2 + 1, 3))
    assert (copy.pixels == 90).all()

    def stop(_done, _total):
        raise InterruptedError

    with pytest.raises(InterruptedError):
        read_working_copy(path, stop)
