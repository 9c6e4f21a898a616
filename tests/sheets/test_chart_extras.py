"""What a chart has beside its cells: catches, repeated edges, boxes to tick, running counts, lines by choice, and the
whole hat small."""

import re

import pytest
from hypothesis import given, settings

from chartmaker.appraisal import appraise
from chartmaker.model.settings import Limits
from chartmaker.sheets.boxes import Fills, Marks, Text
from chartmaker.sheets.chart_cells import Placing, lap_rows_of, rows_of
from chartmaker.sheets.chart_grid import WIDTHS_MM, grid_boxes
from chartmaker.sheets.chart_plan import CellSize, Piece, best_size, cut
from chartmaker.sheets.ink import BLACK, QUIET
from chartmaker.sheets.legend import catches_of, look_of
from chartmaker.sheets.marks import CATCH, TICK_BOX
from chartmaker.sheets.paper import PAPERS
from chartmaker.sheets.whole_layout import whole_hat
from tests.builders import chart
from tests.sheets.recorder import record
from tests.strategies import designs

FRAME = PAPERS["a4"].frame


def test_a_long_float_is_caught_midway_where_the_chart_marks_it():
    # 9 stitches at 28 in 10 cm are 3.2 cm; the limit of 2.5 cm holds 7, so that one catch in the middle is enough.
    appraisal = appraise(chart("A B | x.........", times=14, limits=Limits(float_cm=2.5)))
    (where,) = catches_of(appraisal).items()
    assert where == ((0, 0), frozenset({4}))  # of the nine that are passed, counted from 0 at the right
    page = record(appraisal, sheets=("chart",)).pages[0]
    marks = [box for box in page if isinstance(box, Marks) and box.mark is CATCH]
    assert sorted(len(box.centres) for box in marks) == [1, 1]  # in the strip, and on the chart


def test_every_catch_that_is_marked_cuts_the_float_to_what_the_limit_holds():
    appraisal = appraise(chart("A B | x..............\nA B | x.............x", times=10, limits=Limits(float_cm=1.5)))
    most = int(1.5 / appraisal.design.gauge.stitch_width_cm)
    for (_, index), stitches in catches_of(appraisal).items():
        line = appraisal.design.bands[0].rounds[index]
        figure = [stitch for stitch in range(len(line)) if line.letter_of(stitch) == "B"]
        held = sorted({*figure, *stitches})
        gaps = [(after - before - 1) % len(line) for before, after in zip(held, [*held[1:], held[0]], strict=True)]
        assert max(gaps) <= most + 1  # one steps aside rather than stand above a catch of the round below


def test_a_hat_without_long_floats_has_no_sign_for_catches():
    appraisal = appraise(chart("A B | x.", times=72))
    assert "catch" not in record(appraisal, sheets=("chart", "key")).texts()


@given(design=designs())
@settings(max_examples=25, deadline=None)
def test_repeated_edges_are_the_neighbours_own_cells_and_none_of_the_piece(design):
    room = PAPERS["a5"].turned.frame
    size = best_size(design, room)
    for piece in cut(design, CellSize(3 * size.width, 3 * size.height), room):
        band = design.bands[piece.band]
        own = {(row.index, column) for row in rows_of(band, piece) for column in range(row.start, row.end)}
        whole = {
            (row.index, column): letter
            for row in rows_of(band, whole_piece(band))
            for column, letter in enumerate(row.letters, start=row.start)
        }
        for row in lap_rows_of(band, piece):
            for column, letter in enumerate(row.letters, start=row.start):
                assert (row.index, column) not in own
                assert whole[row.index, column] == letter


def whole_piece(band) -> Piece:
    return Piece(band=0, first=0, end=len(band.rounds), right=0, end_column=5000, row=0, column=0, rows=1, columns=1)


def test_a_cut_chart_repeats_an_edge_on_both_sides_of_the_cut():
    design = chart("\n".join(["A B | " + "x." * 45] * 90))
    size = best_size(design, FRAME)
    pieces = cut(design, size, FRAME)
    assert {piece.rows for piece in pieces} != {1}
    for piece in pieces:
        shown = piece.laps
        assert (shown.first < piece.first) == (piece.row > 0)
        assert (shown.end > piece.end) == (piece.row + 1 < piece.rows)
        assert (shown.right < piece.right) == (piece.column > 0)
        assert (shown.end_column > piece.end_column) == (piece.column + 1 < piece.columns)


