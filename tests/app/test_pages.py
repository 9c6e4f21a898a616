import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel

from chartmaker.app.actions import ACTIONS
from chartmaker.app.control_keys import CONTROL_KEYS, keys_of
from chartmaker.app.keys_dialog import KeysDialog
from chartmaker.app.window import PAGES
from chartmaker.model.design import Colourway
from chartmaker.model.palette import Bath, Mordant
from tests.app.hand_at import drag
from tests.builders import chart, lot

CTRL = Qt.KeyboardModifier.ControlModifier
WELD = Bath(id="weld-june", dyestuff="weld", ratio=1.0, mordants=(Mordant("alum", 12.0),))
SHORT = chart(
    "A B | x...\n" * 40,
    times=36,
    lots={
        "A": lot("walnut", labs=((32, 9, 16), (33, 9, 15)), on_hand_g=100),
        "B": lot("weld", (76, -3, 58), bath="weld-june", on_hand_g=1),
    },
    baths=(WELD,),
)


def cells(table):
    return [
        [table.item(line, place).text() for place in range(table.columnCount())] for line in range(table.rowCount())
    ]


@pytest.mark.parametrize("number", range(1, 6))
def test_each_page_has_a_key(window, number):
    QTest.keyClick(window, Qt.Key(Qt.Key.Key_0 + number), CTRL)
    assert window.page == PAGES[number - 1]
    assert window._pages.stack.currentWidget() is window._pages[window.page]


def test_the_lots_page_lists_value_spread_weight_and_what_they_rest_on(open_on):
    window = open_on(SHORT)
    window.show_page("lots")
    rows = cells(window._pages["lots"].table)
    assert [row[1] for row in rows] == ["weld", "walnut"]
    assert rows[1][2:] == ["A", "32.5", "± 0.7", "100", "lab, 2 ×", "", ""]
    assert rows[0][7:] == ["weld", "1"]


def test_the_yarn_page_shows_the_appraisals_figures(open_on):
    window = open_on(SHORT)
    window.show_page("yarn")
    rows = cells(window._pages["yarn"].table)
    need = window.document.appraisal.letter("B").requirement
    assert rows[1][:4] == ["B", "weld", "", str(need.stitches)]
    assert rows[1][-1] == f"! −{need.short_g:.1f}"
    assert rows[0][-1] == f"{100 - window.document.appraisal.letter('A').requirement.planned_g:.0f}"
    assert rows[2][1] == "all letters"
    assert int(rows[2][3]) == int(rows[0][3]) + int(rows[1][3])


def test_the_baths_page_shows_what_is_short_as_a_bath_with_its_cautions(open_on):
    window = open_on(SHORT)
    window.show_page("baths")
    text = " ".join(label.text() for label in window._pages["baths"].findChildren(QLabel))
    (plan,) = window.document.appraisal.baths
    for words in ("weld", "alum", f"{plan.dyestuff_g:.0f} g", "safety data sheet", "Aluminium salts"):
        assert words in text


def test_the_baths_page_says_when_nothing_is_short(window):
    window.show_page("baths")
    assert "without a bath to plan from: A" in window._pages["baths"].note.text()


def test_pages_follow_an_edit(open_on):
    window = open_on(SHORT)
    window.show_page("yarn")
    before = cells(window._pages["yarn"].table)
    window.show_page("chart")
    drag(window.chart.canvas, (0, 0), (0, 2))
    assert cells(window._pages["yarn"].table) != before


def test_a_setting_of_the_hat_is_one_step_of_undo(open_on):
    window = open_on(SHORT)
    window.show_page("hat")
    page = window._pages["hat"]
    head = page.control("hat", "head_cm")
    head.setFocus()
    head.selectAll()
    QTest.keyClicks(head, "58")
    assert window.document.design.hat.head_cm == 56
    QTest.keyClick(head, Qt.Key.Key_Return)
    assert window.document.design.hat.head_cm == 58
    assert window.document.stack.count() == 1
    assert window.document.stack.undoText() == "Change head"
    window.undo()
    assert head.value() == 56


def test_every_field_of_the_hat_page_shows_and_sets_its_setting(open_on):
    window = open_on(SHORT)
    window.show_page("hat")
    page = window._pages["hat"]
    for field in page.form.controls:
        if field.choices:
            value = field.choices[-1]
        elif field.step:
            value = (field.of(window.document.design) or field.lowest) + field.step
        else:
            value = "Towpath"
        page.form.take(field, value)
        assert field.of(window.document.design) == value
    while window.document.stack.canUndo():
        window.document.stack.undo()
    assert window.document.design == SHORT


