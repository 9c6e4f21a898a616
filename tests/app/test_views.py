"""The ways of seeing the chart: chosen by key, menu and box; what is painted in each, read back pixel by pixel."""

from dataclasses import replace

import numpy as np
import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QColor
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QComboBox

from chartmaker.app.shades import SURROUND, ghosted, lot_colour
from chartmaker.app.views import VIEWS, view_named
from chartmaker.model.edits import paint
from chartmaker.model.palette import Palette
from chartmaker.model.reading import Spectrum
from chartmaker.model.settings import Viewing
from chartmaker.pictures.back import HEIGHTS
from chartmaker.pictures.stitch import MEAN_LIGHT
from chartmaker.shade.screen import decoded
from chartmaker.shade.vision import seen_by
from tests.app.hand_at import drag, point, type_at
from tests.app.test_canvas_pixels import at, shown
from tests.builders import chart, lot

DRAWN_ON = [view.id for view in VIEWS if view.is_drawn_on]
LOTS = {"A": (30, 8, 12), "B": (80, 0, 20)}


def grabbed(widget):
    image = widget.grab().toImage().convertToFormat(widget.grab().toImage().Format.Format_RGB32)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())
    return rows[:, : 4 * image.width()].reshape(image.height(), image.width(), 4)[..., 2::-1].copy()


def cell_pixels(window, cell):
    canvas = window.chart.canvas
    box = canvas.frame.box(*cell)
    left, top, right, bottom = (round(side) for side in (box.left(), box.top(), box.right(), box.bottom()))
    return grabbed(canvas.viewport())[top:bottom, left:right]


@pytest.fixture
def wide(open_on):
    """Give the window on a chart larger than it, of two bands, with long floats, shaping and purled stitches."""
    line = "A B | " + "x" + "." * 24 + "x..x."
    design = chart(
        "\n".join([line, "B C | " + "x." * 15] * 30),
        "\n".join(["A C | " + "x." * 13 + "x | >" + "." * 25 + "<", *["A C | " + "x." * 14 + "x"] * 8]),
        times=(5, 6),
        lots=LOTS | {"C": (55, 30, -10)},
    )
    design = replace(design, bands=(replace(design.bands[0], texture="kkp"), *design.bands[1:]))
    window = open_on(design, size=(1024, 700))
    window.chart.canvas.show_width(24)
    return window


# --- choosing


def test_every_view_has_a_key_a_menu_entry_and_a_place_in_the_box(window):
    box = window.chart.tools.findChild(QComboBox)
    assert box.accessibleName() == "View"
    assert [box.itemData(line) for line in range(box.count())] == [view.id for view in VIEWS]
    for key, view in zip("1234567890", VIEWS, strict=True):
        assert box.itemText(VIEWS.index(view)).startswith(key)
        type_at(window, Qt.Key(ord(key)))
        assert window.chart.view == view.id
        assert box.currentData() == view.id
        assert window.actions_made[f"view.{view.id}"].isChecked()
        window.show_view("shade")


def test_choosing_in_the_box_shows_the_view(window):
    box = window.chart.tools.findChild(QComboBox)
    box.setFocus()
    box.setCurrentIndex(0)
    QTest.keyClick(box, Qt.Key.Key_Down)
    QTest.keyClick(box, Qt.Key.Key_Down)
    assert window.chart.view == "knit"


def test_an_unknown_view_is_refused():
    with pytest.raises(ValueError, match="there is no view"):
        view_named("sideways")


# --- what is kept of the picture


@pytest.mark.parametrize("view", DRAWN_ON)
def test_scrolling_shows_what_painting_everything_anew_does(wide, view):
    chart_page = wide.chart
    wide.show_view(view)
    canvas = chart_page.canvas
    assert canvas.horizontalScrollBar().maximum() > 40
    canvas.viewport().repaint()
    for across, down in ((13, 0), (0, -37), (-9, 21), (5, -90)):
        canvas.horizontalScrollBar().setValue(canvas.horizontalScrollBar().value() + across)
        canvas.verticalScrollBar().setValue(canvas.verticalScrollBar().value() + down)
        kept = [grabbed(widget) for widget in (canvas.viewport(), chart_page.shading, chart_page.ledger)]
        canvas._repaint_all()
        anew = [grabbed(widget) for widget in (canvas.viewport(), chart_page.shading, chart_page.ledger)]
        assert all(np.array_equal(before, after) for before, after in zip(kept, anew, strict=True))


