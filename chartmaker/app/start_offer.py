"""What stands over the chart when the program was started on nothing: how to begin, until something is begun."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtWidgets import QFrame, QLabel, QPushButton, QVBoxLayout, QWidget

from chartmaker.app.words import plain_tip, tr
from chartmaker.files.assets import examples

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from PySide6.QtGui import QKeyEvent

    from chartmaker.app.window import Window

MOST_RECENT = 4
WIDTH, SIDE = 340, 22
CLEAR = 8
"""Between the card and the edges of the page."""


def offer_start(window: Window) -> StartOffer | None:
    """Stand over the window's chart, unless work that was left by a crash, or anything else, is there already."""
    document = window.document
    is_untouched = document.path is None and document.stack.isClean() and not document.stack.count()
    return StartOffer(window) if is_untouched else None


class StartOffer(QFrame):
    """A card in the middle of the chart. It goes when a design comes, at the first edit, and with Escape."""

    def __init__(self, window: Window) -> None:
        super().__init__(window.chart)
        self._page, self._canvas = window.chart, window.chart.canvas
        self.setAutoFillBackground(True)
        self.setFrameShape(QFrame.Shape.StyledPanel)
        self.setAccessibleName(tr("How to begin"))
        self.buttons: list[QPushButton] = []
        self._spare: list[QWidget] = []
        """What is left out first where there is little room."""
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(SIDE, 18, SIDE, 18)
        self._column.setSpacing(6)
        self._fill(window)
        self.setFixedWidth(max(WIDTH, self.sizeHint().width()))
        for signal in (window.document.replaced, window.document.edited):
            signal.connect(self.leave)
        self._canvas.installEventFilter(self)
        had_keys = self._canvas.hasFocus()
        self._centre()
        self.show()
        if had_keys:
            self.buttons[0].setFocus()

    def leave(self) -> None:
        """Go, and give the chart the keys that the card had."""
        if self.window().focusWidget() in self.buttons:
            self._canvas.setFocus()
        self._canvas.removeEventFilter(self)
        self.hide()
        self.deleteLater()

    def _fill(self, window: Window) -> None:
        filing, made = window.filing, window.actions_made
        self._heading(tr("Begin a hat"))
        new = self._button(tr("New hat…"), made["file.new"].trigger)
        new.setToolTip(tr("Answer for head, gauge and brim, and draw on the plain hat that they give (Ctrl+N)"))
        self._button(tr("Draw on a bare chart"), self.leave).setToolTip(tr("Put this away (Escape)"))
        self._heading(tr("Go on"))
        self._button(tr("Open a design…"), made["file.open"].trigger)
        for path in filing.recent()[:MOST_RECENT]:
            button = self._button(path.name.removesuffix(".hat.toml"), partial(filing.open_recent, path))
            button.setToolTip(plain_tip(str(path)))
            self._spare.insert(0, button)
        if examples():
            self._spare.append(self._heading(tr("Look at an example")))
        for path in examples():
            button = self._button(_title(path), partial(filing.open_example, path))
            button.setToolTip(tr("A copy: the example itself stays as it is"))
            self._spare.append(button)

    def _heading(self, text: str) -> QLabel:
        label = QLabel(text)
        font = label.font()
        font.setBold(True)
        label.setFont(font)
        label.setContentsMargins(0, 8 if self.buttons else 0, 0, 0)
        self._column.addWidget(label)
        return label

    def _button(self, text: str, do: Callable[[], object]) -> QPushButton:
        shown = self.fontMetrics().elidedText(text, Qt.TextElideMode.ElideMiddle, WIDTH - 2 * SIDE - 24)
        button = QPushButton(shown.replace("&", "&&"))
        button.setAccessibleName(text)
        button.clicked.connect(lambda _checked=False: do())
        self._column.addWidget(button)
        self.buttons.append(button)
        return button

    def _centre(self) -> None:
        """Stand in the middle of the chart, without what there is no room for on its page."""
        most = self._page.height() - 2 * CLEAR
        for widget in self._spare:
            widget.show()
        for widget in self._spare:
            if self.sizeHint().height() <= most:
                break
            widget.hide()
        self.adjustSize()
        wanted = self._canvas.mapTo(self._page, self._canvas.rect().center()) - self.rect().center()
        lowest = max(CLEAR, self._page.height() - CLEAR - self.height())
        self.move(max(CLEAR, wanted.x()), min(max(CLEAR, wanted.y()), lowest))
        self.raise_()

    # --- Qt's own events

    def eventFilter(self, _watched: QObject, event: QEvent) -> bool:
        """Stay in the middle of the chart, and go out of sight with it."""
        if event.type() == QEvent.Type.Hide:
            self.hide()
        elif event.type() == QEvent.Type.Show:
            self.show()
        if event.type() in (QEvent.Type.Resize, QEvent.Type.Move, QEvent.Type.Show):
            self._centre()
        return False

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Press the button that has the keys with Enter, or go away with Escape."""
        focused = next((button for button in self.buttons if button.hasFocus()), None)
        if event.key() == Qt.Key.Key_Escape:
            self.leave()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and focused is not None:
            focused.click()
        else:
            super().keyPressEvent(event)


def _title(path: Path) -> str:
    """Give what an example is called, from its file's name: reading the design itself can wait."""
    return path.name.removesuffix(".hat.toml").replace("-", " ").capitalize()
