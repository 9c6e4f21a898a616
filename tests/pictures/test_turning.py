"""The turning hat: where its stitches appear, against geometry and a second renderer; and what it refuses."""

import math
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from numpy.typing import NDArray

from chartmaker.appraisal import Appraisal, appraise
from chartmaker.files.design_reading import read_design
from chartmaker.files.palette_reading import read_palette_beside
from chartmaker.model.design import Design
from chartmaker.model.hat import FOLD_WAYS, Fold, Hat, Trim
from chartmaker.pictures.shades import SURROUND, LetterColours, shade_colours
from chartmaker.pictures.tints import TINTS
from chartmaker.pictures.turning import Dress, prepare
from chartmaker.pictures.viewpoint import VIEWPOINTS, Viewpoint
from tests.builders import chart
from tests.pictures.points_hat import draw_worn
from tests.strategies import designs

EXAMPLES = Path(__file__).parents[2] / "examples"
BRIGHT, DARK = (85.0, 0.0, 10.0), (30.0, 15.0, -50.0)
"""A warm light wool and a blue dark one, so that a pixel tells which it is."""
Pixels = NDArray[np.uint8]


def example(name: str) -> Appraisal:
    path = EXAMPLES / f"{name}.hat.toml"
    design = read_design(path)
    return appraise(design, read_palette_beside(design, path))


def tube(line: str = "." * 100, *, rounds: int = 60, hat: Hat | None = None) -> Appraisal:
    lots = {"A": BRIGHT, "B": DARK}
    return appraise(chart(f"A B | {line}\n" * rounds, gauge=(25.0, 30.0), lots=lots, hat=hat or Hat()))


def blurred(seen: Pixels) -> NDArray[np.float64]:
    """Average blocks of 4 × 4, so that what is half a pixel aside counts little."""
    height, width = seen.shape[0] // 4, seen.shape[1] // 4
    return seen[: height * 4, : width * 4].reshape(height, 4, width, 4, 3).mean(axis=(1, 3))


def is_blue(seen: Pixels) -> NDArray[np.bool_]:
    return seen[..., 2].astype(int) > seen[..., 0].astype(int) + 15


def is_hat(seen: Pixels) -> NDArray[np.bool_]:
    return (seen.max(axis=2).astype(int) - seen.min(axis=2) > 2) | (seen[..., 0] > SURROUND)


@pytest.mark.parametrize("fine", [False, True])
@pytest.mark.parametrize("turn", [-70, -30, 0, 25, 60])
def test_a_stripe_of_one_stitch_stands_where_the_sine_of_the_turn_says(turn: float, *, fine: bool) -> None:
    # Stitch 51 of 100 has its middle half a stitch left of the front: sin(turn - 1.8°).
    line = "".join("x" if stitch == 50 else "." for stitch in reversed(range(100)))
    hat = prepare(tube(line), Dress(surface="flat"))
    seen = hat.frame(Viewpoint(turn_degrees=turn, tilt_degrees=0), 401, 401, fine=fine)
    columns = np.flatnonzero(is_blue(seen[200]))
    wide = np.flatnonzero(is_hat(seen)[200])
    radius_px = (wide[-1] - wide[0] + 1) / 2
    expected = 200 + radius_px * math.sin(math.radians(turn - 1.8))
    assert len(columns)
    assert columns.mean() == pytest.approx(expected, abs=1.2)


def test_a_stripe_at_the_back_is_not_seen_until_it_is_turned_to_the_front() -> None:
    hat = prepare(tube("x" * 3 + "." * 94 + "x" * 3), Dress(surface="flat"))
    side = Viewpoint(tilt_degrees=0)
    assert not is_blue(hat.frame(side, 200, 200)).any()
    assert is_blue(hat.frame(replace(side, turn_degrees=180), 200, 200))[100, 90:110].all()


@pytest.mark.parametrize("fine", [False, True])
def test_a_whole_turn_gives_the_same_picture(*, fine: bool) -> None:
    hat = prepare(example("lockside-cap"))
    first, again = (hat.frame(Viewpoint(turn_degrees=turn), 160, 200, fine=fine) for turn in (25.0, 385.0))
    assert np.array_equal(first, again)


