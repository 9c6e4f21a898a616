"""The measured side drawing: its lengths against geometry, and its layout, where no label may lie over another."""

import math
from dataclasses import replace
from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.knit.layout import lay_out
from chartmaker.knit.profile import profile
from chartmaker.knit.side import LAYER_CM, around_cm, side
from chartmaker.knit.side_layout import Sheet, SideWords, lay_out_side
from chartmaker.model.hat import FOLD_WAYS, Fold, Hat
from chartmaker.model.units import IMPERIAL, METRIC
from tests.builders import chart
from tests.strategies import designs

TUBE = chart("A | .\n" * 40, times=140, gauge=(28, 32))
WORDS = SideWords(
    length=METRIC.length.told,
    part={name: f"{name} {{0}}" for name in ("brim", "widening", "body", "crown")},
    fold={"up": "turned up", "in": "hem inside", "roll": "rolled"},
)


def side_of(design):
    fabric = lay_out(design)
    return side(design, fabric, profile(fabric, design.gauge))


def cone(times=5, wide=28):
    """Give a tube that closes by one stitch a section every round."""
    rounds = ["A | " + "." * wide] * 20
    rounds += ["A | " + "." * count + " | <" + "." * (count - 1) for count in range(wide - 1, 0, -1)]
    return chart("\n".join(reversed(rounds)), times=times, gauge=(28, 32))


def folded(design, way, rounds):
    return replace(design, hat=replace(design.hat, fold=Fold(way, rounds)))


def sheet(width=460.0, height=340.0, *, line=16.0):
    return Sheet(width=width, height=height, line=line, text_width=lambda text: 0.5 * line * len(text))


def test_a_tube_is_as_wide_and_as_high_as_its_stitches():
    shape = side_of(TUBE)
    assert around_cm(shape.edge_radius_cm) == pytest.approx(140 / 2.8)
    assert shape.height_cm == pytest.approx(40 / 3.2)
    assert shape.depth_cm == pytest.approx(40 / 3.2)
    assert [part.name for part in shape.parts] == ["body"]
    assert not shape.is_wider_above


def test_the_outline_is_as_long_as_the_depth_along_the_fabric():
    # Geometry: the length of the polyline is the sum of its rounds' heights, wherever the fabric lies smooth; where the
    # outline is eased round a bend, it cuts the corner by a little.
    shape = side_of(cone())
    long = sum(math.dist(a, b) for a, b in zip(shape.outline, shape.outline[1:], strict=False))
    assert not shape.puckered
    assert long == pytest.approx(shape.depth_cm, rel=0.02)
    crown = next(part for part in shape.parts if part.name == "crown")
    assert crown.depth_cm == pytest.approx(27 / 3.2)
    assert (crown.first, crown.last) == (20, 47)


@pytest.mark.parametrize("way", ["up", "in"])
def test_a_brim_that_lies_double_takes_its_rounds_off_the_height(way):
    shape = side_of(folded(TUBE, way, 8))
    assert shape.height_cm == pytest.approx(32 / 3.2)
    assert shape.fold[-1][1] == pytest.approx(8 / 3.2)
    off = shape.fold[-1][0] - shape.edge_radius_cm
    assert off == pytest.approx(LAYER_CM if way == "up" else -LAYER_CM)
    brim = shape.parts[0]
    assert (brim.name, brim.depth_cm) == ("brim", pytest.approx(8 / 3.2))


def test_a_rolled_edge_takes_up_its_fabric_in_one_turn():
    shape = side_of(folded(TUBE, "roll", 10))
    long = sum(math.dist(a, b) for a, b in zip(shape.fold, shape.fold[1:], strict=False))
    assert long == pytest.approx(10 / 3.2, rel=0.01)  # sixteen chords of a circle are 0.6 % shorter than it
    assert min(radius for radius, _ in shape.fold) == pytest.approx(shape.edge_radius_cm)


def test_a_fold_of_more_rounds_than_there_are_leaves_one_in_sight():
    assert len(side_of(folded(TUBE, "up", 400)).outline) == 2


def test_a_first_band_of_knit_and_purl_is_the_brim():
    rib = replace(TUBE.bands[0], name="rib", times=35, texture="kkpp", rounds=chart("A | ....\n" * 9).bands[0].rounds)
    shape = side_of(replace(TUBE, bands=(rib, *TUBE.bands)))
    assert [(part.name, round(part.depth_cm * 3.2)) for part in shape.parts] == [("brim", 9), ("body", 40)]


