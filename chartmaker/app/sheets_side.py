"""The choices beside the pages: which sheets, which paper and how it lies, which heavier lines."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QFormLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.sheet_choices import HEAVY_LINES, PAPERS, SHEETS, SheetChoices
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from collections.abc import Mapping


class SheetsSide(QWidget):
    """Shows the choices, and tells when one is another."""

    changed = Signal()
    led = Signal(str)
    """The name of a sheet that is to be seen."""
    print_asked = Signal()
    file_asked = Signal()

    def __init__(self, choices: SheetChoices) -> None:
        super().__init__()
        self._choices = choices
        self._is_filling = False
        self.list = QListWidget()
        self.list.setAccessibleName(tr("Sheets to print"))
        self.list.setToolTip(tr("Tick what is printed; Enter or a double click shows it"))
        self.paper, self.lie, self.lines = QComboBox(), QComboBox(), QComboBox()
        self.printing = QPushButton(tr("Print…"))
        self.filing = QPushButton(tr("Save as PDF or pictures…"))
        self._lay_out()
        self._fill()
        self._connect()

    @property
    def choices(self) -> SheetChoices:
        """What is chosen."""
        return self._choices

    def show_counts(self, counts: Mapping[str, int]) -> None:
        """Tell how many pages each sheet takes that is printed."""
        self._is_filling = True
        for row, name in enumerate(SHEETS):
            item = self.list.item(row)
            count = counts.get(name, 0)
            title = sheet_title(name)
            told = tr("{0}  ·  1 page").format(title) if count == 1 else tr("{0}  ·  {1} pages").format(title, count)
            is_empty = not count and name in self._choices.sheets and bool(counts)
            item.setText(told if count else tr("{0}  ·  nothing on it").format(title) if is_empty else title)
        self._is_filling = False
        self.printing.setEnabled(bool(counts))
        self.filing.setEnabled(bool(counts))

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(8)
        label = QLabel(tr("&Sheets"))
        label.setBuddy(self.list)
        layout.addWidget(label)
        layout.addWidget(self.list, 1)
        form = QFormLayout()
        for text, box in ((tr("&Paper"), self.paper), (tr("&Lies"), self.lie), (tr("&Heavier lines"), self.lines)):
            box.setAccessibleName(text.replace("&", ""))
            form.addRow(text, box)
        layout.addLayout(form)
        layout.addSpacing(4)
        layout.addWidget(self.printing)
        layout.addWidget(self.filing)

    def _fill(self) -> None:
        self._is_filling = True
        for name in SHEETS:
            item = QListWidgetItem(sheet_title(name))
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            is_on = name in self._choices.sheets
            item.setCheckState(Qt.CheckState.Checked if is_on else Qt.CheckState.Unchecked)
            self.list.addItem(item)
        self.list.setMinimumHeight(self.list.sizeHintForRow(0) * len(SHEETS) + 8)
        for name in PAPERS:
            self.paper.addItem({"a4": tr("A4"), "letter": tr("Letter"), "a5": tr("A5")}[name], name)
        for text in (tr("upright"), tr("on its side")):
            self.lie.addItem(text)
        for text in (tr("every 5 and 10"), tr("every 10"), tr("none")):
            self.lines.addItem(text)
        self.paper.setCurrentIndex(PAPERS.index(self._choices.paper))
        self.lie.setCurrentIndex(int(self._choices.is_landscape))
        self.lines.setCurrentIndex(HEAVY_LINES.index(self._choices.heavy_lines))
        self._is_filling = False

    def _connect(self) -> None:
        self.list.itemChanged.connect(self._take)
        self.list.itemActivated.connect(lambda item: self.led.emit(SHEETS[self.list.row(item)]))
        for box in (self.paper, self.lie, self.lines):
            box.currentIndexChanged.connect(self._take)
        self.printing.clicked.connect(self.print_asked)
        self.filing.clicked.connect(self.file_asked)

    def _take(self) -> None:
        if self._is_filling:
            return
        rows = enumerate(SHEETS)
        ticked = tuple(name for row, name in rows if self.list.item(row).checkState() == Qt.CheckState.Checked)
        self._choices = replace(
            self._choices,
            sheets=ticked,
            paper=PAPERS[self.paper.currentIndex()],
            is_landscape=bool(self.lie.currentIndex()),
            heavy_lines=HEAVY_LINES[self.lines.currentIndex()],
        )
        self.changed.emit()


def sheet_title(name: str) -> str:
    """Give the name of a sheet as the window shows it."""
    return {
        "cover": tr("Cover"),
        "key": tr("Key"),
        "chart": tr("Chart in colour"),
        "chart-bw": tr("Chart in black and white"),
        "chart-large": tr("Chart in large print"),
        "rounds": tr("Written rounds"),
        "yarn": tr("Yarn"),
        "contrast": tr("Contrast"),
        "baths": tr("Bath cards"),
        "shopping": tr("Shopping list"),
    }[name]
