"""The palette is kept in the window: made from nothing, changed by forms, undone, saved, asked about, and compared."""

from dataclasses import replace

import pytest
from PySide6.QtCore import QDate, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialogButtonBox, QLineEdit

from chartmaker.app.bath_form import BathForm, PaletteForm, YarnForm
from chartmaker.app.copies_dialog import CopiesDialog
from chartmaker.app.keeping_strip import KeepingStrip
from chartmaker.app.lot_form import LotForm
from chartmaker.app.use_up_dialog import TAKEN, UseUpDialog
from chartmaker.files.design_writing import save_design
from chartmaker.files.palette_reading import read_palette
from chartmaker.files.palette_writing import save_palette
from chartmaker.model.palette import Assist, Bath, Mordant, Palette, Planned, Yarn
from chartmaker.model.palette_edits import add_lot, rename_palette
from tests.app.hand_at import LEFT
from tests.app.keeping_answers import KeepingAnswers
from tests.builders import chart, lot

CTRL, ALT, SHIFT = (
    Qt.KeyboardModifier.ControlModifier,
    Qt.KeyboardModifier.AltModifier,
    Qt.KeyboardModifier.ShiftModifier,
)
LOTS = {"A": lot("walnut", (30, 8, 12), on_hand_g=50.0), "B": lot("weld", (80, 0, 20), on_hand_g=60.0)}
DESIGN = chart("\n".join(["A B | x......."] * 8), times=18, lots=LOTS)
PALETTE = Palette(
    name="Towpath",
    yarns=(Yarn(id="fine", name="Fine"),),
    baths=(Bath(id="pot", dyestuff="madder", ratio=1.0),),
    lots=(*LOTS.values(), lot("moss", (50, -10, 20), yarn="fine", bath="pot")),
)


@pytest.fixture
def answers():
    return KeepingAnswers()


@pytest.fixture(autouse=True)
def no_dialog_left(qapp):
    """Close what a test that failed has left open, which would keep the keys from the next."""
    yield
    while qapp.activeModalWidget() is not None:
        qapp.activeModalWidget().close()


@pytest.fixture
def on_lots(open_on):
    """Give the window on its Lots page, with the palette taken."""
    window = open_on(DESIGN)
    window.lots.open_palette.take(PALETTE, None)
    window.show_page("lots")
    return window


@pytest.fixture
def saved(on_lots, tmp_path):
    """Give the window whose palette is a file, and that file."""
    path = tmp_path / "towpath.palette.toml"
    save_palette(PALETTE, path)
    on_lots.filing.palettes.take(path)
    return on_lots, path


def choose(window, lot_id):
    """Choose a lot as the page tells that it was clicked."""
    window._pages["lots"].chosen.emit(lot_id)
    assert window.lots.chosen == lot_id


def strip_of(window):
    return window.findChild(KeepingStrip)


def key(window, key, modifiers=CTRL | ALT):
    window.activateWindow()  # as a window manager would, once a dialog is gone
    while QApplication.activeWindow() is not window:
        QTest.qWait(5)
    QTest.keyClick(window, key, modifiers)


def form(qtbot, kind):
    def is_there():
        dialog = QApplication.activeModalWidget()
        return isinstance(dialog, kind) and dialog.isActiveWindow()

    qtbot.waitUntil(is_there)
    return QApplication.activeModalWidget()


def write(dialog, field, text):
    line = dialog.control(field)
    line.setFocus()
    line.selectAll()
    QTest.keyClicks(line, text)


def write_cell(table, row, column, text):
    table.setFocus()
    table.setCurrentCell(row, column)
    QTest.keyClick(table, Qt.Key.Key_F2)
    editor = QApplication.focusWidget()
    assert isinstance(editor, QLineEdit)
    editor.selectAll()
    QTest.keyClicks(editor, text)
    QTest.keyClick(editor, Qt.Key.Key_Return)
    QApplication.processEvents()  # Qt takes what was written once the key is done with


