"""Hypothesis strategies for the values of the model; whatever they draw, a file must hold and give back unchanged."""

import datetime as dt
import string
from typing import Any

from hypothesis import strategies as st
from hypothesis.strategies import DrawFn, SearchStrategy, composite

from chartmaker.model.band import Band
from chartmaker.model.bath_record import BathRecord, LoadRecord
from chartmaker.model.bounds import MOST_STITCHES
from chartmaker.model.design import Colourway, Design
from chartmaker.model.dyeing import STATES, DyeingHabits, Dyestuff, Pot, Undyed
from chartmaker.model.gauge import Gauge, Swatch
from chartmaker.model.hat import (
    CAST_ON_METHODS,
    FINISH_METHODS,
    FOLD_WAYS,
    SHAPES,
    TRIM_KINDS,
    CastOn,
    Finish,
    Fold,
    Hat,
    Trim,
)
from chartmaker.model.palette import Assist, Bath, Lot, Mordant, Palette, Planned, Yarn
from chartmaker.model.reading import SOURCES, LabReading, Reading, ScreenReading, Spectrum, XyzReading
from chartmaker.model.round import Round
from chartmaker.model.settings import ILLUMINANTS, OBSERVERS, Allowances, Limits, Viewing
from chartmaker.model.stitches import Part, Shaping

SPECTRAL_STEPS_NM = {5.0: 61, 10.0: 31, 20.0: 16}
"""Steps of wavelength and the number of values that reach from 400 to 700 nm with each."""


def letters() -> SearchStrategy[str]:
    return st.sampled_from(string.ascii_uppercase)


def texts() -> SearchStrategy[str]:
    """Any text that TOML can hold: quotes, backslashes, newlines and control characters among it."""
    return st.text(max_size=24) | st.text(alphabet="ab \"'\\\n\r\t\x00\x1b\x7f{}[]=#é羊\u2028", max_size=12)


def names() -> SearchStrategy[str]:
    """Texts that say something, as ids and names must."""
    return texts().filter(lambda text: bool(text.strip()))


def numbers(lowest: float, highest: float) -> SearchStrategy[float]:
    return st.floats(lowest, highest, allow_nan=False, allow_infinity=False)


def optional(values: SearchStrategy[Any]) -> SearchStrategy[Any]:
    return st.none() | values


@composite
def rounds(draw: DrawFn, *, length: int | None = None, shaped: bool = True, most: int = 24) -> Round:
    """One repeat of a round of any length to `most`, or of the length given."""
    count = draw(st.integers(1, most)) if length is None else length
    names_of_parts = draw(st.lists(letters(), min_size=1, max_size=len(Part), unique=True))
    cells = draw(st.lists(st.integers(0, len(names_of_parts) - 1), min_size=count, max_size=count))
    signs = st.just(Shaping.PLAIN) if not shaped else st.sampled_from(Shaping)
    shaping = draw(st.just([Shaping.PLAIN] * count) | st.lists(signs, min_size=count, max_size=count))
    return Round("".join(names_of_parts), bytes(cells), bytes(shaping))


