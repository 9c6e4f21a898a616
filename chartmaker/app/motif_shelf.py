"""The shelf of motifs beside the chart: drawn small, found by family, words and repeat, and taken up from there."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import (
    QComboBox,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QSizePolicy,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.motif_choice import Fit, MotifChoice
from chartmaker.app.motif_picture import motif_icon
from chartmaker.app.words import plain_tip, tr
from chartmaker.model.motif import FAMILIES

if TYPE_CHECKING:
    from PySide6.QtGui import QAction, QIcon, QKeyEvent

    from chartmaker.files.motif_reading import Shelf
    from chartmaker.files.problems import UserProblem
    from chartmaker.model.band import Band
    from chartmaker.model.gauge import Gauge
    from chartmaker.model.motif import Motif

THUMBNAIL = QSize(84, 46)
FITS: tuple[Fit, ...] = ("repeat", "round", "any")
FAMILY_WORDS = {
    "peerie": "Peeries",
    "border": "Borders",
    "cross-and-lozenge": "Crosses and lozenges",
    "star": "Stars",
    "lattice": "Lattices",
    "crown": "Crown wedges",
    "own": "Your own",
}


class MotifList(QListWidget):
    """The motifs, one a line; a click, Enter or Space takes one up, arrows only look."""

    taken = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(tr("Motifs"))
        self.setToolTip(tr("Click or press Enter to hold a motif, then stamp it on the chart"))
        self.setIconSize(THUMBNAIL)
        self.setUniformItemSizes(True)
        self.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.itemClicked.connect(lambda _item: self.taken.emit())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Take up the motif at the list's cursor, or move on."""
        if Qt.Key(event.key()) in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            self.taken.emit()
        else:
            super().keyPressEvent(event)


