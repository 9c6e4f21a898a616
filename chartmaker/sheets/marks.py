"""Drawn marks: one a letter, so that the chart reads in black and white, the trade's shaping signs, and the purl bar.

The letters' marks are plain geometry of our own and keep clear of the signs: none is a lone slanting stroke, a peak, or
a lone level bar. A mark fills the square from -0.5 to 0.5, y upwards.
"""

from dataclasses import dataclass

from chartmaker.model.stitches import Shaping

Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Disc:
    """A filled circle."""

    centre: Point
    radius: float


@dataclass(frozen=True, slots=True)
class Ring:
    """A circle's line."""

    centre: Point
    radius: float


@dataclass(frozen=True, slots=True)
class Stroke:
    """A broken line through points."""

    points: tuple[Point, ...]
    is_closed: bool = False


@dataclass(frozen=True, slots=True)
class Solid:
    """A filled polygon."""

    points: tuple[Point, ...]


Shape = Disc | Ring | Stroke | Solid


@dataclass(frozen=True, slots=True)
class Mark:
    """A named drawing."""

    name: str
    shapes: tuple[Shape, ...]
    stroke: float = 0.13
    """Width of its lines, as a share of the square."""


def _line(*points: Point) -> Stroke:
    return Stroke(points)


_MIDDLE: Point = (0.0, 0.0)
_SQUARE: tuple[Point, ...] = ((-0.38, -0.38), (0.38, -0.38), (0.38, 0.38), (-0.38, 0.38))
_DIAMOND: tuple[Point, ...] = ((0, -0.48), (0.48, 0), (0, 0.48), (-0.48, 0))
_UP: tuple[Point, ...] = ((-0.44, -0.38), (0.44, -0.38), (0, 0.42))
_DOWN: tuple[Point, ...] = ((-0.44, 0.38), (0.44, 0.38), (0, -0.42))
_CROSS = (_line((-0.38, -0.38), (0.38, 0.38)), _line((-0.38, 0.38), (0.38, -0.38)))
_PLUS = (_line((-0.45, 0), (0.45, 0)), _line((0, -0.45), (0, 0.45)))
_UPRIGHTS = (_line((-0.22, -0.42), (-0.22, 0.42)), _line((0.22, -0.42), (0.22, 0.42)))

EMPTY = Mark("empty", ())
"""For the letter worked most: its cells stay bare."""

LETTER_MARKS = (
    Mark("dot", (Disc(_MIDDLE, 0.25),)),
    Mark("cross", _CROSS),
    Mark("ring", (Ring(_MIDDLE, 0.38),)),
    Mark("square", (Solid(_SQUARE),)),
    Mark("plus", _PLUS),
    Mark("up", (Solid(_UP),)),
    Mark("uprights", _UPRIGHTS),
    Mark("hollow diamond", (Stroke(_DIAMOND, is_closed=True),)),
    Mark("hollow square", (Stroke(_SQUARE, is_closed=True),)),
    Mark("down", (Solid(_DOWN),)),
    Mark("target", (Ring(_MIDDLE, 0.42), Disc(_MIDDLE, 0.16))),
    Mark("hollow up", (Stroke(_UP, is_closed=True),)),
    Mark("star", (*_PLUS, _line((-0.32, -0.32), (0.32, 0.32)), _line((-0.32, 0.32), (0.32, -0.32)))),
    Mark("diamond", (Solid(_DIAMOND),)),
    Mark("two dots", (Disc((-0.25, 0), 0.16), Disc((0.25, 0), 0.16))),
    Mark("hollow down", (Stroke(_DOWN, is_closed=True),)),
    Mark("hourglass", (Solid(((-0.4, 0.42), (0.4, 0.42), (-0.4, -0.42), (0.4, -0.42))),)),
    Mark("boxed dot", (Stroke(_SQUARE, is_closed=True), Disc(_MIDDLE, 0.15))),
    Mark("three dots", (Disc((-0.26, -0.2), 0.15), Disc((0.26, -0.2), 0.15), Disc((0, 0.26), 0.15))),
    Mark("crossed ring", (Ring(_MIDDLE, 0.44), *_PLUS)),
    Mark("half square", (Solid(((-0.4, -0.4), (0.4, -0.4), (-0.4, 0.4))),)),
    Mark("one upright", (_line((0, -0.46), (0, 0.46)),), 0.2),
    Mark("bow", (Solid(((-0.46, 0.36), (-0.46, -0.36), (0.46, 0.36), (0.46, -0.36))),)),
    Mark("four dots", tuple(Disc((x, y), 0.14) for x in (-0.27, 0.27) for y in (-0.27, 0.27))),
    Mark("crossed box", (Stroke(_SQUARE, is_closed=True), *_CROSS)),
)
"""Given out in this order; the first few differ most."""

