"""A window in inches, yards and ounces: every page, menu, dialog and finding, and that nothing changes by showing it.

What the baths page weighs for the pot stays in grams, with ounces beside them: its own tests hold that.
"""

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import QAbstractListModel, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QDialog,
    QLabel,
    QLineEdit,
    QMenu,
    QTabBar,
    QWidget,
)

from chartmaker.app.chart_words import stitch_words
from chartmaker.app.lot_choice import lot_entries
from chartmaker.app.swatch_form import SwatchForm
from chartmaker.app.views import VIEWS
from chartmaker.appraisal import appraise
from chartmaker.files.design_reading import read_design
from chartmaker.files.design_writing import design_to_text
from chartmaker.files.palette_reading import read_palette
from chartmaker.model.gauge import Swatch
from chartmaker.model.units import GRAMS_PER_OUNCE, IMPERIAL, Measured, in_units
from tests.metric_left import metric_amounts

ROOT = Path(__file__).parent.parent.parent
PALETTE = read_palette(ROOT / "palettes" / "allotment.palette.toml")
EXAMPLE = read_design(ROOT / "examples" / "lockside-cap.hat.toml")
HAT = replace(
    EXAMPLE,
    hat=replace(EXAMPLE.hat, head_cm=66.0, depth_cm=30.0),
    limits=replace(EXAMPLE.limits, float_cm=1.0),
    swatches=(
        Swatch(stitches=1000, grams=30.0),
        Swatch(stitches=1200, metres=20.0),
        Swatch(stitches=900, metres=1.0, passed=900),
        Swatch(stitches=800, ball_before_g=50.0, ball_after_g=46.0),
    ),
)
"""A hat with most that can be found wrong of lengths and weights, and swatches of every kind."""
TOLD_OF_WEIGHTS_AND_LENGTHS = {"circumference", "depth", "float-length", "swatch", "yarn-short"}


@pytest.fixture
def imperial(open_on, settings):
    """Give the window in inches on `HAT`, with its palette."""
    settings.setValue("units", "imperial")
    window = open_on(HAT)
    window.lots.open_palette.take(PALETTE, None)
    window.document.appraise_now()
    yield window
    while QApplication.activeModalWidget() is not None:
        QApplication.activeModalWidget().close()


def texts_of(top: QWidget):
    """Give what is read or heard of a widget and all in it, shown or not, with what it belongs to."""
    for widget in (top, *top.findChildren(QWidget)):
        name = type(widget).__name__
        yield from ((name, text) for text in (widget.toolTip(), widget.accessibleName(), widget.whatsThis()))
        yield name, widget.accessibleDescription()
        if isinstance(widget, QLabel | QAbstractButton | QLineEdit):
            yield name, widget.text()
        if isinstance(widget, QLineEdit):
            yield name, widget.placeholderText()
        if isinstance(widget, QAbstractSpinBox):
            yield name, widget.text()
        if isinstance(widget, QComboBox):
            yield from ((name, widget.itemText(place)) for place in range(widget.count()))
        if isinstance(widget, QTabBar):
            yield from ((name, widget.tabText(place)) for place in range(widget.count()))
        if isinstance(widget, QAbstractItemView):
            yield from ((name, text) for text in item_texts(widget))
        if isinstance(widget, QMenu):
            yield from ((name, text) for action in widget.actions() for text in (action.text(), action.toolTip()))


def item_texts(view):
    """Give the cells of a view with what is told of them, and its headings."""
    model = view.model()
    roles = (
        Qt.ItemDataRole.DisplayRole,
        Qt.ItemDataRole.ToolTipRole,
        Qt.ItemDataRole.AccessibleTextRole,
        Qt.ItemDataRole.AccessibleDescriptionRole,
    )

    columns = 1 if isinstance(model, QAbstractListModel) else model.columnCount()

    def under(parent):
        for row in range(model.rowCount(parent)):
            for column in range(columns):
                index = model.index(row, column, parent)
                yield from (str(index.data(role) or "") for role in roles)
            if not isinstance(model, QAbstractListModel):
                yield from under(model.index(row, 0, parent))

    yield from under(view.rootIndex())
    for column in range(columns):
        yield str(model.headerData(column, Qt.Orientation.Horizontal) or "")


