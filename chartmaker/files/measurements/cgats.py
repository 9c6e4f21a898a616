"""CGATS.17 / ISO 28178 text: keywords with values, then BEGIN_DATA_FORMAT … and BEGIN_DATA … for each data set.

Words are parted by spaces, tabs or line ends; a value in double quotes may hold spaces, and a doubled quote inside it
is one; # at the beginning of a word begins a comment. A data set keeps the keywords and the format of the one before
where it has none of its own. Instruments leave out the counts, part fields by tabs and leave names unquoted, or write a
decimal comma: all are read.
"""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from chartmaker.files.measurements.columns import MOST_COLUMNS, columns_of
from chartmaker.files.measurements.contents import GRAPHIC_VIEWING, Contents, Findings, contents_of
from chartmaker.files.measurements.numerals import number_in
from chartmaker.files.measurements.sheet import MOST_ROWS, Row, Sheet, read_sheet
from chartmaker.files.measurements.viewing_words import (
    ToldViewing,
    illuminant_in,
    illuminant_or_words,
    observer_in,
    viewing_in,
)

MOST_SETS = 100
"""Data sets of one file; no instrument writes as many."""

_WORD = re.compile(r'"((?:[^"]|"")*)("|$)|#.*|[^\s"#][^\s"]*')
_BEGIN_FORMAT, _END_FORMAT = "BEGIN_DATA_FORMAT", "END_DATA_FORMAT"
_BEGIN, _END = "BEGIN_DATA", "END_DATA"
_LAMP_KEYS = ("ILLUMINANT", "ILLUMINANT_NAME", "ILLUMINATION_NAME")
"""Keywords that tell the illuminant and nothing else."""
_ILLUMINANT_KEYS = (
    "ILLUMINANT",
    "ILLUMINANT_NAME",
    "ILLUMINATION_NAME",
    "WEIGHTING_FUNCTION",
    "COMPUTATIONAL_PARAMETER",
)
_OBSERVER_KEYS = ("OBSERVER", "OBSERVER_ANGLE", "OBSERVER_NAME", "WEIGHTING_FUNCTION", "COMPUTATIONAL_PARAMETER")
_FREE_KEYS = ("MEASUREMENT_SOURCE", "COMPUTATIONAL_PARAMETER")
_CONDITION_KEYS = ("MEASUREMENT_CONDITION", "MEASUREMENT_SOURCE")


def is_cgats(text: str) -> bool:
    """Tell whether a text has a data set of this grammar."""
    return re.search(rf"^\s*(?:{_BEGIN}|{_BEGIN_FORMAT})\s*$", text, re.MULTILINE | re.IGNORECASE) is not None


@dataclass(slots=True)
class _Keywords:
    """What stands before a data set, each keyword with all its values."""

    values: dict[str, list[str]] = field(default_factory=dict)

    def add(self, words: list[str]) -> None:
        if words:
            self.values.setdefault(words[0].upper(), []).append(" ".join(words[1:]))

    def all_of(self, names: tuple[str, ...]) -> Iterator[str]:
        for name in names:
            yield from reversed(self.values.get(name, []))

    def count(self, name: str) -> int | None:
        text = next(self.all_of((name,)), "")
        return int(text) if text.isdecimal() and len(text) < 10 else None


@dataclass(slots=True)
class _DataSet:
    """One data set while it is read."""

    number: int
    keywords: Mapping[str, list[str]]
    headings: tuple[str, ...]
    lines: list[tuple[int, str]] = field(default_factory=list)
    is_ended: bool = False


def cgats_contents(text: str, where: str, found: Findings | None = None) -> Contents:
    """Read all data sets. Raises FileRefused with everything that is wrong."""
    found = found or Findings()
    sets = _data_sets(text, found)
    condition: str | None = None
    for data in sets:
        keywords = _Keywords({name: list(values) for name, values in data.keywords.items()})
        own = next(keywords.all_of(_CONDITION_KEYS), "")
        condition = own if condition is None else condition
        if own != condition:
            found.note(_left_aside(data.number))
            continue
        _read(data, keywords, found, is_lone=len(sets) == 1)
    return contents_of(found, "CGATS", where=where)


def _left_aside(number: int) -> str:
    return f"data set {number} is left aside: it was measured under another condition than the first"


def _data_sets(text: str, found: Findings) -> list[_DataSet]:
    parting = _Parting(found)
    for line, source in enumerate(text.split("\n"), start=1):
        parting.take(line, source)
        if parting.is_given_up:
            return []
    return parting.sets


