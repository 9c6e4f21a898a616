"""What the views need to know of the room, the screen and the eye; the settings remember it."""

from __future__ import annotations

from dataclasses import dataclass, fields
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from PySide6.QtCore import QSettings

NEAREST_M, FARTHEST_M = 0.5, 20.0
NEAREST_EYE_CM, FARTHEST_EYE_CM = 20.0, 200.0
LEAST_UNITS_PER_CM, MOST_UNITS_PER_CM = 15.0, 120.0
"""Window units to the centimetre that a screen may plausibly have: 38 to 305 to the inch."""
USUAL_UNITS_PER_CM = 96 / 2.54
"""The CSS reference pixel's 96 to the inch, for a screen that says nothing plausible."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Seeing:
    """One state of all of it."""

    distance_m: float = 3.0
    """From the eye to the hat."""
    eye_cm: float = 60.0
    """From the eye to this screen."""
    units_per_cm: float = 0.0
    """Window units to the centimetre, measured by hand; 0 where the screen's own word is taken."""
    severity: float = 1.0
    """Of another colour vision: 0 none, 1 the whole lack of a cone."""

    def on_screen(self, units_per_cm: float) -> float:
        """Give the window units to the centimetre to reckon with, when the screen itself says `units_per_cm`."""
        for told in (self.units_per_cm, units_per_cm):
            if LEAST_UNITS_PER_CM <= told <= MOST_UNITS_PER_CM:
                return told
        return USUAL_UNITS_PER_CM


_RANGES = {
    "distance_m": (NEAREST_M, FARTHEST_M),
    "eye_cm": (NEAREST_EYE_CM, FARTHEST_EYE_CM),
    "units_per_cm": (0.0, MOST_UNITS_PER_CM),
    "severity": (0.0, 1.0),
}


def kept_seeing(settings: QSettings) -> Seeing:
    """Read what was kept; what is missing, damaged or out of range is as at first."""
    found: dict[str, float] = {}
    for name, (low, high) in _RANGES.items():
        try:
            value = float(str(settings.value(f"seeing/{name}", "")))
        except ValueError:
            continue
        if low <= value <= high:
            found[name] = value
    return Seeing(**found)


def keep_seeing(settings: QSettings, seeing: Seeing) -> None:
    """Keep all of it for the next start."""
    for field in fields(seeing):
        settings.setValue(f"seeing/{field.name}", getattr(seeing, field.name))
