from collections import Counter

from hypothesis import given
from hypothesis import strategies as st

from chartmaker.app.chart_grid import laid_out
from chartmaker.app.shading_edits import (
    add_letter,
    fill,
    mirror,
    mirror_run,
    rows_to_band_end,
    step_through,
    steps,
    swap,
    take_off_unused,
)
from chartmaker.app.strokes import stroke_edit
from chartmaker.app.tools import one_by_one
from chartmaker.model.stitches import Part
from tests.app.hand_at import shading
from tests.builders import chart
from tests.strategies import designs, letters

FIVE = chart("A B | x.\nA C | x.\nA D | x.\nA E | x.\nA F | x.", times=72)
MIXED = chart("A B | x.\nA   | ..\nC B | x.", "A B | x.", times=72)


def test_filling_carries_a_letter_over_rounds_of_one_part():
    edit = fill(FIVE, laid_out(FIVE), rows=range(3), part=1, letter="G")
    assert shading(edit.applied_to(FIVE)) == ["AG", "AG", "AG", "AC", "AB"]


def test_filling_passes_by_a_round_without_the_part():
    edit = fill(MIXED, laid_out(MIXED), rows=range(3), part=1, letter="G")
    assert shading(edit.applied_to(MIXED)) == ["CG", "A", "AG"]


def test_filling_over_two_bands_is_one_edit():
    edit = fill(MIXED, laid_out(MIXED), rows=range(4), part=0, letter="G")
    after = edit.applied_to(MIXED)
    assert (shading(after, 0), shading(after, 1)) == (["GB", "G", "GB"], ["GB"])
    assert edit.inverse().applied_to(after) == MIXED


def test_the_rows_to_the_end_of_a_band_stop_at_the_next_band():
    grid = laid_out(MIXED)
    assert list(rows_to_band_end(grid, 1, upwards=True)) == [1, 2]
    assert list(rows_to_band_end(grid, 1, upwards=False)) == [1, 0]
    assert list(rows_to_band_end(grid, 3, upwards=False)) == [3]


def test_swapping_lets_ground_and_figure_change_letters():
    assert shading(swap(FIVE, laid_out(FIVE), [0]).applied_to(FIVE))[0] == "FA"
    assert swap(MIXED, laid_out(MIXED), [1]) is None


def test_mirroring_repeats_the_shading_below_a_round_above_it():
    assert shading(mirror(FIVE, laid_out(FIVE), 2).applied_to(FIVE)) == ["AF", "AE", "AD", "AE", "AF"]


def test_mirroring_near_an_end_goes_as_far_as_both_sides_do():
    assert shading(mirror(FIVE, laid_out(FIVE), 3).applied_to(FIVE)) == ["AF", "AE", "AD", "AC", "AD"]
    assert mirror(FIVE, laid_out(FIVE), 4) is None


def test_mirroring_leaves_a_round_the_letters_of_parts_that_its_partner_lacks():
    design = chart("A B | x.\nC D | x.\nE   | ..", times=72)
    assert shading(mirror(design, laid_out(design), 1).applied_to(design)) == ["E", "CD", "EB"]


def test_a_run_is_swapped_together_and_a_plain_round_in_it_is_passed_over():
    edit = swap(MIXED, laid_out(MIXED), range(3))
    assert shading(edit.applied_to(MIXED)) == ["BC", "A", "BA"]


def test_mirroring_downwards_repeats_what_lies_above_below():
    after = mirror(FIVE, laid_out(FIVE), 2, upwards=False).applied_to(FIVE)
    assert shading(after) == ["AB", "AC", "AD", "AC", "AB"]


def test_a_run_is_mirrored_about_its_own_middle_and_nothing_beside_it_changes():
    grid = laid_out(FIVE)
    assert shading(mirror_run(FIVE, grid, range(1, 4)).applied_to(FIVE)) == ["AF", "AE", "AD", "AE", "AB"]
    assert shading(mirror_run(FIVE, grid, range(4)).applied_to(FIVE)) == ["AF", "AE", "AE", "AF", "AB"]
    assert shading(mirror_run(FIVE, grid, range(4), upwards=False).applied_to(FIVE)) == ["AC", "AD", "AD", "AC", "AB"]