@pytest.mark.parametrize("sheet", ["chart", "chart-bw", "chart-large"])
def test_every_round_of_every_piece_has_one_box_to_tick(sheet):
    appraisal = appraise(chart("A B | xx..\nA B | x...", "A B | .x\nA B | x.", times=[12, 24]))
    recorder = record(appraisal, sheets=(sheet,))
    ticks = [box for page in recorder.pages for box in page if isinstance(box, Marks) and box.mark is TICK_BOX]
    assert sum(len(box.centres) for box in ticks) == 4
    assert {box.ink for box in ticks} <= {QUIET, (0.38, 0.38, 0.38)}


def test_every_piece_tells_how_many_stitches_the_round_has():
    appraisal = appraise(chart("\n".join(["A B | " + "x." * 45] * 90), times=4))
    for page in record(appraisal, sheets=("chart",)).pages[1:]:
        counts = [box for box in page if isinstance(box, Text) and box.text == "360"]
        assert len(counts) >= 2


@pytest.mark.parametrize(("every", "heavy"), [(5, {0, 5, 10, 15, 20, 23}), (10, {0, 10, 20, 23}), (0, {0, 23})])
def test_heavier_lines_are_a_choice(every, heavy):
    band = chart("\n".join(["A | " + "." * 23] * 4)).bands[0]
    piece = Piece(band=0, first=0, end=4, right=0, end_column=23, row=0, column=0, rows=1, columns=1)
    placing = Placing(100.0, 200.0, CellSize(4.0, 3.5), piece)
    boxes = grid_boxes(rows_of(band, piece), placing, rounds_before=0, every=every)
    drawn = [segment for box in boxes if box.ink == BLACK for segment in box.segments]
    assert {round((100 - x1) / 4) for x1, _, x2, _ in drawn if x1 == x2} == heavy
    if not every:
        assert WIDTHS_MM[2] not in {box.width for box in boxes if box.ink == BLACK}


@pytest.mark.parametrize("is_bare", [False, True])
def test_the_small_hat_has_as_much_of_each_colour_as_the_hat_has_stitches(is_bare):
    lots = {"A": (90, 0, 0), "B": (20, 0, 0)}
    appraisal = appraise(chart("A B | xx.", "A B | x..x\nA B | .x..\nA | ....", times=[24, 18], lots=lots))
    boxes = whole_hat(appraisal, FRAME, look_of(appraisal, is_bare=is_bare), page_of={0: 1, 1: 1})
    stitches = {item.letter: item.requirement.stitches for item in appraisal.letters}
    cell = max(box.rectangles[0][3] for box in boxes if isinstance(box, Fills))
    widths = [rectangle for box in boxes if isinstance(box, Fills) for rectangle in box.rectangles]
    right = max(left + width for left, _, width, _ in widths)
    left_most = min(left for left, _, _, _ in widths)
    covered = paint(boxes, stitch_width=(right - left_most) / 72, stitch_height=cell, left=left_most)
    assert covered[min(covered, key=sum)] == stitches["B"]
    assert covered[max(covered, key=sum)] == stitches["A"]


def paint(boxes, *, stitch_width: float, stitch_height: float, left: float) -> dict:
    """Paint the fills in their order onto squares of a stitch each, and count the squares of each ink."""
    top = min(rectangle[1] for box in boxes if isinstance(box, Fills) for rectangle in box.rectangles)
    squares = {}
    for box in boxes:
        for x, y, width, _ in box.rectangles if isinstance(box, Fills) else ():
            row, first = round((y - top) / stitch_height), round((x - left) / stitch_width)
            for column in range(first, first + round(width / stitch_width)):
                squares[row, column] = box.ink
    counts: dict = {}
    for ink in squares.values():
        counts[ink] = counts.get(ink, 0) + 1
    return counts


def test_the_small_hat_names_the_page_of_every_band():
    appraisal = appraise(chart(*["A B | x.\nA B | .x"] * 4, times=72))
    recorder = record(appraisal, sheets=("key", "chart"))
    texts = recorder.texts("chart")
    for number in range(1, 5):
        page = int(re.fullmatch(r"p (\d+)", texts[texts.index(f"{number}  band {number}") + 1]).group(1))
        found = [box.text for box in recorder.pages[page - 1] if isinstance(box, Text)]
        assert f"{number}  band {number}" in found


def test_a_part_of_a_repeat_is_not_told_to_be_worked_alone():
    appraisal = appraise(chart("A | " + 60 * ".", times=3))
    words = [text for text in record(appraisal, sheets=("chart-large",), paper="a5").texts() if "stitches" in text]
    assert "part of 60 stitches, worked 3 times" in words
    assert "work these 60 stitches 3 times" not in words
