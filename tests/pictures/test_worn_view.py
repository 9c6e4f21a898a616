"""The worn hat: its silhouette against geometry, its seam, its trims."""

import math
from dataclasses import replace
from itertools import pairwise

import numpy as np
import pytest

from chartmaker.appraisal import appraise
from chartmaker.model.design import Design
from chartmaker.model.hat import Hat, Trim
from chartmaker.pictures.camera import MARGIN, TALLEST, TILT_DEGREES
from chartmaker.pictures.outline import outline
from chartmaker.pictures.picture import picture
from chartmaker.pictures.shades import SURROUND
from tests.builders import chart

BRIGHT, DARK = (85.0, 0.0, 10.0), (25.0, 5.0, -30.0)
TILT = math.radians(TILT_DEGREES)


def tube(*, stitches: int = 100, rounds: int = 60, hat: Hat | None = None) -> Design:
    text = f"A | {'.' * stitches}\n" * rounds
    return chart(text, gauge=(25.0, 30.0), lots={"A": BRIGHT, "B": DARK}, hat=hat or Hat())


def silhouette(design: Design, width: int) -> np.ndarray:
    """Tell which pixels are clearly neither ground nor its shadow: both are neutral greys up to the surround."""
    seen = picture(appraise(design), "hat", width).astype(int)
    is_grey = (seen.max(axis=2) - seen.min(axis=2)) <= 1
    return ~(is_grey & (seen[..., 0] <= SURROUND))


def extent(mask: np.ndarray, axis: int) -> int:
    places = np.flatnonzero(mask.any(axis=axis))
    return int(places[-1] - places[0] + 1)


@pytest.mark.parametrize("width", [200, 500, 801])
def test_the_silhouette_is_as_wide_as_twice_the_largest_radius(width: int) -> None:
    design = tube()
    px_per_cm = width * (1 - 2 * MARGIN) / (100 * 0.4 / math.pi)
    radius_cm = max(appraise(design).profile.radius_cm)
    assert extent(silhouette(design, width), 0) == pytest.approx(2 * radius_cm * px_per_cm, abs=1)


def test_the_silhouette_of_a_tube_is_as_tall_as_its_projection() -> None:
    mask = silhouette(tube(), 600)
    radius, height = 100 * 0.4 / (2 * math.pi), 60 / 3
    expected = (height * math.cos(TILT) + 2 * radius * math.sin(TILT)) / (2 * radius) * extent(mask, 0)
    assert extent(mask, 1) == pytest.approx(expected, abs=2)


def test_a_sphere_of_fabric_looks_round_from_any_height() -> None:
    # A half sphere on its equator: at its top the silhouette is the sphere's, whatever the tilt.
    gauge_width, gauge_height, count = 0.4, 1 / 3, 120
    radius = count * gauge_width / (2 * math.pi)
    quarter = round(radius * math.pi / 2 / gauge_height)
    counts = [max(1, round(count * math.cos(math.pi * step / (2 * quarter)))) for step in range(quarter + 1)]
    lines = [f"A | {'.' * count}"]
    for below, here in pairwise(counts):
        signs = ["."] * here
        for place in range(below - here):
            signs[place % here] = "^" if signs[place % here] == ">" else ">"
        lines.append(f"A | {'.' * here} | {''.join(signs)}")
    mask = silhouette(chart("\n".join(reversed(lines)), gauge=(25.0, 30.0), lots={"A": BRIGHT}), 500)
    top, middle = np.flatnonzero(mask.any(axis=1))[0], 250
    wide = extent(mask, 0)
    for share in (0.3, 0.5, 0.7):
        row = mask[top + int(wide / 2 * share)]
        expected = wide * math.sqrt(1 - (1 - share) ** 2)
        assert extent(row[None, :], 0) == pytest.approx(expected, rel=0.06)
        places = np.flatnonzero(row)
        assert (places[0] + places[-1]) / 2 == pytest.approx(middle, abs=2)


def test_the_corners_are_the_neutral_surround() -> None:
    seen = picture(appraise(tube()), "hat", 400)
    assert np.all(seen[[0, 0, -1, -1], [0, -1, 0, -1]] == SURROUND)


