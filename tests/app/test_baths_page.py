"""The Baths page by mouse and keys: from an empty store to a bath on record and its lots in the palette."""

import datetime as dt
from dataclasses import replace

import pytest
from PySide6.QtCore import QDate, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QLineEdit

from chartmaker.app.stock_pane import StockPane
from chartmaker.files.design_writing import save_design
from chartmaker.model.dyeing import DyeingHabits, Dyestuff, Pot, Undyed
from chartmaker.model.palette import Bath, Mordant, Palette, Planned, Yarn
from tests.app.hand_at import LEFT
from tests.builders import chart, lot

WELD = Bath(
    id="weld-june",
    dyestuff="weld",
    ratio=1.0,
    mordants=(Mordant("alum", 12.0),),
    ph_start=7.4,
    hottest_c=80.0,
    minutes=60,
)
WOOL = Yarn(id="wool", name="2-ply wool")
PLANNED = lot("coming", name="Weld, to come", yarn="wool", planned=Planned("weld-june", 1))
OAT = lot("oat", (32, 9, 16), on_hand_g=100)
PALETTE = Palette(name="Shed", yarns=(WOOL,), baths=(WELD,), lots=(OAT, PLANNED))
SHORT = chart("A B | x...\n" * 40, times=36, lots={"A": OAT, "B": PLANNED}, baths=(WELD,), yarns=(WOOL,), title="Cap")


@pytest.fixture
def on_baths(open_on):
    """Give the window on its Baths page, with the palette taken."""
    window = open_on(SHORT)
    window.lots.open_palette.take(PALETTE, None)
    window.show_page("baths")
    return window


def page_of(window):
    return window._pages["baths"]


def palette_of(window):
    return window.lots.open_palette.palette


def click_entry(window, words):
    """Click the entry of the list that begins so."""
    entries = page_of(window).list
    (item,) = [entries.item(row) for row in range(entries.count()) if entries.item(row).text().startswith(words)]
    QTest.mouseClick(entries.viewport(), LEFT, pos=entries.visualItemRect(item).center())
    QApplication.processEvents()  # the pane is laid out


def type_in_cell(table, row, column, text):
    """Click a cell and write in it, as a dyer would."""
    QTest.mouseClick(table.viewport(), LEFT, pos=table.visualRect(table.model().index(row, column)).center())
    QTest.qWait(
        QApplication.doubleClickInterval() + 50
    )  # a click on the cell at hand opens it, once it is no double one
    if QApplication.focusWidget() is table:
        QTest.keyClick(table, Qt.Key.Key_F2)
    editor = QApplication.focusWidget()
    assert isinstance(editor, QLineEdit)
    editor.selectAll()
    QTest.keyClicks(editor, text)
    QTest.keyClick(editor, Qt.Key.Key_Return)
    QApplication.processEvents()  # Qt takes what was written once the key is done with


def write(line, text):
    QTest.mouseClick(line, LEFT)
    line.selectAll()
    QTest.keyClick(line, Qt.Key.Key_Delete)
    QTest.keyClicks(line, text)


def texts(window):
    return " ".join(label.text() for label in page_of(window).pane.findChildren(QLabel) if not label.isHidden())


def test_from_an_empty_store_to_a_bath_on_record_and_its_lots_in_the_palette(on_baths):
    window, page = on_baths, page_of(on_baths)
    assert "the shelf lists none" in texts(window)

    click_entry(window, "Dyestuffs, yarn")
    stock = page.pane.widget()
    assert isinstance(stock, StockPane)
    type_in_cell(stock.dyestuffs, 0, 0, "weld")
    type_in_cell(stock.dyestuffs, 0, 3, "40")
    type_in_cell(stock.dyestuffs, 0, 5, "the warden")
    type_in_cell(stock.undyed, 0, 1, "200")
    type_in_cell(stock.pots, 0, 0, "big pot")
    assert "how much liquor big pot may hold" in stock.trouble.text()  # told, and not taken yet
    assert palette_of(window).pots == ()
    type_in_cell(stock.pots, 0, 1, "9,5")
    assert stock.trouble.isHidden()
    held = palette_of(window)
    assert held.dyestuffs == (Dyestuff(name="weld", on_hand_g=40.0, identified_by="the warden"),)
    assert held.undyed == (Undyed(yarn="wool", on_hand_g=200.0),)
    assert held.pots == (Pot(name="big pot", litres=9.5),)
    assert stock.dyestuffs.rowCount() == 2  # an empty row for the next

    click_entry(window, "Weld")
    assert "Big pot, which holds 9.5 L" in texts(window)
    assert "enough" in texts(window)
    form = page.form
    write(form.rows[0].dry, "23,5")
    form.rows[0].day.setDate(QDate(2026, 6, 20))
    write(form.numbers["ph_start"], "7.1")
    write(form.numbers["hottest_c"], "84")
    QTest.mouseClick(form.notes.viewport(), LEFT)
    QTest.keyClicks(form.notes, "windy")
    QTest.mouseClick(form.button, LEFT)

    after = palette_of(window)
    made = after.lot("coming")
    assert (made.planned, made.bath, made.load, made.on_hand_g) == (None, "weld-june", 1, 23.5)
    assert made.dyed_on == dt.date(2026, 6, 20)
    bath = after.bath("weld-june")
    assert (bath.hottest_c, bath.as_run.hottest_c, bath.record.ph_start, bath.record.notes) == (
        80.0,
        84.0,
        7.1,
        "windy",
    )
    assert (after.undyed_g("wool"), after.dyestuffs[0].on_hand_g) == (175.0, 15.0)
    assert window.document.design.palette.lot("coming") == made  # the design's copy followed
    assert page.note.text() == "Nothing is short: no bath is needed."
    assert page.key == ("record", "weld-june")
    assert "7.4  →  7.1" in texts(window)
    assert "Weld, to come" in window.statusBar().currentMessage()
    assert [page.list.item(row).text() for row in range(page.list.count())][-1] == "weld, 2026-06-20"

    window.undo()  # the design's copies
    window.undo()  # the record
    assert palette_of(window) == held
    assert [load.load for load in page._plan.cards[0].plan.loads] == [1]


