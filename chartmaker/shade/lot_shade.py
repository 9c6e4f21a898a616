"""The shade of a lot: what its readings come to under stated viewing conditions, and how far they can be trusted."""

from dataclasses import dataclass

from chartmaker.model.settings import Viewing

RESTS_ON = ("spectrum", "lab", "xyz", "photo", "approximate", "predicted", "nothing")
"""What a shade may rest on, best first; the words of the report."""


def weakest(*bases: str) -> str:
    """Give the weakest of what some shades rest on, each one of `RESTS_ON`."""
    return max(bases, key=RESTS_ON.index)


@dataclass(frozen=True, slots=True, kw_only=True)
class LotShade:
    """The mean of a lot's readings as CIELAB, with its spread."""

    lot: str
    """Id of the lot (or of the undyed yarn)."""
    viewing: Viewing
    lab: tuple[float, float, float]
    """Mean CIELAB under `viewing`."""
    deviation: tuple[float, float, float]
    """Standard deviation of L*, a* and b*; the stated default where there is a single reading."""
    mcdm: float
    """Mean CIEDE2000 of the readings from their mean (ASTM E2214); 0 for a single reading."""
    readings: int
    rests_on: str
    """One of `RESTS_ON`; the weakest of its readings decides."""
    is_adapted: bool
    """Whether some reading was taken under other conditions and adapted to `viewing`."""
    srgb: tuple[int, int, int]
    """For screens and paper, 0 to 255, clipped to what a screen can show."""
    is_out_of_gamut: bool
    """Whether clipping changed the colour."""

    @property
    def value(self) -> float:
        """The value, CIE L*."""
        return self.lab[0]

    @property
    def is_lone(self) -> bool:
        """Whether it rests on one reading, so that its spread is assumed."""
        return self.readings == 1

    @property
    def has_assumed_spread(self) -> bool:
        """Whether its deviation is a stated default, which more of the same readings would not make smaller."""
        return self.readings < 2 or self.rests_on in {"photo", "approximate"}

    @property
    def hex(self) -> str:
        """The screen colour as "#rrggbb"."""
        red, green, blue = self.srgb
        return f"#{red:02x}{green:02x}{blue:02x}"
