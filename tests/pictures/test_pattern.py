"""Light to patterns: levels, two letters a round, and diffusion."""

from itertools import combinations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.extra import numpy as arrays
from skimage.color import rgb2lab
from skimage.filters import threshold_otsu

from chartmaker.model.notation import rounds_to_text
from chartmaker.pictures.pattern import MIDDLE_VALUE, Pattern, _nearer, otsu_level, padded, reduced, thresholded, values
from chartmaker.shade.lab import lab_of_xyz, xyz_of_lab
from chartmaker.shade.screen import RGB_OF_XYZ, SRGB_WHITE, encoded

BLACK, WHITE = (0.0, 0.0, 0.0), (1.0, 1.0, 1.0)
OAT, MADDER, WOAD, MOSS = (88.0, 2.0, 12.0), (38.0, 45.0, 28.0), (35.0, -4.0, -22.0), (52.0, -14.0, 34.0)
SHADES = {"A": OAT, "B": MADDER, "C": WOAD, "D": MOSS}
"""Invented shades of four letters."""


def _light_of(lab):
    """Linear sRGB of CIELAB under the screen's white."""
    return xyz_of_lab(lab, white=SRGB_WHITE) @ RGB_OF_XYZ.T


def lights():
    shape = st.tuples(st.integers(1, 6), st.integers(1, 12), st.just(3))
    return shape.flatmap(lambda size: arrays.arrays(np.float64, size, elements=st.floats(0, 1)))


def test_dark_is_figure_and_with_inverts_light_is():
    light = np.array([[BLACK, WHITE, WHITE], [WHITE, WHITE, WHITE]])
    assert rounds_to_text(thresholded(light, letters="CD").rounds) == "C   | ...\nC D | ..x\n"
    assert rounds_to_text(thresholded(light, letters="CD", inverts=True).rounds) == "C D | xxx\nC D | xx.\n"


@pytest.mark.parametrize(("level", "cells"), [(0, "..."), (30, "..x"), (70, ".xx"), (100.5, "xxx")])
def test_the_level_of_value_can_be_set(level, cells):
    grey = _light_of([[[10.0, 0, 0], [50.0, 0, 0], [90.0, 0, 0]]])
    assert rounds_to_text(thresholded(grey, level=level).rounds).split("|")[1].strip() == cells


def test_value_is_what_another_library_makes_of_the_same_colours():
    light = np.random.default_rng(3).random((5, 7, 3))
    assert values(light) == pytest.approx(rgb2lab(encoded(light))[..., 0], abs=0.01)


@pytest.mark.parametrize("seed", range(6))
def test_the_level_divides_as_another_librarys_otsu_does(seed):
    """scikit-image's threshold_otsu, on a histogram fine enough to tell all values apart, is the second library."""
    random = np.random.default_rng(seed)
    value = np.concatenate([random.normal(30, 6 + seed, 300), random.normal(75, 9, 200 + 90 * seed)]).clip(0, 100)
    bins = 20_000
    theirs = threshold_otsu(value, nbins=bins) + np.ptp(value) / bins / 2  # it gives the middle of the last dark bin
    assert np.array_equal(value < otsu_level(value), value <= theirs)


def test_two_values_are_divided_midway_and_a_single_one_is_not():
    assert otsu_level([20.0, 20.0, 60.0]) == pytest.approx(40)
    assert otsu_level([33.0, 33.0]) == MIDDLE_VALUE
    assert otsu_level([33.0]) == MIDDLE_VALUE


def test_a_picture_in_the_letters_own_shades_comes_back_exactly():
    codes = np.array([[0, 1, 0, 0], [2, 0, 2, 2], [3, 3, 1, 3], [2, 2, 2, 2]])
    pattern = reduced(_light_of(np.array(list(SHADES.values()))[codes]), SHADES)
    assert [[line.letter_of(stitch) for stitch in range(4)] for line in pattern.rounds] == [
        ["ABCD"[code] for code in row] for row in codes
    ]
    assert [line.letters for line in pattern.rounds] == ["AB", "CA", "DB", "C"]


