import gc
import math
from dataclasses import replace
from statistics import fmean, stdev

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.model.palette import Lot, Planned, Yarn
from chartmaker.model.reading import LabReading, ScreenReading, Spectrum, XyzReading
from chartmaker.model.settings import Viewing
from chartmaker.shade import lots
from chartmaker.shade.colorimetry import colour
from chartmaker.shade.lot_shade import RESTS_ON
from chartmaker.shade.lots import LONE_DEVIATION, PHOTO_DEVIATION, SCREEN_DEVIATION, shade_of, shade_of_yarn, shades_of
from chartmaker.shade.readings import lab_of_readings
from chartmaker.shade.spread import value_difference
from tests import strategies
from tests.builders import flat_spectrum, lot

LAMP = Viewing(illuminant="A", observer="10")
THREE = [(40.0, 30.0, 20.0), (42.0, 29.0, 21.0), (41.0, 33.0, 17.5)]


def test_a_lot_without_a_reading_has_no_shade():
    assert shade_of(Lot(id="a", name="a"), Viewing()) is None
    assert shade_of(Lot(id="a", name="a", planned=Planned("madder")), Viewing()) is None
    assert shade_of_yarn(Yarn(id="base", name="base"), Viewing()) is None


def test_several_readings_give_their_mean_and_their_standard_deviation():
    shade = shade_of(lot("a", labs=THREE), Viewing())
    columns = list(zip(*THREE, strict=True))
    assert shade.lab == pytest.approx([fmean(column) for column in columns], rel=1e-12)
    assert shade.deviation == pytest.approx([stdev(column) for column in columns], rel=1e-12)
    assert shade.readings == 3
    assert not shade.is_lone


def test_mcdm_is_the_mean_ciede2000_of_the_readings_from_their_mean():
    # The definition of ASTM E2214, with colour-science's CIEDE2000.
    shade = shade_of(lot("a", labs=THREE), Viewing())
    assert shade.mcdm == pytest.approx(fmean(colour.delta_E(one, np.mean(THREE, axis=0)) for one in THREE), rel=1e-9)
    assert shade.mcdm > 0.5


def test_readings_that_agree_have_no_spread():
    shade = shade_of(lot("a", labs=[(40.0, 30.0, 20.0)] * 2), Viewing())
    assert (shade.deviation, shade.mcdm) == ((0, 0, 0), 0)


def test_a_lone_reading_is_given_the_stated_spread():
    shade = shade_of(lot("a", (40.0, 30.0, 20.0)), Viewing())
    assert shade.lab == (40, 30, 20)
    assert shade.deviation == LONE_DEVIATION
    assert shade.mcdm == 0
    assert shade.is_lone


@pytest.mark.parametrize(
    ("readings", "rests_on"),
    [
        ((flat_spectrum(0.2), flat_spectrum(0.3)), "spectrum"),
        ((flat_spectrum(0.2), LabReading(lab=(50, 0, 0))), "lab"),
        ((XyzReading(xyz=(20, 20, 20)), LabReading(lab=(50, 0, 0))), "xyz"),
        ((flat_spectrum(0.2), ScreenReading(hex="#808080"), XyzReading(xyz=(20, 20, 20))), "approximate"),
    ],
)
def test_a_shade_rests_on_the_weakest_of_its_readings(readings, rests_on):
    assert shade_of(Lot(id="a", name="a", readings=readings), Viewing()).rests_on == rests_on
    assert shade_of(Lot(id="a", name="a", readings=readings[::-1]), Viewing()).rests_on == rests_on


def test_one_reading_from_another_light_marks_the_shade_as_adapted():
    here, there = LabReading(lab=(50, 1, 1)), LabReading(lab=(50, 1, 1), viewing=LAMP)
    assert not shade_of(Lot(id="a", name="a", readings=(here, flat_spectrum())), Viewing()).is_adapted
    assert shade_of(Lot(id="a", name="a", readings=(here, there)), Viewing()).is_adapted


def test_a_screen_colour_comes_back_to_the_screen_in_any_light():
    readings = (ScreenReading(hex="#8A3b2f"),)
    for viewing in (Viewing(), LAMP, Viewing(illuminant="D65", observer="2")):
        shade = shade_of(Lot(id="a", name="a", readings=readings), viewing)
        assert shade.hex == "#8a3b2f"
        assert not shade.is_out_of_gamut


def test_a_shade_that_no_screen_can_show_is_marked():
    assert shade_of(lot("a", (60.0, -120.0, 0.0)), Viewing()).is_out_of_gamut
    assert not shade_of(lot("a", (60.0, -20.0, 0.0)), Viewing()).is_out_of_gamut


def test_an_undyed_yarn_has_a_shade_of_its_own():
    shade = shade_of_yarn(Yarn(id="base", name="base", reading=flat_spectrum(0.5)), Viewing())
    assert shade.lot == "base"
    assert shade.value == pytest.approx(76.0693, abs=0.0001)  # L* of Y = 50, CIE 15:2018
    assert (shade.rests_on, shade.is_lone) == ("spectrum", True)


