"""Drawing in a mirror, and in one band alone: what is drawn, what is shown, and where the axes go."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor
from PySide6.QtTest import QTest

from chartmaker.app.chart_grid import GHOST_CODE, NO_STITCH, laid_out
from chartmaker.app.covered import covered_by
from chartmaker.app.mirror import Axes, mirrored
from chartmaker.app.mirror_lines import axis_lines
from chartmaker.checks.finding import Place
from tests.app.hand_at import LEFT, NONE, drag, drawn, point, type_at
from tests.builders import chart
from tests.strategies import designs

SHADES = {"A": (30, 8, 12), "B": (80, 0, 20)}
TWO = chart("\n".join(["A B | ........"] * 4), "\n".join(["A B | ......"] * 3), times=(18, 24), lots=SHADES)
V, H, W = Qt.Key.Key_V, Qt.Key.Key_H, Qt.Key.Key_W


@pytest.fixture
def two(open_on):
    """Give the window on four rounds of eight stitches below three of six."""
    return open_on(TWO)


def told(window):
    return window.statusBar().currentMessage()


# --- mirrored drawing


def test_drawing_is_mirrored_about_the_middle_of_a_stitch_then_its_left_edge_then_not_at_all(window):
    canvas = window.chart.canvas
    type_at(window, *[Qt.Key.Key_Left] * 3, V)
    assert told(window) == "Drawing is mirrored about stitch 4."
    assert window.actions_made["mirror.stitch"].isChecked()
    drag(canvas, (0, 1), (0, 0))
    assert drawn(window.document.design)[-1] == ".xx...xx"
    type_at(window, V)
    assert told(window) == "Drawing is mirrored about the left edge of stitch 4."
    drag(canvas, (1, 0), (1, 1))
    assert drawn(window.document.design)[-2] == "xx....xx"
    type_at(window, V)
    assert told(window) == "Drawing is not mirrored."
    assert not window.actions_made["mirror.stitch"].isChecked()
    drag(canvas, (2, 0))
    assert drawn(window.document.design)[-3] == ".......x"
    assert window.document.stack.count() == 3


def test_drawing_is_mirrored_about_a_round_then_its_upper_edge_and_about_a_stitch_too(window):
    canvas = window.chart.canvas
    type_at(window, Qt.Key.Key_Up, H)
    assert told(window) == "Drawing is mirrored about round 2."
    drag(canvas, (0, 0))
    assert drawn(window.document.design)[-3:] == [".......x", "........", ".......x"]
    type_at(window, Qt.Key.Key_Left, H, V)
    assert told(window) == "Drawing is mirrored about stitch 2 and the upper edge of round 2."
    drag(canvas, (1, 3))
    assert drawn(window.document.design)[-3:] == ["x...x..x", "x...x...", ".......x"]
    drag(canvas, (0, 0))
    assert drawn(window.document.design)[-4:] == [".....x.x", "x...x..x", "x...x...", ".....x.x"]
    assert window.document.stack.count() == 3
    type_at(window, Qt.Key.Key_X)
    assert drawn(window.document.design)[-4:] == ["........", "x...x..x", "x...x...", "........"]


def test_the_likeness_closes_round_the_join(window):
    type_at(window, V)
    drag(window.chart.canvas, (0, 1), (0, 2))
    assert drawn(window.document.design)[-1] == "xx...xx."


def test_a_fill_is_mirrored_as_it_is(window):
    canvas = window.chart.canvas
    drag(canvas, (0, 2), (7, 2))
    drag(canvas, (0, 7), (7, 7))
    canvas.hand.axes = Axes(across=7)
    type_at(window, Qt.Key.Key_O)
    drag(canvas, (3, 1))
    assert drawn(window.document.design) == ["xx...xxx"] * 8
    assert window.document.stack.undoText() == "Fill with figure"


@given(designs(), st.data())
def test_a_likeness_is_its_own_likeness(design, data):
    grid = laid_out(design)
    at = st.tuples(st.integers(-3, len(grid.rows) + 2), st.integers(-20, 40), st.integers(-20, 40))
    strips = [(row, *sorted(ends)) for row, *ends in data.draw(st.lists(at, max_size=4))]
    axes = Axes(across=data.draw(st.none() | st.integers(0, 2 * grid.width - 1)))
    once = mirrored(covered_by(strips, grid), axes, grid)
    again = mirrored(once, axes, grid)
    assert {row: columns.tolist() for row, columns in once.items()} == {
        row: columns.tolist() for row, columns in again.items()
    }


@given(designs(), st.data())
def test_a_strip_covers_the_stitches_that_its_cells_show(design, data):
    grid = laid_out(design)
    row = data.draw(st.integers(0, len(grid.rows) - 1))
    first, last = sorted((data.draw(st.integers(-30, 60)), data.draw(st.integers(-30, 60))))
    columns = covered_by([(row, first, last)], grid)[row]
    at = grid.rows[row]
    covered = {stitch for stitch in range(at.length) if columns[at.offset + stitch]}
    assert covered == {spot.stitch for column in range(first, last + 1) if (spot := grid.spot(row, column))}


def test_the_axes_are_drawn_in_black_and_white_through_the_middle_or_at_the_edge(window):
    canvas = window.chart.canvas
    type_at(window, *[Qt.Key.Key_Left] * 3, V, Qt.Key.Key_Up, Qt.Key.Key_Up, H)
    upright, level = axis_lines(canvas.frame, canvas.hand.axes)
    assert upright.x1() == canvas.frame.box(0, 3).center().x()
    assert level.y1() == canvas.frame.box(2, 0).center().y()
    image = canvas.viewport().grab().toImage()
    box = canvas.frame.box(6, 3)
    x = int(box.center().x())
    column = {image.pixelColor(x, int(box.top()) + step).name() for step in range(int(box.height()))}
    assert {QColor(0, 0, 0).name(), QColor(255, 255, 255).name()} <= column
    type_at(window, V, H)
    upright, level = axis_lines(canvas.frame, canvas.hand.axes)
    assert upright.x1() == canvas.frame.box(0, 3).left()
    assert level.y1() == canvas.frame.box(2, 0).top()


def test_the_axes_are_of_the_view_so_that_no_undo_takes_them_and_they_stay_inside_the_chart(window):
    canvas = window.chart.canvas
    type_at(window, Qt.Key.Key_End, V, *[Qt.Key.Key_Up] * 7, H, H)
    assert canvas.hand.axes == Axes(across=14, up=15)
    assert window.document.stack.count() == 0
    drag(canvas, (0, 0))
    QTest.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert canvas.hand.axes == Axes(across=14, up=15)
    window.chart.structure.narrow("left")
    window.chart.structure.delete_rounds()
    assert canvas.hand.axes == Axes(across=13, up=13)
    drag(canvas, (0, 0))
    window.document.replace(TWO, path=None, palette=None)
    assert canvas.hand.axes == Axes()
    assert not window.actions_made["mirror.stitch"].isChecked()


# --- one band alone


def live_rows(grid):
    return {grid.cell(line, 0)[0] for line, codes in enumerate(grid.codes) if (codes < GHOST_CODE).any()}


def test_in_one_band_alone_the_others_are_ghosted_and_a_stroke_over_them_leaves_them(two):
    canvas = two.chart.canvas
    type_at(two, W)
    assert two.actions_made["band.alone"].isChecked()
    assert live_rows(canvas.grid) == {0, 1, 2, 3}
    drag(canvas, (2, 0), (6, 0))
    assert drawn(two.document.design, 0) == [".......x", ".......x", "........", "........"]
    assert drawn(two.document.design, 1) == ["......"] * 3
    assert live_rows(canvas.grid) == {0, 1, 2, 3}
    type_at(two, W)
    assert live_rows(canvas.grid) == set(range(7))
    drag(canvas, (2, 1), (6, 1))
    assert drawn(two.document.design, 1) == ["....x."] * 3


@pytest.mark.parametrize("key", [Qt.Key.Key_D, Qt.Key.Key_R, Qt.Key.Key_E, Qt.Key.Key_O, Qt.Key.Key_K])
def test_in_one_band_alone_no_tool_changes_another_nor_goes_there(two, key):
    canvas = two.chart.canvas
    type_at(two, W, key)
    drag(canvas, (5, 1), (6, 3))
    assert two.document.stack.count() == 0
    assert canvas.current[0] == 0
    for cell in ((4, 1), (5, 2)):
        QTest.mouseMove(canvas.viewport(), point(canvas, cell))
    assert "round 6 (band 2)" in two._hover.text()


def test_the_likeness_of_a_stroke_stays_in_the_band_too(two):
    type_at(two, W, *[Qt.Key.Key_Up] * 3, H, H)
    drag(two.chart.canvas, (3, 0))
    assert drawn(two.document.design, 1) == ["......"] * 3
    type_at(two, W)
    drag(two.chart.canvas, (2, 0))
    assert drawn(two.document.design, 1) == ["......", ".....x", "......"]


def test_the_band_that_is_worked_in_alone_follows_the_cursor_by_key_finding_and_undo(two):
    canvas = two.chart.canvas
    type_at(two, W, *[Qt.Key.Key_Up] * 4)
    assert live_rows(canvas.grid) == {4, 5, 6}
    two.lead_to(Place(text="round 2", round=1, stitch=0))
    assert live_rows(canvas.grid) == {0, 1, 2, 3}
    type_at(two, *[Qt.Key.Key_Up] * 4)
    two.chart.structure.delete_band()
    assert live_rows(canvas.grid) == set(range(len(canvas.grid.rows)))
    two.undo()
    assert live_rows(canvas.grid) == {0, 1, 2, 3}


def test_lines_are_drawn_round_the_stitches_of_the_band_alone(two):
    canvas = two.chart.canvas
    before = canvas.viewport().grab(canvas.frame.box(5, 2).toAlignedRect()).toImage()
    type_at(two, W)
    image = canvas.viewport().grab(canvas.frame.box(5, 2).toAlignedRect().adjusted(1, 1, -1, -1)).toImage()
    assert len({image.pixelColor(x, y).name() for x in range(image.width()) for y in range(image.height())}) == 1
    assert len({before.pixelColor(x, y).name() for x in range(before.width()) for y in range(before.height())}) > 1


# --- the preview under the pointer


def test_what_a_fill_would_reach_is_shown_under_the_pointer_and_a_click_fills_it(two):
    canvas = two.chart.canvas
    type_at(two, Qt.Key.Key_O)
    QTest.mouseMove(canvas.viewport(), point(canvas, (1, 4)))
    assert drawn(canvas.shown, 0) == ["xxxxxxxx"] * 4
    assert drawn(canvas.shown, 1) == ["......"] * 3
    assert drawn(two.document.design, 0) == ["........"] * 4
    QTest.mouseMove(canvas.viewport(), point(canvas, (5, 4)))
    assert drawn(canvas.shown, 0) == ["........"] * 4
    assert drawn(canvas.shown, 1) == ["xxxxxx"] * 3
    QTest.mouseClick(canvas.viewport(), LEFT, NONE, point(canvas, (5, 4)))
    assert drawn(two.document.design, 1) == ["xxxxxx"] * 3
    assert two.document.stack.count() == 1
    type_at(two, Qt.Key.Key_D)
    assert canvas.shown is two.document.design


def test_the_preview_under_the_pointer_goes_with_the_part_and_the_tool(two):
    canvas = two.chart.canvas
    type_at(two, Qt.Key.Key_O)
    assert drawn(canvas.shown, 0) == ["xxxxxxxx"] * 4
    type_at(two, Qt.Key.Key_T)
    assert drawn(canvas.shown, 0) == ["++++++++"] * 4
    type_at(two, Qt.Key.Key_G)
    assert drawn(canvas.shown, 0) == ["........"] * 4
    type_at(two, Qt.Key.Key_F, Qt.Key.Key_L)
    assert canvas.shown is two.document.design


def test_a_fill_in_a_shaped_band_passes_over_places_without_a_stitch(open_on):
    window = open_on(chart("A B | ... | .^.\nA B | ..x..", times=6, lots=SHADES))
    type_at(window, Qt.Key.Key_O)
    drag(window.chart.canvas, (0, 0))
    assert drawn(window.document.design) == ["xxx", "xxxxx"]
    assert (window.chart.canvas.grid.codes == NO_STITCH).any()
