"""Pairs of letters across a room, in the bands that they are knitted in."""

import pytest

from chartmaker.appraisal import appraise
from chartmaker.knit.from_afar import contrasts_from_afar
from chartmaker.report.as_json import report_as_json
from chartmaker.shade.colorimetry import colour
from tests.builders import chart

LOTS = {"A": (85, 0, 12), "B": (30, -5, -25), "C": (60, 30, 20)}
SPECKLED = "A B | .x.x.x.x\nA B | x.x.x.x."
BLOCKS = "\n".join(["A B | xxxxxxxxxxxxxxxxxxxx...................."] * 30)


def from_afar(design, **distance):
    shades = {letter.letter: letter.shade for letter in appraise(design).letters if letter.shade}
    return contrasts_from_afar(design, shades, **distance)


def test_speckles_fade_across_a_room_and_blocks_stay():
    speckled, blocks = (from_afar(chart(text, lots=LOTS))["AB"] for text in (SPECKLED, BLOCKS))
    assert speckled.value_difference < 20
    assert blocks.value_difference > 50
    assert speckled.ciede2000 < blocks.ciede2000


def test_the_nearer_the_more_is_left():
    design = chart(SPECKLED, lots=LOTS)
    found = [from_afar(design, distance_cm=distance)["AB"].value_difference for distance in (60, 150, 300, 900)]
    assert found == sorted(found, reverse=True)


def test_close_by_a_band_of_blocks_differs_as_its_lots_do():
    # And by about an eighth more, which the eye adds to areas of some degrees: (.921 + .105) / .918 is 1.118 in light.
    found = from_afar(chart(BLOCKS, lots=LOTS), distance_cm=40)["AB"]
    assert 55 < found.value_difference < 55 * 1.15
    plain = colour.delta_E(LOTS["A"], LOTS["B"])
    assert plain < found.ciede2000 < plain * 1.2


def test_a_pair_is_taken_from_the_band_where_both_have_most_stitches():
    design = chart("A B | .......x", SPECKLED, "A C | .x", times=[1, 4, 1], lots=LOTS)
    found = from_afar(design)
    assert {letters: contrast.band for letters, contrast in found.items()} == {"AB": 1, "AC": 2}


def test_bands_that_are_shaped_or_lack_a_shade_are_left_out():
    assert from_afar(chart("A B | .x | ^.", lots=LOTS)) == {}
    assert from_afar(chart("A B | .x.x", lots={"A": (85, 0, 12)})) == {}
    assert from_afar(chart("A | ....", lots=LOTS)) == {}


def test_the_report_tells_what_is_left_at_three_metres():
    design = chart(SPECKLED, times=18, lots=LOTS)
    (pair,) = report_as_json(appraise(design))["pairs"]
    assert pair["from_afar"]["distance_cm"] == 300
    assert pair["from_afar"]["value_difference"] == pytest.approx(from_afar(design)["AB"].value_difference, abs=1e-6)
    assert pair["from_afar"]["value_difference"] < pair["value_difference"] / 2