def test_a_wet_load_gets_its_lot_when_it_was_weighed(on_baths):
    window, page = on_baths, page_of(on_baths)
    QTest.mouseClick(page.form.button, LEFT)
    wet = palette_of(window).bath("weld-june").record
    assert (wet.loads[0].fibre_g, wet.loads[0].dry_g) == (25.0, None)
    assert palette_of(window).lot("coming").planned is not None
    click_entry(window, "weld, ")
    assert "not weighed dry yet" in texts(window)
    write(page.form.rows[0].dry, "24")
    QTest.mouseClick(page.form.button, LEFT)
    assert palette_of(window).lot("coming").on_hand_g == 24.0


def test_a_new_run_of_a_bath_offers_its_lot_to_the_letter_of_the_old_one(open_on):
    old = lot("old", (70, 0, 60), name="Weld of June", yarn="wool", bath="weld-june", on_hand_g=1.0)
    palette = replace(PALETTE, lots=(OAT, old))
    design = chart("A B | x...\n" * 40, times=36, lots={"A": OAT, "B": old}, baths=(WELD,), yarns=(WOOL,))
    window = open_on(design)
    window.lots.open_palette.take(palette, None)
    window.show_page("baths")
    page = page_of(window)
    write(page.form.rows[0].dry, "40")
    page.form.rows[0].day.setDate(QDate(2026, 7, 4))
    QTest.mouseClick(page.form.button, LEFT)
    assert [bath.id for bath in palette_of(window).baths] == ["weld-june", "weld-2026-07-04"]
    click_entry(window, "weld, 2026-07-04")
    (button,) = page.pane.widget().uses
    assert button.text() == "Use Weld, first bath, 2026-07-04 as letter B"
    QTest.mouseClick(button, LEFT)
    assert window.document.design.colourway.lot_of("B") == "weld-2026-07-04-1"
    assert page.note.text() == "Nothing is short: no bath is needed."
    assert page.pane.widget().uses == []


def test_what_was_typed_waits_while_something_else_is_looked_at(on_baths):
    window, page = on_baths, page_of(on_baths)
    write(page.form.rows[0].dry, "22,5")
    click_entry(window, "Dyestuffs, yarn")
    write(page.pane.widget().habits["skein_g"], "30")
    QTest.keyClick(page.pane.widget().habits["skein_g"], Qt.Key.Key_Return)
    click_entry(window, "Weld")
    assert page.form.rows[0].dry.text() == "22,5"
    assert page.form.isVisible()
    QTest.mouseClick(page.form.button, LEFT)
    assert palette_of(window).lot("coming").on_hand_g == 22.5
    window.undo()
    window.undo()
    click_entry(window, "Weld")
    assert page.form.rows[0].dry.text() == ""  # a new form for a new run


def test_keys_typed_in_the_store_write_there_and_work_no_tool(on_baths):
    window, page = on_baths, page_of(on_baths)
    click_entry(window, "Dyestuffs, yarn")
    table = page.pane.widget().pots
    table.setFocus()
    before = window.document.design
    QTest.keyClick(table, Qt.Key.Key_D)
    assert isinstance(QApplication.focusWidget(), QLineEdit)
    QTest.keyClicks(QApplication.focusWidget(), "ye pot")
    assert QApplication.focusWidget().text().lower() == "dye pot"
    assert window.document.design == before


def test_what_is_no_number_is_told_beside_the_button_and_nothing_is_recorded(on_baths):
    form = page_of(on_baths).form
    write(form.rows[0].dry, "much")
    QTest.mouseClick(form.button, LEFT)
    assert "'much' is not a number" in form.trouble.text()
    write(form.rows[0].dry, "")
    write(form.rows[0].fibre, "")
    QTest.mouseClick(form.button, LEFT)
    assert "weigh at least one" in form.trouble.text()
    assert palette_of(on_baths) == PALETTE


