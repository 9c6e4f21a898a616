"""Why two lots differ, in plain words: what the figures carry, how sure it is, and whom the records make suspect.

A strength is told where its 90 % interval leaves 1 by itself, a shift where it passes what the readings scatter by;
else the two are the same within the readings. A flat absorber that explains most of what strength leaves is told as
saddening, with the dye that lies under it. Causes are suspects of `suspects.SUSPECTS`: a record that differs the right
way raises one, records that agree lower it, and without records it stays open.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from chartmaker.dye.comparison import Comparison, Strength
from chartmaker.dye.recipe import RecipeRow, Recorded
from chartmaker.dye.suspects import SUSPECTS, Suspect
from chartmaker.shade.lab import lch_of_lab

LEAST_STEP = 0.05
"""A strength within this of 1 is not called weaker or stronger, however sure: common practice, no source."""
GREY_CHROMA = 6.0
"""Below this C*ab a hue is not told: common practice, no source."""
SADDENED_SHARE, SADDENED_GREY, SADDENED_TURN = 0.6, 0.05, 1.5
"""From which share of what is unexplained, and which K/S, a flat absorber counts as saddening, and how many times the
loss of chroma must exceed the turn of hue: common practice, no source."""
HUES = (("red", 25.0), ("orange", 58.0), ("yellow", 92.0), ("green", 160.0), ("blue", 270.0))
"""CIELAB hue angles that a direction is told towards; red, yellow, green and blue near the unique hues, from memory."""
NEAR_HUE = 15.0
"""A hue nearer than this is where the colour is already: towards it means towards the next."""
RAISED, OPEN, LOWERED = "your records speak for it", "your records do not tell", "your records speak against it"

_NAMING = {
    RAISED: "Suspected, since your records speak for it:",
    OPEN: "Possible, your records do not tell:",
    LOWERED: "Less likely, since your records speak against it:",
}


@dataclass(frozen=True, slots=True)
class Direction:
    """Which way the colour itself moved: one or two words, the larger share first."""

    words: tuple[str, ...]
    """Of `towards red`, …, `duller`, `brighter`, `lighter`, `darker`."""


@dataclass(frozen=True, slots=True)
class SuspectLine:
    """One suspect, and what the records make of it."""

    cause: str
    standing: str
    """`RAISED`, `OPEN` or `LOWERED`."""
    evidence: str
    """Where the records differ: "ph_start 6.8 against 9"; empty elsewhere."""
    source: str


@dataclass(frozen=True, slots=True)
class CauseReading:
    """The reading of a comparison: sentences, and the suspects, those that the records raise first."""

    strength: str
    """The sentence on strength; empty where nothing can be said."""
    shift: str
    """The sentence on the colour itself."""
    how_sure: str
    suspects: tuple[SuspectLine, ...]
    records: str
    """The sentence on what the records differ in; empty where they agree."""

    @property
    def text(self) -> str:
        """All of it, as one paragraph."""
        parts = (self.strength, self.shift, self.how_sure, self.suspected, self.records)
        return " ".join(part for part in parts if part)

    @property
    def suspected(self) -> str:
        """Tell the suspects by what the records make of them; empty where there are none."""
        told = []
        for standing in (RAISED, OPEN, LOWERED):
            causes = [
                f"{line.cause} ({line.evidence})" if line.evidence else line.cause
                for line in self.suspects
                if line.standing == standing
            ]
            if causes:
                told.append(f"{_NAMING[standing]} {', '.join(causes)}.")
        return " ".join(told)


def read_causes(comparison: Comparison) -> CauseReading:
    """Read a comparison; nothing is claimed that its figures do not carry."""
    records = _records(comparison.recipe_differences)
    strength = comparison.strength
    if strength is None:
        return CauseReading("", _without_strength(comparison), "", (), records)
    is_sad = is_saddened(strength)
    direction = direction_of(strength) if strength.has_shift else Direction(())
    two = _two_dyestuffs(comparison)
    suspects = tuple(_suspects(comparison, direction)) if direction.words and not two else ()
    return CauseReading(
        strength=_strength_sentence(comparison, strength, is_sad=is_sad),
        shift=_shift_sentence(strength, direction, is_sad=is_sad),
        how_sure=_how_sure(comparison, strength) + two,
        suspects=suspects,
        records=records,
    )


def _two_dyestuffs(comparison: Comparison) -> str:
    """Warn where the records name two dyestuffs; empty elsewhere."""
    row = next((row for row in comparison.recipe_differences if row.key == "dyestuff"), None)
    if row is None or row.reference is None or row.sample is None:
        return ""
    return " They are different dyestuffs, so that strength and shift mean little and nothing is suspected."


def is_saddened(strength: Strength) -> bool:
    """Tell whether the colour moved, duller, as a flat absorber would move it."""
    return (
        strength.has_shift
        and strength.shift_lch[1] < 0
        and strength.grey > SADDENED_GREY
        and strength.grey_share >= SADDENED_SHARE
        and abs(strength.shift_lch[1]) > SADDENED_TURN * abs(strength.shift_delta_h)
    )


def direction_of(strength: Strength) -> Direction:
    """Tell a shift by its largest part, and by a second that is at least half as large."""
    lightness, chroma, _ = strength.shift_lch
    parts = [
        (abs(chroma), "brighter" if chroma > 0 else "duller"),
        (abs(lightness), "lighter" if lightness > 0 else "darker"),
    ]
    best = lch_of_lab(strength.best_lab)
    if best[1] >= GREY_CHROMA and best[1] + chroma >= GREY_CHROMA:
        parts.append((abs(strength.shift_delta_h), f"towards {_next_hue(float(best[2]), strength.shift_lch[2])}"))
    parts.sort(reverse=True)
    return Direction(tuple(word for size, word in parts if size >= parts[0][0] / 2)[:2])


def _next_hue(hue: float, turn: float) -> str:
    """Give the hue that lies ahead from `hue` when it turns that way, at least `NEAR_HUE` on."""
    ahead = [((angle - hue if turn > 0 else hue - angle) % 360, name) for name, angle in HUES]
    return min(pair for pair in ahead if pair[0] >= NEAR_HUE)[1]


def _step(low: float, factor: float, high: float) -> int:
    """Tell whether a strength is surely less (-1) or more (1) than the reference's, or neither (0)."""
    if high < 1 and factor < 1 - LEAST_STEP:
        return -1
    return 1 if low > 1 and factor > 1 + LEAST_STEP else 0