def press_ok(dialog):
    QTest.mouseClick(dialog.buttons.button(QDialogButtonBox.StandardButton.Ok), LEFT)


def fill_in(dialog, **fields):
    for field, text in fields.items():
        write(dialog, field, text)
    press_ok(dialog)


def test_a_palette_is_made_from_nothing_by_keys_saved_and_opened_again_equal(open_on, answers, tmp_path, qtbot):
    window = open_on(DESIGN)
    key(window, Qt.Key.Key_N)
    assert window.lots.open_palette.palette == Palette()
    key(window, Qt.Key.Key_W)
    fill_in(form(qtbot, YarnForm), name="Fine two-ply", metres_per_100g="460,5")
    key(window, Qt.Key.Key_B)
    bath = form(qtbot, BathForm)
    mordants = bath.control("mordants")
    write_cell(mordants, 0, 0, "alum")
    write_cell(mordants, 0, 1, "12,5")
    fill_in(bath, dyestuff="madder", part="root", ratio="0.5", ph_start="6.8", minutes="60")
    key(window, Qt.Key.Key_L)
    made = form(qtbot, LotForm)
    QTest.keyClick(made.yarn, Qt.Key.Key_Down)
    QTest.keyClick(made.source.bath, Qt.Key.Key_Down)
    QTest.keyClick(made.source.load, Qt.Key.Key_Up)
    QTest.keyClick(made.dyed_on.known, Qt.Key.Key_Space)
    made.dyed_on.edit.setDate(QDate(2026, 9, 12))
    fill_in(made, name="Madder, exhaust", on_hand_g="48")

    palette = window.lots.open_palette.palette
    assert palette.yarns == (Yarn(id="fine-two-ply", name="Fine two-ply", metres_per_100g=460.5),)
    assert palette.baths == (
        Bath(
            id="madder", dyestuff="madder", part="root", ratio=0.5, mordants=(Mordant("alum", 12.5),), ph_start=6.8,
            minutes=60,
        ),
    )  # fmt: skip
    (one,) = palette.lots
    assert (one.id, one.name, one.yarn, one.source) == (
        "madder-exhaust",
        "Madder, exhaust",
        "fine-two-ply",
        ("madder", 2),
    )
    assert str(one.dyed_on) == "2026-09-12"
    answers.path = tmp_path / "from nothing"
    key(window, Qt.Key.Key_S)
    path = tmp_path / "from nothing.palette.toml"
    assert read_palette(path) == palette
    assert not window.lots.open_palette.is_modified
    window.filing.palettes.take(path)
    assert window.lots.open_palette.palette == palette
    assert window.document.design == DESIGN


def test_a_lot_is_edited_undone_and_redone_on_the_lots_page_and_the_menu_says_of_what(on_lots, qtbot):
    choose(on_lots, "moss")
    key(on_lots, Qt.Key.Key_E)
    fill_in(form(qtbot, LotForm), on_hand_g="36.5")
    changed = on_lots.lots.open_palette.palette
    assert changed.lot("moss") == replace(PALETTE.lot("moss"), on_hand_g=36.5)
    assert on_lots.actions_made["edit.undo"].text().endswith("change lot moss (palette)")
    key(on_lots, Qt.Key.Key_Z, CTRL)
    assert on_lots.lots.open_palette.palette == PALETTE
    key(on_lots, Qt.Key.Key_Z, CTRL | SHIFT)
    assert on_lots.lots.open_palette.palette == changed
    assert on_lots.document.stack.count() == 0


def test_on_the_chart_page_undo_leaves_the_palette_alone(on_lots):
    on_lots.lots.open_palette.do(rename_palette(PALETTE, "Sluice"))
    on_lots.show_page("chart")
    assert not on_lots.actions_made["edit.undo"].isEnabled()
    key(on_lots, Qt.Key.Key_Z, CTRL)
    assert on_lots.lots.open_palette.palette.name == "Sluice"


