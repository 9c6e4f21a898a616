"""The days of one bath: soak, mordant, extract, dye, rest, rinse, dry, with hours and where they are from."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from chartmaker.dye.cautions import cautions_at, cautions_of
from chartmaker.dye.fibre import tenths
from chartmaker.dye.mordanting import Mordanting
from chartmaker.dye.plan import BathPlan

COMMON = "common practice, no source"
MAIRET = "Mairet, Vegetable Dyes"
RECIPE = "the recipe"
KINDS = ("weigh", "soak", "mordant", "extract", "dye", "sadden", "rest", "rinse", "dry")
"""In the order in which they begin."""

WEIGH_H, SOAK_H, RINSE_H, DRY_H = 0.5, 12.0, 0.5, 24.0
HEAT_UP_H, MORDANT_H, COOL_H = 1.0, 1.0, 12.0
"""Raise slowly, an hour in the heat, then cool over night: Mairet's alum mordant."""
STEEP_H, SIMMER_H = 12.0, 1.0
"""Dry dyestuff steeps over night before it is simmered; fresh goes straight to the heat."""
DYE_MINUTES, REST_H = 60.0, 8.0
SADDEN_H = 0.3
"""A quarter of an hour to twenty minutes with copperas in the dye liquor: Mairet."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """One thing to do, or to wait for."""

    kind: str
    """One of `KINDS`."""
    text: str
    starts_h: float
    """Hours from the beginning."""
    hours: float
    source: str
    cautions: tuple[str, ...] = ()
    """In a few words, where the hand meets the hazard."""

    @property
    def ends_h(self) -> float:
        """Hours from the beginning."""
        return self.starts_h + self.hours


def timetable(plan: BathPlan, mordantings: Sequence[Mordanting]) -> tuple[Step, ...]:
    """Lay out the steps of one bath one after another, the extraction beside the mordanting.

    Heat-up times, soaking and drying differ with stove, water and weather; they are there to plan the days by.
    """
    mine = [each for each in mordantings if plan.bath.id in dict(each.baths)]
    before, after = [each for each in mine if not each.metal], [each for each in mine if each.metal]
    steps = [
        _plain("weigh", 0.0, WEIGH_H, f"Wind, weigh {tenths(plan.fibre_g)} g dry, label every skein"),
        _plain("soak", WEIGH_H, SOAK_H, "Wet out until no air is left in the fibre"),
    ]
    wet_h = steps[-1].ends_h
    for each in before:
        for number, turn in enumerate(each.turns, start=1):
            steps.append(_mordant(each, number, turn.fibre_g, steps[-1].ends_h))
    if not plan.is_going_on:
        steps.append(_extract(plan, wet_h))
    steps.sort(key=lambda step: step.starts_h)
    at = max(step.ends_h for step in steps)
    for load in plan.loads:
        for step in _through(plan, load.load, after, at):
            steps.append(step)
            at = step.ends_h
    spent = tuple(each.short for each in cautions_at("spent liquor"))
    rinse = _plain("rinse", at, RINSE_H, "Rinse in water as warm as the fibre until it runs clear")
    dry = _plain("dry", rinse.ends_h, DRY_H, "Dry in the shade; weigh what came out")
    return (*steps, replace(rinse, cautions=spent), dry)


def _plain(kind: str, starts_h: float, hours: float, text: str) -> Step:
    return Step(kind=kind, text=text, starts_h=starts_h, hours=hours, source=COMMON)


def _mordant(each: Mordanting, number: int, fibre_g: float, at: float) -> Step:
    names = " and ".join(mordant.name for mordant in each.mordants)
    fibre = tenths(fibre_g)
    text = (
        f"Mordant {fibre} g with {names}: raise slowly, an hour below a boil, cool over night"
        if len(each.turns) == 1
        else f"Mordant {fibre} g with {names}, turn {number}: raise slowly, an hour below a boil, cool over night"
    )
    known = (*cautions_at("powder"), *(one for mordant in each.mordants for one in cautions_of(mordant.name)))
    return Step(
        kind="mordant",
        text=text,
        starts_h=at,
        hours=HEAT_UP_H + MORDANT_H + COOL_H,
        source=MAIRET,
        cautions=tuple(dict.fromkeys(one.short for one in (*known, *cautions_at("hot pot")))),
    )


def _extract(plan: BathPlan, at: float) -> Step:
    bath = plan.bath
    is_dry = bath.state == "dry"
    grams = tenths(plan.dyestuff_g)
    way = "steep over night, simmer an hour, strain" if is_dry else "heat for an hour, strain"
    return Step(
        kind="extract",
        text=f"Dyestuff, {grams} g of {bath.state} {bath.dyestuff}: {way}, unless the recipe says else",
        starts_h=at,
        hours=SIMMER_H + (STEEP_H if is_dry else 0.0),
        source=COMMON,
        cautions=tuple(each.short for each in cautions_at("hot pot")),
    )


def _through(plan: BathPlan, load: int, metals: Sequence[Mordanting], at: float) -> Iterator[Step]:
    """Take one load through the liquor."""
    bath = plan.bath
    minutes = bath.minutes if bath.minutes is not None else DYE_MINUTES
    heat = f" at no more than {bath.hottest_c:g} °C" if bath.hottest_c is not None else ", below a boil"
    assists = [one.short for each in plan.assists for one in cautions_of(each.name)] if load == 1 else []
    dye = Step(
        kind="dye",
        text=f"Load {load}: heat slowly, {minutes:g} minutes{heat}",
        starts_h=at,
        hours=HEAT_UP_H + minutes / 60,
        source=RECIPE if bath.minutes is not None else COMMON,
        cautions=tuple(dict.fromkeys((*assists, *(each.short for each in cautions_at("hot pot"))))),
    )
    yield dye
    at = dye.ends_h
    for each in metals:
        name = each.mordants[0].name
        yield Step(
            kind="sadden",
            text=f"Load {load}: {name}, in a pot kept for {each.metal}, 15 to 20 minutes",
            starts_h=at,
            hours=SADDEN_H,
            source=MAIRET,
            cautions=tuple(one.short for one in cautions_of(name)),
        )
        at += SADDEN_H
    text = f"Load {load}: let it cool in the liquor, then lift it out and let it drip back"
    yield Step(kind="rest", text=text, starts_h=at, hours=REST_H, source=COMMON)
