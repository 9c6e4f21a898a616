"""The hat's settings typed and shown: folds, depth, what is sewn on, and the same in inches."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from chartmaker.app.units_setting import UnitsSetting
from chartmaker.knit.answers import defaults_for
from chartmaker.knit.brims import BRIM_KINDS, Brim
from chartmaker.knit.depth import depth_of
from chartmaker.knit.starter import started
from chartmaker.model.gauge import Gauge
from chartmaker.model.hat import Fold, Trim
from tests.app.test_pages import SHORT
from tests.builders import chart

CLOSED = chart(
    "\n".join(["A | " + "." * n + " | <" + "." * (n - 1) for n in range(1, 28)] + ["A | " + "." * 28] * 20), times=5
)
LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def window(open_on):
    window = open_on(SHORT)
    window.show_page("hat")
    return window


@pytest.fixture
def page(window):
    return window._pages["hat"]


def type_into(control, text):
    control.setFocus()
    control.selectAll()
    QTest.keyClicks(control, text)
    QTest.keyClick(control, Qt.Key.Key_Return)


def choose(box, line):
    box.setFocus()
    QTest.keyClick(box, Qt.Key.Key_Home)
    for _ in range(line):
        QTest.keyClick(box, Qt.Key.Key_Down)


def test_a_brim_is_folded_and_its_rounds_are_set_each_in_one_step(window, page):
    way, rounds = page.control("hat", "fold"), page.control("hat", "fold", "rounds")
    assert not rounds.isVisible()
    choose(way, 1)
    assert window.document.design.hat.fold == Fold("up", 20)
    assert window.document.stack.count() == 1
    assert rounds.isVisible()
    rounds.setFocus()
    QTest.keyClick(rounds, Qt.Key.Key_Down)
    assert window.document.design.hat.fold == Fold("up", 19)
    assert window.document.stack.count() == 2
    window.undo()
    window.undo()
    assert window.document.design == SHORT
    assert way.currentText() == "not folded"


@pytest.mark.parametrize("kind", [kind for kind in BRIM_KINDS if kind not in ("hem", "rolled", "turned-up")])
def test_half_of_a_brim_is_folded_at_first_whatever_it_begins_with(open_on, kind):
    usual = defaults_for(shape="cap", head_cm=56, gauge=Gauge(stitches_per_10cm=30, rounds_per_10cm=34))
    window = open_on(started(replace(usual, brim=Brim(kind, 6.0))))
    window.show_page("hat")
    choose(window._pages["hat"].control("hat", "fold"), 1)
    # 6 cm at 34 rounds to 10 cm are 20 rounds.
    assert window.document.design.hat.fold == Fold("up", 10)


def test_a_fold_past_the_crown_is_a_finding_that_leads_to_the_brim(open_on):
    window = open_on(replace(CLOSED, hat=replace(CLOSED.hat, fold=Fold("up", 47))))
    (finding,) = [one for one in window.document.appraisal.findings if one.check == "fold"]
    window.lead_to(finding.place)
    assert QApplication.focusWidget() is window._pages["hat"].control("hat", "fold")


def test_a_folded_brim_shows_in_the_measured_drawing(page):
    page.stage.choose("drawing")
    before = page.stage.drawing.grab().toImage()
    assert not page.stage.drawing.drawing.cuff
    choose(page.control("hat", "fold"), 1)
    assert page.stage.drawing.drawing.cuff
    assert "turned up" in [label.text for label in page.stage.drawing.drawing.labels]
    assert page.stage.drawing.grab().toImage() != before


def test_the_page_tells_the_height_of_the_hat_as_it_is_worn(page):
    assert f"{40 / 3.2:.1f} cm high" in page.note.text()
    choose(page.control("hat", "fold"), 1)
    assert f"{20 / 3.2:.1f} cm high" in page.note.text()


def test_the_depth_by_rule_is_that_of_the_craft_pages_two_rules(page):
    # girth / 3 + 2 cm and 0.4 × girth, craft pages that differ (reference-facts.md); the middle is wanted.
    middle = (56 / 3 + 2 + 0.4 * 56) / 2
    assert page.control("hat", "depth_cm").placeholderText() == f"{middle:.1f} cm by rule"


def test_a_stocking_cap_of_no_set_depth_tells_its_own_and_steps_on_from_it(open_on):
    gauge = Gauge(stitches_per_10cm=30, rounds_per_10cm=34)
    window = open_on(started(defaults_for(shape="stocking", head_cm=56, gauge=gauge)))
    window.show_page("hat")
    page = window._pages["hat"]
    rounds = sum(len(band.rounds) for band in window.document.design.bands)
    depth = page.control("hat", "depth_cm")
    assert depth.placeholderText() == f"{rounds / 3.4:.1f} cm as it is"
    QTest.keyClick(depth, Qt.Key.Key_Up)
    assert window.document.design.hat.depth_cm == pytest.approx(rounds / 3.4 + 0.5)
    assert depth_of(window.document.design).verdict == "fits"


def test_a_depth_is_typed_and_emptied_again_each_in_one_step(window, page):
    depth = page.control("hat", "depth_cm")
    assert depth.text() == ""
    assert "by rule" in depth.placeholderText()
    type_into(depth, "24,5" if depth.locale().decimalPoint() == "," else "24.5")
    assert window.document.design.hat.depth_cm == 24.5
    assert window.document.stack.count() == 1
    depth.selectAll()
    QTest.keyClick(depth, Qt.Key.Key_Delete)
    QTest.keyClick(depth, Qt.Key.Key_Return)
    assert window.document.design.hat.depth_cm is None
    assert window.document.stack.count() == 2


def test_what_is_no_depth_is_put_back(window, page):
    depth = page.control("hat", "depth_cm")
    type_into(depth, "deep")
    assert depth.text() == ""
    assert window.document.stack.count() == 0


def test_a_depth_may_be_typed_in_either_units_and_within_its_bounds(window, page):
    depth = page.control("hat", "depth_cm")
    type_into(depth, "10 in")
    assert window.document.design.hat.depth_cm == pytest.approx(25.4)
    window.units.toggle()
    assert depth.text() == "10 in"
    type_into(depth, "30 cm")
    assert window.document.design.hat.depth_cm == 30
    type_into(depth, "9000")
    type_into(depth, "9001")
    assert window.document.design.hat.depth_cm == 150
    assert depth.text() == "59.06 in"
    assert window.document.stack.count() == 3


def test_the_arrows_step_a_depth_from_what_the_rule_gives(window, page):
    depth = page.control("hat", "depth_cm")
    depth.setFocus()
    QTest.keyClick(depth, Qt.Key.Key_Up)
    first = window.document.design.hat.depth_cm
    QTest.keyClick(depth, Qt.Key.Key_Up)
    assert window.document.design.hat.depth_cm == pytest.approx(first + 0.5)
    assert window.document.stack.count() == 2


def test_a_pompom_is_sewn_on_changed_and_taken_off(window, page):
    trims = page.form.trims
    page.form.ensureWidgetVisible(trims)
    QTest.mouseClick(trims.adders["pompom"], LEFT)
    letter = window.document.design.hat.finish.letter
    assert window.document.design.hat.trims == (Trim(kind="pompom", letter=letter, size_cm=6.0),)
    choose(trims.lines[0].letter, 1)
    assert window.document.design.hat.trims[0].letter == "B"
    type_into(trims.lines[0].size, "8")
    assert window.document.design.hat.trims[0].size_cm == 8
    choose(trims.lines[0].kind, 1)
    assert window.document.design.hat.trims == (Trim(kind="tassel", letter="B", size_cm=8.0),)
    QTest.mouseClick(trims.lines[0].remove, LEFT)
    assert window.document.design.hat.trims == ()
    assert window.document.stack.count() == 5
    while window.document.stack.canUndo():
        window.undo()
    assert window.document.design == SHORT


def is_whole(page) -> bool:
    """Tell whether every control in sight has the width that it needs, inside the form."""
    controls = (*page.form.controls.values(), *page.form.trims.lines[0].widgets)
    room = page.form.viewport().width()
    return all(
        widget.mapTo(page.form.viewport(), widget.rect().topRight()).x() < room
        and widget.width() >= widget.minimumSizeHint().width()
        for widget in controls
        if widget.isVisible()
    )


def test_no_control_is_cut_off_at_the_side_in_either_units(window, page, qtbot):
    QTest.mouseClick(page.form.trims.adders["tassel"], LEFT)
    qtbot.waitUntil(lambda: is_whole(page))
    window.units.toggle()
    qtbot.waitUntil(lambda: is_whole(page))


def test_inches_are_shown_and_typed_and_the_design_stays_metric(window, page):
    head = page.control("hat", "head_cm")
    QTest.keyClick(window, Qt.Key.Key_U, Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier)
    assert window.units.are_imperial
    assert head.text() == "22.05 in"
    assert page.control("gauge", "stitches_per_10cm").text() == "28.45 over 4 in"
    assert '" ' not in page.note.text()
    assert " in round" in page.note.text()
    type_into(head, "22")
    assert window.document.design.hat.head_cm == pytest.approx(55.88)
    assert window.document.stack.count() == 1


def test_leaving_every_field_in_either_units_changes_nothing(window, page):
    for _ in range(3):
        window.units.toggle()
        for control in page.form.controls.values():
            control.setFocus()
            QTest.keyClick(control, Qt.Key.Key_Return)
            control.clearFocus()
    assert window.document.stack.count() == 0
    assert window.document.design == SHORT


def test_typing_again_what_is_shown_in_inches_changes_nothing(window, page):
    window.units.toggle()
    type_into(page.control("hat", "head_cm"), "22.05")
    assert window.document.stack.count() == 0


def test_the_bounds_of_a_field_hold_in_inches_too(window, page):
    window.units.toggle()
    type_into(page.control("hat", "head_cm"), "7.87")  # 19.99 cm, rounded from the least head of 20 cm
    assert window.document.design.hat.head_cm == 20


def test_the_units_are_kept_for_the_next_start(window, settings):
    window.units.toggle()
    assert UnitsSetting(settings).are_imperial == window.units.are_imperial


def test_the_drawing_follows_the_units(window, page):
    page.stage.choose("drawing")
    window.units.toggle()
    texts = " ".join(label.text for label in page.stage.drawing.drawing.labels)
    assert " in round" in texts
    assert " cm" not in texts
    assert " in round" in page.stage.drawing.accessibleDescription()


def test_a_finding_about_the_depth_leads_to_its_field(open_on):
    window = open_on(replace(CLOSED, hat=replace(CLOSED.hat, depth_cm=60.0)))
    finding = next(found for found in window.document.appraisal.findings if found.check == "depth")
    window.lead_to(finding.place)
    assert QApplication.focusWidget() is window._pages["hat"].control("hat", "depth_cm")


def test_form_drawing_hat_and_fit_stand_side_by_side_in_a_small_window(open_on, qtbot):
    window = open_on(CLOSED, size=(1024, 700))
    window.show_page("hat")
    page = window._pages["hat"]
    qtbot.wait(20)
    assert window.size().toTuple() == (1024, 700)
    lefts = [part.mapTo(window, part.rect().topLeft()).x() for part in (page.form, page.stage, page.fit)]
    rights = [part.mapTo(window, part.rect().topRight()).x() for part in (page.form, page.stage, page.fit)]
    assert lefts == sorted(lefts)
    assert all(right < left for right, left in zip(rights, lefts[1:], strict=False))
    assert rights[-1] < 1024
    assert page.stage.panel.view.width() > 300


def test_a_count_chosen_beside_the_hat_is_seen_on_it(open_on, qtbot):
    window = open_on(replace(CLOSED, hat=replace(CLOSED.hat, head_cm=62.0)), size=(1280, 800))
    window.show_page("hat")
    page = window._pages["hat"]
    qtbot.waitUntil(lambda: page.fit.is_settled and page.stage.panel.view.maker.hat is not None)
    hat, before = page.stage.panel.view.maker.hat, page.note.text()
    page.fit.counts.chosen.emit(168)
    assert window.document.stack.count() == 1
    assert window.document.appraisal.cast_on_stitches == 168
    assert page.note.text() != before
    qtbot.waitUntil(lambda: page.stage.panel.view.maker.hat is not hat)
