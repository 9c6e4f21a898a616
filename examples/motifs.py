"""The motifs of the examples, drawn from plain geometry: lozenges, crosses, teeth and stems. They are our own.

A motif answers whether a place is figure. `across` is the place in the repeat, counted leftwards from stitch 1, or from
the middle of a wedge, either way; `up` is the round in the band, from 0.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from chartmaker.model.round import Round
from chartmaker.model.stitches import Part, Shaping

Motif = Callable[[int, int], bool]
Letters = Callable[[int], str]
"""Ground and figure of a round of a band."""

SMALL_LOZENGES = ("..x...", ".xxx..", "xx.xx.", ".xxx..", "..x...")
WAVES = ("..x...", ".xxx.x", "xx.xxx", "x...xx", ".....x")


def drawn(rows: Sequence[str], letters: Sequence[str]) -> tuple[Round, ...]:
    """Make rounds of rows of signs, top row first as in a file; each with its letters."""
    return tuple(
        plain_or_figured(pair, bytes(sign == "x" for sign in reversed(row)))
        for row, pair in zip(reversed(rows), reversed(letters), strict=True)
    )


def repeated(motif: Motif, *, width: int, letters: Sequence[str]) -> tuple[Round, ...]:
    """Make rounds of a motif on a repeat of `width` stitches; the letters stand with the top round first."""
    return tuple(
        plain_or_figured(pair, bytes(motif(across, up) for across in range(width)))
        for up, pair in enumerate(reversed(letters))
    )


def plain_or_figured(letters: str, cells: bytes, shaping: bytes = b"") -> Round:
    """Make a round; one without a figure names its ground alone."""
    return Round(letters if any(cells) else letters[0], cells, shaping)


def lozenges_and_crosses(size: int) -> Motif:
    """Set lozenges with an eye and crosses with filled notches side by side.

    The height is 2 × size + 1 rounds, the repeat 3 × size stitches; a cross stands at stitch 1.
    """
    repeat, notch = 3 * size, 2 if size < 8 else 4

    def motif(across: int, up: int) -> bool:
        from_cross = min(across % repeat, repeat - across % repeat)
        from_edge = min(up, 2 * size - up)
        from_lozenge, from_middle = repeat // 2 - from_cross, size - from_edge
        if from_lozenge in (from_edge, from_edge - 1) or from_cross in (from_middle, from_middle - 1):
            return True
        corner = from_cross + from_edge
        if corner <= 2 or corner == notch:
            return True
        return 1 < from_lozenge + from_middle <= size // 2

    return motif


def lattice(across: int, up: int) -> bool:
    """Cross slanting lines that leave lozenges five stitches wide between them."""
    return (across + up) % 6 == 0 or (across - up) % 6 == 0


def cap_crown(across: int, up: int) -> bool:
    """Stand a lozenge between two teeth, and on it a stem with a bud."""
    from_middle = abs(across)
    ring = from_middle + abs(up - 7)
    if ring in (6, 7) or 1 < ring <= 3:
        return True
    if up <= 2:
        return abs(from_middle - 6) + up <= 2
    bud = from_middle + abs(up - 19)
    return (from_middle == 0 and 14 <= up <= 17) or bud in (0, 2)


def tam_wheel(across: int, up: int) -> bool:
    """Stand a lozenge that holds a flower between two chevrons, and on it a stem with a bud."""
    from_middle, level = abs(across), abs(up - 9)
    ring = from_middle + level
    if ring in (8, 9):
        return True
    if ring <= 6:
        petals = 1 <= from_middle <= 3 and 1 <= level <= 3 and ring <= 4
        tips = (from_middle == 0 and level in (0, 4, 5)) or (level == 0 and from_middle in (4, 5))
        return petals or tips
    chevron = abs(from_middle - 10) + up
    if up <= 5 and chevron <= 5:
        return chevron not in (2, 3)
    bud = from_middle + abs(up - 23)
    return (from_middle == 0 and 18 <= up <= 20) or bud in (0, 2, 3)


@dataclass(frozen=True, slots=True, kw_only=True)
class Wedge:
    """One section of a hat that is shaped at both sides of a spoke: the spoke is stitch 1, the panel the rest."""

    panel: int
    """Stitches of the panel before the first shaping; odd, so that it has a middle."""
    rounds: int
    shaped: frozenset[int]
    """Rounds, from 0, that lose or gain a stitch at each side of the panel."""
    widens: bool
    motif: Motif
    letters: Letters
    rim_until: int
    """Up to this round the panel's outer stitches are figure like the spoke, so that spokes are three stitches wide."""
    spoke_until: int

    def worked(self) -> tuple[Round, ...]:
        """Make the rounds of the wedge."""
        half, made = self.panel // 2, []
        for up in range(self.rounds):
            if up in self.shaped:
                half += 1 if self.widens else -1
            made.append(self._round(up, half))
        return tuple(made)

    def _round(self, up: int, half: int) -> Round:
        cells = bytearray([up < self.spoke_until])
        for across in range(-half, half + 1):
            is_rim = abs(across) == half and up < self.rim_until
            cells.append(is_rim or (up < self.spoke_until and self.motif(across, up)))
        shaping = self._shaping(half) if up in self.shaped else b""
        return plain_or_figured(self.letters(up), bytes(Part(cell) for cell in cells), shaping)

    def _shaping(self, half: int) -> bytes:
        if half == 0:
            return bytes([Shaping.PLAIN, Shaping.CENTRED])
        first, last = (Shaping.MAKE, Shaping.MAKE) if self.widens else (Shaping.K2TOG, Shaping.SSK)
        return bytes([Shaping.PLAIN, first, *[Shaping.PLAIN] * (2 * half - 1), last])