SHAPING_MARKS = {
    Shaping.K2TOG: Mark("k2tog", (_line((-0.42, -0.46), (0.42, 0.46)),)),
    Shaping.SSK: Mark("ssk", (_line((0.42, -0.46), (-0.42, 0.46)),)),
    Shaping.CENTRED: Mark("centred", (_line((-0.42, -0.46), (0, 0.46), (0.42, -0.46)),)),
    Shaping.MAKE: Mark("make one", (_line((-0.4, -0.44), (-0.4, 0.44), (0, -0.1), (0.4, 0.44), (0.4, -0.44)),)),
}
"""The trade's signs: a decrease leans as its stitches lean, the centred one stands upright, M is make one."""

PURL_BAR = Mark("purl", (_line((-0.42, 0), (0.42, 0)),), 0.16)
"""The trade's level bar, for a stitch that is purled on the right side."""

GRADE_MARKS = {
    "clear": Mark("clear", (Disc(_MIDDLE, 0.4),)),
    "soft": Mark("soft", (Ring(_MIDDLE, 0.36), Disc(_MIDDLE, 0.15))),
    "lost": Mark("lost", (Ring(_MIDDLE, 0.36), _line((-0.48, -0.48), (0.48, 0.48)))),
}
"""Beside the grade's word: full, half and struck through."""

TICK_BOX = Mark(
    "tick box", (Stroke(((-0.45, -0.45), (0.45, -0.45), (0.45, 0.45), (-0.45, 0.45)), is_closed=True),), 0.08
)
ARROW_LEFT = Mark(
    "arrow left",
    (
        Solid(
            ((0.4, 0.4), (0.4, -0.4), (-0.4, 0)),
        ),
    ),
)
ARROW_RIGHT = Mark(
    "arrow right",
    (
        Solid(
            ((-0.4, 0.4), (-0.4, -0.4), (0.4, 0)),
        ),
    ),
)
ARROW_UP = Mark(
    "arrow up",
    (
        Solid(
            ((-0.4, -0.4), (0.4, -0.4), (0, 0.4)),
        ),
    ),
)
ARROW_DOWN = Mark(
    "arrow down",
    (
        Solid(
            ((-0.4, 0.4), (0.4, 0.4), (0, -0.4)),
        ),
    ),
)
"""Joins between the pieces of a chart."""
CATCH = Mark("catch", (Solid(((-0.5, 0.5), (-0.5, -0.5), (0.5, 0.0))),))
"""At a cell's left edge: the strand that rests is caught behind this stitch. Our own sign."""
WARNING = Mark(
    "warning",
    (
        Stroke(((-0.46, -0.4), (0.46, -0.4), (0, 0.42)), is_closed=True),
        _line((0, 0.14), (0, -0.1)),
        Disc((0, -0.26), 0.06),
    ),
    0.09,
)
"""Beside a caution: a triangle with an exclamation mark, as warning signs have it (ISO 7010)."""
OUT_OF_GAMUT = Mark("out of gamut", (Ring(_MIDDLE, 0.36), _line((0, 0.3), (0, -0.1)), Disc((0, -0.25), 0.07)), 0.09)
"""A shade that neither paper nor screen can show."""


def marks_by_letter(stitches: dict[str, int]) -> dict[str, Mark]:
    """Give each letter its mark: bare cells to the one with the most stitches, the others in alphabetical order.

    Args:
        stitches: how many stitches each letter in use has; at most 26 letters.
    """
    if not stitches:
        return {}
    most = max(sorted(stitches), key=lambda letter: stitches[letter])
    others = (letter for letter in sorted(stitches) if letter != most)
    return {most: EMPTY, **dict(zip(others, LETTER_MARKS, strict=False))}
