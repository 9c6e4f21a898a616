"""What is on the screen, read back pixel by pixel."""

from dataclasses import replace

from PySide6.QtGui import QColor

from chartmaker.app.shades import PAPER, SURROUND, UNKNOWN, ghosted, grey_of
from tests.app.hand_at import drag
from tests.builders import chart


def at(canvas, cell, *, share=(0.3, 0.3)):
    box = canvas.frame.box(*cell)
    image = canvas.viewport().grab().toImage()
    return image.pixelColor(int(box.left() + share[0] * box.width()), int(box.top() + share[1] * box.height()))


def shown(window, letter):
    return QColor(*window.document.appraisal.shade_of(letter).srgb)


def test_a_stitch_is_shown_in_its_shade_and_its_neighbour_faded(window):
    canvas = window.chart.canvas
    drag(canvas, (2, 2), (2, 2))
    assert at(canvas, (2, 2)) == shown(window, "B")
    assert at(canvas, (2, 3)) == shown(window, "A")
    assert at(canvas, (2, -6)) == ghosted(shown(window, "B"))
    assert at(canvas, (2, 10)) == ghosted(shown(window, "B"))


def test_the_grey_view_shows_the_grey_of_the_same_value(window):
    window.show_view("value")
    colour = at(window.chart.canvas, (2, 2))
    assert colour == grey_of(30.0)
    assert colour.red() == colour.green() == colour.blue()


def test_the_symbol_view_shows_ink_on_paper_and_leaves_the_commonest_letter_bare(window):
    canvas = window.chart.canvas
    drag(canvas, (2, 2), (2, 2))
    window.show_view("symbols")
    assert at(canvas, (2, 3), share=(0.5, 0.5)) == PAPER
    assert at(canvas, (2, 2), share=(0.5, 0.5)).lightness() < 60


def test_a_letter_without_a_lot_is_shown_as_not_known_and_written_out(open_on):
    window = open_on(chart("A B | x.x.\nA B | ....", times=36))
    canvas = window.chart.canvas
    box = canvas.frame.box(0, 1)
    image = canvas.viewport().grab(box.toAlignedRect()).toImage()
    colours = {image.pixelColor(x, y).name() for x in range(image.width()) for y in range(image.height())}
    assert UNKNOWN.name() in colours
    assert min(QColor(name).lightness() for name in colours) < 60


def test_the_symbol_view_draws_a_bar_under_the_mark_of_a_purled_stitch(open_on):
    design = chart("A B | ....", times=36, lots={"A": (90, 0, 0), "B": (20, 0, 0)})
    window = open_on(replace(design, bands=(replace(design.bands[0], texture="kkpp"),)))
    window.show_view("symbols")
    canvas = window.chart.canvas
    assert at(canvas, (0, 0), share=(0.5, 0.82)) == PAPER
    assert at(canvas, (0, 2), share=(0.5, 0.82)).lightness() < 60


def test_the_surround_is_neutral(window):
    canvas = window.chart.canvas
    area = canvas.frame.area
    colour = canvas.viewport().grab().toImage().pixelColor(int(area.left()) + 2, int(area.top()) + 2)
    assert colour == SURROUND
    assert colour.red() == colour.green() == colour.blue()


def test_an_edit_repaints_to_the_same_picture_as_painting_everything_anew(window):
    canvas = window.chart.canvas
    drag(canvas, (1, 1), (5, 6))
    kept = canvas.viewport().grab().toImage()
    canvas._repaint_all()
    assert canvas.viewport().grab().toImage() == kept


def test_shaping_signs_stand_on_shaped_stitches(open_on):
    design = chart("A B | ... | .^.\nA B | ..... | .....", times=6, lots={"A": (90, 0, 0), "B": (20, 0, 0)})
    canvas = open_on(design).chart.canvas
    box = canvas.frame.box(1, 2)
    image = canvas.viewport().grab(box.toAlignedRect().adjusted(3, 3, -3, -3)).toImage()
    plain = canvas.viewport().grab(canvas.frame.box(1, 1).toAlignedRect().adjusted(3, 3, -3, -3)).toImage()
    assert {plain.pixelColor(x, y).name() for x in range(plain.width()) for y in range(plain.height())} == {
        at(canvas, (1, 1)).name()
    }
    darkest = min(image.pixelColor(x, y).lightness() for x in range(image.width()) for y in range(image.height()))
    assert darkest < 60
