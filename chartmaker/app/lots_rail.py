"""The letters of the design in a row: a lot that is dropped on one becomes that letter."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from chartmaker.app.letter_menu import letter_words, letters_known, letters_to_offer, patch
from chartmaker.app.lots_model import LOT_TYPE
from chartmaker.app.shades import colour_of, known_shade
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from PySide6.QtGui import QDragEnterEvent, QDragLeaveEvent, QDragMoveEvent, QDropEvent, QMouseEvent, QPaintEvent

    from chartmaker.app.open_design import OpenDesign

BOX = QSize(40, 26)
GAP = 6


class LettersRail(QWidget):
    """One patch a letter, and one for the letter that comes next; a click on one asks for its lot."""

    dropped = Signal(str, str)
    """A letter, and the id of the lot that it is to be."""
    pressed = Signal(str)
    """A letter whose lot is to be shown."""

    def __init__(self, document: OpenDesign, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.document = document
        self._letters = ""
        self._over = ""
        self.setAccessibleName(tr("Letters of the design"))
        self.setAcceptDrops(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setToolTip(tr("Drag a skein onto a letter to make it that lot; the last one is a new letter"))
        self.refresh()

    def sizeHint(self) -> QSize:
        """Ask for a row of patches."""
        return QSize(14 * (BOX.width() + GAP), BOX.height() + 6)

    def refresh(self) -> None:
        """Follow the design."""
        appraisal = self.document.appraisal
        self._letters = letters_to_offer(appraisal)
        told = (letter_words(appraisal, letter) for letter in letters_known(appraisal))
        self.setAccessibleDescription(", ".join(told))
        self.update()

    def box(self, letter: str) -> QRectF:
        """Give where a letter stands; letters are narrower where they would not fit."""
        step = min(BOX.width() + GAP, self.width() / max(1, len(self._letters)))
        return QRectF(self._letters.index(letter) * step + 1, 3, step - GAP, BOX.height())

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the patches, and a frame about the one under a dragged lot."""
        painter = QPainter(self)
        appraisal = self.document.appraisal
        for letter in self._letters:
            shade = known_shade(appraisal, letter)
            box = self.box(letter)
            patch(painter, box.adjusted(0.5, 0.5, -0.5, -0.5), colour_of(shade), letter, is_pale=shade is None)
            if letter == self._over:
                painter.setPen(QPen(self.palette().text().color(), 2))
                painter.drawRect(box.adjusted(-1, -1, 1, 1))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Ask for the lot of the letter under the pointer."""
        letter = self._letter_at(event.position().x())
        if letter and event.button() == Qt.MouseButton.LeftButton:
            self.pressed.emit(letter)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Take lots, and nothing else."""
        if event.mimeData().hasFormat(LOT_TYPE):
            event.acceptProposedAction()

    def dragMoveEvent(self, event: QDragMoveEvent) -> None:
        """Show which letter would become the lot."""
        self._show_over(self._letter_at(event.position().x()))
        event.setAccepted(bool(self._over))

    def dragLeaveEvent(self, _event: QDragLeaveEvent) -> None:
        """Show no letter any more."""
        self._show_over("")

    def dropEvent(self, event: QDropEvent) -> None:
        """Make the letter the lot."""
        letter = self._letter_at(event.position().x())
        self._show_over("")
        if letter:
            event.acceptProposedAction()
            self.dropped.emit(letter, bytes(event.mimeData().data(LOT_TYPE).data()).decode())

    def _letter_at(self, x: float) -> str:
        return next(
            (
                letter
                for letter in self._letters
                if self.box(letter).adjusted(-3, 0, 3, 0).left() <= x <= self.box(letter).right() + 3
            ),
            "",
        )

    def _show_over(self, letter: str) -> None:
        if letter != self._over:
            self._over = letter
            self.update()