def metric_in(top):
    found = [(name, text, left) for name, text in texts_of(top) if text and (left := metric_amounts(text))]
    return list(dict.fromkeys((name, text) for name, text, _left in found))


def dialog_of(qtbot, window):
    """Give the dialog that is open on a window."""
    qtbot.waitUntil(lambda: any(one.isVisible() for one in window.findChildren(QDialog)))
    return next(one for one in window.findChildren(QDialog) if one.isVisible())


def test_the_search_finds_what_is_metric(open_on):
    """The walk over a metric window finds lengths and weights on its pages: it can fail."""
    window = open_on(HAT)
    for page in ("lots", "hat", "yarn"):
        window.show_page(page)
        assert metric_in(window._pages[page])
    assert metric_in(window.findings)


@pytest.mark.parametrize("page", ["lots", "hat", "chart", "yarn", "sheets"])
def test_a_page_shows_no_metric_measure(imperial, page):
    imperial.show_page(page)
    QTest.qWait(300)  # what is worked out beside the window comes
    assert metric_in(imperial._pages[page]) == []


def test_a_page_that_was_turned_to_before_follows_the_units(open_on):
    window = open_on(HAT)
    window.lots.open_palette.take(PALETTE, None)
    for page in ("lots", "hat", "chart", "yarn"):
        window.show_page(page)
    window.units.toggle()
    QTest.qWait(300)
    for page in ("lots", "hat", "chart", "yarn"):
        window.show_page(page)
        QTest.qWait(50)
        assert metric_in(window._pages[page]) == [], page
    assert metric_in(window.findings) == []


def test_lots_show_ounces_as_skeins_as_a_table_and_compared(imperial):
    imperial.show_page("lots")
    page = imperial._pages["lots"]
    page.bar.table.setChecked(True)
    page.pick("woad-1", "woad-2")
    assert metric_in(page) == []
    headings = [page.table.horizontalHeaderItem(column).text() for column in range(page.table.columnCount())]
    assert "on hand, oz" in headings
    told = [line.on_hand for line in page._lines.values() if line.lot.id == "white"]
    assert told == [f"{60 / GRAMS_PER_OUNCE:.2f} oz"]


@pytest.mark.parametrize("view", [view.id for view in VIEWS])
def test_the_line_above_the_chart_is_in_inches_in_every_view(imperial, view):
    imperial.show_view(view)
    assert metric_in(imperial.chart.strip) == []


def test_every_stitch_round_and_pair_of_the_chart_is_told_in_inches(imperial):
    chart = imperial.chart
    told = [
        stitch_words(chart.canvas, (row, column)) for row in range(len(chart.canvas.grid.rows)) for column in (0, 3)
    ]
    told += [chart.ledger.words(row) for row in range(len(chart.canvas.grid.rows))]
    told += [entry.words for entry in lot_entries(HAT, PALETTE, IMPERIAL)]
    assert any(" in" in text for text in told)
    assert [text for text in told if metric_amounts(text)] == []


def test_findings_and_what_would_mend_them_are_told_in_inches_and_ounces(imperial):
    findings = imperial.document.appraisal.findings
    assert {finding.check for finding in findings} >= TOLD_OF_WEIGHTS_AND_LENGTHS
    for place in range(len(findings)):
        imperial.findings._choose(place)
        assert metric_in(imperial.findings) == []
    assert "in round" in imperial.findings.list.topLevelItem(0).text(2) or any(
        " in round" in in_units(finding.message, IMPERIAL) for finding in findings
    )


def test_every_sentence_with_a_measure_knows_how_it_is_made():
    """Also for designs that go wrong otherwise; what is weighed for a bath stays in grams."""
    tam = read_design(ROOT / "examples" / "towpath-tam.hat.toml")
    for design in (HAT, EXAMPLE, replace(tam, limits=replace(tam.limits, float_cm=0.5))):
        for finding in appraise(design, PALETTE).findings:
            for text in (finding.message, finding.remedy):
                assert isinstance(text, Measured) or not metric_amounts(text), text
                assert metric_amounts(in_units(text, IMPERIAL)) == []


def test_every_menu_is_without_metric_measures(imperial):
    texts = [text for menu in imperial.menuBar().findChildren(QMenu) for _name, text in texts_of(menu)]
    assert [text for text in texts if metric_amounts(text)] == []


