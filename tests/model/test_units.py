import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.model.units import IMPERIAL, METRIC, SYSTEMS, Measured, at_the_pot, in_units, reason, units_named

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


def test_water_boils_at_212_and_freezes_at_32_degrees_fahrenheit():
    assert IMPERIAL.heat.told(100) == "212 °F"
    assert IMPERIAL.heat.told(0) == "32 °F"
    assert IMPERIAL.heat.metric(212) == pytest.approx(100)
    assert METRIC.heat.told(80) == "80 °C"


@pytest.mark.parametrize(
    ("grams", "metric", "imperial"),
    [(4.04, "4.0 g", "0.14 oz"), (113.4, "113 g", "4.00 oz"), (9.96, "10 g", "0.35 oz"), (453.6, "454 g", "16.0 oz")],
)
def test_weights_that_nobody_needs_finely_keep_about_three_figures(grams, metric, imperial):
    assert METRIC.weight.rough(grams) == metric
    assert IMPERIAL.weight.rough(grams) == imperial


@pytest.mark.parametrize(
    ("cm", "metric", "imperial"),
    [(57.0, "57 cm", "22.44 in"), (2.5, "2.5 cm", "0.98 in"), (57.15, "57.15 cm", "22.5 in")],
)
def test_what_somebody_chose_is_told_without_idle_zeros(cm, metric, imperial):
    assert METRIC.length.brief(cm) == metric
    assert IMPERIAL.length.brief(cm) == imperial


def test_a_hundred_in_brief_keeps_its_zeros():
    assert METRIC.length.brief(100) == "100 cm"
    assert METRIC.length.brief(0) == "0 cm"


def test_fibre_for_a_bath_is_weighed_in_grams_and_known_in_ounces_too():
    assert at_the_pot(113.4, METRIC) == "113 g"
    assert at_the_pot(113.4, IMPERIAL) == "113 g (4.00 oz)"


def test_a_sentence_is_metric_as_text_and_is_told_anew_from_the_exact_number():
    """2.96 cm are 1.17 in; the 3.0 cm that a metric reader sees would be 1.18."""
    sentence = Measured(lambda units: f"a float of {units.length.told(2.96)}")
    assert sentence == "a float of 3.0 cm"
    assert in_units(sentence, IMPERIAL) == "a float of 1.17 in"
    assert in_units("named 3 cm rib", IMPERIAL) == "named 3 cm rib"


def test_a_refusal_gives_its_sentence_back_to_be_told_in_other_units():
    refusal = ValueError(Measured(lambda units: f"{units.length.told(2.54)} is too short"))
    assert str(refusal) == "2.5 cm is too short"
    assert in_units(reason(refusal), IMPERIAL) == "1.00 in is too short"
    assert reason(KeyError("a")) == "a"
    assert reason(OSError(2, "gone")) == str(OSError(2, "gone"))
