"""The lots page by real keys and clicks: order, search, what is picked, two compared, and a lot made a letter."""

from __future__ import annotations

import datetime as dt
from dataclasses import replace

import pytest
from PySide6.QtCore import QEvent, QMimeData, QPointF, Qt
from PySide6.QtGui import QAccessible, QDragEnterEvent, QDropEvent, QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel

from chartmaker.app.lots_curve import CurveView, curve_of, mean_curve
from chartmaker.app.lots_flow import SKEIN
from chartmaker.app.lots_model import LOT_TYPE
from chartmaker.app.lots_skein import skein_pixmap
from chartmaker.model.palette import Bath, Lot, Mordant, Palette, Yarn
from chartmaker.model.reading import LabReading, Spectrum
from chartmaker.shade.settling import settle
from tests.builders import chart, lot

SHIFT, CTRL = Qt.KeyboardModifier.ShiftModifier, Qt.KeyboardModifier.ControlModifier
LEFT = Qt.MouseButton.LeftButton


def spectrum(*levels: float) -> Spectrum:
    """Make a spectrum of four levels, each a quarter of 400 to 700 nm."""
    return Spectrum(start_nm=400, step_nm=10, reflectance=tuple(levels[min(3, place * 4 // 31)] for place in range(31)))


WOOL = Yarn(id="wool", name="wool, undyed", reading=spectrum(0.5, 0.6, 0.7, 0.75))
MADDER = Bath(
    id="madder-may", dyestuff="madder", part="root", ratio=1.0, mordants=(Mordant("alum", 12.0),), ph_start=7.0
)
WEAK = replace(MADDER, id="madder-june", ratio=0.5)
PALETTE = Palette(
    name="shed",
    yarns=(WOOL,),
    baths=(MADDER, WEAK),
    lots=(
        Lot(
            id="m1",
            name="Madder, May",
            yarn="wool",
            bath="madder-may",
            dyed_on=dt.date(2026, 5, 1),
            on_hand_g=48,
            readings=tuple(spectrum(0.05, 0.06, 0.2 + step / 100, 0.5) for step in range(3)),
        ),
        Lot(
            id="m2",
            name="Madder, June",
            yarn="wool",
            bath="madder-june",
            dyed_on=dt.date(2026, 6, 1),
            readings=(spectrum(0.1, 0.12, 0.3, 0.6),),
            notes="from the lock keeper",
        ),
        Lot(id="weld", name="Weld", dyed_on=dt.date(2026, 4, 1), readings=(LabReading(lab=(80, -4, 60)),)),
        Lot(id="plain", name="Ecru", yarn="wool"),
    ),
)


@pytest.fixture
def window(open_on, two_shades):
    """Give the window on its lots page, with a palette of four lots beside the design's two."""
    window = open_on(two_shades)
    window.document.take_palette(PALETTE)
    window.show_page("lots")
    QApplication.processEvents()
    return window


@pytest.fixture
def page(window):
    """Give the lots page."""
    return window._pages["lots"]


def shown(page):
    return [line.lot.id for line in page.flow.lots.lines]


def click(page, lot_id, *, keys=Qt.KeyboardModifier.NoModifier):
    place = page.flow.visualRect(page.flow.lots.place_of(lot_id)).center()
    QTest.mouseClick(page.flow.viewport(), LEFT, keys, place)


def texts(widget):
    return [label.text() for label in widget.findChildren(QLabel) if label.isVisibleTo(widget)]


def test_lots_stand_by_value_with_those_without_a_shade_last(page):
    values = [line.shade.value for line in page.flow.lots.lines if line.shade]
    assert values == sorted(values, reverse=True)
    assert shown(page)[-1] == "plain"
    assert len(shown(page)) == 6


@pytest.mark.parametrize(
    ("order", "first"), [("date", ["m2", "m1", "weld"]), ("dyestuff", ["m2", "m1"]), ("hue", ["m1", "m2"])]
)
def test_an_order_is_chosen_by_keys_and_kept(page, settings, order, first):
    page.bar.order.setFocus()
    QTest.keyClick(page.bar.order, Qt.Key.Key_Home)
    while page.bar.wanted_order != order:
        QTest.keyClick(page.bar.order, Qt.Key.Key_Down)
    assert shown(page)[: len(first)] == first
    assert settings.value("lots/order") == order


def test_the_order_of_dyestuffs_has_headings_that_no_key_stops_at(page):
    page.bar.order.setCurrentIndex(page.bar.order.findData("dyestuff"))
    headings = [page.flow.lots.heading(page.flow.lots.index(row)) for row in range(page.flow.lots.rowCount())]
    assert [text for text in headings if text] == ["madder root", "without a bath"]
    page.pick("m2")
    page.flow.setFocus()
    for _ in range(3):
        QTest.keyClick(page.flow, Qt.Key.Key_Down)
        assert page.flow.lots.line(page.flow.currentIndex())


@pytest.mark.parametrize(
    ("text", "found"), [("madder", {"m1", "m2"}), ("ROOT june", {"m2"}), ("lock keeper", {"m2"}), ("weld", {"weld"})]
)
def test_lots_are_found_by_name_part_id_and_notes(page, text, found):
    page.bar.search.setFocus()
    QTest.keyClicks(page.bar.search, text)
    assert set(shown(page)) == found


def test_a_search_that_finds_nothing_says_so_and_gives_all_back_when_cleared(page):
    page.bar.search.setFocus()
    QTest.keyClicks(page.bar.search, "indigo")
    assert page.blank.isVisible()
    assert "indigo" in page.blank.words.text()
    page.bar.search.clear()
    assert len(shown(page)) == 6
    assert page.flow.isVisible()


def test_arrows_pick_the_next_lot_and_its_card_follows(page, window):
    page.pick(shown(page)[0])
    page.flow.setFocus()
    QTest.keyClick(page.flow, Qt.Key.Key_Right)
    assert page.picked == (shown(page)[1],)
    assert page.side.card.name.text() == page._lines[page.picked[0]].lot.name
    assert window.lots.chosen == page.picked[0]


def test_shift_and_arrows_keep_the_reference_and_move_the_sample(page):
    page.pick(shown(page)[0])
    page.flow.setFocus()
    QTest.keyClick(page.flow, Qt.Key.Key_Right, SHIFT)
    QTest.keyClick(page.flow, Qt.Key.Key_Right, SHIFT)
    assert page.picked == (shown(page)[0], shown(page)[2])


@pytest.mark.parametrize("keys", [SHIFT, CTRL])
def test_two_lots_are_picked_by_clicks_and_never_those_between(page, keys):
    click(page, "weld")
    click(page, "m1", keys=keys)
    assert page.picked == ("weld", "m1")
    click(page, "m2", keys=keys)
    assert page.picked == ("weld", "m2")
    click(page, "m1")
    assert page.picked == ("m1",)


def test_two_picked_lots_are_compared_and_change_places(page):
    click(page, "m1")
    click(page, "m2", keys=CTRL)
    pair = page.side.pair
    assert pair.isVisible()
    assert ("≠ ratio", "1 g to 1 g of fibre", "0.5 g to 1 g of fibre") in [
        (f"≠ {row[0]}", *row[1:]) for row in pair.recipes.rows
    ]
    assert "≠ ratio" in texts(pair.recipes)
    assert "≠ mordants" not in texts(pair.recipes)
    assert dict(pair.figures.rows)["value"].endswith("2 is lighter")
    QTest.mouseClick(pair.swap, LEFT)
    assert page.picked == ("m2", "m1")
    assert dict(pair.figures.rows)["value"].endswith("2 is darker")


def test_the_card_tells_figures_words_recipe_and_undyed_base(page):
    page.pick("m1")
    card = page.side.card
    assert dict(card.figures.rows)["rests on"] == "spectrum, 3 ×"
    assert dict(card.figures.rows)["on hand"] == "48 g"
    assert dict(card.recipe.rows)["mordants"] == "alum 12 %"
    assert [curve.label for curve in card.curve.curves] == ["", "", "", "base", "lot"]
    assert [patch.illuminant for patch in card.lights.patches] == ["D65", "A", "LED-B3", "FL11"]
    assert all(patch.figure.startswith("moves") for patch in card.lights.patches[1:])


def test_a_lot_without_a_spectrum_says_that_other_lights_are_not_measured(page):
    page.pick("weld")
    card = page.side.card
    assert not card.curve.isVisible()
    assert card.no_curve.isVisible()
    assert card.lights_words.isVisible()


def test_an_outlier_is_named(page, window):
    readings = tuple(LabReading(lab=(value, 20, 10)) for value in (40, 40.1, 40.2, 40.3, 40.4, 60))
    window.document.take_palette(replace(PALETTE, lots=(*PALETTE.lots, Lot(id="odd", name="Odd", readings=readings))))
    page.pick("odd")
    assert "Reading 6" in page.side.card.outlier.text()
    page.pick("m1")
    assert not page.side.card.outlier.isVisible()


def test_a_click_in_the_tree_picks_the_lot(page):
    page.pick("m1")
    tree = page.side.card.tree
    baths = [tree.topLevelItem(0).child(row).text(0) for row in range(tree.topLevelItem(0).childCount())]
    assert baths == ["madder root, 0.5 g to 1 g (madder-june)", "madder root, 1 g to 1 g (madder-may)"]
    item = tree.item_of("m2")
    page.side.card.parentWidget().parentWidget().ensureWidgetVisible(tree)
    QTest.mouseClick(tree.viewport(), LEFT, pos=tree.visualItemRect(item).center())
    assert page.picked == ("m2",)


def test_each_skein_has_a_name_and_a_description_for_screen_readers(page):
    spoken = QAccessible.queryAccessibleInterface(page.flow)
    place = shown(page).index("m1")
    child = spoken.child(place)
    assert child.text(QAccessible.Text.Name) == "Madder, May"
    told = child.text(QAccessible.Text.Description)
    for words in ("value 4", "spectrum, 3 ×", "48 g"):
        assert words in told


def test_a_skein_dropped_on_a_letter_makes_it_that_lot_in_one_step(page, window):
    data = QMimeData()
    data.setData(LOT_TYPE, b"m1")
    spot = page.rail.box("B").center()
    enter = QDragEnterEvent(spot.toPoint(), Qt.DropAction.CopyAction, data, LEFT, Qt.KeyboardModifier.NoModifier)
    QApplication.sendEvent(page.rail, enter)
    assert enter.isAccepted()
    drop = QDropEvent(
        QPointF(spot), Qt.DropAction.CopyAction, data, LEFT, Qt.KeyboardModifier.NoModifier, QEvent.Type.Drop
    )
    QApplication.sendEvent(page.rail, drop)
    design = window.document.design
    assert design.colourway.lot_of("B") == "m1"
    assert design.palette.lot("m1") == PALETTE.lot("m1")
    assert window.document.stack.count() == 1
    window.document.stack.undo()
    assert window.document.design.palette.lot("m1") is None


def test_a_letter_is_given_by_the_menu_of_letters(page, window):
    page.pick("weld")
    QTest.mouseClick(page.side.card.use, LEFT)
    menu = QApplication.activePopupWidget()
    QTest.keyClick(menu, Qt.Key.Key_A)
    assert window.document.design.colourway.lot_of("A") == "weld"
    assert "A" in page._lines["weld"].letters


def test_a_letter_is_given_by_the_key_for_it(page, window, qtbot):
    page.pick("weld")
    page.flow.setFocus()
    window.activateWindow()
    qtbot.waitUntil(lambda: QApplication.activeWindow() is window)
    QTest.keyClick(window, Qt.Key.Key_F, CTRL | Qt.KeyboardModifier.AltModifier)
    qtbot.waitUntil(lambda: QApplication.activePopupWidget() is not None)
    QTest.keyClick(QApplication.activePopupWidget(), Qt.Key.Key_B)
    assert window.document.design.colourway.lot_of("B") == "weld"


def test_the_table_shows_the_same_lots_and_picks_with_the_skeins(page, settings):
    page.pick("m1")
    QTest.mouseClick(page.bar.table, LEFT)
    assert page.table.isVisible()
    assert settings.value("lots/table") == "yes"
    assert [page.table.item(row, 1).text() for row in range(page.table.rowCount())][-1] == "Ecru"
    assert page.table.picked == ("m1",)
    page.table.setFocus()
    QTest.keyClick(page.table, Qt.Key.Key_Down)
    assert page.picked != ("m1",)
    assert page.flow.picked == page.table.picked


def test_without_lots_the_page_says_what_to_do(open_on):
    window = open_on(chart("A B | x.\n"))
    window.show_page("lots")
    page = window._pages["lots"]
    assert page.blank.isVisible()
    assert "Open a palette" in page.blank.words.text()
    assert [button.text() for button in page.blank.buttons if button.isVisible()]


def test_the_page_follows_the_palette_and_forgets_a_lot_that_went(page, window):
    page.pick("m1", "m2")
    window.document.take_palette(replace(PALETTE, lots=PALETTE.lots[1:]))
    assert "m1" not in shown(page)
    assert page.picked == ("m2",)


def test_a_skein_differs_when_it_is_planned_and_when_its_shade_is_unknown():
    pictures = [
        skein_pixmap(rgb, SKEIN.width(), SKEIN.height(), 1.0, is_planned=is_planned).toImage()
        for rgb, is_planned in ((0xFF8A3B2F, False), (0xFF8A3B2F, True), (None, False), (None, True))
    ]
    assert all(a != b for place, a in enumerate(pictures) for b in pictures[place + 1 :])


def test_most_of_a_skein_is_the_very_shade():
    picture = skein_pixmap(0xFF8A3B2F, 264, 100, 1.0).toImage().convertToFormat(QImage.Format.Format_ARGB32)
    pixels = [picture.pixel(x, y) for x in range(0, 264, 2) for y in range(0, 100, 2)]
    inside = [pixel for pixel in pixels if pixel >> 24 == 255]
    assert inside.count(0xFF8A3B2F) > 0.6 * len(inside)


def test_absorption_is_kubelka_and_munks_of_the_published_example(qtbot):
    view = CurveView()
    qtbot.addWidget(view)
    view.show_curves([curve_of(spectrum(0.55, 0.55, 0.55, 0.55), "lot")])
    view.show_absorption(True)
    assert view.drawn()[0].points[0][1] == pytest.approx(0.184, abs=0.0005)  # HunterLab App. Note 18-7, 2008


def test_the_mean_curve_lies_between_its_readings():
    mean = mean_curve([spectrum(0.1, 0.2, 0.3, 0.4), spectrum(0.3, 0.4, 0.5, 0.6)], "lot")
    assert [value for _, value in mean.points[::10]] == pytest.approx([0.2, 0.3, 0.4, 0.5])


def test_four_hundred_lots_are_one_view_that_paints_what_is_in_sight(open_on, two_shades):
    window = open_on(two_shades)
    lots = tuple(lot(f"lot {place}", (20 + place % 70, place % 40 - 20, place % 60)) for place in range(398))
    window.document.take_palette(Palette(lots=lots))
    window.show_page("lots")
    flow = window._pages["lots"].flow
    QApplication.processEvents()
    assert len(flow.lots.lines) == 400
    assert len(flow.viewport().children()) < 5
    assert flow.verticalScrollBar().maximum() > 1000


def test_the_comparison_tells_strength_shift_and_cause(page):
    page.pick("m1", "m2")
    pair = page.side.pair
    figures = dict(pair.figures.rows)
    assert 0.4 < float(figures["strength"].split(" ")[0]) < 0.6
    assert "CIEDE2000" in figures["shift"]
    assert "weaker" in pair.reading.text()
    assert "best" in [curve.label for curve in pair.curve.curves]


def test_the_pair_says_how_many_more_readings_would_settle_its_contrast(page, window):
    few = tuple(LabReading(lab=(value, 0, 0)) for value in (49.0, 51.0))
    pale = tuple(LabReading(lab=(value, 0, 0)) for value in (71.5, 73.5))
    window.document.take_palette(
        Palette(lots=(Lot(id="a", name="a", readings=few), Lot(id="b", name="b", readings=pale)))
    )
    page.pick("a", "b")
    words = dict(page.side.pair.figures.rows)["contrast"]
    shades = [line.shade for line in page.flow.lots.lines if line.lot.id in ("a", "b")]
    more = settle(*shades, window.document.design.limits).more
    assert min(more) > 0
    assert words == f"soft; {more[1]} more of 1 and {more[0]} more of 2 would make it clear"
    page.pick("b", "a")
    assert dict(page.side.pair.figures.rows)["contrast"].endswith("would make it clear")
    window.document.take_palette(PALETTE)
    page.pick("m1", "weld")
    assert dict(page.side.pair.figures.rows)["contrast"] == "clear; more readings would not change that"


def test_two_lots_without_spectra_are_told_apart_without_a_strength(page, window):
    page.pick("weld", window.document.design.colourway.lot_of("A"))
    assert "strength" not in dict(page.side.pair.figures.rows)
    assert "has no spectrum" in page.side.pair.reading.text()
    assert page.side.pair.suspects.isHidden()


def test_the_ladder_marks_loads_to_come_as_assumed_while_one_is_measured(page):
    page.pick("m1")
    ladder = page.side.card.ladder
    rows = [ladder.rungs.item(row).text() for row in range(ladder.rungs.count())]
    assert rows[0].startswith("load 1, measured")
    assert rows[1].startswith("load 2, assumed")
    assert "assumed" in ladder.words.text()


def test_a_bath_without_a_spectrum_says_what_it_wants_for(page, window):
    bathed = replace(PALETTE.lots[2], bath="madder-may")
    window.document.take_palette(replace(PALETTE, lots=(bathed,)))
    page.pick("weld")
    assert "no load of bath madder-may has a spectrum yet" in page.side.card.ladder.words.text()
    assert not page.side.card.ladder.plan.isVisible()


def test_a_target_is_typed_or_chosen(page):
    page.pick("m1")
    ladder = page.side.card.ladder
    ladder.lab.setFocus()
    QTest.keyClicks(ladder.lab, "70 20")
    assert "three numbers" in ladder.answer.text()
    QTest.keyClicks(ladder.lab, "; 25")
    assert "comes nearest" in ladder.answer.text()
    ladder.lab.clear()
    assert ladder.answer.text() == ""
    ladder.target.setCurrentIndex(ladder.target.findData("m1"))
    assert ladder.answer.text().startswith("Load 1 comes nearest, as measured: CIEDE2000 0.0 away")


def test_a_lot_planned_from_a_load_is_used_in_the_design_and_its_contrast_says_predicted(open_on):
    window = open_on(chart("A B | x.x.x.x.\n" * 8, times=18, lots={"A": (30, 8, 12), "B": (80, 0, 20)}))
    window.document.take_palette(PALETTE)
    window.show_page("lots")
    page = window._pages["lots"]
    page.pick("m1")
    ladder = page.side.card.ladder
    ladder.rungs.setFocus()
    QTest.keyClick(ladder.rungs, Qt.Key.Key_Down)
    QTest.mouseClick(ladder.plan, LEFT)
    planned = window.document.palette.lots[-1]
    assert (planned.planned.bath, planned.planned.load) == ("madder-may", 2)
    assert page.picked == (planned.id,)
    assert "predicted" in page._lines[planned.id].description
    assert window.lots.open_palette.stack.count() == 1
    page.assign("B", planned.id)
    appraisal = window.document.appraisal
    assert appraisal.letter("B").shade.rests_on == "predicted"
    (pair,) = appraisal.pairs
    assert pair.rests_on == "predicted"
    assert any("predicted" in finding.message for finding in appraisal.findings)


def test_a_full_palette_takes_no_planned_lot_and_says_so(page, window):
    many = tuple(lot(f"lot {place}", (50, 0, 0)) for place in range(400 - len(PALETTE.lots)))
    window.document.take_palette(replace(PALETTE, lots=(*PALETTE.lots, *many)))
    page.plan("madder-may", 3)
    assert len(window.document.palette.lots) == 400
    assert "400" in window.statusBar().currentMessage()


def test_a_planned_lot_goes_again_with_one_undo(page, window):
    page.plan("madder-may", 3)
    assert len(window.document.palette.lots) == 5
    window.lots.open_palette.stack.undo()
    assert window.document.palette == PALETTE
