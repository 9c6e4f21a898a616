"""Readings taken into the palette in the window: from a file with a preview, and typed."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from chartmaker.app.taking_dialog import TakingDialog
from chartmaker.app.typed_dialog import TypedDialog
from chartmaker.model.bounds import MOST_LOTS
from chartmaker.model.measured import Measured
from chartmaker.model.palette import Bath, Lot, Palette, Planned
from chartmaker.model.reading import LabReading, ScreenReading
from chartmaker.model.settings import Viewing
from tests.builders import lot
from tests.files.measurements.builders import SAMPLES

BATH = Bath(id="pot", dyestuff="weld", ratio=1)
SHED = Palette(
    name="Shed",
    baths=(BATH,),
    lots=(
        lot("wau", (78.1, -2.4, 61.0), name="Wau"),
        lot("woad-1", (30, -5, -22), name="Woad & more"),
        Lot(id="weld-2", name="Weld, second", planned=Planned("pot", 2)),
    ),
)


@pytest.fixture
def shed(window):
    """Give the window with a palette of its own."""
    window.lots.open_palette.take(SHED, None)
    return window


def palette_of(window):
    return window.lots.open_palette.palette


def opened(window, answers, qtbot, name="lab-german.csv"):
    """Choose a measurement file by the menu's action, and give the preview that comes."""
    answers.path = SAMPLES / name
    window.actions_made["lots.take"].trigger()
    qtbot.waitUntil(lambda: window.findChild(TakingDialog) is not None)
    dialog = window.findChild(TakingDialog)
    qtbot.waitUntil(dialog.isVisible)
    return dialog


def cells(dialog, row):
    return [dialog.table.item(row, column).text() for column in range(dialog.table.columnCount())]


def press(button):
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)


def test_the_preview_says_what_each_sample_brings_before_anything_is_done(shed, answers, qtbot):
    dialog = opened(shed, answers, qtbot)
    assert cells(dialog, 0)[1:] == ["Krapp, erstes Bad", "", "2 new", "38.4", "lab", ""]
    assert dialog.box(0).currentText() == "a new lot"
    assert cells(dialog, 1)[3] == "0 new, 1 known"
    assert dialog.box(1).currentText() == "Wau (wau)"
    assert "lab-german.csv, CSV, for Shed. Samples: 2; readings: 3." in dialog.heading.text()
    assert "Names are taken from column 1" in dialog.notes.text()
    assert dialog.sum.text() == "Readings to add: 2. Lots that get them: 1, of them new: 1."
    assert palette_of(shed) == SHED


def test_taking_is_one_step_that_can_be_undone_on_the_lots_page(shed, answers, qtbot):
    dialog = opened(shed, answers, qtbot)
    press(dialog.take)
    assert len(palette_of(shed).lot("krapp-erstes-bad").readings) == 2
    assert shed.page == "lots"
    assert shed.lots.open_palette.is_modified
    shed.actions_made["edit.undo"].trigger()
    assert palette_of(shed) == SHED
    shed.actions_made["edit.redo"].trigger()
    assert palette_of(shed).lot("krapp-erstes-bad") is not None


def test_escape_leaves_the_palette_as_it_is(shed, answers, qtbot):
    dialog = opened(shed, answers, qtbot)
    QTest.keyClick(dialog, Qt.Key.Key_Escape)
    assert palette_of(shed) == SHED
    assert not shed.lots.open_palette.is_modified


def test_a_sample_can_be_sent_to_another_lot_or_nowhere_by_keys(shed, answers, qtbot):
    dialog = opened(shed, answers, qtbot)
    box = dialog.box(0)
    box.setFocus()
    QTest.keyClick(box, Qt.Key.Key_End)
    assert box.currentText() == "Weld, second (weld-2)"
    assert cells(dialog, 0)[6] == "it was planned and counts as dyed now"
    dialog.box(1).setFocus()
    QTest.keyClick(dialog.box(1), Qt.Key.Key_Up)
    assert cells(dialog, 1)[3] == "left out"
    press(dialog.take)
    weld = palette_of(shed).lot("weld-2")
    assert (weld.planned, weld.bath, weld.load, len(weld.readings)) == (None, "pot", 2, 2)
    assert len(palette_of(shed).lots) == 3


def test_readings_far_from_what_a_lot_had_are_told(shed, answers, qtbot):
    dialog = opened(shed, answers, qtbot)
    assert "!" not in dialog.sum.text()
    dialog.box(0).setCurrentIndex(dialog.box(0).findText("Woad & more (woad-1)"))
    assert cells(dialog, 0)[6].startswith("CIEDE2000 ")
    assert dialog.sum.text().splitlines()[1].startswith("! Samples far from the shade that their lots had: 1.")


