from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from skimage.color import deltaE_ciede2000

from chartmaker.shade.colorimetry import colour
from chartmaker.shade.difference import ciede2000, delta_h
from tests.shade.second_library import published_lab_of_target

PAIRS = np.loadtxt(Path(__file__).parent / "sharma_2005.csv", delimiter=",")
"""Sharma, Wu and Dalal 2005, table 1."""
FOUR_DECIMALS = 0.00005 + 1e-9
"""The table is printed to four decimals."""
ROUNDING = 1e-9
"""Two implementations of one formula in double precision."""

labs = st.tuples(st.floats(0, 100), st.floats(-128, 128), st.floats(-128, 128))


def random_labs(count: int, *, seed: int) -> np.ndarray:
    return np.random.default_rng(seed).uniform([0, -100, -100], [100, 100, 100], (count, 3))


def test_the_table_has_all_34_pairs():
    assert PAIRS.shape == (34, 7)


@pytest.mark.parametrize("row", range(34))
def test_ciede2000_gives_the_published_difference_of_each_pair(row):
    pair = PAIRS[row]
    assert ciede2000(pair[:3], pair[3:6]) == pytest.approx(pair[6], abs=FOUR_DECIMALS)


def test_ciede2000_gives_the_published_differences_in_the_other_order():
    assert ciede2000(PAIRS[:, 3:6], PAIRS[:, :3]) == pytest.approx(PAIRS[:, 6], abs=FOUR_DECIMALS)


def test_a_row_of_pairs_gives_what_each_pair_gives_alone():
    alone = [float(ciede2000(pair[:3], pair[3:6])) for pair in PAIRS]
    assert ciede2000(PAIRS[:, :3], PAIRS[:, 3:6]).tolist() == alone


def test_one_colour_is_compared_with_a_table_of_others():
    table = random_labs(12, seed=1).reshape(3, 4, 3)
    distances = ciede2000(table[1, 2], table)
    assert distances.shape == (3, 4)
    assert distances[1, 2] == 0
    assert distances[0, 3] == ciede2000(table[1, 2], table[0, 3])


def test_ciede2000_agrees_with_colour_science_and_scikit_image():
    first, second = random_labs(2000, seed=2), random_labs(2000, seed=3)
    ours = ciede2000(first, second)
    assert ours == pytest.approx(colour.delta_E(first, second, method="CIE 2000"), abs=ROUNDING)
    assert ours == pytest.approx(deltaE_ciede2000(first, second), abs=ROUNDING)


def test_the_two_editions_of_the_24_patch_target_differ_as_published():
    # reference-facts: mixing them up costs mean CIEDE2000 0.85, worst 1.95 (maker's data in colour-science).
    before = published_lab_of_target("ColorChecker24 - Before November 2014")
    after = published_lab_of_target("ColorChecker24 - After November 2014")
    distances = ciede2000(before, after)
    assert distances.mean() == pytest.approx(0.85, abs=0.005)
    assert distances.max() == pytest.approx(1.95, abs=0.005)


def test_exactly_opposite_hues_count_as_no_more_than_180_degrees_apart():
    # Pair 14 of the paper is one: its mean hue lies between the two, as it does for hues a hair less than opposite.
    hue = np.radians(np.linspace(1, 179, 500))
    first = np.column_stack([np.full(500, 50), 30 * np.cos(hue), 30 * np.sin(hue)])
    opposite = first * (1, -1, -1)
    hair_less = np.column_stack([first[:, 0], -30 * np.cos(hue - 1e-7), -30 * np.sin(hue - 1e-7)])
    assert ciede2000(first, opposite) == pytest.approx(ciede2000(first, hair_less), abs=0.0001)


@given(labs, labs)
def test_ciede2000_is_symmetric_and_never_negative(first, second):
    there, back = ciede2000(first, second), ciede2000(second, first)
    assert there >= 0
    assert there == pytest.approx(back, abs=1e-7)


@given(labs)
def test_a_colour_differs_from_itself_by_nothing(lab):
    assert ciede2000(lab, lab) == 0
    assert delta_h(lab, lab) == 0


@given(labs, labs)
def test_the_hue_difference_completes_lightness_and_chroma_to_the_whole_difference(first, second):
    # CIE 15:2018: ΔE*ab² = ΔL*² + ΔC*ab² + ΔH*ab².
    first, second = np.array(first), np.array(second)
    total = np.sum((second - first) ** 2)
    lightness = second[0] - first[0]
    chroma = np.hypot(*second[1:]) - np.hypot(*first[1:])
    assert lightness**2 + chroma**2 + delta_h(first, second) ** 2 == pytest.approx(total, abs=1e-6)


def test_the_hue_difference_has_the_sign_of_the_turn():
    red, orange = (50, 40, 0), (50, 30, 30)
    assert delta_h(red, orange) > 0
    assert delta_h(orange, red) == -delta_h(red, orange)
    assert delta_h((50, 40, -1), (50, 40, 1)) == pytest.approx(2, abs=0.01)  # across the zero of the hue circle


def test_a_grey_has_no_hue_to_differ_by():
    assert delta_h((50, 0, 0), (50, 30, 40)) == 0
