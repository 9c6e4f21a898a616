"""A small menu of letters, each with its shade and its lot, to choose one from."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QRectF, Qt
from PySide6.QtGui import QColor, QIcon, QPainter, QPen, QPixmap
from PySide6.QtWidgets import QMenu, QWidget

from chartmaker.app.shades import colour_of, ink_on, known_shade
from chartmaker.app.signs import draw_mark
from chartmaker.app.words import number, tr

if TYPE_CHECKING:
    from collections.abc import Callable

    from chartmaker.appraisal import Appraisal
    from chartmaker.sheets.marks import Mark

ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"


def patch(  # noqa: PLR0913 - what a patch shows, told by name
    painter: QPainter, box: QRectF, colour: QColor, text: str = "", *, is_pale: bool = False, mark: Mark | None = None
) -> None:
    """Draw a patch of a shade with a neutral edge, and a letter on it in black or white, its mark beside it."""
    painter.save()
    painter.setPen(QPen(QColor(96, 96, 96), 1, Qt.PenStyle.DotLine if is_pale else Qt.PenStyle.SolidLine))
    painter.setBrush(colour)
    painter.drawRect(box)
    painter.setPen(ink_on(colour))
    font = painter.font()
    font.setPixelSize(max(6, min(13, round(box.height() - 1))))
    painter.setFont(font)
    if mark is None:
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)
    else:
        half = QRectF(box.left(), box.top(), box.width() / 2, box.height())
        painter.drawText(half, Qt.AlignmentFlag.AlignCenter, text)
        draw_mark(painter, half.translated(half.width(), 0), mark, ink_on(colour))
    painter.restore()


def patch_icon(colour: QColor, text: str = "", *, width: int = 22, height: int = 16) -> QIcon:
    """Give a patch as an icon, sharp on a screen of double density too."""
    pixmap = QPixmap(width * 2, height * 2)
    pixmap.setDevicePixelRatio(2)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    patch(painter, QRectF(0.5, 0.5, width - 1, height - 1), colour, text)
    painter.end()
    icon = QIcon(pixmap)
    icon.addPixmap(pixmap, QIcon.Mode.Selected)  # which Qt would tint: a shade is to be judged
    return icon


def letters_known(appraisal: Appraisal) -> str:
    """Give the letters that are in use, that a round could draw with, or that have a lot, in alphabetical order."""
    known = {entry.letter for entry in appraisal.letters} | {letter for letter, _ in appraisal.design.colourway.lots}
    return "".join(sorted(known.union(*{line.letters for _, line in appraisal.design.rounds()})))


def letters_to_offer(appraisal: Appraisal) -> str:
    """Give the letters that are known to the design, and the first that is still free."""
    known = letters_known(appraisal)
    return known + next((letter for letter in ALPHABET if letter not in known), "")


def letter_words(appraisal: Appraisal, letter: str) -> str:
    """Tell a letter with its lot and value."""
    lot_id = appraisal.design.colourway.lot_of(letter)
    lot = appraisal.design.palette.lot(lot_id) if lot_id else None
    if lot is None:
        return tr("{0}  no lot yet").format(letter)
    shade = known_shade(appraisal, letter)
    value = "" if shade is None else tr(", value {0}").format(number(shade.value))
    return f"{letter}  {lot.name}{value}"


class LetterMenu(QMenu):
    """A menu whose letters are its own, even where the chart behind it has a key of that letter."""

    def event(self, event: QEvent) -> bool:
        """Take keys before anything behind the menu does."""
        if event.type() == QEvent.Type.ShortcutOverride:
            event.accept()
            return True
        return super().event(event)


def letter_menu(appraisal: Appraisal, choose: Callable[[str], None], parent: QWidget, *, current: str = "") -> QMenu:
    """Make the menu; `choose` is called with the letter taken. The letters themselves are the menu's keys."""
    menu = LetterMenu(tr("Letter"), parent)
    menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    for letter in letters_to_offer(appraisal):
        text = "&" + letter_words(appraisal, letter).replace("&", "&&")
        action = menu.addAction(patch_icon(colour_of(known_shade(appraisal, letter)), letter), text)
        action.setData(letter)
        action.setCheckable(True)
        action.setChecked(letter == current)
        action.triggered.connect(lambda _checked=False, letter=letter: choose(letter))
    return menu
