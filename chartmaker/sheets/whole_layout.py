"""The whole hat small: every stitch of every round as it goes round, beside each band the page of its chart."""

from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from itertools import groupby, pairwise

from chartmaker.appraisal import Appraisal
from chartmaker.knit.outline import chart_offsets, chart_width
from chartmaker.model.band import Band
from chartmaker.sheets.boxes import Box, Fills, Lines, Rectangle, Style, text_at
from chartmaker.sheets.chart_cells import Look
from chartmaker.sheets.chart_layout import band_title
from chartmaker.sheets.ink import QUIET, Ink, fill_of
from chartmaker.sheets.lines import MM_PER_PT
from chartmaker.sheets.paper import Frame

TITLE = Style(12.5, bold=True)
NOTE = Style(7.5, ink=QUIET)
LABEL = Style(7.5)
LABELS_MM, NARROW_LABELS_MM = 48.0, 42.0
"""Room at the right for the bands' names, on wide and on narrow pages."""
MOST_LABELS_MM = 90.0
NARROW_MM = 140.0
TITLE_MM = 12.0
BELOW_MM = 8.0
"""Between the drawing and what follows on its page."""
CLOSEST_MM = 3.4
"""Labels stand no closer than this."""
SPARE_MM = 4.0
"""By which labels may reach below the drawing."""
LEADER_MM = 4.0
"""Between the drawing and its labels."""
LARGEST_STITCH_MM = 2.4
GREYS = (1.0, 0.0, 0.55)
"""Ground, figure and third, where nothing is coloured."""


def whole_hat(appraisal: Appraisal, frame: Frame, look: Look, *, page_of: Mapping[int, int]) -> tuple[Box, ...]:
    """Draw the whole hat into a frame.

    Args:
        appraisal: what is drawn.
        frame: where.
        look: coloured by its shades; where no letter has one, figure is black and ground white.
        page_of: the page of each band's chart.
    """
    title = text_at(frame.left, frame.top + 5.2, "The whole hat", TITLE)
    words = f"{appraisal.cast_on_stitches} stitches, {len(appraisal.rounds)} rounds; right to left, from the edge up"
    beside = frame.left + title.width + 4
    note = text_at(beside, frame.top + 5.2, words, NOTE, most=frame.right - beside)
    room = Frame(frame.left, frame.top + TITLE_MM, frame.right, frame.bottom)
    return (title, note, *_Small(appraisal, look, _scale(appraisal, room), page_of).boxes())


def whole_height(appraisal: Appraisal, frame: Frame) -> float:
    """Give the height that the drawing takes, with the room below it."""
    room = Frame(frame.left, frame.top + TITLE_MM, frame.right, frame.bottom)
    return TITLE_MM + len(appraisal.rounds) * _scale(appraisal, room).height + BELOW_MM


@dataclass(frozen=True, slots=True)
class _Scale:
    """Where the small hat stands, and how large its stitches are."""

    left: float
    right: float
    top: float
    width: float
    height: float
    """Of one stitch."""
    labels: float


def _scale(appraisal: Appraisal, room: Frame) -> _Scale:
    design = appraisal.design
    widest = max(chart_width(band.rounds) * band.times for band in design.bands)
    ratio = design.gauge.round_height_cm / design.gauge.stitch_width_cm
    labels = LABELS_MM if room.width >= NARROW_MM else NARROW_LABELS_MM
    by_height = room.height / len(appraisal.rounds) / ratio
    width = min((room.width - labels) / widest, by_height, LARGEST_STITCH_MM, LARGEST_STITCH_MM / ratio)
    right = room.left + width * widest
    return _Scale(room.left, right, room.top, width, width * ratio, min(room.right - right, MOST_LABELS_MM))


