"""A piece cut out of a chart: parts by round and stitch, ready to be turned about and laid down again.

Its written form is that of `notation`, with "_" for a place where no stitch stood.
"""

from dataclasses import dataclass, replace

from chartmaker.model.bounds import MOST_ROUNDS, MOST_STITCHES
from chartmaker.model.notation import round_from_text
from chartmaker.model.round import Round
from chartmaker.model.stitches import PART_SIGNS, Part

GAP = 255
"""Stands for a place without a stitch, beside the wedge of a shaped band; laid down, it leaves what is there."""
GAPS = bytes([GAP])
GAP_SIGN = "_"
LONGEST_TEXT = MOST_ROUNDS * (3 * MOST_STITCHES + 40)
"""Characters past which a text is no piece of a chart."""


@dataclass(frozen=True, slots=True)
class Clip:
    """Lines of one width, the lowest first; place 0 of a line is its right-most stitch."""

    lines: tuple[bytes, ...]
    """The `Part` of each stitch, or `GAP`."""
    letters: tuple[str, ...]
    """What played the parts of each line where it was cut out. To know, not to lay down: shading stays where it is."""

    def __post_init__(self) -> None:
        if not self.lines or not self.lines[0]:
            raise ValueError("a piece of a chart has at least one stitch")
        if len(self.lines) > MOST_ROUNDS or self.width > MOST_STITCHES:
            raise ValueError(
                f"a piece of {self.width} stitches × {len(self.lines)} rounds is larger than a chart may be"
            )
        if any(len(line) != self.width for line in self.lines):
            raise ValueError("the rounds of a piece of a chart all have one width")
        if len(self.letters) != len(self.lines):
            raise ValueError(f"{len(self.lines)} rounds but {len(self.letters)} of letters")
        for line, letters in zip(self.lines, self.letters, strict=True):
            if set(line) - {GAP, *range(len(letters))} or len(letters) > len(Part):
                raise ValueError(f"the letters {letters!r} do not play all parts of their round")

    @property
    def width(self) -> int:
        """Stitches of each line."""
        return len(self.lines[0])

    @property
    def gaps(self) -> tuple[bytes, ...]:
        """Where stitches are, 0, and where none are, 1: turned about, a piece must cover the same stitches again."""
        return tuple(bytes(part == GAP for part in line) for line in self.lines)

    @property
    def has_gaps(self) -> bool:
        """Whether some place has no stitch."""
        return any(GAP in line for line in self.lines)

    def rounds(self) -> tuple[Round, ...]:
        """Give the lines as rounds of a chart, with ground in gaps."""
        ground = bytes(Part.GROUND if code == GAP else code for code in range(256))
        pairs = zip(self.lines, self.letters, strict=True)
        return tuple(Round(letters, line.translate(ground)) for line, letters in pairs)

    def flipped_sideways(self, *, within_stitches: bool = False) -> "Clip":
        """Give it as a mirror beside it shows it; with `within_stitches`, each line about the middle of its stitches.

        That middle is the wedge's own, from which the columns of a chart may stand half a stitch off.
        """
        if not within_stitches:
            return replace(self, lines=tuple(line[::-1] for line in self.lines))
        turned = []
        for line in self.lines:
            stitches = line.strip(GAPS)
            right = len(line) - len(line.lstrip(GAPS))
            turned.append(line[:right] + stitches[::-1] + line[right + len(stitches) :])
        return replace(self, lines=tuple(turned))

    def flipped_upright(self) -> "Clip":
        """Give it as water below it shows it; letters stay at their places."""
        return self._with_lines(self.lines[::-1])

    def shifted(self, *, rounds: int = 0, stitches: int = 0) -> "Clip":
        """Give it moved upwards and leftwards within itself: what leaves at one side comes in at the other."""
        up, across = rounds % len(self.lines), stitches % self.width
        lines = self.lines[-up:] + self.lines[:-up] if up else self.lines
        return self._with_lines(tuple(line[-across:] + line[:-across] if across else line for line in lines))

    def _with_lines(self, lines: tuple[bytes, ...]) -> "Clip":
        """Put lines in others' places, whose letters may have to learn a part that they did not play."""
        letters = tuple(
            _playing(letters, max((part for part in line if part != GAP), default=0))
            for line, letters in zip(lines, self.letters, strict=True)
        )
        return Clip(lines, letters)


def clip_to_text(clip: Clip) -> str:
    """Write a piece as lines, the top one first."""
    room = max(2 * len(letters) - 1 for letters in clip.letters)
    signs = (PART_SIGNS + GAP_SIGN * (256 - len(PART_SIGNS))).encode()
    pairs = zip(reversed(clip.lines), reversed(clip.letters), strict=True)
    return "".join(f"{' '.join(letters):{room}} | {line[::-1].translate(signs).decode()}\n" for line, letters in pairs)


def clip_from_text(text: str) -> Clip:
    """Read a piece as it is written; shaping, where a chart's text has any, is passed over.

    Raises ValueError, with one sentence, where it is something else.
    """
    lines = text.strip().splitlines() if len(text) <= LONGEST_TEXT else []
    if not lines or not all("|" in line for line in lines[: MOST_ROUNDS + 1]):
        raise ValueError("what was copied last is no piece of a chart")
    pairs = [_read(line) for line in reversed(lines)]
    return Clip(tuple(cells for cells, _ in pairs), tuple(letters for _, letters in pairs))


def _read(line: str) -> tuple[bytes, str]:
    read = round_from_text(line.replace(GAP_SIGN, PART_SIGNS[Part.GROUND]))
    signs = line.split("|")[1].strip()[::-1]
    cells = (GAP if sign == GAP_SIGN else cell for sign, cell in zip(signs, read.cells, strict=True))
    return bytes(cells), read.letters


def _playing(letters: str, part: int) -> str:
    new = (letter for letter in "ABCDEFGHIJKLMNOPQRSTUVWXYZ" if letter not in letters)
    return letters + "".join(next(new) for _ in range(part + 1 - len(letters)))
