"""The shelf of motifs at the chart: shown, searched, stamped from, laid in and saved to, by mouse and by keys."""

from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtTest import QTest

from chartmaker.app.motif_shelf import THUMBNAIL
from chartmaker.checks.finding import Place
from chartmaker.files.motif_reading import read_motif
from chartmaker.files.motif_writing import save_motif
from chartmaker.model.edits import ReplaceSetting
from chartmaker.model.gauge import Gauge
from chartmaker.model.motif import Motif
from chartmaker.model.notation import rounds_from_text, rounds_to_text
from tests.app.hand_at import LEFT, NONE, RIGHT, drawn, point, type_at
from tests.builders import chart

BARE = ["........"] * 8
CORNERS = ["...x...x", "..xx..xx"]


@pytest.fixture(autouse=True)
def own_motif(motifs_folder: Path):
    """Put a motif of the user's on the shelf, whose drawing a test can tell."""
    rounds = rounds_from_text("A B | ...x\nA B | ..xx")
    save_motif(Motif(id="corner", name="Corner & nook", family="own", rounds=rounds), motifs_folder)


def press(widget, key: str):
    pressed = QKeySequence(key)[0]
    QTest.keyClick(widget, pressed.key(), pressed.keyboardModifiers())


def shown_shelf(window):
    window.chart.canvas.setFocus()
    press(window.chart.canvas, "F7")
    return window.chart.motifs.shelf


def names(shelf) -> list[str]:
    items = (shelf.list.item(row) for row in range(shelf.list.count()))
    return [item.text().split("\n")[0] for item in items if not item.isHidden()]


def click_motif(shelf, name: str):
    """Click a motif as the hand would."""
    item = next(
        shelf.list.item(row) for row in range(shelf.list.count()) if shelf.list.item(row).text().startswith(name)
    )
    shelf.list.scrollToItem(item)
    QTest.mouseClick(shelf.list.viewport(), LEFT, NONE, shelf.list.visualItemRect(item).center())


def shown(canvas, row: int) -> str:
    """Give what the chart shows of a row of the live repeat, as parts: "x" where the letter is B."""
    line = [canvas.grid.codes[canvas.grid.place(row, column)] for column in reversed(range(canvas.grid.width))]
    return "".join(".x"[int(code)] for code in line)


def test_the_shelf_is_made_and_read_only_when_it_is_first_shown(window):
    assert window.chart.motifs.shelf is None
    assert not window.actions_made["motifs.shelf"].isChecked()
    shelf = shown_shelf(window)
    assert shelf.isVisible()
    assert not window.chart.letters.isVisible()
    assert window.focusWidget() is shelf.search
    assert window.actions_made["motifs.shelf"].isChecked()
    press(shelf.search, "F7")
    assert not shelf.isVisible()
    assert window.chart.letters.isVisible()
    assert window.focusWidget() is window.chart.canvas
    assert shown_shelf(window) is shelf


def test_only_motifs_that_divide_the_repeat_are_offered_until_others_are_asked_for(window):
    shelf = shown_shelf(window)
    offered = [shelf._motifs[row] for row in range(shelf.list.count()) if not shelf.list.item(row).isHidden()]
    assert 0 < len(offered) < shelf.list.count()
    assert all(8 % motif.repeat == 0 for motif in offered if not motif.is_shaped)
    assert shelf.note.text() == f"{len(offered)} of {shelf.list.count()} motifs"
    shelf.fit.setFocus()
    QTest.keyClick(shelf.fit, Qt.Key.Key_End)
    assert len(names(shelf)) == shelf.list.count() >= 41


def test_what_is_offered_follows_the_band_at_the_cursor(open_on):
    window = open_on(chart("A B | ......", "A B | .....", times=(5, 6)))
    shelf = shown_shelf(window)
    six = names(shelf)
    window.chart.canvas.go_to(1)
    assert names(shelf) != six
    assert shelf.fit.itemText(0).endswith("5")
    window.chart.canvas.go_to(0)
    assert names(shelf) == six


def test_words_find_a_motif_and_down_and_enter_hold_it(window):
    shelf = shown_shelf(window)
    QTest.keyClicks(shelf.search, "nook")
    assert names(shelf) == ["Corner & nook"]
    press(shelf.search, "Down")
    assert window.focusWidget() is shelf.list
    press(shelf.list, "Return")
    assert window.chart.canvas.hand.holds_stamp
    assert window.focusWidget() is window.chart.canvas


