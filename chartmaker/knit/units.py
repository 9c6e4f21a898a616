"""Where `model/units.py` was: only for imports that are still on their way; nothing in the house uses it."""

from chartmaker.model.units import (
    CM_PER_INCH,
    GRAMS_PER_OUNCE,
    IMPERIAL,
    INCHES_OF_GAUGE,
    METRES_PER_YARD,
    METRIC,
    SYSTEMS,
    Quantity,
    Units,
    units_named,
)

__all__ = [
    "CM_PER_INCH",
    "GRAMS_PER_OUNCE",
    "IMPERIAL",
    "INCHES_OF_GAUGE",
    "METRES_PER_YARD",
    "METRIC",
    "SYSTEMS",
    "Quantity",
    "Units",
    "units_named",
]