@dataclass(frozen=True, slots=True)
class _Small:
    """Draws the hat, its bands from the edge up."""

    appraisal: Appraisal
    look: Look
    scale: _Scale
    page_of: Mapping[int, int]

    def boxes(self) -> Iterator[Box]:
        """Give the stitches of all bands as few fills, the lines between bands, and their names."""
        fills: dict[Ink, list[Rectangle]] = defaultdict(list)
        over: dict[Ink, list[Rectangle]] = defaultdict(list)
        done = 0
        for band in self.appraisal.design.bands:
            offsets = chart_offsets(band.rounds)
            for index, offset in enumerate(offsets):
                top = self._level(done + index + 1)
                for is_below, ink, rectangle in self._round(band, index, offset, top):
                    (fills if is_below else over)[ink].append(rectangle)
            done += len(band.rounds)
        for layer in (fills, over):
            yield from (Fills(tuple(found), ink) for ink, found in layer.items())
        yield from self._bands()

    def _level(self, rounds: int) -> float:
        """Give the height on the page above so many rounds."""
        return self.scale.top + (len(self.appraisal.rounds) - rounds) * self.scale.height

    def _round(self, band: Band, index: int, offset: int, top: float) -> Iterator[tuple[bool, Ink, Rectangle]]:
        """Give a round: its commonest ink under all of it, the others in runs over that."""
        inks = self._inks(band, index)
        common = Counter(inks).most_common(1)[0][0]
        wide, height = chart_width(band.rounds), self.scale.height
        runs = []
        start = 0
        for ink, group in groupby(inks):
            count = len(list(group))
            if ink != common:
                runs.append((start, count, ink))
            start += count
        if wide == len(inks):
            yield True, common, self._rectangle(0, wide * band.times, top, height)
        for section in range(band.times):
            first = section * wide + offset
            if wide != len(inks):
                yield True, common, self._rectangle(first, len(inks), top, height)
            for start, count, ink in runs:
                yield False, ink, self._rectangle(first + start, count, top, height)

    def _rectangle(self, start: int, count: int, top: float, height: float) -> Rectangle:
        width = self.scale.width
        return self.scale.right - (start + count) * width, top, count * width, height

    def _inks(self, band: Band, index: int) -> list[Ink]:
        line = band.rounds[index]
        if not any(self.look.shades.values()):
            return [(grey, grey, grey) for grey in (GREYS[part] for part in line.cells)]
        return [fill_of(self.look.shades[line.letter_of(stitch)]) for stitch in range(len(line))]

    def _bands(self) -> Iterator[Box]:
        """Give a line below each band and at the top, and beside its middle its name and the page of its chart."""
        scale, done = self.scale, 0
        edges = [self._level(0)]
        for band in self.appraisal.design.bands:
            done += len(band.rounds)
            edges.append(self._level(done))
        yield Lines(tuple((scale.left, y, scale.right, y) for y in edges), 0.2, QUIET)
        middles = [(below + above) / 2 for below, above in pairwise(edges)]
        room = int((edges[0] - scale.top + SPARE_MM) / CLOSEST_MM) + 1
        tallest = sorted(range(len(middles)), key=lambda number: edges[number + 1] - edges[number])[:room]
        named = sorted(tallest, reverse=True)
        for number, y in zip(named, _apart([middles[number] for number in named], scale.top, edges[0]), strict=True):
            yield from self._label(number, middles[number], y)

    def _label(self, number: int, wanted: float, y: float) -> Iterator[Box]:
        scale = self.scale
        x, end = scale.right + LEADER_MM, scale.right + scale.labels
        baseline = y + 0.35 * LABEL.size_pt * MM_PER_PT
        yield Lines(((scale.right + 0.8, wanted, x - 0.8, y),), 0.15, QUIET)
        page = text_at(end, baseline, f"p {self.page_of[number]}", NOTE, align="right")
        yield text_at(x, baseline, band_title(self.appraisal, number), LABEL, most=page.x - x - 2)
        yield page


def _apart(wanted: list[float], top: float, bottom: float) -> list[float]:
    """Move places, from the top down, as little as keeps them apart, between the top and a little below the bottom."""
    placed: list[float] = []
    for y in wanted:
        placed.append(max(y, placed[-1] + CLOSEST_MM if placed else top))
    limit = bottom + SPARE_MM
    for index in reversed(range(len(placed))):
        placed[index] = min(placed[index], limit)
        limit = placed[index] - CLOSEST_MM
    return placed