def test_a_word_that_nothing_has_leaves_nothing_to_hold(window):
    shelf = shown_shelf(window)
    QTest.keyClicks(shelf.search, "no such motif")
    press(shelf.search, "Down")
    press(shelf.list, "Return")
    assert names(shelf) == []
    assert not window.chart.canvas.hand.holds_stamp
    assert not window.actions_made["motifs.lay_in"].isEnabled()


def test_a_family_narrows_the_shelf(window):
    shelf = shown_shelf(window)
    shelf.family.setFocus()
    QTest.keyClick(shelf.family, Qt.Key.Key_End)
    assert names(shelf) == ["Corner & nook"]


def test_a_motif_is_shown_under_the_pointer_before_a_click_stamps_it_as_one_step(window):
    canvas, shelf = window.chart.canvas, shown_shelf(window)
    click_motif(shelf, "Corner")
    for cell in ((2, 2), (3, 6)):
        QTest.mouseMove(canvas.viewport(), point(canvas, cell))
    assert [shown(canvas, 4), shown(canvas, 3)] == CORNERS
    assert drawn(window.document.design) == BARE
    QTest.mouseMove(canvas.viewport(), point(canvas, (5, 1)))
    assert [shown(canvas, row) for row in (6, 5, 4, 3)] == [*CORNERS, *BARE[:2]]
    QTest.mouseClick(canvas.viewport(), LEFT, NONE, point(canvas, (5, 1)))
    assert drawn(window.document.design)[1:3] == CORNERS
    assert window.document.stack.count() == 1
    press(canvas, "Ctrl+Z")
    assert drawn(window.document.design) == BARE
    assert shown(canvas, 5) == BARE[0]
    press(canvas, "Ctrl+Y")
    assert drawn(window.document.design)[1:3] == CORNERS


def test_escape_puts_the_motif_down_and_the_chart_is_as_it_was(window):
    canvas = window.chart.canvas
    click_motif(shown_shelf(window), "Corner")
    QTest.mouseMove(canvas.viewport(), point(canvas, (3, 6)))
    press(canvas, "Escape")
    assert canvas.hand.tool.name == "draw"
    assert shown(canvas, 3) == BARE[0]
    assert window.document.stack.count() == 0


def test_escape_or_another_button_during_the_press_drops_the_stamp(window):
    canvas = window.chart.canvas
    click_motif(shown_shelf(window), "Corner")
    QTest.mousePress(canvas.viewport(), LEFT, NONE, point(canvas, (3, 6)))
    press(canvas, "Escape")
    QTest.mouseRelease(canvas.viewport(), LEFT, NONE, point(canvas, (3, 6)))
    assert window.document.stack.count() == 0
    assert canvas.hand.holds_stamp
    QTest.mouseClick(canvas.viewport(), RIGHT, NONE, point(canvas, (3, 6)))
    assert canvas.hand.tool.name == "draw"
    assert drawn(window.document.design) == BARE


def test_a_stamp_goes_where_the_press_is_moved_to(window):
    canvas = window.chart.canvas
    click_motif(shown_shelf(window), "Corner")
    QTest.mousePress(canvas.viewport(), LEFT, NONE, point(canvas, (3, 6)))
    QTest.mouseMove(canvas.viewport(), point(canvas, (0, 2)))
    QTest.mouseRelease(canvas.viewport(), LEFT, NONE, point(canvas, (0, 2)))
    assert drawn(window.document.design) == [*BARE[:6], *CORNERS]
    assert window.document.stack.count() == 1


def test_by_keys_the_motif_goes_with_the_cursor_and_enter_stamps_it(window):
    canvas, shelf = window.chart.canvas, shown_shelf(window)
    QTest.keyClicks(shelf.search, "corner")
    press(shelf.search, "Down")
    press(shelf.list, "Space")
    type_at(window, Qt.Key.Key_Up, Qt.Key.Key_Up, Qt.Key.Key_Left)
    assert [shown(canvas, 3), shown(canvas, 2)] == CORNERS
    assert window.document.stack.count() == 0
    type_at(window, Qt.Key.Key_Return)
    assert drawn(window.document.design)[4:6] == CORNERS
    assert window.document.stack.count() == 1


