from fractions import Fraction

import pytest

from chartmaker.knit.sizes import size_named, sizes, us_hat_size, us_hat_size_text
from chartmaker.model.hat import Hat

WHO_TABLE = """
month   boys   girls
0       34.46  33.88
3       40.50  39.52
6       43.34  42.21
12      46.06  44.89
24      48.25  47.18
36      49.46  48.51
60      50.74  49.92
"""
"""WHO Child Growth Standards 2007, `hcanthro.txt`, medians."""
AGES = {0: "newborn", 3: "3 months", 6: "6 months", 12: "1 year", 24: "2 years", 36: "3 years", 60: "5 years"}


@pytest.mark.parametrize("row", WHO_TABLE.strip().splitlines()[1:])
def test_childrens_heads_are_those_of_the_who_table(row):
    month, boys, girls = row.split()
    assert size_named(f"{AGES[int(month)]}, boy").head_cm == float(boys)
    assert size_named(f"{AGES[int(month)]}, girl").head_cm == float(girls)
    assert "WHO" in size_named(f"{AGES[int(month)]}, girl").source


@pytest.mark.parametrize(
    ("name", "head_cm"),
    # ANSUR II public data (Gordon et al. 2014): women P5 532 mm, mean 561.1 mm, P95 597 mm
    [("woman, 5th percentile", 53.2), ("woman, mean", 56.11), ("woman, 95th percentile", 59.7)],
)
def test_womens_heads_are_those_of_the_published_data(name, head_cm):
    assert size_named(name).head_cm == pytest.approx(head_cm)


def test_mens_heads_follow_the_normal_distribution_and_say_that_they_are_from_memory():
    low, mean, high = (size_named(f"man, {which}") for which in ("5th percentile", "mean", "95th percentile"))
    assert mean.head_cm == 57.4
    assert mean.head_cm - low.head_cm == pytest.approx(1.645 * 1.6, abs=0.06)
    assert high.head_cm - mean.head_cm == pytest.approx(1.645 * 1.6, abs=0.06)
    assert all("from memory" in size.source for size in (low, mean, high))


@pytest.mark.parametrize(
    ("name", "inches"),
    # Craft Yarn Council's head table; the rows of adults are from memory
    [("preemie", 10.5), ("baby", 15), ("toddler", 17), ("child", 19), ("woman", 21), ("man", 23)],
)
def test_the_trades_sizes_are_the_middle_of_its_ranges(name, inches):
    size = size_named(f"trade {name}")
    assert size.head_cm == pytest.approx(inches * 2.54, abs=0.05)
    assert ("from memory" in size.source) == (name in ("woman", "man"))


@pytest.mark.parametrize(
    ("girth_cm", "size", "text"),
    # The trade's tables: 56 cm is a 7, 60 cm a 7 1/2.
    [(56, Fraction(7), "7"), (60, Fraction(15, 2), "7 1/2")],
)
def test_hat_sizes_are_those_of_the_trades_tables(girth_cm, size, text):
    assert us_hat_size(girth_cm) == size
    assert us_hat_size_text(girth_cm) == text


def test_every_size_has_its_own_name_a_source_and_a_head_that_a_hat_can_have():
    assert len({size.name for size in sizes()}) == len(sizes())
    assert all(size.source for size in sizes())
    for size in sizes():
        Hat(head_cm=size.head_cm)


def test_a_size_is_found_however_it_is_spelt_and_one_that_is_not_there_is_refused():
    assert size_named(" Woman,  MEAN ") == size_named("woman, mean")
    with pytest.raises(ValueError, match="there is no size 'giant'"):
        size_named("giant")