def _strength_sentence(comparison: Comparison, strength: Strength, *, is_sad: bool) -> str:
    if is_sad:
        return _strength_under_grey(strength)
    step = _step(strength.low, strength.factor, strength.high)
    span = f"{strength.factor:.2f} of the reference's ({strength.low:.2f} to {strength.high:.2f})"
    if not step:
        return f"The dye is as strong within the readings: {span}."
    first, second = (lot.source for lot in (comparison.reference, comparison.sample))
    if first and second and first[0] == second[0] and (second[1] - first[1]) * -step > 0:
        how = "more" if step < 0 else "less"
        return f"The bath was {how} exhausted, load {second[1]} against {first[1]}: the dye is {span}."
    word = "weaker" if step < 0 else "stronger"
    if first and second and (second[1] - first[1]) * -step > 0:
        return f"The dye is {word}: {span}, as of load {second[1]} against {first[1]}."
    return f"The bath was {word}: the dye is {span}.{_by_ratio(comparison, strength)}"


def _strength_under_grey(strength: Strength) -> str:
    """Tell the dye under a saddening: the factor that matches best would count the grey as dye."""
    own = strength.own_dye
    doubt = max(0.15, (strength.high - strength.low) / (2 * strength.factor))
    step = _step(own * (1 - doubt), own, own * (1 + doubt))
    word = {-1: "weaker as well", 0: "about as strong", 1: "stronger as well"}[step]
    return f"Under the dullness the dye is {word}: about {own:.2f} of the reference's."


def _by_ratio(comparison: Comparison, strength: Strength) -> str:
    row = next((row for row in comparison.recipe_differences if row.key == "ratio"), None)
    if row is None or not isinstance(row.reference, (int, float)) or not isinstance(row.sample, (int, float)):
        return ""
    if not row.reference or row.sample == row.reference:
        return ""
    expected = row.sample / row.reference
    if (expected - 1) * (strength.factor - 1) <= 0:
        return ""
    fits = strength.low * 0.85 <= expected <= strength.high * 1.15
    told = f"{expected:.2g} times the dyestuff"
    return f" The ratio alone, {told}, would explain that." if fits else f" The ratio, {told}, explains it in part."


def _shift_sentence(strength: Strength, direction: Direction, *, is_sad: bool) -> str:
    if not strength.has_shift:
        if _step(strength.low, strength.factor, strength.high):
            return (
                f"The colour itself is the same within the readings (what remains is {strength.shift_ciede2000:.1f})."
            )
        return "The two are the same within the readings."
    words = " and ".join(direction.words)
    text = f"The colour itself moved {words}, by CIEDE2000 {strength.shift_ciede2000:.1f} beside strength"
    return text + (", much as a broad grey absorber does: it is saddened." if is_sad else ".")


