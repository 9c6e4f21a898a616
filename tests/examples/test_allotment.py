"""The invented palette: that it says so, that it is what its script makes, and that it is believable."""

import importlib.util
from collections import Counter
from itertools import combinations, pairwise
from pathlib import Path
from types import ModuleType

import numpy as np
import pytest

from chartmaker.files.palette_reading import read_palette
from chartmaker.model.palette import Bath, Lot, Palette
from chartmaker.model.reading import Spectrum
from chartmaker.model.settings import Viewing
from chartmaker.shade.difference import ciede2000
from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.lots import shade_of

FOLDER = Path(__file__).parents[2] / "palettes"
PALETTE = read_palette(FOLDER / "allotment.palette.toml")
DYED = [lot for lot in PALETTE.lots if lot.bath]
MEASURED = [lot for lot in PALETTE.lots if isinstance(lot.readings[0], Spectrum)]


def script() -> ModuleType:
    spec = importlib.util.spec_from_file_location("make_allotment", FOLDER / "make_allotment.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def shade(lot: Lot) -> LotShade:
    seen = shade_of(lot, Viewing())
    assert seen is not None
    return seen


def bath(bath_id: str | None, palette: Palette = PALETTE) -> Bath:
    found = palette.bath(bath_id)
    assert found is not None
    return found


def test_it_says_that_it_is_invented() -> None:
    assert "invented" in PALETTE.name
    assert all("Invented" in each.notes for each in (*PALETTE.baths, *PALETTE.dyestuffs))
    assert "INVENTED" in (FOLDER / "make_allotment.py").read_text(encoding="utf-8")


def test_the_file_is_what_the_script_makes() -> None:
    made = script().allotment()
    assert made.baths == PALETTE.baths
    assert (made.dyestuffs, made.pots, made.undyed) == (PALETTE.dyestuffs, PALETTE.pots, PALETTE.undyed)
    assert [lot.id for lot in made.lots] == [lot.id for lot in PALETTE.lots]
    for ours, kept in zip(made.lots, PALETTE.lots, strict=True):
        assert (ours.name, ours.yarn, ours.source, ours.on_hand_g) == (
            kept.name,
            kept.yarn,
            kept.source,
            kept.on_hand_g,
        )
        for reading, other in zip(ours.readings, kept.readings, strict=True):
            if isinstance(reading, Spectrum):
                assert isinstance(other, Spectrum)
                # A digit may fall the other way where another numpy rounds otherwise.
                assert reading.reflectance == pytest.approx(other.reflectance, abs=2e-4)
            else:
                assert reading == other


def test_k_over_s_of_the_handbook_value() -> None:
    # R = 0.55 gives K/S = 0.184 (HunterLab Application Note 18-7, 2008).
    module = script()
    assert module.strength_of_reflectance(np.array([0.55]))[0] == pytest.approx(0.184, abs=0.0005)
    assert module.reflectance_of_strength(module.strength_of_reflectance(np.array([0.55])))[0] == pytest.approx(0.55)


def test_there_are_lots_of_many_dyestuffs_with_exhausts() -> None:
    assert len(DYED) >= 14
    assert len({bath(lot.bath).dyestuff for lot in DYED}) >= 5
    loads = Counter(lot.load for lot in DYED)
    assert loads[2] >= 5
    assert loads[3] >= 3


def test_spectra_are_31_bands_from_400_to_700_nm_and_read_several_times() -> None:
    for lot in MEASURED:
        assert 3 <= len(lot.readings) <= 5
        for reading in lot.readings:
            assert isinstance(reading, Spectrum)
            assert (reading.start_nm, reading.end_nm, len(reading.reflectance)) == (400, 700, 31)
            assert reading.reflectance == tuple(round(value, 4) for value in reading.reflectance)


def test_readings_scatter_as_believable_hands_would() -> None:
    spreads = [shade(lot).deviation[0] for lot in MEASURED]
    assert min(spreads) > 0.2
    assert max(spreads) < 1.4
    assert 0.5 < float(np.median(spreads)) < 1.0


def test_values_range_from_dark_to_light() -> None:
    values = [shade(lot).value for lot in PALETTE.lots]
    assert min(values) < 25
    assert max(values) > 85


def test_each_exhaust_is_paler_than_the_load_before() -> None:
    by_bath: dict[str, list[Lot]] = {}
    for lot in DYED:
        by_bath.setdefault(str(lot.bath), []).append(lot)
    chains = [sorted(lots, key=lambda lot: lot.load) for lots in by_bath.values() if len(lots) > 1]
    assert len(chains) >= 5
    for chain in chains:
        for before, after in pairwise(chain):
            assert shade(after).value > shade(before).value + 5


def test_some_lots_differ_in_hue_and_not_in_value() -> None:
    treacherous = [
        (first.id, second.id)
        for first, second in combinations(MEASURED, 2)
        if abs(shade(first).value - shade(second).value) < 3
        and float(ciede2000(shade(first).lab, shade(second).lab)) > 15
    ]
    assert ("madder-1", "woad-2") in treacherous
    assert len(treacherous) >= 5


def test_one_lot_rests_on_a_lone_reading_and_one_on_a_screen_colour() -> None:
    resting = {lot.id: (shade(lot).rests_on, shade(lot).is_lone) for lot in PALETTE.lots}
    assert resting["tansy-1"] == ("lab", True)
    assert resting["heather-1"] == ("approximate", True)


@pytest.mark.parametrize("each", PALETTE.baths, ids=lambda each: each.id)
def test_recipes_keep_within_published_ranges(each: Bath) -> None:
    mordants = {mordant.name: mordant.percent_wof for mordant in each.mordants}
    assert 8 <= mordants.get("alum", 8) <= 15  # Mairet 1916
    assert 4 <= mordants.get("cream of tartar", 4) <= 6  # Mairet 1916
    assert 3 <= each.liquor_l_per_100g <= 10  # trade pages; madder takes the most
    if each.dyestuff == "weld":
        assert 0.5 <= each.ratio <= 1.0  # Mairet 1916
    if each.dyestuff == "walnut":
        assert not each.mordants  # Mairet 1916
    if each.id == "madder-sept":
        assert 0.35 <= each.ratio <= 1.0  # Mairet 1916
        assert each.hottest_c is not None
        assert each.hottest_c < 72  # the same; madder-hot is there to show what passing it does
