import pytest

from chartmaker.files.measurements.typed import typed_reading
from chartmaker.files.problems import UserProblem
from chartmaker.model.reading import LabReading, ScreenReading, XyzReading
from chartmaker.model.settings import Viewing

LAB = LabReading(lab=(38.2, 41.0, 27.5))


@pytest.mark.parametrize(
    "text",
    [
        "38.2 41 27.5",
        "  38,2\t41 27,5 ",
        "38.2, 41, 27.5",
        "38.2,41,27.5",
        "38,2; 41; 27,5",
        "L 38,2 a 41 b 27,5",
        "L*=38.2, a*=41, b*=27.5",
        "Lab 38.2 41 27.5",
        "CIE L*a*b*: 38.2, 41, 27.5",
        "38.2 41 27.5 (D65/10°)",
    ],
)
def test_lab_in_the_ways_that_people_write_it(text):
    assert typed_reading(text) == LAB


@pytest.mark.parametrize("text", ["LCh 50 30 270", "lch: 50; 30; 270°", "L 50 C 30 h 270°", "L*50 C*30 h270"])
def test_lch_is_turned_into_lab(text):
    # CIE 15: a* = C* cos h, b* = C* sin h.
    assert typed_reading(text) == LabReading(lab=(50, 0, -30))


@pytest.mark.parametrize("text", ["#8a3b2f", "8A3B2F", "# 8a3b2f"])
def test_a_screen_colour(text):
    assert typed_reading(text) == ScreenReading(hex="#8a3b2f")


def test_negative_numbers_with_either_minus():
    assert typed_reading("30 -5 −22.5") == LabReading(lab=(30, -5, -22.5))


def test_letters_that_look_like_lamps_are_coordinates():
    assert typed_reading("L 50 a 2 b 10") == LabReading(lab=(50, 2, 10))


def test_another_viewing_may_be_given_or_typed():
    other = Viewing(illuminant="D50", observer="2")
    assert typed_reading("38.2 41 27.5", other) == LabReading(lab=LAB.lab, viewing=other)
    assert typed_reading("XYZ 8 9 20 D50/2") == XyzReading(xyz=(8, 9, 20), viewing=other)


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("", "there is no colour in it"),
        ("1 2", "this is no colour"),
        ("red", "this is no colour"),
        ("1 2 3 4", "this is no colour"),
        ("200 1 1", "L* is 200, outside 0 to 110"),
        ("50 1 2 (C/2)", "the illuminant is 'C'"),
        ("LCh 50 -3 10", "C* is -3, below 0"),
        ("#12345", "it looks like"),
        ("9" * 300, "too long for a colour"),
        ("50 1e9 2", "this is no colour"),
    ],
)
def test_what_is_no_colour_gets_a_sentence_with_an_example(text, sentence):
    with pytest.raises(UserProblem) as refused:
        typed_reading(text)
    assert sentence in str(refused.value)
    assert "#8a3b2f" in str(refused.value)
