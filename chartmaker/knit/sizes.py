"""Heads by name, each with where its measure comes from, and the hat sizes of the trade.

The tables stand here as published, in their own units; what was not read in its source says so.
"""

import math
from dataclasses import dataclass
from fractions import Fraction

from chartmaker.model.units import CM_PER_INCH

WHO_SOURCE = "WHO Child Growth Standards 2007, median head circumference for age"
ANSUR_WOMEN_SOURCE = "ANSUR II public data (Gordon et al. 2014), women's head circumference"
ANSUR_MEN_SOURCE = "ANSUR II, men's head circumference, mean about 57.4 cm and SD about 1.6 cm, both from memory"
CRAFT_SOURCE = "Craft Yarn Council, standard head table"
WHO_MONTHS = (0, 3, 6, 12, 24, 36, 60)
WHO_MEDIAN_CM = {
    "boy": (34.46, 40.50, 43.34, 46.06, 48.25, 49.46, 50.74),
    "girl": (33.88, 39.52, 42.21, 44.89, 47.18, 48.51, 49.92),
}
"""Median at each of `WHO_MONTHS`."""
ANSUR_WOMEN_MM = {"5th percentile": 532.0, "mean": 561.1, "95th percentile": 597.0}
ANSUR_MEN_MEAN_MM, ANSUR_MEN_SD_MM = 574.0, 16.0
Z_95 = 1.645
"""Standard deviations from the mean to the 5th and the 95th percentile of a normal distribution."""
CRAFT_INCHES = {
    "preemie": (9, 12),
    "baby": (14, 16),
    "toddler": (16, 18),
    "child": (18, 20),
    "woman": (20, 22),
    "man": (22, 24),
}
"""From and to."""
CRAFT_FROM_MEMORY = ("woman", "man")


@dataclass(frozen=True, slots=True)
class Size:
    """A head that has a name."""

    name: str
    head_cm: float
    source: str
    """Where the measure is published, and how it was taken from there."""


def sizes() -> tuple[Size, ...]:
    """Give every named size: children by age, women and men by percentile, then the trade's table."""
    return (*_children(), *_women(), *_men(), *_trade())


def size_named(name: str) -> Size:
    """Give the size of this name, in whatever case it is spelt.

    Raises ValueError where there is none.
    """
    wanted = " ".join(name.casefold().split())
    found = next((size for size in sizes() if size.name.casefold() == wanted), None)
    if found is None:
        raise ValueError(f"there is no size {name!r}")
    return found


def us_hat_size(girth_cm: float) -> Fraction:
    """Give the hat size of the US trade: the girth in inches by π, to the nearest eighth (trade tables)."""
    return Fraction(round(8 * girth_cm / CM_PER_INCH / math.pi), 8)


def us_hat_size_text(girth_cm: float) -> str:
    """Give the US hat size as the trade writes it: "7", "7 1/2"."""
    whole, rest = divmod(us_hat_size(girth_cm), 1)
    return f"{whole} {rest}" if rest else f"{whole}"


def _children() -> list[Size]:
    return [
        Size(f"{_age(months)}, {child}", head_cm, WHO_SOURCE)
        for place, months in enumerate(WHO_MONTHS)
        for child, medians in WHO_MEDIAN_CM.items()
        for head_cm in (medians[place],)
    ]


def _age(months: int) -> str:
    if months == 0:
        return "newborn"
    if months < 12:
        return f"{months} months"
    return "1 year" if months == 12 else f"{months // 12} years"


def _women() -> list[Size]:
    return [Size(f"woman, {which}", mm / 10, ANSUR_WOMEN_SOURCE) for which, mm in ANSUR_WOMEN_MM.items()]


def _men() -> list[Size]:
    return [
        Size(f"man, {which}", round(ANSUR_MEN_MEAN_MM + times * ANSUR_MEN_SD_MM) / 10, ANSUR_MEN_SOURCE)
        for which, times in (("5th percentile", -Z_95), ("mean", 0), ("95th percentile", Z_95))
    ]


def _trade() -> list[Size]:
    return [
        Size(
            f"trade {name}",
            round((low + high) / 2 * CM_PER_INCH, 1),
            f"{CRAFT_SOURCE}: {low}-{high} in, the middle" + (", from memory" if name in CRAFT_FROM_MEMORY else ""),
        )
        for name, (low, high) in CRAFT_INCHES.items()
    ]