def test_a_stamp_that_does_not_snap_begins_at_the_cursor(window):
    canvas = window.chart.canvas
    click_motif(shown_shelf(window), "Corner")
    type_at(window, Qt.Key.Key_Left)
    press(canvas, "Shift+A")
    assert shown(canvas, 0) == ".xx..xx."
    type_at(window, Qt.Key.Key_Space)
    assert drawn(window.document.design)[-1] == ".xx..xx."


def test_taking_a_part_puts_the_motif_down(window):
    click_motif(shown_shelf(window), "Corner")
    press(window.chart.canvas, "G")
    assert window.chart.canvas.hand.tool.name == "draw"
    press(window.chart.canvas, "A")
    assert window.chart.canvas.hand.holds_stamp


def test_a_pointer_that_leaves_takes_the_preview_with_it(window):
    canvas = window.chart.canvas
    click_motif(shown_shelf(window), "Corner")
    for cell in ((2, 2), (3, 6)):
        QTest.mouseMove(canvas.viewport(), point(canvas, cell))
    assert shown(canvas, 3) == CORNERS[1]
    QTest.mouseMove(canvas.viewport(), QPoint(1, 1))
    assert shown(canvas, 3) == BARE[0]


def test_a_shaped_motif_is_not_held_but_laid_in_as_a_band(window, motifs_folder):
    rounds = rounds_from_text("A B | x.. | .>.")
    save_motif(Motif(id="hull", name="Hull", family="own", rounds=rounds), motifs_folder)
    click_motif(shown_shelf(window), "Hull")
    assert not window.chart.canvas.hand.holds_stamp
    assert "Hull is shaped" in window.statusBar().currentMessage()


def test_a_motif_becomes_a_new_band_above_as_one_step(window):
    shelf = shown_shelf(window)
    click_motif(shelf, "Corner")
    press(window.chart.canvas, "Ctrl+Shift+B")
    above = window.document.design.bands[1]
    assert (above.name, above.times, drawn(window.document.design, 1)) == ("Corner & nook", 36, ["...x", "..xx"])
    assert window.chart.canvas.current[0] == 8
    assert window.document.stack.undoText() == "Lay in Corner && nook"
    press(window.chart.canvas, "Ctrl+Z")
    assert len(window.document.design.bands) == 1


def test_a_motif_that_does_not_close_round_the_band_is_refused_and_told(open_on):
    window = open_on(chart("A B | ......", times=5))
    shelf = shown_shelf(window)
    QTest.keyClick(shelf.fit, Qt.Key.Key_End)
    click_motif(shelf, "Corner")
    press(window.chart.canvas, "Ctrl+Shift+B")
    assert "does not divide 30" in window.statusBar().currentMessage()
    assert window.document.stack.count() == 0


def test_chosen_rounds_are_saved_as_a_motif_and_stand_on_the_shelf(window, answers, motifs_folder):
    canvas = window.chart.canvas
    QTest.mouseClick(canvas.viewport(), LEFT, NONE, point(canvas, (1, 2)))
    canvas.setFocus()
    QTest.keyClick(canvas, Qt.Key.Key_Up, Qt.KeyboardModifier.ShiftModifier)
    answers.motif_name = "Sluice no. 1"
    press(canvas, "Ctrl+Shift+M")
    saved = read_motif(motifs_folder / "sluice-no-1.motif.toml")
    assert rounds_to_text(saved.rounds).split("\n")[:2] == ["A   | ........", "A B | .....x.."]
    shelf = window.chart.motifs.shelf
    assert shelf.isVisible()
    assert shelf.motif == saved
    assert window.document.stack.count() == 1


def test_a_motif_of_a_name_that_is_taken_even_by_a_broken_file_writes_over_nothing(window, answers, motifs_folder):
    broken = motifs_folder / "broken.motif.toml"
    broken.write_text("not a motif")
    answers.motif_name = "Broken"
    press(window.chart.canvas, "Ctrl+Shift+M")
    assert broken.read_text() == "not a motif"
    assert read_motif(motifs_folder / "broken-2.motif.toml").name == "Broken"


def test_thinking_better_of_a_name_saves_nothing(window, motifs_folder):
    before = sorted(motifs_folder.iterdir())
    press(window.chart.canvas, "Ctrl+Shift+M")
    assert sorted(motifs_folder.iterdir()) == before
    assert window.chart.motifs.shelf is None


