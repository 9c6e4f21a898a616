"""Shades taken from a photo in the window: corners dragged, skeins marked, lots chosen, by real events."""

from functools import cache
from pathlib import Path

import numpy as np
import pytest
from PIL import Image
from PySide6.QtCore import QMimeData, QPointF, Qt, QUrl
from PySide6.QtGui import QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel, QPushButton

from chartmaker.app.photo_dialog import PhotoDialog
from chartmaker.app.photo_marks import Marks, first_marks
from chartmaker.model.palette import Lot, Palette
from chartmaker.shade.difference import ciede2000
from tests.app.hand_at import LEFT, NONE, drag_over
from tests.app.test_accessible_names import unnamed
from tests.rendered_photo import Scene, take

SHIFT, CTRL = Qt.KeyboardModifier.ShiftModifier, Qt.KeyboardModifier.ControlModifier


@cache
def rendered():
    return take(Scene())


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """Give the file of a rendered photo."""
    path = tmp_path / "skeins.png"
    Image.fromarray(rendered().pixels).save(path)
    return path


class Desk:
    """The dialog as a user meets it."""

    def __init__(self, window, qtbot):
        self.window, self.qtbot = window, qtbot
        window.actions_made["lots.photo"].trigger()
        self.dialog = window.findChild(PhotoDialog)
        self.view, self.table = self.dialog.view, self.dialog.table

    def open(self, path: Path):
        self.dialog.read_photo(path)
        self.qtbot.waitUntil(lambda: path.name in self.dialog.name.text())
        return self.wait()

    def wait(self):
        """Wait until what is marked is read."""
        marks = self.view
        self.qtbot.waitUntil(lambda: self.dialog.read is not None and self.dialog.read.marks == marks.marks)
        return self.dialog.read

    def drag_corners(self):
        """Drag each corner onto the target, then nudge it to the pixel by the keys."""
        for index, (x, y) in enumerate(rendered().corners):
            held = self.view.place(self.view.marks.corners[index])
            drag_over(self.view, held, QPointF(held.x() + 5, held.y() - 9), self.view.place((x, y)))
            assert self.view.in_hand == index
        return self.wait()

    def draw_box(self, index: int):
        first, last = rendered().skeins[index]
        drag_over(self.view, self.view.place(first), self.view.place((first + last) / 2), self.view.place(last))
        return self.wait()

    def type_lot(self, line: int, name: str):
        box = self.table.lot_box(line)
        box.setFocus()
        box.lineEdit().selectAll()
        QTest.keyClicks(box.lineEdit(), name)


@pytest.fixture
def desk(window, qtbot):
    """Give the dialog of a window with a palette of two lots."""
    lots = (Lot(id="weld-1", name="Weld, first bath"), Lot(id="weld-2", name="Weld, exhaust"))
    window.lots.open_palette.take(Palette(name="Shed", lots=lots), None)
    desk = Desk(window, qtbot)
    yield desk
    desk.dialog.reject()


def test_corners_are_dragged_two_skeins_marked_and_their_readings_arrive(desk, path):
    assert not desk.dialog.take.isEnabled()
    desk.open(path)
    assert desk.drag_corners().problem == ""
    assert "Patches off by" in desk.dialog.fit.text()
    desk.draw_box(1)
    read = desk.draw_box(4)
    off = ciede2000([skein.lab for skein in read.skeins], rendered().lab[[1, 4]])
    assert off.max() < 5
    desk.type_lot(0, "weld, First bath")
    desk.type_lot(1, "Dahlia")
    assert desk.dialog.take.isEnabled()
    QTest.mouseClick(desk.dialog.take, LEFT)
    palette = desk.window.lots.open_palette
    assert not desk.dialog.isVisible()
    assert [lot.name for lot in palette.palette.lots] == ["Weld, first bath", "Weld, exhaust", "Dahlia"]
    first, second, new = palette.palette.lots
    assert second.readings == ()
    assert [lot.readings[0].source for lot in (first, new)] == ["photo", "photo"]
    assert new.readings == (read.skeins[1].reading,)
    palette.stack.undo()
    assert len(palette.palette.lots) == 2
    assert palette.palette.lots[0].readings == ()