def test_from_above_a_coloured_round_of_the_crown_is_a_circle() -> None:
    counts = list(range(96, 8, -8))
    lines = ["A | " + "." * 96] * 3
    for number, count in enumerate(counts[1:]):
        letter = "B" if number == 5 else "A"
        lines.append(f"{letter} | {'.' * count} | {'>' * 8}{'.' * (count - 8)}")
    design = chart("\n".join(reversed(lines)), gauge=(20.0, 20.0), lots={"A": BRIGHT, "B": DARK})
    appraisal = appraise(design)
    hat = prepare(appraisal, Dress(surface="flat"))
    seen = hat.frame(VIEWPOINTS["above"], 401, 401, fine=True)
    row, column = np.nonzero(is_blue(seen))
    far = np.hypot(row - 200, column - 200)
    reach = np.flatnonzero(is_hat(seen)[200])
    px_per_cm = (reach[-1] - reach[0] + 1) / 2 / max(appraisal.profile.radius_cm)
    inner, outer = (hat.curve.radius_cm[number] * px_per_cm for number in (9, 8))
    assert far.min() == pytest.approx(inner, abs=2)
    assert far.max() == pytest.approx(outer, abs=2)
    assert len(far) == pytest.approx(math.pi * (outer**2 - inner**2), rel=0.06)


@pytest.mark.parametrize("name", ["lockside-cap", "towpath-tam"])
def test_a_second_renderer_paints_nearly_the_same(name: str) -> None:
    appraisal = example(name)
    colours = shade_colours({item.letter: item.shade for item in appraisal.letters})
    points = draw_worn(appraisal.design, appraisal.fabric, appraisal.profile, colours, width_px=400)
    ours = prepare(appraisal).picture(Viewpoint(), 400)
    assert ours.shape == points.shape
    assert np.abs(blurred(ours) - blurred(points)).mean() < 2.6
    turned = prepare(appraisal).picture(Viewpoint(turn_degrees=7), 400)
    assert np.abs(blurred(turned) - blurred(points)).mean() > 5  # so much does another picture differ


def test_a_frame_at_once_is_nearly_the_fine_one() -> None:
    hat = prepare(example("lockside-cap"))
    for tilt in (-50, 0, 18, 90):
        sight = Viewpoint(tilt_degrees=tilt)
        quick, fine = (blurred(hat.frame(sight, 300, 300, fine=fine)) for fine in (False, True))
        assert np.abs(quick - fine).mean() < 3


def test_turning_back_gives_the_first_frame_again_whatever_lay_between() -> None:
    hat = prepare(example("towpath-tam"))
    first = hat.frame(Viewpoint(), 200, 200)
    hat.frame(Viewpoint(tilt_degrees=70, turn_degrees=100), 200, 200)
    hat.frame(Viewpoint(zoom=3), 250, 200)
    assert np.array_equal(hat.frame(Viewpoint(), 200, 200), first)


def test_a_turned_up_edge_shows_its_wrong_side_outside() -> None:
    # Ribs: the wrong side of "k2 p2" is "p2 k2", so the knitted column is lit where the purled one was.
    band = chart(f"A | {'.' * 4}\n" * 40, times=25, gauge=(25.0, 30.0), lots={"A": BRIGHT}).bands[0]
    design = replace(tube().design, bands=(replace(band, texture="kkpp"),))
    side = Viewpoint(tilt_degrees=0, zoom=1.5, lift_cm=-4)
    seen = {}
    for rounds in (0, 12):
        hat = replace(design.hat, fold=Fold("up", rounds) if rounds else None)
        seen[rounds] = (
            prepare(appraise(replace(design, hat=hat))).frame(side, 600, 600, fine=True)[..., 1].astype(float)
        )
    # Purl bumps alternate from light to dark up a column far more than the legs of knit stitches do.
    edge, plain = (seen[rounds][150:320, 220:380].std(axis=0) for rounds in (12, 0))
    assert np.corrcoef(edge, plain)[0, 1] < -0.3


