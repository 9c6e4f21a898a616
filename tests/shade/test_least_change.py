from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.model.settings import Limits, Viewing
from chartmaker.shade.difference import delta_h
from chartmaker.shade.least_change import NEUTRAL_CHROMA, Neighbour, least_change
from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.lots import shade_of
from chartmaker.shade.spread import grade, value_difference
from tests.builders import lot

CLEAR = Limits().value_clear


def shade(lightness, hue_deg=60.0, chroma=30.0) -> LotShade:
    """Give the shade of a lot that three readings agree on, so that the bound of a difference is the difference."""
    hue = np.radians(hue_deg)
    lab = (float(lightness), float(chroma * np.cos(hue)), float(chroma * np.sin(hue)))
    return shade_of(lot("a", labs=[lab] * 3), Viewing())


def away_from(*shades) -> list[Neighbour]:
    return [Neighbour(one, CLEAR) for one in shades]


def test_of_the_shades_that_are_clear_the_one_nearest_in_hue_is_found():
    candidates = [shade(52), shade(75, 100), shade(80, 70), shade(90, 20)]
    found = least_change(shade(50), candidates, away_from(shade(48)))
    assert found.index == 2
    assert found.hue_change == pytest.approx(abs(delta_h(shade(50).lab, candidates[2].lab)), abs=1e-6)


def test_no_shade_is_found_where_none_is_clear_of_every_neighbour():
    candidates = [shade(60), shade(30), shade(81)]
    assert least_change(shade(50), candidates, away_from(shade(45), shade(90))) is None
    assert least_change(shade(50), candidates, away_from(shade(45))) is not None


def test_nothing_is_found_among_no_candidates():
    assert least_change(shade(50), [], away_from(shade(45))) is None


def test_without_neighbours_every_candidate_would_do():
    assert least_change(shade(50), [shade(51, 90), shade(52, 61)], []).index == 1


def test_each_neighbour_is_kept_at_its_own_distance():
    candidates = [shade(72), shade(30, 200)]
    near = Neighbour(shade(60), 10.0)
    assert least_change(shade(50), candidates, [*away_from(shade(50)), near]).index == 0
    assert least_change(shade(50), candidates, [*away_from(shade(50)), replace(near, needed=20.0)]).index == 1


def test_a_shade_that_is_clear_by_its_mean_alone_is_passed_over():
    scattered = shade_of(lot("a", labs=[(66.0, 15.0, 26.0), (70.0, 15.0, 26.0), (74.0, 15.0, 26.0)]), Viewing())
    steady = shade(70, 200)
    assert value_difference(scattered, shade(49)).difference > CLEAR
    assert least_change(shade(50), [scattered, steady], away_from(shade(49))).index == 1


def test_where_hues_are_equal_ciede2000_decides():
    candidates = [shade(95), shade(72), shade(85)]
    assert least_change(shade(50), candidates, away_from(shade(50))).index == 1


def test_a_grey_is_not_the_least_change_from_a_full_shade_just_because_it_has_no_hue():
    grey, nearby = shade(80, 0, 0.5), shade(80, 75)
    assert abs(delta_h(shade(50).lab, grey.lab)) < abs(delta_h(shade(50).lab, nearby.lab))
    assert least_change(shade(50), [grey, nearby], away_from(shade(50))).index == 1


def test_from_a_grey_the_change_is_the_chroma_gained():
    from_grey = shade(50, 0, NEUTRAL_CHROMA - 1)
    found = least_change(from_grey, [shade(80, 0, 40), shade(80, 180, 12)], away_from(shade(50)))
    assert (found.index, found.hue_change) == (1, pytest.approx(12 - (NEUTRAL_CHROMA - 1), abs=1e-6))


colours = st.builds(shade, st.floats(0, 100), st.floats(0, 360), st.floats(0, 60))


@given(colours, st.lists(colours, max_size=6), st.lists(colours, max_size=3))
def test_what_is_found_is_clear_of_every_neighbour_and_nothing_clear_is_missed(current, candidates, neighbours):
    clear = [
        index
        for index, candidate in enumerate(candidates)
        if all(grade(value_difference(candidate, one).low, Limits()) == "clear" for one in neighbours)
    ]
    found = least_change(current, candidates, away_from(*neighbours))
    assert (found is None) == (not clear)
    assert found is None or found.index in clear


def test_a_red_turns_to_a_full_orange_rather_than_to_a_dull_yellow():
    red, orange, dull_yellow = shade(42, 30, 42), shade(75, 68, 40), shade(75, 90, 15)
    assert abs(delta_h(red.lab, dull_yellow.lab)) < abs(delta_h(red.lab, orange.lab))
    assert least_change(red, [dull_yellow, orange], away_from(shade(41))).index == 1
