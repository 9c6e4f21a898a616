"""What is told of a photo: how the target lies and fits, and what is doubtful about a skein."""

from dataclasses import replace
from functools import cache

import numpy as np
import pytest

from chartmaker.app.photo_marks import first_marks
from chartmaker.app.photo_reading import PhotoRead
from chartmaker.app.photo_words import fit_words, skein_words
from chartmaker.model.settings import Viewing
from chartmaker.pictures.target_grid import Position
from chartmaker.pictures.target_photo import SkeinReading, read_target
from tests.rendered_photo import Scene, take

SKEIN = SkeinReading(
    lab=(50.0, 10.0, 10.0), deviation=(0.2, 0.2, 0.2), spread=0.3, clipped=0.0, dark=0.0, viewing=Viewing()
)


@cache
def target():
    photo = take(Scene(number=1))
    return read_target(photo.pixels, photo.corners, edition="before-2014-11", viewing=Viewing())


def told(changed=None, problem=""):
    return fit_words(PhotoRead(first_marks((10, 10)), changed or target(), problem, ()))


def test_how_well_the_target_fits_is_told_with_the_worst_patch():
    words = told()
    assert words.count("\n") == 0
    assert f"{target().mean:.1f} in the mean" in words
    assert target().worst_place.words in words
    assert f"{target().left_out:.1f}" in words


@pytest.mark.parametrize(
    ("position", "words"),
    [
        (Position(1), "a quarter turn clockwise"),
        (Position(2), "half a turn"),
        (Position(3), "a quarter turn anticlockwise"),
        (Position(0, is_mirrored=True), "mirrored"),
    ],
)
def test_how_the_target_lies_is_told(position, words):
    assert words in told(replace(target(), position=position))


def test_an_edition_that_fits_better_and_patches_left_out_are_told():
    assert "The other edition fits clearly better: 0.2" in told(replace(target(), other_mean=0.2))
    is_used = np.arange(24) != 8
    assert "left out: patch 3 of row 2" in told(replace(target(), is_used=is_used))


def test_light_that_falls_off_is_told_in_percent():
    fall = replace(target().fall, slope=np.array([0.001, 0.0]), across=0.2)
    assert "Light falls off by 18 %" in told(replace(target(), fall=fall))


def test_a_problem_takes_the_place_of_all_else():
    assert told(problem="the corners are off") == "! The corners are off."


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({}, ""),
        ({"clipped": 0.3}, "30 % beyond the camera's range"),
        ({"dark": 0.2, "spread": 5.0}, "20 % in shadow, uneven"),
    ],
)
def test_what_is_doubtful_about_a_skein_is_told(changes, words):
    assert skein_words(replace(SKEIN, **changes)) == words


def test_a_skein_that_cannot_be_read_says_so():
    assert skein_words(None) == "cannot be read"