def test_a_letter_more_is_given_to_draw_with_up_to_three():
    edit = add_letter(MIXED, laid_out(MIXED), rows=range(3), letter="G")
    assert shading(edit.applied_to(MIXED)) == ["CBG", "AG", "ABG"]
    three = edit.applied_to(MIXED)
    again = add_letter(three, laid_out(three), rows=range(3), letter="H")
    assert shading(again.applied_to(three)) == ["CBG", "AGH", "ABG"]


def test_unused_letters_are_taken_off_and_used_ones_stay():
    design = chart("A B C | x.+\nA B C | x..\nA B   | ...\nB     | ...", times=48)
    after = take_off_unused(design, laid_out(design), rows=range(4)).applied_to(design)
    assert shading(after) == ["B", "A", "AB", "ABC"]
    assert take_off_unused(after, laid_out(after), rows=range(4)) is None


ROWS_OF_LETTERS = st.lists(letters(), min_size=1, max_size=8, unique=True).map("".join)


@given(ROWS_OF_LETTERS, st.integers(1, 90))
def test_even_steps_give_each_letter_its_share_rounded_down_or_up_in_their_order(row, rounds):
    given_to = steps(row, rounds)
    counts = Counter(given_to)
    assert len(given_to) == rounds
    assert {counts[letter] for letter in row} <= {rounds // len(row), -(-rounds // len(row))}
    assert [row.index(letter) for letter in given_to] == sorted(row.index(letter) for letter in given_to)


@given(ROWS_OF_LETTERS, st.integers(1, 90), st.integers(0, 6))
def test_mirrored_steps_read_alike_from_both_ends(row, rounds, each):
    given_to = steps(row, rounds, each=each, mirrored=True)
    assert len(given_to) == rounds
    assert given_to == given_to[::-1]
    half = (rounds + 1) // 2
    assert given_to[:half] == steps(row, half, each=each)


def test_steps_of_a_few_rounds_each_begin_the_row_again():
    assert "".join(steps("ABC", 8, each=2)) == "AABBCCAA"
    assert "".join(steps("AB", 7, each=2, mirrored=True)) == "AABBBAA"
    assert "".join(steps("ABC", 7)) == "AAABBCC"


def test_stepping_keeps_the_place_of_a_round_without_the_part():
    edit = step_through(MIXED, laid_out(MIXED), rows=range(3), part=1, letters="XYZ")
    assert shading(edit.applied_to(MIXED)) == ["CX", "A", "AZ"]


def no_stitch_of(design):
    return [[(line.cells, line.shaping) for line in band.rounds] for band in design.bands]


@given(st.data(), designs())
def test_shading_again_never_touches_the_pattern_and_can_be_taken_back(data, design):
    grid = laid_out(design)
    first = data.draw(st.integers(0, len(grid.rows) - 1))
    rows = range(first, data.draw(st.integers(first, len(grid.rows) - 1)) + 1)
    part, letter, up = data.draw(st.sampled_from(range(3))), data.draw(letters()), data.draw(st.booleans())
    row = steps(data.draw(ROWS_OF_LETTERS), len(rows), mirrored=up)
    for edit in (
        fill(design, grid, rows=rows, part=part, letter=letter),
        add_letter(design, grid, rows=rows, letter=letter),
        take_off_unused(design, grid, rows=rows),
        swap(design, grid, rows),
        mirror(design, grid, first, upwards=up),
        mirror_run(design, grid, rows, upwards=up),
        step_through(design, grid, rows=rows, part=part, letters=row),
    ):
        if edit is not None:
            after = edit.applied_to(design)
            assert no_stitch_of(after) == no_stitch_of(design)
            assert after != design
            assert edit.inverse().applied_to(after) == design


@given(st.data(), designs())
def test_drawing_never_touches_the_shading_but_to_give_a_part_that_it_needs_a_letter(data, design):
    grid = laid_out(design)
    cells = st.tuples(st.integers(-1, len(grid.rows)), st.integers(-3, grid.width + 3))
    part = data.draw(st.sampled_from(Part))
    edit = stroke_edit(design, grid, one_by_one(data.draw(st.lists(cells, min_size=1, max_size=12))), part)
    after = edit.applied_to(design) if edit else design
    for old, new in zip((line for _, line in design.rounds()), (line for _, line in after.rounds()), strict=True):
        assert new.letters.startswith(old.letters)
        grown = len(new.letters) - len(old.letters)
        assert not grown or len(new.letters) == max(new.cells) + 1 == part + 1
        assert new.shaping == old.shaping
