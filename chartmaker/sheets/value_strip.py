"""The grey strip: letters standing at their value on a scale from black to white, shade and grey side by side."""

from chartmaker.appraisal import Appraisal, LetterAppraisal
from chartmaker.shade.lot_shade import LotShade
from chartmaker.sheets.boxes import Box, Fills, Lines, Segment, Style, outline_of, text_at
from chartmaker.sheets.flow import Block
from chartmaker.sheets.ink import BLACK, HAIRLINE, QUIET, fill_of, grey_fill

STEPS = 50
"""Greys of the scale, two units of L* each."""
WIDEST_UNIT_MM = 18.0
"""Room for one letter; less where there are many."""
LABEL_MM, LEADER_MM, SCALE_MM = 5.0, 7.5, 6.0
"""Heights: of the letters' names, of the leaders, of the scale."""
NUMBERS = Style(7.5, ink=QUIET)
CLEAR_MM = 1.2
"""Between numbers, at least."""


def value_strip(appraisal: Appraisal, *, width: float) -> Block:
    """Lay out the strip; letters without a shade are left out."""
    shaded = [(item, item.shade) for item in appraisal.letters if item.shade]
    shaded.sort(key=lambda pair: pair[1].value)
    unit = min(WIDEST_UNIT_MM, width / max(len(shaded), 1))
    centres = _spread([shade.value / 100 * width for _, shade in shaded], unit=unit, width=width)
    chips_mm = unit * 0.42
    axis = LABEL_MM + chips_mm + LEADER_MM
    boxes: list[Box] = []
    leaders: list[Segment] = []
    for (item, shade), centre in zip(shaded, centres, strict=True):
        boxes.extend(_letter(item, shade, centre, chips_mm, unit))
        middle = min(max(shade.value, 0.0), 100.0) / 100 * width
        leaders.extend(_leader(centre, middle, top=LABEL_MM + chips_mm, axis=axis))
    boxes.extend(_scale(axis, width))
    if leaders:
        boxes.append(Lines(tuple(leaders), 0.2, BLACK))
    return Block(axis + SCALE_MM + 7.5, tuple(boxes))


def _leader(centre: float, middle: float, *, top: float, axis: float) -> tuple[Segment, ...]:
    """Lead from a letter down to its place on the scale."""
    return (
        (centre, top, centre, top + 1.5),
        (centre, top + 1.5, middle, axis - 2),
        (middle, axis - 2, middle, axis + SCALE_MM),
    )


def _spread(wanted: list[float], *, unit: float, width: float) -> list[float]:
    """Move rising places apart to at least a unit, each as near to where it belongs as the others let it."""
    groups: list[list[float]] = []
    for place in wanted:
        groups.append([place])
        while len(groups) > 1 and _left(groups[-2], unit, width) + len(groups[-2]) * unit > _left(
            groups[-1], unit, width
        ):
            groups[-2:] = [groups[-2] + groups[-1]]
    return [_left(group, unit, width) + (number + 0.5) * unit for group in groups for number in range(len(group))]


def _left(group: list[float], unit: float, width: float) -> float:
    """Give the left end of letters that stand shoulder to shoulder, centred on their values, inside the strip."""
    centred = sum(group) / len(group) - len(group) * unit / 2
    return min(max(centred, 0.0), width - len(group) * unit)


def _letter(item: LetterAppraisal, shade: LotShade, centre: float, side: float, unit: float) -> list[Box]:
    size = min(9.0, unit * 0.8)
    name = f"{item.letter} {shade.value:.0f}" if unit > 9 else item.letter
    squares = ((centre - side, LABEL_MM, side, side), (centre, LABEL_MM, side, side))
    fills = (fill_of(shade), grey_fill(shade.value))
    boxes: list[Box] = [Fills((square,), fill) for square, fill in zip(squares, fills, strict=True)]
    boxes += [outline_of(square, width=0.18, ink=HAIRLINE) for square in squares]
    return [*boxes, text_at(centre, LABEL_MM - 1.4, name, Style(size, bold=True), align="middle")]


def _scale(top: float, width: float) -> list[Box]:
    step = width / STEPS
    boxes: list[Box] = [
        Fills(((number * step, top, step, SCALE_MM),), grey_fill((number + 0.5) * 100 / STEPS))
        for number in range(STEPS)
    ]
    boxes.append(outline_of((0, top, width, SCALE_MM), width=0.18, ink=HAIRLINE))
    baseline = top + SCALE_MM + 3.8
    black, white = (
        text_at(0, baseline, "0 black", NUMBERS),
        text_at(width, baseline, "white 100", NUMBERS, align="right"),
    )
    for ten in range(10, 100, 10):
        number = text_at(ten / 100 * width, baseline, str(ten), NUMBERS, align="middle")
        clear = number.width / 2 + CLEAR_MM
        if black.width + clear <= ten / 100 * width <= width - white.width - clear:
            boxes.append(number)
    return [*boxes, black, white]