def test_what_was_typed_survives_an_edit_elsewhere_that_changes_nothing_of_the_bath(on_baths):
    page = page_of(on_baths)
    write(page.form.rows[0].dry, "23")
    form = page.form
    on_baths.lots.open_palette.apply(replace(PALETTE, name="Barn"), "Rename")
    assert page.form is form
    assert form.rows[0].dry.text() == "23"


def test_ounces_stand_beside_the_grams_where_they_are_used(on_baths):
    page = page_of(on_baths)
    page.units.toggle()
    imperial = texts(on_baths)
    page.units.toggle()
    metric = texts(on_baths)
    assert "25 g (0.88 oz) · 1 skein" in imperial or "25 g (0.88 oz) · 1 skein" in metric  # 25 / 28.349523125
    assert ("oz" in imperial) != ("oz" in metric)


def test_cautions_stand_beside_their_lines_and_defer_to_labels(on_baths):
    told = texts(on_baths)
    for words in (
        "Eye damage (H318)",
        "Gloves, eye shield, dust mask.",
        "safety data sheet",
        "identified",
        "below a boil",
    ):
        assert words in told


def test_another_design_is_planned_along_and_left_out_again(on_baths, answers, tmp_path):
    window, page = on_baths, page_of(on_baths)
    answers.path = tmp_path / "tam.hat.toml"
    save_design(replace(SHORT, title="Tam"), answers.path)
    alone = page._plan.cards[0].plan.loads[0]
    QTest.mouseClick(page.together.add, LEFT)
    assert page.together.names.text() == "For Cap, Tam"
    both = page._plan.cards[0].plan.loads[0]
    assert both.short_g == pytest.approx(2 * alone.short_g)
    QTest.mouseClick(page.together.add, LEFT)
    assert "planned along already" in window.statusBar().currentMessage()
    page.together.leave.menu().actions()[0].trigger()
    assert page._plan.cards[0].plan.loads[0] == alone
    answers.path = tmp_path / "broken.hat.toml"
    answers.path.write_text("nothing", encoding="utf-8")
    QTest.mouseClick(page.together.add, LEFT)
    assert "broken.hat.toml" in answers.told[0]


def test_companions_count_the_yarn_that_the_palette_has_now(on_baths, tmp_path):
    page = page_of(on_baths)
    path = tmp_path / "tam.hat.toml"
    save_design(replace(SHORT, title="Tam"), path)
    page.desk.plan_along(path)
    write(page.form.rows[0].dry, "100")
    QTest.mouseClick(page.form.button, LEFT)
    assert page._plan.cards == ()  # 100 g are enough for both, though Tam's file still says that none is dyed


def test_habits_change_the_fibre_and_what_cannot_be_is_not_taken(on_baths):
    window, page = on_baths, page_of(on_baths)
    click_entry(window, "Dyestuffs, yarn")
    stock = page.pane.widget()
    write(stock.habits["skein_g"], "40")
    QTest.keyClick(stock.habits["skein_g"], Qt.Key.Key_Return)
    assert palette_of(window).dyeing == DyeingHabits(skein_g=40.0)
    assert page._plan.cards[0].plan.fibre_g == 40.0
    write(stock.habits["scouring_loss_percent"], "95")
    QTest.keyClick(stock.habits["scouring_loss_percent"], Qt.Key.Key_Return)
    assert "outside 0 to 80" in stock.trouble.text()
    assert palette_of(window).dyeing == DyeingHabits(skein_g=40.0)


def test_a_row_of_the_store_is_taken_out_by_delete(on_baths):
    window, page = on_baths, page_of(on_baths)
    pots = (Pot(name="big", litres=9.0), Pot(name="small", litres=2.0))
    window.lots.open_palette.apply(replace(PALETTE, pots=pots), "Prepare")
    click_entry(window, "Dyestuffs, yarn")
    table = page.pane.widget().pots
    QTest.mouseClick(table.viewport(), LEFT, pos=table.visualRect(table.model().index(0, 0)).center())
    QTest.keyClick(table, Qt.Key.Key_Delete)
    assert palette_of(window).pots == pots[1:]
    window.undo()
    assert palette_of(window).pots == pots
    assert table.item(0, 0).text() == "big"


def test_without_a_palette_the_record_begins_one(open_on):
    window = open_on(SHORT)
    window.show_page("baths")
    page = page_of(window)
    write(page.form.rows[0].dry, "30")
    QTest.mouseClick(page.form.button, LEFT)
    made = palette_of(window)
    assert (made.lot("coming").on_hand_g, made.bath("weld-june").record.loads[0].dry_g) == (30.0, 30.0)
    assert window.lots.open_palette.is_modified
    assert page.note.text() == "Nothing is short: no bath is needed."
