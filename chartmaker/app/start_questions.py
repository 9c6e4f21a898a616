"""The questions of the dialog for a new hat: shape, what a knitter knows, and More, each with what is told of it."""

from __future__ import annotations

import re
from functools import partial
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QAbstractSpinBox,
    QComboBox,
    QFrame,
    QLineEdit,
    QScrollArea,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.number_boxes import CalmWheel
from chartmaker.app.start_boxes import ChoiceBox, CountOver, QuantityBox
from chartmaker.app.start_form import Row, StartForm
from chartmaker.app.start_given import Given
from chartmaker.app.start_head import HeadBox
from chartmaker.app.start_more import MoreForm
from chartmaker.app.start_shapes import ShapeTiles
from chartmaker.app.start_yarn import YarnBox
from chartmaker.app.told import told
from chartmaker.app.words import number, tr
from chartmaker.knit.brims import BRIM_KINDS
from chartmaker.model.units import CM_PER_INCH, IMPERIAL, INCHES_OF_GAUGE

if TYPE_CHECKING:
    from collections.abc import Callable

    from chartmaker.app.start_given import Outcome
    from chartmaker.model.palette import Palette
    from chartmaker.model.units import Units

WIDTH = 470
OUT_OF_RANGE = re.compile(r" is (-?[\d.]+(?:e[+-]\d+)?), outside (-?[\d.]+) to (-?[\d.]+)$")
"""How the model tells that."""