@composite
def bands(draw: DrawFn, *, shaped: bool = True, even: bool = False, most: int = 24, most_rounds: int = 6) -> Band:
    """A band whose rounds need not meet; with `even`, all rounds have one length."""
    length = draw(st.integers(1, most)) if even else None
    lines = draw(st.lists(rounds(length=length, shaped=shaped, most=most), min_size=1, max_size=most_rounds))
    widest = max(map(len, lines))
    times = draw(st.integers(1, MOST_STITCHES // widest))
    textures = [""] + [
        texture for texture in ("k", "kp", "kkpp", "kpk") if all(len(line) % len(texture) == 0 for line in lines)
    ]
    return Band(name=draw(texts()), times=times, rounds=tuple(lines), texture=draw(st.sampled_from(textures)))


def gauges() -> SearchStrategy[Gauge]:
    return st.builds(Gauge, stitches_per_10cm=numbers(5, 100), rounds_per_10cm=numbers(5, 100))


@composite
def swatches(draw: DrawFn) -> Swatch:
    """A swatch told in any of the three ways, plain or stranded."""
    stitches, amount = draw(st.integers(1, 1_000_000)), draw(numbers(0.001, 100_000))
    ways: list[dict[str, float]] = [{"metres": amount}, {"grams": amount}]
    ways.append({"ball_before_g": amount, "ball_after_g": amount * draw(numbers(0, 0.99))})
    return Swatch(
        stitches=stitches,
        passed=draw(st.integers(0, stitches)),
        metres_per_100g=draw(optional(numbers(10, 5000))),
        **draw(st.sampled_from(ways)),
    )


def viewings() -> SearchStrategy[Viewing]:
    return st.builds(Viewing, illuminant=st.sampled_from(ILLUMINANTS), observer=st.sampled_from(OBSERVERS))


def hats() -> SearchStrategy[Hat]:
    trims = st.builds(Trim, kind=st.sampled_from(TRIM_KINDS), letter=letters(), size_cm=numbers(1, 40))
    return st.builds(
        Hat,
        shape=st.sampled_from(SHAPES),
        head_cm=numbers(20, 90),
        ease_percent=numbers(-40, 40),
        cast_on=st.builds(CastOn, letters(), st.sampled_from(CAST_ON_METHODS)),
        finish=st.builds(Finish, letters(), st.sampled_from(FINISH_METHODS)),
        trims=st.lists(trims, max_size=3).map(tuple),
        fold=optional(st.builds(Fold, st.sampled_from(FOLD_WAYS), st.integers(1, 600))),
        depth_cm=optional(numbers(5, 150)),
    )


def allowances() -> SearchStrategy[Allowances]:
    return st.builds(
        Allowances,
        tail_cm=numbers(0, 200),
        float_slack_percent=numbers(0, 100),
        carry_up_rounds=st.integers(0, 600),
        reserve_percent=numbers(0, 200),
    )


def limits() -> SearchStrategy[Limits]:
    grades = st.lists(numbers(0, 100), min_size=2, max_size=2).map(sorted)
    return st.builds(
        lambda float_cm, pair: Limits(float_cm=float_cm, value_soft=pair[0], value_clear=pair[1]),
        numbers(0.1, 50),
        grades,
    )


@composite
def spectra(draw: DrawFn) -> Spectrum:
    """Reflectance from 400 to 700 nm, at one of the usual steps."""
    step_nm = draw(st.sampled_from(sorted(SPECTRAL_STEPS_NM)))
    count = SPECTRAL_STEPS_NM[step_nm]
    factors = draw(st.lists(numbers(0, 2), min_size=count, max_size=count))
    return Spectrum(start_nm=400.0, step_nm=step_nm, reflectance=tuple(factors))


def readings() -> SearchStrategy[Reading]:
    lab = st.tuples(numbers(0, 110), numbers(-200, 200), numbers(-200, 200))
    xyz = st.tuples(numbers(0, 200), numbers(0, 200), numbers(0, 200))
    return st.one_of(
        st.builds(LabReading, lab=lab, viewing=viewings(), source=st.sampled_from(SOURCES)),
        st.builds(XyzReading, xyz=xyz, viewing=viewings()),
        st.from_regex(r"\A#[0-9a-fA-F]{6}\Z").map(lambda text: ScreenReading(hex=text)),
        spectra(),
    )


def yarns() -> SearchStrategy[Yarn]:
    return st.builds(
        Yarn, id=names(), name=names(), metres_per_100g=optional(numbers(10, 5000)), reading=optional(readings())
    )


def baths() -> SearchStrategy[Bath]:
    return st.builds(
        Bath,
        id=names(),
        dyestuff=names(),
        ratio=numbers(0, 100),
        part=texts(),
        state=st.sampled_from(STATES),
        mordants=st.lists(st.builds(Mordant, names(), numbers(0, 200)), max_size=2).map(tuple),
        assists=st.lists(st.builds(Assist, names(), numbers(0, 1000)), max_size=2).map(tuple),
        liquor_l_per_100g=numbers(0.5, 100),
        ph_start=optional(numbers(0, 14)),
        ph_end=optional(numbers(0, 14)),
        hottest_c=optional(numbers(0, 105)),
        minutes=optional(numbers(0, 100_000)),
        notes=texts(),
        record=optional(bath_records()),
    )


def dates() -> SearchStrategy[dt.date]:
    return st.dates(dt.date(1, 1, 1), dt.date(9999, 12, 31))


def bath_records() -> SearchStrategy[BathRecord]:
    load = st.builds(
        LoadRecord,
        load=st.integers(1, 12),
        fibre_g=numbers(0, 100_000),
        dry_g=optional(numbers(0, 100_000)),
        lot=texts(),
        dyed_on=optional(dates()),
        notes=texts(),
    )
    return st.builds(
        BathRecord,
        dyed_on=optional(dates()),
        loads=st.lists(load, max_size=3, unique_by=lambda one: one.load).map(tuple),
        dyestuff_g=optional(numbers(0, 1_000_000)),
        water_l=optional(numbers(0, 10_000)),
        ph_start=optional(numbers(0, 14)),
        ph_end=optional(numbers(0, 14)),
        hottest_c=optional(numbers(0, 105)),
        minutes=optional(numbers(0, 100_000)),
        notes=texts(),
    )


def dyeing_habits() -> SearchStrategy[DyeingHabits]:
    return st.builds(
        DyeingHabits,
        skein_g=st.one_of(st.just(0.0), numbers(1, 1000)),
        sample_g=numbers(0, 1000),
        scouring_loss_percent=numbers(0, 80),
        handling_loss_percent=numbers(0, 80),
    )


def dyestuffs() -> SearchStrategy[Dyestuff]:
    return st.builds(
        Dyestuff,
        name=names(),
        part=texts(),
        state=st.sampled_from(STATES),
        on_hand_g=numbers(0, 1_000_000),
        dries_to_percent=optional(numbers(0.1, 100)),
        identified_by=texts(),
        notes=texts(),
    )


def pots() -> SearchStrategy[Pot]:
    return st.builds(Pot, name=names(), litres=numbers(0.1, 1000), kept_for=texts())


@composite
def undyed_stores(draw: DrawFn, yarn_ids: list[str]) -> tuple[Undyed, ...]:
    """How much there is of some of the yarns given."""
    some = [yarn for yarn in yarn_ids if draw(st.booleans())]
    return tuple(Undyed(yarn=yarn, on_hand_g=draw(numbers(0, 1_000_000))) for yarn in some)


@composite
def lots(draw: DrawFn, *, yarn_ids: list[str] = [], bath_ids: list[str] = []) -> Lot:  # noqa: B006 - never changed
    """A lot, dyed or planned, that names only the yarns and baths given."""
    dyed = {
        "bath": draw(optional(st.sampled_from(bath_ids))) if bath_ids else None,
        "readings": tuple(draw(st.lists(readings(), max_size=3))),
        "dyed_on": draw(optional(st.dates(dt.date(1, 1, 1), dt.date(9999, 12, 31)))),
    }
    planned = {"planned": draw(st.builds(Planned, st.sampled_from(bath_ids), st.integers(1, 12)))} if bath_ids else {}
    return Lot(
        id=draw(names()),
        name=draw(names()),
        yarn=draw(optional(st.sampled_from(yarn_ids))) if yarn_ids else None,
        load=draw(st.integers(1, 12)),
        on_hand_g=draw(numbers(0, 100_000)),
        metres_per_100g=draw(optional(numbers(10, 5000))),
        notes=draw(texts()),
        picture=draw(texts()),
        **draw(st.sampled_from([dyed, planned])),
    )


@composite
def palettes(draw: DrawFn, *, named: bool = True) -> Palette:
    """A palette whose lots name its own yarns and baths, with no id twice."""
    own_yarns = draw(st.lists(yarns(), max_size=2, unique_by=lambda yarn: yarn.id))
    own_baths = draw(st.lists(baths(), max_size=2, unique_by=lambda bath: bath.id))
    some_lots = lots(yarn_ids=[yarn.id for yarn in own_yarns], bath_ids=[bath.id for bath in own_baths])
    return Palette(
        name=draw(texts()) if named else "",
        yarns=tuple(own_yarns),
        baths=tuple(own_baths),
        lots=tuple(draw(st.lists(some_lots, max_size=4, unique_by=lambda lot: lot.id))),
        dyestuffs=tuple(
            draw(st.lists(dyestuffs(), max_size=2, unique_by=lambda each: " ".join(filter(None, each.key))))
        ),
        undyed=draw(undyed_stores([yarn.id for yarn in own_yarns])),
        pots=tuple(draw(st.lists(pots(), max_size=2, unique_by=lambda pot: pot.name))),
        dyeing=draw(st.one_of(st.just(DyeingHabits()), dyeing_habits())),
    )


@composite
def colourways(draw: DrawFn, *, lot_ids: list[str]) -> Colourway:
    """A colourway that names only the lots given."""
    pairs = draw(st.dictionaries(letters(), st.sampled_from(lot_ids), max_size=4)) if lot_ids else {}
    return Colourway(draw(texts()), tuple(pairs.items()))


@composite
def designs(draw: DrawFn, *, shaped: bool = True, even: bool = False) -> Design:
    """A design of a few small bands; its rounds need not meet and its letters need not have lots."""
    palette = draw(palettes(named=False))
    own_colourways = st.lists(colourways(lot_ids=[lot.id for lot in palette.lots]), max_size=2)
    return Design(
        title=draw(texts()),
        notes=draw(texts()),
        palette_file=draw(texts()),
        hat=draw(hats()),
        gauge=draw(gauges()),
        metres_per_100g=draw(numbers(10, 5000)),
        swatches=tuple(draw(st.lists(swatches(), max_size=3))),
        allowances=draw(allowances()),
        limits=draw(limits()),
        viewing=draw(viewings()),
        colourways=tuple(draw(own_colourways)),
        bands=tuple(draw(st.lists(bands(shaped=shaped, even=even), min_size=1, max_size=3))),
        palette=palette,
    )
