"""Large designs are appraised beside the window; here every design counts as large."""

import gc
import threading
from dataclasses import replace

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QEvent, QObject, QSettings, Qt
from PySide6.QtTest import QTest

from chartmaker.app import appraiser
from chartmaker.app.actions import ACTIONS
from chartmaker.app.open_design import OpenDesign
from chartmaker.app.round_figures import figures_of
from chartmaker.app.views import VIEWS
from chartmaker.app.window import PAGES, Window
from chartmaker.appraisal import appraise
from chartmaker.model.edits import ReplaceSetting, paint
from chartmaker.model.palette import Palette
from tests.app.answers import Answers
from tests.app.hand_at import drag, point
from tests.builders import chart, lot
from tests.strategies import designs

pytestmark = pytest.mark.usefixtures("qapp")


@pytest.fixture(autouse=True)
def all_are_large(monkeypatch):
    monkeypatch.setattr(appraiser, "AT_ONCE_STITCHES", 0)


class Work:
    """Stands for the sums: it notes what it is given, waits for leave if told to, and may fail."""

    def __init__(self):
        self.titles, self.threads, self.error = [], [], None
        self.begun, self.leave = threading.Event(), threading.Event()
        self.leave.set()

    def __call__(self, design, palette):
        self.titles.append(design.title)
        self.threads.append(threading.get_ident())
        self.begun.set()
        assert self.leave.wait(10)
        if self.error is not None:
            raise self.error
        return appraise(design, palette)


@pytest.fixture
def work(monkeypatch):
    made = Work()
    monkeypatch.setattr(appraiser, "_appraised", made)
    yield made
    made.leave.set()


@pytest.fixture
def document(two_shades):
    made = OpenDesign(two_shades)
    made.appraise_now()
    yield made
    made.finish()


def name(document, title):
    """Give the design another title: the smallest of edits."""
    document.do(ReplaceSetting("title", document.design.title, title, "Name"))


def titles_told(document):
    """Give a list that gets the title of each design whose appraisal is told."""
    told = []
    document.appraised.connect(lambda: told.append(document.appraisal.design.title))
    return told


def test_a_small_design_is_appraised_with_its_edit(document, monkeypatch, work):
    monkeypatch.setattr(appraiser, "AT_ONCE_STITCHES", 8 * 8 * 18)
    name(document, "one")
    assert document.is_appraised
    assert work.titles == []


def test_a_design_of_one_stitch_more_than_the_limit_is_large(two_shades, monkeypatch):
    monkeypatch.setattr(appraiser, "AT_ONCE_STITCHES", 8 * 8 * 18 - 1)
    assert not appraiser.is_done_at_once(two_shades)
    monkeypatch.setattr(appraiser, "AT_ONCE_STITCHES", 8 * 8 * 18)
    assert appraiser.is_done_at_once(two_shades)


def test_a_large_one_is_appraised_in_another_thread_and_told_in_this_one(document, work, qtbot):
    receivers = []
    document.appraised.connect(lambda: receivers.append(threading.get_ident()))
    with qtbot.waitSignal(document.appraised):
        name(document, "one")
        assert not document.is_appraised
        assert work.titles == []
    assert document.is_appraised
    assert document.appraisal.design is document.design
    assert work.threads[0] != threading.get_ident()
    assert receivers == [threading.get_ident()]


def test_until_then_the_last_appraisal_stands(document):
    before = document.appraisal
    name(document, "one")
    assert document.appraisal is before
    assert document.has_appraisal
    assert not document.is_appraised


def test_what_was_made_of_an_older_design_is_dropped_and_the_newest_is_appraised_in_the_end(document, work, qtbot):
    told = titles_told(document)
    work.leave.clear()
    name(document, "old")
    qtbot.waitUntil(work.begun.is_set)
    name(document, "middle")
    name(document, "new")
    work.leave.set()
    qtbot.waitUntil(lambda: document.is_appraised)
    assert work.titles == ["old", "new"]
    assert told == ["new"]
    assert not document.appraiser.is_busy


def test_edits_made_before_the_work_begins_are_appraised_as_one(document, work, qtbot):
    told = titles_told(document)
    for title in ("one", "two", "three"):
        name(document, title)
    document.stack.undo()
    qtbot.waitUntil(lambda: document.is_appraised)
    assert work.titles == told == ["two"]


def test_who_cannot_wait_has_the_appraisal_at_once_and_the_one_under_way_is_dropped(document, work, qtbot):
    told = titles_told(document)
    work.leave.clear()
    name(document, "old")
    qtbot.waitUntil(work.begun.is_set)
    name(document, "new")
    document.appraise_now()
    assert document.is_appraised
    assert document.appraisal.design is document.design
    work.leave.set()
    document.finish()
    qtbot.wait(20)
    assert told == ["new"]
    assert work.titles == ["old"]


def test_to_ask_at_once_for_what_is_there_already_computes_nothing(document):
    before = document.appraisal
    document.appraise_now()
    assert document.appraisal is before


