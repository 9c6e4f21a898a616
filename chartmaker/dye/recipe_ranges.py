"""Where a recipe lies outside what old books and the trade give: a note, since a dyer may know better."""

from collections.abc import Iterator
from dataclasses import dataclass

from chartmaker.model.palette import Bath

MADDER_C = 72.0
"""Madder is kept below about this for red (Mairet 1916; trade)."""


@dataclass(frozen=True, slots=True)
class Range:
    """What is usual of something."""

    words: tuple[str, ...]
    """One of which its name holds."""
    low: float
    high: float
    source: str


MORDANTS_WOF = (
    Range(("tartar",), 2.0, 6.25, "Mairet 1916; Dean; trade pages"),
    Range(("alum",), 8.0, 25.0, "Mairet 1916; Dean; trade pages"),
)
"""% of the fibre's weight."""
DYESTUFFS_WOF = (
    Range(("madder",), 35.0, 100.0, "Mairet 1916; trade"),
    Range(("weld",), 50.0, 100.0, "Mairet 1916; trade"),
)
"""% of the fibre's weight, of dry dyestuff."""
LITRES = Range((), 3.0, 5.0, "trade pages")
LITRES_MADDER = Range(("madder",), 3.0, 10.0, "trade pages")
"""Liquor to 100 g of fibre."""


def notes_on(bath: Bath) -> tuple[str, ...]:
    """Give a sentence, without its full stop, for each thing that is not as usual."""
    return tuple(_notes(bath))


def _notes(bath: Bath) -> Iterator[str]:
    for mordant in bath.mordants:
        usual = _known(mordant.name, MORDANTS_WOF)
        if usual and not usual.low <= mordant.percent_wof <= usual.high:
            yield (
                f"{mordant.name} at {mordant.percent_wof:g} % of the fibre is outside the {usual.low:g} to "
                f"{usual.high:g} % that are usual ({usual.source})"
            )
    usual = _known(bath.dyestuff, DYESTUFFS_WOF)
    percent = 100 * bath.ratio
    if usual and bath.state == "dry" and not usual.low <= percent <= usual.high:
        yield (
            f"{bath.dyestuff} at {percent:g} % of the fibre is outside the {usual.low:g} to {usual.high:g} % that "
            f"are usual ({usual.source})"
        )
    litres = _known(bath.dyestuff, (LITRES_MADDER,)) or LITRES
    if not litres.low <= bath.liquor_l_per_100g <= litres.high:
        yield (
            f"{bath.liquor_l_per_100g:g} L of liquor to 100 g of fibre is outside the {litres.low:g} to "
            f"{litres.high:g} L that are usual ({litres.source})"
        )
    if "madder" in bath.dyestuff.casefold() and (bath.hottest_c or 0) > MADDER_C:
        yield f"madder above about {MADDER_C:g} °C turns from red to brown (Mairet 1916; trade)"


def _known(name: str, ranges: tuple[Range, ...]) -> Range | None:
    known = name.casefold()
    return next((each for each in ranges if any(word in known for word in each.words)), None)