def test_a_hat_that_widens_is_measured_at_its_widest_too():
    wide = chart("A | ......\n" * 10, "A | ...... | +....+\n" + "A | ....\n" * 4, times=24)
    shape = side_of(replace(wide, bands=wide.bands[::-1]))
    assert shape.is_wider_above
    texts = [label.text for label in lay_out_side(shape, sheet(), WORDS).labels]
    assert f"{METRIC.length.told(144 / 2.8)} round · {METRIC.length.told(144 / 2.8 / math.pi)} across" in texts


def test_the_drawing_is_to_scale_both_ways():
    drawing = lay_out_side(side_of(TUBE), sheet(), WORDS)
    xs, ys = ([point[axis] for point in drawing.area] for axis in (0, 1))
    assert (max(xs) - min(xs)) / (max(ys) - min(ys)) == pytest.approx((140 / 2.8 / math.pi) / (40 / 3.2))
    (across,) = (
        stroke.points
        for stroke in drawing.strokes
        if stroke.kind == "dimension" and stroke.points[0][1] == stroke.points[1][1]
    )
    assert across[1][0] - across[0][0] == pytest.approx(drawing.scale * 140 / 2.8 / math.pi)


def test_the_measures_are_written_in_the_units_asked_for():
    words = replace(WORDS, length=IMPERIAL.length.told)
    texts = " ".join(label.text for label in lay_out_side(side_of(TUBE), sheet(), words).labels)
    assert IMPERIAL.length.told(50) in texts
    assert "cm" not in texts


def test_a_tam_has_the_plate_that_it_is_laid_on():
    wide = chart("A | ......\n" * 10, "A | ...... | +....+\n" + "A | ....\n" * 4, times=24)
    shape = side_of(replace(wide, bands=wide.bands[::-1], hat=Hat(shape="tam")))
    assert [part.name for part in shape.parts] == ["widening", "body"]
    texts = [label.text for label in lay_out_side(shape, sheet(), WORDS, is_plate=True).labels]
    assert any(f"plate {METRIC.length.told(2 * shape.widest[0])}" in text for text in texts)


FOLDS = st.none() | st.builds(Fold, st.sampled_from(FOLD_WAYS), st.integers(1, 12))
SHEETS = st.builds(sheet, st.floats(150, 900), st.floats(120, 700), line=st.floats(8, 24))


@given(designs(), FOLDS, SHEETS, st.booleans())
def test_no_two_labels_overlap_and_none_leaves_the_sheet_at_its_sides(design, fold, room, is_plate):
    design = replace(design, hat=replace(design.hat, fold=fold))
    drawing = lay_out_side(side_of(design), room, WORDS, is_plate=is_plate)
    assert drawing.labels
    for first, second in combinations(drawing.labels, 2):
        assert not first.overlaps(second), (first.text, second.text)
    for label in drawing.labels:
        assert label.x >= 0
        assert label.x + label.width <= max(room.width, label.width) + 1e-6


@pytest.mark.parametrize("size", [(400, 300), (480, 400), (900, 700)])
def test_no_radius_is_written_across_the_outline(size):
    lower = chart("A | .....", times=20)
    closing = [f"A | {'.' * count} | <{'.' * (count - 1)}" for count in range(1, 28)]
    upper = chart("\n".join(closing), times=5)
    widened = chart("A | ....... | .+.+...", times=20)
    design = replace(upper, bands=(lower.bands[0], widened.bands[0], upper.bands[0]))
    drawing = lay_out_side(side_of(design), sheet(*size), WORDS)
    right = [(x, y) for x, y in drawing.area if x >= size[0] / 2]
    radii = [label for label in drawing.labels if label.kind == "radius"]
    for label in radii:
        assert not [x for x, y in right if label.y <= y <= label.y + label.height and x < label.x + label.width]


@pytest.mark.parametrize("size", [(260, 220), (480, 400), (900, 300)])
def test_brim_depth_and_height_are_told_in_usual_sizes(size):
    for design in (TUBE, cone(), folded(cone(), "up", 6)):
        shape = side_of(design)
        texts = " · ".join(label.text for label in lay_out_side(shape, sheet(*size), WORDS).labels)
        assert f"{METRIC.length.told(around_cm(shape.edge_radius_cm))} round" in texts
        assert f"{METRIC.length.told(shape.depth_cm)} deep in all" in texts
        assert f"{METRIC.length.told(shape.height_cm)} high" in texts
        for part in shape.parts:
            assert f"{part.name} {METRIC.length.told(part.depth_cm)}" in texts
