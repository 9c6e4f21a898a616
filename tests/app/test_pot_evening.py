"""Evenings at the pot: from an empty palette to a hat whose yarn is dyed, on record, measured, enough, and printed."""

import pypdf
import pytest
from PySide6.QtCore import QDate, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QMenu

from chartmaker.app.bath_form import BathForm, YarnForm
from chartmaker.app.copies_dialog import CopiesDialog
from chartmaker.app.lot_form import LotForm
from chartmaker.app.main import open_window
from chartmaker.app.sheet_choices import SHEETS
from chartmaker.app.start_dialog import StartDialog
from chartmaker.app.swatch_form import SwatchForm
from chartmaker.app.typed_dialog import TypedDialog
from chartmaker.model.palette import Palette
from chartmaker.planning import plan_for
from chartmaker.report.as_json import report_as_json
from chartmaker.report.baths_as_json import baths_as_json
from tests.app.hand_at import LEFT
from tests.app.test_baths_page import click_entry, texts, write
from tests.app.test_lots_desk import fill_in, form, key, press_ok, write_cell
from tests.app.test_lots_page import click
from tests.app.test_start_dialog import retype

CTRL = Qt.KeyboardModifier.ControlModifier
DYED = {"walnut": ("30 8 12", 41.5), "weld": ("78 -2 60", 36.0)}
"""What the scale and the colour meter say of each dyestuff's lot when it is dry."""


@pytest.fixture
def window(settings, answers, qtbot):
    """Give the window as it opens on nothing."""
    window = open_window(settings)
    window.filing.questions = answers
    qtbot.addWidget(window, before_close_func=lambda _window: setattr(answers, "unsaved", "discard"))
    window.resize(1280, 800)
    window.activateWindow()
    qtbot.waitUntil(lambda: window.has_chart and QApplication.activeWindow() is window)
    return window


def palette_of(window):
    return window.lots.open_palette.palette


def begin_cap(window, qtbot):
    QTest.keyClick(window, Qt.Key.Key_N, CTRL)
    qtbot.waitUntil(lambda: isinstance(QApplication.activeWindow(), StartDialog))
    questions = QApplication.activeWindow().questions
    retype(questions.head.girth, "56")
    retype(questions.stitches.count, "28")
    retype(questions.rounds.count, "32")
    QTest.keyClick(questions.rounds.count, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: len(window.document.design.letters_in_use) == 2)


def plan_lots(window, qtbot):
    """Write down a yarn, a bath of each dyestuff, and a lot that is to come from each; then make them the letters."""
    window.show_page("lots")
    key(window, Qt.Key.Key_N)
    assert palette_of(window) == Palette()
    key(window, Qt.Key.Key_W)
    fill_in(form(qtbot, YarnForm), name="Fine two-ply", metres_per_100g="460")
    for place, dyestuff in enumerate(DYED, start=1):
        key(window, Qt.Key.Key_B)
        bath = form(qtbot, BathForm)
        if dyestuff == "weld":
            write_cell(bath.control("mordants"), 0, 0, "alum")
            write_cell(bath.control("mordants"), 0, 1, "12")
        fill_in(bath, dyestuff=dyestuff, ratio="1", minutes="60")
        key(window, Qt.Key.Key_L)
        made = form(qtbot, LotForm)
        write(made.control("name"), f"{dyestuff} to come")
        QTest.keyClick(made.yarn, Qt.Key.Key_Down)
        for _ in range(place):
            QTest.keyClick(made.source.bath, Qt.Key.Key_Down)
        QTest.keyClick(made.source.planned, Qt.Key.Key_Space)
        press_ok(made)
    page = window._pages["lots"]
    for letter, lot in zip("AB", palette_of(window).lots, strict=True):
        click(page, lot.id)
        key(window, Qt.Key.Key_F)
        qtbot.waitUntil(lambda: isinstance(QApplication.activePopupWidget(), QMenu))
        QTest.keyClick(QApplication.activePopupWidget(), getattr(Qt.Key, f"Key_{letter}"))
    assert dict(window.document.design.colourway.lots) == {"A": "walnut-to-come", "B": "weld-to-come"}


def tell_swatch(window, qtbot, downs, **fields):
    """Open the menu of ways to tell a swatch, walk to one by keys, and fill its form in."""
    page = window._pages["yarn"]
    QTest.mouseClick(page.side.tabBar(), LEFT, pos=page.side.tabBar().tabRect(0).center())
    page.swatches.add.setFocus()
    actions = page.swatches.add.menu().actions()
    actions[downs].trigger()
    dialog = form(qtbot, SwatchForm)
    dialog._stitches.setFocus()
    QTest.keyClicks(dialog._stitches, "1200")
    for field, text in fields.items():
        line = dialog.control(field)
        line.setFocus()
        QTest.keyClicks(line, text)
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Return)
    key(window, Qt.Key.Key_Shift, Qt.KeyboardModifier.NoModifier)  # active again


def last_column(window):
    table = window._pages["yarn"].table
    return [table.item(row, table.columnCount() - 1).text() for row in range(table.rowCount())]


def fill_store(window):
    click_entry(window, "Dyestuffs, yarn")
    stock = window._pages["baths"].pane.widget()
    for row, cells in enumerate((("walnut", "500", "the warden"), ("weld", "10", ""))):
        for column, text in zip((0, 3, 5), cells, strict=True):
            write_cell(stock.dyestuffs, row, column, text)
    write_cell(stock.undyed, 0, 1, "25")
    write_cell(stock.pots, 0, 0, "big pot")
    write_cell(stock.pots, 0, 1, "9,5")
    assert stock.trouble.isHidden()


