"""Lengths, weights and gauges as a knitter reads and types them, metric or imperial; files and sums stay metric.

The inch is 2.54 cm, the yard 0.9144 m and the ounce 28.349523125 g, all three exactly: the international yard and pound
agreement of 1959.
"""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Self

CM_PER_INCH = 2.54
METRES_PER_YARD = 0.9144
METRES_PER_FOOT = METRES_PER_YARD / 3
GRAMS_PER_OUNCE = 28.349523125
ROUGH_FROM, BRIEF_DIGITS = 9.95, 2
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
    zero: float = 0.0
    """Shown where the metric number is 0: another number for degrees alone."""

    def shown(self, metric: float) -> float:
        """Give a metric number in this unit."""
        return metric * self.per_metric + self.zero

    def metric(self, shown: float) -> float:
        """Give what was typed in this unit as a metric number."""
        return (shown - self.zero) / self.per_metric

    def figure(self, metric: float) -> str:
        """Write a metric number in this unit, which is told elsewhere; with a true minus sign."""
        return _written(self.shown(metric), self.digits)

    def told(self, metric: float) -> str:
        """Write a metric number in this unit, as finely as a person can measure."""
        return self.figure(metric) + self.unit

    def fine_figure(self, metric: float) -> str:
        """Write a number as in `fine`, without its unit."""
        return _written(self.shown(metric), self.digits + 1)

    def fine(self, metric: float) -> str:
        """Write a mean of many, or what is worked out, with one place more."""
        return self.fine_figure(metric) + self.unit

    def rough_figure(self, metric: float) -> str:
        """Write a number as in `rough`, without its unit."""
        shown = self.shown(metric)
        return _written(shown, self.digits - (0 if abs(shown) < ROUGH_FROM else 1))

    def rough(self, metric: float) -> str:
        """Write what nobody needs finely: with a place less from ten on, so that three figures are left."""
        return self.rough_figure(metric) + self.unit

    def brief_figure(self, metric: float) -> str:
        """Write a number as in `brief`, without its unit."""
        written = _written(self.shown(metric), BRIEF_DIGITS)
        return written.rstrip("0").rstrip(".")

    def brief(self, metric: float) -> str:
        """Write a number that somebody chose, such as a limit, without idle zeros."""
        return self.brief_figure(metric) + self.unit

    def span(self, lowest: float, highest: float) -> str:
        """Write two metric numbers with their unit once."""
        return f"{self.figure(lowest)} to {self.told(highest)}"


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
    heat: Quantity
    """Of °C."""
    room: Quantity
    """Of m across a room."""


METRIC = Units(
    "metric",
    length=Quantity(1.0, " cm"),
    gauge=Quantity(1.0, " in 10 cm"),
    yarn=Quantity(1.0, " m"),
    weight=Quantity(1.0, " g"),
    grist=Quantity(1.0, " m in 100 g", 0),
    heat=Quantity(1.0, " °C", 0),
    room=Quantity(1.0, " m"),
)
IMPERIAL = Units(
    "imperial",
    length=Quantity(1 / CM_PER_INCH, " in", 2),
    gauge=Quantity(INCHES_OF_GAUGE * CM_PER_INCH / 10, " over 4 in"),
    yarn=Quantity(1 / METRES_PER_YARD, " yd"),
    weight=Quantity(1 / GRAMS_PER_OUNCE, " oz", 2),
    grist=Quantity(GRAMS_PER_OUNCE / 100 / METRES_PER_YARD, " yd in 1 oz", 0),
    heat=Quantity(9 / 5, " °F", 0, zero=32.0),
    room=Quantity(1 / METRES_PER_FOOT, " ft"),
)
SYSTEMS = (METRIC, IMPERIAL)


def units_named(name: str) -> Units:
    """Give a system by its name; metric where there is none of that name, as in settings that were damaged."""
    return next((units for units in SYSTEMS if units.name == name), METRIC)


class Measured(str):
    """A sentence with measures in it: metric as the text that it is, and told anew in the units of whoever reads it.

    The layers below the window, the sheets and the terminal know no reader. A sentence that took its measures in as
    text could only be turned into inches by reading it again: numbers already rounded, among words that a user wrote.
    So it keeps how it is made. Whatever goes to files and scripts, and whoever does not ask, has the metric.
    """

    __slots__ = ("tell",)

    tell: Callable[[Units], str]
    """Makes the sentence in some units."""

    def __new__(cls, tell: Callable[[Units], str]) -> Self:
        """Make the sentence, in metric units, and remember how."""
        made = super().__new__(cls, tell(METRIC))
        made.tell = tell
        return made


def in_units(text: str, units: Units) -> str:
    """Tell a sentence of a layer below in some units; one without measures is what it is."""
    return text.tell(units) if isinstance(text, Measured) else text


def at_the_pot(grams: float, units: Units) -> str:
    """Write the weight of fibre for a bath: in grams, and in ounces beside them for who has its yarn in ounces.

    What goes into a bath stays metric: dyestuff, mordant and water are shares of the fibre's weight, which grams and
    litres make easy (2 % of 100 g, 3 l to 100 g) and ounces do not, and scales at the pot show grams.
    """
    written = METRIC.weight.rough(grams)
    return written if units is METRIC else f"{written} ({units.weight.rough(grams)})"


def reason(refusal: Exception) -> str:
    """Give why something was refused, as the sentence that it was refused with: `str` would make it plain text."""
    first = refusal.args[0] if len(refusal.args) == 1 else None
    return first if isinstance(first, str) else str(refusal)


def _written(number: float, digits: int) -> str:
    return f"{number:.{max(digits, 0)}f}".replace("-", "−")
