"""The whole plan of a dyer's week: all baths of all designs, with what they share, what is at hand and what is not."""

from collections.abc import Sequence
from dataclasses import dataclass

from chartmaker.dye.assists import AssistAdvice, assists_of
from chartmaker.dye.cautions import Caution, cautions_for
from chartmaker.dye.chains import LoadStrength, strengths
from chartmaker.dye.mordanting import Mordanting, mordantings
from chartmaker.dye.plan import BathPlan, plan_baths
from chartmaker.dye.pots import PotUse, pot_for
from chartmaker.dye.recipe_ranges import notes_on
from chartmaker.dye.salts import OtherForm, other_form
from chartmaker.dye.shopping import ShoppingItem, shopping_list
from chartmaker.dye.spoons import Spoonful, in_spoons
from chartmaker.dye.supply import Supply, supplies
from chartmaker.dye.timetable import Step, timetable
from chartmaker.model.palette import Palette


@dataclass(frozen=True, slots=True, kw_only=True)
class Need:
    """What is short of one lot, over all designs."""

    lot: str
    planned_g: float
    """What the designs plan to take, reserves in it."""
    on_hand_g: float
    designs: tuple[str, ...]
    """Titles of those that take of it."""

    @property
    def short_g(self) -> float:
        """What is missing."""
        return max(0.0, self.planned_g - self.on_hand_g)


@dataclass(frozen=True, slots=True, kw_only=True)
class Weighed:
    """Something to be weighed in, with what helps whoever has no scale, or another form of it."""

    name: str
    grams: float
    spoons: Spoonful | None
    other: OtherForm | None


@dataclass(frozen=True, slots=True, kw_only=True)
class BathCard:
    """One bath with all that belongs on its card."""

    plan: BathPlan
    strengths: tuple[LoadStrength, ...]
    supply: Supply
    pot: PotUse
    mordantings: tuple[Mordanting, ...]
    """Those that its fibre goes through, some together with that of other baths."""
    assists: tuple[AssistAdvice, ...]
    weighed: tuple[Weighed, ...]
    """Mordants for this bath's own fibre, then assists."""
    timetable: tuple[Step, ...]
    cautions: tuple[Caution, ...]
    notes: tuple[str, ...]
    """Where the recipe lies outside what books and trade give, each a sentence."""

    @property
    def hours(self) -> float:
        """From weighing to dry yarn."""
        return max(step.ends_h for step in self.timetable)


@dataclass(frozen=True, slots=True, kw_only=True)
class DyePlan:
    """All that is to be dyed."""

    palette: Palette
    needs: tuple[Need, ...]
    """Lots that are short, in the order in which the designs name them."""
    cards: tuple[BathCard, ...]
    mordantings: tuple[Mordanting, ...]
    shopping: tuple[ShoppingItem, ...]
    without_bath: tuple[Need, ...]
    """Short, but no bath is known that gives them."""

    @property
    def baths(self) -> tuple[BathPlan, ...]:
        """The baths alone."""
        return tuple(card.plan for card in self.cards)

    def card(self, bath_id: str) -> BathCard:
        """Give the card of a bath. Raises ValueError where it is not in the plan."""
        found = next((card for card in self.cards if card.plan.bath.id == bath_id), None)
        if found is None:
            raise ValueError(f"bath {bath_id!r} is not in the plan")
        return found


def whole_plan(palette: Palette, needs: Sequence[Need]) -> DyePlan:
    """Plan all that is short: baths, mordantings, dyestuffs, pots, times, and what is to be got."""
    short = [need for need in needs if need.short_g > 0]
    plans = plan_baths(palette, {need.lot: need.short_g for need in short})
    shared = mordantings(plans, palette.pots, palette.dyeing)
    shelf = supplies(plans, palette.dyestuffs)
    dyed = frozenset[str]().union(*(plan.lots for plan in plans))
    return DyePlan(
        palette=palette,
        needs=tuple(short),
        cards=tuple(_card(palette, plan, shared, supply) for plan, supply in zip(plans, shelf, strict=True)),
        mordantings=shared,
        shopping=shopping_list(palette, plans, shared, shelf),
        without_bath=tuple(need for need in short if need.lot not in dyed),
    )


def _card(palette: Palette, plan: BathPlan, shared: Sequence[Mordanting], supply: Supply) -> BathCard:
    mine = tuple(each for each in shared if plan.bath.id in dict(each.baths))
    metal = next((each.metal for each in mine if each.metal), "")
    portions = (*plan.mordants, *plan.assists)
    return BathCard(
        plan=plan,
        strengths=strengths(palette, plan.bath, [load.load for load in plan.loads]),
        supply=supply,
        pot=pot_for(palette.pots, plan.water_l, metal=metal, least_l=plan.skein_l),
        mordantings=mine,
        assists=assists_of(plan),
        weighed=tuple(
            Weighed(
                name=each.name,
                grams=each.grams,
                spoons=in_spoons(each.name, each.grams),
                other=other_form(each.name, each.grams),
            )
            for each in portions
        ),
        timetable=timetable(plan, shared),
        cautions=cautions_for(each.name for each in portions),
        notes=notes_on(plan.bath),
    )
