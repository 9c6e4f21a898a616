"""Where a lot comes from: its undyed base, the baths of its dyestuff on that base, and the loads of each."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QColor, QIcon
from PySide6.QtWidgets import QSizePolicy, QTreeWidget, QTreeWidgetItem, QWidget

from chartmaker.app.letter_menu import patch_icon
from chartmaker.app.lots_skein import skein_pixmap
from chartmaker.app.shades import colour_of
from chartmaker.app.words import number, plain_tip, tr

if TYPE_CHECKING:
    from collections.abc import Sequence

    from chartmaker.app.lots_lines import LotLine
    from chartmaker.model.palette import Yarn
    from chartmaker.model.settings import Viewing

LOT = Qt.ItemDataRole.UserRole
ICON = QSize(44, 18)
MOST_ROWS = 9
Member = tuple[int, str, str, str]
"""Depth in the tree, id of a lot or nothing, text, and what a screen reader adds."""


class FamilyTree(QTreeWidget):
    """A click or a key on a lot picks it."""

    pick_asked = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._members: tuple[Member, ...] = ()
        self._is_settling = False
        self.setAccessibleName(tr("Base, baths and loads"))
        self.setHeaderHidden(True)
        self.setIconSize(ICON)
        self.setIndentation(16)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.currentItemChanged.connect(self._ask)

    def sizeHint(self) -> QSize:
        """Ask for the rows there are, up to a handful."""
        rows = min(MOST_ROWS, max(2, len(self._members)))
        return QSize(300, rows * max(22, self.sizeHintForRow(0)) + 6)

    def show_family(self, line: LotLine, every: Sequence[LotLine], viewing: Viewing) -> None:
        """Show the family of a lot, the lot itself marked; nothing for one without a bath."""
        members, icons = family_of(line, every, viewing)
        self._is_settling = True
        if members != self._members:
            self._members = members
            self.clear()
            path: list[QTreeWidgetItem] = []
            for (depth, lot_id, text, told), icon in zip(members, icons, strict=True):
                item = QTreeWidgetItem([text])
                item.setData(0, LOT, lot_id)
                item.setData(0, Qt.ItemDataRole.AccessibleDescriptionRole, told)
                item.setToolTip(0, plain_tip(text))
                item.setIcon(0, icon)
                if depth:
                    path[depth - 1].addChild(item)
                else:
                    self.addTopLevelItem(item)
                path[depth:] = [item]
            self.expandAll()
        self.setVisible(bool(members))
        self.updateGeometry()
        marked = self.item_of(line.lot.id)
        if marked:
            self.setCurrentItem(marked)
        self._is_settling = False

    def item_of(self, lot_id: str) -> QTreeWidgetItem | None:
        """Give the row of a lot."""
        found = self.findItems("*", Qt.MatchFlag.MatchWildcard | Qt.MatchFlag.MatchRecursive)
        return next((item for item in found if item.data(0, LOT) == lot_id), None)

    def _ask(self, item: QTreeWidgetItem | None) -> None:
        if item and item.data(0, LOT) and not self._is_settling:
            self.pick_asked.emit(item.data(0, LOT))


def family_of(line: LotLine, every: Sequence[LotLine], viewing: Viewing) -> tuple[tuple[Member, ...], list[QIcon]]:
    """Give the base, its baths of the same dyestuff and their lots, each with its icon."""
    if line.bath is None:
        return (), []
    kin = [other for other in every if other.dyestuff == line.dyestuff and _yarn_id(other) == _yarn_id(line)]
    kin.sort(key=lambda other: (other.bath.id if other.bath else "", other.load, other.lot.name))
    members: list[Member] = [(0, "", line.yarn.name if line.yarn else tr("base not noted"), tr("undyed base"))]
    icons = [_base_icon(line.yarn, viewing)]
    bath_id = ""
    for other in kin:
        if other.bath and other.bath.id != bath_id:
            bath_id = other.bath.id
            text = tr("{0} {1}, {2} g to 1 g").format(other.bath.dyestuff, other.bath.part, f"{other.bath.ratio:g}")
            members.append((1, "", f"{text} ({bath_id})", tr("bath")))
            icons.append(QIcon())
        value = number(other.shade.value) if other.shade else "?"
        text = tr("load {0}, value {1}: {2}").format(other.load, value, other.lot.name)
        if other.lot.planned:
            text = tr("{0} (planned)").format(text)
        members.append((2, other.lot.id, text, other.description))
        icons.append(_skein_icon(other))
    return tuple(members), icons


def _yarn_id(line: LotLine) -> str:
    return line.yarn.id if line.yarn else ""


def _base_icon(yarn: Yarn | None, viewing: Viewing) -> QIcon:
    from chartmaker.shade.lots import shade_of_yarn

    return patch_icon(colour_of(shade_of_yarn(yarn, viewing) if yarn else None), width=ICON.width(), height=16)


def _skein_icon(line: LotLine) -> QIcon:
    rgb = QColor(*line.shade.srgb).rgb() if line.shade else None
    pixmap = skein_pixmap(rgb, ICON.width(), ICON.height(), 2.0, is_planned=line.lot.planned is not None)
    icon = QIcon(pixmap)
    icon.addPixmap(pixmap, QIcon.Mode.Selected)
    return icon
