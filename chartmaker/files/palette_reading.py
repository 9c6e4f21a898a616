"""Palettes from their files, strictly: everything that is wrong is told together, each thing at its path."""

from collections.abc import Callable, Collection
from pathlib import Path
from typing import Protocol, TypeVar

from chartmaker.files.dyeing_tables import bath_record, stock_of
from chartmaker.files.problems import ProblemList
from chartmaker.files.table import Table
from chartmaker.files.toml_text import plain_data, text_of_file
from chartmaker.files.values import date, number, numbers, text, triple, whole
from chartmaker.files.versions import brought_up
from chartmaker.model.bounds import MOST_LOTS, MOST_READINGS
from chartmaker.model.design import Design
from chartmaker.model.palette import Assist, Bath, Lot, Mordant, Palette, Planned, Yarn
from chartmaker.model.reading import READING_KINDS, LabReading, Reading, ScreenReading, Spectrum, XyzReading
from chartmaker.model.settings import Viewing

_UNREAD: Reading = ScreenReading(hex="#808080")
"""Stands in for a reading that could not be made; never given out, because its problem refuses the file."""


class _Named(Protocol):
    @property
    def id(self) -> str: ...


_N = TypeVar("_N", bound=_Named)


def read_palette(path: Path) -> Palette:
    """Read a palette from its file.

    Raises FileRefused, with everything that is wrong, where it cannot be taken.
    """
    return palette_from_text(text_of_file(path), str(path))


def palette_from_text(source: str, name: str) -> Palette:
    """Read a palette from its text; `name` is what messages call it.

    Raises FileRefused, with everything that is wrong, where it cannot be taken.
    """
    data = brought_up(plain_data(source, name), name, kind="chartmaker-palette")
    problems = ProblemList()
    table = Table({key: value for key, value in data.items() if key not in {"format", "version"}}, problems)
    contents = palette_contents(table)
    palette = table.build(contents, table.fields({"name": text}))
    table.close()
    problems.refuse_any(name)
    return palette


def read_palette_beside(design: Design, design_path: Path) -> Palette | None:
    """Read the palette that a design names; None where it names none, or one that is not there.

    Raises FileRefused where it is there and cannot be taken.
    """
    path = palette_beside(design, design_path)
    return None if path is None else read_palette(path)


def palette_beside(design: Design, design_path: Path) -> Path | None:
    """Give the file of the palette that a design names, relative to the design's own file.

    None where it names none, or one that is not there: the design stands alone then.
    """
    if not design.palette_file:
        return None
    path = design_path.parent / design.palette_file
    try:
        path.stat()
    except (OSError, ValueError):  # absent, out of reach, or no possible path: the design has its own copies
        return None
    return path


def palette_contents(table: Table) -> Palette:
    """Read what a palette holds under a table, of a palette or of a design; its name is left empty."""
    yarn_ids, bath_ids = ids_under(table, "yarns"), ids_under(table, "baths")
    return Palette(
        yarns=_distinct(table.tables("yarns"), _yarn),
        baths=_distinct(table.tables("baths"), _bath),
        lots=_distinct(
            table.tables("lots", most=MOST_LOTS), lambda lot: _lot(lot, yarn_ids=yarn_ids, bath_ids=bath_ids)
        ),
        **stock_of(table, yarn_ids),
    )


def viewing_of(table: Table) -> Viewing:
    """Read the viewing conditions among a table's keys; CIE D65 and 10° where they are left out."""
    return table.build(Viewing(), table.fields({"illuminant": text, "observer": text}))


def ids_under(table: Table, key: str) -> frozenset[str]:
    """Give the ids under a key, of broken entries too, so that what refers to those is not called broken as well."""
    entries = table.peek(key)
    found = [each.get("id") for each in entries if isinstance(each, dict)] if isinstance(entries, list) else []
    return frozenset(each for each in found if isinstance(each, str))


def _distinct(tables: list[Table], make: Callable[[Table], _N]) -> tuple[_N, ...]:
    made: dict[str, _N] = {}
    for table in tables:
        thing, thing_id = make(table), table.peek("id")
        table.close()
        if not isinstance(thing_id, str):
            continue
        if thing_id in made:
            table.complain("id", f"{thing_id!r} is an id that stands above already")
        elif thing_id == thing.id:
            made[thing_id] = thing
    return tuple(made.values())