def test_escape_and_what_changes_nothing_are_no_steps(on_lots, qtbot):
    choose(on_lots, "moss")
    key(on_lots, Qt.Key.Key_E)
    dialog = form(qtbot, LotForm)
    write(dialog, "name", "other")
    QTest.keyClick(dialog, Qt.Key.Key_Escape)
    key(on_lots, Qt.Key.Key_E)
    press_ok(form(qtbot, LotForm))
    assert on_lots.lots.open_palette.stack.count() == 0


def test_what_is_wrong_is_told_beside_its_field_and_nothing_is_taken(on_lots, qtbot):
    key(on_lots, Qt.Key.Key_L)
    dialog = form(qtbot, LotForm)
    write(dialog, "on_hand_g", "-3")
    press_ok(dialog)
    assert dialog.isVisible()
    assert dialog.trouble_with("name") == "! A lot's name is empty"
    assert dialog.trouble_with("on_hand_g") == "! On hand, g is −3, outside 0 to 100000"
    assert dialog.focusWidget() is dialog.control("name")
    write(dialog, "on_hand_g", "much")
    write(dialog, "name", "Moss")
    write(dialog, "id", "moss")
    press_ok(dialog)
    assert dialog.trouble_with("on_hand_g") == "! 'much' is not a number"
    assert dialog.trouble_with("name") == ""
    write(dialog, "on_hand_g", "5")
    press_ok(dialog)
    assert dialog.trouble.text() == "! Two lots have the id 'moss'"
    assert on_lots.lots.open_palette.palette == PALETTE


def test_a_lot_can_be_planned_but_not_with_readings(on_lots, qtbot):
    choose(on_lots, "moss")
    key(on_lots, Qt.Key.Key_E)
    dialog = form(qtbot, LotForm)
    QTest.keyClick(dialog.source.planned, Qt.Key.Key_Space)
    press_ok(dialog)
    assert dialog.trouble.text().startswith("! A planned lot cannot have readings")
    QTest.mouseClick(dialog.readings.remove, LEFT)
    press_ok(dialog)
    assert on_lots.lots.open_palette.palette.lot("moss").planned == Planned("pot", 1)


def test_a_lot_that_letters_are_is_deleted_only_when_the_dyer_is_sure(on_lots, answers):
    choose(on_lots, "walnut")
    key(on_lots, Qt.Key.Key_Backspace)
    (asked,) = answers.asked
    users = "Letter A of colourway first of the open design is this lot"
    assert asked == f"Delete walnut from the palette? {users}; the design keeps its own copy."
    assert on_lots.lots.open_palette.palette == PALETTE
    answers.sure = True
    key(on_lots, Qt.Key.Key_Backspace)
    assert on_lots.lots.open_palette.palette.lot("walnut") is None
    assert on_lots.document.design == DESIGN
    key(on_lots, Qt.Key.Key_Z, CTRL)
    assert on_lots.lots.open_palette.palette == PALETTE


def test_a_lot_that_nobody_uses_is_deleted_unasked_and_a_bath_in_use_is_not(on_lots, answers):
    on_lots.lots.delete_bath("pot")
    on_lots.lots.delete_yarn("fine")
    assert answers.told == [
        "'pot' cannot be deleted: moss came from this bath.",
        "'fine' cannot be deleted: moss is of this yarn.",
    ]
    choose(on_lots, "moss")
    key(on_lots, Qt.Key.Key_Backspace)
    on_lots.lots.delete_bath("pot")
    on_lots.lots.delete_yarn("fine")
    palette = on_lots.lots.open_palette.palette
    assert (palette.baths, palette.yarns, len(palette.lots), answers.asked) == ((), (), 2, [])


