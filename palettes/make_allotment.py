"""Makes allotment.palette.toml: INVENTED lots for demonstration, in no way measured.

No wool was dyed and no instrument was used. The spectra come from a plausible model, so that exhausts pale, readings
scatter and recipes differ as they do in a dyer's shed. By Kubelka and Munk's relation F = K/S = (1 - R)² / 2R
(HunterLab Application Note 18-7, 2008), a dyed wool has F = F(wool) + strength · Σ bands of the dyestuff; each further
load of a bath keeps the share q of the strength of the one before. Widths, places and strengths of the bands, the
weights and the dates are made up; recipes keep within published ranges (Mairet 1916 and common practice).

Run it from anywhere: `python palettes/make_allotment.py`. The same seed gives the same file.
"""

import datetime as dt
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from chartmaker.files.palette_writing import save_palette
from chartmaker.model.dyeing import Dyestuff, Pot, Undyed
from chartmaker.model.palette import Assist, Bath, Lot, Mordant, Palette, Yarn
from chartmaker.model.reading import LabReading, ScreenReading, Spectrum

SEED = 2026
START_NM, STEP_NM, BANDS = 400, 10, 31
NM = np.arange(START_NM, START_NM + STEP_NM * BANDS, STEP_NM, dtype=np.float64)
OUT = Path(__file__).parent / "allotment.palette.toml"

Spectral = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class DyeBand:
    """One absorption band in K/S: height, centre and width (standard deviation) in nm."""

    height: float
    centre_nm: float
    width_nm: float


@dataclass(frozen=True, slots=True)
class Dyeing:
    """How a lot of the model is made: which bands, how strong the first load is, what share each load keeps."""

    bands: tuple[DyeBand, ...]
    strength: float
    kept: float = 0.5


MADDER = (DyeBand(1.0, 505, 44), DyeBand(0.45, 420, 45), DyeBand(0.06, 590, 40))
MADDER_HOT = (DyeBand(0.95, 492, 50), DyeBand(0.80, 420, 50), DyeBand(0.22, 590, 60))
WELD = (DyeBand(1.0, 402, 38), DyeBand(0.08, 465, 30), DyeBand(0.010, 600, 90), DyeBand(0.02, 670, 30))
WELD_IRON = (DyeBand(1.0, 405, 42), DyeBand(0.20, 480, 90), DyeBand(0.20, 640, 90))
WALNUT = (DyeBand(1.0, 390, 95), DyeBand(0.42, 530, 95), DyeBand(0.14, 650, 110))
WOAD = (DyeBand(1.0, 640, 60), DyeBand(0.36, 560, 44), DyeBand(0.20, 390, 50), DyeBand(0.09, 480, 90))
ONION = (DyeBand(1.0, 415, 48), DyeBand(0.22, 510, 42), DyeBand(0.03, 600, 60))
ALDER_IRON = (DyeBand(1.0, 400, 130), DyeBand(0.62, 560, 120), DyeBand(0.45, 690, 110))
BIRCH = (DyeBand(1.0, 400, 42), DyeBand(0.10, 480, 50), DyeBand(0.05, 650, 60))

DYEINGS: dict[str, Dyeing] = {
    "madder-sept": Dyeing(MADDER, 9.0, 0.47),
    "madder-hot": Dyeing(MADDER_HOT, 5.6),
    "weld-july": Dyeing(WELD, 9.0, 0.30),
    "weld-iron": Dyeing(WELD_IRON, 6.5),
    "walnut-oct": Dyeing(WALNUT, 19.0, 0.36),
    "woad-aug": Dyeing(WOAD, 16.0, 0.34),
    "onion-march": Dyeing(ONION, 5.5, 0.42),
    "alder-may": Dyeing(ALDER_IRON, 7.5, 0.34),
    "birch-june": Dyeing(BIRCH, 4.2),
}

ALUM = Mordant("alum", 12.0)
TARTAR = Mordant("cream of tartar", 6.0)
IRON = Mordant("iron (ferrous sulphate)", 2.0)
INVENTED = "Invented for demonstration."

