"""How many readings settle a grade: against counting up one by one, and against readings drawn at random."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given

from chartmaker.model.bounds import MOST_READINGS
from chartmaker.model.settings import Limits, Viewing
from chartmaker.shade.lots import LONE_DEVIATION, SCREEN_DEVIATION, shade_of
from chartmaker.shade.settling import settle
from chartmaker.shade.spread import grade, value_difference
from tests.builders import lot
from tests.shade.test_spread import shade, shades

LIMITS = Limits()


def by_counting(first, second):
    """Add readings to both, the one with fewer first, until the grade is that of the means."""
    goal = grade(value_difference(first, second).difference, LIMITS)
    for readings in range(2, MOST_READINGS + 1):
        pair = [replace(one, readings=max(one.readings, readings)) for one in (first, second)]
        is_new = any(new != old for new, old in zip(pair, (first, second), strict=True))
        if is_new and grade(value_difference(*pair).low, LIMITS) == goal:
            return readings
    return None


@given(shades, shades)
def test_the_number_is_the_first_that_counting_finds(first, second):
    found = settle(first, second, LIMITS)
    judged = value_difference(first, second)
    assert found.grade == grade(judged.low, LIMITS)
    assert found.grade_of_mean == grade(judged.difference, LIMITS)
    if found.is_settled:
        assert found.more == (0, 0)
    else:
        assert found.readings == by_counting(first, second)


@given(shades, shades)
def test_with_so_many_more_the_pair_is_settled_and_with_one_less_it_is_not(first, second):
    found = settle(first, second, LIMITS)
    if found.is_settled or found.readings is None:
        return
    enough = [replace(one, readings=one.readings + more) for one, more in zip((first, second), found.more, strict=True)]
    assert sum(found.more) > 0
    assert settle(*enough, LIMITS).is_settled


@given(shades, shades)
def test_the_order_of_the_pair_does_not_matter(first, second):
    one, other = settle(first, second, LIMITS), settle(second, first, LIMITS)
    assert (one.readings, one.more) == (other.readings, other.more[::-1])


def test_a_difference_that_lies_on_the_threshold_is_never_settled():
    found = settle(shade(70, deviation=0.5), shade(50, deviation=0.5), LIMITS)
    assert (found.grade, found.grade_of_mean, found.readings, found.more) == ("soft", "clear", None, (0, 0))


def test_a_difference_below_the_threshold_has_the_lower_grade_for_good():
    found = settle(shade(69, deviation=0.1), shade(50, deviation=0.1), LIMITS)
    assert (found.grade_of_mean, found.is_settled) == ("soft", True)


def test_readings_that_agree_settle_a_pair_at_once():
    assert settle(shade(71, deviation=0), shade(50, deviation=0), LIMITS).is_settled


def test_a_lone_reading_s_spread_is_taken_for_that_of_readings_to_come():
    lone, known = shade_of(lot("a", (72.0, 5.0, 5.0)), Viewing()), shade(50, deviation=1.0, readings=5)
    assert lone.deviation == LONE_DEVIATION
    lone = replace(lone, lab=(71.4, 5.0, 5.0))
    found = settle(lone, known, LIMITS)
    assert found.grade == "soft"
    assert found.readings == by_counting(lone, known)
    assert found.more[0] == found.readings - 1


@pytest.mark.parametrize("rests_on", ["photo", "approximate"])
def test_more_photos_and_screen_colours_settle_nothing(rests_on):
    picked = replace(shade(75, deviation=SCREEN_DEVIATION[0], readings=1), rests_on=rests_on)
    found = settle(picked, shade(50, deviation=0.5, readings=5), LIMITS)
    assert (found.grade, found.grade_of_mean, found.readings) == ("soft", "clear", None)


@pytest.mark.parametrize(("gap", "deviation"), [(21.0, 1.0), (20.6, 0.8), (11.5, 1.5)])
def test_readings_drawn_at_random_settle_the_grade_about_as_often_as_not_with_that_number(gap, deviation):
    # The number brings the bound of the *expected* spread to the threshold, so that drawn ones lie on both sides of it;
    # with a third of the readings nearly all must fall short, with three times as many nearly none.
    found = settle(shade(50 + gap, deviation=deviation, readings=3), shade(50, deviation=deviation, readings=3), LIMITS)
    rng = np.random.default_rng(2026)
    assert found.readings is not None

    def share(readings):
        passed = 0
        for _ in range(400):
            drawn = [rng.normal(mean, deviation, readings) for mean in (50 + gap, 50)]
            pair = [shade(float(one.mean()), deviation=float(one.std(ddof=1)), readings=readings) for one in drawn]
            passed += grade(value_difference(*pair).low, LIMITS) == found.grade_of_mean
        return passed / 400

    assert 0.35 < share(found.readings) < 0.65
    assert share(max(2, found.readings // 3)) < share(found.readings) < share(3 * found.readings)
    assert share(3 * found.readings) > 0.85
