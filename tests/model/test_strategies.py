"""The builders and strategies that other tests stand on."""

from hypothesis import given

from chartmaker.model.design import Design
from chartmaker.model.palette import Palette
from tests.builders import chart, lot
from tests.strategies import designs, palettes


@given(designs())
def test_a_drawn_design_is_a_design_with_rounds(design: Design):
    assert sum(len(band.rounds) for band in design.bands) >= 1


@given(palettes())
def test_a_drawn_palette_names_only_its_own_yarns_and_baths(palette: Palette):
    for one in palette.lots:
        assert one.yarn is None or palette.yarn(one.yarn) is not None
        assert one.source is None or palette.bath(one.source[0]) is not None


def test_the_last_line_drawn_is_the_first_round_and_its_right_most_sign_is_stitch_one():
    design = chart("A B | .xx\nA C | x..", times=4)
    first = design.bands[0].rounds[0]
    assert (first.letters, first.cells) == ("AC", bytes([0, 0, 1]))


def test_a_chart_takes_lots_or_plain_shades_for_its_letters():
    design = chart("A B | .x", lots={"A": (80.0, 0.0, 10.0), "B": lot("moss", lab=(40.0, -10.0, 20.0))})
    assert [design.colourway.lot_of(letter) for letter in "ABC"] == ["lot-a", "moss", None]
