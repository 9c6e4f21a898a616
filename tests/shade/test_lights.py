"""Other lights against colour-science from the spectrum on, and against spectra made to match in one light alone."""

import numpy as np
import pytest

from chartmaker.model.palette import Lot
from chartmaker.model.reading import Spectrum
from chartmaker.model.settings import Viewing
from chartmaker.shade.colorimetry import colour
from chartmaker.shade.lights import (
    LIGHTS,
    MATCHING,
    PARTED,
    inconstancies_of,
    inconstancies_of_all,
    metameric_pairs,
    other_lights,
    pairs_in_lights,
)
from chartmaker.shade.lots import shade_of
from chartmaker.shade.weights import Bands, weights, white_point
from tests.builders import flat_spectrum, lot
from tests.shade.second_library import xyz_by_colour_science

NM = np.arange(400, 701, 10)
BANDS = Bands(400, 10, 31)


def spectral(name: str, reflectance: np.ndarray) -> Lot:
    reading = Spectrum(start_nm=400, step_nm=10, reflectance=tuple(reflectance.tolist()))
    return Lot(id=name, name=name, readings=(reading,))


def bump(centre: float, width: float, height: float) -> np.ndarray:
    return height * np.exp(-(((NM - centre) / width) ** 2))


RED = spectral("red", 0.08 + bump(690, 70, 0.6))
BLUE = spectral("blue", 0.06 + bump(450, 40, 0.3) + bump(700, 20, 0.2))


def metamer_of(reflectance: np.ndarray, viewing: Viewing) -> np.ndarray:
    """Add what `viewing` cannot see: the part of a wave that lies in the null space of its three weighting factors."""
    wave = 0.5 * np.sin(NM / 24)
    factors = weights(BANDS, viewing)
    black = wave - factors @ np.linalg.lstsq(factors, wave, rcond=None)[0]
    return reflectance + 0.12 * black / np.abs(black).max()


@pytest.mark.parametrize("one", [RED, BLUE], ids=lambda one: one.id)
def test_inconstancy_is_what_colour_science_makes_of_the_spectrum(one):
    reference = Viewing()
    white = white_point(reference)
    lab = colour.XYZ_to_Lab(
        xyz_by_colour_science(one.readings[0].reflectance, NM, reference) / 100, colour.XYZ_to_xy(white)
    )
    found = inconstancies_of(one, reference)
    assert [item.illuminant for item in found] == ["A", "LED-B3", "FL11"]
    for item in found:
        light = Viewing(illuminant=item.illuminant)
        xyz = xyz_by_colour_science(one.readings[0].reflectance, NM, light)
        seen = colour.adaptation.chromatic_adaptation_VonKries(xyz, white_point(light), white, transform="CAT16")
        expected = colour.delta_E(lab, colour.XYZ_to_Lab(seen / 100, colour.XYZ_to_xy(white)))
        assert item.ciede2000 == pytest.approx(expected, abs=0.002)
        assert item.ciede2000 > 1
        assert item.shade == shade_of(one, light)


def test_a_grey_that_reflects_all_alike_is_constant():
    # 400-700 nm leave the ends of the range to the last bands: nothing else remains.
    grey = Lot(id="grey", name="grey", readings=(flat_spectrum(0.3),))
    assert all(item.ciede2000 < 1e-6 for item in inconstancies_of(grey, Viewing()))


def test_a_lot_without_spectra_is_merely_adapted_and_says_so():
    found = inconstancies_of(lot("a", (50, 30, 20)), Viewing())
    assert len(found) == 3
    for item in found:
        assert item.ciede2000 is None
        assert item.shade.is_adapted


def test_one_reading_without_a_spectrum_spoils_the_figure():
    mixed = Lot(id="a", name="a", readings=(*RED.readings, *lot("b", (50, 30, 20)).readings))
    assert all(item.ciede2000 is None for item in inconstancies_of(mixed, Viewing()))


def test_a_lot_without_a_shade_has_nothing_to_tell():
    assert inconstancies_of(lot("bare"), Viewing()) == ()


def test_many_lots_at_once_give_what_each_gives_alone():
    lots = (RED, lot("bare"), lot("a", (50, 30, 20)), BLUE)
    assert inconstancies_of_all(lots, Viewing()) == tuple(inconstancies_of(one, Viewing()) for one in lots)


def test_the_design_s_own_light_is_never_among_the_others():
    assert [light.illuminant for light in other_lights(Viewing(illuminant="A"))] == ["D65", "LED-B3", "FL11"]
    assert [light.illuminant for light in other_lights(Viewing(illuminant="D50"))] == list(LIGHTS)
    assert {light.observer for light in other_lights(Viewing(observer="2"))} == {"2"}


@pytest.mark.parametrize("light", [Viewing(), *other_lights(Viewing())], ids=lambda light: light.illuminant)
def test_pairs_in_a_light_are_what_colour_science_says_of_the_spectra(light):
    table = pairs_in_lights([RED, BLUE], [light])
    labs = [
        colour.XYZ_to_Lab(
            xyz_by_colour_science(one.readings[0].reflectance, NM, light) / 100, colour.XYZ_to_xy(white_point(light))
        )
        for one in (RED, BLUE)
    ]
    assert table.ciede2000[0, 0, 1] == pytest.approx(colour.delta_E(*labs), abs=0.002)
    assert table.value_difference[0, 0, 1] == pytest.approx(abs(labs[0][0] - labs[1][0]), abs=0.002)
    assert table.is_measured.all()


def test_the_table_is_symmetric_and_has_gaps_where_a_lot_has_no_shade():
    table = pairs_in_lights([RED, lot("bare"), lot("lab", (50, 0, 0))], [Viewing(), Viewing(illuminant="A")])
    assert np.isnan(table.ciede2000[:, 0, 1]).all()
    assert np.array_equal(table.ciede2000, table.ciede2000.transpose(0, 2, 1), equal_nan=True)
    assert table.is_measured.tolist() == [[True, False, False], [False, False, False], [False, False, False]]


def test_nothing_has_no_pairs():
    assert metameric_pairs([], Viewing()) == ()
    assert metameric_pairs([RED], Viewing()) == ()


@pytest.mark.parametrize("where", ["D65", "A"])
def test_spectra_made_to_match_in_one_light_alone_are_told_to_part_in_another(where):
    base = 0.3 + bump(600, 80, 0.2)
    first, second = spectral("first", base), spectral("second", metamer_of(base, Viewing(illuminant=where)))
    (found,) = metameric_pairs([RED, first, BLUE, second], Viewing())
    assert found.lots == ("first", "second")
    assert found.matching.illuminant == where
    assert found.matching.ciede2000 < 1e-6 < MATCHING
    assert found.parted.illuminant != where
    assert found.parted.ciede2000 > PARTED


def test_the_worst_pair_comes_first():
    base = 0.3 + bump(600, 80, 0.2)
    strange = metamer_of(base, Viewing())
    milder = base + 0.7 * (strange - base)
    lots = [spectral("base", base), spectral("milder", milder), spectral("strange", strange)]
    found = metameric_pairs(lots, Viewing())
    assert found[0].lots == ("base", "strange")
    spans = [pair.parted.ciede2000 - pair.matching.ciede2000 for pair in found]
    assert len(spans) > 1
    assert spans == sorted(spans, reverse=True)


def test_readings_without_spectra_are_never_called_metameric():
    one, other = lot("a", (50, 10, 10)), lot("b", (50.5, 10, 10))
    assert metameric_pairs([one, other], Viewing()) == ()
