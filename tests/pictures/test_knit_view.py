"""The knitted surface: its relief, its texture and its colours."""

from dataclasses import replace

import numpy as np
import pytest

from chartmaker.appraisal import appraise
from chartmaker.model.design import Design
from chartmaker.pictures.picture import picture
from chartmaker.pictures.shades import SURROUND, decoded
from chartmaker.pictures.stitch import MEAN_LIGHT, knit_tile, purl_tile
from tests.builders import chart

MADDER = (42.0, 36.0, 20.0)


def plain(rounds: int = 8, *, texture: str = "") -> Design:
    design = chart("A | ........\n" * rounds, times=2, gauge=(20.0, 20.0), lots={"A": MADDER})
    return replace(design, bands=(replace(design.bands[0], texture=texture),))


@pytest.mark.parametrize("tile", [knit_tile, purl_tile])
@pytest.mark.parametrize("height_per_width", [0.3, 0.9, 1.4])
def test_a_tile_keeps_the_mean_light(tile: object, height_per_width: float) -> None:
    relief = tile(height_per_width, 40)  # type: ignore[operator]
    assert relief.light.mean() == pytest.approx(MEAN_LIGHT, rel=1e-5)
    assert relief.light.shape == (round(40 * height_per_width), 40)


def test_a_knit_stitch_is_a_v_that_opens_upwards() -> None:
    own = np.where(knit_tile(1.0, 60).is_above, 0, knit_tile(1.0, 60).light)
    brightest = [np.argmax(own[row, 30:]) for row in (10, 50)]
    assert brightest[0] < brightest[1]


def test_the_tip_of_the_stitch_above_shows_in_the_middle_of_the_top() -> None:
    is_above = knit_tile(1.0, 60).is_above
    assert is_above[-4:, 24:36].mean() > 0.5
    assert not is_above[:30].any()
    assert not is_above[:, :6].any()


def test_the_mean_of_the_fabric_keeps_the_hue_of_the_shade() -> None:
    appraisal = appraise(plain())
    shade = appraisal.shade_of("A")
    assert shade is not None
    yarn = decoded(np.array(shade.srgb, dtype=np.uint8))
    mean = decoded(picture(appraisal, "knit", 480)).reshape(-1, 3).mean(axis=0)
    assert mean / mean.sum() == pytest.approx(yarn / yarn.sum(), abs=0.01)
    assert mean.sum() == pytest.approx(MEAN_LIGHT * yarn.sum(), rel=0.06)


def test_purl_shows_where_the_texture_says_so() -> None:
    knitted, ribbed, purled = (
        picture(appraise(plain(texture=texture)), "knit", 320).astype(int) for texture in ("", "kkpp", "p")
    )
    columns = np.arange(320) // 20
    from_right = 15 - columns
    is_purl = from_right % 4 >= 2
    assert np.array_equal(ribbed[:, is_purl], purled[:, is_purl])
    assert np.array_equal(ribbed[:, ~is_purl], knitted[:, ~is_purl])
    assert np.abs(knitted - purled).mean() > 10


def test_places_without_a_stitch_are_the_surround() -> None:
    design = chart("A | ... | <.>\nA | .....", gauge=(20.0, 20.0), lots={"A": MADDER})
    seen = picture(appraise(design), "knit", 200)
    assert np.all(seen[5:35, 5:35] == SURROUND)
    assert np.all(seen[5:35, -35:-5] == SURROUND)
    assert not np.all(seen[45:75, 5:35] == SURROUND)


def test_each_stitch_has_the_colour_of_its_yarn() -> None:
    design = chart("A B | .x\n" * 4, gauge=(20.0, 20.0), lots={"A": (80.0, 0.0, 60.0), "B": (30.0, 0.0, -40.0)})
    seen = picture(appraise(design), "knit", 200).astype(int)
    yellow, blue = seen[:, :100], seen[:, 100:]
    assert yellow[..., 0].mean() > yellow[..., 2].mean() + 40
    assert blue[..., 2].mean() > blue[..., 0].mean() + 40
