"""The window is there before its chart: what it loads until then, what it looks like, and what comes in between."""

import json

import pytest
from PySide6.QtCore import QPoint, QSettings, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from chartmaker.app.open_design import OpenDesign
from chartmaker.app.window import Window
from tests.benchmarks.bench_window import CHART, SHOWN, WATCH, run_script

HEAVY = ("numpy", "colour", "scipy", "reportlab", "PIL", "tomlkit", "chartmaker.appraisal", "chartmaker.model.design")
TELL = f"""
def end():
    import gc, json, os, sys
    from PySide6.QtWidgets import QApplication, QMainWindow
    window = next(widget for widget in QApplication.topLevelWidgets() if isinstance(widget, QMainWindow))
    told = {{
        "loaded": [name for name in {HEAVY!r} if name in sys.modules],
        "has_chart": window.has_chart,
        "title": window.windowTitle(),
        "collects": gc.isenabled(),
        "colours": len({{window.grab().toImage().pixelColor(x, 300).name() for x in range(290, 740)}}),
    }}
    print(json.dumps(told), flush=True)
    os._exit(0)
"""


def test_before_the_first_picture_nothing_of_the_sums_is_loaded():
    told = json.loads(run_script(WATCH + TELL + SHOWN))
    assert told == {
        "loaded": [],
        "has_chart": False,
        "title": "lockside-cap.hat.toml[*] – Chartmaker",
        "collects": False,
        "colours": 1,
    }


def test_the_chart_comes_by_itself_after_the_first_picture():
    told = json.loads(run_script(WATCH + TELL + CHART))
    assert told["has_chart"]
    assert told["collects"]
    assert {"numpy", "chartmaker.appraisal"} <= set(told["loaded"])
    assert not {"colour", "scipy", "reportlab", "PIL", "tomlkit"} & set(told["loaded"])
    assert told["title"] == "Lockside cap[*] – Chartmaker"
    assert told["colours"] >= 3


@pytest.fixture
def early(qtbot, settings: QSettings, answers, two_shades):
    """Give a window that is shown, while no event has reached it yet."""
    window = Window(OpenDesign(lambda: two_shades), settings, answers)
    qtbot.addWidget(window)
    window.show()
    return window


def place(window: Window, widget: QWidget) -> tuple[int, int, int]:
    """Give left, top and width in the window."""
    at = widget.mapTo(window, QPoint(0, 0))
    return at.x(), at.y(), widget.width()


def test_what_waits_stands_where_the_chart_will(early, qtbot):
    waiting = early._waiting
    before = [place(early, widget) for widget in (waiting.tools, waiting.ladder, waiting.canvas)]
    assert not early.has_chart
    qtbot.waitUntil(lambda: early.has_chart)
    QApplication.processEvents()
    chart = early.chart
    assert before == [place(early, widget) for widget in (chart.tools, chart.ladder, chart.canvas)]


def test_actions_look_from_the_start_as_they_do_with_the_chart(early):
    def states():
        return {name: (made.isEnabled(), made.isChecked()) for name, made in early.actions_made.made.items()}

    before = states()
    assert not early.has_chart
    early.bring_chart()
    assert before == states()


def test_an_action_before_the_chart_is_there_brings_it_and_acts(early):
    early.actions_made["tool.line"].trigger()
    assert early.chart.canvas.hand.tool.name == "line"


def test_an_action_that_cannot_be_done_yet_is_not(early):
    early.actions_made["findings.mend"].setEnabled(True)
    early.actions_made["findings.mend"].trigger()
    assert early.document.stack.count() == 0


def test_another_page_can_be_turned_to_before_the_chart_is_there(early):
    early._pages.tabs.setCurrentIndex(0)
    assert early.page == "lots"
    assert early._pages.stack.currentWidget() is early._pages["lots"]


def test_keys_and_clicks_on_what_waits_draw_nothing(early, two_shades, qtbot):
    waiting = early._waiting
    for key in (Qt.Key.Key_Space, Qt.Key.Key_X, Qt.Key.Key_D, Qt.Key.Key_Up, Qt.Key.Key_Return):
        QTest.keyClick(waiting, key)
    QTest.mouseClick(waiting.canvas, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: early.has_chart)
    assert early.document.design == two_shades
    assert early.document.stack.count() == 0


def test_the_keys_go_to_the_chart_when_it_comes(early, qtbot):
    early.activateWindow()
    qtbot.waitUntil(lambda: early.has_chart)
    assert early.focusWidget() is early.chart.canvas


def test_a_control_that_has_the_keys_keeps_them_when_the_chart_comes(early, qtbot):
    early.findings.list.setFocus()
    qtbot.waitUntil(lambda: early.has_chart)
    assert early.focusWidget() is early.findings.list


def test_a_window_closed_before_its_chart_came_asks_nothing_and_brings_none(early, answers, qtbot):
    early._arrival.begin()
    early.close()
    qtbot.wait(50)
    assert not early.has_chart
    assert answers.asked == []


def test_what_cannot_be_loaded_is_met_again_in_the_windows_own_thread(early, monkeypatch, qtbot):
    monkeypatch.setattr("chartmaker.app.arrival.NEEDED", ("chartmaker.no_such_module",))
    qtbot.waitUntil(lambda: early.has_chart)
