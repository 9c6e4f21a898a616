"""A dyer's collection: undyed yarns, the baths she ran, and the lots that came out of them."""

import datetime as dt
from dataclasses import dataclass, replace

from chartmaker.model.bath_record import BathRecord
from chartmaker.model.bounds import (
    MOST_LOTS,
    MOST_READINGS,
    require_one_of,
    require_short,
    require_text,
    require_within,
)
from chartmaker.model.dyeing import STATES, DyeingHabits, Dyestuff, Pot, Undyed
from chartmaker.model.reading import Reading


@dataclass(frozen=True, slots=True, kw_only=True)
class Yarn:
    """An undyed base."""

    id: str
    name: str
    metres_per_100g: float | None = None
    reading: Reading | None = None

    def __post_init__(self) -> None:
        require_text("a yarn's id", self.id)
        require_text("a yarn's name", self.name)
        if self.metres_per_100g is not None:
            require_within("metres_per_100g", self.metres_per_100g, 10, 5000)


@dataclass(frozen=True, slots=True)
class Mordant:
    """A mordant or a mordant's companion, as a share of the weight of dry fibre."""

    name: str
    percent_wof: float

    def __post_init__(self) -> None:
        require_text("a mordant's name", self.name)
        require_within("percent_wof", self.percent_wof, 0, 200)


@dataclass(frozen=True, slots=True)
class Assist:
    """Something else that went into the liquor, in grams to each 100 g of dry fibre."""

    name: str
    grams: float

    def __post_init__(self) -> None:
        require_text("an assist's name", self.name)
        require_within("grams", self.grams, 0, 1000)


@dataclass(frozen=True, slots=True, kw_only=True)
class Bath:
    """A dye pot: its dyestuff, what else went in, and how it was run."""

    id: str
    dyestuff: str
    ratio: float
    """Grams of dyestuff to one gram of dry fibre of the first load."""
    part: str = ""
    """Part of the plant: root, leaf, husk …"""
    state: str = "dry"
    mordants: tuple[Mordant, ...] = ()
    assists: tuple[Assist, ...] = ()
    liquor_l_per_100g: float = 4.0
    """Litres of liquor to 100 g of dry fibre; 3-5 is usual (trade pages), madder takes more."""
    ph_start: float | None = None
    ph_end: float | None = None
    hottest_c: float | None = None
    minutes: float | None = None
    notes: str = ""
    record: BathRecord | None = None
    """What really happened; None for a bath that is only a recipe, or was written down as it happened."""

    def __post_init__(self) -> None:
        require_text("a bath's id", self.id)
        require_text("a bath's dyestuff", self.dyestuff)
        require_within("ratio", self.ratio, 0, 100)
        require_one_of("state", self.state, STATES)
        require_within("liquor_l_per_100g", self.liquor_l_per_100g, 0.5, 100)
        require_short("notes", self.notes)
        for name, value, highest in (
            ("ph_start", self.ph_start, 14),
            ("ph_end", self.ph_end, 14),
            ("hottest_c", self.hottest_c, 105),
            ("minutes", self.minutes, 100_000),
        ):
            if value is not None:
                require_within(name, value, 0, highest)

    @property
    def as_run(self) -> "Bath":
        """The bath with what really happened in the place of what was planned, wherever that was noted."""
        record = self.record
        if record is None:
            return self
        names = ("ph_start", "ph_end", "hottest_c", "minutes")
        noted = {name: value for name in names if (value := getattr(record, name)) is not None}
        first = record.of_load(1)
        if first and first.fibre_g and record.dyestuff_g is not None:
            noted["ratio"] = min(100.0, record.dyestuff_g / first.fibre_g)
        return replace(self, **noted)


@dataclass(frozen=True, slots=True)
class Planned:
    """The bath and the load that a lot is to come from, before it exists."""

    bath: str
    load: int = 1

    def __post_init__(self) -> None:
        require_within("load", self.load, 1, 12)


@dataclass(frozen=True, slots=True, kw_only=True)
class Lot:
    """Yarn dyed together in one bath, with its readings and its weight on hand."""

    id: str
    name: str
    yarn: str | None = None
    """Id of its undyed base."""
    bath: str | None = None
    """Id of the bath that it came from."""
    load: int = 1
    """1 is the first load of the bath, 2 the first exhaust, and so on."""
    dyed_on: dt.date | None = None
    on_hand_g: float = 0.0
    metres_per_100g: float | None = None
    """Its own grist, which dyeing changes; None where its base's serves."""
    planned: Planned | None = None
    """Set for a lot that is not dyed yet; it then has no readings."""
    readings: tuple[Reading, ...] = ()
    notes: str = ""
    picture: str = ""
    """A picture of its swatch, as a path from the palette's folder; whether it is there is not the model's to know."""

    def __post_init__(self) -> None:
        require_text("a lot's id", self.id)
        require_text("a lot's name", self.name)
        require_short("notes", self.notes)
        require_short("picture", self.picture)
        require_within("load", self.load, 1, 12)
        require_within("on_hand_g", self.on_hand_g, 0, 100_000)
        if self.metres_per_100g is not None:
            require_within("metres_per_100g", self.metres_per_100g, 10, 5000)
        if len(self.readings) > MOST_READINGS:
            raise ValueError(f"a lot has {len(self.readings)} readings, more than {MOST_READINGS}")
        if self.planned and self.readings:
            raise ValueError("a planned lot cannot have readings: it does not exist yet")
        if self.planned and self.bath:
            raise ValueError("a lot is either planned or came from a bath, not both")

    @property
    def source(self) -> tuple[str, int] | None:
        """The bath and load that more of it would come from, whether it is dyed or planned."""
        if self.planned:
            return self.planned.bath, self.planned.load
        return (self.bath, self.load) if self.bath else None


