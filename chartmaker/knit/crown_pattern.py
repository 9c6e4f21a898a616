"""What was drawn on a crown, laid on the rounds of another that takes its place."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from chartmaker.knit.outline import chart_offsets
from chartmaker.model.band import Band
from chartmaker.model.round import Round
from chartmaker.model.stitches import Part, Shaping


@dataclass(frozen=True, slots=True)
class _Drawn:
    """One round of the old crown's section."""

    letters: str
    cells: bytes
    column: int
    """Of stitch 1, counted leftwards from the middle line of the section, in half columns."""


def carried(old: Sequence[Band], new: Band) -> Band:
    """Give the new crown with cells and letters of the old one, round by round from the first.

    The middle of a section comes to stand on the middle of a section; what no longer has a place goes, and a stitch
    that is new is ground. Rounds past the old crown's last are ground in that round's letters.
    """
    drawn = [one for band in old for one in _drawn(band, new.times)]
    if not drawn:
        return new
    offsets = chart_offsets(new.rounds)
    middle = _middle(new.rounds, offsets)
    rounds = []
    for number, (line, offset) in enumerate(zip(new.rounds, offsets, strict=True)):
        if number < len(drawn):
            rounds.append(_laid(drawn[number], line, column=2 * offset - middle))
        else:
            rounds.append(replace(line, letters=drawn[-1].letters))
    return replace(new, rounds=tuple(rounds))


def _drawn(band: Band, sections: int) -> list[_Drawn]:
    """Read a band as rounds of one section: of several repeats where they make one up, else of one repeat."""
    repeats = band.times // sections if band.times % sections == 0 else 1
    offsets = chart_offsets(band.rounds)
    middle = _middle(band.rounds, offsets)
    return [
        _Drawn(line.letters, line.cells * repeats, 2 * offset - middle - (repeats - 1) * len(line))
        for line, offset in zip(band.rounds, offsets, strict=True)
    ]


def _middle(rounds: tuple[Round, ...], offsets: tuple[int, ...]) -> int:
    """Give the line about which a section is symmetric, from the drawing's right edge in half columns.

    That is between its two outer decreases, or on its centred double; with one decrease alone, or none, it is the
    middle of the first round.
    """
    for line, offset in zip(rounds, offsets, strict=True):
        shaped = [stitch for stitch, code in enumerate(line.shaping) if code]
        if len(shaped) > 1 or Shaping.CENTRED in line.shaping:
            return 2 * offset + shaped[0] + shaped[-1] + 1
        if shaped:
            break
    return 2 * offsets[0] + len(rounds[0])


def _laid(old: _Drawn, line: Round, *, column: int) -> Round:
    # Where the two sections differ by half a stitch, what was drawn comes half a stitch further right.
    shift = (column - old.column) // 2
    cells = bytes(
        old.cells[place + shift] if 0 <= place + shift < len(old.cells) else Part.GROUND for place in range(len(line))
    )
    return replace(line, letters=old.letters, cells=cells)
