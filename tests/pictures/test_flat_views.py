"""The fabric flat: proportion, places and colours of known cells."""

import numpy as np
import pytest

from chartmaker.appraisal import appraise
from chartmaker.model.design import Design
from chartmaker.pictures.cells import NO_STITCH, flat_cells
from chartmaker.pictures.frame import MOST_PIXELS, TALLEST_PX, frame
from chartmaker.pictures.picture import picture
from chartmaker.pictures.shades import SURROUND, UNSHADED_GREYS
from tests.builders import chart

LIGHT, DARK = (85.0, 2.0, 12.0), (30.0, 20.0, -25.0)


def shaded(text: str, *, times: int = 1, gauge: tuple[float, float] = (20.0, 20.0)) -> Design:
    return chart(text, times=times, gauge=gauge, lots={"A": LIGHT, "B": DARK})


def cell_colours(design: Design, *, view: str = "shade", cell_px: int = 12) -> np.ndarray:
    """Sample the middle of each cell, index (round from the bottom, column from the left, channel)."""
    appraisal = appraise(design)
    rounds, columns = flat_cells(design, appraisal.fabric).letters.shape
    seen = picture(appraisal, view, columns * cell_px)
    height = seen.shape[0] / rounds
    rows = [int((rounds - 1 - number + 0.5) * height) for number in range(rounds)]
    return seen[rows][:, cell_px // 2 :: cell_px]


def screen(design: Design, letter: str) -> tuple[int, ...]:
    shade = appraise(design).shade_of(letter)
    assert shade is not None
    return shade.srgb


def test_stitch_1_is_at_the_right_and_round_1_at_the_bottom() -> None:
    design = shaded("A B | ....\nA B | ...x")
    seen = cell_colours(design)
    ground, figure = screen(design, "A"), screen(design, "B")
    assert [tuple(cell) for cell in seen[0]] == [ground, ground, ground, figure]
    assert [tuple(cell) for cell in seen[1]] == [ground] * 4


def test_a_repeat_is_drawn_as_many_times_as_it_goes_round() -> None:
    design = shaded("A B | ..x", times=4)
    seen = cell_colours(design)
    assert [tuple(cell) == screen(design, "B") for cell in seen[0]] == [False, False, True] * 4


@pytest.mark.parametrize("gauge", [(20.0, 20.0), (28.0, 32.0), (30.0, 40.0)])
def test_cells_stand_at_true_stitch_proportion(gauge: tuple[float, float]) -> None:
    seen = picture(appraise(shaded("A B | ....x.....\n" * 20, gauge=gauge)), "shade", 600)
    expected = 600 / 10 * 20 * gauge[0] / gauge[1]
    assert seen.shape == (round(expected), 600, 3)


def test_cells_that_no_stitch_covers_are_the_neutral_surround() -> None:
    design = shaded("A B | .x.\nA B | .x. | <.>\nA B | ....x")
    covered = flat_cells(design, appraise(design).fabric).letters != NO_STITCH
    assert covered.tolist() == [[True] * 5, [False, True, True, True, False], [False, True, True, True, False]]
    corners = cell_colours(design)[1:, [0, 4]]
    assert np.all(corners == SURROUND)


def test_the_wedges_of_a_crown_stand_apart_one_by_one() -> None:
    design = shaded("A B | .x.\nA B | ....x | <...>\nA B | ......x", times=3)
    covered = flat_cells(design, appraise(design).fabric).letters[1] != NO_STITCH
    assert covered.tolist() == [False, True, True, True, True, True, False] * 3


def test_bands_that_are_worked_as_often_run_on_from_each_other() -> None:
    whole = shaded("A | ...\nA | ... | <.>\nA | ...... | <.....\nA | .......")
    parted = chart("A | ...... | <.....\nA | .......", "A | ...\nA | ... | <.>", lots={"A": LIGHT})
    one, two = (flat_cells(design, appraise(design).fabric).letters for design in (whole, parted))
    assert np.array_equal(one, two)


def test_a_narrower_band_stands_in_the_middle() -> None:
    design = chart("A | ..", "A | ......", times=(1, 1), lots={"A": LIGHT})
    narrow = chart("A | ..", "A | ...", times=(1, 2), lots={"A": LIGHT})
    covered = flat_cells(narrow, appraise(narrow).fabric).letters != NO_STITCH
    assert covered.tolist() == [[False, False, True, True, False, False], [True] * 6]
    assert flat_cells(design, appraise(design).fabric).letters.shape == (2, 6)


def test_value_view_is_grey_and_keeps_the_order_of_values() -> None:
    seen = cell_colours(shaded("A B | .x"), view="value")[0]
    assert np.all(seen == seen[:, :1])
    assert seen[0, 0] > seen[1, 0]


def test_shades_that_differ_in_hue_alone_are_one_grey() -> None:
    design = chart("A B | .x", lots={"A": (50.0, 40.0, 0.0), "B": (50.0, -40.0, 0.0)})
    assert len(np.unique(cell_colours(design, view="value"))) == 1
    assert len(np.unique(cell_colours(design).reshape(-1, 3), axis=0)) == 2


def test_letters_without_a_shade_are_hatched_and_still_told_apart() -> None:
    design = chart("A B | ..xx\nA B | ..xx")
    seen = picture(appraise(design), "shade", 160)
    left, right = seen[:, :80], seen[:, 80:]
    assert len(np.unique(left)) > 1
    assert len(np.unique(right)) > 1
    assert set(UNSHADED_GREYS[:2]) <= set(np.unique(seen).tolist())
    assert set(np.unique(left).tolist()).isdisjoint(np.unique(right).tolist())


def test_cells_smaller_than_a_pixel_are_averaged_not_skipped() -> None:
    design = shaded("A B | " + ".x" * 100 + "\n" + "A B | " + ".x" * 100)
    light, dark = (np.array(screen(design, letter), dtype=float) for letter in "AB")
    seen = picture(appraise(design), "shade", 50).astype(float)
    assert np.all(seen < light)
    assert np.all(seen > dark)


@pytest.mark.parametrize("width", [15, 8001, 0, -5])
@pytest.mark.parametrize("view", ["shade", "value", "knit", "hat"])
def test_a_width_out_of_range_is_refused(view: str, width: int) -> None:
    with pytest.raises(ValueError, match="outside 16 to 8000"):
        picture(appraise(shaded("A B | .x")), view, width)


def test_an_unknown_view_is_refused_and_the_known_ones_named() -> None:
    with pytest.raises(ValueError, match="there is no view 'side'; there are shade, value, knit, hat"):
        picture(appraise(shaded("A B | .x")), "side", 100)


@pytest.mark.parametrize("view", ["shade", "value", "knit", "hat"])
@pytest.mark.parametrize("width", [16, 333])
def test_every_view_has_the_width_asked_for_and_comes_out_alike_each_time(view: str, width: int) -> None:
    appraisal = appraise(shaded("A B | .x.x. | <.>..\nA B | x...x.x"))
    first, second = picture(appraisal, view, width), picture(appraisal, view, width)
    assert first.dtype == np.uint8
    assert first.shape[1:] == (width, 3)
    assert np.array_equal(first, second)


@pytest.mark.parametrize(("columns", "rounds"), [(600, 600), (1, 600), (600, 1), (1, 1), (40_000, 600)])
@pytest.mark.parametrize("height_per_width", [0.05, 0.9, 20.0])
@pytest.mark.parametrize("width", [16, 900, 8000])
def test_no_grid_makes_a_picture_past_the_bounds(
    columns: int, rounds: int, height_per_width: float, width: int
) -> None:
    place = frame(columns, rounds, height_per_width=height_per_width, width_px=width)
    assert place.width_px == width
    assert 1 <= place.height_px <= TALLEST_PX
    assert place.width_px * place.height_px <= MOST_PIXELS
    assert 1 <= place.fabric_px <= width


def test_the_largest_hat_is_drawn_at_the_largest_width_in_its_true_proportion() -> None:
    place = frame(600, 600, height_per_width=28 / 32, width_px=8000)
    assert (place.fabric_px, place.height_px) == (8000, 7000)