@dataclass(frozen=True, slots=True, kw_only=True)
class Palette:
    """Yarns, baths and lots that refer to one another by id; a design carries one of its own."""

    name: str = ""
    yarns: tuple[Yarn, ...] = ()
    baths: tuple[Bath, ...] = ()
    lots: tuple[Lot, ...] = ()
    dyestuffs: tuple[Dyestuff, ...] = ()
    """What is on the shelf to dye with."""
    undyed: tuple[Undyed, ...] = ()
    """What is in the store of the yarns above."""
    pots: tuple[Pot, ...] = ()
    dyeing: DyeingHabits = DyeingHabits()

    def __post_init__(self) -> None:
        require_short("a palette's name", self.name)
        if len(self.lots) > MOST_LOTS:
            raise ValueError(f"a palette has {len(self.lots)} lots, more than {MOST_LOTS}")
        for what, things in (("yarn", self.yarns), ("bath", self.baths), ("lot", self.lots)):
            seen: set[str] = set()
            for thing in things:
                if thing.id in seen:
                    raise ValueError(f"two {what}s have the id {thing.id!r}")
                seen.add(thing.id)
        _require_once("dyestuffs", [each.key for each in self.dyestuffs])
        _require_once("pots", [(each.name,) for each in self.pots])
        _require_once("stores of undyed yarn", [(each.yarn,) for each in self.undyed])

    def lot(self, lot_id: str) -> Lot | None:
        """Give the lot with this id, or None where there is none."""
        return next((lot for lot in self.lots if lot.id == lot_id), None)

    def yarn(self, yarn_id: str | None) -> Yarn | None:
        """Give the yarn with this id, or None where there is none."""
        return next((yarn for yarn in self.yarns if yarn.id == yarn_id), None)

    def bath(self, bath_id: str | None) -> Bath | None:
        """Give the bath with this id, or None where there is none."""
        return next((bath for bath in self.baths if bath.id == bath_id), None)

    def undyed_g(self, yarn_id: str | None) -> float:
        """Give the grams of an undyed yarn in the store; 0 where none is written down."""
        return next((each.on_hand_g for each in self.undyed if each.yarn == yarn_id), 0.0)

    def followed_by(self, other: "Palette | None") -> "Palette":
        """Give all that is here, then what another has under other ids; lots as far as a palette may hold them.

        Dyestuffs, pots and habits are the other's, where it has some: a design's copies are of lots alone.
        """
        if other is None or other is self:
            return self
        yarns, baths, lots = ({thing.id for thing in things} for things in (self.yarns, self.baths, self.lots))
        return Palette(
            name=other.name,
            yarns=self.yarns + tuple(yarn for yarn in other.yarns if yarn.id not in yarns),
            baths=self.baths + tuple(bath for bath in other.baths if bath.id not in baths),
            lots=(self.lots + tuple(lot for lot in other.lots if lot.id not in lots))[:MOST_LOTS],
            dyestuffs=other.dyestuffs or self.dyestuffs,
            pots=other.pots or self.pots,
            undyed=other.undyed or self.undyed,
            dyeing=self.dyeing if other.dyeing == DyeingHabits() else other.dyeing,
        )

    def with_lot_from(self, other: "Palette", lot_id: str) -> "Palette":
        """Give this palette with a copy of another's lot, and of the yarn and the bath that it names.

        A planned lot brings the dyed lots of its bath along, since its shade is foretold from theirs.
        What is here already under the same id stays as it is. Raises ValueError where the other has no such lot.
        """
        lot = other.lot(lot_id)
        if lot is not None and lot.planned is not None:
            before = self
            for sibling in other.lots:
                if sibling.bath == lot.planned.bath and sibling.readings and len(before.lots) < MOST_LOTS - 1:
                    before = _with_one(before, other, sibling.id)
            return _with_one(before, other, lot_id)
        return _with_one(self, other, lot_id)


def _with_one(palette: Palette, other: Palette, lot_id: str) -> Palette:
    """Give a palette with a copy of one lot of another, and of the yarn and the bath that it names."""
    lot = other.lot(lot_id)
    if lot is None:
        raise ValueError(f"there is no lot {lot_id!r}")
    yarn = None if palette.yarn(lot.yarn) else other.yarn(lot.yarn)
    source = lot.source
    bath = None if source is None or palette.bath(source[0]) else other.bath(source[0])
    return replace(
        palette,
        yarns=palette.yarns + ((yarn,) if yarn else ()),
        baths=palette.baths + ((bath,) if bath else ()),
        lots=palette.lots if palette.lot(lot_id) else (*palette.lots, lot),
    )


def _require_once(what: str, names: list[tuple[str, ...]]) -> None:
    for name in names:
        if names.count(name) > 1:
            raise ValueError(f"two {what} are called {', '.join(filter(None, name))!r}")
