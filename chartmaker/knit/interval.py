"""A quantity that is known only so well: low, likely and high."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Interval:
    """Three figures in one unit, low ≤ likely ≤ high."""

    low: float
    likely: float
    high: float

    def __post_init__(self) -> None:
        if not self.low <= self.likely <= self.high:
            raise ValueError(f"{self.low:g}, {self.likely:g}, {self.high:g} do not rise")

    def __add__(self, other: "Interval") -> "Interval":
        """Add low to low and so on: the two are taken to err the same way."""
        return Interval(self.low + other.low, self.likely + other.likely, self.high + other.high)

    def __mul__(self, factor: float) -> "Interval":
        """Scale by a factor of at least 0."""
        return Interval(self.low * factor, self.likely * factor, self.high * factor)

    @classmethod
    def exactly(cls, value: float) -> "Interval":
        """Give the interval of a quantity that is known."""
        return cls(value, value, value)

    @classmethod
    def about(cls, value: float, *, percent: float) -> "Interval":
        """Give the interval that reaches so many percent to either side."""
        return cls(value * (1 - percent / 100), value, value * (1 + percent / 100))


NOTHING = Interval(0.0, 0.0, 0.0)