def _yarn(table: Table) -> Yarn:
    fields = table.fields({"id": text, "name": text, "metres_per_100g": number}, required=("id", "name"))
    if "reading" in table:
        fields["reading"] = _reading(table.inner("reading"))
    return table.build(Yarn(id="yarn", name="yarn"), fields)


def _bath(table: Table) -> Bath:
    words = dict.fromkeys(("id", "dyestuff", "part", "state", "notes"), text)
    amounts = dict.fromkeys(("ratio", "liquor_l_per_100g", "ph_start", "ph_end", "hottest_c", "minutes"), number)
    fields = table.fields({**words, **amounts}, required=("id", "dyestuff", "ratio"))
    fields["mordants"] = tuple(_mordant(each) for each in table.tables("mordants"))
    fields["assists"] = tuple(_assist(each) for each in table.tables("assists"))
    if "record" in table:
        fields["record"] = bath_record(table.inner("record"))
    return table.build(Bath(id="bath", dyestuff="dyestuff", ratio=1.0), fields)


def _mordant(table: Table) -> Mordant:
    fields = table.fields({"name": text, "percent_wof": number}, required=("name", "percent_wof"))
    table.close()
    return table.build(Mordant("mordant", 1.0), fields)


def _assist(table: Table) -> Assist:
    fields = table.fields({"name": text, "grams": number}, required=("name", "grams"))
    table.close()
    return table.build(Assist("assist", 1.0), fields)


def _lot(table: Table, *, yarn_ids: Collection[str], bath_ids: Collection[str]) -> Lot:
    words = dict.fromkeys(("id", "name", "yarn", "bath", "notes", "picture"), text)
    amounts = {"load": whole, "dyed_on": date, "on_hand_g": number, "metres_per_100g": number}
    fields = table.fields({**words, **amounts}, required=("id", "name"))
    _require_known(table, "yarn", fields.get("yarn"), yarn_ids)
    _require_known(table, "bath", fields.get("bath"), bath_ids)
    if "planned" in table:
        fields["planned"] = _planned(table.inner("planned"), bath_ids)
    fields["readings"] = tuple(_reading(each) for each in table.tables("readings", most=MOST_READINGS))
    return table.build(Lot(id="lot", name="lot"), fields)


def _planned(table: Table, bath_ids: Collection[str]) -> Planned:
    fields = table.fields({"bath": text, "load": whole}, required=("bath",))
    _require_known(table, "bath", fields.get("bath"), bath_ids)
    table.close()
    return table.build(Planned("bath"), fields)


def _require_known(table: Table, key: str, thing_id: str | None, known: Collection[str]) -> None:
    if thing_id is not None and thing_id not in known:
        table.complain(key, f"there is no {key} {thing_id!r} here", word=thing_id, known=known)


def _reading(table: Table) -> Reading:
    kind = table.fields({"kind": text}, required=("kind",)).get("kind")
    if kind is None:
        return _UNREAD  # the other keys belong to its kind, so nothing can be said of them
    if kind not in _READERS:
        table.complain("kind", f"is {kind!r}; it can be {', '.join(READING_KINDS)}", word=kind, known=READING_KINDS)
        return _UNREAD
    reading = _READERS[kind](table)
    table.close()
    return reading


def _spectrum(table: Table) -> Reading:
    wanted = ("start_nm", "step_nm", "reflectance")
    fields = table.fields({"start_nm": number, "step_nm": number, "reflectance": numbers}, required=wanted)
    if len(fields) < len(wanted):
        return _UNREAD
    try:
        return Spectrum(**fields)
    except ValueError as problem:  # its rules weigh the three together, so that none of them alone is to blame
        table.complain("", str(problem))
        return _UNREAD


def _lab(table: Table) -> Reading:
    fields = table.fields({"lab": triple, "source": text}, required=("lab",))
    return table.build(LabReading(lab=(50.0, 0.0, 0.0), viewing=viewing_of(table)), fields)


def _xyz(table: Table) -> Reading:
    fields = table.fields({"xyz": triple}, required=("xyz",))
    return table.build(XyzReading(xyz=(20.0, 20.0, 20.0), viewing=viewing_of(table)), fields)


def _srgb(table: Table) -> Reading:
    return table.build(ScreenReading(hex="#808080"), table.fields({"hex": text}, required=("hex",)))


_READERS: dict[str, Callable[[Table], Reading]] = {"spectrum": _spectrum, "lab": _lab, "xyz": _xyz, "srgb": _srgb}
