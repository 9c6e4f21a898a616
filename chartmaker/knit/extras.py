"""Yarn that is in no stitch: cast-on, sewn hem, finish, tails, strands carried up, pompoms and tassels."""

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from chartmaker.knit.interval import Interval
from chartmaker.knit.layout import Fabric
from chartmaker.model.bounds import MOST_LETTERS
from chartmaker.model.design import Design
from chartmaker.model.hat import Trim

LONG_TAIL_PER_WIDTH = 3.3
"""Tail of a long-tail cast-on: 3 × the finished width and a tenth more (published tip: 12 in takes 39.6 in)."""
KNITTED_LOOPS = 2.0
"""Loop lengths that a stitch of a knitted cast-on takes: common practice, no source."""
CAST_ON_ERROR_PERCENT = 15.0
"""Hands differ: common practice, no source."""
DRAWN_THROUGH_TIMES = 2.0
"""Times that the yarn is drawn round through the last stitches: common practice, no source."""
POMPOM_M, POMPOM_CM = 9.144, 7.62
"""60 wraps of a 3 in card, for a pompom 3 in across (American Thread Co. booklet; wraps × 2 × 3 in, derived)."""
TASSEL_WRAPS = 20
"""Wraps of a card as long as the tassel (the same booklet: 3.05 m for 3 in)."""
HEM_PER_WIDTH = 3.0
"""Yarn that sews a hem down, to its width, whip stitched: common practice, no source."""
TRIM_ERROR_PERCENT = 25.0
"""Fullness is a matter of taste: common practice, no source."""


@dataclass(frozen=True, slots=True)
class Extra:
    """One use of yarn beyond the stitches."""

    letter: str
    what: str
    """As told on the yarn sheet: "long-tail cast-on", "6 tails", "carried up 7 rounds"."""
    cm: Interval


def extras(design: Design, fabric: Fabric, *, loop_cm: Interval) -> tuple[Extra, ...]:
    """List everything beyond stitches and floats, letter by letter."""
    edges = (_cast_on(design, fabric, loop_cm), *_hem(design, fabric), _finish(design, fabric))
    trims = tuple(_trim(trim) for trim in design.hat.trims)
    return (*edges, *_strands(design, fabric), *trims)


def strand_counts(uses: NDArray[np.bool_], *, carry_up_rounds: int) -> tuple[int, int]:
    """Count, for one letter, the strands that are begun and the idle rounds over which one is carried up.

    Args:
        uses: whether the letter is worked at each step: the cast-on, each round, the finish; shape (rounds + 2,).
        carry_up_rounds: a letter idle for more rounds than this is cut and joined anew.
    """
    steps = np.flatnonzero(uses)
    if not len(steps):
        return 0, 0
    idle = np.diff(steps) - 1
    carried = idle <= carry_up_rounds
    return 1 + int(np.count_nonzero(~carried)), int(idle[carried].sum())


def _strands(design: Design, fabric: Fabric) -> list[Extra]:
    allowances, height = design.allowances, design.gauge.round_height_cm
    uses = _uses(design, fabric)
    found = []
    for code in np.flatnonzero(uses.any(axis=1)).tolist():
        letter = chr(ord("A") + code)
        strands, carried = strand_counts(uses[code], carry_up_rounds=allowances.carry_up_rounds)
        found.append(Extra(letter, f"{2 * strands} tails", Interval.exactly(2 * strands * allowances.tail_cm)))
        if carried:
            found.append(Extra(letter, f"carried up {carried} rounds", Interval.exactly(carried * height)))
    return found


def _uses(design: Design, fabric: Fabric) -> NDArray[np.bool_]:
    """Tell which letter is worked at which step, cast-on first and finish last: shape (26, rounds + 2)."""
    uses = np.zeros((MOST_LETTERS, fabric.rounds + 2), dtype=np.bool_)
    steps = ((design.hat.cast_on.letter, 0), (design.hat.finish.letter, -1))
    for letter, step in steps:
        uses[ord(letter) - ord("A"), step] = True
    for step, (_, line) in enumerate(design.rounds(), start=1):
        for letter in line.letters_in_use:
            uses[ord(letter) - ord("A"), step] = True
    return uses


def _cast_on(design: Design, fabric: Fabric, loop_cm: Interval) -> Extra:
    edge, stitches = design.hat.cast_on, fabric.counts[0]
    loops = loop_cm.likely * stitches
    if edge.method == "long-tail":
        cm = LONG_TAIL_PER_WIDTH * stitches * design.gauge.stitch_width_cm + loops
    else:
        cm = loops * (KNITTED_LOOPS if edge.method == "knitted" else 1.0)
    return Extra(edge.letter, f"{edge.method} cast-on", Interval.about(cm, percent=CAST_ON_ERROR_PERCENT))


def _hem(design: Design, fabric: Fabric) -> list[Extra]:
    """Give the yarn that sews a folded hem to the round behind which it lies."""
    fold, edge = design.hat.fold, design.hat.cast_on
    if fold is None or fold.way != "in":
        return []
    around = fabric.counts[0] * design.gauge.stitch_width_cm
    return [Extra(edge.letter, "hem sewn down", Interval.about(HEM_PER_WIDTH * around, percent=CAST_ON_ERROR_PERCENT))]


def _finish(design: Design, fabric: Fabric) -> Extra:
    around = fabric.counts[-1] * design.gauge.stitch_width_cm
    return Extra(design.hat.finish.letter, "drawn through the top", Interval.exactly(DRAWN_THROUGH_TIMES * around))


def _trim(trim: Trim) -> Extra:
    """Scale the published pompom by its volume, the published tassel by its length (scaling: derived)."""
    if trim.kind == "pompom":
        cm = 100 * POMPOM_M * math.pow(trim.size_cm / POMPOM_CM, 3)
    else:
        cm = TASSEL_WRAPS * 2 * trim.size_cm
    return Extra(trim.letter, trim.kind, Interval.about(cm, percent=TRIM_ERROR_PERCENT))
