"""The hat in words: one instruction a round in the trade's abbreviations, exact, with repeats folded.

k, p, k2tog, p2tog, ssk, ssp, M1, CO, rnd, sts, rem, "rep from *" and brackets worked so many times are the Craft Yarn
Council's list of knitting abbreviations, from memory. s2kp2, the centred double decrease, is written as that list has
it, from memory too; s2pp2, the same from the purl side, is formed after it and explained where it is used.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from chartmaker.model.counts import rounds_not_meeting
from chartmaker.model.design import Design
from chartmaker.model.hat import Trim
from chartmaker.model.round import Round
from chartmaker.model.stitches import Shaping
from chartmaker.model.units import Measured

MOST_IN_BRACKET = 8
"""Runs inside a bracket: more are hard to hold in mind."""
LEAST_SAVED = 6
"""Characters that a bracket must save to be worth its reading."""
SHAPED_NAMES = {
    (Shaping.K2TOG, "k"): "k2tog",
    (Shaping.SSK, "k"): "ssk",
    (Shaping.CENTRED, "k"): "s2kp2",
    (Shaping.MAKE, "k"): "M1",
    (Shaping.K2TOG, "p"): "p2tog",
    (Shaping.SSK, "p"): "ssp",
    (Shaping.CENTRED, "p"): "s2pp2",
    (Shaping.MAKE, "p"): "M1P",
}
"""What a shaped stitch is called, by its shaping and its texture."""
MEANINGS = {
    "k": "knit",
    "p": "purl",
    "k2tog": "knit 2 sts together; leans right",
    "ssk": "slip 2 sts singly as if to knit, knit them together through the back; leans left",
    "s2kp2": "centred double decrease: slip 2 sts together as if to knit, k1, pass both over it",
    "M1": "make 1: lift the strand before the next st, knit it through the back",
    "p2tog": "purl 2 sts together",
    "ssp": "slip 2 sts singly as if to knit, purl them together through the back",
    "s2pp2": "centred double decrease in purl: slip 2 sts together through the back, p1, pass both over it",
    "M1P": "make 1 in purl: lift the strand before the next st, purl it through the back",
}
"""How each is worked; common practice, no source."""


@dataclass(frozen=True, slots=True)
class Instruction:
    """What to work in one round, or in several that are alike."""

    first: int
    """Number of the first round in the whole hat, from 1."""
    last: int
    text: str
    """Without the number of the round; ends with the stitches then on the needles."""
    trouble: str = ""
    """Why it cannot be worked on the round below; empty where it can."""

    @property
    def label(self) -> str:
        """The number as it is written before the text."""
        return f"Rnd {self.first}" if self.first == self.last else f"Rnds {self.first}-{self.last}"


@dataclass(frozen=True, slots=True)
class WrittenBand:
    """A band with its instructions, from the first knitted."""

    title: str
    """On one line; empty where the band has no name."""
    instructions: tuple[Instruction, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class WrittenHat:
    """Everything to be read to knit a hat without its chart."""

    letters: tuple[tuple[str, str], ...]
    """Each letter with the name of its lot; empty where it has none yet."""
    abbreviations: tuple[tuple[str, str], ...]
    """Those in use, with how they are worked."""
    cast_on: str
    bands: tuple[WrittenBand, ...]
    finish: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class _Run:
    """Equal stitches side by side; a shaped stitch stands alone."""

    name: str
    letter: str
    count: int

    @property
    def text(self) -> str:
        return f"{self.name}{self.count} {self.letter}" if self.name in ("k", "p") else f"{self.name} {self.letter}"


def written(design: Design) -> WrittenHat:
    """Write a whole hat."""
    names = {lot.id: lot.name for lot in design.palette.lots}
    lots = [(letter, names.get(design.colourway.lot_of(letter) or "", "")) for letter in design.letters_in_use]
    used = {name for band in design.bands for line in band.rounds for name, _ in _stitches(line, band.texture)}
    return WrittenHat(
        letters=tuple(lots),
        abbreviations=tuple((name, words) for name, words in MEANINGS.items() if name in used),
        cast_on=_cast_on(design),
        bands=_bands(design),
        finish=_finish(design),
    )


def as_text(hat: WrittenHat) -> str:
    """Write a hat as plain text, one instruction a line."""
    lines = [f"{letter}: {' '.join(lot.split()) or 'no lot yet'}" for letter, lot in hat.letters]
    lines += ["", *(f"{name}: {words}" for name, words in hat.abbreviations), "", hat.cast_on]
    for number, band in enumerate(hat.bands, start=1):
        lines += ["", f"Band {number}: {band.title}" if band.title else f"Band {number}"]
        lines += [
            f"{one.label}: {one.text}" + (f" [{one.trouble}]" if one.trouble else "") for one in band.instructions
        ]
    return "\n".join([*lines, "", *hat.finish]) + "\n"


def instruction_text(line: Round, *, times: int = 1, texture: str = "") -> str:
    """Write one round: its shortest repeat, how often it is worked, and the stitches that it leaves."""
    stitches, repeats = _shortest(_stitches(line, texture), times)
    count = f"({_sts(len(line) * times)})"
    name, letter = stitches[0]
    if len(stitches) == 1 and name in ("k", "p"):
        return f"{name} all sts in {letter} {count}"
    runs = _folded(_runs(stitches))
    if repeats == 1:
        return f"{runs} {count}"
    more = "once" if repeats == 2 else f"{repeats - 1} times"
    return f"*{runs}; rep from * {more} more {count}"


def _stitches(line: Round, texture: str) -> tuple[tuple[str, str], ...]:
    """Give the name and the letter of each stitch of a repeat."""
    textures = (texture or "k") * len(line)
    return tuple(
        (
            textures[place] if shape == Shaping.PLAIN else SHAPED_NAMES[Shaping(shape), textures[place]],
            line.letters[part],
        )
        for place, (part, shape) in enumerate(zip(line.cells, line.shaping, strict=True))
    )


def _shortest(stitches: tuple[tuple[str, str], ...], times: int) -> tuple[tuple[tuple[str, str], ...], int]:
    """Give the shortest repeat that makes the same round, and how often it goes round."""
    count = len(stitches)
    for length in range(1, count // 2 + 1):
        if count % length == 0 and stitches[:length] * (count // length) == stitches:
            return stitches[:length], times * count // length
    return stitches, times


def _runs(stitches: tuple[tuple[str, str], ...]) -> tuple[_Run, ...]:
    runs: list[_Run] = []
    for name, letter in stitches:
        if runs and name in ("k", "p") and (runs[-1].name, runs[-1].letter) == (name, letter):
            runs[-1] = _Run(name, letter, runs[-1].count + 1)
        else:
            runs.append(_Run(name, letter, 1))
    return tuple(runs)


@lru_cache(maxsize=1024)
def _folded(runs: tuple[_Run, ...]) -> str:
    """Write runs, those that come again and again in brackets, in the fewest characters; no bracket within another."""
    shortest = [""]
    for end in range(1, len(runs) + 1):
        best = _joined(shortest[end - 1], runs[end - 1].text)
        for length in range(1, min(MOST_IN_BRACKET, end // 2) + 1):
            times = _times_over(runs, end, length)
            if times > 1:
                bracket = _bracket(runs[end - length : end], times)
                best = min(best, _joined(shortest[end - times * length], bracket), key=len)
        shortest.append(best)
    return shortest[-1]


def _times_over(runs: tuple[_Run, ...], end: int, length: int) -> int:
    """Count how often the runs before `end` say the same `length` runs, one after the other."""
    piece, times = runs[end - length : end], 1
    while (start := end - (times + 1) * length) >= 0 and runs[start : start + length] == piece:
        times += 1
    return times


def _bracket(runs: tuple[_Run, ...], times: int) -> str:
    """Write a bracket, or the runs in full where that is hardly longer."""
    inside = ", ".join(run.text for run in runs)
    folded = f"[{inside}] {'twice' if times == 2 else f'{times} times'}"
    full = ", ".join([inside] * times)
    return folded if len(full) - len(folded) >= LEAST_SAVED else full


def _joined(first: str, second: str) -> str:
    return f"{first}, {second}" if first else second


def _bands(design: Design) -> tuple[WrittenBand, ...]:
    broken = rounds_not_meeting(design)
    bands: list[WrittenBand] = []
    done, below = 0, design.bands[0].stitches(0)
    for band in design.bands:
        instructions: list[Instruction] = []
        for place, line in enumerate(band.rounds):
            trouble = _trouble(band.eaten(place), below) if done in broken else ""
            done += 1
            one = Instruction(done, done, instruction_text(line, times=band.times, texture=band.texture), trouble)
            _add(instructions, one)
            below = band.stitches(place)
        bands.append(WrittenBand(" ".join(band.name.split()), tuple(instructions)))
    return tuple(bands)


def _add(instructions: list[Instruction], one: Instruction) -> None:
    """Add an instruction, or lengthen the last where it says the same."""
    if instructions and (instructions[-1].text, instructions[-1].trouble) == (one.text, one.trouble):
        one = Instruction(instructions.pop().first, one.last, one.text, one.trouble)
    instructions.append(one)


def _trouble(eaten: int, below: int) -> str:
    return f"cannot be worked: it takes {_sts(eaten)}, there are {below}"


def _cast_on(design: Design) -> str:
    begin = design.hat.cast_on
    count = _sts(design.bands[0].stitches(0))
    return (
        f"CO {count} in {begin.letter}, {begin.method} cast-on. Join into a rnd without a twist; mark where it begins."
    )


def _finish(design: Design) -> tuple[str, ...]:
    last = design.bands[-1]
    count = last.stitches(len(last.rounds) - 1)
    close = (
        f"Cut the yarn, draw {design.hat.finish.letter} twice through the rem {_sts(count)}, pull closed, fasten off."
    )
    return (close, *_fold(design), *(_trim(trim) for trim in design.hat.trims))


def _fold(design: Design) -> Iterator[str]:
    """Tell what is done with the rounds that lie double; a fold that takes in the whole hat is none."""
    fold, rounds = design.hat.fold, sum(len(band.rounds) for band in design.bands)
    if fold is None or fold.rounds >= rounds:
        return
    first = "first rnd" if fold.rounds == 1 else f"first {fold.rounds} rnds"
    edge = "live sts of the cast-on" if design.hat.cast_on.method == "provisional" else "cast-on edge"
    yield {
        "up": f"Turn the {first} up to the outside.",
        "in": f"Fold the {first} to the inside and sew the {edge} down, as loosely as the fabric gives.",
        "roll": f"Let the {first} roll up.",
    }[fold.way]


def _trim(trim: Trim) -> str:
    measure = "across" if trim.kind == "pompom" else "long"
    return Measured(
        lambda units: (
            f"Make a {trim.kind} {units.length.brief(trim.size_cm)} {measure} in {trim.letter}; sew it to the top."
        )
    )


def _sts(count: int) -> str:
    return f"{count} st" if count == 1 else f"{count} sts"
