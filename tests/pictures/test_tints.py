"""The hat's tints: the same colours as the chart's views have, and a ramp that every kind of eyes can tell."""

from dataclasses import replace
from itertools import combinations
from pathlib import Path

import numpy as np
import pytest

from chartmaker.appraisal import appraise
from chartmaker.files.design_reading import read_design
from chartmaker.files.palette_reading import read_palette_beside
from chartmaker.knit.tightness import GRADES
from chartmaker.model.hat import Hat
from chartmaker.pictures.shades import grey_of_value
from chartmaker.pictures.tightness_ramp import RAMP, grade_colours
from chartmaker.pictures.tints import LAMPS, TINTS, tinted
from chartmaker.pictures.turning import Dress, prepare
from chartmaker.pictures.viewpoint import Viewpoint
from chartmaker.shade.lots import shade_of
from chartmaker.shade.vision import KINDS, seen_by
from tests.builders import chart

PATH = Path(__file__).parents[2] / "examples" / "lockside-cap.hat.toml"
DESIGN = read_design(PATH)
APPRAISAL = appraise(DESIGN, read_palette_beside(DESIGN, PATH))
CODES = {item.letter: ord(item.letter) - ord("A") for item in APPRAISAL.letters}


@pytest.mark.parametrize(("tint", "illuminant"), LAMPS.items())
def test_a_lamp_shows_the_shade_under_its_light(tint: str, illuminant: str) -> None:
    rgb = tinted(APPRAISAL, tint).rgb
    daylight = tinted(APPRAISAL, "shade").rgb
    for item in APPRAISAL.letters:
        assert item.lot is not None
        shade = shade_of(item.lot, replace(DESIGN.viewing, illuminant=illuminant))
        assert shade is not None
        assert tuple(rgb[CODES[item.letter]]) == shade.srgb
    assert (rgb != daylight).any()


def test_value_is_the_grey_of_each_shade() -> None:
    rgb = tinted(APPRAISAL, "value").rgb
    for item in APPRAISAL.letters:
        assert item.shade is not None
        assert set(rgb[CODES[item.letter]].tolist()) == {grey_of_value(item.shade.value)}


@pytest.mark.parametrize("kind", KINDS)
def test_other_eyes_see_what_the_model_of_vision_says(kind: str) -> None:
    daylight = tinted(APPRAISAL, "shade").rgb
    assert np.array_equal(tinted(APPRAISAL, kind, severity=0.6).rgb, seen_by(daylight, kind, severity=0.6))
    assert np.abs(tinted(APPRAISAL, kind, severity=0.0).rgb.astype(int) - daylight).max() <= 1


def test_every_tint_paints_a_hat_and_no_two_paint_it_alike() -> None:
    frames = {tint: prepare(APPRAISAL, Dress(tint=tint)).frame(Viewpoint(), 120, 120) for tint in TINTS}
    for first, second in combinations(TINTS, 2):
        assert not np.array_equal(frames[first], frames[second])


@pytest.mark.parametrize("tint", ["", "sepia"])
def test_a_tint_that_is_none_is_refused(tint: str) -> None:
    with pytest.raises(ValueError, match="no tint"):
        prepare(APPRAISAL, Dress(tint=tint))


def test_a_round_too_tight_is_painted_so_whatever_its_yarn() -> None:
    tight = chart("A B | .x.x\n" * 30, times=20, gauge=(25.0, 30.0), hat=Hat(head_cm=56.0))
    seen = prepare(appraise(tight), Dress(tint="tightness", surface="flat")).frame(Viewpoint(tilt_degrees=0), 200, 200)
    foot = seen[150:170, 90:110].reshape(-1, 3).astype(float).mean(axis=0)
    wanted = np.array(RAMP["too tight"], dtype=float)
    assert np.argmax(foot) == 0
    assert foot / foot.sum() == pytest.approx(wanted / wanted.sum(), abs=0.06)


@pytest.mark.parametrize("kind", [None, *KINDS])
def test_grades_beside_each_other_are_told_apart_by_every_kind_of_eyes(kind: str | None) -> None:
    # CIEDE2000 of scikit-image, a second library, on the colours as such eyes see them.
    from skimage.color import deltaE_ciede2000, rgb2lab

    rgb = grade_colours().rgb[: len(GRADES)]
    lab = rgb2lab((seen_by(rgb, kind) if kind else rgb)[None] / 255)[0]
    for first, second in combinations(range(len(GRADES)), 2):
        assert deltaE_ciede2000(lab[first], lab[second]) > 9, (GRADES[first], GRADES[second])


def test_tightness_grows_darker_from_easy_to_too_tight() -> None:
    from skimage.color import rgb2lab

    values = [rgb2lab(np.array(RAMP[grade])[None, None] / 255)[0, 0, 0] for grade in GRADES[:4]]
    assert values[0] > values[1] > values[3]
    assert values[2] > values[3]
