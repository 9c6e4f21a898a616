"""The hat from across the room: angles by trigonometry, sizes to a pixel, and no light lost or made on the way."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.knit.layout import lay_out
from chartmaker.pictures.across_room import (
    draw_from_afar,
    half_round,
    light_from_afar,
    size_on_screen_cm,
)
from chartmaker.pictures.cells import NO_STITCH, flat_cells
from chartmaker.pictures.shades import SURROUND, LetterColours, decoded
from chartmaker.shade.distance import angle_degrees
from tests.builders import chart


def colours(*rgb):
    table = np.full((256, 3), SURROUND, dtype=np.uint8)
    table[: len(rgb)] = rgb
    return LetterColours(table, np.zeros(256, dtype=np.bool_))


BLACK_AND_WHITE = colours((0, 0, 0), (255, 255, 255), (200, 40, 90))


@given(st.floats(0.1, 100), st.floats(50, 2000), st.floats(20, 200))
def test_the_screen_shows_a_thing_under_the_angle_that_it_has_across_the_room(size_cm, distance_cm, eye_cm):
    drawn_cm = size_on_screen_cm(size_cm, distance_cm=distance_cm, eye_cm=eye_cm)
    there = angle_degrees(size_cm, distance_cm=distance_cm)
    assert angle_degrees(drawn_cm, distance_cm=eye_cm) == pytest.approx(there, rel=1e-9)


def test_angles_are_those_of_geometry():
    # A thing twice as wide as it is far fills a right angle; the sun, 1.39 million km at 149.6, about half a degree.
    assert angle_degrees(200, distance_cm=100) == pytest.approx(90)
    assert angle_degrees(1.3927e6, distance_cm=149.6e6) == pytest.approx(0.533, abs=0.001)
    assert math.tan(math.radians(angle_degrees(30, distance_cm=300) / 2)) == pytest.approx(15 / 300)


@given(st.data(), st.floats(0.05, 9), st.floats(0.05, 9))
def test_no_light_is_lost_or_made(data, width, height):
    rounds, columns = data.draw(st.integers(1, 12)), data.draw(st.integers(1, 12))
    line = st.lists(st.sampled_from([0, 1, 2, NO_STITCH]), min_size=columns, max_size=columns)
    letters = np.array(data.draw(st.lists(line, min_size=rounds, max_size=rounds)), dtype=np.uint8)
    light = light_from_afar(letters, BLACK_AND_WHITE, stitch_px=(width, height))
    fabric = BLACK_AND_WHITE.linear[letters].astype(float).sum(axis=(0, 1)) * width * height
    around = decoded(np.array([SURROUND], dtype=np.uint8))[0]
    rest = light.shape[0] * light.shape[1] - rounds * columns * width * height
    assert light.sum(axis=(0, 1)) == pytest.approx(fabric + rest * around, rel=1e-6, abs=1e-5)


@given(st.integers(1, 60), st.integers(1, 60), st.floats(0.05, 9), st.floats(0.05, 9))
def test_the_picture_is_as_large_as_the_fabric_to_a_pixel(columns, rounds, width, height):
    seen = draw_from_afar(np.zeros((rounds, columns), dtype=np.uint8), BLACK_AND_WHITE, stitch_px=(width, height))
    assert 0 <= seen.shape[1] - columns * width < 1 or seen.shape[1] == 1
    assert 0 <= seen.shape[0] - rounds * height < 1 or seen.shape[0] == 1


def test_stripes_too_fine_to_see_are_the_grey_of_half_the_light():
    letters = np.tile(np.array([[0, 1]], dtype=np.uint8), (8, 8))
    seen = draw_from_afar(letters, BLACK_AND_WHITE, stitch_px=(0.25, 0.25))
    # sRGB 188 is half of the light of white; the mean of the codes, 127, would be far too dark.
    assert np.unique(seen).tolist() == [188]


def test_round_one_is_at_the_bottom_and_stitch_one_at_the_right():
    letters = np.array([[1, 0, 0], [0, 0, 0]], dtype=np.uint8)
    seen = draw_from_afar(letters, BLACK_AND_WHITE, stitch_px=(2, 2))
    assert (seen[2:, 4:] == 255).all()
    assert seen.sum() == 4 * 3 * 255


def test_half_of_the_round_is_seen_at_once():
    design = chart("A B | x.x.\nA B | ....", times=36)
    letters = half_round(flat_cells(design, lay_out(design)))
    assert letters.shape == (2, 72)