BATHS = (
    Bath(
        id="madder-sept", dyestuff="madder", part="root", ratio=1.0, mordants=(ALUM, TARTAR),
        assists=(Assist("chalk", 2.0),), liquor_l_per_100g=8.0, ph_start=6.8, ph_end=6.4, hottest_c=70, minutes=90,
        notes=f"{INVENTED} Roots three years in the ground; kept under 72 °C for a red that is not brown.",
    ),
    Bath(
        id="madder-hot", dyestuff="madder", part="root", ratio=1.0, mordants=(ALUM, TARTAR), liquor_l_per_100g=8.0,
        ph_start=6.1, ph_end=5.7, hottest_c=88, minutes=90,
        notes=f"{INVENTED} Left on the stove while the lock was being painted: hot, no chalk, and browner for it.",
    ),
    Bath(
        id="weld-july", dyestuff="weld", part="whole flowering plant", ratio=0.8,
        mordants=(ALUM, Mordant("cream of tartar", 5.0)), assists=(Assist("chalk", 1.5),), ph_start=7.4, ph_end=7.0,
        hottest_c=80, minutes=60, notes=INVENTED,
    ),
    Bath(
        id="weld-iron", dyestuff="weld", part="whole flowering plant", ratio=0.8, mordants=(ALUM, IRON),
        ph_start=6.6, ph_end=6.2, hottest_c=80, minutes=60,
        notes=f"{INVENTED} Iron in the last ten minutes, in a pot kept for iron alone.",
    ),
    Bath(
        id="walnut-oct", dyestuff="walnut", part="husk", state="fresh", ratio=2.5, ph_start=5.6, ph_end=5.4,
        hottest_c=85, minutes=120, notes=f"{INVENTED} No mordant; husks soaked for a week.",
    ),
    Bath(
        id="woad-aug", dyestuff="woad", part="leaf", state="fresh", ratio=6.0,
        assists=(Assist("washing soda", 10.0), Assist("fructose", 12.0)), liquor_l_per_100g=5.0, ph_start=10.2,
        ph_end=9.6, hottest_c=50, minutes=20,
        notes=f"{INVENTED} A vat: dip, air, dip again. The second and third loads had one dip fewer each.",
    ),
    Bath(
        id="onion-march", dyestuff="onion", part="outer skin", ratio=0.6, mordants=(Mordant("alum", 10.0),),
        ph_start=6.2, ph_end=6.0, hottest_c=85, minutes=60, notes=INVENTED,
    ),
    Bath(
        id="alder-may", dyestuff="alder", part="bark", ratio=1.5, mordants=(Mordant("alum", 8.0), IRON),
        ph_start=5.8, ph_end=5.6, hottest_c=85, minutes=120,
        notes=f"{INVENTED} Windfall branches from the towpath, taken with leave; iron in a pot kept for iron alone.",
    ),
    Bath(
        id="birch-june", dyestuff="birch", part="leaf", state="fresh", ratio=3.0, mordants=(ALUM, TARTAR),
        ph_start=6.5, ph_end=6.3, hottest_c=80, minutes=60, notes=INVENTED,
    ),
    Bath(
        id="tansy-aug", dyestuff="tansy", part="flower", state="fresh", ratio=2.0, mordants=(ALUM, TARTAR),
        ph_start=6.6, ph_end=6.4, hottest_c=80, minutes=60, notes=INVENTED,
    ),
    Bath(
        id="heather-aug", dyestuff="heather", part="flowering tips", state="fresh", ratio=3.0,
        mordants=(Mordant("alum", 10.0),), ph_start=6.4, ph_end=6.1, hottest_c=80, minutes=60, notes=INVENTED,
    ),
)  # fmt: skip

