"""What is at hand for dyeing, written down where it is planned with: dyestuffs, undyed yarn, pots, and habits."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QFormLayout, QVBoxLayout, QWidget

from chartmaker.app.bath_lines import caution_label, heading, quiet
from chartmaker.app.store_table import Column, StoreTable
from chartmaker.app.thing_form import NumberLine
from chartmaker.app.words import tr
from chartmaker.dye.cautions import cautions_at
from chartmaker.model.dyeing import STATES, DyeingHabits, Dyestuff, Pot, Undyed
from chartmaker.model.palette import Palette

if TYPE_CHECKING:
    from collections.abc import Iterable

    from chartmaker.app.baths_desk import BathsDesk


class StockPane(QWidget):
    """Each cell that was written in is one step of the palette's history; what cannot be is told and not taken."""

    def __init__(self, desk: BathsDesk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.dyestuffs = StoreTable(
            tr("Dyestuffs at hand"),
            (
                Column(tr("dyestuff")),
                Column(tr("part")),
                Column(tr("weighed"), choices=STATES),
                Column(tr("at hand, g"), is_number=True),
                Column(tr("100 g dry to, g"), is_number=True),
                Column(tr("identified by")),
                Column(tr("notes")),
            ),
            wide=6,
        )
        self.undyed = StoreTable(
            tr("Undyed yarn at hand"),
            (Column(tr("yarn"), is_fixed=True), Column(tr("at hand, g"), is_number=True)),
            wide=0,
            grows=False,
        )
        self.pots = StoreTable(
            tr("Pots"),
            (Column(tr("pot")), Column(tr("liquor it may hold, L"), is_number=True), Column(tr("kept for"))),
            wide=0,
        )
        self.habits = {name: NumberLine(None) for name in _habit_labels()}
        self.trouble = caution_label("")
        self._lay_out()
        for table in (self.dyestuffs, self.undyed, self.pots):
            table.written.connect(self._take)
        for line in self.habits.values():
            line.editingFinished.connect(self._take)
        self.refresh()

    def refresh(self) -> None:
        """Follow the palette."""
        palette = self._desk.open_palette.palette
        if not self._is_shown(palette):
            self.dyestuffs.show_rows([_dyestuff_row(each) for each in palette.dyestuffs])
            self.undyed.show_rows([(yarn.name, _figure(palette.undyed_g(yarn.id))) for yarn in palette.yarns])
            self.pots.show_rows([(each.name, _figure(each.litres), each.kept_for) for each in palette.pots])
            for name, line in self.habits.items():
                line.setText(_figure(getattr(palette.dyeing, name)))
        self.undyed.setVisible(bool(palette.yarns))
        self._no_yarn.setVisible(not palette.yarns)
        self.trouble.hide()

    def stock(self) -> Palette:
        """Give what stands in the tables. Raises ValueError, with a sentence, where something cannot be."""
        yarns = self._desk.open_palette.palette.yarns
        grams = [_number(row[1], tr("at hand, g")) or 0.0 for row in self.undyed.rows()]
        return Palette(
            dyestuffs=tuple(map(_dyestuff, self.dyestuffs.rows())),
            yarns=yarns,
            undyed=tuple(
                Undyed(yarn=yarn.id, on_hand_g=there) for yarn, there in zip(yarns, grams, strict=False) if there
            ),
            pots=tuple(map(_pot, self.pots.rows())),
            dyeing=DyeingHabits(**{name: line.required() for name, line in self.habits.items()}),
        )

    def _take(self) -> None:
        try:
            wrong = self._desk.change_stock(self.stock())
        except ValueError as refusal:
            wrong = str(refusal)
        self.trouble.setText(f"!  {wrong[:1].upper()}{wrong[1:]}")
        self.trouble.setVisible(bool(wrong))
        if not wrong:
            self._grow()

    def _grow(self) -> None:
        """Keep one empty row below where things are added."""
        for table in (self.dyestuffs, self.pots):
            rows = table.rows()
            if len(rows) == table.rowCount():
                table.show_rows(rows)

    def _is_shown(self, palette: Palette) -> bool:
        """Tell whether the tables say already what the palette holds; then nobody who writes there is disturbed."""
        if self.undyed.rowCount() != len(palette.yarns):
            return False
        try:
            stock = self.stock()
        except ValueError:
            return False
        held = palette.dyestuffs, tuple(each for each in palette.undyed if each.on_hand_g), palette.pots, palette.dyeing
        return (stock.dyestuffs, stock.undyed, stock.pots, stock.dyeing) == held

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 8, 0)
        layout.setSpacing(6)
        layout.addWidget(self.trouble)
        layout.addWidget(heading(tr("Dyestuffs")))
        layout.addWidget(self.dyestuffs)
        for caution in cautions_at("gathering"):
            layout.addWidget(caution_label(tr(caution.short)))
        layout.addWidget(heading(tr("Undyed yarn")))
        layout.addWidget(self.undyed)
        self._no_yarn = quiet(tr("The palette has no undyed yarn yet; the Lots page makes one."))
        layout.addWidget(self._no_yarn)
        layout.addWidget(heading(tr("Pots, none of which goes back to the kitchen")))
        layout.addWidget(self.pots)
        layout.addWidget(quiet(tr("A pot that is kept for iron or copper serves nothing else.")))
        layout.addWidget(heading(tr("How fibre is weighed out")))
        form = QFormLayout()
        form.setHorizontalSpacing(14)
        form.setVerticalSpacing(4)
        for name, label in _habit_labels().items():
            self.habits[name].setAccessibleName(label)
            form.addRow(label[:1].upper() + label[1:], self.habits[name])
        layout.addLayout(form)
        told_of = tr(
            "Mill-spun yarn loses 1 to 5 % in scouring (from memory), raw fleece about 25 % (one sample). "
            "A sample of 2 g and 2 % for handling are common practice, no source."
        )
        layout.addWidget(quiet(told_of))
        layout.addStretch(1)


def _habit_labels() -> dict[str, str]:
    return {
        "skein_g": tr("weight of a skein, g (0: any)"),
        "sample_g": tr("sample kept of each load, g"),
        "scouring_loss_percent": tr("lost in scouring, %"),
        "handling_loss_percent": tr("lost in handling, %"),
    }


def _dyestuff_row(each: Dyestuff) -> tuple[str, ...]:
    dries_to = "" if each.dries_to_percent is None else _figure(each.dries_to_percent)
    return each.name, each.part, each.state, _figure(each.on_hand_g), dries_to, each.identified_by, each.notes


def _dyestuff(row: Iterable[str]) -> Dyestuff:
    name, part, state, on_hand, dries_to, identified_by, notes = row
    return Dyestuff(
        name=name,
        part=part,
        state=state,
        on_hand_g=_number(on_hand, tr("at hand, g")) or 0.0,
        dries_to_percent=_number(dries_to, tr("100 g dry to, g")),
        identified_by=identified_by,
        notes=notes,
    )


def _pot(row: Iterable[str]) -> Pot:
    name, litres, kept_for = row
    held = _number(litres, tr("liquor it may hold, L"))
    if held is None:
        raise ValueError(tr("write down how much liquor {0} may hold").format(name))
    return Pot(name=name, litres=held, kept_for=kept_for)


def _number(text: str, what: str) -> float | None:
    if not text:
        return None
    try:
        return float(text.replace(",", "."))
    except ValueError:
        raise ValueError(tr("{0}: {1} is not a number").format(what, text)) from None


def _figure(value: float) -> str:
    return f"{value:.12g}"
