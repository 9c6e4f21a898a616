"""How far measured readings lie from what a lot had before: a sample that was matched to the wrong lot shows so."""

from collections.abc import Sequence

from chartmaker.model.palette import Lot
from chartmaker.model.reading import Reading
from chartmaker.model.settings import Viewing
from chartmaker.shade.difference import ciede2000
from chartmaker.shade.lots import shade_of
from chartmaker.shade.readings import lab_of_readings

FAR = 5.0
"""CIEDE2000 from which on readings hardly are of the same yarn; common practice, no source."""


def stray_of(readings: Sequence[Reading], lot: Lot | None, viewing: Viewing) -> float | None:
    """Give CIEDE2000 between the mean of readings and a lot's shade; None where the lot has no shade to compare."""
    shade = shade_of(lot, viewing) if lot else None
    if shade is None or not readings:
        return None
    return float(ciede2000(shade.lab, lab_of_readings(readings, viewing).mean(axis=0)))


def stray_note(readings: Sequence[Reading], lot: Lot | None, viewing: Viewing) -> str:
    """Say that readings lie far from a lot's shade; empty where they do not."""
    stray = stray_of(readings, lot, viewing)
    return "" if stray is None or stray < FAR else _far(stray)


def _far(stray: float) -> str:
    return f"CIEDE2000 {stray:.1f} from the shade that the lot had"
