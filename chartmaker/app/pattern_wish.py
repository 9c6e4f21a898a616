"""What is wished for of a picture or of words, and the pattern that it makes. No Qt: it runs beside the window."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Literal

from chartmaker.files.problems import UserProblem
from chartmaker.model.motif import floats_of
from chartmaker.pictures.lettering import stitched_words, typeset_words
from chartmaker.pictures.pattern import Pattern, otsu_level, padded, reduced, thresholded, values
from chartmaker.pictures.scaling import stitch_light

if TYPE_CHECKING:
    from collections.abc import Callable

    import numpy as np
    from numpy.typing import NDArray

    from chartmaker.pictures.scaling import Block
    from chartmaker.pictures.source import Pixels

    Step = Callable[[int, int], None]

Method = Literal["value", "shade"]
Lab = tuple[float, float, float]


@dataclass(frozen=True, slots=True, kw_only=True)
class Look:
    """How light becomes letters."""

    method: Method = "value"
    """By a level of value to ground and figure, or by the shades of the design's letters."""
    letters: str = "AB"
    """Ground and figure."""
    level: float | None = None
    """CIE L*; None is the level that divides best."""
    inverts: bool = False
    dithers: bool = False
    shades: tuple[tuple[str, Lab], ...] = ()
    """CIELAB of each letter that takes part."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class PictureWish:
    """A part of a picture, the stitches it shall fill, and its look."""

    pixels: Pixels
    """The whole working copy: the same array for as long as the picture is the same."""
    crop: tuple[int, int, int, int]
    """Left, top, right and lower edge in pixels of the working copy."""
    block: Block
    look: Look


@dataclass(frozen=True, slots=True, kw_only=True)
class WordsWish:
    """Words and their lettering."""

    text: str
    is_stitched: bool = True
    """Whether in the alphabet drawn for stitches, else in a typeface."""
    scale: int = 1
    """How many times its size the alphabet is worked."""
    rounds: int = 9
    """Height of a typeface."""
    height_per_width: float = 1.0
    stitches: int | None = None
    """Ground is put beside the words to make so many; None is as wide as the words."""
    letters: str = "AB"
    inverts: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Made:
    """A pattern, and what was found on the way."""

    pattern: Pattern
    floats: tuple[tuple[tuple[int, int], ...], ...]
    """Of each round, as `floats_of` gives them: counted beside the window, where a large pattern takes a while."""
    longest: tuple[int, ...]
    """The longest float of each round, in stitches."""
    level: float | None = None
    """The level of value that divided it."""


def made_of(pattern: Pattern, level: float | None = None) -> Made:
    """Give a pattern with its floats."""
    floats = tuple(map(floats_of, pattern.rounds))
    longest = tuple(max((length for _, length in each), default=0) for each in floats)
    return Made(pattern=pattern, floats=floats, longest=longest, level=level)


class PatternMaker:
    """Makes patterns, one after another, and keeps the light of the stitches for as long as they stay the same."""

    def __init__(self) -> None:
        self._kept: tuple[PictureWish, NDArray[np.float64]] | None = None

    def of_picture(self, wish: PictureWish, step: Step) -> Made:
        """Make what a picture gives.

        Raises UserProblem where no letter takes part.
        """
        light, look = self._light(wish), wish.look
        step(0, 0)
        if look.method == "shade":
            if not look.shades:
                raise UserProblem("no letter takes part", now="choose at least one whose shade is known")
            return made_of(reduced(light, dict(look.shades), dithers=look.dithers, step=step))
        _require_two(look.letters)
        level = otsu_level(values(light)) if look.level is None else look.level
        pattern = thresholded(
            light, letters=look.letters, level=level, inverts=look.inverts, dithers=look.dithers, step=step
        )
        return made_of(pattern, level)

    def _light(self, wish: PictureWish) -> NDArray[np.float64]:
        kept = self._kept
        if kept and kept[0].pixels is wish.pixels and (kept[0].crop, kept[0].block) == (wish.crop, wish.block):
            return kept[1]
        left, top, right, bottom = wish.crop
        light = stitch_light(wish.pixels[top:bottom, left:right], wish.block)
        self._kept = wish, light
        return light


def of_words(wish: WordsWish) -> Made:
    """Make what words give.

    Raises UserProblem for words that cannot be written, or that are wider than what is wished for.
    """
    _require_two(wish.letters)
    if wish.is_stitched:
        pattern = stitched_words(wish.text, letters=wish.letters, scale=wish.scale)
    else:
        pattern = typeset_words(
            wish.text, rounds=wish.rounds, height_per_width=wish.height_per_width, letters=wish.letters
        )
    width = len(pattern.rounds[0])
    if wish.stitches is not None:
        if wish.stitches < width:
            what = f"the words are {width} stitches wide, more than the repeat of {wish.stitches}"
            raise UserProblem(what, now="make the repeat wider or the words smaller")
        pattern = padded(pattern, wish.stitches)
    return made_of(_inverted(pattern, wish.letters) if wish.inverts else pattern)


def _require_two(letters: str) -> None:
    if letters[0] == letters[1]:
        raise UserProblem(f"ground and figure are both {letters[0]}", now="choose another letter for one of them")


def _inverted(pattern: Pattern, letters: str) -> Pattern:
    """Let ground and figure change places; a plain round becomes all figure."""
    swapped = bytes([1, 0]) + bytes(254)
    return Pattern(
        tuple(replace(line, letters=letters, cells=line.cells.translate(swapped)) for line in pattern.rounds)
    )
