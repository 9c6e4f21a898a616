"""The window shows whatever a file may hold: no design that opens makes it fail."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QSettings, Qt
from PySide6.QtTest import QTest

from chartmaker.app.actions import ACTIONS
from chartmaker.app.open_design import OpenDesign
from chartmaker.app.views import VIEWS
from chartmaker.app.window import PAGES, Window
from chartmaker.knit.layout import lay_out
from chartmaker.model.band import Band
from chartmaker.model.design import Design
from chartmaker.model.round import Round
from tests.app.answers import Answers
from tests.strategies import designs


@pytest.fixture(scope="module")
def shown(qapp, tmp_path_factory):
    """Give a window that many designs are shown in one after another."""
    path = tmp_path_factory.mktemp("settings") / "settings.ini"
    blank = Design(bands=(Band(name="", times=1, rounds=(Round("A", b"\0"),)),))
    window = Window(OpenDesign(blank), QSettings(str(path), QSettings.Format.IniFormat), Answers())
    window.show()
    yield window
    window.document.stack.setClean()
    window.close()
    qapp.processEvents()


@given(designs())
@settings(max_examples=25, suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow])
def test_every_page_and_view_shows_any_design(shown, design):
    shown.document.replace(design, path=None, palette=None)
    for page in PAGES:
        shown.show_page(page)
        assert not shown.grab().isNull()
    shown.show_page("chart")
    for view in reversed(VIEWS):
        shown.show_view(view.id)
        shown.chart.canvas.fit()
        assert not shown.grab().isNull()
    for finding in shown.document.appraisal.findings:
        shown.lead_to(finding.place)


@given(designs())
@settings(max_examples=20, suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow])
def test_any_design_can_be_worked_on_by_keys_and_taken_back(shown, design):
    shown.document.replace(design, path=None, palette=None)
    shown.show_page("chart")
    canvas, column = shown.chart.canvas, shown.chart.shading
    for key in (Qt.Key.Key_F, Qt.Key.Key_Space, Qt.Key.Key_PageUp, Qt.Key.Key_T, Qt.Key.Key_End, Qt.Key.Key_Space):
        QTest.keyClick(canvas, key)
    for key in (Qt.Key.Key_Up, Qt.Key.Key_Q, Qt.Key.Key_Down, Qt.Key.Key_Left, Qt.Key.Key_E):
        QTest.keyClick(column, key)
    for name in ("swap", "mirror", "mirror_down", "fill_up", "fill_down", "take_off"):
        shown.actions_made[f"shading.{name}"].trigger()
    while shown.document.stack.canUndo():
        shown.document.stack.undo()
    assert shown.document.design == design


STRUCTURE = [
    action.id
    for action in ACTIONS
    if action.id.split(".")[0] in ("sign", "rounds", "bands") and not action.text.endswith("…")
]
"""What is done at once; a dialog would stay open over the windows of later tests."""


@given(designs(), st.lists(st.sampled_from(STRUCTURE), max_size=8), st.data())
@settings(max_examples=15, suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow])
def test_the_structure_of_any_design_can_be_changed_and_taken_back(shown, design, actions, data):
    shown.document.replace(design, path=None, palette=None)
    shown.show_page("chart")
    canvas = shown.chart.canvas
    for name in actions:
        rows = len(canvas.grid.rows)
        canvas.go_to(data.draw(st.integers(0, rows - 1)), data.draw(st.integers(0, 23)))
        canvas.reach_to(data.draw(st.integers(0, rows - 1)))
        shown.actions_made[name].trigger()
        if name.startswith("sign."):
            QTest.keyClick(canvas, Qt.Key.Key_Space)
        assert not shown.grab().isNull()
        assert canvas._broken == {
            number for number, meets in enumerate(lay_out(shown.document.design).meets) if not meets
        }
    while shown.document.stack.canUndo():
        shown.document.stack.undo()
    assert shown.document.design == design


@given(designs(), st.integers(0, 60), st.tuples(st.integers(0, 30), st.integers(-10, 30)), st.booleans())
@settings(max_examples=25, suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow])
def test_any_motif_can_be_held_over_any_design_stamped_or_laid_in_and_taken_back(shown, design, which, cell, snaps):
    shown.document.replace(design, path=None, palette=None)
    shown.show_page("chart")
    canvas, desk = shown.chart.canvas, shown.chart.motifs
    shelf = desk.made_shelf()
    canvas.hand.snaps = snaps
    shelf.fit.setCurrentIndex(2)
    shelf.list.setCurrentRow(which)
    desk.hold()
    canvas.go_to(*cell)
    canvas.hovered.emit(cell)
    QTest.keyClick(canvas, Qt.Key.Key_Return)
    desk.lay_in()
    QTest.keyClick(canvas, Qt.Key.Key_Escape)
    assert canvas.hand.tool.name != "stamp"
    while shown.document.stack.canUndo():
        shown.document.stack.undo()
    assert shown.document.design == design


BLOCKS = [action.id for action in ACTIONS if action.id.startswith("block.")]


@given(designs(), st.lists(st.tuples(st.sampled_from(BLOCKS), st.booleans()), max_size=8), st.data())
@settings(max_examples=25, suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow])
def test_blocks_of_any_design_can_be_worked_on_and_taken_back(shown, design, actions, data):
    shown.document.replace(design, path=None, palette=None)
    shown.show_page("chart")
    canvas = shown.chart.canvas
    keys = (Qt.Key.Key_Left, Qt.Key.Key_Up, Qt.Key.Key_Right, Qt.Key.Key_Down, Qt.Key.Key_Return)
    for name, is_moved in actions:
        canvas.take_tool("select")
        canvas.go_to(data.draw(st.integers(0, len(canvas.grid.rows) - 1)), data.draw(st.integers(0, 23)))
        for key in data.draw(st.lists(st.sampled_from(keys[:4]), max_size=6)):
            QTest.keyClick(canvas, key, Qt.KeyboardModifier.ShiftModifier)
        shown.actions_made[name].trigger()
        if is_moved:
            for key in (Qt.Key.Key_Return, *data.draw(st.lists(st.sampled_from(keys), max_size=6)), Qt.Key.Key_Return):
                QTest.keyClick(canvas, key)
        assert not shown.grab().isNull()
    QTest.keyClick(canvas, Qt.Key.Key_Escape)
    while shown.document.stack.canUndo():
        shown.document.stack.undo()
    assert not shown.grab().isNull()
    assert shown.document.design == design