def test_a_bath_is_changed_and_a_row_of_its_tables_removed(on_lots, qtbot):
    assists = (Assist("chalk", 1.0), Assist("bran", 5.0))
    palette = on_lots.lots.open_palette
    palette.apply(replace(PALETTE, baths=(replace(PALETTE.baths[0], assists=assists, state="fresh"),)), "Prepare")
    choose(on_lots, "moss")
    key(on_lots, Qt.Key.Key_H)
    dialog = form(qtbot, BathForm)
    table = dialog.control("assists")
    table.setFocus()
    table.setCurrentCell(0, 0)
    QTest.keyClick(table, Qt.Key.Key_Delete)
    fill_in(dialog, id="second pot", hottest_c="72")
    bath = palette.palette.baths[0]
    assert (bath.id, bath.assists, bath.state, bath.hottest_c) == ("second pot", assists[1:], "fresh", 72)
    assert palette.palette.lot("moss").bath == "second pot"


def test_closing_with_an_unsaved_palette_asks_and_can_save(saved, answers):
    window, path = saved
    window.lots.open_palette.do(add_lot(PALETTE, lot("sedge")))
    assert "not saved" in strip_of(window).name.text()
    answers.unsaved = "cancel"
    window.close()
    assert window.isVisible()
    assert answers.asked == ["towpath.palette.toml"]
    assert read_palette(path) == PALETTE
    answers.unsaved = "save"
    window.close()
    assert not window.isVisible()
    assert read_palette(path).lots[-1].id == "sedge"


def test_opening_another_design_or_palette_with_an_unsaved_palette_asks(saved, answers, tmp_path):
    window, _ = saved
    save_design(DESIGN, tmp_path / "other.hat.toml")
    palette = window.lots.open_palette
    palette.do(rename_palette(palette.palette, "Sluice"))
    answers.path = tmp_path / "other.hat.toml"
    window.filing.open()
    window.filing.open_palette()
    assert answers.asked == ["towpath.palette.toml"] * 2
    window.filing.new()
    assert len(answers.asked) == 2
    assert palette.palette.name == "Sluice"
    answers.unsaved = "discard"
    window.filing.open()
    assert not palette.is_modified
    assert not palette.is_there


def test_a_palette_changed_by_something_else_is_not_overwritten_unasked(saved, answers):
    window, path = saved
    others = replace(PALETTE, name="Others'")
    save_palette(others, path)
    palette = window.lots.open_palette
    palette.do(rename_palette(palette.palette, "Mine"))
    window.lots.save_palette()
    assert answers.changes == [("towpath.palette.toml", False)]
    assert read_palette(path) == others
    answers.changed = "theirs"
    window.lots.save_palette()
    assert palette.palette == others
    save_palette(PALETTE, path)
    palette.do(rename_palette(palette.palette, "Mine"))
    answers.changed = "mine"
    window.lots.save_palette()
    assert read_palette(path).name == "Mine"


def test_reading_the_design_anew_keeps_a_palette_that_is_not_saved(saved, tmp_path):
    window, _ = saved
    path = tmp_path / "own.hat.toml"
    save_design(DESIGN, path)
    window.document.path = path
    palette = window.lots.open_palette
    palette.do(rename_palette(palette.palette, "Mine"))
    window.filing.take_again()
    assert palette.palette.name == "Mine"
    assert palette.is_modified


def test_a_palette_taken_by_another_way_begins_a_new_history(saved):
    window, _ = saved
    palette = window.lots.open_palette
    palette.do(rename_palette(palette.palette, "Mine"))
    window.document.take_palette(Palette(name="Sluice"))
    assert (palette.palette.name, palette.path, palette.is_modified, palette.stack.count()) == (
        "Sluice",
        None,
        False,
        0,
    )


def test_the_appraisal_follows_the_palette_and_the_copies_do_not(on_lots):
    told = []
    on_lots.document.appraised.connect(lambda: told.append(1))
    on_lots.lots.open_palette.do(add_lot(PALETTE, lot("pale", (95, 0, 0))))
    assert told
    assert on_lots.document.is_appraised
    assert on_lots.document.design.palette == DESIGN.palette


