"""CSV with headings: wavelengths, or L a b, X Y Z, L C h; parted by commas, semicolons, tabs or bars.

RFC 4180 names commas alone; where the comma is the decimal sign, spreadsheets write semicolons. What stands above the
headings may tell the viewing conditions. Samples may also stand side by side, under a first column of wavelengths.
"""

import csv
import io
import itertools
from collections.abc import Iterator, Sequence
from contextlib import suppress
from dataclasses import replace

from chartmaker.files.measurements.columns import FEWEST_BANDS, MOST_COLUMNS, Columns, columns_of
from chartmaker.files.measurements.contents import TEXTILE_VIEWING, Contents, Findings, contents_of
from chartmaker.files.measurements.numerals import is_number, number_in
from chartmaker.files.measurements.sheet import MOST_ROWS, Row, Sheet, read_sheet
from chartmaker.files.measurements.viewing_words import ToldViewing, illuminant_or_words, observer_in, viewing_in

SEPARATORS = (";", "\t", ",", "|")
HEADINGS_WITHIN = 40
"""Rows in which the headings are looked for."""

_Lines = list[tuple[int, list[str]]]
"""Rows of cells, each with the line that it ends on; empty rows are left out."""


def csv_contents(text: str, where: str, found: Findings | None = None) -> Contents:
    """Read a table. Raises FileRefused with everything that is wrong."""
    found = found or Findings()
    chosen = max(SEPARATORS, key=lambda separator: _weight(_first_lines(text, separator)))
    try:
        lines = list(_lines(text, chosen, most=MOST_ROWS + HEADINGS_WITHIN + 1))
        if max((len(cells) for _, cells in lines), default=0) > MOST_COLUMNS:
            found.problems.add("", f"a row has more than {MOST_COLUMNS} cells")
        else:
            _read(lines, found)
    except csv.Error as problem:
        found.problems.add("", f"this is no table that can be read: {problem}")
    return contents_of(found, "CSV", where=where)


def _lines(text: str, separator: str, *, most: int) -> Iterator[tuple[int, list[str]]]:
    """Give the first rows that are not empty, each with the line that it ends on. Raises csv.Error."""
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=separator)
    filled = ((reader.line_num, cells) for cells in reader if any(cell.strip() for cell in cells))
    return itertools.islice(filled, most)


def _first_lines(text: str, separator: str) -> _Lines:
    """Give the rows in which headings are looked for, up to one that cannot be read."""
    lines = []
    with suppress(csv.Error):
        for line in _lines(text, separator, most=HEADINGS_WITHIN):
            lines.append(line)  # noqa: PERF402 - those before an error are wanted
    return lines


def _weight(lines: _Lines) -> int:
    return max((_columns(cells).weight for _, cells in lines), default=0) or _bands_down(lines)


def _columns(cells: Sequence[str]) -> Columns:
    """Give what the cells would hold as headings."""
    return columns_of(cells[:MOST_COLUMNS])


def _read(lines: _Lines, found: Findings) -> None:
    weights = [_columns(cells).weight for _, cells in lines[:HEADINGS_WITHIN]]
    best = max(weights, default=0)
    if best:
        at = weights.index(best)
        rows = [Row(cells, f"line {line}") for line, cells in lines[at + 1 :]]
        _read_table(lines[at][1], rows, told=_told_above(lines[:at]), found=found)
    elif _bands_down(lines):
        _read_side_by_side(lines, found)
    else:
        what = "no row has headings of a colour: wavelengths, or L, a and b, or X, Y and Z, or L, C and h"
        found.problems.add("", what)


def _read_table(headings: Sequence[str], rows: Sequence[Row], *, told: ToldViewing, found: Findings) -> None:
    columns = columns_of(headings)
    if not columns.names:
        guessed = _guessed_name_column(headings, rows, columns)
        if guessed is None:
            found.problems.add("", "no column holds names; call one 'name'")
            return
        columns = replace(columns, names=(guessed,))
        found.note(_guessed_names(guessed + 1, headings[guessed].strip()))
    read_sheet(Sheet(headings=headings, columns=columns, rows=rows, told=told, assumed=TEXTILE_VIEWING), found)


def _guessed_names(column: int, heading: str) -> str:
    return f"names are taken from column {column}, {heading!r}"


def _guessed_name_column(headings: Sequence[str], rows: Sequence[Row], columns: Columns) -> int | None:
    """Find the first column of texts besides the colour, by its first row; where there is none, of numbers."""
    taken = {band.column for band in columns.bands} | set(columns.triple.columns if columns.triple else ())
    taken |= {column for column in (columns.illuminant, columns.observer) if column is not None}
    cells = rows[0].cells[: len(headings)] if rows else ()
    others = [column for column, cell in enumerate(cells) if column not in taken and cell.strip()]
    texts = [column for column in others if not is_number(cells[column])]
    return next(iter(texts or others), None)


def _told_above(lines: _Lines) -> ToldViewing:
    """Find what stands above the headings on illuminant and observer."""
    told = ToldViewing()
    for _, cells in lines:
        line = " ".join(cells)
        value = " ".join(cells[1:])
        label = cells[0].upper()
        told = told.with_more(viewing_in(line))
        if "ILLUMINANT" in label and "OBSERVER" not in label:
            told = told.with_more(ToldViewing(illuminant=illuminant_or_words(value)))
        elif "OBSERVER" in label:
            told = told.with_more(ToldViewing(observer=observer_in(value)))
    return told


# --- samples side by side


def _bands_down(lines: _Lines) -> int:
    """Count the rows that begin with a wavelength, after the last that does not."""
    count = 0
    for _, cells in reversed(lines):
        if len(cells) < 2 or not _is_wavelength(cells[0]):
            break
        count += 1
    return count if FEWEST_BANDS <= count < len(lines) else 0


def _is_wavelength(text: str) -> bool:
    bare = text.lower().replace("nm", "")
    return is_number(bare) and 300 <= number_in(bare) <= 1100


def _read_side_by_side(lines: _Lines, found: Findings) -> None:
    """Turn a table about whose first column is wavelengths, and read it."""
    count = _bands_down(lines)
    names, bands = lines[-count - 1][1], lines[-count:]
    headings = ["name", *(cells[0] for _, cells in bands)]
    rows = []
    for column, name in enumerate(names[1:], start=2):
        values = [cells[column - 1] if column <= len(cells) else "" for _, cells in bands]
        if any(value.strip() for value in (name, *values)):
            rows.append(Row([name, *values], f"column {column}"))
    sheet = Sheet(headings=headings, columns=columns_of(headings), rows=rows, assumed=TEXTILE_VIEWING, is_turned=True)
    read_sheet(sheet, found)
