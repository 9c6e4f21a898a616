"""The dialog that begins a hat: it asks what a knitter knows, and shows the plain hat that comes of it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSettings, Qt, QTimer, Signal
from PySide6.QtWidgets import QDialog, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from chartmaker.app.start_given import outcome_of
from chartmaker.app.start_memory import MORE_KEY, keep, recall
from chartmaker.app.start_preview import StartPreview
from chartmaker.app.start_questions import StartQuestions
from chartmaker.app.told import told
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from chartmaker.app.start_given import Outcome
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.model.palette import Palette

REST_MS = 20
"""Answers that change faster are worked out once."""


class StartDialog(QDialog):
    """Nothing is begun before Begin is pressed; what is begun is its owner's to take up."""

    begun = Signal(object)
    """The hat."""
    bare = Signal()
    """A bare design is wanted in its place."""

    def __init__(
        self, settings: QSettings, units: UnitsSetting, palette: Palette | None, parent: QWidget | None = None
    ) -> None:
        """Take the palette whose lots the letters may be, and whose yarns may be chosen."""
        super().__init__(parent)
        self.setWindowTitle(tr("A new hat"))
        self.resize(970, 640)
        self._settings, self._palette, self._units = settings, palette, units
        self.questions = StartQuestions(units.units, palette)
        self.preview = StartPreview(units)
        self.trouble = QLabel()
        self.begin = QPushButton(tr("Be&gin"))
        self.begin_bare = QPushButton(tr("Begin bare"))
        self.defaults = QPushButton(tr("De&faults"))
        self.cancel = QPushButton(tr("Cancel"))
        self._rest = QTimer(self, singleShot=True, interval=REST_MS)
        self._lay_out()
        self._connect()
        self.questions.show_given(recall(settings, self.questions.usual()))
        self.questions.unfold(is_open=settings.value(MORE_KEY, "") == "open")
        self.outcome: Outcome = self.refresh()
        """What comes of the answers as they were when they last rested."""
        self.questions.fit_width()
        self.questions.shapes.take_keys()

    def refresh(self) -> Outcome:
        """Make the hat of the answers as they stand, and show what comes of it."""
        self._rest.stop()
        given = self.questions.given
        self.outcome = outcome = outcome_of(given, self._palette)
        self.questions.show_outcome(given, outcome)
        trouble = told(outcome.troubles.get("", ""), self._units.units)
        self.trouble.setText(f"! {trouble[:1].upper()}{trouble[1:]}")
        self.trouble.setVisible(bool(trouble))
        self.preview.show_design(outcome.design, self._palette)
        return outcome

    def accept(self) -> None:
        """Begin the hat; where there is none, go to the first answer that cannot be."""
        design = self.refresh().design
        if design is None:
            self.questions.go_to_trouble()
            return
        keep(self._settings, self.questions.given)
        super().accept()
        self.begun.emit(design)

    def _begin_bare(self) -> None:
        super().accept()
        self.bare.emit()

    def _reset(self) -> None:
        """Let every answer be what it is unasked; the last answers are remembered until others are begun with."""
        self.questions.show_given(self.questions.usual())
        self.refresh()

    # --- upkeep

    def _connect(self) -> None:
        self.questions.changed.connect(self._rest.start)
        self._rest.timeout.connect(self.refresh)
        self.begin.clicked.connect(self.accept)
        self.begin_bare.clicked.connect(self._begin_bare)
        self.defaults.clicked.connect(self._reset)
        self.cancel.clicked.connect(self.reject)

    def _lay_out(self) -> None:
        columns = QHBoxLayout()
        columns.setSpacing(16)
        columns.addWidget(self.questions)
        columns.addWidget(self.preview, 1)
        foot = QHBoxLayout()
        for button in (self.defaults, self.begin_bare):
            foot.addWidget(button)
        foot.addStretch(1)
        foot.addWidget(self.cancel)
        foot.addWidget(self.begin)
        self.begin.setDefault(True)
        self.defaults.setToolTip(tr("Let every answer be what it is unasked"))
        self.begin_bare.setToolTip(tr("One blank band of 144 stitches, and nothing else"))
        self.trouble.setWordWrap(True)
        self.trouble.setTextFormat(Qt.TextFormat.PlainText)
        layout = QVBoxLayout(self)
        layout.addLayout(columns, 1)
        layout.addWidget(self.trouble)
        layout.addLayout(foot)

    # --- Qt's own events

    def done(self, result: int) -> None:
        """Remember whether More was open."""
        self._rest.stop()
        self._settings.setValue(MORE_KEY, "open" if self.questions.more_button.isChecked() else "")
        super().done(result)