def test_a_setting_that_the_rules_refuse_is_told_and_put_back(open_on):
    window = open_on(SHORT)
    window.show_page("hat")
    soft = window._pages["hat"].control("limits", "value_soft")
    soft.setValue(30)
    assert window.document.stack.count() == 0
    assert soft.value() == 10
    assert "above value_clear" in window.statusBar().currentMessage()


def test_what_is_being_typed_is_saved_too(open_on, answers, tmp_path):
    window = open_on(SHORT)
    window.show_page("hat")
    title = window._pages["hat"].control("title")
    title.setFocus()
    QTest.keyClicks(title, "Sluice")
    answers.path = tmp_path / "sluice.hat.toml"
    window.save()
    assert 'title = "Sluice"' in answers.path.read_text(encoding="utf-8")


def test_notes_are_taken_when_their_box_is_left(open_on):
    window = open_on(SHORT)
    window.show_page("hat")
    page = window._pages["hat"]
    page.form.notes.setFocus()
    QTest.keyClicks(page.form.notes, "for the lock keeper")
    page.control("title").setFocus()
    assert window.document.design.notes == "for the lock keeper"


def test_another_colourway_is_put_in_use_as_one_step(open_on):
    from dataclasses import replace

    design = replace(SHORT, colourways=(*SHORT.colourways, Colourway("other", (("A", "weld"), ("B", "walnut")))))
    window = open_on(design)
    box = window.colourways
    box.setFocus()
    QTest.keyClick(box, Qt.Key.Key_Down)
    assert window.document.design.colourway.name == "other"
    assert box.currentText() == "other"
    window.undo()
    assert window.document.design == design
    assert box.currentText() == "first"


def test_every_action_has_a_key_or_stands_in_help_and_no_key_is_given_twice():
    keys = [(key, action.where) for action in ACTIONS for key in action.keys]
    assert len({key for key, _ in keys}) == len(keys)
    assert [action.id for action in ACTIONS if not action.keys] == ["help.about"]
    assert len({action.id for action in ACTIONS}) == len(ACTIONS)


def test_every_action_is_in_a_menu(window):
    in_menus = {
        entry.objectName()
        for menu in window.menuBar().actions()
        for entry in menu.menu().actions()
        if entry.objectName()
    }
    assert in_menus == {action.id for action in ACTIONS}


def test_the_list_of_keys_names_every_action_with_a_key(window, qtbot):
    dialog = KeysDialog(window)
    qtbot.addWidget(dialog)
    shown = {row[1] for row in cells(dialog.table)}
    assert {action.plain_text for action in ACTIONS if action.keys} <= shown
    assert {entry.what for entry in CONTROL_KEYS} <= shown


def test_the_list_of_keys_names_each_menu_once_and_in_the_order_of_the_bar(window, qtbot):
    dialog = KeysDialog(window)
    qtbot.addWidget(dialog)
    places = [row[0] for row in cells(dialog.table) if row[0]]
    assert len(set(places)) == len(places)
    menus = [entry.text().replace("&", "") for entry in window.menuBar().actions()]
    assert places[: len(menus)] == menus


def test_words_typed_leave_the_keys_that_have_them_all(window, qtbot):
    dialog = KeysDialog(window)
    qtbot.addWidget(dialog)
    QTest.keyClicks(dialog.words, "ctrl round dup")
    assert [row[1] for row in cells(dialog.table)] == ["Duplicate the round"]
    QTest.keyClicks(dialog.words, " nothing")
    assert dialog.table.rowCount() == 0
    dialog.words.clear()
    assert dialog.table.rowCount() > len(CONTROL_KEYS)


def test_every_key_that_the_chart_moves_by_is_in_the_list():
    from chartmaker.app.chart_canvas import moves

    told = " ".join(entry.keys for entry in keys_of("The chart"))
    words = {"Up": "Arrows", "Down": "Arrows", "Left": "Arrows", "Right": "Arrows"}
    words |= {"PageUp": "Page Up", "PageDown": "Page Down"}
    for key in moves():
        assert words[key.name.removeprefix("Key_")] in told
    for word in ("Home", "End", "Space", "Escape", "Shift"):
        assert word in told


def test_an_unusual_title_stands_in_the_title_bar_as_written(open_on):
    window = open_on(chart("A | .", times=144, title="<b>羊</b> [*] & hat"))
    assert "<b>羊</b>" in window.windowTitle()


def test_actions_of_the_chart_rest_on_other_pages(window):
    window.show_page("yarn")
    assert not window.actions_made["tool.line"].isEnabled()
    window.show_page("chart")
    assert window.actions_made["tool.line"].isEnabled()
