"""Outliers against Grubbs' published table and scipy, their false alarms by simulation, and MCDM by its definition."""

from statistics import fmean

import numpy as np
import pytest
from scipy import stats

from chartmaker.model.palette import Lot
from chartmaker.model.settings import Viewing
from chartmaker.shade import trust
from chartmaker.shade.colorimetry import colour
from chartmaker.shade.trust import distances_from_others, find_outlier, trust_of, trusts_of, two_sided_tail
from tests.builders import flat_spectrum, lot

STEADY = [(40.0, 30.0, 20.0), (40.6, 29.4, 20.5), (39.7, 30.3, 19.8), (40.2, 29.8, 20.6), (40.4, 30.5, 19.6)]
GRUBBS = {3: 1.155, 4: 1.481, 5: 1.715, 6: 1.887, 7: 2.020, 8: 2.126, 9: 2.215, 10: 2.290}
"""Critical G at a one-sided 2.5 % (two-sided 5 %) by number of readings: Grubbs 1969, table I; written from memory."""


def with_scatter(number: int, *, seed: int, scatter: float = 1.0) -> np.ndarray:
    return np.array([50.0, 20.0, 10.0]) + np.random.default_rng(seed).normal(0, scatter, (number, 3))


def grubbs_of(values: np.ndarray) -> float:
    return float(np.abs(values - values.mean()).max() / values.std(ddof=1))


@pytest.mark.parametrize("freedom", range(1, 63))
@pytest.mark.parametrize("t", [0.0, 0.3, 1.0, 2.5, 7.0, 40.0])
def test_the_tail_of_student_s_t_is_scipy_s(freedom, t):
    assert two_sided_tail(t, freedom) == pytest.approx(2 * stats.t.sf(t, freedom), abs=1e-12)


@pytest.mark.parametrize("number", GRUBBS)
def test_the_chance_of_grubbs_printed_critical_value_is_the_printed_one(number):
    # G as t with n - 2 degrees of freedom; n times its tail is the chance that any of n readings goes so far. The table
    # has three decimals, between which the chance of three readings moves much: so G is compared, not the chance.
    critical = stats.t.isf(0.05 / (2 * number), number - 2)
    g = (number - 1) / np.sqrt(number) * np.sqrt(critical**2 / (number - 2 + critical**2))
    assert g == pytest.approx(GRUBBS[number], abs=0.0011)
    assert number * two_sided_tail(critical, number - 2) == pytest.approx(0.05, rel=1e-9)


@pytest.mark.parametrize("number", [4, 6, 12])
def test_the_confidence_is_that_of_grubbs_g_for_three_coordinates(number):
    lab = with_scatter(number, seed=number)
    lab[1, 0] += 25
    g = grubbs_of(lab[:, 0])
    t = np.sqrt(number * (number - 2) * g**2 / ((number - 1) ** 2 - number * g**2))
    found = find_outlier(lab)
    assert found is not None
    assert 1 - found.confidence == pytest.approx(3 * number * 2 * stats.t.sf(t, number - 2), rel=1e-6)
    assert (found.index, found.coordinate) == (1, "L*")
    assert found.off == pytest.approx(lab[1, 0] - np.delete(lab[:, 0], 1).mean())


def test_readings_that_belong_together_are_rarely_accused(monkeypatch):
    # With the least harm of one unit left out, no more than one set in twenty of whatever size.
    monkeypatch.setattr(trust, "LEAST_DISTANCE", 0.0)
    for number in (3, 4, 5, 8, 16):
        sets = [with_scatter(number, seed=seed) for seed in range(1500)]
        accused = sum(find_outlier(one) is not None for one in sets)
        # 0.05 and 3 standard errors of a share of 1500. Three independent coordinates spend nearly all of it, but for
        # the fewest readings, whose scatter is seldom so far below the least that is taken for it.
        assert accused / 1500 < 0.05 + 3 * np.sqrt(0.05 * 0.95 / 1500), number
        assert number < 5 or accused / 1500 > 0.02, number


def test_a_reading_far_from_the_others_is_found_nearly_always():
    found = 0
    for seed in range(300):
        lab = with_scatter(8, seed=seed)
        lab[seed % 8] += (10, 0, 0)
        outlier = find_outlier(lab)
        found += outlier is not None and outlier.index == seed % 8
    assert found > 290


@pytest.mark.parametrize("count", [0, 1, 2])
def test_of_fewer_than_three_none_is_named(count):
    lab = np.array([(40.0, 0, 0), (90.0, 0, 0)])[:count].reshape(-1, 3)
    assert find_outlier(lab) is None


def test_one_of_three_is_named_only_if_the_others_are_very_near_each_other():
    assert find_outlier([(40.0, 0, 0), (41.0, 0, 0), (50.0, 0, 0)]) is None
    named = find_outlier([(40.0, 0, 0), (40.1, 0, 0), (70.0, 0, 0)])
    assert named is not None
    assert named.index == 2


def test_an_outlier_that_nobody_could_see_is_left_alone():
    near = [(40.0, 0, 0), (40.01, 0, 0), (39.99, 0, 0), (40.0, 0.01, 0), (40.0, 0, 0.01)]
    assert find_outlier([*near, (40.9, 0, 0)]) is None
    assert find_outlier([*near, (43.0, 0, 0)]) is not None


def test_readings_rounded_to_the_same_digit_do_not_make_a_small_step_certain():
    assert find_outlier([(40.0, 0, 0)] * 3 + [(42.0, 0, 0)]) is not None
    assert find_outlier([(40.0, 0, 0)] * 3 + [(41.2, 0, 0)]) is None  # three that agree prove no more than 0.1
    assert find_outlier([(40.0, 0, 0)] * 2 + [(42.0, 0, 0)]) is None  # two that agree prove too little


def test_distances_are_from_the_mean_of_the_others():
    found = distances_from_others(STEADY)
    for index, one in enumerate(STEADY):
        others = np.mean([other for place, other in enumerate(STEADY) if place != index], axis=0)
        assert found[index] == pytest.approx(colour.delta_E(others, one), rel=1e-9)


def test_a_lot_is_told_with_its_spread_and_its_outlier():
    found = trust_of(lot("a", labs=[*STEADY, (48.0, 30.0, 20.0)]), Viewing())
    assert found is not None
    assert found.shade.readings == len(found.distances) == 6
    assert found.outlier is not None
    assert found.outlier.index == 5
    assert found.outlier.distance == found.distances[5] == max(found.distances)
    assert 0.95 <= found.outlier.confidence <= 1


def test_mcdm_is_the_mean_distance_of_the_readings_from_the_mean_of_all():
    # ASTM E2214, with colour-science's CIEDE2000; the outlier's distances leave the reading itself out.
    found = trust_of(lot("a", labs=STEADY), Viewing())
    assert found is not None
    whole = np.mean(STEADY, axis=0)
    assert found.shade.mcdm == pytest.approx(fmean(colour.delta_E(one, whole) for one in STEADY), rel=1e-9)
    assert found.shade.mcdm < fmean(found.distances)


def test_a_lone_reading_has_no_distance_and_a_lot_without_any_no_trust():
    alone, bare = trusts_of((Lot(id="a", name="a", readings=(flat_spectrum(),)), lot("b")), Viewing())
    assert alone is not None
    assert (alone.distances, alone.outlier) == ((), None)
    assert bare is None