def test_nothing_new_cannot_be_taken(shed, answers, qtbot):
    dialog = opened(shed, answers, qtbot)
    dialog.box(0).setCurrentIndex(1)
    assert dialog.sum.text() == "Nothing new would be added."
    assert not dialog.take.isEnabled()


def test_without_a_palette_one_begins(window, answers, qtbot):
    dialog = opened(window, answers, qtbot, "objects.cxf")
    press(dialog.take)
    assert [each.id for each in palette_of(window).lots] == ["madder-chalk", "weld"]
    assert window.lots.open_palette.is_modified


def test_a_broken_file_is_told_and_no_preview_comes(shed, answers, qtbot, tmp_path):
    answers.path = tmp_path / "bad.csv"
    answers.path.write_text("name,L,a,b\nx,5o,1,2\n", encoding="utf-8")
    shed.actions_made["lots.take"].trigger()
    qtbot.waitUntil(lambda: answers.told != [])
    assert "line 2, column 2 (L): is '5o', which is no number" in answers.told[0]
    assert shed.findChild(TakingDialog) is None


def test_no_file_chosen_is_nothing_to_do(shed, answers):
    answers.path = None
    shed.actions_made["lots.take"].trigger()
    assert not shed.background.is_busy


def test_as_many_samples_as_a_palette_holds_are_shown_at_once(qtbot):
    full = Palette(lots=tuple(lot(f"l{n}", (50, 0, n % 90)) for n in range(MOST_LOTS)))
    measured = [Measured(f"l{n}", (LabReading(lab=(51, 0, n % 90)),)) for n in range(MOST_LOTS)]
    dialog = TakingDialog(measured, source="all", palette=full, viewing=Viewing())
    qtbot.addWidget(dialog)
    dialog.show()
    assert dialog.taking.added == MOST_LOTS
    assert dialog.box(MOST_LOTS - 1).count() == MOST_LOTS + 2
    dialog.box(0).setCurrentIndex(1)
    assert dialog.taking.added == MOST_LOTS - 1


# --- typed


def typing(window, qtbot, lot_name="Wau"):
    window.show_page("lots")
    table = window._pages["lots"].table
    row = next(row for row in range(table.rowCount()) if table.item(row, 1).text() == lot_name)
    table.setCurrentCell(row, 1)
    window.actions_made["lots.type"].trigger()
    qtbot.waitUntil(lambda: window.findChild(TypedDialog) is not None)
    return window.findChild(TypedDialog)


def test_a_reading_is_typed_for_the_lot_that_is_chosen(shed, qtbot):
    dialog = typing(shed, qtbot)
    assert not dialog.add.isEnabled()
    QTest.keyClicks(dialog.line, "LCh 50 30 270")
    assert dialog.readout.text() == "L* a* b* 50.0 0.0 −30.0 under CIE D65 with the 10° observer."
    QTest.keyClick(dialog.line, Qt.Key.Key_Return)
    assert palette_of(shed).lot("wau").readings == (LabReading(lab=(78.1, -2.4, 61.0)), LabReading(lab=(50, 0, -30)))
    shed.actions_made["edit.undo"].trigger()
    assert palette_of(shed) == SHED


def test_a_screen_colour_is_told_to_be_approximate(shed, qtbot):
    dialog = typing(shed, qtbot, "Woad & more")
    QTest.keyClicks(dialog.line, "#8a3b2f")
    assert "approximate" in dialog.readout.text()
    press(dialog.add)
    assert palette_of(shed).lot("woad-1").readings[-1] == ScreenReading(hex="#8a3b2f")


def test_what_is_no_colour_is_told_while_it_is_typed_and_cannot_be_added(shed, qtbot):
    dialog = typing(shed, qtbot)
    QTest.keyClicks(dialog.line, "50 30")
    assert dialog.readout.text().startswith("This is no colour; write it like")
    QTest.keyClick(dialog.line, Qt.Key.Key_Return)
    assert dialog.isVisible()
    assert palette_of(shed) == SHED


def test_a_reading_that_the_lot_has_is_told(shed, qtbot):
    dialog = typing(shed, qtbot)
    QTest.keyClicks(dialog.line, "78.1 -2.4 61")
    press(dialog.add)
    assert palette_of(shed) == SHED
    assert shed.statusBar().currentMessage() == "The lot has this reading already."


def test_without_a_lot_chosen_there_is_nothing_to_type_for(shed):
    assert shed.page == "chart"
    assert not shed.actions_made["lots.type"].isEnabled()
    assert QApplication.activeModalWidget() is None