def _how_sure(comparison: Comparison, strength: Strength) -> str:
    if strength.is_at_end:
        return "No strength of the reference's dye comes near: they may be different dyestuffs."
    readings = [shade.readings for shade in (comparison.reference_shade, comparison.sample_shade) if shade]
    if min(readings, default=1) == 1:
        return "How sure: little, since a lot rests on one reading; measure it again, turned and re-laid."
    if not strength.has_shift:
        return f"How sure: a shift above {strength.shift_limit:.1f} would show."
    times = strength.shift_ciede2000 / strength.shift_limit
    sure = "very" if times >= 3 else ("fairly" if times >= 1.5 else "barely")
    return f"How sure: {sure}; the readings alone would give {strength.shift_limit:.1f} at most."


def _without_strength(comparison: Comparison) -> str:
    why = (
        f"Strength and shift cannot be told apart: {comparison.why_no_strength}." if comparison.why_no_strength else ""
    )
    if comparison.ciede2000 is None or comparison.limit is None or comparison.difference_lch is None:
        return f"One of the two has no shade to compare. {why}".strip()
    if comparison.ciede2000 <= comparison.limit:
        return f"The two are the same within the readings. {why}".strip()
    lightness, chroma, hue = comparison.difference_lch
    return (
        f"They differ by CIEDE2000 {comparison.ciede2000:.1f} "
        f"(ΔL* {lightness:+.1f}, ΔC* {chroma:+.1f}, ΔH* {hue:+.1f}). {why}"
    ).strip()


def _suspects(comparison: Comparison, direction: Direction) -> Iterator[SuspectLine]:
    """Give the suspects that fit, the raised first, then the open; each cause once."""
    dyestuff = _dyestuff(comparison)
    fitting = [one for one in SUSPECTS if set(one.directions) & set(direction.words) and _holds_for(one, dyestuff)]
    lines: dict[str, SuspectLine] = {}
    for one in fitting:
        lines.setdefault(one.cause, _judged(one, comparison))
    order = (RAISED, OPEN, LOWERED)
    yield from sorted(lines.values(), key=lambda line: order.index(line.standing))


def _dyestuff(comparison: Comparison) -> str:
    row = next((row for row in comparison.recipe if row.key == "dyestuff"), None)
    return f"{row.reference or ''} {row.sample or ''}".casefold() if row else ""


def _holds_for(suspect: Suspect, dyestuff: str) -> bool:
    return not suspect.dyestuffs or any(word in dyestuff for word in suspect.dyestuffs)


def _judged(suspect: Suspect, comparison: Comparison) -> SuspectLine:
    bearing = [row for row in comparison.recipe if _bears_on(suspect, row.key)]
    speaking = [row for row in bearing if row.is_different and _right_way(suspect, row)]
    if speaking:
        evidence = ", ".join(_told(row) for row in speaking)
        return SuspectLine(suspect.cause, RAISED, evidence, suspect.source)
    is_recorded = any(row.reference is not None and row.sample is not None for row in bearing)
    return SuspectLine(suspect.cause, LOWERED if is_recorded else OPEN, "", suspect.source)


def _bears_on(suspect: Suspect, key: str) -> bool:
    if any(key.startswith(start) for start in suspect.keys):
        return True
    return ": " in key and any(word in key.casefold() for word in suspect.additions)


def _right_way(suspect: Suspect, row: RecipeRow) -> bool:
    if suspect.sign == 0:
        return True
    first, second = row.reference, row.sample
    if isinstance(first, str) or isinstance(second, str):
        return False
    if ": " not in row.key and (first is None or second is None):
        return False  # not recorded is not the same as none, but for what is added to a bath
    return ((second or 0) - (first or 0)) * suspect.sign > 0


def _records(differences: tuple[RecipeRow, ...]) -> str:
    told = [_told(row) for row in differences if row.key not in ("bath", "dyed_on")]
    return f"Your records differ in: {', '.join(told)}." if told else "Your records of the two recipes agree."


def _told(row: RecipeRow) -> str:
    is_added = ": " in row.key
    return f"{row.words} {_value(row.reference, is_added=is_added)} against {_value(row.sample, is_added=is_added)}"


def _value(value: Recorded, *, is_added: bool) -> str:
    """Tell what a record holds; nothing recorded is none of what would have been added, and not known of the rest."""
    if value is None:
        return "none" if is_added else "not recorded"
    return str(value)