def record(window, dyestuff):
    click_entry(window, dyestuff.capitalize())
    page = window._pages["baths"]
    write(page.form.rows[0].dry, f"{DYED[dyestuff][1]:g}")
    page.form.rows[0].day.setDate(QDate(2026, 10, 3))
    QTest.mouseClick(page.form.button, LEFT)


def printed(window, qtbot, answers, path, *names):
    """Tick only these sheets, and have them printed to a file; give its words."""
    answers.path = path
    window.show_page("sheets")
    page = window._pages["sheets"]
    for place, name in enumerate(SHEETS):
        item = page.side.list.item(place)
        item.setCheckState(Qt.CheckState.Checked if name in names else Qt.CheckState.Unchecked)
    qtbot.waitUntil(lambda: page.printed is not None and page.is_current, timeout=30_000)
    qtbot.waitUntil(lambda: {one.sheet for one in page.printed.pages} == set(names), timeout=30_000)
    with qtbot.waitSignal(window.background.ended, timeout=30_000):
        QTest.mouseClick(page.side.filing, LEFT)
    return " ".join(" ".join(one.extract_text().split()) for one in pypdf.PdfReader(path).pages)


def type_reading(window, qtbot, lot):
    click(window._pages["lots"], lot.id)
    key(window, Qt.Key.Key_Y)
    dialog = form(qtbot, TypedDialog)
    QTest.keyClicks(dialog.line, DYED[lot.bath][0])
    QTest.keyClick(dialog.line, Qt.Key.Key_Return)


def take_back(window, stocked):
    """Undo, on the page of each history, first what the palette and then what the design remembers."""
    window.show_page("baths")
    while palette_of(window) != stocked:
        key(window, Qt.Key.Key_Z, CTRL)
    assert all(lot.planned is not None for lot in palette_of(window).lots)
    window.show_page("chart")
    while window.document.stack.canUndo():
        key(window, Qt.Key.Key_Z, CTRL)


def tenths(*figures):
    return " ".join(f"{figure:.1f}" for figure in figures)


def test_an_evening_from_an_empty_store_to_yarn_that_is_enough(window, qtbot, answers, tmp_path):
    begin_cap(window, qtbot)
    first = window.document.design
    plan_lots(window, qtbot)
    window.show_page("yarn")
    by_gauge = window.document.appraisal.loop.cm
    tell_swatch(window, qtbot, 0, grams="4.1")
    tell_swatch(window, qtbot, 2, ball_before_g="50", ball_after_g="46")
    loop = window.document.appraisal.loop
    # By hand: on average 4.05 g over 1200 stitches, of 420 m in 100 g.
    assert window.document.design.metres_per_100g == 420
    assert loop.cm.likely == pytest.approx(100 * 4.05 * 4.20 / 1200)
    assert loop.cm.high - loop.cm.low < by_gauge.high - by_gauge.low
    assert [text[:2] for text in last_column(window)] == ["! "] * 3

    window.show_page("baths")
    fill_store(window)
    stocked = palette_of(window)
    click_entry(window, "To be got")
    assert "weld (dry) 15.0 g" in texts(window)  # 25 g of fibre want as much weld, and 10 g are there
    told = baths_as_json(plan_for([window.document.appraisal]))
    stove = printed(window, qtbot, answers, tmp_path / "stove.pdf", "baths", "shopping")
    for bath in told["baths"]:
        (load,) = bath["loads"]
        fibre = f"{load['fibre_g']:.1f} g fibre in {load['skeins']} skein"
        assert fibre in stove
        assert f"short by {load['short_g']:.1f} g" in stove
        assert f"{bath['dyestuff_g']:.1f} g dry {bath['dyestuff']} {bath['water_l']:.1f} l water" in stove
        assert all(f"{each['grams']:.1f} g {each['name']}" in stove for each in bath["mordants"])
    assert "Fine two-ply 50.0 2 75.0 25.0" in stove

    window.show_page("baths")
    for dyestuff in DYED:
        record(window, dyestuff)
    assert window._pages["baths"].note.text() == "Nothing is short: no bath is needed."
    window.show_page("lots")
    for lot in palette_of(window).lots:
        assert (lot.planned, lot.bath, lot.on_hand_g) == (None, lot.id.partition("-")[0], DYED[lot.bath][1])
        type_reading(window, qtbot, lot)
    key(window, Qt.Key.Key_C)
    QTest.mouseClick(form(qtbot, CopiesDialog).refresh, LEFT)
    palette = palette_of(window)
    assert [[reading.lab for reading in lot.readings] for lot in palette.lots] == [[(30, 8, 12)], [(78, -2, 60)]]
    assert (palette.undyed_g(palette.yarns[0].id), [each.on_hand_g for each in palette.dyestuffs]) == (0, [450, 0])

    window.show_page("yarn")
    assert not any(text.startswith("!") for text in last_column(window))
    relief = window._pages["yarn"].relief
    window._pages["yarn"].side.setCurrentWidget(relief)
    qtbot.waitUntil(lambda: "Nothing is short." in [label.text() for label in relief.findChildren(QLabel)])
    report = report_as_json(window.document.appraisal)
    yarn = printed(window, qtbot, answers, tmp_path / "yarn.pdf", "yarn")
    for letter, (_reading, weight) in zip(report["letters"], DYED.values(), strict=True):
        metres, grams = ([letter[name][end] for end in ("low", "likely", "high")] for name in ("metres", "grams"))
        assert f"{letter['stitches']} {tenths(*metres, *grams, letter['planned_grams'], weight)}" in yarn
        assert letter["short_g"] == 0
        assert letter["lab"] is not None

    take_back(window, stocked)
    assert window.document.design == first
