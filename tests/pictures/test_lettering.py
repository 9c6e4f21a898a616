"""Words to patterns."""

import numpy as np
import pytest

from chartmaker.files.problems import UserProblem
from chartmaker.model.notation import rounds_to_text
from chartmaker.pictures.alphabet import HEIGHT, glyphs
from chartmaker.pictures.lettering import LONGEST_WORDS, stitched_words, typeset_words
from chartmaker.pictures.pattern import Pattern

GAUGE = 28 / 32


def _cells(pattern: Pattern) -> np.ndarray:
    """As it is seen: row 0 at the top, column 0 at the left."""
    return np.array([list(line.cells) for line in pattern.rounds])[::-1, ::-1]


def test_the_alphabet_is_whole_even_and_no_two_letters_alike():
    drawn = glyphs()
    assert set("ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 .,:!?-+&'/()") == set(drawn)
    assert {picture.shape[0] for picture in drawn.values()} == {HEIGHT}
    assert len({(picture.shape, picture.tobytes()) for picture in drawn.values()}) == len(drawn)
    for character, picture in drawn.items():
        assert character == " " or (picture.any(axis=0)[[0, -1]].all() and picture.shape[1] <= 5), character


def test_words_are_written_as_they_are_read():
    assert rounds_to_text(stitched_words("Li").rounds) == (
        "A B | x....xxx.\n"
        "A B | x.....x..\n"
        "A B | x.....x..\n"
        "A B | x.....x..\n"
        "A B | x.....x..\n"
        "A B | x.....x..\n"
        "A B | xxxx.xxx.\n"
    )


def test_words_can_be_drawn_larger_and_in_other_letters():
    once, twice = stitched_words("9!"), stitched_words("9!", scale=2, letters="CD")
    assert np.array_equal(_cells(twice), np.kron(_cells(once), np.ones((2, 2), dtype=int)))
    assert {line.letters for line in twice.rounds} <= {"CD", "C"}


def test_a_space_parts_words_more_than_letters():
    apart = len(stitched_words("a b").rounds[0]) - len(stitched_words("ab").rounds[0])
    assert apart == 4
    assert stitched_words("  a   b ") == stitched_words("a b")


def test_set_type_is_as_high_as_asked_and_in_proportion():
    pattern = typeset_words("O", rounds=20, height_per_width=GAUGE, gap=3)
    seen = _cells(pattern)
    assert len(pattern.rounds) == 20
    assert not seen[:, -3:].any()
    assert seen[:, :-3].any(axis=0).all()
    assert seen.any(axis=1).all()
    assert seen[8:12, seen.shape[1] // 2 - 3].sum() == 0  # it is hollow
    wide = typeset_words("O", rounds=20, height_per_width=2 * GAUGE, gap=3)
    assert len(wide.rounds[0]) - 3 == pytest.approx(2 * (seen.shape[1] - 3), abs=1)


@pytest.mark.parametrize("text", ["Zoë, Ærø & Łódź", "Шерсть", "שלום", "سلام", "ऊन", "羊毛", "ขนแกะ"])
def test_any_script_that_a_bundled_face_has_can_be_written(text):
    pattern = typeset_words(text, rounds=24, height_per_width=GAUGE)
    share = _cells(pattern).mean()
    assert 0.03 < share < 0.7


def test_scripts_are_shaped_and_ordered():
    """Hebrew runs leftwards, so its second letter stands left of its first; Arabic letters join."""
    two = _cells(typeset_words("לו", rounds=24, height_per_width=GAUGE, gap=0))
    assert two[:4].any(axis=0).argmax() > two.shape[1] / 3  # lamed, which alone is that high, is the first letter
    joined, apart = (
        _cells(typeset_words(text, rounds=24, height_per_width=GAUGE, gap=0)).any(axis=0) for text in ("بب", "ب‌ب")
    )
    assert joined.all()
    assert not apart.all()


@pytest.mark.parametrize(
    ("write", "sentence"),
    [
        (
            lambda: stitched_words("Zoë"),
            "the stitch alphabet does not have Ë; leave it out or choose the other lettering",
        ),
        (lambda: stitched_words(" \n "), "there are no words to write"),
        (lambda: stitched_words("x" * (LONGEST_WORDS + 1)), "the words have 201 characters, more than 200"),
        (lambda: stitched_words("x" * 120), "the words would be 720 stitches wide, more than 600"),
        (lambda: stitched_words("I", scale=100), "the words would be 700 rounds high, more than 600"),
        (lambda: typeset_words("a\ue123", rounds=9, height_per_width=1), "does not have \\ue123"),
        (lambda: typeset_words("羊שа", rounds=9, height_per_width=1), "a single one of the typefaces does not have"),
        (lambda: typeset_words("m" * 200, rounds=30, height_per_width=1), "stitches wide, more than 600"),
        (lambda: typeset_words("m", rounds=0, height_per_width=1), "letters 0 rounds high cannot be made"),
        (
            lambda: typeset_words("...........|", rounds=1, height_per_width=1),
            "at 1 rounds nothing of the words is left",
        ),
    ],
)
def test_words_that_cannot_be_knitted_are_refused_with_a_sentence(write, sentence):
    with pytest.raises(UserProblem) as caught:
        write()
    assert sentence in str(caught.value)
