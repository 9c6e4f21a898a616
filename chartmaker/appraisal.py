"""The one place where everything is computed that screens, sheets and the command line show."""

from collections.abc import Sequence
from dataclasses import dataclass, fields

import numpy as np

from chartmaker.checks.all_checks import run_checks
from chartmaker.checks.facts import Facts, LetterAppraisal, PairAppraisal, RoundAppraisal
from chartmaker.checks.finding import Finding
from chartmaker.dye.plan import plan_baths
from chartmaker.dye.predicted import shade_in
from chartmaker.knit.boundary import measure_boundary
from chartmaker.knit.depth import depth_of
from chartmaker.knit.floats import Floats, find_floats, long_floats
from chartmaker.knit.layout import Fabric, lay_out
from chartmaker.knit.loop import loop_length
from chartmaker.knit.profile import profile
from chartmaker.knit.yarn import Requirement, requirements
from chartmaker.model.design import Design
from chartmaker.model.palette import Palette
from chartmaker.shade.elsewhere import EyesContrast, LightContrast, elsewhere
from chartmaker.shade.lot_shade import weakest
from chartmaker.shade.spread import contrast_table, grade

__all__ = ["Appraisal", "LetterAppraisal", "PairAppraisal", "RoundAppraisal", "appraise"]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Appraisal(Facts):
    """Everything computed from one design, in one value: the facts, and what the checks noticed."""

    findings: tuple[Finding, ...]
    """The worst first."""


@dataclass(frozen=True, slots=True)
class Contrast:
    """How two letters differ in value and in all."""

    value_difference: float
    value_difference_low: float
    ciede2000: float
    grade: str
    in_lights: tuple[LightContrast, ...]
    to_eyes: tuple[EyesContrast, ...]
    rests_on: str
    """The weaker of what the two shades rest on."""


Contrasts = dict[tuple[str, str], Contrast]
"""By two letters, both ways round; only letters that have a shade."""


def appraise(design: Design, palette: Palette | None = None) -> Appraisal:
    """Compute everything of a design in its colourway in use.

    Args:
        design: never changed.
        palette: further lots that a remedy may name, usually the palette that the design's lots were copied from.
    """
    fabric = lay_out(design)
    floats = find_floats(fabric)
    gauge, limits = design.gauge, design.limits
    loop = loop_length(design)
    needs = requirements(design, fabric, floats, loop)
    at_hand = design.palette.followed_by(palette)
    letters = tuple(_letter(design, need, at_hand) for need in needs)
    contrasts = _contrasts(letters, design)
    facts = Facts(
        design=design,
        palette=at_hand,
        fabric=fabric,
        profile=profile(fabric, gauge),
        depth=depth_of(design),
        floats=floats,
        long_floats=tuple(long_floats(fabric, floats, gauge=gauge, limit_cm=limits.float_cm)),
        loop=loop,
        rounds=_rounds(design, fabric, floats, contrasts, _bases(letters)),
        pairs=_pairs(design, fabric, contrasts),
        letters=letters,
        baths=plan_baths(design.palette, _short(needs)),
    )
    return Appraisal(**{field.name: getattr(facts, field.name) for field in fields(Facts)}, findings=run_checks(facts))


def _letter(design: Design, need: Requirement, at_hand: Palette) -> LetterAppraisal:
    lot = design.palette.lot(need.lot) if need.lot else None
    shade = shade_in(at_hand, lot, design.viewing) if lot else None
    return LetterAppraisal(letter=need.letter, lot=lot, shade=shade, requirement=need)


