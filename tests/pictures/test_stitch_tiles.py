"""Charts put together of ready stitches: their yarn, their light, and the strands laid over them from the back."""

import numpy as np
import pytest

from chartmaker.knit.strands import FROM_BEFORE, LONG_FROM_BEFORE, LONG_TO_NEXT, TO_NEXT
from chartmaker.pictures.back import CAUGHT, HEIGHTS, LONG_EDGE, MARK, lay_strands
from chartmaker.pictures.shades import decoded, encoded
from chartmaker.pictures.stitch import MEAN_LIGHT, leaning_tile
from chartmaker.pictures.stitch_tiles import KNIT, LEANS_LEFT, LEANS_RIGHT, PURL, StitchTiles, packed

RGB = np.array([[200, 60, 40], [40, 90, 160], [119, 119, 119]], dtype=np.uint8)
BARE = 2


def rgb_of(pixels):
    return np.stack([pixels >> 16 & 255, pixels >> 8 & 255, pixels & 255], axis=-1).astype(np.uint8)


def picture(codes, above, lies, *, width=16, height=14, **options):
    tiles = StitchTiles(RGB, width=width, height=height, bare=BARE, **options)
    arrays = (np.array(part, dtype=np.uint8) for part in (codes, above, lies))
    return tiles.picture(*arrays)


@pytest.mark.parametrize("lies", [KNIT, PURL, LEANS_LEFT, LEANS_RIGHT])
@pytest.mark.parametrize("size", [(2, 2), (3, 2), (7, 6), (16, 14), (33, 40)])
def test_a_stitch_of_any_size_keeps_the_light_of_its_yarn(lies, size):
    seen = rgb_of(picture([[0]], [[0]], [[lies]], width=size[0], height=size[1]))
    assert seen.shape == (size[1], size[0], 3)
    light = decoded(seen).mean(axis=(0, 1))
    assert light == pytest.approx(MEAN_LIGHT * decoded(RGB[0]), rel=0.03, abs=0.002)


@pytest.mark.parametrize("lies", [KNIT, PURL, LEANS_LEFT, LEANS_RIGHT])
@pytest.mark.parametrize("yarn", [(229, 220, 196), (212, 184, 58), (250, 250, 250)])
def test_the_highlights_of_a_light_yarn_keep_its_hue_and_its_mean(lies, yarn):
    rgb = np.array([yarn, (119, 119, 119)], dtype=np.uint8)
    codes = np.zeros((1, 1), dtype=np.uint8)
    tiles = StitchTiles(rgb, width=28, height=26, bare=1)
    light = decoded(rgb_of(tiles.picture(codes, codes, np.full((1, 1), lies, dtype=np.uint8))))
    assert light.mean(axis=(0, 1)) == pytest.approx(MEAN_LIGHT * decoded(rgb[0]), rel=0.03)
    # Clipped at the screen's white, a yellow's or a cream's highlights would lose the proportion of their channels.
    brightest = light.reshape(-1, 3)[light.sum(axis=2).argmax()]
    assert brightest / brightest[0] == pytest.approx(decoded(rgb[0]) / decoded(rgb[0])[0], rel=0.05, abs=0.01)


def test_the_yarn_above_lies_over_a_knit_stitch_but_not_over_a_purled_one():
    is_blue = rgb_of(picture([[0, 0]], [[1, 1]], [[KNIT, PURL]]))
    is_blue = is_blue[..., 2] > is_blue[..., 0]
    assert is_blue[:7, :16].any()
    assert not is_blue[10:, 6:10].any()
    assert not is_blue[:, 16:].any()


def test_a_place_without_a_stitch_is_the_bare_colour_throughout():
    seen = rgb_of(picture([[BARE]], [[0]], [[KNIT]]))
    assert (seen == RGB[BARE]).all()


def test_over_the_last_round_a_stitch_shows_only_its_own_yarn():
    assert np.array_equal(picture([[0]], [[BARE]], [[KNIT]]), picture([[0]], [[0]], [[KNIT]]))


