"""The stove card: one bath on one page, its figures to be read from two metres, with hardly a word more."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from chartmaker.dye.cautions import GENERAL, cautions_of, metal_in
from chartmaker.dye.dye_plan import BathCard, DyePlan, Weighed
from chartmaker.dye.plan import Load
from chartmaker.model.palette import Bath
from chartmaker.model.units import METRIC, Units
from chartmaker.sheets.boxes import Box, Lines, Marks, Style, moved, text_at
from chartmaker.sheets.flow import Block, flowed_into, kept, space
from chartmaker.sheets.ink import ACCENT, BLACK, QUIET
from chartmaker.sheets.lines import MM_PER_PT, width_mm, wrapped
from chartmaker.sheets.marks import TICK_BOX, WARNING
from chartmaker.sheets.numbers import one_place
from chartmaker.sheets.paper import Frame

FIGURE_PT, NAME_PT, TITLE_SCALE = 24.0, 18.0, 1.1
"""At least; a card with little on it is set larger. 24 pt is an x-height of 4.3 mm: at two metres seven minutes of arc,
where the finest letters that normal sight reads take five (Snellen)."""
WIDE_SHARE, GUTTER_MM = 1.2, 9.0
"""Pages wider than this share of their height have two columns."""
MOST_NAME_LINES, MOST_DETAIL_LINES, MOST_NOTE_LINES, MOST_CAUTION_LINES = 3, 6, 6, 20
"""Cautions are never cut."""
DETAIL_PT = 11.5
"""Of the bath's name."""
ID_SHARE, SMALLEST_ID = 0.3, 0.7
"""How much of the width it has, and how much smaller it is set before it is cut off."""
TICK_EM = 0.62
"""Side of the box to tick, in sizes of the figures."""
POT_PER_LIQUOR = 1.5
"""Volume of a pot to that of its liquor, so that fibre moves and nothing boils over: common practice, no source."""
LABELS_FIRST = "Labels, safety data sheets and the rules of the place come first."


@dataclass(frozen=True, slots=True, kw_only=True)
class Setting:
    """How large a card is set."""

    scale: float = 1.0
    detail_pt: float = 11.5
    """Size of what stands below the names, before the scale."""
    gap_em: float = 0.28
    """Below each row, in sizes of the figures."""

    @property
    def figure_pt(self) -> float:
        """Size of the figures."""
        return FIGURE_PT * self.scale

    @property
    def name(self) -> Style:
        """How names look."""
        return Style(NAME_PT * self.scale, bold=True)

    @property
    def detail(self) -> Style:
        """How details look."""
        return Style(self.detail_pt * self.scale, ink=QUIET)

    @property
    def warned(self) -> Style:
        """How cautions look."""
        return Style(self.detail_pt * self.scale, bold=True)


SETTINGS = (
    *(Setting(scale=scale) for scale in (1.5, 1.4, 1.3, 1.2, 1.1, 1.0)),
    Setting(detail_pt=10.5, gap_em=0.16),
    Setting(detail_pt=9.5, gap_em=0.08),
)
"""Tried in this order: what is short is set larger; a full card has smaller details, but no smaller figures."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One thing to do at the pot."""

    figure: str
    name: str
    details: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    is_ticked: bool = True


def card_pages(card: BathCard, plan: DyePlan, units: Units, *, frame: Frame) -> list[tuple[Box, ...]]:
    """Lay out a card as large as one page takes it; a wide page has two columns.

    What even the closest setting has no room for goes to another page; what holds at every pot then stands first.
    """
    lines = list(lines_of(card, plan, units))
    for setting in SETTINGS:
        pages = _pages(card.plan.bath, lines, frame, setting)
        if len(pages) == 1:
            return pages
    return _pages(card.plan.bath, lines, frame, Setting(), is_long=True)