def test_skeins_of_one_new_name_become_one_lot_and_one_left_out_none(desk, path):
    desk.open(path)
    desk.drag_corners()
    for index in (0, 1, 2):
        desk.draw_box(index)
    desk.type_lot(0, "Dahlia")
    desk.type_lot(1, "dahlia ")
    desk.table.lot_box(2).setCurrentIndex(0)
    QTest.mouseClick(desk.dialog.take, LEFT)
    lots = desk.window.lots.open_palette.palette.lots
    assert [(lot.name, len(lot.readings)) for lot in lots[2:]] == [("Dahlia", 2)]


def test_with_all_left_out_nothing_can_be_taken(desk, path):
    desk.open(path)
    desk.drag_corners()
    desk.draw_box(0)
    assert desk.dialog.take.isEnabled()
    desk.table.lot_box(0).setCurrentIndex(0)
    assert not desk.dialog.take.isEnabled()


def test_a_target_that_does_not_fit_says_so_and_gives_no_shades(desk, path):
    desk.open(path)
    desk.drag_corners()
    desk.draw_box(0)
    assert desk.table.item(0, 2).text() != "–"
    corner = desk.view.marks.corners[2]
    drag_over(desk.view, desk.view.place(corner), desk.view.place((corner[0] - 200, corner[1] - 120)))
    assert desk.wait().problem
    assert desk.dialog.fit.text().startswith("! The patches are off by")
    assert desk.table.item(0, 2).text() == "–"
    assert not desk.dialog.take.isEnabled()


def test_tab_goes_from_corner_to_corner_and_arrow_keys_nudge_the_one_in_hand(desk, path):
    desk.open(path)
    view = desk.view
    view.setFocus()
    before = view.marks.corners
    QTest.keyClick(view, Qt.Key.Key_Tab)
    QTest.keyClick(view, Qt.Key.Key_Right)
    QTest.keyClick(view, Qt.Key.Key_Down, SHIFT)
    assert view.in_hand == 1
    assert view.accessibleDescription() == "Corner 2 of the target is in hand"
    assert view.marks.corners[1] == pytest.approx((before[1][0] + 1 / view.scale, before[1][1] + 10 / view.scale))
    assert view.marks.corners[0] == before[0]
    for _ in range(3):
        QTest.keyClick(view, Qt.Key.Key_Tab)
    assert view.in_hand == 3
    assert not view.hasFocus()


def test_a_box_is_made_moved_sized_and_removed_by_the_keys(desk, path):
    desk.open(path)
    QTest.mouseClick(desk.dialog.add, LEFT)
    view = desk.view
    left, top, right, bottom = view.marks.skeins[0]
    QTest.keyClick(view, Qt.Key.Key_Left, SHIFT)
    QTest.keyClick(view, Qt.Key.Key_Down, CTRL)
    step = 1 / view.scale
    assert view.marks.skeins[0] == pytest.approx((left - 10 * step, top, right - 10 * step, bottom + step))
    assert desk.wait().skeins[0] is not None
    assert desk.table.rowCount() == 1
    QTest.keyClick(view, Qt.Key.Key_Delete)
    assert view.marks.skeins == ()
    desk.wait()
    assert desk.table.rowCount() == 0


def test_a_row_that_is_removed_takes_its_own_lot_along(desk, path):
    desk.open(path)
    desk.drag_corners()
    for index, name in enumerate(("one", "two", "three")):
        desk.draw_box(index)
        desk.type_lot(index, name)
    desk.view.hold_skein(1)
    QTest.mouseClick(desk.dialog.remove, LEFT)
    desk.wait()
    assert [desk.table.lot_box(line).currentText() for line in range(2)] == ["one", "three"]


def test_the_row_of_the_skein_in_hand_is_chosen_and_the_other_way_round(desk, path):
    desk.open(path)
    desk.drag_corners()
    assert desk.table.currentRow() == -1
    for index in (0, 1):
        desk.draw_box(index)
        assert desk.table.currentRow() == index
    desk.table.setCurrentCell(0, 2)
    assert desk.view.in_hand == 4
    QTest.mouseClick(desk.view, LEFT, NONE, desk.view.place(desk.view.marks.corners[2]).toPoint())
    assert desk.table.currentRow() == -1


def test_escape_drops_the_drag_and_leaves_the_dialog_open(desk, path):
    desk.open(path)
    view, before = desk.view, desk.view.marks
    at = view.place(before.corners[0]).toPoint()
    QTest.mousePress(view, LEFT, NONE, at)
    QTest.mouseMove(view, at + QPointF(30, 20).toPoint())
    assert view.marks != before
    QTest.keyClick(desk.dialog, Qt.Key.Key_Escape)
    assert view.marks == before
    assert desk.dialog.isVisible()
    QTest.mouseRelease(view, LEFT, NONE, at)
    assert view.marks == before


