from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from chartmaker.app.chart_grid import GHOST_CODE, NO_STITCH, laid_out, laid_out_anew
from chartmaker.model.edits import paint
from chartmaker.model.stitches import Shaping
from tests.builders import chart
from tests.strategies import designs

TWO_BANDS = chart("A B | x...", "A C | .x.x.x", times=(12, 8))
CROWN = chart(
    """
    A B | .x. | .^.
    A B | ..x.. | .....
    """,
    times=6,
)


def picture(grid):
    """Draw codes as letters, neighbours in small ones, no stitch as a blank."""
    signs = {NO_STITCH: " "}
    for code in range(26):
        signs[code] = chr(ord("A") + code)
        signs[code + GHOST_CODE] = chr(ord("a") + code)
    return ["".join(signs[int(code)] for code in line) for line in grid.codes]


def test_bands_stand_on_one_another_with_their_neighbours_beside_them():
    grid = laid_out(TWO_BANDS)
    assert (grid.width, grid.ghost) == (6, 6)
    assert picture(grid) == [
        "acacac" + "ACACAC" + "acacac",
        "baaaba" + "aaBAAA" + "baaaba",
    ]


def test_a_shaped_round_stands_over_the_stitches_that_it_eats_and_leaves_no_stitch_beside_it():
    grid = laid_out(CROWN)
    top, bottom = picture(grid)
    assert bottom[grid.ghost : grid.ghost + 5] == "AABAA"
    assert top[grid.ghost : grid.ghost + 5] == " ABA "
    assert grid.shaping[0].tolist().count(Shaping.CENTRED) == 3


def test_every_place_of_the_picture_shows_the_stitch_that_its_spot_names():
    for design in (TWO_BANDS, CROWN):
        grid = laid_out(design)
        for line in range(len(grid.rows)):
            for place in range(grid.columns):
                row, column = grid.cell(line, place)
                spot, code = grid.spot(row, column), int(grid.codes[line, place])
                if spot is None:
                    assert code == NO_STITCH
                    continue
                letter = design.bands[spot.band].rounds[spot.index].letter_of(spot.stitch)
                assert code % GHOST_CODE == ord(letter) - ord("A")
                assert (code < GHOST_CODE) == (spot.repeat == 0)


def test_a_place_outside_the_chart_has_no_stitch():
    grid = laid_out(TWO_BANDS)
    assert grid.spot(-1, 0) is None
    assert grid.spot(2, 0) is None
    assert grid.spot(0, -grid.ghost - 1) is None
    assert grid.spot(0, grid.width + grid.ghost) is None


def test_an_edit_lays_out_only_the_rows_that_it_changed():
    grid = laid_out(TWO_BANDS)
    after = paint(TWO_BANDS, band=1, cells={(0, 1): 1}, text="").applied_to(TWO_BANDS)
    anew, rows = laid_out_anew(grid, TWO_BANDS, after)
    assert rows == (1,)
    assert picture(anew) == picture(laid_out(after))
    assert picture(grid) == picture(laid_out(TWO_BANDS))


@given(designs(), st.data())
def test_laying_out_anew_comes_to_the_same_as_laying_out(design, data):
    band = data.draw(st.integers(0, len(design.bands) - 1))
    index = data.draw(st.integers(0, len(design.bands[band].rounds) - 1))
    stitch = data.draw(st.integers(0, len(design.bands[band].rounds[index]) - 1))
    after = paint(design, band=band, cells={(index, stitch): 1}, text="").applied_to(design)
    anew, _ = laid_out_anew(laid_out(design), design, after)
    assert (anew.codes == laid_out(after).codes).all()
    assert (anew.shaping == laid_out(after).shaping).all()


def test_a_purled_stitch_is_purled_in_every_repeat():
    design = chart("A B | xx..", times=36)
    design = replace(design, bands=(replace(design.bands[0], texture="kkpp"),))
    grid = laid_out(design)
    assert grid.purl[0].tolist() == [True, True, False, False] * 3
    plain, rows = laid_out_anew(grid, design, chart("A B | xx..", times=36))
    assert rows is None
    assert not plain.purl.any()