def _pages(
    bath: Bath, lines: Sequence[Line], frame: Frame, setting: Setting, *, is_long: bool = False
) -> list[tuple[Box, ...]]:
    count = 2 if frame.width > WIDE_SHARE * frame.height else 1
    width = (frame.width - (count - 1) * GUTTER_MM) / count
    title, again = _title(bath, frame.width, setting), _title_again(bath, frame.width)

    def columns() -> Iterator[Frame]:
        top = frame.top + title.height
        while True:
            for place in range(count):
                left = frame.left + place * (width + GUTTER_MM)
                yield Frame(left=left, top=top, right=left + width, bottom=frame.bottom)
            top = frame.top + again.height

    parts = flowed_into(
        _blocks(bath, lines, width, setting, is_long=is_long), columns(), most=frame.height - again.height
    )
    pages = [
        tuple(box for part in parts[start : start + count] for box in part) for start in range(0, len(parts), count)
    ]
    tops = [title, *(again for _ in pages[1:])]
    return [(*moved(top.boxes, frame.left, frame.top), *boxes) for top, boxes in zip(tops, pages, strict=True)]


def dyestuff_name(bath: Bath) -> str:
    """Tell what a bath is of: "madder root (dry)"."""
    parts = [bath.dyestuff, bath.part, f"({bath.state})"]
    return " ".join(part for part in parts if part.strip())


def _blocks(bath: Bath, lines: Sequence[Line], width: float, setting: Setting, *, is_long: bool) -> list[Block]:
    column = max(width_mm(line.figure, size_pt=setting.figure_pt, bold=True) for line in lines)
    always = list(_always(width, setting))
    blocks = [*always[1:], space(2.0)] if is_long else []
    for line in lines:
        blocks += _row(line, column=min(column, 0.45 * width), width=width, setting=setting)
    if bath.notes.strip():
        style = Style(setting.detail.size_pt)
        blocks += [space(1.0), *_words(f"Notes: {bath.notes}", width, style, MOST_NOTE_LINES)]
    return blocks if is_long else [*blocks, *always]


def _title(bath: Bath, width: float, setting: Setting) -> Block:
    """Give the dyestuff, smaller where it is long but never smaller than the figures; and which bath it is."""
    called = f"bath {bath.id}"
    fitting = 0.99 * ID_SHARE * width / width_mm(called, size_pt=DETAIL_PT)
    style = Style(DETAIL_PT * min(1.0, max(SMALLEST_ID, fitting)), ink=QUIET)
    name = text_at(width, 0, called, style, align="right", most=ID_SHARE * width)
    words, room = dyestuff_name(bath), name.x - 4
    wanted = TITLE_SCALE * setting.figure_pt
    size = max(FIGURE_PT, min(wanted, wanted * 0.99 * room / width_mm(words, size_pt=wanted, bold=True)))
    title, height = Style(size, bold=True), size * MM_PER_PT
    lines = _set(words, room, title, MOST_NAME_LINES)
    boxes: list[Box] = [
        text_at(0, (1 + 1.1 * place) * height, line, title, most=room) for place, line in enumerate(lines)
    ]
    baseline = (1 + 1.1 * (len(lines) - 1)) * height
    y = baseline + 0.34 * height
    boxes += [name.moved(0, baseline), Lines(((0, y, width, y),), 0.8, ACCENT)]
    return Block(y + 0.3 * height, tuple(boxes), keeps_next=True)


def _title_again(bath: Bath, width: float) -> Block:
    """Say at the top of a card's further pages which bath they belong to."""
    em = DETAIL_PT * MM_PER_PT
    words = f"{dyestuff_name(bath)}, bath {bath.id}, continued"
    title = text_at(0, em, words, Style(DETAIL_PT, bold=True), most=width)
    return Block(2.0 * em, (title, Lines(((0, 1.4 * em, width, 1.4 * em),), 0.8, ACCENT)))


