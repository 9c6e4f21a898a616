"""A motif set down on the chart, drawn for the shelf, and offered there: what needs no window."""

from dataclasses import replace

import pytest
from PySide6.QtCore import QSize

from chartmaker.app.chart_grid import laid_out
from chartmaker.app.hand import Hand
from chartmaker.app.motif_choice import MotifChoice
from chartmaker.app.motif_desk import letters_above
from chartmaker.app.motif_picture import GREYS, motif_icon, motif_image
from chartmaker.app.stamps import stamp_edit, stamp_words
from chartmaker.model.motif import Motif
from chartmaker.model.notation import rounds_from_text
from tests.app.hand_at import drawn
from tests.builders import chart

BARE = chart("\n".join(["A B | ........"] * 4), times=18)
GRID = laid_out(BARE)


def motif(text, **about):
    return Motif(**{"id": "test", "name": "Test", "family": "peerie", "rounds": rounds_from_text(text), **about})


CORNER = motif("A B | ...x\nA B | ..xx")
WEDGE = motif("A B | x. | .>\nA B | .x.\nA B | .x. | .>.")


def after(design, cell, what, **how):
    edit = stamp_edit(design, laid_out(design), cell, what, **how)
    assert edit is not None
    return drawn(edit.applied_to(design))


@pytest.mark.parametrize("column", [0, 3, 4, 7])
def test_a_stamp_begins_with_the_repeat_wherever_in_a_tile_it_is_set_down(column):
    assert after(BARE, (1, column), CORNER) == ["........", "...x...x", "..xx..xx", "........"]


def test_a_stamp_that_does_not_snap_begins_where_it_is_set_down_and_runs_over_the_join():
    assert after(BARE, (0, 3), CORNER, snaps=False) == ["........", "........", "x...x...", "x..xx..x"]


def test_a_motif_that_does_not_tile_the_repeat_stands_once_where_it_is_set_down():
    assert after(BARE, (0, 2), motif("A B | xxx")) == [*["........"] * 3, "...xxx.."]


def test_a_stamp_on_a_neighbour_stamps_the_live_repeat():
    assert after(BARE, (1, -1), CORNER) == after(BARE, (1, 7), CORNER)


def test_a_stamp_outside_the_fabric_or_over_its_own_likeness_changes_nothing():
    assert stamp_edit(BARE, GRID, (9, 0), CORNER) is None
    done = stamp_edit(BARE, GRID, (0, 0), CORNER).applied_to(BARE)
    assert stamp_edit(done, GRID, (0, 4), CORNER) is None


def test_a_motif_wider_than_the_repeat_is_refused_with_a_sentence():
    with pytest.raises(ValueError, match="9 stitches wide"):
        stamp_edit(BARE, GRID, (0, 0), motif("A B | xxxx....."))


def test_the_hands_preview_at_a_cell_is_what_a_click_there_makes():
    hand = Hand()
    hand.motif = CORNER
    hand.take("stamp")
    preview = hand.preview_at((1, 2), BARE, GRID)
    hand.press((1, 2))
    assert hand.release(BARE, GRID).applied_to(BARE) == preview != BARE


def test_a_hand_without_a_motif_stamps_nothing():
    hand = Hand()
    hand.take("stamp")
    assert hand.preview_at((0, 0), BARE, GRID) is BARE
    hand.press((0, 0))
    assert hand.release(BARE, GRID) is None


def pixels(image):
    signs = {0: " "} | {grey.rgba(): sign for grey, sign in zip(GREYS, ".x#", strict=True)}
    return ["".join(signs[image.pixel(x, y)] for x in range(image.width())) for y in range(image.height())]


def test_a_motif_is_drawn_as_two_repeats_the_last_round_at_the_top():
    assert pixels(motif_image(CORNER)) == ["...x...x", "..xx..xx"]


def test_a_wedge_is_drawn_narrowing_with_nothing_where_no_stitch_is():
    rows = pixels(motif_image(WEDGE))
    assert rows[1:] == [".x..x.", ".x..x."]
    assert sorted(rows[0]) == sorted(" x. x.")


@pytest.mark.parametrize("stitches", [2, 40, 300])
@pytest.mark.usefixtures("qapp")
def test_a_thumbnail_has_the_size_it_was_asked_for_however_wide_the_motif(stitches):
    wide = motif("A B | " + "x." * (stitches // 2))
    image = motif_icon(wide, QSize(84, 46), 2.0, height_per_width=0.875).pixmap(QSize(84, 46), 2.0).toImage()
    assert image.size() == QSize(168, 92)
    assert any(image.pixelColor(x, y).alpha() for x in range(168) for y in (44, 45, 46))


BAND = BARE.bands[0]
ASKED = {
    "repeat that divides the band's": (MotifChoice(), CORNER, True),
    "repeat that does not": (MotifChoice(), motif("A B | .xx"), False),
    "repeat that divides the round alone": (MotifChoice(fit="round"), motif("A B | .xx"), True),
    "repeat that divides not even that": (MotifChoice(fit="round"), motif("A B | .xxxx"), False),
    "any repeat": (MotifChoice(fit="any"), motif("A B | .xxxx"), True),
    "shaped one, by the round": (MotifChoice(), motif("A B | .x | .>"), True),
    "its family": (MotifChoice(family="peerie"), CORNER, True),
    "another family": (MotifChoice(family="star"), CORNER, False),
    "words of name and tag": (MotifChoice(words="LEAF te"), replace(CORNER, tags=("leafy",)), True),
    "one word too many": (MotifChoice(words="leaf pier"), replace(CORNER, tags=("leafy",)), False),
}


@pytest.mark.parametrize("name", ASKED)
def test_what_the_shelf_offers(name):
    choice, what, is_offered = ASKED[name]
    assert choice.takes(what, BAND) is is_offered


def test_a_band_laid_in_takes_the_letters_below_it_then_others_of_the_design_then_new_ones():
    design = chart("C D | x.\nA | ..", "E | .", times=(4, 8))
    assert letters_above(design, 0, 1) == "C"
    assert letters_above(design, 0, 4) == "CDAE"
    assert letters_above(design, 1, 2) == "EA"
    assert letters_above(chart("A | .", times=4), 0, 3) == "ABC"


TALL = motif("\n".join(["A B | .x"] * 4))
WORDS = {
    (0, 0): "",
    (1, 0): "1 of its 4 rounds is past the top of the band and is left out",
    (3, 5): "3 of its 4 rounds are past the top of the band and are left out",
}


@pytest.mark.parametrize("cell", WORDS)
def test_rounds_past_the_top_of_the_band_are_told(cell):
    assert stamp_words(BARE, GRID, cell, TALL) == WORDS[cell]
    past = 4 - sum("x" in row for row in after(BARE, cell, TALL))
    assert (str(past) if past else "") == WORDS[cell][:1]


def test_what_keeps_a_motif_out_of_a_band_is_told():
    wide = motif("A B | .........x")
    assert stamp_words(BARE, GRID, (0, 0), wide) == "Test is 10 stitches wide, the band's repeat only 8"
    assert stamp_words(BARE, GRID, (0, 0), WEDGE) == "Test is shaped: lay it in as a band of its own"
    assert stamp_words(BARE, GRID, (99, 0), TALL) == ""