def test_a_folder_that_cannot_be_written_to_is_told(window, answers, monkeypatch, tmp_path):
    in_the_way = tmp_path / "a file"
    in_the_way.write_text("")
    monkeypatch.setenv("CHARTMAKER_MOTIFS", str(in_the_way / "motifs"))
    answers.motif_name = "Sluice"
    press(window.chart.canvas, "Ctrl+Shift+M")
    assert len(answers.told) == 1
    assert "cannot be" in answers.told[0]


def test_files_that_are_no_motifs_are_told_in_one_line(window, motifs_folder):
    (motifs_folder / "spoilt.motif.toml").write_text("not a motif")
    shelf = shown_shelf(window)
    assert shelf.refused.isVisible()
    assert shelf.refused.text() == "Left out: spoilt.motif.toml"
    assert "spoilt.motif.toml" in shelf.refused.toolTip()


def test_without_such_files_nothing_is_told_of_them(window):
    assert not shown_shelf(window).refused.isVisible()


def test_every_control_of_the_shelf_has_a_name_and_every_motif_tells_what_its_drawing_shows(window):
    shelf = shown_shelf(window)
    assert all(control.accessibleName() for control in (shelf.search, shelf.family, shelf.fit, shelf.list))
    told = shelf.list.item(shelf.list.count() - 1).data(Qt.ItemDataRole.AccessibleTextRole)
    assert told == "Corner & nook: Your own, repeat 4 stitches, 2 rounds, longest float 3"


def test_a_finding_of_a_letter_brings_the_letters_back(window):
    shelf = shown_shelf(window)
    window.lead_to(Place(text="letter B", letters="B"))
    assert not shelf.isVisible()
    assert window.chart.letters.isVisible()


def drawn_size(shelf, name: str) -> tuple[int, int]:
    """Give width and height of what a motif's picture shows, in pixels."""
    item = next(
        shelf.list.item(row) for row in range(shelf.list.count()) if shelf.list.item(row).text().startswith(name)
    )
    image = item.icon().pixmap(THUMBNAIL).toImage()
    seen = [(x, y) for y in range(image.height()) for x in range(image.width()) if image.pixelColor(x, y).alpha() > 127]
    return len({x for x, _ in seen}), len({y for _, y in seen})


def test_motifs_are_drawn_at_the_gauges_proportion_and_follow_it(window):
    document = window.document
    shelf = shown_shelf(window)
    width, height = drawn_size(shelf, "Corner")
    assert height / 2 == pytest.approx(width / 8 * 28 / 32, abs=0.5)
    gauge = Gauge(stitches_per_10cm=20, rounds_per_10cm=40)
    document.do(ReplaceSetting("gauge", document.design.gauge, gauge, "Gauge"))
    width, height = drawn_size(shelf, "Corner")
    assert height / 2 == pytest.approx(width / 8 / 2, abs=0.5)
    press(window.chart.canvas, "Ctrl+Z")
    assert drawn_size(shelf, "Corner")[1] > height


def test_what_is_left_out_of_a_stamp_is_told_while_it_is_shown_and_when_it_is_set_down(window):
    canvas = window.chart.canvas
    click_motif(shown_shelf(window), "Corner")
    for cell in ((6, 1), (7, 2)):
        QTest.mouseMove(canvas.viewport(), point(canvas, cell))
    left_out = "1 of its 2 rounds is past the top of the band and is left out."
    assert window._hover.text().startswith(f"! {left_out}  round 8 (band 1)")
    QTest.mouseClick(canvas.viewport(), LEFT, NONE, point(canvas, (7, 2)))
    assert drawn(window.document.design)[0] == CORNERS[1]
    assert window.statusBar().currentMessage() == left_out.replace("is left", "was left")
    QTest.mouseMove(canvas.viewport(), point(canvas, (4, 5)))
    assert window._hover.text().startswith("round 5")


def test_a_motif_that_the_band_under_the_pointer_cannot_take_is_told_before_a_click(open_on):
    window = open_on(chart("A B | ...", times=4))
    canvas, shelf = window.chart.canvas, shown_shelf(window)
    shelf.fit.setFocus()
    QTest.keyClick(shelf.fit, Qt.Key.Key_End)
    click_motif(shelf, "Corner")
    canvas.setFocus()
    press(canvas, "Left")
    assert window._hover.text().startswith("! Corner & nook is 4 stitches wide, the band's repeat only 3.")
