"""What the knitter allows for, what she accepts, and the light in which shades are judged."""

from dataclasses import dataclass

from chartmaker.model.bounds import require_one_of, require_within

ILLUMINANTS = ("D65", "D50", "A", "LED-B3", "FL11")
"""CIE illuminants that a design may be viewed under, by the names of CIE 15."""
OBSERVERS = ("2", "10")
"""CIE standard observers, in degrees."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Allowances:
    """Yarn beyond the stitches themselves."""

    tail_cm: float = 15.0
    """At each start and each end of a strand."""
    float_slack_percent: float = 10.0
    """How much longer a float is than the stitches that it passes."""
    carry_up_rounds: int = 4
    """A letter idle for more rounds than this is cut and joined anew."""
    reserve_percent: float = 10.0
    """Planned beyond the high end of the requirement."""

    def __post_init__(self) -> None:
        require_within("tail_cm", self.tail_cm, 0, 200)
        require_within("float_slack_percent", self.float_slack_percent, 0, 100)
        require_within("carry_up_rounds", self.carry_up_rounds, 0, 600)
        require_within("reserve_percent", self.reserve_percent, 0, 200)


@dataclass(frozen=True, slots=True, kw_only=True)
class Limits:
    """Where a check begins to complain."""

    float_cm: float = 2.5
    """Longest float that is left uncaught."""
    value_clear: float = 20.0
    """From this difference in L* on, two shades are clear of each other."""
    value_soft: float = 10.0
    """From this difference on they are soft; below it they are lost."""

    def __post_init__(self) -> None:
        require_within("float_cm", self.float_cm, 0.1, 50)
        require_within("value_clear", self.value_clear, 0, 100)
        require_within("value_soft", self.value_soft, 0, 100)
        if self.value_soft > self.value_clear:
            raise ValueError(f"value_soft is {self.value_soft:g}, above value_clear, {self.value_clear:g}")


@dataclass(frozen=True, slots=True, kw_only=True)
class Viewing:
    """The light and the observer; D65 with the 10° observer is the usual pair for textiles (ISO 105-J01)."""

    illuminant: str = "D65"
    observer: str = "10"

    def __post_init__(self) -> None:
        require_one_of("illuminant", self.illuminant, ILLUMINANTS)
        require_one_of("observer", self.observer, OBSERVERS)