def test_stale_copies_are_told_shown_and_refreshed_in_one_step_of_the_design(on_lots, qtbot):
    other = tuple(replace(each, on_hand_g=7.0) if each.id == "walnut" else each for each in PALETTE.lots)
    on_lots.lots.open_palette.apply(replace(PALETTE, lots=other), "Weigh")
    strip = strip_of(on_lots)
    assert strip.copies.text() == "! 1 lot of this design differs from the palette"
    QTest.mouseClick(strip.show_copies, LEFT)
    dialog = form(qtbot, CopiesDialog)
    item = dialog.stale.topLevelItem(0).child(0)
    assert [item.text(column) for column in range(3)] == ["on hand", "50 g", "7 g"]
    QTest.mouseClick(dialog.refresh, LEFT)
    assert on_lots.document.design.palette.lot("walnut").on_hand_g == 7
    assert on_lots.document.stack.count() == 1
    assert strip.copies.text() == ""
    assert on_lots.actions_made["edit.undo"].text().endswith("refresh a copy (design)")
    key(on_lots, Qt.Key.Key_Z, CTRL)
    assert on_lots.document.design == DESIGN
    key(on_lots, Qt.Key.Key_Z, CTRL)
    assert on_lots.lots.open_palette.palette == PALETTE


def test_only_the_chosen_copies_are_refreshed(on_lots, qtbot):
    other = tuple(replace(each, on_hand_g=7.0) for each in PALETTE.lots)
    on_lots.lots.open_palette.apply(replace(PALETTE, lots=other), "Weigh")
    key(on_lots, Qt.Key.Key_C)
    dialog = form(qtbot, CopiesDialog)
    dialog.stale.setFocus()
    dialog.stale.setCurrentItem(dialog.stale.topLevelItem(0))
    QTest.keyClick(dialog.stale, Qt.Key.Key_Space)
    QTest.mouseClick(dialog.refresh, LEFT)
    assert [each.on_hand_g for each in on_lots.document.design.palette.lots] == [50, 7]


def test_lots_of_the_design_are_added_to_the_palette(on_lots, qtbot):
    palette = on_lots.lots.open_palette
    palette.apply(replace(PALETTE, lots=PALETTE.lots[1:]), "Lose one")
    key(on_lots, Qt.Key.Key_C)
    QTest.mouseClick(form(qtbot, CopiesDialog).add, LEFT)
    assert palette.palette.lots == (*PALETTE.lots[1:], PALETTE.lots[0])


def test_what_the_hat_used_is_taken_off_the_stock_in_one_step(on_lots, qtbot):
    needs = {each.requirement.lot: each.requirement for each in on_lots.document.appraisal.letters}
    key(on_lots, Qt.Key.Key_U)
    dialog = form(qtbot, UseUpDialog)
    QTest.keyClick(dialog.planned, Qt.Key.Key_Space)
    press_ok(dialog)
    palette = on_lots.lots.open_palette
    for lot_id, before in (("walnut", 50.0), ("weld", 60.0)):
        assert palette.palette.lot(lot_id).on_hand_g == pytest.approx(before - needs[lot_id].planned_g, abs=0.051)
    assert palette.stack.count() == 1
    key(on_lots, Qt.Key.Key_Z, CTRL)
    assert palette.palette == PALETTE


def test_a_weight_written_by_hand_is_taken_and_never_more_than_there_is(on_lots, qtbot):
    key(on_lots, Qt.Key.Key_U)
    dialog = form(qtbot, UseUpDialog)
    for text in ("nothing", "55,5"):
        write_cell(dialog.table, 0, TAKEN, text)
        if text == "nothing":
            press_ok(dialog)
            assert dialog.isVisible()
            assert dialog.told.text() == "! walnut: nothing is no weight"
    assert dialog.told.text() == "! walnut has 5.5 g less than that: its weight becomes 0"
    press_ok(dialog)
    assert on_lots.lots.open_palette.palette.lot("walnut").on_hand_g == 0


def test_a_stock_without_the_hats_lots_is_told(on_lots, answers):
    on_lots.lots.open_palette.take(Palette(lots=(lot("moss"),)), None)
    key(on_lots, Qt.Key.Key_U)
    assert answers.told == ["The palette has none of the lots that this hat uses."]


