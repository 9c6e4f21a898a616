"""Designs from their files, strictly: everything that is wrong is told together, each thing at its path.

What is malformed is refused. What is merely unfinished is not: counts that do not meet and letters without a lot open,
and the checks speak of them.
"""

from collections.abc import Callable, Collection
from pathlib import Path
from typing import Any, TypeVar

from chartmaker.files.palette_reading import ids_under, palette_contents, viewing_of
from chartmaker.files.problems import ProblemList
from chartmaker.files.rounds_reading import rounds_of
from chartmaker.files.table import Table
from chartmaker.files.toml_text import plain_data, text_of_file
from chartmaker.files.values import number, text, whole
from chartmaker.files.versions import brought_up
from chartmaker.model.band import Band
from chartmaker.model.bounds import MOST_ROUNDS, MOST_SWATCHES, require_letter, require_text
from chartmaker.model.design import Colourway, Design
from chartmaker.model.gauge import Gauge, Swatch
from chartmaker.model.hat import CastOn, Finish, Fold, Hat, Trim
from chartmaker.model.palette import Palette
from chartmaker.model.round import Round
from chartmaker.model.settings import Allowances, Limits

TRIM_SIZE_KEYS = {"pompom": "diameter_cm", "tassel": "length_cm"}
"""What the file calls the size of each kind of trim."""
_FILE_KEYS = {"palette_file": "palette", "metres_per_100g": "yarn.metres_per_100g"}
"""What the file calls those fields of a design whose names differ there."""
_PLAIN_ROUND = Round("A", b"\0")

_E = TypeVar("_E", CastOn, Finish)


def read_design(path: Path) -> Design:
    """Read a design from its file.

    Raises FileRefused, with everything that is wrong, where it cannot be taken.
    """
    return design_from_text(text_of_file(path), str(path))


def design_from_text(source: str, name: str) -> Design:
    """Read a design from its text; `name` is what messages call it.

    Raises FileRefused, with everything that is wrong, where it cannot be taken.
    """
    data = brought_up(plain_data(source, name), name, kind="chartmaker-design")
    problems = ProblemList()
    table = Table({key: value for key, value in data.items() if key not in {"format", "version"}}, problems)
    design = _design(table)
    problems.refuse_any(name)
    return design


def _design(table: Table) -> Design:
    fields: dict[str, Any] = table.fields({"title": text, "notes": text})
    named = table.fields({"palette": text})
    if named:
        fields["palette_file"] = named["palette"]
    for key, make in _SECTIONS.items():
        if key in table:
            fields[key] = _closed(table.inner(key), make)
    fields["swatches"] = _swatches(table)
    fields |= _closed(table.inner("yarn"), lambda yarn: yarn.fields({"metres_per_100g": number}))
    fields["palette"] = palette_contents(table)
    fields["colourways"] = _colourways(table, fields["palette"])
    fields["bands"] = tuple(_closed(each, _band) for each in table.tables("bands", most=MOST_ROUNDS))
    if not fields["bands"]:
        if table.peek("bands") in (None, []):
            table.complain("bands", "is missing; a design has at least one band")
        del fields["bands"]
    table.close()
    stand_in = Design(bands=(Band(name="", times=1, rounds=(_PLAIN_ROUND,)),))
    return table.build(stand_in, fields, keys=_FILE_KEYS)


_T = TypeVar("_T")


def _closed(table: Table, make: Callable[[Table], _T]) -> _T:
    made = make(table)
    table.close()
    return made


def _hat(table: Table) -> Hat:
    fields: dict[str, Any] = table.fields(
        {"shape": text, "head_cm": number, "ease_percent": number, "depth_cm": number}
    )
    if "cast_on" in table:
        fields["cast_on"] = _closed(table.inner("cast_on"), lambda edge: _edge(edge, CastOn()))
    if "finish" in table:
        fields["finish"] = _closed(table.inner("finish"), lambda edge: _edge(edge, Finish()))
    if "fold" in table:
        fields["fold"] = _closed(table.inner("fold"), _fold)
    fields["trims"] = tuple(_trim(each) for each in table.tables("trims"))
    return table.build(Hat(), fields)


def _edge(table: Table, edge: _E) -> _E:
    return table.build(edge, table.fields({"letter": text, "method": text}))


def _fold(table: Table) -> Fold:
    return table.build(Fold("up", 1), table.fields({"way": text, "rounds": whole}, required=("way", "rounds")))