@pytest.mark.parametrize("way", ["grams", "metres", "ball"])
def test_the_form_of_a_swatch_is_in_the_units_of_the_window(imperial, way):
    imperial.show_page("yarn")
    imperial._pages["yarn"].swatches._ask(way, None)
    dialog = next(one for one in imperial.findChildren(SwatchForm))
    assert metric_in(dialog) == []


@pytest.mark.parametrize(
    "opened",
    [
        lambda window: window.lots.new_lot(),
        lambda window: window.lots.edit_lot("woad-1"),
        lambda window: window.lots.new_yarn(),
        lambda window: window.lots.edit_yarn(PALETTE.yarns[0].id),
        lambda window: window.lots.edit_bath("woad-aug"),
        lambda window: window.lots.use_up(),
        lambda window: window.actions_made.made["file.new"].trigger(),
        lambda window: window.chart.structure.shape_crown(window.units.units, window),
        lambda window: window.show_keys(),
    ],
    ids=["new lot", "lot", "new yarn", "yarn", "bath", "use up", "new hat", "crown", "keys"],
)
def test_a_dialog_is_in_the_units_of_the_window(imperial, qtbot, opened):
    opened(imperial)
    dialog = dialog_of(qtbot, imperial)
    assert metric_in(dialog) == []
    dialog.close()


# --- nothing stored changes by showing or leaving a field


def test_turning_every_page_in_inches_and_leaving_every_field_changes_nothing(imperial):
    before, palette = design_to_text(imperial.document.design), imperial.lots.open_palette.palette
    for page in ("lots", "hat", "chart", "yarn", "sheets"):
        imperial.show_page(page)
        for control in imperial._pages[page].findChildren(QWidget):
            if isinstance(control, QAbstractSpinBox | QLineEdit) and control.isVisible() and control.isEnabled():
                control.setFocus()
                QTest.keyClick(control, Qt.Key.Key_Tab)
    imperial.units.toggle()
    imperial.units.toggle()
    assert design_to_text(imperial.document.design) == before
    assert imperial.document.stack.count() == 0
    assert imperial.lots.open_palette.palette == palette


def test_a_lot_form_in_ounces_that_is_only_looked_at_gives_the_same_lot(imperial, qtbot):
    imperial.lots.edit_lot("onion-1")
    dialog = dialog_of(qtbot, imperial)
    assert dialog.made() == PALETTE.lot("onion-1")
    dialog.close()


def test_a_weight_typed_in_ounces_is_kept_in_grams(imperial, qtbot):
    imperial.lots.edit_lot("onion-1")
    dialog = dialog_of(qtbot, imperial)
    dialog.control("on_hand_g").setText("2")
    assert dialog.made().on_hand_g == pytest.approx(2 * GRAMS_PER_OUNCE)
    dialog.control("on_hand_g").setText("-2")
    dialog.accept()
    assert dialog.trouble_with("on_hand_g") == "! On hand, oz is −2, outside 0 to 3527.4"
    dialog.close()


def test_what_the_hat_took_is_proposed_in_ounces_and_taken_as_exactly_as_it_was_worked_out(imperial, qtbot):
    imperial.lots.use_up()
    dialog = dialog_of(qtbot, imperial)
    assert dialog.taken() == dialog._needs[0]
    dialog.table.item(0, 4).setText("0.5")
    assert next(iter(dialog.taken().values())) == pytest.approx(0.5 * GRAMS_PER_OUNCE)
    dialog.close()


def test_a_screen_reader_hears_the_scale_bar_as_a_ruler_in_inches_shows_it(imperial):
    bar = imperial.chart.strip.bar
    assert QAccessible.queryAccessibleInterface(bar).text(QAccessible.Text.Name) == "Bar of 2 in"
    assert bar.length_cm == pytest.approx(5.08)


@pytest.mark.parametrize("units", ["metric", "imperial"])
@pytest.mark.parametrize("width", [1024, 1180, 1600])
def test_the_names_of_lots_keep_their_room_in_the_table_of_letters(open_on, settings, units, width):
    """What gives way for them stands with the bands too."""
    settings.setValue("units", units)
    window = open_on(HAT, size=(width, 700))
    window.show_page("yarn")
    QTest.qWait(50)
    table = window._pages["yarn"].table
    assert table.columnWidth(1) >= 110
    assert not table.horizontalScrollBar().isVisible()
    assert table.isColumnHidden(3) == (width < 1100)
