"""The crown shaped anew from the menu: what is offered, what is told before it is done, and one step back."""

import math

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QDialogButtonBox

from chartmaker.app.crown_dialog import CrownDialog
from chartmaker.knit.answers import defaults_for
from chartmaker.knit.crown import FLAT, POINTED, Crown, crown_counts, with_crown
from chartmaker.knit.starter import started
from chartmaker.knit.wedge import CENTRED
from chartmaker.model.counts import rounds_not_meeting
from chartmaker.model.gauge import Gauge
from tests.builders import chart

PLAIN = chart("\n".join(["A B | x..."] * 8), times=36)


@pytest.fixture
def window(open_on):
    return open_on(with_crown(PLAIN, Crown()).applied_to(PLAIN))


@pytest.fixture
def dialog(window):
    window.actions_made["bands.crown"].trigger()
    return window.findChild(CrownDialog)


def choose(box, value):
    box.setCurrentIndex(box.findData(value))


def press(dialog, button):
    QTest.mouseClick(dialog.buttons.button(button), Qt.MouseButton.LeftButton)


def test_it_begins_with_the_crown_that_the_hat_has_and_then_changes_nothing(window, dialog):
    assert dialog.crown == Crown()
    assert dialog.edit is None
    press(dialog, QDialogButtonBox.StandardButton.Ok)
    assert window.document.stack.isClean()


def test_what_is_chosen_is_done_as_one_step_that_undo_takes_back(window, dialog):
    before = window.document.design
    choose(dialog.profile, FLAT)
    choose(dialog.sections, 8)
    choose(dialog.decrease, CENTRED)
    press(dialog, QDialogButtonBox.StandardButton.Ok)
    after = window.document.design
    assert after.bands[-1].times == 8
    assert not rounds_not_meeting(after)
    assert window.document.stack.count() == 1
    window.undo()
    assert window.document.design == before


def test_the_rounds_are_listed_with_the_first_at_the_bottom_as_in_the_chart(dialog):
    choose(dialog.profile, FLAT)
    counts = crown_counts(Crown(profile=FLAT), stitches=144, gauge=PLAIN.gauge)
    shown = [int(dialog.table.item(row, 1).text()) for row in range(dialog.table.rowCount())]
    assert shown == [*reversed(counts)]
    assert dialog.told.text().startswith(f"{len(counts)} rounds, ")
    assert f"{counts[-1]} stitches are drawn up" in dialog.told.text()


def test_the_outline_is_drawn_to_scale_and_is_empty_where_nothing_can_be_made(dialog):
    """Geometry: a cone's sides are straight, and its height is below its slant by Pythagoras."""
    choose(dialog.profile, POINTED)
    radius, height, is_shaped = dialog.sketch.points[-1]
    first = dialog.sketch.points[0][0]
    slant = (len(dialog.sketch.points) - 1) * PLAIN.gauge.round_height_cm
    assert is_shaped
    assert first == pytest.approx(144 * PLAIN.gauge.stitch_width_cm / 2 / math.pi, rel=0.01)
    assert math.hypot(first - radius, height) == pytest.approx(slant, rel=0.03)
    dialog.rounds.setValue(5)
    assert dialog.sketch.points == []


def test_sections_that_do_not_divide_say_what_a_round_takes_first(dialog):
    texts = {dialog.sections.itemData(row): dialog.sections.itemText(row) for row in range(dialog.sections.count())}
    assert list(texts) == [*range(4, 13)]
    assert texts[6] == "6 of 24 stitches"
    assert texts[7] == "7 of 20, after a round that takes 4 away"
    choose(dialog.sections, 7)
    assert dialog.table.item(dialog.table.rowCount() - 1, 1).text() == "140"


def test_a_point_has_its_rounds_and_too_few_are_told_and_cannot_be_done(window, dialog):
    assert not dialog.rounds.isEnabled()
    choose(dialog.profile, POINTED)
    assert dialog.rounds.isEnabled()
    dialog.rounds.setValue(60)
    assert dialog.table.rowCount() == 60
    dialog.rounds.setValue(5)
    ok = dialog.buttons.button(QDialogButtonBox.StandardButton.Ok)
    assert dialog.told.text().startswith("! a point of 5 rounds from 144 stitches would pucker")
    assert not ok.isEnabled()
    dialog.accept()
    assert window.document.stack.isClean()


def test_a_hat_without_a_crown_gets_one(open_on):
    window = open_on(PLAIN)
    window.actions_made["bands.crown"].trigger()
    dialog = window.findChild(CrownDialog)
    assert not dialog.keep.isEnabled()
    press(dialog, QDialogButtonBox.StandardButton.Ok)
    assert len(window.document.design.bands) == 2


def test_a_hat_that_is_all_crown_says_so(open_on):
    window = open_on(chart("A | .. | ><\nA | .... | >..<", times=6))
    told = []
    window.chart.canvas.refused.connect(told.append)
    window.actions_made["bands.crown"].trigger()
    assert told == ["the hat has no round below its crown"]
    assert window.findChild(CrownDialog) is None


def test_the_cursor_stays_on_the_chart_when_the_crown_gets_shorter(window, dialog):
    canvas = window.chart.canvas
    canvas.go_to(len(canvas.grid.rows) - 1, 1)
    choose(dialog.profile, FLAT)
    press(dialog, QDialogButtonBox.StandardButton.Ok)
    row, column = canvas.current
    assert row < sum(len(band.rounds) for band in window.document.design.bands)
    line = canvas.grid.rows[row]
    assert 0 <= column - line.offset < line.length


def test_of_a_stocking_cap_it_is_told_that_the_crown_takes_the_tapers_place(open_on):
    gauge = Gauge(stitches_per_10cm=30, rounds_per_10cm=34)
    for shape, is_told in (("stocking", True), ("cap", False)):
        window = open_on(started(defaults_for(shape=shape, head_cm=56, gauge=gauge)))
        window.actions_made["bands.crown"].trigger()
        assert ("takes the place of the long taper" in window.findChild(CrownDialog).told.text()) == is_told