@given(lights())
def test_no_round_has_more_than_two_letters_and_they_are_the_best_two(light):
    """Against every pair tried one by one, with the CIELAB of scikit-image."""
    lab = rgb2lab(encoded(light))
    pattern = reduced(light, SHADES)
    for row, line in zip(lab, pattern.rounds, strict=True):
        apart = {letter: np.linalg.norm(row - np.array(shade), axis=-1) for letter, shade in SHADES.items()}
        best = min(np.minimum(apart[one], apart[other]).sum() for one, other in combinations(SHADES, 2))
        chosen = sum(apart[line.letter_of(stitch)][stitch] for stitch in range(len(line)))
        assert len(line.letters) <= 2
        assert line.letters_in_use == line.letters
        assert chosen == pytest.approx(best, abs=0.05 * len(line))


def test_the_ground_is_the_letter_that_the_whole_has_more_of():
    codes = np.array([[0, 0, 0, 0], [0, 1, 1, 1]])
    pattern = reduced(_light_of(np.array([OAT, MADDER])[codes]), {"A": OAT, "B": MADDER})
    assert rounds_to_text(pattern.rounds) == "A B | xxx.\nA   | ....\n"


def test_one_letter_makes_plain_rounds_and_none_is_refused():
    light = np.random.default_rng(1).random((2, 3, 3))
    assert rounds_to_text(reduced(light, {"E": WOAD}).rounds) == "E | ...\nE | ...\n"
    with pytest.raises(ValueError, match="no letter with a shade"):
        reduced(light, {})


@pytest.mark.parametrize("share", [0.1, 0.25, 0.5, 0.8])
def test_diffusion_keeps_the_mean_of_light(share):
    light = np.full((40, 60, 3), share)
    dark = np.array([list(line.cells) for line in thresholded(light, level=50, dithers=True).rounds])
    assert 1 - dark.mean() == pytest.approx(share, abs=0.02)
    pattern = reduced(light, {"A": (100.0, 0, 0), "B": (0.0, 0, 0)}, dithers=True)
    white = np.mean([[line.letter_of(stitch) == "A" for stitch in range(60)] for line in pattern.rounds])
    assert white == pytest.approx(share, abs=0.02)


def test_without_diffusion_an_even_grey_is_plain():
    light = np.full((4, 6, 3), 0.3)
    assert thresholded(light, level=50).longest_float == 0


@given(lights())
def test_diffusion_keeps_to_two_letters_a_round(light):
    pattern = reduced(light, SHADES, dithers=True)
    assert all(len(line.letters) <= 2 for line in pattern.rounds)
    assert [len(line) for line in pattern.rounds] == [light.shape[1]] * light.shape[0]


def test_a_pattern_tells_the_longest_float_of_each_round():
    light = np.array([[BLACK, *[WHITE] * 6], [WHITE] * 7, [BLACK, WHITE, BLACK, WHITE, BLACK, BLACK, BLACK]])
    pattern = thresholded(light, level=50)
    assert pattern.floats == (6, 0, 4)
    assert pattern.longest_float == 6
    assert Pattern(pattern.rounds[1:]).longest_float == 4


def test_the_light_that_diffusion_is_asked_about_has_the_cielab_of_the_arrays():
    random = np.random.default_rng(5)
    shades = [tuple(shade) for shade in SHADES.values()]
    for xyz in random.random((200, 3)) ** 3 * 100:
        apart = np.linalg.norm(np.array(shades[1:3]) - lab_of_xyz(xyz, white=SRGB_WHITE), axis=-1)
        assert _nearer(xyz.tolist(), shades, (1, 2)) == 1 + int(np.argmin(apart))


def test_ground_is_put_beside_a_pattern_the_odd_stitch_at_the_left():
    pattern = thresholded(np.array([[BLACK, WHITE, BLACK]]), level=50)
    assert rounds_to_text(padded(pattern, 6).rounds) == "A B | ..x.x.\n"
    assert padded(pattern, 3) == pattern
    with pytest.raises(ValueError, match="3 stitches wide, more than 2"):
        padded(pattern, 2)


@pytest.mark.parametrize("make", [thresholded, lambda light, **how: reduced(light, SHADES, **how)])
def test_diffusion_tells_how_far_it_is_and_ends_when_told_to(make):
    told = []
    make(np.full((3, 4, 3), 0.5), dithers=True, step=lambda *far: told.append(far))
    assert told == [(0, 3), (1, 3), (2, 3)]

    def stop(_done, _total):
        raise InterruptedError

    with pytest.raises(InterruptedError):
        make(np.full((3, 4, 3), 0.5), dithers=True, step=stop)