def test_another_palette_is_another_appraisal(document, qtbot):
    palette = Palette(lots=(lot("further", (50, 0, 0)),))
    with qtbot.waitSignal(document.appraised):
        document.take_palette(palette)
        assert not document.is_appraised
    assert document.appraisal.palette.lot("further") is not None


def test_another_design_in_its_place_is_not_met_by_the_old_ones_figures(document, work, qtbot):
    told = titles_told(document)
    work.leave.clear()
    name(document, "old")
    qtbot.waitUntil(work.begun.is_set)
    document.replace(replace(document.design, title="other"), path=None, palette=None)
    work.leave.set()
    document.finish()
    qtbot.wait(20)
    assert told == ["other"]
    assert document.is_appraised


def test_nothing_is_collected_in_the_thread_of_the_sums_and_again_afterwards(document, monkeypatch, qtbot):
    seen = []
    monkeypatch.setattr(appraiser, "_appraised", lambda *task: (seen.append(gc.isenabled()), appraise(*task))[1])
    name(document, "one")
    qtbot.waitUntil(lambda: document.is_appraised)
    name(document, "two")
    qtbot.waitUntil(lambda: len(seen) == 2)
    document.finish()
    assert seen == [False, False]
    assert gc.isenabled()


# --- in the window


def test_a_fault_in_the_sums_is_told_in_the_windows_one_dialog_and_the_next_edit_tries_again(
    window, work, answers, qtbot
):
    work.error = ZeroDivisionError("by nothing")
    name(window.document, "one")
    qtbot.waitUntil(lambda: bool(answers.told))
    assert "ZeroDivisionError: by nothing" in answers.told[0]
    assert not window.document.is_appraised
    assert not window.document.appraiser.is_busy
    work.error = None
    name(window.document, "two")
    qtbot.waitUntil(lambda: window.document.is_appraised)
    assert len(answers.told) == 1


def test_a_fault_in_the_sums_of_an_older_design_is_not_told(document, work, qtbot):
    told = []
    document.failed.connect(told.append)
    work.error = ZeroDivisionError()
    work.leave.clear()
    name(document, "old")
    qtbot.waitUntil(work.begun.is_set)
    document.appraise_now()
    work.leave.set()
    document.finish()
    qtbot.wait(20)
    assert told == []


def test_a_window_that_is_closed_waits_for_the_sums_and_shows_nothing_of_them(window, work, answers, qtbot):
    told = titles_told(window.document)
    work.leave.clear()
    name(window.document, "old")
    qtbot.waitUntil(work.begun.is_set)
    answers.unsaved = "discard"
    threading.Timer(0.05, work.leave.set).start()
    window.close()
    assert not window.document.appraiser._thread.is_running
    qtbot.wait(20)
    assert told == []


class Painted(QObject):
    """Notes when a widget is painted."""

    def __init__(self, widget, order):
        super().__init__()
        self._order = order
        widget.installEventFilter(self)

    def eventFilter(self, _watched, event):  # noqa: N802 - Qt's name
        if event.type() == QEvent.Type.Paint:
            self._order.append("painted")
        return False


def test_the_sums_begin_when_the_stitch_has_been_painted(window, work, monkeypatch, qtbot):
    order = []
    monkeypatch.setattr(appraiser, "_appraised", lambda *task: (order.append("begun"), work(*task))[1])
    painted = Painted(window.chart.canvas.viewport(), order)
    drag(window.chart.canvas, (1, 1))
    assert order == []
    qtbot.waitUntil(lambda: window.document.is_appraised)
    assert order[:2] == ["painted", "begun"]
    window.chart.canvas.viewport().removeEventFilter(painted)


def test_ledger_and_findings_follow_a_drawn_stitch(window, qtbot):
    drag(window.chart.canvas, (2, 3))
    assert window.chart.ledger.figures.at(2).is_late
    assert not window.chart.ledger.figures.at(3).is_late
    assert window.chart.ledger.words(2) == ""
    qtbot.waitUntil(lambda: window.document.is_appraised)
    assert not window.chart.ledger.figures.at(2).is_late
    assert window.chart.ledger.figures.at(2).entry.letters == "AB"
    assert window.chart.ledger.words(2).startswith("Round 3")


def test_what_is_under_the_pointer_is_told_at_once(window, work):
    work.leave.clear()
    canvas = window.chart.canvas
    QTest.mouseMove(canvas.viewport(), point(canvas, (2, 4)))
    assert "ground: A" in window._hover.text()
    drag(canvas, (2, 4))
    QTest.mouseMove(canvas.viewport(), point(canvas, (2, 5)))
    QTest.mouseMove(canvas.viewport(), point(canvas, (2, 4)))
    assert not window.document.is_appraised
    assert "figure: B" in window._hover.text()


