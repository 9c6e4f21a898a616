"""A drag that is held beyond an edge scrolls the chart, and nothing else does."""

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from chartmaker.app.edge_scroll import FASTEST, SLOWEST, _beyond
from tests.app.hand_at import LEFT, NONE, RIGHT, type_at
from tests.builders import chart


@pytest.fixture
def canvas(open_on, qtbot):
    """Give the canvas on a chart that is larger than its window both ways, its cast-on edge in sight."""
    window = open_on(chart("\n".join(["A B | " + "." * 120] * 150)))
    qtbot.waitUntil(lambda: window.document.is_appraised)
    qtbot.wait(50)  # findings that came late take some of the chart's room
    canvas = window.chart.canvas
    for _ in range(3):
        canvas.zoom(1)
    bar = canvas.verticalScrollBar()
    bar.setValue(bar.maximum() // 2)
    across = canvas.horizontalScrollBar()
    across.setValue(across.maximum() // 2)
    assert 0 < bar.value() < bar.maximum()
    assert 0 < across.value() < across.maximum()
    return canvas


def middle(canvas):
    return canvas.frame.area.center().toPoint()


def outside(canvas, way):
    area, at = canvas.frame.area.toRect(), middle(canvas)
    return {
        "up": QPoint(at.x(), area.top() - 20),
        "down": QPoint(at.x(), area.bottom() + 20),
        "left": QPoint(area.left() - 20, at.y()),
        "right": QPoint(area.right() + 20, at.y()),
    }[way]


def place(canvas):
    return canvas.horizontalScrollBar().value(), canvas.verticalScrollBar().value()


def move(canvas, at, button=LEFT):
    """Send a move as the platform does while a button is held; the platform's own pointer stays out of it."""
    port = canvas.viewport()
    event = QMouseEvent(
        QEvent.Type.MouseMove, QPointF(at), QPointF(port.mapToGlobal(at)), Qt.MouseButton.NoButton, button, NONE
    )
    QApplication.sendEvent(port, event)


def drag_out(canvas, way, button=LEFT):
    QTest.mousePress(canvas.viewport(), button, NONE, middle(canvas))
    move(canvas, outside(canvas, way), button)


WAYS = {"up": (0, -1), "down": (0, 1), "left": (-1, 0), "right": (1, 0)}


@pytest.mark.parametrize("way", WAYS)
@pytest.mark.parametrize(("key", "button"), [(Qt.Key.Key_D, LEFT), (Qt.Key.Key_D, RIGHT), (Qt.Key.Key_R, LEFT)])
def test_a_stroke_goes_on_beyond_the_edge_until_the_button_is_let_go(canvas, qtbot, way, key, button):
    type_at(canvas.window(), key)
    before = place(canvas)
    drag_out(canvas, way, button)
    far = 3 * canvas.frame.cell.height()
    across, down = WAYS[way]
    qtbot.waitUntil(lambda: (place(canvas)[0] - before[0]) * across + (place(canvas)[1] - before[1]) * down > far)
    assert canvas.hand.is_busy
    QTest.mouseRelease(canvas.viewport(), button, NONE, outside(canvas, way))
    assert not canvas.edge_scroll.is_running
    qtbot.wait(120)
    assert not canvas.edge_scroll.is_running
    assert canvas.document.stack.count() == (button == LEFT)


def test_a_stroke_reaches_what_came_into_sight(canvas, qtbot):
    type_at(canvas.window(), Qt.Key.Key_D)
    lowest = canvas.frame.rows_in_sight()[0]
    drag_out(canvas, "down")
    qtbot.waitUntil(lambda: canvas.frame.rows_in_sight()[0] < lowest - 4)
    QTest.mouseRelease(canvas.viewport(), LEFT, NONE, outside(canvas, "down"))
    rounds = canvas.document.design.bands[0].rounds
    assert all(1 in line.cells for line in rounds[lowest - 3 : lowest])


def test_a_block_is_marked_beyond_the_edge(canvas, qtbot):
    type_at(canvas.window(), Qt.Key.Key_Q)
    highest = canvas.frame.rows_in_sight()[-1]
    drag_out(canvas, "up")
    qtbot.waitUntil(lambda: canvas.frame.rows_in_sight()[-1] > highest + 4)
    QTest.mouseRelease(canvas.viewport(), LEFT, NONE, outside(canvas, "up"))
    assert canvas.blocks.tool.block.last > highest + 3


def test_rounds_are_chosen_beyond_the_edge_and_nothing_moves_sideways(canvas, qtbot):
    port = canvas.viewport()
    beside = QPoint(port.width() - 10, middle(canvas).y())
    lowest = canvas.frame.rows_in_sight()[0]
    QTest.mousePress(port, LEFT, NONE, beside)
    before = place(canvas)
    move(canvas, beside + QPoint(2, 4))
    assert not canvas.edge_scroll.is_running
    move(canvas, QPoint(beside.x(), port.height() - 4))
    qtbot.waitUntil(lambda: canvas.chosen[0] < lowest - 4)
    QTest.mouseRelease(port, LEFT, NONE, QPoint(beside.x(), port.height() - 4))
    assert place(canvas)[0] == before[0]
    assert not canvas.edge_scroll.is_running


@pytest.mark.parametrize("key", [Qt.Key.Key_D, Qt.Key.Key_Q])
def test_escape_stops_it(canvas, qtbot, key):
    type_at(canvas.window(), key)
    before = place(canvas)
    drag_out(canvas, "down")
    qtbot.waitUntil(lambda: place(canvas) != before)
    QTest.keyClick(canvas, Qt.Key.Key_Escape)
    with qtbot.assertNotEmitted(canvas.scrolled, wait=120):
        pass
    assert canvas.document.stack.count() == 0


def test_a_pointer_without_a_gesture_scrolls_nothing(canvas, qtbot):
    before = place(canvas)
    for way in WAYS:
        move(canvas, outside(canvas, way), Qt.MouseButton.NoButton)
    qtbot.wait(120)
    assert place(canvas) == before


def test_a_drag_within_the_edges_scrolls_nothing(canvas, qtbot):
    type_at(canvas.window(), Qt.Key.Key_D)
    before = place(canvas)
    QTest.mousePress(canvas.viewport(), LEFT, NONE, middle(canvas))
    move(canvas, middle(canvas) + QPoint(40, 40))
    qtbot.wait(120)
    QTest.mouseRelease(canvas.viewport(), LEFT, NONE, middle(canvas) + QPoint(40, 40))
    assert place(canvas) == before


def test_further_out_is_faster_up_to_a_limit():
    assert _beyond(50, 0, 100) == 0
    assert -_beyond(-1, 0, 100) == _beyond(101, 0, 100) == SLOWEST
    assert SLOWEST < _beyond(130, 0, 100) < _beyond(160, 0, 100) < FASTEST
    assert _beyond(5000, 0, 100) == FASTEST