def test_a_shade_says_whose_it_is_and_for_which_light():
    shade = shade_of(lot("moss", (40.0, -10.0, 20.0)), LAMP)
    assert (shade.lot, shade.viewing) == ("moss", LAMP)


def test_many_lots_at_once_give_what_each_gives_alone():
    rng = np.random.default_rng(10)
    many = [
        Lot(id=f"lot {number}", name="x", readings=tuple(_spectrum(rng) for _ in range(count)))
        for number, count in enumerate((3, 0, 1, 64, 2, 0, 5))
    ]
    together = shades_of(many, Viewing())
    copies = [Lot(id=one.id, name=one.name, readings=one.readings) for one in many]  # new to the memory of shades
    assert [shade is None for shade in together] == [not one.readings for one in many]
    for shade, copy in zip(together, copies, strict=True):
        alone = shade_of(copy, Viewing())
        assert (shade is None) == (alone is None)
        if shade and alone:
            assert shade.lab == pytest.approx(alone.lab, abs=1e-9)
            assert shade.deviation == pytest.approx(alone.deviation, abs=1e-9)
            assert shade.mcdm == pytest.approx(alone.mcdm, abs=1e-9)
            assert shade.srgb == alone.srgb


def _spectrum(rng):
    return Spectrum(start_nm=400, step_nm=10, reflectance=tuple(rng.uniform(0.1, 0.4, 31).tolist()))


def test_a_lot_seen_before_gives_the_very_same_shade_and_another_viewing_another():
    one = lot("a", labs=THREE)
    assert shade_of(one, Viewing()) is shade_of(one, Viewing())
    assert shade_of(one, LAMP).viewing == LAMP
    assert shade_of(one, Viewing(observer="2")).viewing == Viewing(observer="2")


def test_the_memory_of_shades_never_mistakes_a_new_lot_for_one_that_is_gone():
    # Lots that are gone leave their place in memory, and so their identity, to new ones.
    for number in range(300):
        value = 10.0 + number % 80
        assert shade_of(lot("a", (value, 0.0, 0.0)), Viewing()).value == value
        if number % 100 == 0:
            gc.collect()


def test_the_memory_of_shades_is_bounded_and_forgets_the_oldest_first():
    memo = lots._Memo(most=2)
    known = [lot(name, (50.0, 0.0, 0.0)) for name in "abc"]
    for one in known:
        memo.keep(one, shade_of(one, Viewing()))
    assert [memo.shade(one, Viewing()) is not None for one in known] == [False, True, True]
    assert len(memo.entries) == 2


@given(st.lists(strategies.readings(), min_size=1, max_size=5), strategies.viewings())
def test_any_lot_that_was_measured_has_a_sound_shade(readings, viewing):
    shade = shade_of(Lot(id="a", name="a", readings=tuple(readings)), viewing)
    lab = lab_of_readings(readings, viewing)
    assert np.all(np.array(shade.lab) <= lab.max(axis=0) + 1e-9)
    assert np.all(np.array(shade.lab) >= lab.min(axis=0) - 1e-9)
    assert np.isfinite([*shade.deviation, shade.mcdm]).all()
    assert min(*shade.deviation, shade.mcdm) >= 0
    assert all(isinstance(level, int) and 0 <= level <= 255 for level in shade.srgb)
    assert shade.rests_on in RESTS_ON


def test_screen_colours_err_alike_however_many_are_picked() -> None:
    """An uncorrected photo is off by over 10 CIEDE2000 in the mean (abstract of a study)."""
    picked = Lot(id="p", name="p", readings=tuple(ScreenReading(hex=f"#8a3b2{last}") for last in "0123456789"))
    shade = shade_of(picked, Viewing())
    assert shade is not None
    assert shade.deviation == SCREEN_DEVIATION
    assert shade.has_assumed_spread
    assert value_difference(shade, shade).low == 0
    steady = replace(shade, lab=(90.0, 0.0, 0.0))
    difference = value_difference(shade, steady)
    assert difference.difference - difference.low == pytest.approx(1.645 * math.sqrt(2 * 6.0**2), rel=1e-3)


def test_a_photo_is_given_its_own_spread_however_many_were_taken():
    one = LabReading(lab=(50.0, 10.0, 10.0), source="photo")
    shade = shade_of(Lot(id="a", name="a", readings=(one,)), Viewing())
    assert (shade.rests_on, shade.deviation) == ("photo", PHOTO_DEVIATION)
    two = Lot(id="b", name="b", readings=(one, LabReading(lab=(60.0, 10.0, 10.0), source="photo")))
    shade = shade_of(two, Viewing())
    assert shade.deviation == pytest.approx((np.sqrt(50), *PHOTO_DEVIATION[1:]))
    assert shade.has_assumed_spread


def test_a_photo_beside_an_instrument_lets_a_shade_rest_on_the_photo():
    readings = (LabReading(lab=(50.0, 10.0, 10.0), source="photo"), LabReading(lab=(50.0, 10.0, 10.0)))
    assert shade_of(Lot(id="a", name="a", readings=readings), Viewing()).rests_on == "photo"