@pytest.mark.parametrize("view", DRAWN_ON)
def test_a_stitch_drawn_shows_what_painting_everything_anew_does(wide, view):
    wide.show_view(view)
    canvas = wide.chart.canvas
    grabbed(canvas.viewport())
    row, column = canvas.frame.rows_in_sight()[8], canvas.frame.columns_in_sight()[5]
    drag(canvas, (row, column), (row + 1, column + 3))
    wide.document.appraise_now()
    kept = grabbed(canvas.viewport())
    canvas._repaint_all()
    assert np.array_equal(kept, grabbed(canvas.viewport()))


# --- the knitted surface


def test_a_knitted_stitch_is_a_v_of_its_own_yarn_under_the_feet_of_the_stitch_above(window):
    canvas = window.chart.canvas
    drag(canvas, (3, 3), (3, 3))
    window.show_view("knit")
    pixels = cell_pixels(window, (3, 3)).astype(int)
    own, other = (np.array(shown(window, letter).getRgb()[:3]) for letter in "BA")
    is_own = np.abs(pixels - own).sum(axis=-1) < np.abs(pixels - other).sum(axis=-1)
    half = is_own.shape[1] // 2
    # The two legs mirror each other, and the middle of the top belongs to the stitch above.
    assert is_own[:, :half].sum() == pytest.approx(is_own[:, ::-1][:, :half].sum(), rel=0.15)
    assert not is_own[: is_own.shape[0] // 4, half - 1 : half + 1].any()
    assert is_own.any()


def test_the_knitted_surface_keeps_the_light_of_the_shade_at_any_size(window):
    window.show_view("knit")
    canvas = window.chart.canvas
    expected = MEAN_LIGHT * decoded(np.array(shown(window, "A").getRgb()[:3]) / 255)
    for width in (3, 8, 30):
        canvas.show_width(width)
        pixels = np.concatenate(
            [cell_pixels(window, (2, column))[2:-2, 1:-1].reshape(-1, 3) for column in (2, 3)]
            if width > 8
            else [cell_pixels(window, (row, column)).reshape(-1, 3) for row in (2, 3) for column in (1, 2, 3)]
        )
        light = decoded(pixels / 255).mean(axis=0)
        assert light == pytest.approx(expected, rel=0.25, abs=0.004)


def test_a_decrease_leans_the_way_its_sign_does(open_on):
    design = chart("A B | xxx | >.<\nA B | xxxxx | .....", times=6, lots={"A": (30, 0, 0), "B": (90, 0, 0)})
    window = open_on(design)
    window.show_view("knit")
    window.chart.canvas.show_width(40)
    at_left, at_right = (cell_pixels(window, (1, column)).astype(float).mean(axis=-1) for column in (3, 1))
    across = np.arange(at_left.shape[1])

    def drift(cell):
        third = len(cell) // 3
        upper, lower = cell[:third].sum(axis=0), cell[-third:].sum(axis=0)
        return (upper * across).sum() / upper.sum() - (lower * across).sum() / lower.sum()

    assert drift(at_left) > 1  # k2tog leans right
    assert drift(at_right) < -1  # ssk leans left


# --- the back


@pytest.fixture
def back(open_on):
    """Give the window on one round with a float of six and one of three, over the limit at four, seen from the back."""
    design = chart(
        "A B | .......\nA B | x...x..", times=6, gauge=(20.0, 26.0), lots={"A": (30, 8, 12), "B": (80, 0, 20)}
    )
    window = open_on(replace(design, limits=replace(design.limits, float_cm=1.2)))
    window.show_view("back")
    window.chart.canvas.show_width(40)
    return window


def test_the_back_shows_the_figures_float_below_and_the_grounds_above(back):
    # Stitches from the right: ground, ground, figure, three of ground, figure.
    assert at(back.chart.canvas, (0, 0), share=(0.2, HEIGHTS[1])) == shown(back, "B")
    assert at(back.chart.canvas, (0, 4), share=(0.2, HEIGHTS[1])) == shown(back, "B")
    assert at(back.chart.canvas, (0, 2), share=(0.2, HEIGHTS[0])) == shown(back, "A")
    assert at(back.chart.canvas, (1, 0), share=(0.2, HEIGHTS[1])) not in (shown(back, "A"), shown(back, "B"))


def test_a_float_begins_and_ends_in_the_middle_of_its_stitches_and_runs_on_into_the_ghosts(back):
    canvas = back.chart.canvas
    figure = shown(back, "B")
    assert at(canvas, (0, 2), share=(0.2, HEIGHTS[1])) == figure
    assert at(canvas, (0, 2), share=(0.8, HEIGHTS[1])) == figure
    ground = shown(back, "A")
    # Of the ground only the halves beside a figure stitch show.
    assert at(canvas, (0, 1), share=(0.2, HEIGHTS[0])) == ground
    assert at(canvas, (0, 1), share=(0.8, HEIGHTS[0])) != ground
    assert at(canvas, (0, -1), share=(0.2, HEIGHTS[1])) == ghosted(figure)
    assert at(canvas, (0, 7), share=(0.8, HEIGHTS[1])) == ghosted(figure)


def test_a_long_float_has_a_heavy_edge_and_a_tie_where_it_is_to_be_caught(back):
    canvas = back.chart.canvas
    (found,) = [found for found in back.document.appraisal.long_floats if found.round == 0 and found.start < 7]
    assert found.length == 3
    (caught,) = found.catches
    tie = cell_pixels(back, (0, caught))
    assert (tie == 255).all(axis=-1).any()
    for column in range(7):
        pixels = cell_pixels(back, (0, column))[3:-3, 3:-3]
        is_black = (pixels == 0).all(axis=-1).any()
        assert is_black == (3 <= column <= 5 or column in (2, 6)), column
    assert canvas.view == "back"


def test_the_heading_says_that_the_back_is_seen_through(back):
    assert "keep their columns" in back.chart.strip._words.text()
    assert back.chart.strip.isVisible()


def test_the_cast_on_edge_stays_in_sight_when_a_line_above_takes_room(wide):
    canvas = wide.chart.canvas
    canvas.verticalScrollBar().setValue(canvas.verticalScrollBar().maximum())
    height = canvas.viewport().height()
    wide.show_view("back")
    QApplication.processEvents()
    assert canvas.viewport().height() < height
    assert canvas.frame.box(0, 0).bottom() <= canvas.frame.area.bottom()


# --- by lamplight, and other eyes


def test_lamplight_shows_a_lot_with_a_spectrum_as_the_lamp_would(open_on):
    reflectance = tuple(np.linspace(0.05, 0.9, 31) ** 3)
    spectrum = Spectrum(start_nm=400, step_nm=10, reflectance=reflectance)
    reddish = lot("reddish", labs=(), readings=(spectrum,))
    window = open_on(chart("A B | ....", times=36, lots={"A": reddish, "B": (50, 40, 20)}))
    window.show_view("lamp")
    expected = lot_colour(reddish, Viewing(illuminant="A"), Palette())
    assert at(window.chart.canvas, (0, 2)) == expected
    assert expected != lot_colour(reddish, Viewing(), Palette())
    assert "lot b" in window.chart.strip._words.text()
    assert "reddish" not in window.chart.strip._words.text()


@pytest.mark.parametrize("kind", ["protan", "deutan", "tritan"])
def test_other_eyes_see_the_chart_the_chips_and_the_ladder_alike(open_on, kind):
    window = open_on(chart("A B | xx..", times=36, lots={"A": (50, 50, 30), "B": (60, -40, 30)}))
    window.show_view(kind)
    expected = QColor(*seen_by(shown(window, "A").getRgb()[:3], kind).tolist())
    assert at(window.chart.canvas, (0, 0)) == expected
    for widget in (window.chart.shading, window.chart.ladder, window.chart.letters.box("A")):
        pixels = grabbed(widget).reshape(-1, 3)
        assert (pixels == expected.getRgb()[:3]).all(axis=-1).sum() > 20


def test_severity_weakens_the_change_and_is_remembered(window, open_on, two_shades):
    window.show_view("protan")
    window.chart.strip.severity.setValue(0)
    assert at(window.chart.canvas, (2, 2)) == shown(window, "A")
    window.chart.strip.severity.setValue(40)
    assert at(window.chart.canvas, (2, 2)) == QColor(
        *seen_by(shown(window, "A").getRgb()[:3], "protan", severity=0.4).tolist()
    )
    again = open_on(two_shades)
    again.show_view("protan")
    assert again.chart.strip.severity.value() == 40


# --- across the room


def test_from_across_the_room_the_hat_has_its_true_angular_size(window):
    window.show_view("far")
    far, strip = window.chart.far, window.chart.strip
    strip.distance.setValue(2.0)
    strip.eye.setValue(50)
    gauge = window.document.design.gauge
    # 72 of 144 stitches are seen at once: as large at 50 cm as the hat is at 2 m.
    width_cm = 72 * gauge.stitch_width_cm * 0.5 / 2.0
    ratio = far.devicePixelRatioF()
    assert far.picture.width() == pytest.approx(width_cm * far.units_per_cm * ratio, abs=1)
    assert far.picture.height() == pytest.approx(8 * gauge.round_height_cm / 4 * far.units_per_cm * ratio, abs=1)
    image = grabbed(far)
    is_hat = (image != SURROUND.getRgb()[:3]).any(axis=-1)
    rows, columns = np.flatnonzero(is_hat.any(axis=1)), np.flatnonzero(is_hat.any(axis=0))
    assert abs((columns[0] + columns[-1]) / 2 - image.shape[1] / 2) <= 1
    assert abs((rows[0] + rows[-1]) / 2 - image.shape[0] / 2) <= 1


def test_nothing_is_drawn_from_across_the_room_and_escape_or_a_double_click_goes_back(window):
    before = window.document.design
    window.show_view("knit")
    window.show_view("far")
    far = window.chart.far
    assert "Escape" in window.statusBar().currentMessage()
    window.statusBar().clearMessage()
    QTest.mouseClick(far, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, QPoint(200, 200))
    assert "Escape" in window.statusBar().currentMessage()
    assert not window.actions_made["tool.line"].isEnabled()
    assert not window.actions_made["rounds.delete"].isEnabled()
    assert not window.actions_made["block.paste"].isEnabled()
    assert not window.actions_made["shading.choose"].isEnabled()
    assert not window.actions_made["view.fit"].isEnabled()
    assert window.actions_made["view.shade"].isEnabled()
    QTest.keyClick(far, Qt.Key.Key_Space)
    assert window.document.design is before
    QTest.keyClick(far, Qt.Key.Key_Escape)
    assert window.chart.view == "knit"
    assert not window.statusBar().currentMessage()
    assert window.actions_made["tool.line"].isEnabled()
    window.show_view("far")
    QTest.mouseDClick(far, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, QPoint(200, 200))
    assert window.chart.view == "knit"
    assert QApplication.focusWidget() is window.chart.canvas


def test_keys_switch_the_view_from_across_the_room_too(window):
    window.show_view("far")
    window.chart.far.setFocus()
    QTest.keyClick(window.chart.far, Qt.Key.Key_2)
    assert window.chart.view == "value"


def test_the_bar_drawn_to_five_centimetres_sets_the_screens_scale_and_is_remembered(window, open_on, two_shades):
    window.show_view("far")
    bar = window.chart.strip.bar
    end = QPoint(round(4.5 + 5 * bar.units_per_cm), 10)
    QTest.mousePress(bar, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, end)
    QTest.mouseMove(bar, QPoint(4 + 5 * 44, 10))
    QTest.mouseRelease(bar, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, QPoint(4 + 5 * 44, 10))
    assert window.chart.far.units_per_cm == pytest.approx(44, abs=0.2)
    bar.setFocus()
    QTest.keyClick(bar, Qt.Key.Key_Right)
    scale = window.chart.far.units_per_cm
    assert scale == pytest.approx(44.2, abs=0.2)
    assert open_on(two_shades).chart.far.units_per_cm == pytest.approx(scale)
    window.chart.strip.screens_word.click()
    assert window.chart.far.units_per_cm == pytest.approx(window.screen().physicalDotsPerInch() / 2.54)


# --- zoom


def test_true_size_on_paper_draws_stitches_as_wide_as_the_sheet_has_them(window):
    from chartmaker.sheets.chart_plan import best_size
    from chartmaker.sheets.paper import PAPERS

    QTest.keyClick(window, Qt.Key.Key_9, Qt.KeyboardModifier.ControlModifier)
    canvas = window.chart.canvas
    sizes = [best_size(window.document.design, paper.frame).width / 10 for paper in PAPERS.values()]
    drawn_cm = canvas.frame.cell.width() / window.chart.far.units_per_cm
    half_pixel = 0.5 / canvas.frame.pixel_ratio / window.chart.far.units_per_cm
    assert min(abs(drawn_cm - size) for size in sizes) <= half_pixel + 1e-9
    before = canvas.frame.size.width
    canvas.zoom(1)
    assert canvas.frame.size.width > before


@pytest.mark.parametrize("steps", [1, 3, -2, -5])
@pytest.mark.parametrize("view", ["shade", "knit"])
def test_zooming_keeps_the_stitch_under_the_pointer_within_a_pixel(wide, steps, view):
    wide.show_view(view)
    canvas = wide.chart.canvas
    canvas.verticalScrollBar().setValue(canvas.verticalScrollBar().maximum() // 2)
    canvas.horizontalScrollBar().setValue(canvas.horizontalScrollBar().maximum() // 2)
    frame = canvas.frame
    pointer = QPointF(point(canvas, (frame.rows_in_sight()[6], frame.columns_in_sight()[7])))

    def under(frame):
        return (pointer.x() - frame.origin.x()) / frame.cell.width(), (
            pointer.y() - frame.origin.y()
        ) / frame.cell.height()

    place = under(frame)
    canvas.zoom(steps, pointer)
    after = canvas.frame
    moved = [(under(after)[axis] - place[axis]) * side for axis, side in enumerate(after.cell.toTuple())]
    free = [0 < bar.value() < bar.maximum() for bar in (canvas.horizontalScrollBar(), canvas.verticalScrollBar())]
    # Where the chart's end is in sight the stitch must move; going nearer it never is.
    assert all(abs(by) <= 1 for by, is_free in zip(moved, free, strict=True) if is_free)
    assert all(free) or steps < 0
    assert after.size != frame.size


def test_fit_shows_all_of_the_chart(wide):
    canvas = wide.chart.canvas
    canvas.fit()
    assert canvas.frame.reach == (0, 0)


# --- export


def test_the_picture_exported_is_of_the_view_at_hand_where_there_is_one(window, monkeypatch):
    asked = []
    monkeypatch.setattr(window.filing, "export_picture", asked.append)
    for view in ("shade", "value", "knit", "symbols", "back", "far"):
        window.show_view(view)
        window.export_picture()
    assert asked == ["shade", "value", "knit", "shade", "shade", "shade"]


def test_an_edit_from_elsewhere_is_seen_across_the_room(window):
    window.show_view("far")
    before = grabbed(window.chart.far)
    cells = {(index, stitch): 1 for index in range(8) for stitch in range(8)}
    window.document.do(paint(window.document.design, band=0, cells=cells, text="Draw"))
    window.document.appraise_now()
    assert not np.array_equal(before, grabbed(window.chart.far))