class StartQuestions(QScrollArea):
    """Gives the answers as they stand, and shows what comes of them beside each; More is folded at first."""

    changed = Signal()

    def __init__(self, units: Units, palette: Palette | None, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(tr("Questions"))
        self._units = units
        self._own: dict[str, Any] = {}
        self._outcome: Outcome | None = None
        self.shapes = ShapeTiles()
        self.head = HeadBox(units)
        self.stitches = CountOver(what=tr("Stitches"), over=tr("Length with these stitches"), units=units)
        self.rounds = CountOver(what=tr("Rounds"), over=tr("Length with these rounds"), units=units)
        self.yarn = YarnBox(palette, units)
        self.brim = ChoiceBox(tr("Brim"), BRIM_KINDS)
        self.name = QLineEdit()
        self.form, self.more = self._form(), MoreForm(units)
        self.more_button = QToolButton()
        self._lay_out()
        self._connect()
        self._name_after_shape()
        self.unfold(is_open=False)

    # --- the answers

    @property
    def given(self) -> Given:
        """The answers as they stand."""
        return Given(
            shape=self.shapes.shape,
            head_cm=self.head.head_cm,
            size=self.head.size_name,
            stitches=self.stitches.count.exact,
            stitches_over_cm=self.stitches.over.exact,
            rounds=self.rounds.count.exact,
            rounds_over_cm=self.rounds.over.exact,
            metres_per_100g=self.yarn.metres_per_100g,
            brim=self.brim.answer,
            title=self.name.text().strip() or self.name.placeholderText(),
            own=dict(self._own),
        )

    def usual(self) -> Given:
        """Give what is answered before anybody says otherwise."""
        over = INCHES_OF_GAUGE * CM_PER_INCH if self._units is IMPERIAL else 10.0
        grist = self.yarn.first_grist or Given().metres_per_100g
        return Given(stitches_over_cm=over, rounds_over_cm=over, metres_per_100g=grist)

    def show_given(self, given: Given) -> None:
        """Show other answers."""
        self._own = dict(given.own)
        self.shapes.choose(given.shape)
        self.head.show_head(given.head_cm, given.size)
        self.stitches.show_count(given.stitches, given.stitches_over_cm)
        self.rounds.show_count(given.rounds, given.rounds_over_cm)
        self.yarn.show_grist(given.metres_per_100g)
        self.brim.show_answer(given.brim)

    # --- what comes of them

    def show_outcome(self, given: Given, outcome: Outcome) -> None:
        """Show what answers rest on, and beside each what cannot be."""
        self._outcome = outcome
        self.more.show_outcome(given, outcome)
        for name, row in self.rows.items():
            label = row.label.text().replace("&", "")
            row.tell_trouble(
                told(_plain(outcome.troubles.get(name, ""), label, partial(self._told, name)), self._units)
            )
        self._tell_sources(given)
        if any(name in self.more.rows for name in outcome.troubles):
            self.unfold(is_open=True)

    def go_to_trouble(self) -> None:
        """Give the keys to the first answer that cannot be."""
        for name, row in self.rows.items():
            if self._outcome is not None and name in self._outcome.troubles:
                row.spoken.setFocus()
                self.ensureWidgetVisible(row.trouble)
                return

    @property
    def rows(self) -> dict[str, Row]:
        """Every question but the shape."""
        return {**self.form.rows, **self.more.rows}

    def _told(self, name: str, value: float) -> str:
        """Write a number as the box of a question would."""
        control = self.rows[name].control
        boxes = [control] if isinstance(control, QuantityBox) else control.findChildren(QuantityBox)
        return boxes[0].told(value) if len(boxes) == 1 else f"{value:g}"

    def _tell_sources(self, given: Given) -> None:
        self.form.rows["head_cm"].tell_source(self.head.source())
        self.form.rows["metres_per_100g"].tell_source(self.yarn.source())
        self._tell_gauge("stitches", given.stitches, given.stitches_over_cm)
        self._tell_gauge("rounds", given.rounds, given.rounds_over_cm)

    def _tell_gauge(self, name: str, count: float, over_cm: float) -> None:
        """Tell what a swatch counted over another length than is usual comes to."""
        gauge = self._units.gauge
        is_usual = abs(over_cm - self.usual().rounds_over_cm) < 0.01
        text = "" if over_cm <= 0 or is_usual else number(gauge.shown(10 * count / over_cm), 1) + tr(gauge.unit)
        self.form.rows[name].tell_source(text)

    # --- upkeep

    def unfold(self, *, is_open: bool) -> None:
        """Show More, or fold it away; the keys stay here."""
        focused = self.window().focusWidget()
        if not is_open and focused is not None and self.more.isAncestorOf(focused):
            self.more_button.setFocus()
        self.more.setVisible(is_open)
        self.more_button.setChecked(is_open)
        self.more_button.setArrowType(Qt.ArrowType.DownArrow if is_open else Qt.ArrowType.RightArrow)

    def fit_width(self) -> None:
        """Take the width that the words need in the language of the window, be More open or not."""
        label = max(self.form.label_width, self.more.label_width)
        for form in (self.form, self.more):
            form.take_label_width(label)
        needed = max(form.minimumSizeHint().width() for form in (self.form, self.more, self.shapes))
        self.setFixedWidth(max(WIDTH, needed + self.verticalScrollBar().sizeHint().width() + 16))

    def _name_after_shape(self) -> None:
        names = {"cap": tr("New cap"), "tam": tr("New tam"), "stocking": tr("New stocking cap")}
        self.name.setPlaceholderText(names[self.shapes.shape])

    def _take_own(self, name: str, value: Any) -> None:
        key = self.given.key(name)
        if value is None:
            self._own.pop(key, None)
        else:
            self._own[key] = value
        self.changed.emit()

    def _connect(self) -> None:
        self.shapes.changed.connect(self._name_after_shape)
        for part in (self.shapes, self.head, self.stitches, self.rounds, self.yarn, self.brim):
            part.changed.connect(self.changed)
        self.name.textChanged.connect(lambda _text: self.changed.emit())
        self.more.answered.connect(self._take_own)
        self.more_button.toggled.connect(lambda is_on: self.unfold(is_open=is_on))

    def _form(self) -> StartForm:
        form = StartForm()
        form.add("head_cm", tr("&Head"), self.head, buddy=self.head.size_box)
        form.add("stitches", tr("&Stitches"), self.stitches, buddy=self.stitches.count)
        form.add("rounds", tr("&Rounds"), self.rounds, buddy=self.rounds.count)
        form.add("metres_per_100g", tr("&Yarn"), self.yarn, buddy=self.yarn.focusProxy())
        form.add("brim", tr("&Brim"), self.brim)
        form.add("title", tr("&Name"), self.name)
        return form

    def _lay_out(self) -> None:
        self.more_button.setText(tr("&More: fit, depth and crown"))
        self.more_button.setCheckable(True)
        self.more_button.setAutoRaise(True)
        self.more_button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        self.more_button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(2, 2, 8, 2)
        column.setSpacing(10)
        for part in (self.shapes, self.form, self.more_button, self.more):
            column.addWidget(part)
        column.addStretch(1)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setWidget(inside)
        calm = CalmWheel(self)
        for box in (*inside.findChildren(QAbstractSpinBox), *inside.findChildren(QComboBox)):
            box.installEventFilter(calm)
            box.setFocusPolicy(Qt.FocusPolicy.StrongFocus)


def _plain(sentence: str, label: str, written: Callable[[float], str]) -> str:
    """Tell a number out of range by its question's name and in its units, which the model knows nothing of."""
    found = OUT_OF_RANGE.search(sentence)
    if found is None:
        return sentence
    return tr("{0} is {1}, outside {2} to {3}").format(label, *(written(float(each)) for each in found.groups()))
