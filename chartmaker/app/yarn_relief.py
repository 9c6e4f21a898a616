"""Where a lot is short: the rounds that another could take, what that costs in contrast, and one click to try."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QFrame, QPushButton, QScrollArea, QVBoxLayout, QWidget

from chartmaker.app.page_frame import words_label
from chartmaker.app.side_thread import SideThread
from chartmaker.app.words import number, tr

if TYPE_CHECKING:
    from PySide6.QtGui import QShowEvent

    from chartmaker.app.open_design import OpenDesign
    from chartmaker.app.units_setting import UnitsSetting
    from chartmaker.appraisal import Appraisal, LetterAppraisal
    from chartmaker.checks.relief import Relief


class ReliefPane(QScrollArea):
    """Worked out beside the window while it is in sight, for the appraisal as it stands."""

    def __init__(self, document: OpenDesign, units: UnitsSetting, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.document, self.units = document, units
        self._worked_out_for: Appraisal | None = None
        self._found: tuple[Relief, ...] = ()
        # It may outlive the window that asked, by some tenths of a second.
        self._thread = SideThread(QCoreApplication.instance())
        self._thread.done.connect(self._take)
        self._thread.failed.connect(document.failed)
        self.setAccessibleName(tr("Ways to relieve what is short"))
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWidgetResizable(True)
        document.appraised.connect(self._follow)
        units.changed.connect(self._show)

    @property
    def is_working(self) -> bool:
        """Whether something is being worked out."""
        return self._thread.is_running

    def showEvent(self, event: QShowEvent) -> None:
        """Come up to date."""
        super().showEvent(event)
        self._follow()

    def _follow(self) -> None:
        appraisal = self.document.appraisal
        if not self.isVisible() or self._worked_out_for is appraisal or self._thread.is_running:
            return
        if not any(entry.requirement.short_g > 0 for entry in appraisal.letters):
            self._take((appraisal, ()))
            return
        self._lay([words_label(tr("Looking for rounds that another lot could take…"))])
        self._thread.start(partial(_work_out, appraisal))

    def _take(self, found: tuple[Appraisal, tuple[Relief, ...]]) -> None:
        self._worked_out_for, self._found = found
        self._show()
        self._follow()

    def _show(self) -> None:
        appraisal = self._worked_out_for
        if appraisal is None:
            return
        parts: list[QWidget] = []
        short = [entry for entry in appraisal.letters if entry.requirement.short_g > 0]
        if not short:
            parts.append(words_label(tr("Nothing is short.")))
        for entry in short:
            weight = self.units.units.weight
            name = entry.lot.name if entry.lot else tr("no lot yet")
            parts.append(
                words_label(
                    tr("{0} ({1}) is {2} short.").format(entry.letter, name, weight.told(entry.requirement.short_g)),
                    is_strong=True,
                )
            )
            own = [one for one in self._found if one.letter == entry.letter]
            parts += [self._card(one) for one in own]
            if not own:
                parts.append(words_label(_why_none(entry)))
        self._lay(parts)

    def _card(self, relief: Relief) -> QWidget:
        card = QFrame()
        card.setFrameShape(QFrame.Shape.StyledPanel)
        layout = QVBoxLayout(card)
        layout.setContentsMargins(10, 8, 10, 8)
        layout.addWidget(words_label(self._words(relief)))
        button = QPushButton(tr("Try it"))
        button.setToolTip(tr("Work these rounds in that lot; it can be undone"))
        rounds = tr("rounds {0} to {1}").format(relief.first + 1, relief.last + 1)
        button.setAccessibleName(tr("Try {0} in {1}").format(relief.lot.name, rounds))
        button.clicked.connect(lambda: self._try(relief))
        layout.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)
        return card

    def _words(self, relief: Relief) -> str:
        weight = self.units.units.weight
        lines = [
            tr("Rounds {0} to {1} in {2}, as letter {3}: {4} of it.").format(
                relief.first + 1, relief.last + 1, relief.lot.name, relief.instead, weight.told(relief.taken_g)
            )
        ]
        if relief.value_difference_low is None:
            lines.append(tr("It stands alone in these rounds."))
        elif relief.grade == relief.grade_before:
            lines.append(
                tr("They stay {0}; value differs by at least {1}.").format(
                    tr(relief.grade), number(relief.value_difference_low)
                )
            )
        else:
            lines.append(
                tr("They turn from {0} to {1}; value differs by at least {2}.").format(
                    tr(relief.grade_before), tr(relief.grade), number(relief.value_difference_low)
                )
            )
        lines.append(tr("The change itself shows: ΔE₀₀ {0} between the two lots.").format(number(relief.seen_apart)))
        return "\n".join(lines)

    def _try(self, relief: Relief) -> None:
        if self._worked_out_for is self.document.appraisal and self.document.is_appraised:
            self.document.do(relief.edit)

    def _lay(self, parts: list[QWidget]) -> None:
        inside = QWidget()
        layout = QVBoxLayout(inside)
        layout.setSpacing(8)
        for part in parts:
            layout.addWidget(part)
        layout.addStretch(1)
        self.setWidget(inside)


def _why_none(entry: LetterAppraisal) -> str:
    """Tell why no lot is offered for what is short."""
    if entry.lot is None:
        return tr("It has no lot yet: the Lots page gives it one, dyed or planned.")
    if entry.shade is None:
        return tr("Its shade is not known yet, so no other lot can be judged in its place: dye it, or measure it.")
    return tr(
        "No other lot can take enough of its rounds: none has so much to spare, or it is worked there already. "
        "Dye more, or knit a smaller hat."
    )


def _work_out(appraisal: Appraisal) -> tuple[Appraisal, tuple[Relief, ...]]:
    from chartmaker.checks.relief import reliefs

    return appraisal, reliefs(appraisal)
