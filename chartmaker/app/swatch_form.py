"""The form of one swatch, told by its weight, by its unravelled length, or by its ball before and after."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtWidgets import QComboBox, QWidget

from chartmaker.app.thing_form import MeasureLine, NumberLine, ThingForm, grist_label, labelled
from chartmaker.app.words import tr
from chartmaker.model.gauge import Swatch
from chartmaker.model.units import METRIC, Units

if TYPE_CHECKING:
    from collections.abc import Callable

    from chartmaker.appraisal import Appraisal

_STAND_INS = {
    "grams": Swatch(stitches=1_000_000, grams=1.0),
    "metres": Swatch(stitches=1_000_000, metres=1.0),
    "ball": Swatch(stitches=1_000_000, ball_before_g=100_000.0, ball_after_g=0.0),
}
"""What each field is judged on while the others are not typed yet; none of them refuses anything by itself."""
PLAIN, AS_THIS_HAT, ALL_ALONG, COUNTED = range(4)
"""How a swatch was stranded, in the order of the box."""


class SwatchForm(ThingForm):
    """What is asked depends on the way in which the yarn is told."""

    def __init__(  # noqa: PLR0913 - what the form needs of its window
        self,
        way: str,
        swatch: Swatch | None,
        appraisal: Appraisal,
        take: Callable[[Any], None],
        *,
        units: Units = METRIC,
        parent: QWidget | None = None,
    ) -> None:
        """Take the way, "grams", "metres" or "ball", and the swatch to be changed, or None for a new one."""
        title = tr("New swatch") if swatch is None else tr("Swatch")
        super().__init__(title, _STAND_INS[way], take, parent, units=units)
        self.resize(560, 300)
        self._share = _share_passed(appraisal)
        self._stitches = NumberLine(swatch.stitches if swatch else None, is_whole=True)
        hint = tr("Stitches of one round or row, times the rounds: count them all")
        self.add("stitches", tr("stitches"), self._stitches, self._stitches.required, hint=hint)
        self._amounts(way, swatch)
        self._stranding(swatch)
        grist = MeasureLine(swatch.metres_per_100g if swatch else None, units.grist)
        hint = tr("Of the swatch's own yarn, where it is not the design's; a weight needs it")
        self.add("metres_per_100g", tr("{0}, if another").format(grist_label(units)), grist, grist.number, hint=hint)
        for line in (self._stitches, grist):
            line.editingFinished.connect(lambda line=line: self._judge_control(line))
        self._stitches.setFocus()

    def _judge_control(self, control: QWidget) -> None:
        if isinstance(control, NumberLine) and control.text():
            self._judge(next(row for row in self._rows if row.control is control))

    def _amounts(self, way: str, swatch: Swatch | None) -> None:
        told = {
            "grams": (("grams", tr("weight"), tr("On a scale that shows tenths, dry")),),
            "metres": (("metres", tr("yarn"), tr("Unravelled and laid out straight, all strands together")),),
            "ball": (
                ("ball_before_g", tr("ball before"), tr("Weighed after the cast-on, if that is not counted")),
                ("ball_after_g", tr("ball after"), tr("All balls that went into it together")),
            ),
        }[way]
        quantity = self._units.yarn if way == "metres" else self._units.weight
        for field, label, hint in told:
            line = MeasureLine(getattr(swatch, field) if swatch else None, quantity)
            self.add(field, labelled(label, quantity), line, line.required, hint=hint)
            line.editingFinished.connect(lambda line=line: self._judge_control(line))

    def _stranding(self, swatch: Swatch | None) -> None:
        self.stranding = QComboBox()
        self.stranding.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.stranding.setMinimumContentsLength(24)
        self.stranding.addItems(
            [
                tr("plain, one strand"),
                tr("stranded as this hat is ({0} floats to 100 stitches)").format(round(100 * self._share)),
                tr("stranded, two letters all along"),
                tr("stranded, as counted below"),
            ]
        )
        self.stranding.setAccessibleName(tr("how it was knitted"))
        self._passed = NumberLine(swatch.passed if swatch else 0, is_whole=True)
        self.stranding.setCurrentIndex(COUNTED if swatch and swatch.passed else PLAIN)
        self._form.addRow(tr("How it was knitted"), self.stranding)
        hint = tr("For each strand the stitches that it passes behind; those floats are taken out of the yarn")
        self.add("passed", tr("stitches passed by floats"), self._passed, self._read_passed, hint=hint)
        self.stranding.currentIndexChanged.connect(self._follow_stranding)
        self._follow_stranding()

    def _follow_stranding(self) -> None:
        self._passed.setEnabled(self.stranding.currentIndex() == COUNTED)

    def _read_passed(self) -> int:
        """Give the stitches that floats pass, as the box says."""
        how = self.stranding.currentIndex()
        if how == COUNTED:
            return int(self._passed.required())
        share = {PLAIN: 0.0, AS_THIS_HAT: self._share, ALL_ALONG: 1.0}[how]
        return round(share * (self._stitches.number() or 0)) if share else 0


def way_of(swatch: Swatch) -> str:
    """Give the way in which a swatch's yarn is told."""
    if swatch.ball_before_g is not None:
        return "ball"
    return "grams" if swatch.grams is not None else "metres"


def _share_passed(appraisal: Appraisal) -> float:
    """Give the stitches that floats pass in a hat, to each of its stitches."""
    return float(appraisal.floats.passed().sum()) / len(appraisal.fabric.letters)