def test_a_picture_beside_the_palette_is_chosen_and_shown_and_one_elsewhere_refused(saved, answers, qtbot, tmp_path):
    from PySide6.QtGui import QImage

    window, path = saved
    image = QImage(30, 20, QImage.Format.Format_RGB32)
    image.fill(0x804020)
    (tmp_path.parent / "outside.png").unlink(missing_ok=True)
    image.save(str(tmp_path.parent / "outside.png"))
    image.save(str(path.parent / "moss.png"))
    choose(window, "moss")
    key(window, Qt.Key.Key_E)
    dialog = form(qtbot, LotForm)
    answers.path = tmp_path.parent / "outside.png"
    QTest.mouseClick(dialog.picture.choose, LEFT)
    assert len(answers.told) == 1
    answers.path = path.parent / "moss.png"
    QTest.mouseClick(dialog.picture.choose, LEFT)
    assert dialog.picture.shown.pixmap().width() == 120
    QTest.keyClicks(dialog.control("notes"), "soft")
    press_ok(dialog)
    made = window.lots.open_palette.palette.lot("moss")
    assert (made.picture, made.notes) == ("moss.png", "soft")


def test_a_picture_that_is_missing_or_leads_out_says_so(saved, qtbot):
    window, _ = saved
    choose(window, "moss")
    key(window, Qt.Key.Key_E)
    dialog = form(qtbot, LotForm)
    for name in ("../outside.png", "none.png"):
        dialog.picture.line.setText(name)
        dialog.picture.line.editingFinished.emit()
        assert dialog.picture.shown.text() == "! There is no such picture in the palette's folder"
    QTest.keyClick(dialog, Qt.Key.Key_Escape)


def test_a_palette_is_named(on_lots, qtbot):
    key(on_lots, Qt.Key.Key_K)
    fill_in(form(qtbot, PaletteForm), name="Sluice, 2026")
    assert on_lots.lots.open_palette.palette == replace(PALETTE, name="Sluice, 2026")


def test_the_design_can_name_its_palette_which_is_then_opened_with_it(saved, answers, tmp_path, qtbot):
    window, path = saved
    key(window, Qt.Key.Key_G)
    assert answers.told == ["Save the design and the palette first: the one names the other's file."]
    (tmp_path / "hats").mkdir()
    answers.path = tmp_path / "hats" / "own.hat.toml"
    window.filing.save_as()
    key(window, Qt.Key.Key_G)
    assert window.document.design.palette_file == "../towpath.palette.toml"
    assert window.actions_made["lots.link"].isChecked()
    window.filing.save()
    window.filing.new()
    assert window.lots.open_palette.is_there
    window.lots.new_palette()
    window.filing.open()
    qtbot.waitUntil(lambda: window.lots.open_palette.path is not None)
    assert window.lots.open_palette.path.resolve() == path
    assert window.lots.open_palette.palette == PALETTE
    key(window, Qt.Key.Key_G)
    assert window.document.design.palette_file == ""


def test_nobody_is_asked_about_the_file_of_a_palette_that_is_open_no_more(saved):
    window, path = saved
    window.lots.new_palette()
    save_palette(replace(PALETTE, name="Others'"), path)
    assert not window.filing.palettes.changes.are_to_ask
    window.filing.palettes.take(path)
    save_palette(PALETTE, path)
    assert window.filing.palettes.changes.are_to_ask
    window.lots.new_palette()
    assert not window.filing.palettes.changes.are_to_ask


def test_a_full_palette_takes_no_more_lots_of_the_design_and_says_so(on_lots, answers, qtbot):
    full = Palette(lots=tuple(lot(f"lot {number}") for number in range(400)))
    on_lots.lots.open_palette.take(full, None)
    key(on_lots, Qt.Key.Key_C)
    QTest.mouseClick(form(qtbot, CopiesDialog).add, LEFT)
    assert answers.told == ["A palette has 401 lots, more than 400."]
    assert on_lots.lots.open_palette.palette == full