def test_the_seam_is_at_the_back_and_the_middle_stitches_in_front() -> None:
    line = "".join("x" if 45 <= stitch < 55 else "." for stitch in range(100))
    middle = chart(f"A B | {line}\n" * 60, gauge=(25.0, 30.0), lots={"A": BRIGHT, "B": DARK})
    seam = chart(f"A B | {'x' * 5}{'.' * 90}{'x' * 5}\n" * 60, gauge=(25.0, 30.0), lots={"A": BRIGHT, "B": DARK})
    seen = picture(appraise(middle), "hat", 400)
    height = seen.shape[0]
    front = seen[height // 2, 195:205].astype(int)
    assert (front[:, 2] > front[:, 0]).all()
    seen = picture(appraise(seam), "hat", 400)[height // 2, 40:360].astype(int)
    assert not (seen[:, 2] > seen[:, 0] + 10).any()


def test_knitting_runs_from_right_to_left_round_the_front() -> None:
    line = "".join("x" if 20 <= stitch < 45 else "." for stitch in reversed(range(100)))
    design = chart(f"A B | {line}\n" * 60, gauge=(25.0, 30.0), lots={"A": BRIGHT, "B": DARK})
    seen = picture(appraise(design), "hat", 400).astype(int)
    row = seen[seen.shape[0] // 2]
    is_figure = row[:, 2] > row[:, 0] + 5
    assert is_figure[220:370].sum() > 100
    assert is_figure[:200].sum() == 0


def test_a_small_last_round_is_drawn_together() -> None:
    closed, still_open = tube(stitches=12, rounds=10), tube(stitches=100, rounds=10)
    assert not outline(appraise(closed).profile).is_open
    assert outline(appraise(still_open).profile).is_open


def test_the_inside_of_an_unfinished_hat_is_darker_than_its_outside() -> None:
    seen = picture(appraise(tube()), "hat", 400)
    mask = silhouette(tube(), 400)
    top = int(np.flatnonzero(mask[:, 200])[0])
    inside, outside = seen[top + 5 : top + 25, 190:210].mean(), seen[-150:-130, 190:210].mean()
    assert inside < 0.75 * outside


@pytest.mark.parametrize("kind", ["pompom", "tassel"])
def test_a_trim_is_drawn_in_its_letter(kind: str) -> None:
    trimmed = tube(stitches=12, rounds=60, hat=Hat(trims=(Trim(kind=kind, letter="B", size_cm=4.0),)))
    bare = replace(trimmed, hat=Hat())
    counts = []
    for design in (bare, trimmed):
        seen = picture(appraise(design), "hat", 300).astype(int)
        counts.append(int(((seen[..., 2] - seen[..., 0]) > 15).sum()))
    assert counts[0] == 0
    assert counts[1] > 1000


def test_a_pompom_has_the_size_that_the_design_gives() -> None:
    hat = Hat(trims=(Trim(kind="pompom", letter="B", size_cm=10.0),))
    seen = picture(appraise(tube(stitches=120, rounds=30, hat=hat)), "hat", 600).astype(int)
    is_pompom = (seen[..., 2] - seen[..., 0]) > 15
    px_per_cm = 600 * (1 - 2 * MARGIN) / (120 * 0.4 / math.pi)
    assert extent(is_pompom, 0) == pytest.approx(10 * px_per_cm, rel=0.05)


def test_a_very_long_hat_is_drawn_smaller_rather_than_taller() -> None:
    seen = picture(appraise(tube(stitches=20, rounds=300)), "hat", 100)
    assert seen.shape[0] <= TALLEST * 100


def test_a_hat_whose_counts_do_not_meet_is_drawn_all_the_same() -> None:
    design = chart("A | .......", "A | ..........", lots={"A": BRIGHT})
    assert not all(appraise(design).fabric.meets)
    assert silhouette(design, 120).any()


def test_a_picture_past_the_pixels_that_are_drawn_is_enlarged_to_its_width(monkeypatch: pytest.MonkeyPatch) -> None:
    whole = picture(appraise(tube()), "hat", 300)
    monkeypatch.setattr("chartmaker.pictures.turning.MOST_PIXELS", 100_000)
    enlarged = picture(appraise(tube()), "hat", 300)
    assert enlarged.shape == whole.shape
    blurred = [seen[:500].reshape(25, 20, 15, 20, 3).mean(axis=(1, 3)) for seen in (enlarged, whole)]
    assert np.abs(blurred[0] - blurred[1]).mean() < 4
