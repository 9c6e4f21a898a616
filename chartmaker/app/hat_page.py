"""The hat page: what the knitter wants, the hat measured and turning beside it, and how it fits."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QSplitter, QWidget

from chartmaker.app.fit_side import FitSide
from chartmaker.app.hat_form import HatForm
from chartmaker.app.hat_stage import HatStage
from chartmaker.app.page_frame import PageFrame
from chartmaker.app.seeing import Seeing
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from collections.abc import Callable

    from chartmaker.app.hat_form import Control
    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.checks.finding import Place

FORM_WIDTH, STAGE_WIDTH, FIT_WIDTH = 280, 700, 290


class HatPage(PageFrame):
    """Puts form, drawing, turning hat and fit side by side; each lives in a file of its own."""

    refused = Signal(str)
    """A value that the design's rules refuse, as a sentence; the old one is back."""

    def __init__(
        self,
        document: OpenDesign,
        units: UnitsSetting,
        *,
        seeing: Callable[[], Seeing] = Seeing,
        parent: QWidget | None = None,
    ) -> None:
        """Take what gives the severity of another colour vision, which the chart's views set."""
        super().__init__(tr("Hat"), parent)
        self.document, self._units = document, units
        self.form = HatForm(document, units)
        self.stage = HatStage(document, units, seeing=seeing)
        self.fit = FitSide(document, units)
        for part in (self.form, self.fit):
            part.refused.connect(self.refused)
        self.fit.failed.connect(document.failed)
        self.content.addWidget(self._columns(), 1)
        document.appraised.connect(self.refresh)
        units.changed.connect(self.refresh)
        self.refresh()

    def control(self, *path: str) -> Control:
        """Give the control of a setting."""
        return next(control for field, control in self.form.controls.items() if field.path == path)

    def lead_to(self, place: Place) -> None:
        """Give the keys to the setting that a finding is about: the fold, the depth, or how large the hat is."""
        by_words = ("hat", "fold") if place.text == "brim" else ("hat", "depth_cm")
        control = self.control(*(("hat", "ease_percent") if place.round is not None else by_words))
        self.form.ensureWidgetVisible(control)
        control.setFocus()

    def finish(self) -> None:
        """Make no pictures of the hat any more, and work nothing out."""
        self.stage.panel.view.finish()
        self.fit.finish()

    def refresh(self) -> None:
        """Follow the design."""
        self.form.refresh()
        appraisal, told = self.document.appraisal, self._units.units.length.told
        self.note.setText(
            tr("{0} stitches cast on, {1} rounds; {2} round and {3} high as worn.").format(
                appraisal.cast_on_stitches,
                len(appraisal.rounds),
                told(appraisal.circumference_cm),
                told(appraisal.worn_height_cm),
            )
        )

    def _columns(self) -> QSplitter:
        columns = QSplitter(Qt.Orientation.Horizontal)
        columns.setChildrenCollapsible(False)
        columns.addWidget(self.form)
        columns.addWidget(self.stage)
        columns.addWidget(self.fit)
        columns.setStretchFactor(1, 1)
        columns.setSizes([FORM_WIDTH, STAGE_WIDTH, FIT_WIDTH])
        return columns