def _contrasts(letters: Sequence[LetterAppraisal], design: Design) -> Contrasts:
    shaded = [(item.letter, item.lot, item.shade) for item in letters if item.lot and item.shade]
    shades = [shade for _, _, shade in shaded]
    delta, low, ciede2000 = contrast_table(shades)
    away = elsewhere([lot for _, lot, _ in shaded], shades)
    found: Contrasts = {}
    for row, (first, _, _) in enumerate(shaded):
        for column, (second, _, _) in enumerate(shaded[row + 1 :], start=row + 1):
            bound = float(low[row, column])
            found[first, second] = found[second, first] = Contrast(
                float(delta[row, column]),
                bound,
                float(ciede2000[row, column]),
                grade(bound, design.limits),
                away.in_lights(row, column, design.limits),
                away.to_eyes(row, column),
                weakest(shades[row].rests_on, shades[column].rests_on),
            )
    return found


def _pairs(design: Design, fabric: Fabric, contrasts: Contrasts) -> tuple[PairAppraisal, ...]:
    boundary = measure_boundary(fabric, design.gauge)
    found = []
    for first, second in np.argwhere(np.triu(boundary.all_cm, k=1)).tolist():
        letters = chr(ord("A") + first), chr(ord("A") + second)
        contrast = contrasts.get(letters)
        found.append(
            PairAppraisal(
                letters="".join(letters),
                boundary_cm=float(boundary.all_cm[first, second]),
                drawn_cm=float(boundary.drawn_cm[first, second]),
                value_difference=contrast.value_difference if contrast else None,
                value_difference_low=contrast.value_difference_low if contrast else None,
                ciede2000=contrast.ciede2000 if contrast else None,
                grade=contrast.grade if contrast else "",
                in_lights=contrast.in_lights if contrast else (),
                to_eyes=contrast.to_eyes if contrast else (),
                rests_on=contrast.rests_on if contrast else "nothing",
            )
        )
    return tuple(found)


def _bases(letters: Sequence[LetterAppraisal]) -> dict[str, str]:
    """Give what the shade of each letter rests on."""
    return {item.letter: item.shade.rests_on if item.shade else "nothing" for item in letters}


def _rounds(
    design: Design, fabric: Fabric, floats: Floats, contrasts: Contrasts, bases: dict[str, str]
) -> tuple[RoundAppraisal, ...]:
    longest = floats.longest().tolist()
    width = design.gauge.stitch_width_cm
    found: list[RoundAppraisal] = []
    judged: dict[str, tuple[float | None, float | None, str, str]] = {}
    for band_index, band in enumerate(design.bands):
        for index_in_band, line in enumerate(band.rounds):
            index = len(found)
            letters = line.letters_in_use
            if letters not in judged:
                basis = weakest(*(bases[letter] for letter in letters))
                judged[letters] = (*_judge(letters, contrasts), basis)
            difference, low, word, basis = judged[letters]
            found.append(
                RoundAppraisal(
                    number=index + 1,
                    band=band_index,
                    band_name=band.name,
                    index_in_band=index_in_band,
                    stitches=fabric.counts[index],
                    letters=letters,
                    value_difference=difference,
                    value_difference_low=low,
                    grade=word,
                    rests_on=basis,
                    longest_float_stitches=longest[index],
                    longest_float_cm=longest[index] * width,
                    meets=fabric.meets[index],
                )
            )
    return tuple(found)


def _judge(letters: str, contrasts: Contrasts) -> tuple[float | None, float | None, str]:
    """Give difference, lower bound and grade of the worst pair among a round's letters."""
    if len(letters) == 1:
        return 0.0, 0.0, "plain"
    pairs = [(first, second) for first in letters for second in letters if first < second]
    if any(pair not in contrasts for pair in pairs):
        return None, None, ""
    worst = min((contrasts[pair] for pair in pairs), key=lambda contrast: contrast.value_difference_low)
    return worst.value_difference, worst.value_difference_low, worst.grade


def _short(needs: Sequence[Requirement]) -> dict[str, float]:
    """Sum what is short by lot: two letters may be one."""
    short: dict[str, float] = {}
    for need in needs:
        if need.lot:
            short[need.lot] = short.get(need.lot, 0.0) + need.short_g
    return short
