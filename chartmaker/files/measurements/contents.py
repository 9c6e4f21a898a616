"""What a measurement file gives: its samples, each with its readings, and what was assumed of them."""

from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import NamedTuple

from chartmaker.files.problems import ProblemList
from chartmaker.model.bounds import MOST_LOTS, MOST_READINGS
from chartmaker.model.measured import Measured, name_key
from chartmaker.model.reading import Reading
from chartmaker.model.settings import Viewing

LONGEST_NAME = 200
"""Characters of a sample's name; what is longer is no name but a slip in the file."""
TEXTILE_VIEWING = Viewing()
"""Assumed of tables without a word on it: CIE D65 and 10°, the usual pair for textiles (ISO 105-J01)."""
GRAPHIC_VIEWING = Viewing(illuminant="D50", observer="2")
"""Assumed of CGATS and CxF without a word on it: D50 and 2°, graphic technology's pair (ISO 13655; from memory)."""


@dataclass(frozen=True, slots=True)
class Contents:
    """All that one file holds, samples in the order in which they first appear."""

    grammar: str
    """"CGATS", "CxF" or "CSV"."""
    measured: tuple[Measured, ...]
    notes: tuple[str, ...] = ()
    """Sentences on what was assumed or left aside."""


class Sample(NamedTuple):
    """One reading with the name and the place that it had in the file."""

    name: str
    reading: Reading
    place: str


@dataclass(slots=True)
class Findings:
    """Gathers samples, notes and problems while a file is read; a note that was made already is not made again."""

    problems: ProblemList = field(default_factory=ProblemList)
    notes: list[str] = field(default_factory=list)
    samples: list[Sample] = field(default_factory=list)

    def note(self, text: str) -> None:
        """Note what was assumed."""
        if text not in self.notes:
            self.notes.append(text)

    def add(self, name: str, reading: Reading, place: str) -> None:
        """Take a reading; its name may not be empty or past all measure."""
        shown = " ".join(name.split())
        if not shown:
            self.problems.add(place, "the sample has no name")
        elif len(shown) > LONGEST_NAME:
            self.problems.add(place, f"the name has {len(shown)} characters, more than {LONGEST_NAME}")
        else:
            self.samples.append(Sample(shown, reading, place))


def contents_of(found: Findings, grammar: str, *, where: str) -> Contents:
    """Give what was found, readings of one name together.

    Raises FileRefused with all problems, with the limit that is passed, or where there is nothing.
    """
    measured = tuple(gathered(found.samples))
    if len(measured) > MOST_LOTS:
        found.problems.add("", f"there are {len(measured)} samples, more than {MOST_LOTS}")
    for each in measured:
        if len(each.readings) > MOST_READINGS:
            text = f"{each.name!r} has {len(each.readings)} readings, more than {MOST_READINGS}"
            found.problems.add(each.place, text)
    if not measured and not len(found.problems):
        found.problems.add("", "there is no reading in it")
    found.problems.refuse_any(where)
    return Contents(grammar, measured, tuple(found.notes))


def gathered(samples: Iterable[Sample]) -> Iterable[Measured]:
    """Give the samples by name, those that differ in capitals and spaces alone being one."""
    by_name: dict[str, list[Sample]] = {}
    for sample in samples:
        by_name.setdefault(name_key(sample.name), []).append(sample)
    for same in by_name.values():
        yield Measured(same[0].name, tuple(sample.reading for sample in same), same[0].place)
