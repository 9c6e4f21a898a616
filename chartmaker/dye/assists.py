"""What goes into the liquor besides the dyestuff, with the pH that it is there for: little, test, add again."""

from dataclasses import dataclass

from chartmaker.dye.plan import BathPlan, Portion

STEPS = 3
"""An assist goes in by thirds: common practice, no source."""
_ACIDS = ("acid", "vinegar", "tartar", "lemon")
_ALKALIS = ("chalk", "soda", "lye", "lime", "potash", "hydroxide", "carbonate", "ash", "ammonia")


@dataclass(frozen=True, slots=True)
class AssistAdvice:
    """One assist and how it goes in."""

    portion: Portion
    ph_aim: float | None
    """pH at the start by the recipe; None where none is written down."""

    @property
    def direction(self) -> str:
        """Which way it moves the pH: `down`, `up`, or empty where that is not known."""
        known = self.portion.name.casefold()
        if any(word in known for word in _ACIDS):
            return "down"
        return "up" if any(word in known for word in _ALKALIS) else ""

    @property
    def first_g(self) -> float:
        """What to begin with."""
        return self.portion.grams / STEPS if self.direction else self.portion.grams

    @property
    def text(self) -> str:
        """Tell how it goes in, in a sentence without the full stop."""
        name, first = self.portion.name, f"{self.first_g:.1f} g"
        if not self.direction:
            return f"all of the {name} at once"
        if self.ph_aim is None:
            return f"begin with {first} of {name}, stir, test; write the pH down, since the recipe names none"
        stop = f"stop at pH {self.ph_aim:g}, even if some is left"
        return f"begin with {first} of {name}, stir, wait, test, add as little again; {stop}"


def assists_of(plan: BathPlan) -> tuple[AssistAdvice, ...]:
    """Give the assists of a bath with the pH that they aim at."""
    return tuple(AssistAdvice(portion, plan.bath.ph_start) for portion in plan.assists)
