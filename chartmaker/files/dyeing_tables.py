"""What a dyer has at hand, and what her baths really did, from and to the tables of a file."""

from collections.abc import Callable, Collection, Hashable
from typing import Any, TypeVar

from chartmaker.files.table import Table
from chartmaker.files.values import date, number, text, whole
from chartmaker.model.bath_record import MOST_LOADS, BathRecord, LoadRecord
from chartmaker.model.dyeing import DyeingHabits, Dyestuff, Pot, Undyed
from chartmaker.model.palette import Palette

Plain = dict[str, object]
_T = TypeVar("_T")
_HABITS = ("skein_g", "sample_g", "scouring_loss_percent", "handling_loss_percent")
_WHOLE_BATH = ("dyestuff_g", "water_l", "ph_start", "ph_end", "hottest_c", "minutes")
MOST_ON_SHELF = 400
"""Dyestuffs, pots or stores of undyed yarn in one file."""


# --- reading


def stock_of(table: Table, yarn_ids: Collection[str]) -> dict[str, Any]:
    """Read dyestuffs, undyed yarn, pots and habits; each is a field of `Palette`."""
    inner = table.inner("dyeing")
    habits = inner.build(DyeingHabits(), inner.fields(dict.fromkeys(_HABITS, number)))
    inner.close()
    return {
        "dyeing": habits,
        "dyestuffs": _each_once(table.tables("dyestuffs", most=MOST_ON_SHELF), _dyestuff, lambda each: each.key),
        "undyed": _each_once(
            table.tables("undyed", most=MOST_ON_SHELF), lambda one: _undyed(one, yarn_ids), lambda each: each.yarn
        ),
        "pots": _each_once(table.tables("pots", most=MOST_ON_SHELF), _pot, lambda each: each.name),
    }


def bath_record(table: Table) -> BathRecord:
    """Read what a bath really did."""
    fields = table.fields({"dyed_on": date, **dict.fromkeys(_WHOLE_BATH, number), "notes": text})
    loads = [_load_record(each) for each in table.tables("loads", most=MOST_LOADS)]
    table.close()
    return table.build(BathRecord(), {**fields, "loads": tuple(loads)})


def _load_record(table: Table) -> LoadRecord:
    readers = {"load": whole, "fibre_g": number, "dry_g": number, "lot": text, "dyed_on": date, "notes": text}
    fields = table.fields(readers, required=("load", "fibre_g"))
    table.close()
    return table.build(LoadRecord(load=1, fibre_g=0.0), fields)


def _dyestuff(table: Table) -> Dyestuff:
    words = dict.fromkeys(("name", "part", "state", "identified_by", "notes"), text)
    fields = table.fields({**words, "on_hand_g": number, "dries_to_percent": number}, required=("name",))
    return table.build(Dyestuff(name="dyestuff"), fields)


def _undyed(table: Table, yarn_ids: Collection[str]) -> Undyed:
    fields = table.fields({"yarn": text, "on_hand_g": number}, required=("yarn", "on_hand_g"))
    yarn = fields.get("yarn")
    if yarn is not None and yarn not in yarn_ids:
        table.complain("yarn", f"there is no yarn {yarn!r} here", word=yarn, known=yarn_ids)
    return table.build(Undyed(yarn="yarn", on_hand_g=0.0), fields)


def _pot(table: Table) -> Pot:
    fields = table.fields({"name": text, "litres": number, "kept_for": text}, required=("name", "litres"))
    return table.build(Pot(name="pot", litres=1.0), fields)


def _each_once(tables: list[Table], make: Callable[[Table], _T], key: Callable[[_T], Hashable]) -> tuple[_T, ...]:
    """Read the tables; one that is called as another above it is refused."""
    made: dict[Hashable, _T] = {}
    for table in tables:
        thing = make(table)
        table.close()
        if key(thing) in made:
            table.complain("", "another of the same name stands above")
        made.setdefault(key(thing), thing)
    return tuple(made.values())


# --- writing


def stock_data(palette: Palette) -> Plain:
    """Give habits, dyestuffs, undyed yarn and pots as plain data; what is as everybody's is left out."""
    habits = palette.dyeing
    return {
        "dyeing": {} if habits == DyeingHabits() else {name: float(getattr(habits, name)) for name in _HABITS},
        "pots": [_pot_data(each) for each in palette.pots],
        "dyestuffs": [_dyestuff_data(each) for each in palette.dyestuffs],
        "undyed": [{"yarn": each.yarn, "on_hand_g": float(each.on_hand_g)} for each in palette.undyed],
    }


def record_data(record: BathRecord) -> Plain:
    """Give what a bath really did as plain data."""
    return _given(
        {
            "dyed_on": record.dyed_on,
            "loads": [_load_data(each) for each in record.loads],
            **{name: _measured(getattr(record, name)) for name in _WHOLE_BATH},
            "notes": record.notes or None,
        }
    )


def _load_data(load: LoadRecord) -> Plain:
    return _given(
        {
            "load": load.load,
            "fibre_g": float(load.fibre_g),
            "dry_g": _measured(load.dry_g),
            "lot": load.lot or None,
            "dyed_on": load.dyed_on,
            "notes": load.notes or None,
        }
    )


def _dyestuff_data(each: Dyestuff) -> Plain:
    return _given(
        {
            "name": each.name,
            "part": each.part or None,
            "state": each.state,
            "on_hand_g": float(each.on_hand_g),
            "dries_to_percent": _measured(each.dries_to_percent),
            "identified_by": each.identified_by or None,
            "notes": each.notes or None,
        }
    )


def _pot_data(each: Pot) -> Plain:
    return _given({"name": each.name, "litres": float(each.litres), "kept_for": each.kept_for or None})


def _given(data: Plain) -> Plain:
    return {key: value for key, value in data.items() if value is not None}


def _measured(value: float | None) -> float | None:
    return None if value is None else float(value)
