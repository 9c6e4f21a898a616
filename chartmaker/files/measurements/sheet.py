"""Rows under headings to readings: what CGATS text and CSV have alike."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from chartmaker.files.measurements.columns import Band, Columns, Triple
from chartmaker.files.measurements.contents import Findings
from chartmaker.files.measurements.numerals import number_in
from chartmaker.files.measurements.spectra import equal_steps, factors_from, lab_of_lch, scale_of
from chartmaker.files.measurements.viewing_words import ToldViewing, illuminant_or_words, observer_in, pair_in
from chartmaker.model.bounds import MOST_LOTS, MOST_READINGS
from chartmaker.model.reading import LabReading, Reading, Spectrum, XyzReading
from chartmaker.model.settings import Viewing

MOST_ROWS = MOST_LOTS * MOST_READINGS
"""More rows could not be taken into any palette."""


@dataclass(frozen=True, slots=True)
class Row:
    """One sample's cells as texts."""

    cells: Sequence[str]
    place: str
    """As "line 12"; or as "column 3" where samples stand side by side."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheet:
    """A table of a file, found and understood, before its cells are read."""

    headings: Sequence[str]
    columns: Columns
    rows: Sequence[Row]
    told: ToldViewing = ToldViewing()
    """What stands outside the headings on the viewing conditions."""
    assumed: Viewing
    """What is assumed where nothing is told."""
    norm: float | None = None
    """What stands for the perfect white in a spectrum, where the file says so: 1 or 100."""
    name: str = ""
    """What notes call it; empty where it is the only one."""
    is_turned: bool = False
    """Whether samples stand side by side, each in a column of its own."""

    def place_of(self, row: Row, column: int) -> str:
        """Give the place of a cell."""
        heading = self.headings[column].strip()
        return f"{row.place}, at {heading}" if self.is_turned else f"{row.place}, column {column + 1} ({heading})"


def read_sheet(sheet: Sheet, found: Findings) -> None:
    """Add a reading for each row, and what is wrong with it or was assumed."""
    if len(sheet.rows) > MOST_ROWS:
        found.problems.add(sheet.name, f"there are {len(sheet.rows)} rows, more than {MOST_ROWS}")
        return
    if sheet.columns.problem:
        found.problems.add(sheet.name, sheet.columns.problem)
    elif sheet.columns.bands:
        _read_spectra(sheet, sheet.columns.bands, found)
    elif sheet.columns.triple:
        _read_triples(sheet, sheet.columns.triple, found)


def _read_spectra(sheet: Sheet, bands: Sequence[Band], found: Findings) -> None:
    try:
        start_nm, step_nm = equal_steps([band.nm for band in bands])
    except ValueError as problem:
        found.problems.add(sheet.name, str(problem))
        return
    places = [band.column for band in bands]
    read = [(row, _numbers(sheet, row, places, found)) for row in sheet.rows]
    spectra = [(row, values) for row, values in read if values]
    if not spectra:
        return
    scale = scale_of((values for _, values in spectra), norm=100.0 if sheet.columns.are_percent else sheet.norm)
    found.note(scale.sentence)
    for row, values in spectra:
        try:
            factors, sentence = factors_from(values, scale.white)
            reading = Spectrum(start_nm=start_nm, step_nm=step_nm, reflectance=factors)
        except ValueError as problem:
            found.problems.add(row.place, str(problem))
            continue
        if sentence:
            found.note(sentence)
        found.add(_name(sheet, row), reading, row.place)


def _read_triples(sheet: Sheet, triple: Triple, found: Findings) -> None:
    for row in sheet.rows:
        values = _numbers(sheet, row, triple.columns, found)
        if not values:
            continue
        told = triple.told.with_more(_told_in(sheet, row)).with_more(sheet.told)
        try:
            viewing = told.completed(sheet.assumed)
            reading = _colour(triple.kind, values, viewing)
        except ValueError as problem:
            found.problems.add(row.place, str(problem))
            continue
        if not told.is_whole:
            found.note(assumed_sentence(told, viewing))
        found.add(_name(sheet, row), reading, row.place)


def _told_in(sheet: Sheet, row: Row) -> ToldViewing:
    """Find what a row's own cells say of its viewing conditions."""
    illuminant, observer = (
        row.cells[column] if column is not None and column < len(row.cells) else ""
        for column in (sheet.columns.illuminant, sheet.columns.observer)
    )
    named = ToldViewing(illuminant_or_words(illuminant), observer_in(observer))
    return pair_in(illuminant)[0].with_more(named)


def assumed_sentence(told: ToldViewing, viewing: Viewing) -> str:
    """Say which of the viewing conditions a file leaves open, and what they are taken for."""
    light = f"CIE {viewing.illuminant}"
    if told.observer:
        return f"no illuminant is told; {light} is assumed"
    if told.illuminant:
        return f"no observer is told; {viewing.observer}° is assumed"
    return f"no illuminant and observer are told; {light} and {viewing.observer}° are assumed"


def _colour(kind: str, values: Sequence[float], viewing: Viewing) -> Reading:
    one, two, three = values
    if kind == "xyz":
        return XyzReading(xyz=(one, two, three), viewing=viewing)
    lab = (one, two, three) if kind == "lab" else lab_of_lch(one, two, three)
    return LabReading(lab=lab, viewing=viewing)


def _numbers(sheet: Sheet, row: Row, columns: Iterable[int], found: Findings) -> list[float]:
    """Read the cells of a row in these columns; nothing where one of them is no number, which is a problem."""
    values = []
    for column in columns:
        try:
            values.append(number_in(row.cells[column] if column < len(row.cells) else ""))
        except ValueError as problem:
            found.problems.add(sheet.place_of(row, column), str(problem))
            return []
    return values


def _name(sheet: Sheet, row: Row) -> str:
    names = (row.cells[column].strip() for column in sheet.columns.names if column < len(row.cells))
    return next(filter(None, names), "")
