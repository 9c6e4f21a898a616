"""The forms of lots, baths and yarns are spoken to screen readers, translated, and worked by keys alone."""

import datetime as dt

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from chartmaker.app.bath_form import BathForm, PaletteForm, YarnForm
from chartmaker.app.copies_dialog import CopiesDialog
from chartmaker.app.lot_form import LotForm, reading_words
from chartmaker.app.use_up_dialog import UseUpDialog
from chartmaker.model.copies import lots_not_in, stale_copies
from chartmaker.model.palette import Assist, Bath, Mordant, Palette, Yarn
from chartmaker.model.reading import LabReading, ScreenReading, XyzReading
from tests.app.answers import Answers
from tests.app.test_accessible_names import unnamed
from tests.app.test_translation import QTS_OWN, Longer, unwrapped
from tests.builders import chart, flat_spectrum, lot

DAY = dt.date(2026, 9, 12)
PALETTE = Palette(
    yarns=(Yarn(id="band", name="band", metres_per_100g=460.0),),
    baths=(Bath(id="weld", dyestuff="weld", ratio=1.0, mordants=(Mordant("alum", 10),), assists=(Assist("alum", 1),)),),
    lots=(
        lot("walnut", (30, 8, 12), on_hand_g=5.0, yarn="band", bath="weld", dyed_on=DAY, notes="all", picture="weld"),
    ),
)
DESIGN = chart("A B | .x", times=18, lots={"A": lot("walnut", (30, 8, 12)), "B": lot("weld", (80, 0, 0))})


def lot_form(one=PALETTE.lots[0]):
    return LotForm(one, PALETTE, lambda _lot: None, place=None, questions=Answers())


def copies():
    stale, missing = stale_copies(DESIGN, PALETTE), lots_not_in(PALETTE, DESIGN)
    return CopiesDialog(stale, missing, refresh=lambda _ids: None, add=lambda _ids: None)


MAKERS = {
    "lot": lot_form,
    "new lot": lambda: lot_form(None),
    "bath": lambda: BathForm(PALETTE.baths[0], PALETTE, lambda _bath: None),
    "new bath": lambda: BathForm(None, PALETTE, lambda _bath: None),
    "yarn": lambda: YarnForm(PALETTE.yarns[0], PALETTE, lambda _yarn: None),
    "palette": lambda: PaletteForm(PALETTE, lambda _palette: None),
    "stock": lambda: UseUpDialog(PALETTE, ({"walnut": 7.0}, {"walnut": 9.0}), lambda _taken: None),
    "copies": copies,
}


@pytest.fixture(params=MAKERS)
def make(request):
    return MAKERS[request.param]


def shown(qtbot, dialog):
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose, on=False)
    qtbot.addWidget(dialog)
    dialog.open()
    dialog.activateWindow()
    qtbot.waitUntil(dialog.isActiveWindow)
    return dialog


def test_every_control_of_a_form_has_a_name(qtbot, make):
    assert unnamed(shown(qtbot, make())) == []


def test_every_text_of_a_form_passes_through_the_translator(qtbot, qapp, make):
    translator = Longer()
    qapp.installTranslator(translator)
    try:
        dialog = shown(qtbot, make())
        found = [text for _, text in unwrapped(dialog)]
        assert [text for text in found if text not in QTS_OWN] == []
    finally:
        qapp.removeTranslator(translator)


def test_tab_goes_through_every_field_of_a_lot_and_out_of_its_notes(qtbot):
    dialog = shown(qtbot, lot_form())
    visited = []
    for _ in range(20):
        visited.append(QApplication.focusWidget())
        QTest.keyClick(visited[-1], Qt.Key.Key_Tab)
    wanted = [dialog.control(field) for field in ("name", "id", "yarn", "on_hand_g", "notes")]
    wanted += [dialog.source.bath, dialog.source.load, dialog.source.planned, dialog.dyed_on.known, dialog.dyed_on.edit]
    wanted += [dialog.readings.list, dialog.readings.remove, dialog.picture.line]
    assert [each for each in wanted if each not in visited] == []


def test_tab_goes_through_every_field_of_a_bath_and_out_of_its_tables(qtbot):
    dialog = shown(qtbot, MAKERS["bath"]())
    visited = []
    for _ in range(20):
        visited.append(QApplication.focusWidget())
        QTest.keyClick(visited[-1], Qt.Key.Key_Tab)
    fields = ("dyestuff", "id", "part", "state", "ratio", "mordants", "assists", "ph_start", "minutes", "notes")
    assert [field for field in fields if dialog.control(field) not in visited] == []


def test_enter_takes_and_escape_does_not(qtbot):
    taken = []
    dialog = shown(qtbot, YarnForm(PALETTE.yarns[0], PALETTE, taken.append))
    QTest.keyClick(dialog, Qt.Key.Key_Escape)
    assert taken == []
    dialog = shown(qtbot, YarnForm(PALETTE.yarns[0], PALETTE, taken.append))
    QTest.keyClick(dialog.control("name"), Qt.Key.Key_Return)
    assert taken == [PALETTE.yarns[0]]


def test_a_form_that_was_not_touched_gives_back_what_it_was_given(qtbot):
    for thing, make in (
        (PALETTE.lots[0], lot_form),
        (lot("loose", load=3), lambda: lot_form(lot("loose", load=3))),
        (PALETTE.baths[0], MAKERS["bath"]),
        (PALETTE.yarns[0], MAKERS["yarn"]),
    ):
        assert shown(qtbot, make()).made() == thing


def test_each_kind_of_reading_is_told_in_a_line():
    assert reading_words(flat_spectrum()) == "spectrum, 400 to 700 nm, every 10 nm"
    assert reading_words(LabReading(lab=(50.0, 1.25, -2.0))) == "L*a*b* 50.0, 1.2, -2.0 (D65, 10°)"
    assert reading_words(XyzReading(xyz=(20.0, 21.0, 22.0))) == "XYZ 20.0, 21.0, 22.0 (D65, 10°)"
    assert reading_words(ScreenReading(hex="#8a3b2f")) == "screen colour #8a3b2f, approximate"
