"""Motifs: their rules, their floats, and where they fit."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.knit.floats import find_floats
from chartmaker.knit.layout import lay_out
from chartmaker.model.band import Band
from chartmaker.model.design import Design
from chartmaker.model.motif import LONGEST_WORD, MOST_TAGS, Motif, fits, floats_of, longest_float
from chartmaker.model.notation import round_from_text, rounds_from_text
from tests.strategies import rounds


def motif(drawing: str, **fields) -> Motif:
    return Motif(**{"id": "m", "name": "M", "family": "own", "rounds": rounds_from_text(drawing)} | fields)


@given(rounds(shaped=False, most=12), st.integers(1, 4))
def test_the_longest_float_is_what_the_whole_fabric_has(line, times):
    design = Design(bands=(Band(name="", times=times, rounds=(line,)),))
    by_letter = replace(line, letters="ABC"[: len(line.letters)])  # a letter named twice would join its parts
    design = replace(design, bands=(replace(design.bands[0], rounds=(by_letter,)),))
    assert longest_float(by_letter) == find_floats(lay_out(design)).longest()[0]


@pytest.mark.parametrize(
    ("line", "longest"),
    [("A B | x......", 6), ("A B | .xxx.", 3), ("A | ....", 0), ("A B | xxxx", 0), ("A B C | x+.", 2)],
)
def test_a_float_runs_over_the_join_and_a_single_letter_has_none(line, longest):
    assert longest_float(round_from_text(line)) == longest


def test_a_motif_tells_its_repeat_its_longest_float_and_the_letters_that_it_needs():
    flat = motif("A B | .x..\nA   | ....")
    assert (flat.repeat, flat.longest_float, flat.parts, flat.is_shaped) == (4, 3, 2, False)
    wedge = motif("A B | .x | <>\nA B | x..x\nA B C | +..x | +..+")
    assert (wedge.repeat, wedge.longest_float, wedge.parts, wedge.is_shaped) == (2, 3, 3, True)


@pytest.mark.parametrize(("stitches", "does"), [(144, True), (150, False), (8, True), (0, False), (4, False)])
def test_a_motif_fits_where_its_repeat_divides_the_stitches(stitches, does):
    assert fits(motif("A B | x......."), stitches) is does


@pytest.mark.parametrize(
    ("fields", "sentence"),
    [
        (
            {"id": "Sea Wave"},
            "a motif's id is 'Sea Wave'; it is made of small letters and digits, with hyphens between",
        ),
        ({"id": "../../etc"}, "a motif's id is '../../etc'"),
        ({"id": "a" * (LONGEST_WORD + 1)}, "a motif's id has 61 characters, more than 60"),
        ({"name": " "}, "a motif's name is empty"),
        (
            {"family": "stars"},
            "family is 'stars'; it can be peerie, border, cross-and-lozenge, star, lattice, crown, own",
        ),
        ({"tags": ("",)}, "a tag is ''"),
        ({"tags": ("a",) * (MOST_TAGS + 1)}, "a motif has 21 tags, more than 20"),
        ({"rounds": ()}, "a motif has no rounds"),
        ({"rounds": rounds_from_text("A C | .x")}, "round 1 has the letters A C; a motif's are A B"),
        ({"rounds": rounds_from_text("A | ...\nA | ..")}, "round 2 eats 3 stitches, the round below has 2"),
        ({"rounds": rounds_from_text("A | .. | ++")}, "round 1 eats no stitch of what lies below"),
        ({"rounds": rounds_from_text("A | .\n" * 601)}, "a motif has 601 rounds, more than 600"),
    ],
)
def test_what_is_no_motif_is_refused_with_a_sentence(fields, sentence):
    with pytest.raises(ValueError) as caught:  # noqa: PT011 - the sentence is what is compared
        motif("A | .", **fields)
    assert sentence in str(caught.value)


def test_floats_tell_where_they_begin_and_run_over_the_join():
    assert floats_of(round_from_text("A B | x....x.")) == ((1, 1), (6, 1), (2, 4), (0, 1))
    assert floats_of(round_from_text("A B | .....")) == ()


@given(rounds(shaped=False, most=12))
def test_floats_are_those_that_the_whole_fabric_has(line):
    by_letter = replace(line, letters="ABC"[: len(line.letters)])
    found = find_floats(lay_out(Design(bands=(Band(name="", times=1, rounds=(by_letter,)),))))
    laid_out = zip(found.start.tolist(), found.length.tolist(), strict=True)
    assert sorted(floats_of(by_letter)) == sorted((start % len(line), length) for start, length in laid_out)
