"""Whether what was gathered is enough: how much fibre it serves, and what is missing."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from chartmaker.dye.fibre import tenths
from chartmaker.dye.plan import BathPlan
from chartmaker.model.dyeing import Dyestuff
from chartmaker.model.palette import Bath


@dataclass(frozen=True, slots=True, kw_only=True)
class Supply:
    """What the shelf gives one bath; baths take from it in their order."""

    bath: str
    dyestuff: str
    part: str
    state: str
    """Dry or fresh, as the recipe weighs it."""
    needed_g: float
    at_hand_g: float
    """What is left for this bath, in the recipe's state."""
    ratio: float
    first_load_g: float
    is_listed: bool
    """Whether the shelf has the dyestuff at all, be it none of it."""
    uncounted: tuple[Dyestuff, ...]
    """What lies there in the other state, of which nobody has written down what it dries to."""
    identified_by: tuple[str, ...]
    """Who identified what is used of the shelf; an empty name where nobody is named."""

    @property
    def missing_g(self) -> float:
        """What is still to be gathered or bought."""
        return max(0.0, self.needed_g - self.at_hand_g)

    @property
    def serves_g(self) -> float:
        """The fibre of a first load that what is at hand dyes by this recipe."""
        return (
            self.first_load_g
            if not self.ratio or not self.needed_g
            else min(self.first_load_g, self.at_hand_g / self.ratio)
        )

    @property
    def is_enough(self) -> bool:
        """Whether nothing is missing, but for a rounding."""
        return self.missing_g < 0.05

    @property
    def text(self) -> str:
        """Tell it in a sentence, without the full stop."""
        name = " ".join(filter(None, (self.dyestuff, self.part)))
        if not self.needed_g:
            return f"no {name} is weighed in: the liquor has what these loads take"
        if not self.is_listed:
            return f"{tenths(self.needed_g)} g of {self.state} {name} are needed; the shelf lists none"
        if self.is_enough:
            there, needed = tenths(self.at_hand_g), tenths(self.needed_g)
            return f"{there} g of {self.state} {name} are at hand, enough for the {needed} g"
        return (
            f"{tenths(self.at_hand_g)} g of {self.state} {name} serve {tenths(self.serves_g)} g of the "
            f"{tenths(self.first_load_g)} g of fibre; {tenths(self.missing_g)} g are missing"
        )


def supplies(plans: Sequence[BathPlan], shelf: Sequence[Dyestuff]) -> tuple[Supply, ...]:
    """Serve the baths one after another from the shelf, and say for each what that gives."""
    left = {each.key: each.on_hand_g for each in shelf}
    return tuple(_supply(plan, shelf, left) for plan in plans)


def _supply(plan: BathPlan, shelf: Sequence[Dyestuff], left: dict[tuple[str, str, str], float]) -> Supply:
    bath = plan.bath
    fitting = _fitting(shelf, bath)
    at_hand, wanted = 0.0, plan.dyestuff_g
    uncounted, names = [], []
    for each in fitting:
        factor = _factor(each, bath, fitting)
        if factor is None:
            uncounted.append(each)
            continue
        there = left[each.key] * factor
        taken = min(there, max(0.0, wanted - at_hand))
        at_hand += there
        left[each.key] -= taken / factor
        if taken:
            names.append(each.identified_by)
    return Supply(
        bath=bath.id,
        dyestuff=bath.dyestuff,
        part=bath.part,
        state=bath.state,
        needed_g=wanted,
        at_hand_g=at_hand,
        ratio=bath.ratio,
        first_load_g=plan.loads[0].fibre_g,
        is_listed=bool(fitting),
        uncounted=tuple(uncounted),
        identified_by=tuple(dict.fromkeys(names)),
    )


def taken_from(shelf: Sequence[Dyestuff], bath: Bath, grams: float) -> tuple[Dyestuff, ...]:
    """Give the shelf once a bath has taken so many grams, weighed in its recipe's state: as `supplies` serves it."""
    fitting = _fitting(shelf, bath)
    after = {each.key: each for each in shelf}
    for each in fitting:
        factor = _factor(each, bath, fitting)
        if factor is not None:
            taken = min(each.on_hand_g * factor, grams)
            grams -= taken
            after[each.key] = replace(each, on_hand_g=round(each.on_hand_g - taken / factor, 3))
    return tuple(after.values())


def _fitting(shelf: Sequence[Dyestuff], bath: Bath) -> list[Dyestuff]:
    """Give what a bath may take of, what lies there in the recipe's state first."""
    return sorted((each for each in shelf if _is_for(each, bath)), key=lambda each: each.state != bath.state)


def _factor(each: Dyestuff, bath: Bath, fitting: Sequence[Dyestuff]) -> float | None:
    return 1.0 if each.state == bath.state else _other_state(each, fitting)


def _is_for(each: Dyestuff, bath: Bath) -> bool:
    """Tell whether something on the shelf is what a bath asks for; a part that is not named may be any."""
    same = each.name.casefold().strip() == bath.dyestuff.casefold().strip()
    parts = {each.part.casefold().strip(), bath.part.casefold().strip()}
    return same and (len(parts) == 1 or "" in parts)


def _other_state(each: Dyestuff, fitting: Sequence[Dyestuff]) -> float | None:
    """Give grams in the recipe's state for one gram of the other; None where no weight after drying is known."""
    percents = [one.dries_to_percent for one in (each, *fitting) if one.dries_to_percent is not None]
    if not percents:
        return None
    return percents[0] / 100 if each.state == "fresh" else 100 / percents[0]