GROWN = "the grower, who sowed named seed"
SHELF = (
    Dyestuff(name="madder", part="root", on_hand_g=180.0, identified_by=GROWN, notes=INVENTED),
    Dyestuff(name="weld", part="whole flowering plant", on_hand_g=35.0, identified_by=GROWN, notes=INVENTED),
    Dyestuff(name="woad", part="leaf", state="fresh", on_hand_g=90.0, identified_by=GROWN, notes=INVENTED),
    Dyestuff(name="onion", part="outer skin", on_hand_g=60.0, identified_by="the greengrocer", notes=INVENTED),
    Dyestuff(name="walnut", part="husk", state="fresh", on_hand_g=400.0, dries_to_percent=25.0,
             identified_by="the allotment's tree warden", notes=INVENTED),
)  # fmt: skip
POTS = (
    Pot(name="big enamel pot", litres=9.0),
    Pot(name="small steel pot", litres=3.0),
    Pot(name="old iron pot", litres=4.0, kept_for="iron"),
)
STORE = (Undyed(yarn="fingering", on_hand_g=250.0), Undyed(yarn="oatmeal", on_hand_g=100.0))

DYED = (
    # id, name, bath, load, dyed on, grams on hand, readings
    ("madder-1", "Madder, first bath", "madder-sept", 1, dt.date(2026, 9, 12), 46.0, 5),
    ("madder-2", "Madder, first exhaust", "madder-sept", 2, dt.date(2026, 9, 13), 40.0, 4),
    ("madder-3", "Madder, second exhaust", "madder-sept", 3, dt.date(2026, 9, 14), 38.0, 4),
    ("madder-hot-1", "Madder, run too hot", "madder-hot", 1, dt.date(2026, 9, 26), 44.0, 4),
    ("weld-1", "Weld, first bath", "weld-july", 1, dt.date(2026, 7, 18), 31.0, 4),
    ("weld-2", "Weld, exhaust", "weld-july", 2, dt.date(2026, 7, 19), 42.0, 4),
    ("weld-iron-1", "Weld with iron", "weld-iron", 1, dt.date(2026, 7, 25), 36.0, 4),
    ("walnut-1", "Walnut husk, first bath", "walnut-oct", 1, dt.date(2026, 10, 10), 52.0, 5),
    ("walnut-2", "Walnut husk, first exhaust", "walnut-oct", 2, dt.date(2026, 10, 11), 47.0, 4),
    ("walnut-3", "Walnut husk, second exhaust", "walnut-oct", 3, dt.date(2026, 10, 12), 45.0, 3),
    ("woad-1", "Woad, first dips", "woad-aug", 1, dt.date(2026, 8, 22), 4.0, 5),
    ("woad-2", "Woad, second load", "woad-aug", 2, dt.date(2026, 8, 22), 6.0, 4),
    ("woad-3", "Woad, third load", "woad-aug", 3, dt.date(2026, 8, 23), 33.0, 4),
    ("onion-1", "Onion skin, first bath", "onion-march", 1, dt.date(2026, 3, 14), 35.0, 4),
    ("onion-2", "Onion skin, exhaust", "onion-march", 2, dt.date(2026, 3, 15), 41.0, 3),
    ("alder-1", "Alder bark with iron", "alder-may", 1, dt.date(2026, 5, 9), 30.0, 4),
    ("alder-2", "Alder bark with iron, exhaust", "alder-may", 2, dt.date(2026, 5, 10), 34.0, 4),
    ("birch-1", "Birch leaf", "birch-june", 1, dt.date(2026, 6, 13), 39.0, 4),
)


def strength_of_reflectance(reflectance: Spectral) -> Spectral:
    """Give K/S of reflectance factors, F = (1 - R)² / 2R."""
    return (1 - reflectance) ** 2 / (2 * reflectance)


def reflectance_of_strength(strength: Spectral) -> Spectral:
    """Give reflectance factors of K/S: the root of the same relation that lies below 1."""
    return 1 + strength - np.sqrt(strength**2 + 2 * strength)


def undyed(at_400_nm: float, at_700_nm: float) -> Spectral:
    """Give K/S of a fleece whose reflectance climbs smoothly from the blue to the red."""
    climb = 1 - np.exp(-(NM - 400) / 110)
    return strength_of_reflectance(at_400_nm + (at_700_nm - at_400_nm) * climb / climb[-1])


