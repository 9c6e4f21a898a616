"""The forms of a bath, of an undyed yarn, and of the palette itself."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING, Any

from PySide6.QtWidgets import QComboBox, QLineEdit, QPlainTextEdit, QWidget

from chartmaker.app.amounts_table import AmountsTable
from chartmaker.app.thing_form import MeasureLine, NumberLine, ThingForm, grist_label, labelled, link_id
from chartmaker.app.words import tr
from chartmaker.model.dyeing import STATES
from chartmaker.model.palette import Assist, Bath, Mordant, Yarn
from chartmaker.model.units import METRIC, Units

if TYPE_CHECKING:
    from collections.abc import Callable

    from chartmaker.model.palette import Palette
    from chartmaker.model.reading import Reading


class BathForm(ThingForm):
    """All that is written of a bath."""

    def __init__(
        self,
        bath: Bath | None,
        palette: Palette,
        take: Callable[[Any], None],
        parent: QWidget | None = None,
        *,
        units: Units = METRIC,
    ) -> None:
        """Take the bath to be changed, or None for a new one."""
        shown = bath or Bath(id="new", dyestuff="new", ratio=1.0)
        title = tr("New bath") if bath is None else tr("Bath {0}").format(bath.id)
        super().__init__(title, shown, take, parent, units=units)
        self.resize(560, 660)
        dyestuff = QLineEdit("" if bath is None else shown.dyestuff)
        bath_id = QLineEdit("" if bath is None else shown.id)
        self._line("dyestuff", tr("dyestuff"), dyestuff)
        self._line("id", tr("id"), bath_id, hint=tr("Short and lasting: lots name their bath by it"))
        self._line("part", tr("part"), QLineEdit(shown.part), hint=tr("Part of the plant: root, leaf, husk …"))
        if bath is None:
            link_id(dyestuff, bath_id, [each.id for each in palette.baths])
        state = QComboBox()
        state.addItems([tr("dry"), tr("fresh")])
        state.setCurrentIndex(STATES.index(shown.state))
        self.add("state", tr("weighed"), state, lambda: STATES[state.currentIndex()])
        self._number("ratio", tr("dyestuff to fibre"), shown.ratio, hint=tr("g of dyestuff to 1 g of dry fibre"))
        self._tables(shown)
        self._number("liquor_l_per_100g", tr("liquor, l to 100 g of fibre"), shown.liquor_l_per_100g)
        for field, label in (
            ("ph_start", tr("pH at the start")),
            ("ph_end", tr("pH at the end")),
        ):
            self._number(field, label, getattr(shown, field), is_optional=True)
        heat, label = MeasureLine(shown.hottest_c, units.heat), labelled(tr("hottest"), units.heat)
        self.add("hottest_c", label, heat, heat.number, changed=heat.editingFinished)
        self._number("minutes", tr("minutes"), shown.minutes, is_optional=True)
        notes = QPlainTextEdit(shown.notes)
        notes.setTabChangesFocus(True)
        notes.setMinimumHeight(70)
        self.add("notes", tr("notes"), notes, notes.toPlainText)
        dyestuff.setFocus()

    def _tables(self, bath: Bath) -> None:
        hint = tr("Typing, or F2, writes in a cell; Delete removes its row")
        mordants = AmountsTable(
            tr("mordant"), tr("% of fibre"), [(each.name, each.percent_wof) for each in bath.mordants]
        )
        read = partial(mordants.read, Mordant)
        self.add("mordants", tr("mordants"), mordants, read, changed=mordants.cellChanged, hint=hint)
        assists = AmountsTable(tr("assist"), tr("g to 100 g"), [(each.name, each.grams) for each in bath.assists])
        read_assists = partial(assists.read, Assist)
        self.add("assists", tr("assists"), assists, read_assists, changed=assists.cellChanged, hint=hint)

    def _line(self, field: str, label: str, line: QLineEdit, *, hint: str = "") -> None:
        self.add(field, label, line, line.text, changed=line.editingFinished, hint=hint)

    def _number(
        self, field: str, label: str, value: float | None, *, is_optional: bool = False, hint: str = ""
    ) -> None:
        line = NumberLine(value)
        read = line.number if is_optional else line.required
        self.add(field, label, line, read, changed=line.editingFinished, hint=hint)


class YarnForm(ThingForm):
    """All that is written of an undyed yarn."""

    def __init__(
        self,
        yarn: Yarn | None,
        palette: Palette,
        take: Callable[[Any], None],
        parent: QWidget | None = None,
        *,
        units: Units = METRIC,
    ) -> None:
        """Take the yarn to be changed, or None for a new one."""
        shown = yarn or Yarn(id="new", name="new")
        title = tr("New yarn") if yarn is None else tr("Yarn {0}").format(yarn.id)
        super().__init__(title, shown, take, parent, units=units)
        self.resize(460, 200)
        name, yarn_id = QLineEdit("" if yarn is None else shown.name), QLineEdit("" if yarn is None else shown.id)
        self.add("name", tr("name"), name, name.text, changed=name.editingFinished)
        hint = tr("Short and lasting: lots name their yarn by it")
        self.add("id", tr("id"), yarn_id, yarn_id.text, changed=yarn_id.editingFinished, hint=hint)
        if yarn is None:
            link_id(name, yarn_id, [each.id for each in palette.yarns])
        grist = MeasureLine(shown.metres_per_100g, units.grist)
        self.add("metres_per_100g", grist_label(units), grist, grist.number, changed=grist.editingFinished)
        readings = _undyed_readings(shown, palette)
        undyed = QComboBox()
        undyed.addItems([words for words, _ in readings])
        hint = tr("What the dye of its lots is reckoned from: strength, ladder and predicted shades want its spectrum")
        self.add("reading", tr("undyed shade"), undyed, lambda: readings[undyed.currentIndex()][1], hint=hint)
        name.setFocus()


def _undyed_readings(yarn: Yarn, palette: Palette) -> list[tuple[str, Reading | None]]:
    """Give what may be known of the undyed yarn, in words: what there is, nothing, or the mean of some lot."""
    from chartmaker.shade.strength import mean_spectrum

    readings: list[tuple[str, Reading | None]] = [(tr("not measured"), None)]
    if yarn.reading is not None:
        readings.insert(0, (tr("as it was measured"), yarn.reading))
    for lot in palette.lots:
        mean = mean_spectrum(lot.readings)
        if mean is not None:
            readings.append((tr("as the lot {0} was measured").format(lot.name), mean))
    return readings


class PaletteForm(ThingForm):
    """The palette's own name."""

    def __init__(self, palette: Palette, take: Callable[[Any], None], parent: QWidget | None = None) -> None:
        super().__init__(tr("The palette"), palette, take, parent)
        self.resize(460, 120)
        name = QLineEdit(palette.name)
        self.add("name", tr("name"), name, name.text, changed=name.editingFinished)
        name.setFocus()
