import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.knit.units import IMPERIAL, METRIC, SYSTEMS, units_named

KINDS = ("length", "gauge", "yarn", "weight", "grist")


def test_an_inch_a_yard_and_an_ounce_are_what_the_agreement_of_1959_makes_them():
    # International yard and pound agreement, 1959: 1 yd = 0.9144 m, 1 lb = 0.45359237 kg, so 1 in = 1 yd / 36
    # and 1 oz = 1 lb / 16.
    assert IMPERIAL.length.shown(100 * 0.9144 / 36) == pytest.approx(1, rel=1e-12)
    assert IMPERIAL.yarn.shown(0.9144) == pytest.approx(1, rel=1e-12)
    assert IMPERIAL.weight.shown(453.59237 / 16) == pytest.approx(1, rel=1e-12)


def test_published_pairs_of_measures_agree():
    # Trade tables of hat sizes: the size is the girth in inches over π, to an eighth; 56 cm is size 7, 60 cm 7 1/2.
    sizes = [round(8 * IMPERIAL.length.shown(girth_cm) / math.pi) / 8 for girth_cm in (56, 60)]
    assert sizes == [7, 7.5]
    # A spinner's published label of jumper weight (reference-facts.md): 115 yd, 105 m, in 25 g.
    assert round(IMPERIAL.yarn.shown(105)) == 115
    assert IMPERIAL.grist.shown(420) == pytest.approx(115 / 25 * 28.349523125, rel=2e-3)


def test_a_gauge_is_counted_over_four_inches_which_are_a_little_more_than_10_cm():
    assert IMPERIAL.gauge.shown(30) == pytest.approx(30 * 10.16 / 10)


@given(st.sampled_from(SYSTEMS), st.sampled_from(KINDS), st.floats(-1000, 1000))
def test_what_is_shown_and_typed_again_is_what_it_was(units, kind, metric):
    quantity = getattr(units, kind)
    assert quantity.metric(quantity.shown(metric)) == pytest.approx(metric, rel=1e-12, abs=1e-12)


def test_metric_numbers_are_shown_as_they_are():
    assert all(getattr(METRIC, kind).shown(12.34) == 12.34 for kind in KINDS)


def test_a_length_is_written_with_its_unit_and_a_true_minus_sign():
    assert METRIC.length.told(56) == "56.0 cm"
    assert IMPERIAL.length.told(56) == "22.05 in"
    assert METRIC.length.told(-1.25) == "−1.2 cm"


def test_a_name_that_is_none_gives_the_metric_system():
    assert units_named("imperial") is IMPERIAL
    assert units_named("cubits") is METRIC
