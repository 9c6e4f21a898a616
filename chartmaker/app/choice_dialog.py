"""A dialog in which one row of a table is chosen, and what to do with it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QDateTime, QLocale, Qt
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QLabel, QVBoxLayout, QWidget

from chartmaker.app.table import Cell, ReadingTable

if TYPE_CHECKING:
    import datetime as dt
    from collections.abc import Mapping, Sequence


class ChoiceDialog(QDialog):
    """One sentence, the rows, and a button for each thing to do; the last button is Escape's too."""

    def __init__(
        self,
        title: str,
        sentence: str,
        *,
        columns: Mapping[str, Sequence[str]],
        buttons: Mapping[str, str],
        parent: QWidget | None = None,
    ) -> None:
        """Take the columns as heading and texts, and the buttons as answer and text; the first button is Enter's."""
        super().__init__(parent)
        self.setWindowTitle(title)
        self.resize(660, 300)
        self.answer = self._last = tuple(buttons)[-1]
        label = QLabel(sentence)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setWordWrap(True)
        self.table = ReadingTable(tuple(columns), wide=1, name=title)
        self.table.show_rows([[Cell(text) for text in row] for row in zip(*columns.values(), strict=True)])
        self.table.setCurrentCell(0, 0)
        self.buttons = QDialogButtonBox()
        for number, (answer, text) in enumerate(buttons.items()):
            button = self.buttons.addButton(text, QDialogButtonBox.ButtonRole.ActionRole)
            button.setObjectName(answer)
            button.setDefault(number == 0)
            button.clicked.connect(lambda _checked=False, answer=answer: self._take(answer))
        self.table.doubleClicked.connect(lambda _index: self._take(next(iter(buttons))))
        layout = QVBoxLayout(self)
        layout.addWidget(label)
        layout.addWidget(self.table, 1)
        layout.addWidget(self.buttons)
        self.table.setFocus()

    @property
    def row(self) -> int:
        """The row that is chosen; 0 is the first."""
        return max(0, self.table.currentRow())

    def _take(self, answer: str) -> None:
        self.answer = answer
        self.done(answer != self._last)


def local_time(moment: dt.datetime) -> str:
    """Write a moment as a clock here and now would have it, in the words of the system's language."""
    here = QDateTime.fromSecsSinceEpoch(int(moment.timestamp()))
    return QLocale().toString(here, QLocale.FormatType.ShortFormat)