def test_a_slip_of_the_hand_marks_nothing_and_a_box_is_moved_by_its_middle(desk, path):
    desk.open(path)
    desk.drag_corners()
    view = desk.view
    away = view.place((1100, 420))
    drag_over(view, away, away + QPointF(1, 1))
    assert view.marks.skeins == ()
    desk.draw_box(3)
    left, top, right, bottom = view.marks.skeins[0]
    middle = view.place(((left + right) / 2, (top + bottom) / 2))
    drag_over(view, middle, middle + QPointF(20, 0))
    assert view.marks.skeins[0] == pytest.approx((left + 20 / view.scale, top, right + 20 / view.scale, bottom), abs=2)


def test_a_photo_can_be_dropped_and_what_is_none_is_told(desk, path, tmp_path, qtbot):
    def drop(file):
        mime = QMimeData()
        mime.setUrls([QUrl.fromLocalFile(str(file))])
        desk.dialog.dropEvent(QDropEvent(QPointF(5, 5), Qt.DropAction.CopyAction, mime, LEFT, NONE))

    drop(path)
    qtbot.waitUntil(lambda: desk.view.marks is not None)
    broken = tmp_path / "broken.png"
    broken.write_bytes(b"no picture")
    drop(broken)
    qtbot.waitUntil(lambda: desk.dialog.message.text().startswith("! "))
    assert "neither a PNG nor a JPEG" in desk.dialog.message.text()
    assert path.name in desk.dialog.name.text()


def test_the_other_edition_is_read_for_when_it_is_chosen(desk, path):
    desk.open(path)
    first = desk.drag_corners().target
    desk.dialog.edition.setCurrentIndex(1 - desk.dialog.edition.currentIndex())
    second = desk.wait().target
    assert {first.edition, second.edition} == {"before-2014-11", "from-2014-11"}
    assert second.mean == pytest.approx(first.other_mean)


def test_the_photo_and_its_marks_are_still_there_when_the_dialog_is_opened_again(desk, path):
    desk.open(path)
    desk.drag_corners()
    marks = desk.view.marks
    desk.dialog.reject()
    desk.window.actions_made["lots.photo"].trigger()
    assert desk.view.marks == marks
    assert desk.wait().problem == ""


def test_marks_stay_on_the_photo_however_far_they_are_dragged():
    marks = first_marks((100, 80)).with_skein(0, (10, 10, 30, 20))
    held = marks.grip_at((20, 15), 2)
    assert held.kind == "skein"
    assert marks.dragged(held, (20, 15), (500, -90)).skeins == ((80, 0, 100, 10),)
    target = marks.grip_at((50, 40), 2)
    assert target.kind == "target"
    moved = marks.dragged(target, (50, 40), (1000, 40))
    assert max(x for x, _ in moved.corners) == 100
    stretched = marks.dragged(marks.grip_at((30, 20), 2), (30, 20), (5, 60)).skeins[0]
    assert stretched == (5, 10, 10, 60)


def test_every_control_has_a_name_for_a_screen_reader_and_no_two_have_one_key(desk, path):
    desk.open(path)
    QTest.mouseClick(desk.dialog.add, LEFT)
    desk.wait()
    assert desk.table.lot_box(0).isVisible()
    assert unnamed(desk.dialog) == []
    marked = [each.text() for each in desk.dialog.findChildren(QPushButton) + desk.dialog.findChildren(QLabel)]
    keys = [text.partition("&")[2][0].casefold() for text in marked if "&" in text]
    assert len(keys) >= 5
    assert len(set(keys)) == len(keys)


def test_without_a_photo_there_is_nothing_to_hold(desk):
    QTest.keyClick(desk.view, Qt.Key.Key_Right)
    QTest.mouseClick(desk.view, LEFT)
    assert desk.view.marks is None
    assert not desk.dialog.add.isEnabled()


def test_a_target_that_is_dragged_as_a_whole_keeps_its_shape():
    marks = Marks((1000, 800), ((100, 100), (400, 120), (390, 300), (110, 290)))
    moved = marks.dragged(marks.grip_at((200, 200), 5), (200, 200), (250, 240))
    assert np.array(moved.corners) - np.array(marks.corners) == pytest.approx(np.tile([50, 40], (4, 1)))
