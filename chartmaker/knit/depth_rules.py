"""How deep a hat should be: what head and shape ask for, or what the design says itself.

Depth runs along the fabric from the worn edge to the middle of the top. For a close cap the craft pages have two rules
that differ, girth / 3 + 2 cm and 0.4 × girth (reference-facts, Heads and hats): what lies between them fits, and the
middle is wanted. A tam is laid over a plate: along the fabric it has its brim, the underside out to the rim, and the
top back to the middle; it is worn higher than a cap, so that girth / 3 is enough. A stocking cap is as deep as a cap or
deeper.
"""

from dataclasses import dataclass

from chartmaker.model.hat import Hat
from chartmaker.model.units import Measured, Units

OVER_A_THIRD_CM = 2.0
"""What one of the two rules for a cap adds to a third of the girth."""
TOLERANCE_CM = 1.0
"""How far a depth may be from what is asked and still fit, about three rounds: common practice, no source."""
PLATE_STRETCH = 0.1
"""How much wider than its rim a tam may be stretched as it dries. Derived: a rim widened by half over a band 9 % under
a head of 21 in is 9.1 in across, and the basic tam is 10 in (The Knitter 2017; Rowe, Knitted Tams)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class WantedDepth:
    """The depths that fit, in cm along the fabric, and where they come from."""

    lowest_cm: float
    wanted_cm: float
    highest_cm: float | None
    """None where any deeper hat is as good."""
    rule: str
    """What was asked, as a phrase with its source."""

    def off_cm(self, depth_cm: float) -> float:
        """Give how far a depth lies outside what fits, the tolerance taken off; negative is too short, 0 fits."""
        if depth_cm < self.lowest_cm - TOLERANCE_CM:
            return depth_cm - (self.lowest_cm - TOLERANCE_CM)
        if self.highest_cm is not None and depth_cm > self.highest_cm + TOLERANCE_CM:
            return depth_cm - (self.highest_cm + TOLERANCE_CM)
        return 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Plate:
    """A tam laid flat: what its counts and its brim make of it."""

    brim_cm: float
    """Depth of the brim, which hangs from the underside."""
    inner_radius_cm: float
    """Where the underside begins."""
    radius_cm: float
    """Of the rim, by its own stitches."""


def wanted_depth(hat: Hat, plate: Plate | None = None) -> WantedDepth:
    """Tell what depth is asked of a hat; a tam's needs its plate, and is a cap's without."""
    if hat.depth_cm is not None:
        own = hat.depth_cm
        return WantedDepth(lowest_cm=own, wanted_cm=own, highest_cm=own, rule="the depth that the design sets")
    if hat.shape == "tam" and plate is not None:
        return tam_depth(hat.head_cm, plate)
    low, high = cap_depths(hat.head_cm)
    is_long = hat.shape == "stocking"
    return WantedDepth(
        lowest_cm=low,
        wanted_cm=(low + high) / 2,
        highest_cm=None if is_long else high,
        rule=Measured(_stocking_rule if is_long else _cap_rule),
    )


def _stocking_rule(units: Units) -> str:
    return (
        f"at least a cap's depth, girth / 3 + {units.length.brief(OVER_A_THIRD_CM)} or 0.4 × girth "
        "(craft pages, which differ)"
    )


def _cap_rule(units: Units) -> str:
    return f"between girth / 3 + {units.length.brief(OVER_A_THIRD_CM)} and 0.4 × girth (craft pages, which differ)"


def cap_depths(head_cm: float) -> tuple[float, float]:
    """Give what the two rules for a cap ask of a head, the shallower first."""
    by_third, by_share = head_cm / 3 + OVER_A_THIRD_CM, 0.4 * head_cm
    return min(by_third, by_share), max(by_third, by_share)


def tam_depth(head_cm: float, plate: Plate) -> WantedDepth:
    """Tell what depth a tam wants: brim, underside and top of its plate, and enough for the head in any case."""
    flat, stretched = (
        plate.brim_cm + 2 * radius - plate.inner_radius_cm
        for radius in (plate.radius_cm, plate.radius_cm * (1 + PLATE_STRETCH))
    )
    low, high = max(flat, head_cm / 3), max(stretched, 0.4 * head_cm)
    return WantedDepth(
        lowest_cm=low,
        wanted_cm=(low + high) / 2,
        highest_cm=high,
        rule=Measured(
            lambda units: (
                f"brim, underside and top of a plate {units.length.told(2 * plate.radius_cm)} across, as wide as the "
                "rim or stretched by a tenth (geometry), and between girth / 3 and 0.4 × girth at least (craft pages)"
            )
        ),
    )
