"""A small drawing of the finished hat from the side, to scale, with the bands' edges and its two measures."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import accumulate, pairwise

from chartmaker.appraisal import Appraisal
from chartmaker.model.units import METRIC, Units
from chartmaker.sheets.boxes import Box, Lines, Segment, Style, text_at
from chartmaker.sheets.flow import Block
from chartmaker.sheets.ink import ACCENT, BLACK, QUIET

LABEL = Style(7.5, ink=QUIET)
MEASURE = Style(8.5, bold=True, ink=ACCENT)
TALLEST_MM = 38.0
LABEL_MM = 12.0
"""Room at the right for the bands' numbers."""
LEADER_MM = 5.0
"""From the widest place to the numbers."""
CLOSEST_MM = 3.1
"""Labels of bands stand no closer than this: they move up …"""
FURTHEST_MM = 5.0
"""… by this at most, and are left out past it …"""
HIGHEST_LABEL_MM = 2.5
"""… and where they would stand above the drawing."""


@dataclass(frozen=True, slots=True)
class _Side:
    """The hat from the side, on paper."""

    radii: tuple[float, ...]
    """In mm, at the edge and at the top of each round."""
    heights: tuple[float, ...]
    """Above the edge, in mm, at the same places."""
    middle: float
    bottom: float

    def level(self, place: int) -> Segment:
        """Give the level line across the hat at one of the places."""
        y = self.bottom - self.heights[place]
        return self.middle - self.radii[place], y, self.middle + self.radii[place], y

    def radius_at(self, height: float) -> float:
        """Give the half width at the place that is nearest to a height."""
        place = min(range(len(self.heights)), key=lambda place: abs(self.heights[place] - height))
        return self.radii[place]

    def sides(self) -> Iterator[Segment]:
        """Walk both sides from the edge up."""
        for sign in (-1, 1):
            points = [
                (self.middle + sign * radius, self.bottom - height)
                for radius, height in zip(self.radii, self.heights, strict=True)
            ]
            for (x1, y1), (x2, y2) in pairwise(points):
                yield x1, y1, x2, y2


def hat_outline(appraisal: Appraisal, units: Units = METRIC, *, width: float, tallest: float = TALLEST_MM) -> Block:
    """Draw the outline of the worn hat, its cast-on edge at the bottom."""
    side = _side(appraisal, width, tallest)
    outline = (*side.sides(), side.level(0), side.level(-1))
    boxes: list[Box] = [Lines(outline, 0.45, BLACK), *_bands(appraisal, side, width)]
    y = side.bottom + 3.2
    boxes.append(Lines(((side.level(0)[0], y, side.level(0)[2], y),), 0.3, ACCENT))
    told = units.length.told
    measures = (f"{told(appraisal.circumference_cm)} round", f"{told(appraisal.height_cm)} high")
    for number, words in enumerate(measures):
        boxes.append(text_at(side.middle, y + 4.2 + 4.4 * number, words, MEASURE, align="middle", most=width - 2))
    return Block(y + 11.0, tuple(boxes))


def _side(appraisal: Appraisal, width: float, tallest: float) -> _Side:
    profile = appraisal.profile
    radii = _radii(appraisal)
    heights = (0.0, *accumulate(profile.rise_cm))
    scale = min((width - 2 * LABEL_MM) / (2 * max(radii)), tallest / max(heights[-1], 0.1))
    return _Side(
        radii=tuple(radius * scale for radius in radii),
        heights=tuple(height * scale for height in heights),
        middle=(width - LABEL_MM) / 2,
        bottom=heights[-1] * scale + 3.0,
    )


def _radii(appraisal: Appraisal) -> tuple[float, ...]:
    """Give the radius in cm at the edge and at the top of each round; in steps where rounds do not meet."""
    profile = appraisal.profile
    if all(appraisal.fabric.meets):
        return tuple(accumulate(profile.run_cm, initial=profile.radius_cm[0]))
    return profile.radius_cm[0], *profile.radius_cm


def _bands(appraisal: Appraisal, side: _Side, width: float) -> Iterator[Box]:
    """Give the line at the lower edge of each band, and each band's number, led to from its middle."""
    done, last_label = 0, side.bottom + CLOSEST_MM
    x = min(side.middle + max(side.radii) + LEADER_MM, width - LABEL_MM + 2)
    for number, band in enumerate(appraisal.design.bands, start=1):
        end = done + len(band.rounds)
        if done:
            yield Lines((side.level(done),), 0.18, QUIET)
        wanted = side.bottom - (side.heights[done] + side.heights[end]) / 2 + 1.0
        y = min(wanted, last_label - CLOSEST_MM)
        if wanted - y <= FURTHEST_MM and y >= HIGHEST_LABEL_MM:
            edge = side.middle + side.radius_at((side.heights[done] + side.heights[end]) / 2)
            yield Lines(((edge + 0.5, wanted - 1.0, x - 0.8, y - 1.0),), 0.12, QUIET)
            yield text_at(x, y, f"{number}", LABEL, most=LABEL_MM - 2)
            last_label = y
        done = end
