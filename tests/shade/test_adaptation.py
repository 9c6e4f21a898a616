import itertools

import numpy as np
import pytest

from chartmaker.model.settings import Viewing
from chartmaker.shade.adaptation import M_16, adapted
from chartmaker.shade.colorimetry import colour
from chartmaker.shade.weights import VIEWINGS, white_point

TO_AND_FRO = list(itertools.permutations((VIEWINGS[0], VIEWINGS[1], VIEWINGS[4], VIEWINGS[9]), 2))
"""Viewings that differ in observer, in illuminant and in both."""


def random_xyz(count: int) -> np.ndarray:
    return np.random.default_rng(8).uniform(0, 100, (count, 3))


def test_the_matrix_is_the_one_that_colour_science_keeps_for_cat16():
    assert M_16.tolist() == colour.CHROMATIC_ADAPTATION_TRANSFORMS["CAT16"].tolist()


@pytest.mark.parametrize(("one", "other"), TO_AND_FRO)
def test_adaptation_agrees_with_colour_science_in_its_one_step_form(one, other):
    whites = white_point(one), white_point(other)
    expected = colour.adaptation.chromatic_adaptation_VonKries(random_xyz(50), *whites, transform="CAT16")
    assert adapted(random_xyz(50), from_white=whites[0], to_white=whites[1]) == pytest.approx(expected, abs=1e-9)


@pytest.mark.parametrize(("one", "other"), TO_AND_FRO)
def test_adaptation_agrees_with_the_two_step_form_when_both_steps_are_complete(one, other):
    # Zhai and Luo 2018 with D = 1 on both sides passes through the equal-energy white and must end in the same place.
    whites = white_point(one), white_point(other)
    expected = colour.adaptation.chromatic_adaptation_Zhai2018(random_xyz(50), *whites, 1, 1, transform="CAT16")
    assert adapted(random_xyz(50), from_white=whites[0], to_white=whites[1]) == pytest.approx(expected, abs=1e-9)


@pytest.mark.parametrize(("one", "other"), TO_AND_FRO)
def test_the_white_of_one_becomes_the_white_of_the_other(one, other):
    result = adapted(white_point(one), from_white=white_point(one), to_white=white_point(other))
    assert result == pytest.approx(white_point(other), abs=1e-12)


@pytest.mark.parametrize(("one", "other"), TO_AND_FRO)
def test_there_and_back_is_the_same_colour(one, other):
    there = adapted(random_xyz(50), from_white=white_point(one), to_white=white_point(other))
    assert adapted(there, from_white=white_point(other), to_white=white_point(one)) == pytest.approx(random_xyz(50))


def test_the_same_white_changes_nothing():
    white = white_point(Viewing())
    assert adapted(random_xyz(50), from_white=white, to_white=white) == pytest.approx(random_xyz(50), abs=1e-12)


def test_a_stack_gives_what_each_colour_gives_alone():
    whites = {"from_white": white_point(VIEWINGS[0]), "to_white": white_point(VIEWINGS[5])}
    stack = random_xyz(12).reshape(3, 4, 3)
    assert adapted(stack, **whites)[1, 2] == pytest.approx(adapted(stack[1, 2], **whites), rel=1e-12)
