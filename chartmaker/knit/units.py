"""Lengths, weights and gauges as a knitter reads and types them, metric or imperial; files and sums stay metric.

The inch is 2.54 cm, the yard 0.9144 m and the ounce 28.349523125 g, all three exactly: the international yard and pound
agreement of 1959.
"""

from dataclasses import dataclass

CM_PER_INCH = 2.54
METRES_PER_YARD = 0.9144
GRAMS_PER_OUNCE = 28.349523125
INCHES_OF_GAUGE = 4
"""Gauges of the trade are counted over 4 in (Craft Yarn Council, Standard Yarn Weight System), or over 10 cm."""


@dataclass(frozen=True, slots=True)
class Quantity:
    """One kind of measure in one system: how many metric units its own unit has, and how it is written."""

    per_metric: float
    """What a metric number is multiplied with to be shown."""
    unit: str
    """Written behind the number, with its space."""
    digits: int = 1
    """Places after the point that a person can measure."""

    def shown(self, metric: float) -> float:
        """Give a metric number in this unit."""
        return metric * self.per_metric

    def metric(self, shown: float) -> float:
        """Give what was typed in this unit as a metric number."""
        return shown / self.per_metric

    def told(self, metric: float) -> str:
        """Write a metric number in this unit, with a true minus sign."""
        return f"{self.shown(metric):.{self.digits}f}".replace("-", "−") + self.unit


@dataclass(frozen=True, slots=True)
class Units:
    """One system of measures."""

    name: str
    length: Quantity
    """Of what is kept in cm."""
    gauge: Quantity
    """Of stitches or rounds in 10 cm; its unit is what they are counted over."""
    yarn: Quantity
    """Of what is kept in m."""
    weight: Quantity
    """Of what is kept in g."""
    grist: Quantity
    """Of m in 100 g."""


METRIC = Units(
    "metric",
    length=Quantity(1.0, " cm"),
    gauge=Quantity(1.0, " in 10 cm"),
    yarn=Quantity(1.0, " m"),
    weight=Quantity(1.0, " g"),
    grist=Quantity(1.0, " m in 100 g", 0),
)
IMPERIAL = Units(
    "imperial",
    length=Quantity(1 / CM_PER_INCH, " in", 2),
    gauge=Quantity(INCHES_OF_GAUGE * CM_PER_INCH / 10, " in 4 in"),
    yarn=Quantity(1 / METRES_PER_YARD, " yd"),
    weight=Quantity(1 / GRAMS_PER_OUNCE, " oz", 2),
    grist=Quantity(GRAMS_PER_OUNCE / 100 / METRES_PER_YARD, " yd in 1 oz", 0),
)
SYSTEMS = (METRIC, IMPERIAL)


def units_named(name: str) -> Units:
    """Give a system by its name; metric where there is none of that name, as in settings that were damaged."""
    return next((units for units in SYSTEMS if units.name == name), METRIC)
