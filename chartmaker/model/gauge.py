"""How the knitter knits: her gauge, and the swatch that tells how much yarn a stitch takes."""

from dataclasses import dataclass

from chartmaker.model.bounds import require_within


@dataclass(frozen=True, slots=True, kw_only=True)
class Gauge:
    """How many stitches and rounds the knitter gets; measured on stranded fabric worked in the round."""

    stitches_per_10cm: float = 28.0
    rounds_per_10cm: float = 32.0

    def __post_init__(self) -> None:
        for count in (self.stitches_per_10cm, self.rounds_per_10cm):
            if not 5 <= count <= 100:
                raise ValueError(f"a gauge of {count:g} per 10 cm is outside 5 to 100")

    @property
    def stitch_width_cm(self) -> float:
        """Width of one stitch."""
        return 10 / self.stitches_per_10cm

    @property
    def round_height_cm(self) -> float:
        """Height of one round."""
        return 10 / self.rounds_per_10cm


def gauge_counted(*, stitches: float, width_cm: float, rounds: float, height_cm: float) -> Gauge:
    """Give the gauge of a swatch whose stitches were counted over so many cm, and its rounds over so many.

    Raises ValueError where a count or a length is not above 0, or the gauge is outside what is accepted.
    """
    require_within("the stitches counted", stitches, 1, 10_000)
    require_within("the rounds counted", rounds, 1, 10_000)
    require_within("the width counted over, in cm", width_cm, 0.5, 1000)
    require_within("the height counted over, in cm", height_cm, 0.5, 1000)
    return Gauge(stitches_per_10cm=10 * stitches / width_cm, rounds_per_10cm=10 * rounds / height_cm)


@dataclass(frozen=True, slots=True, kw_only=True)
class Swatch:
    """A counted piece of plain knitting whose yarn was unravelled and measured, or weighed: one of the two."""

    stitches: int
    metres: float | None = None
    grams: float | None = None

    def __post_init__(self) -> None:
        require_within("a swatch's stitches", self.stitches, 1, 1_000_000)
        if (self.metres is None) == (self.grams is None):
            raise ValueError("a swatch gives either metres or grams, one of the two")
        if self.metres is not None:
            require_within("a swatch's metres", self.metres, 0.001, 100_000)
        if self.grams is not None:
            require_within("a swatch's grams", self.grams, 0.001, 100_000)