def test_cells_stand_side_by_side_in_their_order():
    whole = picture([[0, 1], [1, 1]], [[0, 1], [0, 1]], [[KNIT, PURL], [KNIT, KNIT]])
    assert np.array_equal(whole[:14, 16:], picture([[1]], [[1]], [[PURL]]))
    assert np.array_equal(whole[14:, :16], picture([[1]], [[0]], [[KNIT]]))


def test_without_relief_a_stitch_is_even():
    assert len(np.unique(picture([[0]], [[0]], [[PURL]], relief=0.0))) == 1


def test_leaning_tiles_mirror_each_other_but_for_the_light():
    right, left = leaning_tile(0.9, 60, rightwards=True), leaning_tile(0.9, 60, rightwards=False)
    same = right.is_above == left.is_above[:, ::-1]
    assert same.mean() > 0.97
    assert right.is_above.any()


def test_packed_pixels_are_opaque():
    assert packed(RGB).tolist() == [0xFFC83C28, 0xFF285AA0, 0xFF777777]


# --- strands


def laid(signs, *, width=20, height=20, is_faded=False):
    cells = np.array(signs, dtype=np.uint8)
    pixels = np.zeros((cells.shape[0] * height, cells.shape[1] * width), dtype=np.uint32)
    colours = np.broadcast_to(packed(RGB)[[0, 1, 2]], cells.shape)
    fading = np.full(cells.shape[:2], is_faded)
    lay_strands(pixels, signs=cells, colours=colours, is_faded=fading, width=width, height=height)
    return pixels


def row_of(part, height=20):
    return int(HEIGHTS[part] * height)


def test_ground_runs_above_figure_and_each_in_its_colour():
    both = FROM_BEFORE | TO_NEXT
    pixels = laid([[[both, both, 0]]])
    assert (pixels[row_of(0)] == packed(RGB)[0]).all()
    assert (pixels[row_of(1)] == packed(RGB)[1]).all()
    assert row_of(0) < row_of(1)
    assert not pixels[0].any()


def test_half_a_strand_stands_on_the_side_it_comes_from():
    # The stitch knitted before stands at the right.
    before, after = laid([[[0, FROM_BEFORE, 0]]])[row_of(1)], laid([[[0, TO_NEXT, 0]]])[row_of(1)]
    assert before.astype(bool).tolist() == [False] * 10 + [True] * 10
    assert after.astype(bool).tolist() == [True] * 10 + [False] * 10


def test_a_long_strand_has_a_wider_black_edge_and_a_white_tie_where_it_is_caught():
    short, long = FROM_BEFORE | TO_NEXT, FROM_BEFORE | TO_NEXT | LONG_FROM_BEFORE | LONG_TO_NEXT
    plain, heavy, caught = (laid([[[0, signs, 0]]]) for signs in (short, long, long | CAUGHT))
    assert not (plain == LONG_EDGE[0]).any()
    assert (heavy == LONG_EDGE[0]).any()
    faded = laid([[[0, long, 0]]], is_faded=True)
    assert not (faded == LONG_EDGE[0]).any()
    assert np.array_equal(faded == LONG_EDGE[1], heavy == LONG_EDGE[0])
    assert np.count_nonzero(heavy) > np.count_nonzero(plain)
    assert (caught == MARK[0]).any(axis=0).nonzero()[0].mean() == pytest.approx(9.5, abs=0.6)


@pytest.mark.parametrize("height", [2, 3, 4, 5, 9, 18, 60])
def test_strands_of_any_size_stay_in_their_cell(height):
    long = FROM_BEFORE | TO_NEXT | LONG_FROM_BEFORE | LONG_TO_NEXT | CAUGHT
    pixels = laid([[[long] * 3]], width=max(2, height), height=height)
    assert pixels.shape == (height, max(2, height))
    assert pixels.any()
    assert not laid([[[0, 0, 0]]], width=2, height=height).any()


def test_encoding_and_decoding_agree():
    assert np.array_equal(encoded(decoded(RGB)), RGB)