def lines_of(card: BathCard, plan: DyePlan, units: Units = METRIC) -> Iterator[Line]:
    """Give what is done at the pot, in its order."""
    bath = card.plan.bath
    is_alone = len(card.plan.loads) == 1
    for load in card.plan.loads:
        yield _fibre(load, plan, units, is_alone=is_alone)
    mordants = len(card.plan.mordants)
    for weighed in card.weighed[:mordants]:
        yield _weighed(weighed, (*_when_in(weighed), *_shared(card, weighed)))
    if card.plan.is_going_on:
        yield Line(figure="liquor", name="of the loads before, no more dyestuff", is_ticked=False)
    else:
        yield Line(figure=f"{one_place(card.plan.dyestuff_g)} g", name=f"{bath.state} {_plain(bath)}")
    pot = f"in a pot of at least {one_place(POT_PER_LIQUOR * card.plan.water_l)} l"
    yield Line(figure=f"{one_place(card.plan.water_l)} l", name="water", details=(pot,))
    for weighed, advice in zip(card.weighed[mordants:], card.assists, strict=True):
        yield _weighed(weighed, (advice.text,))
    yield from _heat(bath, len(card.plan.loads), units)


def _plain(bath: Bath) -> str:
    return " ".join(part for part in (bath.dyestuff, bath.part) if part.strip())


def _fibre(load: Load, plan: DyePlan, units: Units, *, is_alone: bool) -> Line:
    names = []
    for lot_id, grams in load.lots:
        lot = plan.palette.lot(lot_id)
        names.append(f"{lot.name if lot else lot_id}, short by {_of_yarn(grams, units)}")
    skeins = f" in {load.skeins} skein{'s' * (load.skeins != 1)}" if load.skeins else ""
    details = tuple(f"for {name}" for name in names) or ("goes to stock, and leads to the next load",)
    if units is not METRIC:
        details = (units.weight.told(load.fibre_g), *details)
    name = f"fibre{skeins}" if is_alone else f"fibre{skeins}, load {load.load}"
    return Line(figure=f"{one_place(load.fibre_g)} g", name=name, details=details)


def _of_yarn(grams: float, units: Units) -> str:
    """Tell a weight of yarn in grams, as all of a card is, and in ounces beside them where the yarn is told so."""
    written = f"{one_place(grams)} g"
    return written if units is METRIC else f"{written} ({units.weight.told(grams)})"


def _when_in(weighed: Weighed) -> tuple[str, ...]:
    """Say of a metal that it goes in last: it stands among the mordants, which go before."""
    metal = metal_in(weighed.name)
    return (f"after the dyeing, load by load, in a pot kept for {metal}",) if metal else ()


def _shared(card: BathCard, weighed: Weighed) -> tuple[str, ...]:
    """Say where a mordant is weighed for the fibre of other baths too."""
    for each in card.mordantings:
        total = next((part.grams for part in each.portions if part.name.casefold() == weighed.name.casefold()), None)
        others = [bath for bath, _ in each.baths if bath != card.plan.bath.id]
        if total is not None and others:
            return (f"mordanted together with {', '.join(others)}: {one_place(total)} g for all",)
    return ()


def _weighed(weighed: Weighed, details: Sequence[str]) -> Line:
    helps = []
    if weighed.spoons:
        helps.append(f"{weighed.spoons.text.split(' (')[0]}; a scale is better")
    if weighed.other:
        helps.append(weighed.other.text)
    return Line(
        figure=f"{one_place(weighed.grams)} g",
        name=weighed.name,
        details=(*details, *helps),
        cautions=tuple(dict.fromkeys(each.short for each in cautions_of(weighed.name))),
    )


