"""A lot's figures and its recipe as rows of words and numbers; two recipes side by side, what differs marked."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QSizePolicy, QWidget

from chartmaker.app.words import number, tr
from chartmaker.shade.lab import lch_of_lab

if TYPE_CHECKING:
    from collections.abc import Sequence

    from chartmaker.app.lots_lines import LotLine
    from chartmaker.model.palette import Bath
    from chartmaker.model.units import Units


class FiguresGrid(QWidget):
    """Rows of a word and one or two texts; a row that differs has a mark before it and stands in bold."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(12)
        self._grid.setVerticalSpacing(3)
        self.rows: tuple[tuple[str, ...], ...] = ()

    def show_rows(self, rows: Sequence[tuple[str, ...]], *, marked: Sequence[int] = ()) -> None:
        """Show these rows in place of what is there."""
        if tuple(rows) == self.rows:
            return
        self.rows = tuple(rows)
        while (item := self._grid.takeAt(0)) is not None:
            widget = item.widget()
            if widget:
                widget.hide()
                widget.deleteLater()
        for line, row in enumerate(rows):
            for column, text in enumerate(row):
                is_marked = line in marked
                label = QLabel(f"≠ {text}" if is_marked and column == 0 else text)
                label.setTextFormat(Qt.TextFormat.PlainText)
                label.setWordWrap(column > 0)
                label.setAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
                if column:
                    label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
                font = label.font()
                font.setBold(is_marked)
                label.setFont(font)
                self._grid.addWidget(label, line, column)
        for column in range(1, max(map(len, rows), default=1)):
            self._grid.setColumnStretch(column, 1)


def figure_rows(line: LotLine) -> list[tuple[str, str]]:
    """Give a lot's measured figures; those of a planned one say that they are predicted."""
    shade = line.shade
    if shade is None:
        return [(tr("shade"), line.basis), (tr("on hand"), line.on_hand)]
    chroma, hue = lch_of_lab(shade.lab).tolist()[1:]
    spread = tr(", assumed") if shade.has_assumed_spread else ""
    l_dev, a_dev, b_dev = (number(part, 1) for part in shade.deviation)
    rows = [
        (tr("value L*"), f"{number(shade.value, 1)} ± {l_dev}{spread}"),
        (tr("a*, b*"), f"{number(shade.lab[1], 1)} ± {a_dev}, {number(shade.lab[2], 1)} ± {b_dev}"),
        (tr("chroma C*, hue h"), f"{number(chroma, 1)}, {number(hue)}°"),
        (tr("rests on"), line.basis + (tr(", adapted") if shade.is_adapted else "")),
    ]
    if shade.readings > 1:
        rows.append((tr("scatter, MCDM"), number(shade.mcdm, 2)))
    if shade.is_out_of_gamut:
        rows.append((tr("screen"), tr("beyond what it shows: clipped")))
    rows.append((tr("on hand"), line.on_hand))
    if line.lot.dyed_on:
        rows.append((tr("dyed on"), line.lot.dyed_on.isoformat()))
    return rows


def recipe_rows(bath: Bath | None, load: int, units: Units) -> list[tuple[str, str]]:
    """Give a bath's recipe; nothing without one. Shares of the fibre stay in grams, as scales at the pot show."""
    if bath is None:
        return []
    assists = [tr("{0} {1} g to 100 g").format(each.name, f"{each.grams:g}") for each in bath.assists]
    rows = [
        (tr("dyestuff"), f"{bath.dyestuff} {bath.part}".strip() + f", {tr(bath.state)}"),
        (tr("load"), str(load)),
        (tr("ratio"), tr("{0} g to 1 g of fibre").format(f"{bath.ratio:g}")),
        (tr("mordants"), ", ".join(f"{each.name} {each.percent_wof:g} %" for each in bath.mordants) or "–"),
        (tr("assists"), ", ".join(assists) or "–"),
        (tr("liquor"), tr("{0} L to 100 g").format(f"{bath.liquor_l_per_100g:g}")),
    ]
    if bath.ph_start is not None or bath.ph_end is not None:
        rows.append((tr("pH"), f"{_given(bath.ph_start)} – {_given(bath.ph_end)}"))
    if bath.hottest_c is not None or bath.minutes is not None:
        heat = tr("? degrees") if bath.hottest_c is None else units.heat.brief(bath.hottest_c)
        rows.append((tr("heat"), tr("{0}, {1} min").format(heat, _given(bath.minutes))))
    return rows


def recipes_side_by_side(first: LotLine, second: LotLine) -> tuple[list[tuple[str, str, str]], list[int]]:
    """Give both recipes row by row, and which rows differ."""
    left, right = (dict(recipe_rows(line.bath, line.load, line.units)) for line in (first, second))
    names = list(dict.fromkeys((*left, *right)))
    rows = [(name, left.get(name, "–"), right.get(name, "–")) for name in names]
    return rows, [number for number, row in enumerate(rows) if row[1] != row[2]]


def _given(value: float | None) -> str:
    return "?" if value is None else f"{value:g}"
