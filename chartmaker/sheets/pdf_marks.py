"""Marks as PDF operators: one mark's drawing written once more at every place, each place told from the one before.

Cells of a chart stand at even distances, so that the same few bytes come again and again: packed, they take a tenth of
what paths at their places on the page take.
"""

from collections.abc import Iterable
from functools import lru_cache
from itertools import pairwise

from chartmaker.sheets.marks import Disc, Mark, Ring, Solid, Stroke
from chartmaker.sheets.pdf_path import PlainPath

DECIMALS = 2
"""Of places, in points: 0.0035 mm."""


@lru_cache(maxsize=256)
def mark_code(mark: Mark, size: float) -> tuple[str, str]:
    """Give the operators for the filled parts of a mark about the origin, and for its lines; empty if it has none."""
    filled, stroked = PlainPath(), PlainPath()
    for shape in mark.shapes:
        _add(shape, size, filled if isinstance(shape, Disc | Solid) else stroked)
    return filled.painted("f*"), stroked.painted("S")


def drawn_at(centres: Iterable[tuple[float, float]], drawing: str) -> str:
    """Give operators that draw the same at every place; what is rounded off at one is made good at the next."""
    parts = ["q"]
    before_x, before_y = 0.0, 0.0
    for x, y in centres:
        dx, dy = round(x - before_x, DECIMALS), round(y - before_y, DECIMALS)
        parts.append(f"1 0 0 1 {dx:.{DECIMALS}f} {dy:.{DECIMALS}f} cm {drawing}")
        before_x, before_y = before_x + dx, before_y + dy
    return " ".join([*parts, "Q"])


def _add(shape: Disc | Ring | Stroke | Solid, size: float, path: PlainPath) -> None:
    if isinstance(shape, Disc | Ring):
        path.circle(shape.centre[0] * size, shape.centre[1] * size, shape.radius * size)
        return
    points = [(x * size, y * size) for x, y in shape.points]
    path.moveTo(*points[0])
    for _, point in pairwise(points):
        path.lineTo(*point)
    if isinstance(shape, Solid) or shape.is_closed:
        path.close()