class MotifSearch(QLineEdit):
    """Words to find motifs by; the down arrow goes on to what was found."""

    left_down = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setPlaceholderText(tr("Find a motif"))
        self.setAccessibleName(tr("Words to find motifs by"))
        self.setToolTip(tr("Words of a motif's name, family or tags (Down: to what is found)"))
        self.setClearButtonEnabled(True)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Go on to the list, or type."""
        if Qt.Key(event.key()) in (Qt.Key.Key_Down, Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.left_down.emit()
        else:
            super().keyPressEvent(event)


class MotifShelf(QWidget):
    """Offers motifs for the band that it is told of; what is done with them is its owner's."""

    taken = Signal()
    """The motif at the list's cursor is to be held."""
    looked = Signal()
    """Another motif is at the list's cursor."""

    def __init__(self, actions: tuple[QAction, ...], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._motifs: tuple[Motif, ...] = ()
        self._band: Band | None = None
        self._height_per_width = 1.0
        self.search = MotifSearch()
        self.family = QComboBox()
        self.family.setAccessibleName(tr("Family of motifs"))
        self.family.setToolTip(tr("Family of motifs"))
        self.family.addItem(tr("All families"), "")
        for name in FAMILIES:
            self.family.addItem(tr(FAMILY_WORDS[name]), name)
        self.fit = QComboBox()
        self.fit.setAccessibleName(tr("Which repeats are offered"))
        self.fit.setToolTip(tr("Only motifs whose repeat divides the band's repeat, or its whole round, or any"))
        for fit in FITS:
            self.fit.addItem("", fit)
        self.list = MotifList()
        self.note = _line()
        self.refused = _line()
        self._lay_out(actions)
        self.search.textChanged.connect(self.sift)
        self.search.left_down.connect(self._go_to_list)
        self.family.currentIndexChanged.connect(self.sift)
        self.fit.currentIndexChanged.connect(self.sift)
        self.list.taken.connect(self._take)
        self.list.currentItemChanged.connect(lambda _now, _before: self.looked.emit())

    @property
    def motif(self) -> Motif | None:
        """The motif at the list's cursor; None while none in sight is."""
        item = self.list.currentItem()
        return None if item is None or item.isHidden() else self._motifs[self.list.row(item)]

    def take_shelf(self, shelf: Shelf) -> None:
        """Show these motifs, and tell which files are none."""
        self.list.clear()
        self._motifs = shelf.motifs
        for motif in shelf.motifs:
            self.list.addItem(self._item(motif))
        self._tell_refused(shelf.refused)
        self.sift()

    def _tell_refused(self, refused: tuple[UserProblem, ...]) -> None:
        """Tell in one line which files are no motifs; why is told in its tip, and to a screen reader."""
        self.refused.setVisible(bool(refused))
        if refused:
            names = ", ".join(Path(problem.where).name for problem in refused)
            self.refused.setText(tr("Left out: {0}").format(names))
            self.refused.setToolTip(plain_tip("\n".join(map(str, refused))))
            self.refused.setAccessibleDescription("\n".join(map(str, refused)))

    def take_band(self, band: Band) -> None:
        """Offer motifs for this band."""
        before, self._band = self._band, band
        if before is None or _measures(before) != _measures(band):
            self.sift()

    def take_gauge(self, gauge: Gauge) -> None:
        """Draw the motifs at this gauge's proportion of a stitch."""
        height_per_width = gauge.round_height_cm / gauge.stitch_width_cm
        if height_per_width != self._height_per_width:
            self._height_per_width = height_per_width
            for row, motif in enumerate(self._motifs):
                self.list.item(row).setIcon(self._icon(motif))

    def show_motif(self, id_: str) -> None:
        """Bring a motif into sight and put the list's cursor on it, whatever was asked for."""
        self.search.clear()
        self.family.setCurrentIndex(0)
        row = next(number for number, motif in enumerate(self._motifs) if motif.id == id_)
        if self.list.item(row).isHidden():
            self.fit.setCurrentIndex(FITS.index("any"))
        self.list.setCurrentRow(row)
        self.list.scrollToItem(self.list.item(row))

    def sift(self) -> None:
        """Hide what is not asked for, and say how many are left."""
        band = self._band
        if band is None:
            return
        repeat, whole = _measures(band)
        self.fit.setItemText(0, tr("Divides the repeat of {0}").format(repeat))
        self.fit.setItemText(1, tr("Divides the round of {0}").format(whole))
        self.fit.setItemText(2, tr("Any repeat"))
        choice = MotifChoice(family=self.family.currentData(), words=self.search.text(), fit=self.fit.currentData())
        shown = 0
        for row, motif in enumerate(self._motifs):
            is_taken = choice.takes(motif, band)
            self.list.item(row).setHidden(not is_taken)
            shown += is_taken
        self.note.setText(tr("{0} of {1} motifs").format(shown, len(self._motifs)))
        self.looked.emit()

    def _go_to_list(self) -> None:
        """Give the list the keys, its cursor on a motif that is in sight."""
        if self.motif is None:
            in_sight = (row for row in range(self.list.count()) if not self.list.item(row).isHidden())
            self.list.setCurrentRow(next(in_sight, -1))
        self.list.setFocus()

    def _take(self) -> None:
        if self.motif is not None:
            self.taken.emit()

    def _icon(self, motif: Motif) -> QIcon:
        return motif_icon(motif, THUMBNAIL, self.devicePixelRatioF(), height_per_width=self._height_per_width)

    def _item(self, motif: Motif) -> QListWidgetItem:
        size = tr("{0} × {1}").format(motif.repeat, len(motif.rounds))
        item = QListWidgetItem(
            self._icon(motif), tr("{0}\n{1} · float {2}").format(motif.name, size, motif.longest_float)
        )
        told = tr("{0}: {1}, repeat {2} stitches, {3} rounds, longest float {4}").format(
            motif.name, tr(FAMILY_WORDS[motif.family]), motif.repeat, len(motif.rounds), motif.longest_float
        )
        item.setToolTip(plain_tip(told))
        item.setData(Qt.ItemDataRole.AccessibleTextRole, told)
        return item

    def _lay_out(self, actions: tuple[QAction, ...]) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(6, 0, 6, 4)
        layout.setSpacing(4)
        buttons = QHBoxLayout()
        buttons.setSpacing(2)
        for action in actions:
            button = QToolButton()
            button.setDefaultAction(action)
            button.setAutoRaise(True)
            button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextOnly)
            button.setAccessibleName(action.text().replace("&", "").rstrip("…"))
            buttons.addWidget(button)
        buttons.addStretch(1)
        layout.addWidget(self.search)
        for box in (self.family, self.fit):
            box.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
            layout.addWidget(box)
        layout.addWidget(self.list, 1)
        layout.addWidget(self.note)
        layout.addWidget(self.refused)
        layout.addLayout(buttons)
        self.setFocusProxy(self.search)


def _measures(band: Band) -> tuple[int, int]:
    """Give what a motif's repeat may divide: the band's repeat, and the stitches of its last round."""
    return len(band.rounds[0]), band.stitches(len(band.rounds) - 1)


def _line() -> QLabel:
    """Make a line of plain text that is cut off rather than widen what it stands in."""
    label = QLabel()
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
    return label