class _Parting:
    """Parts a text into data sets: each line is a keyword's, a format's or a data set's."""

    def __init__(self, found: Findings) -> None:
        self.sets: list[_DataSet] = []
        self.is_given_up = False
        self._found = found
        self._keywords = _Keywords()
        self._headings: list[str] = []
        self._state = ""

    def take(self, line: int, source: str) -> None:
        """Take the next line of the file."""
        word = source.strip().upper()
        if word.startswith(_BEGIN_FORMAT):
            self._state, self._headings = _BEGIN_FORMAT, []
        elif word == _BEGIN and self._state != _BEGIN:
            self._begin_data(line)
            return
        elif word == _END:
            self._end_data()
            return
        if self._state == _BEGIN:
            self.sets[-1].lines.append((line, source))
        elif self._state == _BEGIN_FORMAT:
            self._take_format(line, _words(source))
        else:
            self._keywords.add(_words(source))

    def _begin_data(self, line: int) -> None:
        self._state = _BEGIN
        if not self._headings:
            self._give_up(line, "data begin without BEGIN_DATA_FORMAT before them")
        elif len(self.sets) >= MOST_SETS:
            self._give_up(line, f"there are more than {MOST_SETS} data sets")
        kept = {name: list(values) for name, values in self._keywords.values.items()}
        self.sets.append(_DataSet(len(self.sets) + 1, kept, tuple(self._headings)))
        self._keywords.values.pop("NUMBER_OF_SETS", None)

    def _end_data(self) -> None:
        if self._state == _BEGIN:
            self.sets[-1].is_ended = True
        self._state = ""

    def _take_format(self, line: int, words: list[str]) -> None:
        given = [word for word in words if word.upper() != _BEGIN_FORMAT]
        end = next((at for at, word in enumerate(given) if word.upper() == _END_FORMAT), None)
        is_last = end is not None
        self._headings.extend(given[:end])
        self._state = "" if is_last else self._state
        if len(self._headings) > MOST_COLUMNS:
            self._give_up(line, f"the format has more than {MOST_COLUMNS} fields")

    def _give_up(self, line: int, why: str) -> None:
        self._found.problems.add(f"line {line}", why)
        self.is_given_up = True


def _words(line: str) -> list[str]:
    """Give the words of a line, quotes taken off."""
    return [
        match.group(1).replace('""', '"') if match.group(1) is not None else match.group()
        for match in _WORD.finditer(line)
        if not match.group().startswith("#")
    ]


def _read(data: _DataSet, keywords: _Keywords, found: Findings, *, is_lone: bool) -> None:
    name = "" if is_lone else f"data set {data.number}"
    columns = columns_of(data.headings)
    if not columns.has_colour:
        found.note(f"{name or 'the data set'} has no spectrum and no colour that is known; it is left aside")
        return
    if not data.is_ended:
        found.note("END_DATA is missing: the file may be cut short")
    rows = _rows(data, found)
    _compare_counts(data, keywords, found, rows=len(rows))
    if not columns.names:
        found.problems.add(name, "there is no SAMPLE_NAME and no SAMPLE_ID")
        return
    sheet = Sheet(
        headings=data.headings,
        columns=columns,
        rows=rows,
        told=_told_viewing(keywords),
        assumed=GRAPHIC_VIEWING,
        norm=_norm(keywords),
        name=name,
    )
    read_sheet(sheet, found)


def _rows(data: _DataSet, found: Findings) -> list[Row]:
    """Give the rows; one may run over several lines, and one parted by tabs may hold bare spaces."""
    rows: list[Row] = []
    held: list[str] = []
    first, wanted = 0, len(data.headings)
    for line, source in data.lines:
        words = _fields(source, wanted)
        if not words:
            continue
        if held and len(held) + len(words) > wanted:
            found.problems.add(f"line {first}", _miscounted(len(held), wanted))
            held = []
        first = first if held else line
        held = held + words
        if len(held) > wanted:
            found.problems.add(f"line {first}", _miscounted(len(held), wanted))
            held = []
        elif len(held) == wanted:
            rows.append(Row(held, f"line {first}"))
            held = []
        if len(rows) > MOST_ROWS:
            break
    if held:
        found.problems.add(f"line {first}", _miscounted(len(held), wanted))
    return rows


def _miscounted(count: int, wanted: int) -> str:
    return f"there are {count} values for {wanted} fields"


def _fields(source: str, wanted: int) -> list[str]:
    """Give the values of a line: parted by tabs where that gives as many as are wanted, else by any space."""
    words = _words(source)
    if len(words) != wanted and "\t" in source:
        parted = [" ".join(_words(part)) for part in source.split("\t")]
        for fields in (parted, parted[: len(parted) - 1] if not parted[-1] else parted):
            if len(fields) == wanted and any(fields):
                return fields
    return words


def _compare_counts(data: _DataSet, keywords: _Keywords, found: Findings, *, rows: int) -> None:
    for name, count in (("NUMBER_OF_SETS", rows), ("NUMBER_OF_FIELDS", len(data.headings))):
        told = keywords.count(name)
        if told is not None and told != count and not len(found.problems):
            found.note(f"{name} says {told}, but there are {count}")


def _told_viewing(keywords: _Keywords) -> ToldViewing:
    """Find illuminant and observer among the keywords; the last of a kind counts.

    MEASUREMENT_SOURCE alone is the lamp of the instrument; with an observer beside it, it is what was reckoned with.
    """
    free = next((told for each in keywords.all_of(_FREE_KEYS) if (told := viewing_in(each)).observer), ToldViewing())
    illuminant = next(filter(None, (_named(each, "OBSERVER") for each in keywords.all_of(_ILLUMINANT_KEYS))), "")
    observer = next(filter(None, map(observer_in, keywords.all_of(_OBSERVER_KEYS))), "")
    lamp = next(filter(None, map(illuminant_or_words, keywords.all_of(_LAMP_KEYS))), "")
    return ToldViewing(illuminant, observer).with_more(free).with_more(ToldViewing(lamp))


def _named(value: str, other: str) -> str:
    return "" if other in value.upper() else illuminant_in(value)


def _norm(keywords: _Keywords) -> float | None:
    """Give what SPECTRAL_NORM says of the perfect white, where it is 1 or 100."""
    for value in keywords.all_of(("SPECTRAL_NORM",)):
        try:
            norm = number_in(value)
        except ValueError:
            continue
        if norm in {1.0, 100.0}:
            return norm
    return None
