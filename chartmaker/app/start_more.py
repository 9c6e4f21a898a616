"""What is answered for the knitter until she says otherwise, each with what it rests on."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Signal

from chartmaker.app.start_boxes import UNCOUNTED, WHOLE, ChoiceBox, QuantityBox
from chartmaker.app.start_form import StartForm
from chartmaker.app.words import tr
from chartmaker.knit.crown import FEWEST_SECTIONS, MOST_SECTIONS
from chartmaker.model.hat import SHAPES
from chartmaker.model.units import Quantity, in_units

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from PySide6.QtWidgets import QWidget

    from chartmaker.app.start_given import Given, Outcome
    from chartmaker.model.units import Units

PERCENT = Quantity(1.0, " %")
PROFILE_WORDS = {"round": "round, a hemisphere", "flat": "flat, a wheel", "pointed": "pointed, a cone"}
SECTION_WORDS = {count: f"{count} sections" for count in range(FEWEST_SECTIONS, MOST_SECTIONS + 1)}
DECREASE_WORDS = {
    "single": "single decreases",
    "centred": "centred doubles",
    "paired": "leaning pairs",
}
UNSOURCED_PROFILE = "Round for a cap, flat for a tam: common practice, no source"
UNSOURCED_DECREASE = "They leave a line of stitches between sections: common practice, no source"
UNSOURCED = (UNSOURCED_PROFILE, UNSOURCED_DECREASE)
CROWNED = ("cap", "tam")
TASSEL_WORDS = {True: "a tassel at the point", False: "nothing sewn on"}
EVERY_CHOICE = (PROFILE_WORDS, SECTION_WORDS, DECREASE_WORDS, TASSEL_WORDS)


@dataclass(frozen=True, slots=True)
class _Question:
    name: str
    """Of the answer, as `Given` has it."""
    label: str
    quantity: Quantity = UNCOUNTED
    step: float = 1.0
    shapes: tuple[str, ...] = SHAPES
    """Of the hats that it is given for."""
    source_of: str = ""
    """The answer whose source it shares."""
    says: str = ""
    """What it rests on, where the answers do not say it."""
    words: Mapping[Any, str] = field(default_factory=dict)
    """What can be chosen, each with what it is called; empty for a number."""


def _questions(units: Units) -> Iterator[_Question]:
    yield _Question("ease_percent", tr("&Ease"), PERCENT)
    yield _Question("depth_cm", tr("&Depth"), units.length, 0.5)
    yield _Question("brim_depth_cm", tr("Brim de&pth"), units.length, 0.5, source_of="brim")
    yield _Question("widen_percent", tr("&Widening"), PERCENT, 5, ("tam",))
    yield _Question("widen_rounds", tr("In ro&unds"), WHOLE, 1, ("tam",))
    yield _Question("taper_decreases", tr("T&aper"), WHOLE, 1, ("stocking",))
    yield _Question("profile", tr("Cr&own"), shapes=CROWNED, words=PROFILE_WORDS, says=UNSOURCED_PROFILE)
    yield _Question("sections", tr("Sect&ions"), shapes=CROWNED, words=SECTION_WORDS, source_of="crown")
    yield _Question("decrease", tr("Narrowed by"), shapes=CROWNED, words=DECREASE_WORDS, says=UNSOURCED_DECREASE)
    yield _Question("has_tassel", tr("Tasse&l"), shapes=("stocking",), source_of="trims", words=TASSEL_WORDS)
    yield _Question("reserve_percent", tr("Yarn in reser&ve"), PERCENT)


class MoreForm(StartForm):
    """A default follows the other answers; one that is changed is the knitter's own from then on."""

    answered = Signal(str, object)
    """The name of an answer, and what the knitter gave; None where that is what is usual anyway."""

    def __init__(self, units: Units, parent: QWidget | None = None) -> None:
        super().__init__(is_beside=True, parent=parent)
        self._units = units
        self._questions = tuple(_questions(units))
        self.boxes: dict[str, QuantityBox | ChoiceBox] = {}
        self._usual: Mapping[str, Any] = {}
        for question in self._questions:
            self._add(question)

    def show_outcome(self, given: Given, outcome: Outcome) -> None:
        """Show what is usual where the knitter gave no answer, and what each rests on."""
        self._usual = outcome.usual
        for question in self._questions:
            row, box, name = self.rows[question.name], self.boxes[question.name], question.name
            usual = outcome.usual.get(name)
            value = given.own[given.key(name)] if given.is_own(name) else usual
            if value is not None:
                box.show_answer(value)
            if not given.is_own(name):
                said = in_units(question.says or outcome.sources.get(question.source_of or name, ""), self._units)
                row.tell_source(tr(said))
            elif usual is not None:
                row.tell_source(tr("Your own; usual here: {0}").format(box.told(usual)))
            row.show(is_shown=given.shape in question.shapes)

    def _add(self, question: _Question) -> None:
        name = question.name
        box = self.boxes[name] = _box(question)
        self.add(name, question.label, box)
        box.changed.connect(lambda: self._take(name, box))

    def _take(self, name: str, box: QuantityBox | ChoiceBox) -> None:
        usual = self._usual.get(name)
        is_usual = usual is not None and box.told(usual) == box.told(box.answer)
        self.answered.emit(name, None if is_usual else box.answer)


def _box(question: _Question) -> QuantityBox | ChoiceBox:
    name = question.label.replace("&", "")
    if question.words:
        return ChoiceBox(name, question.words)
    box = QuantityBox(name, 0.0, question.quantity, step=question.step)
    if question.name == "taper_decreases":
        box.setSuffix(tr(" every 2nd round"))
    return box
