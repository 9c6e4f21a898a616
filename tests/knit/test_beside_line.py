import math
from itertools import pairwise

import pytest

from chartmaker.knit.beside_line import KEPT_SHARE, beside


def gap(point, line):
    """Give how far a point is from a line, by a slow search along it."""
    steps = [
        (a[0] + (b[0] - a[0]) * part / 50, a[1] + (b[1] - a[1]) * part / 50)
        for a, b in pairwise(line)
        for part in range(51)
    ]
    return min(math.dist(point, step) for step in steps)


def test_beside_a_straight_line_upwards_it_runs_at_its_left():
    line = [(50.0, 100.0 - step) for step in range(40)]
    moved, point_of = beside(line, 10)
    assert moved == tuple((pytest.approx(40), pytest.approx(y)) for _, y in line)
    assert point_of == tuple(range(40))


def test_beside_an_arc_it_is_an_arc_of_the_larger_radius():
    line = [(-40 * math.cos(turn / 100), -40 * math.sin(turn / 100)) for turn in range(158)]
    moved, _ = beside(line, 8)
    assert [math.hypot(*point) for point in moved] == pytest.approx([48] * len(moved), rel=0.02)


@pytest.mark.parametrize("distance", [4, 12])
def test_it_keeps_its_distance_in_hollows_and_round_corners(distance):
    hollow = [(50.0, 100.0 - step) for step in range(30)] + [(50.0 - step, 70.0) for step in range(30)]
    hollow += [(20.0, 70.0 - step) for step in range(30)] + [(20.0 + step, 40.0) for step in range(30)]
    moved, point_of = beside(hollow, distance)
    assert min(gap(point, hollow) for point in moved) >= 0.98 * KEPT_SHARE * distance
    assert len(point_of) == len(hollow)
    assert list(point_of) == sorted(point_of)


def test_small_steps_of_the_line_do_not_show():
    stairs = [(50.0 - step + (step % 3), 100.0 - step) for step in range(60)]
    moved, _ = beside(stairs, 12)
    bends = [
        abs(math.remainder(math.atan2(c[1] - b[1], c[0] - b[0]) - math.atan2(b[1] - a[1], b[0] - a[0]), math.tau))
        for a, b, c in zip(moved[8:-8], moved[9:-7], moved[10:-6], strict=True)
    ]
    assert max(bends) < math.radians(12)


def test_two_points_are_enough():
    assert beside([(0.0, 10.0), (0.0, 0.0)], 3) == (((-3.0, 10.0), (-3.0, 0.0)), (0, 1))