def test_a_remedy_is_only_taken_where_its_finding_still_stands(open_on):
    window = open_on(chart("A B | .x.x", times=36, lots={"A": (30, 8, 12), "B": (32, 0, 20)}))
    document, strip = window.document, window.findings
    document.take_palette(Palette(lots=(lot("light", (85, 0, 20)),)))
    document.appraise_now()
    strip._choose(next(n for n, finding in enumerate(document.appraisal.findings) if finding.remedy_lot))
    document.take_palette(Palette())
    strip.apply_remedy()
    assert document.is_appraised
    assert document.stack.count() == 0


def test_pages_shown_before_the_figures_come_follow_them(window, qtbot):
    name(window.document, "one")
    drag(window.chart.canvas, (0, 0), (0, 7))
    for page in PAGES:
        window.show_page(page)
    assert not window.document.is_appraised
    before = window._pages["yarn"].table.item(1, 3)
    told = before.text() if before else ""
    qtbot.waitUntil(lambda: window.document.is_appraised)
    after = window._pages["yarn"].table.item(1, 3)
    assert after is not None
    assert after.text() != told


# --- the ledger's figures while those of the design are to come


def rounds_told(design, appraisal):
    return [figures and (figures.entry.number, figures.is_late) for figures in figures_of(design, appraisal)]


FOUR = chart("A B | x...\nA B | xx..\nA B | xxx.\nA B | ....", times=10)


def test_figures_of_the_design_appraised_are_all_its_own():
    assert rounds_told(FOUR, appraise(FOUR)) == [(1, False), (2, False), (3, False), (4, False)]


def test_a_round_that_was_drawn_on_keeps_the_figures_of_its_place_as_late_ones():
    drawn = paint(FOUR, band=0, cells={(2, 0): 1}, text="Draw").applied_to(FOUR)
    assert rounds_told(drawn, appraise(FOUR)) == [(1, False), (2, False), (3, True), (4, False)]


def with_rounds(design, *rounds):
    return replace(design, bands=(replace(design.bands[0], rounds=rounds),))


def test_a_round_that_was_moved_brings_its_figures():
    first, second, third, fourth = FOUR.bands[0].rounds
    moved = with_rounds(FOUR, first, third, second, fourth)
    assert rounds_told(moved, appraise(FOUR)) == [(1, False), (3, False), (2, False), (4, False)]


def test_a_new_round_has_no_figures_and_those_above_it_keep_theirs():
    first, second, third, fourth = FOUR.bands[0].rounds
    more = with_rounds(FOUR, first, replace(first, cells=b"\1\1\1\1"), second, third, fourth)
    assert rounds_told(more, appraise(FOUR)) == [(1, False), None, (2, False), (3, False), (4, False)]
    fewer = with_rounds(FOUR, first, fourth)
    assert rounds_told(fewer, appraise(FOUR)) == [(1, False), (4, False)]


# --- no edit makes anything fail while the figures are those of another design


@pytest.fixture(scope="module")
def late(qapp, tmp_path_factory):
    """Give a window whose figures come only when they are asked for."""
    kept = pytest.MonkeyPatch()
    kept.setattr(appraiser, "AT_ONCE_STITCHES", 0)
    kept.setattr(appraiser.Appraiser, "ask", lambda _self, _design, _palette: None)
    path = tmp_path_factory.mktemp("settings") / "settings.ini"
    window = Window(OpenDesign(FOUR), QSettings(str(path), QSettings.Format.IniFormat), Answers())
    window.show()
    yield window
    window.document.stack.setClean()
    window.close()
    qapp.processEvents()
    kept.undo()


EDITING = [
    action.id
    for action in ACTIONS
    if action.id.split(".")[0] in ("sign", "rounds", "bands", "shading", "edit") and not action.text.endswith("…")
]


@given(designs(), st.lists(st.sampled_from(EDITING), min_size=1, max_size=8), st.data())
@settings(max_examples=20, suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow])
def test_any_edits_can_be_done_and_shown_while_the_figures_are_those_of_another_design(late, design, names, data):
    late.document.replace(design, path=None, palette=None)
    late.show_page("chart")
    canvas, ledger, column = late.chart.canvas, late.chart.ledger, late.chart.shading
    for action in names:
        rows = len(canvas.grid.rows)
        canvas.go_to(data.draw(st.integers(0, rows - 1)), data.draw(st.integers(0, 23)))
        canvas.reach_to(data.draw(st.integers(0, rows - 1)))
        late.actions_made[action].trigger()
        QTest.keyClick(canvas, Qt.Key.Key_Space)
        QTest.keyClick(column, Qt.Key.Key_E)
        for row in range(len(canvas.grid.rows)):
            ledger.words(row)
            canvas.hovered.emit((row, data.draw(st.integers(-9, 30))))
        late.findings.go(1)
        assert not late.grab().isNull()
        late.show_view(data.draw(st.sampled_from(VIEWS)).id)
    for page in PAGES:
        late.show_page(page)
        assert not late.grab().isNull()
    if late.document.design is not design:
        assert not late.document.is_appraised
    late.document.appraise_now()
    assert late.document.is_appraised
    assert late.chart.ledger.figures.at(len(canvas.grid.rows) - 1) is not None
