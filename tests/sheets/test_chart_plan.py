import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from chartmaker.knit.outline import chart_offsets
from chartmaker.model.band import Band
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge
from chartmaker.model.round import Round
from chartmaker.sheets.chart_layout import NUMBER_PT
from chartmaker.sheets.chart_plan import LARGE, USUAL, best_size, cell_size, cut, paged, shelf_height, shelved
from chartmaker.sheets.paper import PAPERS
from tests.strategies import bands, gauges

ROOMS = [sheet.frame for paper in PAPERS.values() for sheet in (paper, paper.turned)]
MEASURES = [USUAL, LARGE]


def blank(columns: int, rounds: int) -> Band:
    return Band(name="", times=1, rounds=(Round("A", bytes(columns)),) * rounds)


@given(
    bands=st.lists(bands(most=40, most_rounds=20), min_size=1, max_size=4), gauge=gauges(), room=st.sampled_from(ROOMS)
)
@settings(max_examples=50)
def test_pieces_cover_every_band_once_without_overlap(bands, gauge, room):
    design = Design(bands=tuple(bands), gauge=gauge)
    pieces = cut(design, best_size(design, room), room)
    for number, band in enumerate(bands):
        cells = [
            (index, column)
            for piece in pieces
            if piece.band == number
            for index in range(piece.first, piece.end)
            for column in range(piece.right, piece.end_column)
        ]
        assert len(cells) == len(set(cells))
        stitches = {
            (index, offset + stitch)
            for index, (line, offset) in enumerate(zip(band.rounds, chart_offsets(band.rounds), strict=True))
            for stitch in range(len(line))
        }
        assert stitches <= set(cells)


@given(
    columns=st.integers(1, 600), rounds=st.integers(1, 600), gauge=gauges(), room=st.sampled_from(ROOMS),
    measures=st.sampled_from(MEASURES),
)  # fmt: skip
@settings(max_examples=150)
def test_every_piece_fits_its_page(columns, rounds, gauge, room, measures):
    design = Design(bands=(blank(columns, rounds),), gauge=gauge)
    size = best_size(design, room, measures)
    pieces = cut(design, size, room)
    for piece in pieces:
        columns = piece.laps.end_column - piece.laps.right
        assert measures.left + columns * size.width + measures.right <= room.width + 1e-6
    for page in paged(shelved(pieces, size, room), size, room):
        assert (
            sum(shelf_height(shelf, size, room) for shelf in page) + measures.gap * (len(page) - 1)
            <= room.height + 1e-6
        )


@given(gauge=gauges(), widest=st.integers(1, 600), room=st.sampled_from(ROOMS))
def test_a_cell_has_the_proportion_of_a_stitch(gauge, widest, room):
    size = cell_size(gauge, widest=widest, room=room)
    assert size.height / size.width == pytest.approx(gauge.stitches_per_10cm / gauge.rounds_per_10cm)


@pytest.mark.parametrize("widest", [4, 24, 48, 51, 52, 130, 600])
def test_cells_are_never_narrower_than_can_be_read(widest):
    size = cell_size(Gauge(stitches_per_10cm=28, rounds_per_10cm=32), widest=widest, room=ROOMS[0])
    assert 3.0 <= size.width <= 5.5


def test_a_band_that_fits_at_a_readable_size_is_not_cut():
    design = Design(bands=(blank(48, 20),))
    assert len(cut(design, best_size(design, ROOMS[0]), ROOMS[0])) == 1


def test_cuts_fall_on_heavy_lines():
    design = Design(bands=(blank(4, 3), blank(120, 120)))
    room = ROOMS[0]
    pieces = [piece for piece in cut(design, best_size(design, room), room) if piece.band == 1]
    assert {(3 + piece.end) % 10 for piece in pieces if piece.end < 120} == {0}
    assert {piece.right % 5 for piece in pieces} == {0}


@pytest.mark.parametrize("room", ROOMS)
@pytest.mark.parametrize("columns", [24, 36, 41, 130])
def test_a_cut_makes_neither_more_pieces_than_the_width_asks_for_nor_slivers(columns, room):
    design = Design(bands=(blank(columns, 4),))
    size = best_size(design, room, LARGE)
    pieces = [piece for piece in cut(design, size, room) if piece.row == 0]
    free = (room.width - LARGE.left - LARGE.right) / size.width
    if len(pieces) == 1:
        assert columns <= free + 1e-9
        return
    most = int(free + 1e-9) - 2 * pieces[0].lap_columns
    widths = [piece.end_column - piece.right for piece in pieces]
    assert len(pieces) == -(-columns // most)
    assert 2 * min(widths) >= max(widths)


@pytest.mark.parametrize("room", ROOMS)
def test_no_part_of_a_band_is_a_lone_round(room):
    design = Design(bands=(blank(24, 21), blank(24, 17)))
    pieces = [piece for piece in cut(design, best_size(design, room, LARGE), room) if piece.rows > 1]
    assert all(piece.end - piece.first > 1 for piece in pieces)


def test_bands_are_kept_whole_and_in_knitting_order():
    design = Design(bands=tuple(blank(24, 30) for _ in range(5)))
    room = ROOMS[0]
    size = best_size(design, room)
    pages = paged(shelved(cut(design, size, room), size, room), size, room)
    assert [piece.band for page in pages for shelf in page for piece in shelf] == [0, 1, 2, 3, 4]


@pytest.mark.parametrize("room", ROOMS)
def test_small_bands_stand_beside_each_other_and_no_wider_than_the_page(room):
    design = Design(bands=tuple(blank(4, 6) for _ in range(7)))
    size = best_size(design, room)
    shelves = shelved(cut(design, size, room), size, room)
    assert sum(map(len, shelves)) == 7
    assert len(shelves[0]) == max(1, int(room.width // shelves[0][0].width(size, room)))
    for shelf in shelves:
        assert sum(piece.width(size, room) for piece in shelf) <= room.width


def test_what_takes_the_top_of_the_first_page_leaves_the_others_whole():
    design = Design(bands=tuple(blank(24, 20) for _ in range(6)))
    room = ROOMS[0]
    size = best_size(design, room)
    shelves = shelved(cut(design, size, room), size, room)
    pages = paged(shelves, size, room, taken=150.0)
    used = sum(shelf_height(shelf, size, room) + USUAL.gap for shelf in pages[0]) - USUAL.gap
    assert used <= room.height - 150.0
    assert paged(shelves, size, room, taken=room.height)[0] == []


@pytest.mark.parametrize("room", ROOMS)
def test_the_largest_hat_takes_no_more_pages_than_its_cells_need(room):
    design = Design(bands=(blank(600, 600),))
    size = best_size(design, room)
    pages = paged(shelved(cut(design, size, room), size, room), size, room)
    wide = room.width - USUAL.left - USUAL.right
    high = room.height - USUAL.title - USUAL.numbers - USUAL.bracket - 3 * USUAL.join
    needed = 600 * size.width * 600 * size.height / (wide * high)
    assert needed <= len(pages) <= 1.7 * needed


def test_large_print_is_at_least_twice_as_large_as_the_smallest_cell_and_its_numbers_have_twelve_points():
    # 12 pt is the least that large print has by common practice (no source).
    for room in ROOMS:
        for widest in (4, 24, 130):
            size = cell_size(Gauge(stitches_per_10cm=28, rounds_per_10cm=32), widest=widest, room=room, measures=LARGE)
            assert size.width >= 2 * USUAL.narrowest
    assert LARGE.scale * NUMBER_PT >= 12