def _trim(table: Table) -> Trim:
    stand_in = Trim(kind="pompom", letter="A", size_cm=5.0)
    fields: dict[str, Any] = table.fields({"kind": text, "letter": text}, required=("kind", "letter"))
    size_key = TRIM_SIZE_KEYS.get(fields.get("kind", ""))
    if size_key is None:  # what its size is called depends on the kind
        return table.build(stand_in, fields)
    size = table.fields({size_key: number}, required=(size_key,))
    table.close()
    if size:
        fields["size_cm"] = size[size_key]
    return table.build(stand_in, fields, keys={"size_cm": size_key})


def _gauge(table: Table) -> Gauge:
    return table.build(Gauge(), table.fields({"stitches_per_10cm": number, "rounds_per_10cm": number}))


def _swatches(table: Table) -> tuple[Swatch, ...]:
    """Read a lone `[swatch]`, several `[[swatches]]`, or both."""
    alone = (_closed(table.inner("swatch"), _swatch),) if "swatch" in table else ()
    return (*alone, *(_closed(each, _swatch) for each in table.tables("swatches", most=MOST_SWATCHES)))


_WAYS = {
    "metres": Swatch(stitches=1000, metres=15.0),
    "grams": Swatch(stitches=1000, grams=40.0),
    "ball_before_g": Swatch(stitches=1000, ball_before_g=100.0, ball_after_g=60.0),
}
"""By the key that tells a swatch's yarn, what it is built on while its own fields are read."""


def _swatch(table: Table) -> Swatch:
    readers = {"stitches": whole, "passed": whole, "metres_per_100g": number}
    fields = table.fields(readers, required=("stitches",))
    told = [way for way in _WAYS if way in table]
    if "ball_before_g" in told or "ball_after_g" in table:
        fields |= table.fields(
            {"ball_before_g": number, "ball_after_g": number}, required=("ball_before_g", "ball_after_g")
        )
    fields |= table.fields({"metres": number, "grams": number})
    if not told and "ball_after_g" not in table:
        table.complain("", "a swatch gives metres, grams, or the ball before and after: one of the three")
    return table.build(_WAYS[told[0] if told else "metres"], fields)


def _allowances(table: Table) -> Allowances:
    readers = {"tail_cm": number, "float_slack_percent": number, "carry_up_rounds": whole, "reserve_percent": number}
    return table.build(Allowances(), table.fields(readers))


def _limits(table: Table) -> Limits:
    return table.build(Limits(), table.fields({"float_cm": number, "value_clear": number, "value_soft": number}))


_SECTIONS: dict[str, Callable[[Table], object]] = {
    "hat": _hat,
    "gauge": _gauge,
    "allowances": _allowances,
    "limits": _limits,
    "viewing": viewing_of,
}


def _colourways(table: Table, palette: Palette) -> tuple[Colourway, ...]:
    named, made = ids_under(table, "lots"), frozenset(lot.id for lot in palette.lots)
    return tuple(_closed(each, lambda one: _colourway(one, named, made)) for each in table.tables("colourways"))


def _colourway(table: Table, named: Collection[str], made: Collection[str]) -> Colourway:
    """Read one colourway; a lot that is named but could not be made is left out, since its own problem is told."""
    fields: dict[str, Any] = table.fields({"name": text}, required=("name",))
    lots = table.inner("lots")
    pairs = []
    for letter, value in lots.items():
        try:
            require_letter("a colourway's letter", letter)
            lot = text(value)
            require_text("a lot's id", lot)
        except ValueError as problem:
            lots.complain(letter, str(problem))
            continue
        if lot not in named:
            lots.complain(letter, f"there is no lot {lot!r} here", word=lot, known=named)
        elif lot in made:
            pairs.append((letter, lot))
    return table.build(Colourway("", tuple(pairs)), fields)


def _band(table: Table) -> Band:
    fields: dict[str, Any] = table.fields({"name": text, "times": whole, "texture": text}, required=("name", "times"))
    fields |= table.fields({"rounds": text}, required=("rounds",))
    if "rounds" in fields:
        lines = rounds_of(table, fields.pop("rounds"), whose="a band")
        if lines:
            fields["rounds"] = lines
    return table.build(Band(name="", times=1, rounds=(_PLAIN_ROUND,)), fields)
