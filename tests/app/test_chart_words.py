import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest

from chartmaker.app import appraiser, spoken_cell
from chartmaker.app.chart_words import spoken_words, stitch_words
from tests.app.hand_at import LEFT, NONE, point, type_at
from tests.builders import chart

LOTS = {"A": (30, 8, 12), "B": (80, 0, 20)}
FLOATED = chart("A B | x........\nA B | x.x......", times=16, lots=LOTS)


@pytest.fixture
def floated(open_on):
    """Give the window on two rounds with floats of eight stitches, and of one and of six."""
    return open_on(FLOATED)


def told(window):
    return window._hover.text().split("  ·  ")


def test_hovering_tells_round_stitch_part_letter_lot_value_and_what_passes_behind(floated):
    canvas = floated.chart.canvas
    QTest.mouseMove(canvas.viewport(), point(canvas, (0, 4)))
    assert told(floated) == [
        "round 1 (band 1)",
        "stitch 5 of 9",
        "ground: A",
        "lot a",
        "value 30.0",
        "B behind: 6 stitches, 2.1 cm, 1 to 6",
    ]
    QTest.mouseMove(canvas.viewport(), point(canvas, (1, 8)))
    assert told(floated)[2] == "figure: B"
    assert told(floated)[5:] == ["A behind this stitch alone, 0.4 cm"]


def test_a_float_that_is_too_long_is_told_with_where_to_catch_it(open_on):
    window = open_on(chart("A B | x............", times=11, lots=LOTS))
    (long, *_) = window.document.appraisal.long_floats
    words = stitch_words(window.chart.canvas, (0, 5))
    assert f"B behind: {long.length} stitches" in words
    assert f"! long: catch at {', '.join(str(place % 13 + 1) for place in long.catches)}" in words


def test_a_neighbour_is_told_as_the_stitch_that_it_mirrors(floated):
    canvas = floated.chart.canvas
    assert stitch_words(canvas, (0, 4 - 9)) == stitch_words(canvas, (0, 4))
    assert stitch_words(canvas, (0, 40)) == ""


def test_a_shaped_round_tells_how_its_sections_make_its_count(open_on):
    window = open_on(chart("A | ... | ..>\nA | ....", times=8, lots={"A": (30, 0, 0)}))
    words = stitch_words(window.chart.canvas, window.chart.canvas.current)
    assert "8 × 4 = 32 stitches" in words
    window.chart.canvas.go_to(1, 2)
    assert "8 × 3 = 24 stitches" in stitch_words(window.chart.canvas, window.chart.canvas.current)


def test_what_is_not_appraised_yet_is_told_without_what_must_be_counted(floated, monkeypatch):
    canvas, document = floated.chart.canvas, floated.document
    monkeypatch.setattr(appraiser, "AT_ONCE_STITCHES", 0)
    monkeypatch.setattr(appraiser.Appraiser, "ask", lambda _self, _design, _palette: None)
    canvas.go_to(0, 4)
    canvas.setFocus()
    QTest.keyClick(canvas, Qt.Key.Key_Space)
    assert not document.is_appraised
    words = stitch_words(canvas, (0, 4))
    assert "figure: B" in words
    assert "behind" not in words
    document.appraise_now()
    assert "A behind this stitch alone" in stitch_words(canvas, (0, 4))


def test_long_words_do_not_widen_the_window(floated):
    floated.resize(900, 700)
    width = floated.width()
    floated._hover.setText("a float " * 60)
    assert floated.minimumSizeHint().width() <= 1024
    assert floated.width() == width


def description(canvas):
    return QAccessible.queryAccessibleInterface(canvas).text(QAccessible.Text.Description)


def test_a_screen_reader_is_given_the_stitch_at_the_cursor_as_keys_move_it(floated, monkeypatch):
    canvas, said = floated.chart.canvas, []
    monkeypatch.setattr(spoken_cell, "announce", lambda _canvas, words: said.append(words))
    type_at(floated, Qt.Key.Key_Up, Qt.Key.Key_Left)
    behind = "B behind: 8 stitches, 2.9 cm, 1 to 8, ! long: catch at 4"
    assert said == [
        f"round 2 (band 1), stitch {number} of 9, ground: A, lot a, value 30.0, {behind}" for number in (1, 2)
    ]
    assert description(canvas) == said[-1] == spoken_words(canvas)
    type_at(floated, Qt.Key.Key_Space)
    assert description(canvas) == said[-1]
    assert "stitch 2 of 9, figure: B" in said[-1]


def test_nothing_is_said_while_another_control_has_the_keys(floated, monkeypatch):
    said = []
    monkeypatch.setattr(spoken_cell, "announce", lambda _canvas, words: said.append(words))
    floated.chart.band.name.setFocus()
    floated.chart.canvas.go_to(1, 1)
    assert said == []
    assert description(floated.chart.canvas).startswith("round 2")


def test_an_announcement_reaches_qt_without_a_fault(floated):
    spoken_cell.announce(floated.chart.canvas, "round 1")
    QTest.mouseClick(floated.chart.canvas.viewport(), LEFT, NONE, QPointF(60, 60).toPoint())
