"""The plan of the dye pot as JSON: `chartmaker-baths`, version 1; keys may be added, none may change its meaning.

Weights in g, liquor in l, hours from the beginning of a bath.
"""

from typing import Any

from chartmaker.dye.chains import LoadStrength
from chartmaker.dye.dye_plan import BathCard, DyePlan, Need, Weighed
from chartmaker.dye.mordanting import Mordanting
from chartmaker.dye.plan import Portion
from chartmaker.dye.pots import PotUse
from chartmaker.dye.shopping import ShoppingItem
from chartmaker.dye.supply import Supply
from chartmaker.dye.timetable import Step
from chartmaker.report.as_json import bath_as_json

Json = dict[str, Any]


def baths_as_json(plan: DyePlan) -> Json:
    """Give the plan as plain dicts and lists."""
    return {
        "format": "chartmaker-baths",
        "version": 1,
        "needs": [_need(need) for need in plan.needs],
        "baths": [_card(card) for card in plan.cards],
        "mordantings": [_mordanting(each) for each in plan.mordantings],
        "shopping": [_item(item) for item in plan.shopping],
        "without_bath": [need.lot for need in plan.without_bath],
    }


def _need(need: Need) -> Json:
    return {
        "lot": need.lot,
        "planned_grams": _figure(need.planned_g),
        "on_hand_g": _figure(need.on_hand_g),
        "short_g": _figure(need.short_g),
        "designs": list(need.designs),
    }


def _card(card: BathCard) -> Json:
    return bath_as_json(card.plan) | {
        "joined": [
            {
                "lot": each.lot,
                "bath": each.bath,
                "load_there": each.load_there,
                "load": each.load,
                "times_as_strong": _figure(each.times_as_strong),
            }
            for each in card.plan.joined
        ],
        "strengths": [_strength(each) for each in card.strengths],
        "supply": _supply(card.supply),
        "pot": _pot(card.pot),
        "ph_aim": card.plan.bath.ph_start,
        "assist_advice": [each.text for each in card.assists],
        "weighed": [_weighed(each) for each in card.weighed],
        "timetable": [_step(step) for step in card.timetable],
        "hours": _figure(card.hours),
        "cautions": [each.text for each in card.cautions],
        "notes": list(card.notes),
    }


def _strength(each: LoadStrength) -> Json:
    return {
        "load": each.load,
        "low": _figure(each.low),
        "likely": _figure(each.likely),
        "high": _figure(each.high),
        "is_assumed": each.is_assumed,
    }


def _supply(supply: Supply) -> Json:
    return {
        "needed_g": _figure(supply.needed_g),
        "at_hand_g": _figure(supply.at_hand_g),
        "serves_g": _figure(supply.serves_g),
        "missing_g": _figure(supply.missing_g),
        "is_listed": supply.is_listed,
        "uncounted_g": [{"state": each.state, "on_hand_g": _figure(each.on_hand_g)} for each in supply.uncounted],
        "identified_by": list(supply.identified_by),
        "text": supply.text,
    }


def _pot(use: PotUse) -> Json:
    return {
        "name": use.pot.name if use.pot else None,
        "litres": _figure(use.litres),
        "turns": use.turns,
        "metal": use.metal or None,
        "text": use.text,
    }


def _weighed(each: Weighed) -> Json:
    return {
        "name": each.name,
        "grams": _figure(each.grams),
        "teaspoons": each.spoons.spoons if each.spoons else None,
        "teaspoons_source": each.spoons.source if each.spoons else None,
        "taken_as": each.other.taken_as if each.other else None,
        "other_form": {"name": each.other.other, "grams": _figure(each.other.grams)} if each.other else None,
    }


def _step(step: Step) -> Json:
    return {
        "kind": step.kind,
        "text": step.text,
        "starts_h": _figure(step.starts_h),
        "hours": _figure(step.hours),
        "source": step.source,
        "cautions": list(step.cautions),
    }


def _mordanting(each: Mordanting) -> Json:
    return {
        "mordants": [_portion(portion) for portion in each.portions],
        "baths": [{"bath": bath, "fibre_g": _figure(fibre)} for bath, fibre in each.baths],
        "fibre_g": _figure(each.fibre_g),
        "water_l": _figure(each.water_l),
        "metal": each.metal or None,
        "pot": _pot(each.pot),
        "turns": [
            {
                "fibre_g": _figure(turn.fibre_g),
                "water_l": _figure(turn.water_l),
                "mordants": [_portion(portion) for portion in turn.mordants],
            }
            for turn in each.turns
        ],
    }


def _item(item: ShoppingItem) -> Json:
    return {
        "kind": item.kind,
        "name": item.name,
        "needed_g": _figure(item.needed_g),
        "at_hand_g": None if item.at_hand_g is None else _figure(item.at_hand_g),
        "missing_g": _figure(item.missing_g),
        "skeins": item.skeins,
        "cautions": list(item.cautions),
    }


def _portion(item: Portion) -> Json:
    return {"name": item.name, "grams": _figure(item.grams)}


def _figure(value: float) -> float:
    """Drop the digits that floating point adds beyond the sixth decimal."""
    return round(float(value), 6)
