"""How the knitter knits: her gauge, and the swatch that tells how much yarn a stitch takes."""

from dataclasses import dataclass

from chartmaker.model.bounds import require_cm_within, require_within
from chartmaker.model.units import Measured


@dataclass(frozen=True, slots=True, kw_only=True)
class Gauge:
    """How many stitches and rounds the knitter gets; measured on stranded fabric worked in the round."""

    stitches_per_10cm: float = 28.0
    rounds_per_10cm: float = 32.0

    def __post_init__(self) -> None:
        for count in (self.stitches_per_10cm, self.rounds_per_10cm):
            if not 5 <= count <= 100:
                raise ValueError(_outside(count))

    @property
    def stitch_width_cm(self) -> float:
        """Width of one stitch."""
        return 10 / self.stitches_per_10cm

    @property
    def round_height_cm(self) -> float:
        """Height of one round."""
        return 10 / self.rounds_per_10cm


def _outside(count: float) -> str:
    return Measured(
        lambda units: (
            f"a gauge of {units.gauge.brief(count)} is outside {units.gauge.brief_figure(5)} to "
            f"{units.gauge.brief_figure(100)}"
        )
    )


def gauge_counted(*, stitches: float, width_cm: float, rounds: float, height_cm: float) -> Gauge:
    """Give the gauge of a swatch whose stitches were counted over so many cm, and its rounds over so many.

    Raises ValueError where a count or a length is not above 0, or the gauge is outside what is accepted.
    """
    require_within("the stitches counted", stitches, 1, 10_000)
    require_within("the rounds counted", rounds, 1, 10_000)
    require_cm_within("the width counted over", width_cm, 0.5, 1000)
    require_cm_within("the height counted over", height_cm, 0.5, 1000)
    return Gauge(stitches_per_10cm=10 * stitches / width_cm, rounds_per_10cm=10 * rounds / height_cm)


@dataclass(frozen=True, slots=True, kw_only=True)
class Swatch:
    """A counted piece of knitting and the yarn that went into it.

    The yarn was unravelled and measured, or the piece was weighed, or the ball before and after it: one of the three.
    """

    stitches: int
    metres: float | None = None
    """Unravelled, all strands together."""
    grams: float | None = None
    """The piece on the scale."""
    ball_before_g: float | None = None
    ball_after_g: float | None = None
    """The balls before and after; what they lost is in the piece."""
    passed: int = 0
    """Stitches that floats pass behind, strand by strand; 0 for plain knitting. Two letters all along a round: each
    stitch is passed by the other strand, so as many as there are stitches."""
    metres_per_100g: float | None = None
    """Grist of its own yarn, which a weight needs; None where it was the design's."""

    def __post_init__(self) -> None:
        require_within("a swatch's stitches", self.stitches, 1, 1_000_000)
        require_within("the stitches that a swatch's floats pass", self.passed, 0, 25 * self.stitches)
        if (self.ball_before_g is None) != (self.ball_after_g is None):
            raise ValueError("a ball is weighed twice, before the swatch and after it")
        ways = (self.metres, self.grams, self.ball_before_g)
        if sum(way is not None for way in ways) != 1:
            raise ValueError("a swatch gives metres, grams, or the ball before and after: one of the three")
        if self.ball_before_g is not None and self.ball_after_g is not None:
            require_within("the ball before, in grams,", self.ball_before_g, 0.001, 100_000)
            require_within("the ball after, in grams,", self.ball_after_g, 0, 100_000)
            if self.ball_after_g >= self.ball_before_g:
                raise ValueError(_not_less(self.ball_before_g, self.ball_after_g))
        for name, value in (("metres", self.metres), ("grams", self.grams)):
            if value is not None:
                require_within(f"a swatch's {name}", value, 0.001, 100_000)
        if self.metres_per_100g is not None:
            require_within("metres_per_100g", self.metres_per_100g, 10, 5000)

    @property
    def weight_g(self) -> float | None:
        """What the piece weighs; None where its yarn was measured."""
        if self.ball_before_g is not None and self.ball_after_g is not None:
            return self.ball_before_g - self.ball_after_g
        return self.grams


def _not_less(before_g: float, after_g: float) -> str:
    return Measured(
        lambda units: (
            f"the ball weighs {units.weight.brief(after_g)} after the swatch, "
            f"not less than the {units.weight.brief(before_g)} before"
        )
    )
