"""The yarn page, used by keys and mouse: swatches told, a change compared and made, a short lot relieved."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QScrollArea

from chartmaker.app.swatch_form import SwatchForm
from chartmaker.knit.yarn_by_band import yarn_by_band
from chartmaker.model.gauge import Swatch
from tests.builders import chart, lot

LOTS = {
    "A": lot("light", lab=(85, 0, 5), on_hand_g=100),
    "B": lot("dark", lab=(25, 0, 0), on_hand_g=4),
    "C": lot("near", lab=(30, 2, 0), on_hand_g=60),
}
HAT = chart("\n".join(["A B | .x"] * 40), "A C | .x", times=72, lots=LOTS)


@pytest.fixture
def page(open_on):
    window = open_on(HAT)
    window.show_page("yarn")
    return window._pages["yarn"]


def column(table, place):
    return [table.item(row, place).text() for row in range(table.rowCount())]


def form(qtbot, page, way):
    """Open the form of a new swatch from the menu of its button."""
    actions = page.swatches.add.menu().actions()
    actions[{"grams": 0, "metres": 1, "ball": 2}[way]].trigger()
    qtbot.waitUntil(lambda: isinstance(QApplication.activeModalWidget(), SwatchForm))
    return QApplication.activeModalWidget()


def test_a_swatch_is_told_by_keys_and_every_figure_follows(qtbot, page):
    before = page.document.appraisal.letter("A").requirement.metres.likely
    dialog = form(qtbot, page, "metres")
    qtbot.waitUntil(dialog._stitches.hasFocus)
    QTest.keyClicks(dialog._stitches, "1000")
    QTest.keyClick(dialog._stitches, Qt.Key.Key_Tab)
    assert dialog.control("metres").hasFocus()
    QTest.keyClicks(dialog.control("metres"), "20")
    QTest.keyClick(dialog.control("metres"), Qt.Key.Key_Return)
    assert page.document.design.swatches == (Swatch(stitches=1000, metres=20.0),)
    assert page.document.appraisal.loop.cm.likely == pytest.approx(2.0)
    assert page.document.appraisal.letter("A").requirement.metres.likely > before
    assert "One swatch" in page.swatches.sentence.text()
    assert "A stitch takes 2.00 cm of yarn (1.90 to 2.10)" in page.note.text()
    page.document.stack.undo()
    assert page.document.design == HAT


def test_a_second_swatch_gives_mean_and_spread(qtbot, page):
    for grams in ("4", "4.4"):
        dialog = form(qtbot, page, "grams")
        dialog._stitches.setText("1200")
        dialog.control("grams").setText(grams)
        dialog.accept()
    assert page.swatches.table.rowCount() == 2
    assert "2 swatches" in page.swatches.sentence.text()
    means = [float(text) for text in column(page.swatches.table, 2)]
    assert sum(means) / 2 == pytest.approx(page.document.appraisal.loop.cm.likely, abs=0.001)


def test_a_stranded_swatch_has_its_floats_taken_out(qtbot, page):
    dialog = form(qtbot, page, "ball")
    dialog._stitches.setText("1000")
    dialog.control("ball_before_g").setText("50")
    dialog.control("ball_after_g").setText("46")
    dialog.stranding.setCurrentIndex(2)
    dialog.accept()
    (swatch,) = page.document.design.swatches
    assert (swatch.passed, swatch.weight_g) == (1000, 4.0)
    taken_out = 4.0 * 460 / 1000 - page.document.appraisal.loop.cm.likely
    assert taken_out == pytest.approx(page.document.design.gauge.stitch_width_cm * 1.1)


def test_a_swatch_that_cannot_be_is_refused_in_the_form_and_nothing_is_lost(qtbot, page):
    dialog = form(qtbot, page, "ball")
    dialog._stitches.setText("1000")
    dialog.control("ball_before_g").setText("40")
    dialog.control("ball_after_g").setText("46")
    dialog.accept()
    assert dialog.isVisible()
    assert "46 g after the swatch" in dialog.trouble.text()
    assert page.document.design == HAT
    dialog.reject()


def test_a_swatch_is_changed_and_removed(qtbot, page):
    dialog = form(qtbot, page, "grams")
    dialog._stitches.setText("1200")
    dialog.control("grams").setText("4")
    dialog.accept()
    page.swatches.table.setCurrentCell(0, 0)
    QTest.mouseClick(page.swatches.change, Qt.MouseButton.LeftButton)
    changed = QApplication.activeModalWidget()
    changed.control("grams").setText("5")
    changed.accept()
    assert page.document.design.swatches[0].grams == 5
    QTest.mouseClick(page.swatches.remove, Qt.MouseButton.LeftButton)
    assert page.document.design.swatches == ()


def test_the_bands_table_follows_the_letter_that_is_chosen(page):
    page.table.choose_letter("C")
    appraisal = page.document.appraisal
    found = [
        one
        for one in yarn_by_band(appraisal.design, appraisal.fabric, appraisal.floats, appraisal.loop)
        if one.letter == "C"
    ]
    assert column(page.bands, 0)[:1] == ["band 2"]
    assert column(page.bands, 1)[0] == str(found[0].stitches)
    assert column(page.bands, 0)[-1] == "in all"
    page.table.setCurrentCell(page.table.rowCount() - 1, 0)
    assert column(page.bands, 0)[:2] == ["band 2", "band 1"]


def test_what_another_size_would_take_is_shown_and_made_by_one_click(page):
    page.side.setCurrentWidget(page.what_if)
    line = next(
        index for index in range(page.what_if.choice.count()) if page.what_if.choice.itemText(index).startswith("146 ")
    )
    page.what_if.choice.setCurrentIndex(line)
    then = float(column(page.what_if.table, 2)[0])
    QTest.mouseClick(page.what_if.do_it, Qt.MouseButton.LeftButton)
    assert page.document.appraisal.cast_on_stitches == 146
    assert page.document.appraisal.letter("A").requirement.grams.likely == pytest.approx(then, abs=0.5)
    assert page.document.stack.count() == 1


def test_a_short_lot_is_relieved_by_one_click_and_taken_back_by_one_undo(qtbot, page):
    assert page.document.appraisal.letter("B").requirement.short_g > 0
    page.side.setCurrentWidget(page.relief)
    qtbot.waitUntil(lambda: bool(page.relief.findChildren(QPushButton)))
    words = " ".join(label.text() for label in page.relief.findChildren(QLabel))
    assert "stay clear" in words
    assert "ΔE₀₀" in words
    QTest.mouseClick(page.relief.findChildren(QPushButton)[0], Qt.MouseButton.LeftButton)
    assert page.document.appraisal.letter("B").requirement.short_g == pytest.approx(0, abs=0.05)
    page.document.stack.undo()
    assert page.document.design == HAT
    qtbot.waitUntil(lambda: not page.relief.is_working)


def test_a_finding_of_a_short_lot_leads_to_its_row_and_its_relief(qtbot, page):
    window = page.window()
    finding = next(one for one in page.document.appraisal.findings if one.check == "yarn-short")
    window.lead_to(finding.place)
    assert page.table.letter == "B"
    assert page.side.currentWidget() is page.relief
    qtbot.waitUntil(lambda: not page.relief.is_working)


def test_the_page_follows_the_units(page):
    page.table.units.toggle()
    assert page.table.horizontalHeaderItem(4).text().endswith("yd")
    assert "oz" in page.bands.horizontalHeaderItem(5).text()


def test_what_is_short_without_a_lot_or_a_shade_is_told_why_nothing_is_offered(qtbot, open_on):
    window = open_on(chart("\n".join(["A B | .x"] * 40), times=72, lots={"B": lot("unread")}))
    window.show_page("yarn")
    relief = window._pages["yarn"].relief
    window._pages["yarn"].side.setCurrentWidget(relief)
    qtbot.waitUntil(lambda: len(relief.findChildren(QLabel)) == 4)
    told = [label.text() for label in relief.findChildren(QLabel)]
    assert told[1].startswith("It has no lot yet")
    assert told[3].startswith("Its shade is not known yet")


def test_nothing_weighed_is_told_as_too_little_in_ounces_too(qtbot, page):
    page._units.toggle()
    dialog = form(qtbot, page, "grams")
    dialog._stitches.setText("1200")
    dialog.control("grams").setText("0")
    dialog.accept()
    assert dialog.trouble_with("grams") == "! Weight, oz is 0, which is too little"
    dialog.control("grams").setText("0.15")
    dialog.accept()
    assert page.document.design.swatches[0].grams == pytest.approx(0.15 * 28.349523125)
    page._units.toggle()


def test_how_a_swatch_was_told_and_knitted_is_read_whole_in_its_row(qtbot, page):
    dialog = form(qtbot, page, "grams")
    qtbot.waitUntil(dialog.isVisible)
    area = dialog.findChild(QScrollArea)
    assert not area.horizontalScrollBar().isVisible()
    dialog._stitches.setText("1000")
    dialog.control("grams").setText("9")
    dialog.stranding.setCurrentIndex(2)
    dialog.accept()
    table = page.swatches.table
    QApplication.processEvents()
    needed = table.fontMetrics().boundingRect(
        0, 0, table.columnWidth(1) - 24, 1000, Qt.TextFlag.TextWordWrap, table.item(0, 1).text()
    )
    assert "floats past 100 %" in table.item(0, 1).text()
    assert table.rowHeight(0) >= needed.height() > table.fontMetrics().height()
