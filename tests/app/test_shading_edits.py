from chartmaker.app.chart_grid import laid_out
from chartmaker.app.shading_edits import fill, mirror, rows_to_band_end, swap
from tests.app.hand_at import shading
from tests.builders import chart

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
    assert shading(swap(FIVE, laid_out(FIVE), 0).applied_to(FIVE))[0] == "FA"
    assert swap(MIXED, laid_out(MIXED), 1) is None


def test_mirroring_repeats_the_shading_below_a_round_above_it():
    assert shading(mirror(FIVE, laid_out(FIVE), 2).applied_to(FIVE)) == ["AF", "AE", "AD", "AE", "AF"]


def test_mirroring_near_an_end_goes_as_far_as_both_sides_do():
    assert shading(mirror(FIVE, laid_out(FIVE), 3).applied_to(FIVE)) == ["AF", "AE", "AD", "AC", "AD"]
    assert mirror(FIVE, laid_out(FIVE), 4) is None


def test_mirroring_leaves_a_round_the_letters_of_parts_that_its_partner_lacks():
    design = chart("A B | x.\nC D | x.\nE   | ..", times=72)
    assert shading(mirror(design, laid_out(design), 1).applied_to(design)) == ["E", "CD", "EB"]