def dye_strength(dyeing: Dyeing, load: int) -> Spectral:
    """Give the K/S that the dye of one load adds."""
    total = sum(band.height * np.exp(-0.5 * ((NM - band.centre_nm) / band.width_nm) ** 2) for band in dyeing.bands)
    return dyeing.strength * dyeing.kept ** (load - 1) * np.asarray(total)


def spectrum(strength: Spectral, random: np.random.Generator, *, unevenness: float = 0.0) -> Spectrum:
    """Make one reading: the card's lay and gloss scale it, the instrument adds a little noise."""
    lay = 1 + random.normal(0, 0.008)
    noise = random.normal(0, 0.0008, BANDS)
    measured = reflectance_of_strength(strength * (1 + random.normal(0, unevenness))) * lay + noise
    rounded = tuple(round(float(value), 4) for value in np.clip(measured, 0.004, 1.0))
    return Spectrum(start_nm=START_NM, step_nm=STEP_NM, reflectance=rounded)


FLEECES = {
    "fingering": ("2-ply fingering, white, undyed", undyed(0.42, 0.80)),
    "oatmeal": ("2-ply fingering, oatmeal fleece, undyed", undyed(0.26, 0.61)),
    "moorland": ("2-ply fingering, dark fleece, undyed", undyed(0.030, 0.100)),
}


def undyed_lots(random: np.random.Generator) -> tuple[Lot, ...]:
    """Make the fleece shades that are knitted as they are."""
    kept = (("white", "White fleece", "fingering", 60.0), ("oatmeal", "Oatmeal fleece", "oatmeal", 75.0),
            ("dark", "Dark fleece", "moorland", 50.0))  # fmt: skip
    return tuple(
        Lot(
            id=lot_id,
            name=f"{name}, undyed",
            yarn=yarn,
            on_hand_g=grams,
            readings=tuple(spectrum(FLEECES[yarn][1], random, unevenness=0.12) for _ in range(4)),
        )
        for lot_id, name, yarn, grams in kept
    )


def dyed_lots(random: np.random.Generator) -> tuple[Lot, ...]:
    """Make the lots that came out of the baths, each with a little luck of its own."""
    wool = FLEECES["fingering"][1]
    lots = []
    for lot_id, name, bath, load, day, grams, readings in DYED:
        strength = wool + dye_strength(DYEINGS[bath], load) * random.normal(1, 0.03)
        lots.append(
            Lot(
                id=lot_id,
                name=name,
                yarn="fingering",
                bath=bath,
                load=load,
                dyed_on=day,
                on_hand_g=grams,
                readings=tuple(spectrum(strength, random, unevenness=0.055) for _ in range(readings)),
            )
        )
    return tuple(lots)


def odd_lots() -> tuple[Lot, ...]:
    """Make the two lots that were not measured properly: one Lab value by itself, one colour from a screen."""
    return (
        Lot(
            id="tansy-1", name="Tansy, one reading only", yarn="fingering", bath="tansy-aug",
            dyed_on=dt.date(2026, 8, 8), on_hand_g=22.0, readings=(LabReading(lab=(69.4, 2.1, 47.8)),),
        ),
        Lot(
            id="heather-1", name="Heather, picked from a photo", yarn="fingering", bath="heather-aug",
            dyed_on=dt.date(2026, 8, 29), on_hand_g=26.0, readings=(ScreenReading(hex="#b39a5f"),),
        ),
    )  # fmt: skip


def allotment() -> Palette:
    """Make the whole palette from the seed."""
    random = np.random.default_rng(SEED)
    yarns = tuple(
        Yarn(id=yarn_id, name=name, metres_per_100g=460.0, reading=spectrum(strength, random))
        for yarn_id, (name, strength) in FLEECES.items()
    )
    return Palette(
        name="Allotment, 2026 (invented for demonstration)",
        yarns=yarns,
        baths=BATHS,
        lots=(*undyed_lots(random), *dyed_lots(random), *odd_lots()),
        dyestuffs=SHELF,
        pots=POTS,
        undyed=STORE,
    )


if __name__ == "__main__":
    save_palette(allotment(), OUT)
    print(f"wrote {OUT.name}")
