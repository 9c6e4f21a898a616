from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from chartmaker.model.settings import Limits, Viewing
from chartmaker.shade.difference import ciede2000
from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.lots import LONE_DEVIATION, shade_of
from chartmaker.shade.spread import contrast_table, grade, t_95, value_difference
from tests.builders import lot

PRINTED = 0.0005 + 1e-9
"""The table of t is printed to three decimals."""


def shade(value, *, deviation=1.0, readings=4, hue=(5.0, 5.0)):
    return LotShade(
        lot="a",
        viewing=Viewing(),
        lab=(value, *hue),
        deviation=(deviation, 0.5, 0.5),
        mcdm=0.5,
        readings=readings,
        rests_on="lab",
        is_adapted=False,
        srgb=(0, 0, 0),
        is_out_of_gamut=False,
    )


def measured(values, name="a"):
    return shade_of(lot(name, labs=[(value, 5.0, 5.0) for value in values]), Viewing())


shades = st.builds(
    shade,
    st.floats(0, 100),
    deviation=st.floats(0, 10),
    readings=st.integers(1, 64),
    hue=st.tuples(st.floats(-60, 60), st.floats(-60, 60)),
)


@pytest.mark.parametrize("freedom", [*range(1, 31), 40, 60, 100, np.inf])
def test_the_table_of_t_is_scipy_s(freedom):
    assert t_95(1 / freedom) == pytest.approx(stats.t.ppf(0.95, freedom), abs=PRINTED)


@pytest.mark.parametrize(("lowest", "highest", "most"), [(1, 2, 0.091), (2, 3, 0.008), (3, 5, 0.002), (5, 1000, 0.001)])
def test_between_its_rows_t_errs_on_the_cautious_side_and_by_no_more_than_it_says(lowest, highest, most):
    freedom = np.linspace(lowest, highest, 2001)
    excess = t_95(1 / freedom) - stats.t.ppf(0.95, freedom)
    assert excess.min() >= -PRINTED
    assert excess.max() <= most


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ([61.0, 62.5, 60.2, 61.8], [40.1, 39.0, 41.7, 40.4, 38.9]),
        ([30.5, 31.0, 29.2], [33.0, 30.9, 35.2, 31.8, 33.3, 32.0, 34.1]),
        (list(np.random.default_rng(11).normal(50, 1.5, 40)), list(np.random.default_rng(12).normal(35, 0.3, 64))),
    ],
)
def test_the_low_end_is_that_of_welch_s_interval_by_scipy(first, second):
    # A two-sided interval of 90 % has the one-sided 95 % bound as its low end.
    interval = stats.ttest_ind(first, second, equal_var=False).confidence_interval(0.90)
    expected = max(0, min(abs(interval.low), abs(interval.high)) if interval.low * interval.high > 0 else 0)
    found = value_difference(measured(first, "a"), measured(second, "b"))
    assert found.difference == pytest.approx(abs(np.mean(first) - np.mean(second)), rel=1e-12)
    assert found.low == pytest.approx(expected, abs=0.005)
    assert 0 < found.low < found.difference


def test_two_lone_readings_count_their_stated_deviation_as_known():
    # 1.645 is the 0.95 quantile of the normal distribution.
    first, second = (shade_of(lot(name, (value, 0.0, 0.0)), Viewing()) for name, value in (("a", 60.0), ("b", 40.0)))
    found = value_difference(first, second)
    assert found.difference == 20
    assert found.low == pytest.approx(20 - 1.645 * np.sqrt(2) * LONE_DEVIATION[0])


def test_a_lone_reading_beside_a_measured_lot_leaves_the_doubt_to_the_latter():
    first, second = shade(60, deviation=1.0, readings=1), shade(40, deviation=2.0, readings=5)
    freedom = (1 + 4 / 5) ** 2 / ((4 / 5) ** 2 / 4)  # Welch and Satterthwaite, with ν infinite for the lone one
    expected = 20 - stats.t.ppf(0.95, freedom) * np.sqrt(1 + 4 / 5)
    assert value_difference(first, second).low == pytest.approx(expected, abs=0.002)


def test_a_shade_without_readings_counts_as_one_reading():
    assert value_difference(shade(60, readings=0), shade(40)) == value_difference(shade(60, readings=1), shade(40))


def test_readings_that_agree_leave_the_difference_as_it_is():
    found = value_difference(shade(60, deviation=0), shade(40, deviation=0))
    assert (found.difference, found.low) == (20, 20)


@given(shades, shades)
def test_the_bound_lies_between_nought_and_the_difference_whatever_the_order(first, second):
    found = value_difference(first, second)
    assert 0 <= found.low <= found.difference
    assert found == value_difference(second, first)


@given(shades, shades, st.floats(1, 5))
def test_more_scatter_never_raises_the_bound(first, second, factor):
    wilder = [replace(one, deviation=tuple(factor * part for part in one.deviation)) for one in (first, second)]
    assert value_difference(*wilder).low <= value_difference(first, second).low + 1e-9


@pytest.mark.parametrize(
    ("low", "expected"), [(20, "clear"), (35, "clear"), (19.999, "soft"), (10, "soft"), (9.999, "lost"), (0, "lost")]
)
def test_a_grade_begins_at_its_limit(low, expected):
    assert grade(low, Limits()) == expected


def test_the_limits_belong_to_the_design():
    assert grade(12, Limits(value_clear=12, value_soft=6)) == "clear"
    assert grade(5, Limits(value_clear=12, value_soft=6)) == "lost"


@given(st.lists(shades, max_size=8))
def test_the_table_holds_for_every_pair_what_the_pair_gives_alone(known):
    table = contrast_table(known)
    assert all(column.shape == (len(known), len(known)) for column in table)
    for row, first in enumerate(known):
        for column, second in enumerate(known):
            alone = value_difference(first, second)
            if row != column:
                assert table.difference[row, column] == pytest.approx(alone.difference, abs=1e-9)
                assert table.low[row, column] == pytest.approx(alone.low, abs=1e-9)
                assert table.ciede2000[row, column] == pytest.approx(ciede2000(first.lab, second.lab), abs=1e-7)


@given(st.lists(shades, max_size=8))
def test_the_table_is_symmetric_with_nothing_on_its_diagonal(known):
    for column in contrast_table(known):
        assert (column == column.T).all()
        assert not column.diagonal().any()


def test_the_table_cannot_be_changed_by_who_holds_it():
    with pytest.raises(ValueError, match="read-only"):
        contrast_table([shade(10), shade(20)]).low[0, 1] = 5
