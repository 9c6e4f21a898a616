"""The dialog that takes shades from a photo of skeins beside the 24-patch target."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QSettings, Qt, QTimer
from PySide6.QtWidgets import QComboBox, QDialog, QHBoxLayout, QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from chartmaker.app.background import Background
from chartmaker.app.photo_marks import CORNERS, first_marks
from chartmaker.app.photo_reading import open_photo, read_marks
from chartmaker.app.photo_view import PhotoView
from chartmaker.app.photo_words import fit_words
from chartmaker.app.skein_table import SkeinTable
from chartmaker.app.words import plain_tip, tr
from chartmaker.files.problems import UserProblem
from chartmaker.model.taking import taking
from chartmaker.shade.target import EDITION_WORDS

if TYPE_CHECKING:
    from PySide6.QtGui import QDragEnterEvent, QDropEvent

    from chartmaker.app.open_palette import OpenPalette
    from chartmaker.app.photo_reading import OpenedPhoto, PhotoRead
    from chartmaker.app.questions import Questions
    from chartmaker.model.settings import Viewing

FOLDER_KEY, EDITION_KEY = "photo/folder", "photo/edition"
REST_MS = 30
"""Marks that move faster are read once."""
PICTURE_KINDS = "*.png *.jpg *.jpeg"


class PhotoDialog(QDialog):
    """Reads the photo beside the window's thread; OK gives the readings to the palette, as one step."""

    def __init__(self, settings: QSettings, questions: Questions, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Take shades from a photo"))
        self.setAcceptDrops(True)
        self.resize(1000, 660)
        self._settings = settings
        self._questions = questions.over(self)
        self._palette: OpenPalette | None = None
        self._viewing: Viewing | None = None
        self._photo: OpenedPhoto | None = None
        self._read: PhotoRead | None = None
        self.open_button = QPushButton(tr("&Open a photo…"))
        self.open_button.setToolTip(tr("A PNG or JPEG picture; it can be dropped here too"))
        self.name = QLabel(tr("PNG or JPEG"))
        self.name.setTextFormat(Qt.TextFormat.PlainText)
        self.name.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.edition = QComboBox()
        for edition in EDITION_WORDS:
            self.edition.addItem(_edition_words(edition), edition)
        self.edition.setAccessibleName(tr("Edition of the 24-patch target"))
        self.edition.setToolTip(tr("When the target was made: the patches of the two editions differ a little"))
        kept = self.edition.findData(str(settings.value(EDITION_KEY, "")))
        self.edition.setCurrentIndex(kept if kept >= 0 else self.edition.count() - 1)
        self.view = PhotoView()
        self.hint = _told(
            tr(
                "Drag the four corners onto the outer corners of the target's outermost patches. Then draw a box on "
                "each skein, inside its edges. Tab goes from one to the next, arrow keys nudge it, Shift goes farther."
            )
        )
        self.fit = _told("")
        self.add = QPushButton(tr("&Add a box"))
        self.add.setToolTip(tr("Mark another skein; arrow keys move the box, with Ctrl they size it"))
        self.remove = QPushButton(tr("&Remove the box"))
        self.remove.setToolTip(tr("Take away the box that is in hand (Del)"))
        self.table = SkeinTable()
        self.message = _told("")
        self.take = QPushButton(tr("Take the &shades"))
        self.cancel = QPushButton(tr("Close"))
        self.reading, self.working = Background(), Background()
        self._rest = QTimer(self, singleShot=True, interval=REST_MS)
        self._lay_out()
        self._connect()
        self._show_state()

    # --- what it gives

    @property
    def read(self) -> PhotoRead | None:
        """What the marks come to as they are; None while that is worked out."""
        return self._read

    def begin(self, palette: OpenPalette, viewing: Viewing) -> None:
        """Open for a palette and the viewing of the design, with the photo of the last time."""
        self._palette, self._viewing = palette, viewing
        self.table.take_palette(palette.palette)
        self.message.clear()
        self._change()
        self.open()
        (self.open_button if self._photo is None else self.view).setFocus()

    # --- a photo comes in

    def read_photo(self, path: Path) -> None:
        """Read a photo beside the window; the one at hand stays until it is here, or where it cannot be read."""
        self.reading.stop()
        self._settings.setValue(FOLDER_KEY, str(path.absolute().parent))
        self.message.clear()
        text = tr("Reading {0}").format(path.name)
        self.reading.start(text, lambda step: open_photo(path, step), self._take_photo)

    def _ask_for_photo(self) -> None:
        kept = self._settings.value(FOLDER_KEY, "")
        path = self._questions.file_to_open(
            tr("Open a photo"),
            f"{tr('Pictures')} ({PICTURE_KINDS});;{tr('All files')} (*)",
            Path(str(kept)) if kept else Path.home(),
        )
        if path is not None:
            self.read_photo(path)

    def _take_photo(self, photo: OpenedPhoto) -> None:
        self._photo = photo
        self.name.setText(tr("{0}, {1} × {2} px").format(photo.path.name, *photo.size))
        self.name.setToolTip(plain_tip(str(photo.path)))
        if self._palette is not None:
            self.table.take_palette(self._palette.palette)
        self.view.take_photo(photo)
        self.view.setFocus()

    # --- the marks are read

    def _change(self) -> None:
        """Drop what is being worked out, and begin anew once the hand rests."""
        self.working.stop()
        self._read = None
        self.message.clear()
        if not self._rest.isActive():  # so that a drag that never rests is followed too
            self._rest.start()
        self._show_state()

    def _begin(self) -> None:
        photo, marks, viewing = self._photo, self.view.marks, self._viewing
        if photo is None or marks is None or viewing is None:
            return
        edition = self.edition.currentData()
        self.working.start(
            tr("Reading the marks"),
            lambda step: read_marks(photo, marks, edition=edition, viewing=viewing, step=step),
            self._show,
        )

    def _show(self, read: PhotoRead) -> None:
        self._read = read
        self.view.show_read(read)
        is_begun = read.marks.corners != first_marks(read.marks.size).corners
        self.fit.setText(fit_words(read) if is_begun else "")
        self.table.blockSignals(True)
        self.table.show_skeins(read.skeins, is_sound=not read.problem)
        self.table.blockSignals(False)
        self._follow_view(self.view.in_hand - CORNERS)

    def _take(self) -> None:
        """Give the readings to the palette, and close."""
        if self._read is None or self._palette is None:
            return
        samples, choices = self.table.samples(self._read.skeins)
        try:
            taken = taking(self._palette.palette, samples, choices)
        except ValueError as problem:
            self._tell_problem(str(problem))
            return
        self._palette.apply(taken.palette, tr("Take shades from a photo"))
        self.accept()

    # --- upkeep

    def _connect(self) -> None:
        self.open_button.clicked.connect(self._ask_for_photo)
        self.edition.currentIndexChanged.connect(lambda _index: self._change())
        self.view.changed.connect(self._change)
        self.view.chosen.connect(self._follow_view)
        self.view.removed.connect(self.table.remove)
        self.table.changed.connect(self._show_state)
        self.table.currentCellChanged.connect(lambda row, *_: self.view.hold_skein(row))
        self.add.clicked.connect(self.view.add_box)
        self.remove.clicked.connect(self.view.remove_box)
        self._rest.timeout.connect(self._begin)
        self.working.failed.connect(self._tell_of)
        self.reading.failed.connect(self._tell_of)
        self.take.clicked.connect(self._take)
        self.cancel.clicked.connect(self.reject)

    def _follow_view(self, skein: int) -> None:
        """Choose the row of the skein that is in hand; none for a corner."""
        self.table.blockSignals(True)
        self.table.setCurrentCell(max(skein, -1), 0)
        self.table.blockSignals(False)
        self._show_state()

    def _show_state(self) -> None:
        has_photo = self.view.marks is not None
        self.add.setEnabled(has_photo)
        self.remove.setEnabled(has_photo and self.view.has_box)
        is_sound = self._read is not None and not self._read.problem
        self.take.setEnabled(is_sound and bool(self._read and self.table.samples(self._read.skeins)[0]))

    def _tell_problem(self, sentence: str) -> None:
        self.message.setText(f"! {sentence[:1].upper()}{sentence[1:]}.")

    def _tell_of(self, error: Exception) -> None:
        """Tell in a sentence what cannot be done; a fault of the program goes on to the window's edge."""
        if not isinstance(error, UserProblem | ValueError):
            raise error
        self._tell_problem(str(error))

    def _lay_out(self) -> None:
        top = QHBoxLayout()
        label = QLabel(tr("24-patch &target, made"))
        label.setBuddy(self.edition)
        top.addWidget(self.open_button)
        top.addWidget(self.name, 1)
        top.addWidget(label)
        top.addWidget(self.edition)
        side = QVBoxLayout()
        for part in (self.hint, self.fit):
            part.setFixedWidth(236)
            side.addWidget(part)
        side.addStretch(1)
        for button in (self.add, self.remove):
            side.addWidget(button)
        middle = QHBoxLayout()
        middle.addWidget(self.view, 1)
        middle.addLayout(side)
        foot = QHBoxLayout()
        foot.addWidget(self.message, 1)
        foot.addWidget(self.reading)
        foot.addWidget(self.working)
        foot.addWidget(self.take)
        foot.addWidget(self.cancel)
        layout = QVBoxLayout(self)
        layout.addLayout(top)
        layout.addLayout(middle, 1)
        self.table.setFixedHeight(170)
        layout.addWidget(self.table)
        layout.addLayout(foot)
        for button in (self.open_button, self.add, self.remove):
            button.setAutoDefault(False)
        self.take.setDefault(True)

    # --- Qt's own events

    def reject(self) -> None:
        """Drop the drag under way, or close and change nothing."""
        if self.view.is_busy:
            self.view.drop()
        else:
            super().reject()

    def done(self, result: int) -> None:
        """Close, give up what is being worked out, and remember the edition."""
        self._rest.stop()
        self.working.stop()
        self.reading.stop()
        self._settings.setValue(EDITION_KEY, self.edition.currentData())
        super().done(result)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Take one file of this machine."""
        urls = event.mimeData().urls()
        if len(urls) == 1 and urls[0].isLocalFile():
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Read the photo that was dropped."""
        event.acceptProposedAction()
        self.read_photo(Path(event.mimeData().urls()[0].toLocalFile()))


def _edition_words(edition: str) -> str:
    return {"before-2014-11": tr("before November 2014"), "from-2014-11": tr("from November 2014")}[edition]


def _told(text: str) -> QLabel:
    label = QLabel(text)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setWordWrap(True)
    label.setAlignment(Qt.AlignmentFlag.AlignTop)
    return label
