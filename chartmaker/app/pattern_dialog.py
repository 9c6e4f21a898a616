"""The dialog that makes a pattern of a picture or of words, shown as it will be knitted while settings change."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import QSettings, Qt, QTimer
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.background import Background
from chartmaker.app.page_frame import titled
from chartmaker.app.pattern_memory import keep_settings, recall_settings
from chartmaker.app.pattern_method import PatternMethod
from chartmaker.app.pattern_preview import PatternPreview
from chartmaker.app.pattern_reading import read_working_copy
from chartmaker.app.pattern_wish import Made, PatternMaker, of_words
from chartmaker.app.pattern_words import pattern_words
from chartmaker.app.picture_side import PictureSide
from chartmaker.app.words import tr
from chartmaker.app.words_side import WordsSide
from chartmaker.files.problems import UserProblem

if TYPE_CHECKING:
    from PySide6.QtGui import QDragEnterEvent, QDropEvent

    from chartmaker.app.pattern_reading import WorkingCopy
    from chartmaker.app.questions import Questions
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.appraisal import Appraisal
    from chartmaker.pictures.pattern import Pattern

SIDES = ("picture", "words")
FOLDER_KEY = "pattern/folder"
REST_MS = 30
"""Settings that change faster are worked out once."""
PICTURE_KINDS = "*.png *.jpg *.jpeg"


class PatternDialog(QDialog):
    """Makes the pattern beside the window's thread; what becomes of it is its owner's."""

    def __init__(
        self, settings: QSettings, questions: Questions, units: UnitsSetting, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Pattern from a picture or words"))
        self.setAcceptDrops(True)
        self.resize(1000, 640)
        self._settings, self._units = settings, units
        self._questions = questions.over(self)
        self._appraisal: Appraisal | None = None
        self._made: Made | None = None
        self._maker = PatternMaker()
        self._names_itself = True
        self.sides = QTabWidget()
        self.sides.setAccessibleName(tr("What the pattern is made of"))
        self.picture, self.words = PictureSide(), WordsSide()
        self.sides.addTab(self.picture, tr("Picture"))
        self.sides.addTab(self.words, tr("Words"))
        self.method = PatternMethod()
        self.preview = PatternPreview()
        self.floats = QComboBox()
        for which, word in (("long", tr("long ones")), ("all", tr("all of them")), ("none", tr("none"))):
            self.floats.addItem(word, which)
        self.floats.setAccessibleName(tr("Which floats are drawn in the preview"))
        self.readout = _told(lines=3)
        self.message = _told(lines=1)
        self.name = QLineEdit()
        self.name.setAccessibleName(tr("Name of the pattern"))
        self.stamp = QPushButton(tr("Sta&mp it"))
        self.stamp.setToolTip(tr("Hold it as a stamp: its parts alone, in the letters of the rounds it is set down on"))
        self.lay_in = QPushButton(tr("New &band above"))
        self.lay_in.setToolTip(tr("A band of its own above the one at the cursor, in the letters shown here"))
        self.keep = QPushButton(tr("&Keep on the shelf"))
        self.keep.setToolTip(tr("Save it among your own motifs"))
        self.cancel = QPushButton(tr("Close"))
        self.reading, self.working = Background(), Background()
        self._rest = QTimer(self, singleShot=True, interval=REST_MS)
        self._lay_out()
        recall_settings(self, settings)
        self._connect()
        self._show_side()
        self._show_floats()

    # --- what it gives

    @property
    def pattern(self) -> Pattern | None:
        """The pattern as it is shown; None while there is none, or another is being worked out."""
        return self._made.pattern if self._made is not None else None

    @property
    def title(self) -> str:
        """What the pattern is called."""
        return self.name.text().strip() or tr("Pattern")

    def begin(self, side: Literal["picture", "words"], appraisal: Appraisal, *, band: int, index: int) -> None:
        """Open for a round of a design, with the picture, the words and the settings of the last time."""
        self._appraisal = appraisal
        design = appraisal.design
        below, gauge = design.bands[band], design.gauge
        stitches = below.stitches(len(below.rounds) - 1)
        for part in (self.picture, self.words):
            part.take_band(stitches, gauge.round_height_cm / gauge.stitch_width_cm)
        self.method.take_appraisal(appraisal, below.rounds[index].letters)
        self.sides.setCurrentIndex(SIDES.index(side))
        self.message.clear()
        self._change()
        self.open()
        (self.words.text if side == "words" else self.picture.open).setFocus()

    def tell(self, sentence: str) -> None:
        """Tell what went well."""
        self.message.setText(sentence)

    def tell_problem(self, sentence: str) -> None:
        """Tell what could not be done; nothing is lost by it."""
        self.message.setText(f"! {sentence[:1].upper()}{sentence[1:]}.")

    # --- a picture comes in

    def read(self, path: Path) -> None:
        """Read a picture beside the window; the one at hand stays until it is here, or where it cannot be read."""
        self.reading.stop()
        self._settings.setValue(FOLDER_KEY, str(path.absolute().parent))
        self.message.clear()
        self.reading.start(
            tr("Reading {0}").format(path.name), lambda step: read_working_copy(path, step), self._take_picture
        )

    def _ask_for_picture(self) -> None:
        kept = self._settings.value(FOLDER_KEY, "")
        folder = Path(str(kept)) if kept else Path.home()
        path = self._questions.file_to_open(
            tr("Open a picture"), f"{tr('Pictures')} ({PICTURE_KINDS});;{tr('All files')} (*)", folder
        )
        if path is not None:
            self.read(path)

    def _take_picture(self, copy: WorkingCopy) -> None:
        if self._names_itself:
            self.name.setText(copy.path.stem)
        self.picture.take_picture((copy.pixels, copy.side), copy.size, copy.path)

    # --- the pattern is worked out

    def _change(self) -> None:
        """Drop what is being worked out, and begin anew once the hand rests."""
        self.working.stop()
        self._made = None
        self._rest.start()
        self._show_state()

    def _begin(self) -> None:
        if self._appraisal is None:
            return
        look = self.method.look()
        if self._is_picture:
            wish = self.picture.wish(look)
            if wish is None:
                self._show_nothing(tr("Open a picture, or drop one here."))
                return
            picture = wish
            self.working.start(
                tr("Working out the pattern"), lambda step: self._maker.of_picture(picture, step), self._show
            )
            return
        if not self.words.text.text().strip():
            self._show_nothing(tr("Type the words to knit."))
            return
        words = self.words.wish(letters=look.letters, inverts=look.inverts)
        self.working.start(tr("Working out the pattern"), lambda _step: of_words(words), self._show)

    def _show(self, made: Made) -> None:
        if self._appraisal is None:
            return
        self._made = made
        self.method.show_level(made.level)
        if not self._is_picture:
            self.words.show_width(len(made.pattern.rounds[0]))
        self.preview.show_pattern(made, self._appraisal)
        self._tell_made()
        self._show_state()

    def _tell_made(self) -> None:
        if self._made is not None and self._appraisal is not None:
            told = pattern_words(self._made, self._appraisal, self._units.units)
            self.readout.setText(told)
            self.preview.setAccessibleDescription(told)

    def _show_nothing(self, sentence: str) -> None:
        if self._appraisal is not None:
            self.preview.show_pattern(None, self._appraisal)
        self.readout.setText(sentence)
        self.preview.setAccessibleDescription(sentence)

    def _fail(self, error: Exception) -> None:
        """Tell in a sentence what cannot be made; a fault of the program goes on to the window's edge."""
        self._show_nothing("")
        self._tell_of(error)

    def _tell_of(self, error: Exception) -> None:
        if not isinstance(error, UserProblem | ValueError):
            raise error
        self.tell_problem(str(error))

    # --- upkeep

    @property
    def _is_picture(self) -> bool:
        return self.sides.currentWidget() is self.picture

    def _connect(self) -> None:
        self.picture.wanted.connect(self._ask_for_picture)
        for part in (self.picture, self.words, self.method):
            part.changed.connect(self._take_change)
        self.words.text.textChanged.connect(self._name_after_words)
        self.name.textEdited.connect(lambda text: setattr(self, "_names_itself", not text.strip()))
        self.sides.currentChanged.connect(self._show_side)
        self.sides.currentChanged.connect(self._take_change)
        self.floats.currentIndexChanged.connect(lambda _index: self._show_floats())
        self._rest.timeout.connect(self._begin)
        self.working.failed.connect(self._fail)
        self.reading.failed.connect(self._tell_of)
        self.cancel.clicked.connect(self.reject)

    def _take_change(self) -> None:
        self.message.clear()
        self._change()

    def _name_after_words(self, text: str) -> None:
        if self._names_itself:
            self.name.setText(" ".join(text.split())[:60])

    def _show_floats(self) -> None:
        self.preview.show_floats(self.floats.currentData())

    def _show_side(self) -> None:
        self.method.show_for(pictures=self._is_picture)

    def _show_state(self) -> None:
        for button in (self.stamp, self.lay_in, self.keep):
            button.setEnabled(self._made is not None)

    def _lay_out(self) -> None:
        columns = QHBoxLayout()
        self.sides.setFixedWidth(286)
        method = titled(tr("Letters"), self.method)
        method.setFixedWidth(262)
        columns.addWidget(self.sides)
        columns.addLayout(self._middle(), 1)
        columns.addWidget(method)
        foot = QHBoxLayout()
        label = QLabel(tr("&Name"))
        label.setBuddy(self.name)
        self.name.setMaximumWidth(220)
        for part in (label, self.name, self.reading, self.working):
            foot.addWidget(part)
        foot.addStretch(1)
        for button in (self.stamp, self.lay_in, self.keep, self.cancel):
            foot.addWidget(button)
        layout = QVBoxLayout(self)
        layout.addLayout(columns, 1)
        layout.addWidget(self.message)
        layout.addLayout(foot)
        self.stamp.setDefault(True)
        for control in (self.picture.open, self.picture.whole):
            control.setAutoDefault(False)

    def _middle(self) -> QVBoxLayout:
        above = QHBoxLayout()
        title, floats = QLabel(tr("As it will be knitted")), QLabel(tr("Flo&ats drawn"))
        title.setContentsMargins(8, 0, 0, 0)
        floats.setBuddy(self.floats)
        above.addWidget(title, 1)
        above.addWidget(floats)
        above.addWidget(self.floats)
        middle = QVBoxLayout()
        middle.addLayout(above)
        middle.addWidget(self.preview, 1)
        middle.addWidget(self.readout)
        return middle

    # --- Qt's own events

    def reject(self) -> None:
        """Drop the drag under way, or close and change nothing."""
        if self.picture.view.is_busy:
            self.picture.view.drop()
        else:
            super().reject()

    def done(self, result: int) -> None:
        """Close, give up what is being worked out, and remember the settings."""
        self._rest.stop()
        self.working.stop()
        self.reading.stop()
        keep_settings(self, self._settings)
        super().done(result)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Take one file of this machine."""
        urls = event.mimeData().urls()
        if len(urls) == 1 and urls[0].isLocalFile():
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Read the picture that was dropped."""
        event.acceptProposedAction()
        self.sides.setCurrentWidget(self.picture)
        self.read(Path(event.mimeData().urls()[0].toLocalFile()))


def _told(*, lines: int) -> QLabel:
    """Make room for lines of plain text, and let it be more where need be."""
    label = QLabel()
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setWordWrap(True)
    label.setMinimumHeight(lines * label.fontMetrics().lineSpacing())
    label.setAlignment(Qt.AlignmentFlag.AlignTop)
    return label