def test_the_inside_from_below_shows_the_crown_and_no_pompom() -> None:
    hat = Hat(trims=(Trim(kind="pompom", letter="B", size_cm=6.0),))
    lines = ["A | " + "." * 96] * 30
    lines += [f"A | {'.' * count} | {'>' * 8}{'.' * (count - 8)}" for count in range(88, 7, -8)]
    appraisal = appraise(chart("\n".join(reversed(lines)), lots={"A": BRIGHT, "B": DARK}, hat=hat))
    for fine in (False, True):
        seen = prepare(appraisal).frame(VIEWPOINTS["below"], 300, 300, fine=fine)
        assert not is_blue(seen).any()
        assert 40 < seen[150, 110:190].mean() < 140
    assert is_blue(prepare(appraisal).frame(VIEWPOINTS["above"], 300, 300)).sum() > 1000


def test_a_tassel_turns_with_the_hat() -> None:
    appraisal = tube("." * 12, hat=Hat(trims=(Trim(kind="tassel", letter="B", size_cm=8.0),)))
    hat = prepare(appraisal)
    places = {}
    for turn in (-40, 40):
        seen = hat.frame(Viewpoint(turn_degrees=turn, tilt_degrees=10), 300, 600)
        places[turn] = np.nonzero(is_blue(seen))[1].mean()
    assert places[40] > places[-40] + 3


@pytest.mark.parametrize(
    "wrong",
    [
        {"tilt_degrees": 91},
        {"tilt_degrees": math.nan},
        {"turn_degrees": math.inf},
        {"zoom": 0.0},
        {"lift_cm": math.nan},
    ],
)
def test_a_viewpoint_that_is_none_is_refused(wrong: dict[str, float]) -> None:
    with pytest.raises(ValueError, match=r"turn|tilt|zoom|lift"):
        Viewpoint(**wrong)


@pytest.mark.parametrize("size", [(15, 100), (100, 5000)])
def test_a_frame_too_small_or_too_large_is_refused(size: tuple[int, int]) -> None:
    with pytest.raises(ValueError, match="frame"):
        prepare(tube()).frame(Viewpoint(), *size)


def test_a_frame_that_shows_next_to_nothing_of_the_hat_is_painted_all_the_same() -> None:
    hat = prepare(tube())
    for fine in (False, True):
        seen = hat.frame(Viewpoint(zoom=8, lift_cm=900), 64, 48, fine=fine)
        assert seen.shape == (48, 64, 3)
        assert np.abs(seen.astype(int) - SURROUND).max() <= 1


def test_colours_of_letters_without_a_shade_are_greys() -> None:
    appraisal = appraise(chart("A B | .x" + ".x" * 20, times=2))
    seen = prepare(appraisal).frame(Viewpoint(), 100, 100)
    assert (seen.max(axis=2) == seen.min(axis=2)).all()
    assert isinstance(prepare(appraisal)._colours.trims, LetterColours)


@settings(max_examples=40, deadline=None)
@given(
    designs(),
    st.builds(Viewpoint, turn_degrees=st.floats(-400, 400), tilt_degrees=st.floats(-90, 90), zoom=st.floats(0.1, 8)),
    st.none() | st.builds(Fold, st.sampled_from(FOLD_WAYS), st.integers(1, 40)),
    st.builds(Dress, tint=st.sampled_from(TINTS), surface=st.sampled_from(["knit", "flat"])),
)
def test_any_hat_is_painted_from_anywhere(design: Design, place: Viewpoint, fold: Fold | None, dress: Dress) -> None:
    hat = replace(design.hat, fold=fold)
    dress = replace(dress, laid=hat.shape == "tam" and fold is not None)
    turning = prepare(appraise(replace(design, hat=hat)), dress)
    for fine in (False, True):
        seen = turning.frame(place, 60, 47, fine=fine)
        assert seen.shape == (47, 60, 3)
        assert seen.dtype == np.uint8
