import pytest
from hypothesis import given, settings

from chartmaker.appraisal import appraise
from chartmaker.model.band import Band
from chartmaker.model.notation import rounds_from_text
from chartmaker.sheets.boxes import Fills, Marks
from chartmaker.sheets.chart_cells import Look, Placing, cell_boxes, rows_of
from chartmaker.sheets.chart_grid import WIDTHS_MM, grid_boxes
from chartmaker.sheets.chart_plan import CellSize, Piece
from chartmaker.sheets.ink import BLACK, WHITE
from chartmaker.sheets.legend import look_of
from chartmaker.sheets.marks import EMPTY, LETTER_MARKS, PURL_BAR, SHAPING_MARKS
from tests.builders import chart
from tests.sheets.recorder import marks_as_text
from tests.strategies import bands

SIZE = CellSize(4.0, 3.5)
RIGHT, BOTTOM = 100.0, 200.0
DOT, CROSS = LETTER_MARKS[0], LETTER_MARKS[1]


def whole(band: Band) -> Piece:
    columns = 100
    return Piece(band=0, first=0, end=len(band.rounds), right=0, end_column=columns, row=0, column=0, rows=1, columns=1)


def drawn(band: Band, look: Look, piece: Piece | None = None):
    piece = piece or whole(band)
    return cell_boxes(rows_of(band, piece), band, Placing(RIGHT, BOTTOM, SIZE, piece), look)


def band_of(text: str, **fields) -> Band:
    return Band(name="", times=1, rounds=rounds_from_text(text), **fields)


def bare(marks) -> Look:
    return Look(marks, dict.fromkeys(marks))


def read_back(boxes, signs, **grid) -> str:
    return marks_as_text(boxes, right=RIGHT, bottom=BOTTOM, size=SIZE, signs=signs, **grid)


def test_the_marks_read_back_as_the_pattern():
    picture = "x..x.\n..x..\nx.x.x"
    band = band_of("\n".join(f"A B | {line}" for line in picture.splitlines()))
    boxes = drawn(band, bare({"A": EMPTY, "B": DOT}))
    assert read_back(boxes, {DOT: "x"}) == picture


def test_the_same_part_in_another_letter_has_another_mark():
    boxes = drawn(band_of("A C | x.x\nA B | .x."), bare({"A": EMPTY, "B": DOT, "C": CROSS}))
    assert read_back(boxes, {DOT: "b", CROSS: "c"}) == "c.c\n.b."


@given(band=bands(shaped=False, even=True))
@settings(max_examples=40)
def test_any_band_reads_back_from_its_marks(band):
    letters = sorted({letter for line in band.rounds for letter in line.letters_in_use})
    marks = dict(zip(letters, LETTER_MARKS[: len(letters)], strict=False))
    boxes = drawn(band, bare(marks))
    expected = [
        "".join(line.letter_of(stitch) for stitch in reversed(range(len(line)))) for line in reversed(band.rounds)
    ]
    assert read_back(boxes, {mark: letter for letter, mark in marks.items()}) == "\n".join(expected)


def test_shaping_signs_stand_in_their_cells_and_the_missing_stitches_stay_blank():
    band = band_of("A | ... | <.>\nA | .....")
    signs = {SHAPING_MARKS[1]: "/", SHAPING_MARKS[2]: "\\"}
    assert read_back(drawn(band, bare({"A": EMPTY})), signs, blank=" ") == "\\ / \n    "
    marks = read_back(drawn(band, bare({"A": DOT})), {DOT: "."}, blank=" ")
    assert marks == " ... \n....."


def test_a_letter_beside_a_sign_is_still_marked():
    band = band_of("A B | x.x | <.>\nA B | .....")
    boxes = drawn(band, bare({"A": EMPTY, "B": DOT}))
    assert len(next(box for box in boxes if isinstance(box, Marks) and box.mark is DOT).centres) == 2


def test_purled_stitches_have_a_bar():
    boxes = drawn(band_of("A | ....\nA | ....", texture="kkpp"), bare({"A": EMPTY}))
    assert read_back(boxes, {PURL_BAR: "-"}) == "--..\n--.."


def test_neighbours_of_one_letter_are_filled_together():
    design = chart("A B | xx..", lots={"A": (90, 0, 0), "B": (20, 0, 0)})
    look = look_of(appraise(design))
    fills = [box for box in drawn(design.bands[0], look) if isinstance(box, Fills)]
    assert sorted(len(box.rectangles) for box in fills) == [1, 1]
    assert {round(box.rectangles[0][2], 6) for box in fills} == {2 * SIZE.width}


def test_marks_are_white_on_dark_shades_and_black_on_light_ones():
    design = chart("A B C | .x+\nA B C | ..x", lots={"A": (50, 0, 0), "B": (20, 0, 0), "C": (90, 0, 0)})
    appraisal = appraise(design)
    marks = {"A": EMPTY, "B": DOT, "C": CROSS}
    inks = {
        box.mark: box.ink
        for box in drawn(design.bands[0], Look(marks, look_of(appraisal).shades))
        if isinstance(box, Marks)
    }
    assert inks == {DOT: WHITE, CROSS: BLACK}


def test_a_letter_without_a_lot_is_left_unfilled():
    assert not [box for box in drawn(band_of("A B | .x"), bare({"A": EMPTY, "B": DOT})) if isinstance(box, Fills)]


@pytest.mark.parametrize("rounds_before", [0, 7])
def test_lines_are_heaviest_every_ten_and_heavier_every_five_of_the_whole_hat(rounds_before):
    band = band_of("\n".join(["A | " + "." * 23] * 17))
    piece = Piece(band=0, first=0, end=17, right=0, end_column=23, row=0, column=0, rows=1, columns=1)
    rows, placing = rows_of(band, piece), Placing(RIGHT, BOTTOM, SIZE, piece)
    by_width = {
        box.width: box.segments for box in grid_boxes(rows, placing, rounds_before=rounds_before) if box.ink == BLACK
    }
    uprights = {round((RIGHT - x1) / SIZE.width) for x1, _, x2, _ in by_width[WIDTHS_MM[2]] if x1 == x2}
    levels = {round((BOTTOM - y1) / SIZE.height) + rounds_before for _, y1, _, y2 in by_width[WIDTHS_MM[2]] if y1 == y2}
    assert uprights == {10, 20}
    assert levels == {count for count in range(1, 18 + rounds_before) if count % 10 == 0 and count >= rounds_before}
    fives = {round((RIGHT - x1) / SIZE.width) for x1, _, x2, _ in by_width[WIDTHS_MM[1]] if x1 == x2}
    assert fives == {0, 5, 15, 23}
