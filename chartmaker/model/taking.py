"""What would become of a palette's lots if measured samples were taken into them; nothing changes until it is used."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from chartmaker.model.bounds import MOST_LOTS, MOST_READINGS
from chartmaker.model.measured import Measured, name_key
from chartmaker.model.palette import Lot, Palette
from chartmaker.model.reading import Reading

NEW_LOT = ""
"""Chosen in place of a lot's id: the sample becomes a lot of its own."""
LEFT_OUT = None
"""Chosen in place of a lot's id: the sample is not taken."""

Choice = str | None
"""Where a sample goes: the id of a lot, `NEW_LOT` or `LEFT_OUT`."""

_LONGEST_ID = 60


@dataclass(frozen=True, slots=True, kw_only=True)
class TakenLine:
    """What becomes of one sample."""

    measured: Measured
    choice: Choice
    lot: Lot | None
    """The lot as it would be after this sample; None where it is left out."""
    is_new: bool = False
    added: int = 0
    """Readings that the lot did not have."""
    known: int = 0
    """Readings that the lot has already; they are not added twice."""
    notes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Taking:
    """A palette with the samples in it, and a line on each of them."""

    palette: Palette
    lines: tuple[TakenLine, ...]

    @property
    def added(self) -> int:
        """How many readings are new in all."""
        return sum(line.added for line in self.lines)


def taking(palette: Palette, measured: Sequence[Measured], choices: Mapping[int, Choice] | None = None) -> Taking:
    """Give the palette with these samples taken in.

    Each goes to the lot that has its name for an id, else for a name, capitals and spaces aside, else to a new lot;
    `choices` says otherwise by the sample's index. Planned lots that get a reading count as dyed.
    """
    lines: list[TakenLine] = []
    names, now = _Names(palette), palette
    for index, sample in enumerate(measured):
        choice, notes = (choices[index], ()) if choices and index in choices else names.meant_by(sample.name)
        line = _line(palette, now, sample, choice, notes)
        if line.lot is not None:
            now = _with_lot(now, line.lot)
        lines.append(line)
    return Taking(now, tuple(lines))


class _Names:
    """The lots of a palette by what a sample may call them."""

    def __init__(self, palette: Palette) -> None:
        self._ids = {lot.id for lot in palette.lots}
        self._by_key: tuple[dict[str, list[str]], ...] = ({}, {})
        for lot in palette.lots:
            for keys, name in zip(self._by_key, (lot.id, lot.name), strict=True):
                keys.setdefault(name_key(name), []).append(lot.id)

    def meant_by(self, name: str) -> tuple[Choice, tuple[str, ...]]:
        """Find the lot that a sample's name means, and say where more than one could be meant."""
        if name in self._ids:
            return name, ()
        key = name_key(name)
        for keys in self._by_key:
            if key in keys:
                found = keys[key]
                return found[0], (_several(len(found)),) if len(found) > 1 else ()
        return NEW_LOT, ()


def _several(count: int) -> str:
    return f"{count} lots have this name; the first is meant"


def _line(before: Palette, now: Palette, sample: Measured, choice: Choice, notes: tuple[str, ...]) -> TakenLine:
    """Say what becomes of a sample; what a lot had `before` all of them is known, not what other samples brought."""
    if choice is LEFT_OUT:
        return TakenLine(measured=sample, choice=choice, lot=None, notes=notes)
    lot, is_new = now.lot(choice), False
    if lot is None:
        if len(now.lots) >= MOST_LOTS:
            return TakenLine(measured=sample, choice=LEFT_OUT, lot=None, notes=(*notes, _palette_full()))
        lot, is_new = Lot(id=_free_id(now, sample.name), name=sample.name), True
    earlier = before.lot(lot.id)
    fresh = _fresh(sample.readings, earlier.readings if earlier else ())
    added = fresh[: MOST_READINGS - len(lot.readings)]
    if len(added) < len(fresh):
        notes = (*notes, _lot_full(len(fresh) - len(added)))
    if added and lot.planned:
        notes = (*notes, _dyed_now())
    return TakenLine(
        measured=sample,
        choice=choice,
        lot=_with_readings(lot, added),
        is_new=is_new,
        added=len(added),
        known=len(sample.readings) - len(fresh),
        notes=notes,
    )


def _palette_full() -> str:
    return f"it is left out: a palette holds {MOST_LOTS} lots at most"


def _lot_full(count: int) -> str:
    return f"readings left out: {count}, since a lot holds {MOST_READINGS} at most"


def _dyed_now() -> str:
    return "it was planned and counts as dyed now"


def _fresh(readings: Sequence[Reading], known: Sequence[Reading]) -> tuple[Reading, ...]:
    """Give the readings that are not known already; equal ones that come together all count."""
    seen = set(known)
    return tuple(reading for reading in readings if reading not in seen)


def _with_readings(lot: Lot, added: Sequence[Reading]) -> Lot:
    """Give the lot with further readings; one that was planned came from the bath and load that it was planned for."""
    if not added:
        return lot
    readings = (*lot.readings, *added)
    if lot.planned is None:
        return replace(lot, readings=readings)
    return replace(lot, readings=readings, planned=None, bath=lot.planned.bath, load=lot.planned.load)


def _with_lot(palette: Palette, lot: Lot) -> Palette:
    """Give the palette with a lot in the place of the one of its id, or after all others."""
    if palette.lot(lot.id) is None:
        return replace(palette, lots=(*palette.lots, lot))
    return replace(palette, lots=tuple(lot if each.id == lot.id else each for each in palette.lots))


def _free_id(palette: Palette, name: str) -> str:
    """Make an id out of a name: small letters and digits with hyphens between, and a number where it is taken."""
    kept = "".join(sign if sign.isalnum() else "-" for sign in name.casefold())
    stem = "-".join(part for part in kept.split("-") if part)[:_LONGEST_ID].strip("-") or "lot"
    taken = {lot.id for lot in palette.lots}
    if stem not in taken:
        return stem
    return next(made for number in range(2, MOST_LOTS + 3) if (made := f"{stem}-{number}") not in taken)
