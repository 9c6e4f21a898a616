"""What is marked on a photo: the target's four corners and a box on each skein, and how a drag changes them. No Qt."""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import hypot

Point = tuple[float, float]
"""x and y in pixels of the photo."""
Box = tuple[float, float, float, float]
"""Left, top, right, bottom in pixels of the photo."""
CORNERS = 4
LEAST_BOX_PX = 8.0
"""A box with a shorter side is a slip of the hand and makes no mark."""


@dataclass(frozen=True, slots=True)
class Grip:
    """What is held: a corner of the target, all of it, a skein's box, a corner of that, or a box being drawn."""

    kind: str
    """ "corner", "target", "skein", "stretch" or "draw"."""
    index: int = 0
    anchor: Point = (0.0, 0.0)
    """The corner of a box that stays where it is."""


@dataclass(frozen=True, slots=True)
class Marks:
    """Everything marked on a photo of a given size."""

    size: tuple[int, int]
    """Width and height in pixels."""
    corners: tuple[Point, ...]
    """The target's, in any order."""
    skeins: tuple[Box, ...] = ()

    @property
    def things(self) -> int:
        """How many can be held by the keyboard: the corners, then the boxes."""
        return CORNERS + len(self.skeins)

    def grip_at(self, at: Point, reach: float) -> Grip:
        """Tell what is held at a point: the nearest corner within reach, else what lies under it, else a new box."""
        near = [(hypot(x - at[0], y - at[1]), index) for index, (x, y) in enumerate(self.corners)]
        distance, index = min(near)
        if distance <= reach:
            return Grip("corner", index)
        for index, box in reversed(tuple(enumerate(self.skeins))):
            for x, y, anchor in _box_corners(box):
                if hypot(x - at[0], y - at[1]) <= reach:
                    return Grip("stretch", index, anchor)
            if box[0] <= at[0] <= box[2] and box[1] <= at[1] <= box[3]:
                return Grip("skein", index)
        return Grip("target") if _is_inside(at, self.corners) else Grip("draw", len(self.skeins), at)

    def dragged(self, grip: Grip, start: Point, to: Point) -> Marks:
        """Give the marks after a drag from one point to another; nothing leaves the photo."""
        to = self._within(to)
        by = to[0] - start[0], to[1] - start[1]
        if grip.kind == "corner":
            return self.with_corner(grip.index, to)
        if grip.kind == "target":
            return replace(self, corners=tuple(self._within((x + by[0], y + by[1])) for x, y in self.corners))
        if grip.kind == "skein":
            return self.with_skein(grip.index, self._moved(self.skeins[grip.index], by))
        return self.with_skein(grip.index, _spanned(grip.anchor, to))

    def with_corner(self, index: int, at: Point) -> Marks:
        """Give the marks with a corner elsewhere."""
        corners = list(self.corners)
        corners[index] = self._within(at)
        return replace(self, corners=tuple(corners))

    def with_skein(self, index: int, box: Box) -> Marks:
        """Give the marks with a box in the place of one, or after all others."""
        return replace(self, skeins=(*self.skeins[:index], box, *self.skeins[index + 1 :]))

    def without_skein(self, index: int) -> Marks:
        """Give the marks without a box."""
        return replace(self, skeins=self.skeins[:index] + self.skeins[index + 1 :])

    def nudged(self, thing: int, by: Point) -> Marks:
        """Give the marks with a thing, counted as in `things`, moved a little."""
        if thing < CORNERS:
            x, y = self.corners[thing]
            return self.with_corner(thing, (x + by[0], y + by[1]))
        return self.with_skein(thing - CORNERS, self._moved(self.skeins[thing - CORNERS], by))

    def widened(self, skein: int, by: Point) -> Marks:
        """Give the marks with the right and lower edge of a box moved a little."""
        left, top, right, bottom = self.skeins[skein]
        right, bottom = self._within((right + by[0], bottom + by[1]))
        return self.with_skein(skein, (left, top, max(right, left + LEAST_BOX_PX), max(bottom, top + LEAST_BOX_PX)))

    def is_too_small(self, skein: int) -> bool:
        """Tell whether a box is but a slip of the hand."""
        left, top, right, bottom = self.skeins[skein]
        return min(right - left, bottom - top) < LEAST_BOX_PX

    def _within(self, at: Point) -> Point:
        return min(max(at[0], 0.0), float(self.size[0])), min(max(at[1], 0.0), float(self.size[1]))

    def _moved(self, box: Box, by: Point) -> Box:
        across = min(max(by[0], -box[0]), self.size[0] - box[2])
        down = min(max(by[1], -box[1]), self.size[1] - box[3])
        return box[0] + across, box[1] + down, box[2] + across, box[3] + down


def first_marks(size: tuple[int, int]) -> Marks:
    """Give the marks of a photo that was just opened: corners about its middle, to be dragged onto the target."""
    width, height = size
    left, right, top, bottom = 0.3 * width, 0.7 * width, 0.32 * height, 0.68 * height
    return Marks(size, ((left, top), (right, top), (right, bottom), (left, bottom)))


def box_points(box: Box) -> tuple[Point, ...]:
    """Give the four corners of a box."""
    left, top, right, bottom = box
    return (left, top), (right, top), (right, bottom), (left, bottom)


def _box_corners(box: Box) -> tuple[tuple[float, float, Point], ...]:
    """Give x and y of each corner of a box, with the corner across from it."""
    left, top, right, bottom = box
    return (
        (left, top, (right, bottom)),
        (right, top, (left, bottom)),
        (right, bottom, (left, top)),
        (left, bottom, (right, top)),
    )


def _spanned(one: Point, other: Point) -> Box:
    return min(one[0], other[0]), min(one[1], other[1]), max(one[0], other[0]), max(one[1], other[1])


def _is_inside(at: Point, corners: tuple[Point, ...]) -> bool:
    """Tell whether a point lies inside a figure, by how often a line from it leaves the figure."""
    inside = False
    for (x_1, y_1), (x_2, y_2) in zip(corners, (*corners[1:], corners[0]), strict=True):
        if (y_1 > at[1]) != (y_2 > at[1]) and at[0] < x_1 + (at[1] - y_1) * (x_2 - x_1) / (y_2 - y_1):
            inside = not inside
    return inside