def _heat(bath: Bath, loads: int, units: Units) -> Iterator[Line]:
    each = "each load" if loads > 1 else ""
    if bath.hottest_c is not None:
        yield Line(
            figure=units.heat.brief(bath.hottest_c),
            name="at the hottest",
            details=() if units is METRIC else (METRIC.heat.brief(bath.hottest_c),),
            is_ticked=False,
        )
    if bath.minutes is not None:
        yield Line(figure=f"{bath.minutes:g} min", name=each or "in the bath", is_ticked=False)
    if bath.ph_start is not None or bath.ph_end is not None:
        figure = f"pH {bath.ph_start if bath.ph_start is not None else bath.ph_end:g}"
        is_both = bath.ph_start is not None and bath.ph_end is not None
        name = f"at the start, {bath.ph_end:g} at the end" if is_both else _when(bath)
        yield Line(figure=figure, name=name, is_ticked=False)


def _when(bath: Bath) -> str:
    return "at the start" if bath.ph_start is not None else "at the end"


def _row(line: Line, *, column: float, width: float, setting: Setting) -> list[Block]:
    """Set figure and name beside each other, the details below the name; together, where a page holds them."""
    size = setting.figure_pt
    em = size * MM_PER_PT
    tick, x = TICK_EM * em, 1.1 * em + column + 0.45 * em
    name_style, detail = setting.name, setting.detail
    baseline = 0.92 * em
    boxes: list[Box] = [
        text_at(1.1 * em + column, baseline, line.figure, Style(size, bold=True), align="right", most=column)
    ]
    if line.is_ticked:
        boxes.append(Marks(TICK_BOX, ((tick / 2 + 0.3, baseline - 0.34 * em),), tick, BLACK))
    names = _set(line.name, width - x, name_style, MOST_NAME_LINES)
    step = 1.15 * name_style.size_pt * MM_PER_PT
    boxes += [text_at(x, baseline + place * step, words, name_style) for place, words in enumerate(names)]
    blocks = [Block(1.12 * em + (len(names) - 1) * step, tuple(boxes), keeps_next=True)]
    for words in line.details:
        blocks += [block_moved(block, x) for block in _words(words, width - x, detail, MOST_DETAIL_LINES)]
    for words in line.cautions:
        blocks += warned(words, x, width, setting.warned)
    return kept([*blocks, Block(setting.gap_em * em)])


def block_moved(block: Block, dx: float) -> Block:
    """Give a block further right."""
    return Block(block.height, tuple(box.moved(dx, 0.0) for box in block.boxes))


def warned(words: str, x: float, width: float, style: Style) -> list[Block]:
    """Give a caution at the very line that it belongs to, with its sign."""
    em = style.size_pt * MM_PER_PT
    blocks = [
        block_moved(block, x + 1.5 * em) for block in _words(words, width - x - 1.5 * em, style, MOST_CAUTION_LINES)
    ]
    sign = Marks(WARNING, ((x + 0.5 * em, 0.62 * em),), 1.1 * em, BLACK)
    return [Block(blocks[0].height, (sign, *blocks[0].boxes)), *blocks[1:]]


def _words(text: str, width: float, style: Style, most_lines: int) -> list[Block]:
    height = 1.25 * style.size_pt * MM_PER_PT
    lines = _set(text, width, style, most_lines)
    return [Block(height, (text_at(0, 0.76 * height, line, style),)) for line in lines]


def _set(text: str, width: float, style: Style, most_lines: int) -> tuple[str, ...]:
    return wrapped(text, most_mm=width, size_pt=style.size_pt, bold=style.bold, most_lines=most_lines)


def _always(width: float, setting: Setting) -> Iterator[Block]:
    """Give what holds at every pot, in a few words."""
    style = setting.warned
    em = style.size_pt * MM_PER_PT
    places = ("every bath", "powder", "hot pot")
    words = " ".join(each.short for each in GENERAL if each.place in places)
    yield Block(1.2 * em, (Lines(((0, 0.4 * em, width, 0.4 * em),), 0.5, ACCENT),), keeps_next=True)
    yield from kept([*warned(words, 0.0, width, style), *warned(LABELS_FIRST, 0.0, width, style)])
