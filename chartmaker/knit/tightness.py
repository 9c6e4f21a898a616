"""How tight each round sits on the head, and where the fabric changes faster than it can lie flat; told in words too.

The head is taken to keep its girth for `TUBE_SHARE` of it up from the worn edge, where a hat holds on. Rounds there are
judged by their girth against the head's; those above hang free, and are judged by their shaping alone.
"""

import math
from dataclasses import dataclass
from itertools import groupby
from typing import Literal

from chartmaker.knit.fit import TIGHTEST_CM
from chartmaker.knit.layout import Fabric
from chartmaker.knit.profile import Profile
from chartmaker.model.design import Design
from chartmaker.model.units import METRIC, Quantity

Grade = Literal["easy", "snug", "tight", "too tight", "free", "gathers", "puckers"]
GRADES: tuple[Grade, ...] = ("easy", "snug", "tight", "too tight", "free", "gathers", "puckers")

TUBE_SHARE = 0.11
"""How far up the head keeps its girth, as a part of it, some 6 cm: common practice, no source."""
TIGHT_CM = 7.0
"""How much smaller than the head is called tight: common practice, no source. Too tight is past `fit.TIGHTEST_CM`."""


@dataclass(frozen=True, slots=True)
class RoundTightness:
    """One round of the hat."""

    grade: Grade
    """On the head easy, snug, tight or too tight, above it free; where the shaping is too fast, gathers or puckers."""
    stretch_cm: float | None
    """How much smaller than the head it is, negative where it is larger; None where it does not lie on the head."""
    run_per_height: float
    """Change of radius against the height of the round: past 1 the fabric cannot lie flat; negative goes inwards."""


def tightness(design: Design, fabric: Fabric, profile: Profile) -> tuple[RoundTightness, ...]:
    """Judge every round, from the cast-on edge up; what a fold doubles counts as worn where it lies."""
    height, head = design.gauge.round_height_cm, design.hat.head_cm
    folded = min(design.hat.fold.rounds, fabric.rounds - 1) if design.hat.fold else 0
    on_head = math.ceil(TUBE_SHARE * head / height - 1e-9)
    found = []
    for index, (count, run, puckers) in enumerate(zip(fabric.counts, profile.run_cm, profile.puckers, strict=True)):
        above_edge = index - folded if index >= folded else folded - 1 - index
        stretch = head - count * design.gauge.stitch_width_cm if above_edge < on_head else None
        grade = ("gathers" if run > 0 else "puckers") if puckers else _grade(stretch)
        found.append(RoundTightness(grade, stretch, run / height))
    return tuple(found)


def tightness_words(judged: tuple[RoundTightness, ...], length: Quantity = METRIC.length) -> tuple[str, ...]:
    """Tell it in a sentence for each run of rounds that are alike; rounds above the head that lie well go unsaid."""
    sentences = []
    for grade, group in groupby(enumerate(judged), key=lambda item: item[1].grade):
        items = list(group)
        if grade != "free":
            sentences.append(_sentence(grade, items[0][0], [one for _, one in items], length))
    return tuple(sentences)


def _grade(stretch_cm: float | None) -> Grade:
    if stretch_cm is None:
        return "free"
    if stretch_cm <= 0:
        return "easy"
    if stretch_cm <= TIGHT_CM:
        return "snug"
    return "tight" if stretch_cm <= TIGHTEST_CM + 1e-9 else "too tight"


def _sentence(grade: Grade, first: int, rounds: list[RoundTightness], length: Quantity) -> str:
    span = f"round {first + 1}" if len(rounds) == 1 else f"rounds {first + 1}–{first + len(rounds)}"
    if grade in ("gathers", "puckers"):
        fastest = max(abs(one.run_per_height) for one in rounds)
        verb = "widens" if grade == "gathers" else "draws in"
        return f"The fabric {verb} {fastest:.1f} times as fast as it can lie flat in {span}, and {grade}."
    stretches = [one.stretch_cm for one in rounds if one.stretch_cm is not None]
    if grade == "easy":
        return f"It is {_amount([-cm for cm in stretches], length)} larger than the head in {span}, which is easy."
    return f"It is {_amount(stretches, length)} smaller than the head in {span}, which is {grade}."


def _amount(centimetres: list[float], length: Quantity) -> str:
    low, high = length.told(min(centimetres)), length.told(max(centimetres))
    return low if low == high else f"{low.removesuffix(length.unit)} to {high}"
