"""Strength, shift and the causes read from invented lots whose making is known."""

import pytest

from chartmaker.dye.causes import RAISED, CauseReading, is_saddened, read_causes
from chartmaker.dye.comparison import Comparison, compare
from chartmaker.model.palette import Assist, Bath, Lot, Mordant, Palette
from chartmaker.model.settings import Viewing
from tests.builders import lot
from tests.dye.invented_dyes import grey, lot_with, red_dye, shed

ALUM = Mordant("alum", 12.0)
BATHS = (
    Bath(id="first", dyestuff="madder", ratio=1.0, mordants=(ALUM,), ph_start=6.8),
    Bath(id="half", dyestuff="madder", ratio=0.5, mordants=(ALUM,), ph_start=6.8),
    Bath(
        id="soda", dyestuff="madder", ratio=1.0, mordants=(ALUM,), ph_start=9.0, assists=(Assist("washing soda", 3.0),)
    ),
    Bath(id="pot", dyestuff="madder", ratio=1.0, mordants=(ALUM,), ph_start=6.8),
    Bath(id="iron", dyestuff="madder", ratio=1.0, mordants=(ALUM, Mordant("iron", 2.0)), ph_start=6.8),
)
REFERENCE = lot_with("reference", red_dye(), bath="first")


def compared(sample: Lot) -> tuple[Comparison, CauseReading]:
    comparison = compare(shed([REFERENCE, sample], BATHS), REFERENCE, sample, Viewing())
    return comparison, read_causes(comparison)


def raised(reading: CauseReading) -> list[str]:
    return [line.cause for line in reading.suspects if line.standing == RAISED]


@pytest.mark.parametrize("factor", [0.1, 0.5, 0.8, 1.3, 3.0])
def test_a_known_strength_is_found_and_leaves_no_shift(factor: float) -> None:
    comparison, _ = compared(lot_with("sample", factor * red_dye(), seed=2))
    assert comparison.strength is not None
    assert comparison.strength.low <= factor * 1.02
    assert comparison.strength.high >= factor * 0.98
    assert comparison.strength.factor == pytest.approx(factor, rel=0.04)
    assert not comparison.strength.has_shift


def test_the_interval_of_strength_holds_about_as_often_as_told_and_no_shift_is_made_up() -> None:
    """A 90 % interval on 40 pairs of lots: fewer than 31 hits would come by chance once in a hundred runs."""
    hits = 0
    for seed in range(40):
        first = lot_with("first", red_dye(), seed=1000 + seed, scatter=0.05, readings=4)
        second = lot_with("second", 0.7 * red_dye(), seed=5000 + seed, scatter=0.05, readings=4)
        strength = compare(shed([first, second]), first, second, Viewing()).strength
        assert strength is not None
        assert not strength.has_shift
        hits += strength.low <= 0.7 <= strength.high
    assert hits >= 31


def test_half_the_dyestuff_is_a_weaker_bath_that_the_ratio_explains() -> None:
    comparison, reading = compared(lot_with("sample", 0.5 * red_dye(), seed=2, bath="half"))
    assert reading.strength.startswith("The bath was weaker")
    assert "The ratio alone, 0.5 times the dyestuff, would explain that" in reading.strength
    assert "same within the readings" in reading.shift
    assert reading.suspects == ()
    assert "ratio 1.0 against 0.5" in reading.records
    assert [row.key for row in comparison.recipe_differences] == ["ratio", "bath"]


def test_a_second_exhaust_is_told_as_one() -> None:
    _, reading = compared(lot_with("sample", 0.45**2 * red_dye(), seed=2, bath="first", load=3))
    assert reading.strength.startswith("The bath was more exhausted, load 3 against 1")
    assert reading.suspects == ()


def test_an_alkaline_bath_moves_a_red_towards_blue() -> None:
    comparison, reading = compared(lot_with("sample", red_dye(moved_nm=14), seed=2, bath="soda"))
    assert comparison.strength is not None
    assert comparison.strength.has_shift
    assert "towards blue" in reading.shift
    assert raised(reading)[0] == "an alkaline bath"
    assert not is_saddened(comparison.strength)


def test_an_acid_bath_moves_a_red_towards_orange() -> None:
    _, reading = compared(lot_with("sample", red_dye(moved_nm=-14), seed=2))
    assert "towards orange" in reading.shift or "towards yellow" in reading.shift


def test_an_iron_pot_saddens_and_unrecorded_iron_stays_possible() -> None:
    comparison, reading = compared(lot_with("sample", red_dye() + grey(1.2), seed=2, bath="pot"))
    assert comparison.strength is not None
    assert is_saddened(comparison.strength)
    assert "duller" in reading.shift
    assert "about as strong" in reading.strength
    assert "iron in the bath" in [line.cause for line in reading.suspects]
    assert raised(reading) == []


def test_recorded_iron_is_raised_and_weaker_dye_under_it_is_told_too() -> None:
    comparison, reading = compared(lot_with("sample", 0.5 * red_dye() + grey(1.0), seed=2, bath="iron"))
    assert comparison.strength is not None
    assert comparison.strength.own_dye == pytest.approx(0.5, abs=0.1)
    assert "weaker as well" in reading.strength
    assert "iron in the bath" in raised(reading)


def test_where_nothing_differs_nothing_is_claimed() -> None:
    comparison, reading = compared(lot_with("sample", red_dye(), seed=2, bath="first"))
    assert reading.suspects == ()
    assert "The two are the same within the readings." in reading.text
    assert comparison.strength is not None
    assert comparison.strength.low < 1 < comparison.strength.high
    assert "agree" in reading.records


def test_without_spectra_or_an_undyed_base_the_strength_says_why() -> None:
    comparison, reading = compared(lot("typed", labs=[(60, 30, 20), (61, 30, 20)]))
    assert comparison.strength is None
    assert "typed has no spectrum" in reading.text
    bare = Palette(lots=(REFERENCE, lot_with("sample", red_dye())))
    comparison = compare(bare, *bare.lots, Viewing())
    assert comparison.strength is None
    assert "undyed yarn" in comparison.why_no_strength
    assert comparison.ciede2000 is not None


def test_a_lone_reading_makes_it_little_sure() -> None:
    _, reading = compared(lot_with("sample", red_dye(moved_nm=14), readings=1))
    assert "How sure: little" in reading.how_sure


def test_the_same_two_lots_are_told_the_same_every_time() -> None:
    sample = lot_with("sample", 0.7 * red_dye(), seed=3)
    assert compared(sample)[0].strength == compared(sample)[0].strength
