"""Colour vision against the published matrices, colour-science, and what the model's own law demands."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.model.settings import Viewing
from chartmaker.shade.colorimetry import colour
from chartmaker.shade.screen import decoded, screen_of_lab
from chartmaker.shade.vision import KINDS, lab_seen_by, seen_by, vision_matrix
from chartmaker.shade.weights import white_point

NAMES = {"protan": "Protanomaly", "deutan": "Deuteranomaly", "tritan": "Tritanomaly"}
PUBLISHED = {
    "protan": [[0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216], [-0.003882, -0.048116, 1.051998]],
    "deutan": [[0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413], [-0.011820, 0.042940, 0.968881]],
    "tritan": [[1.255528, -0.076749, -0.178779], [-0.078411, 0.930809, 0.147602], [0.004733, 0.691367, 0.303900]],
}
"""The table of Machado, Oliveira and Fernandes 2009 at severity 1.0, written down from memory."""


@pytest.mark.parametrize("kind", KINDS)
def test_the_matrix_of_full_severity_is_the_published_one(kind):
    assert np.array_equal(vision_matrix(kind), PUBLISHED[kind])


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("tenths", range(11))
def test_every_tenth_of_severity_agrees_with_colour_sciences_table(kind, tenths):
    theirs = colour.CVD_MATRICES_MACHADO2010[NAMES[kind]][tenths / 10]
    assert np.allclose(vision_matrix(kind, tenths / 10), theirs, atol=1e-12)


@pytest.mark.parametrize("kind", KINDS)
def test_between_two_tenths_the_matrix_lies_between(kind):
    below, above = vision_matrix(kind, 0.5), vision_matrix(kind, 0.6)
    assert np.allclose(vision_matrix(kind, 0.525), 0.75 * below + 0.25 * above, atol=1e-12)


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("severity", [0.0, 0.3, 0.65, 1.0])
def test_greys_stay_as_they_are(kind, severity):
    greys = np.arange(256, dtype=np.uint8)[:, None].repeat(3, axis=1)
    assert np.array_equal(seen_by(greys, kind, severity=severity), greys)


@given(st.tuples(*[st.integers(0, 255)] * 3), st.sampled_from(KINDS))
def test_no_severity_changes_nothing(rgb, kind):
    assert tuple(seen_by(rgb, kind, severity=0.0)) == rgb


def test_the_lack_of_a_cone_brings_its_confused_colours_together():
    # On the screen's red and green of one lightness to such eyes: the two differ by less than by themselves.
    red, green = (200, 60, 60), (120, 110, 50)
    apart = np.abs(np.subtract(decoded(np.divide(red, 255)), decoded(np.divide(green, 255)))).sum()
    for kind in ("protan", "deutan"):
        seen = [decoded(seen_by(one, kind) / 255) for one in (red, green)]
        assert np.abs(seen[0] - seen[1]).sum() < apart / 2


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("lab", [(55.0, 30.0, 25.0), (70.0, -12.0, 30.0), (40.0, 5.0, -20.0)])
def test_a_shade_as_such_eyes_see_it_is_what_colour_science_makes_of_its_screen_colour(kind, lab):
    viewing = Viewing(illuminant="D65", observer="10")
    rgb, is_out = screen_of_lab(lab, white=white_point(viewing))
    assert not is_out
    linear = colour.CVD_MATRICES_MACHADO2010[NAMES[kind]][1.0] @ colour.models.eotf_sRGB(rgb / 255)
    srgb = colour.RGB_COLOURSPACES["sRGB"]
    expected = colour.XYZ_to_Lab(colour.RGB_to_XYZ(linear, srgb, apply_cctf_decoding=False), srgb.whitepoint)
    # The screen colour was rounded to 8 bits on their side alone.
    assert colour.delta_E(expected, lab_seen_by(lab, kind, white=white_point(viewing))) < 0.6


@pytest.mark.parametrize("kind", KINDS)
def test_a_grey_shade_looks_the_same_to_all_eyes(kind):
    greys = np.array([(level, 0.0, 0.0) for level in (0.0, 20.0, 50.0, 100.0)])
    assert lab_seen_by(greys, kind, white=white_point(Viewing())) == pytest.approx(greys, abs=1e-3)


@pytest.mark.parametrize(("kind", "severity"), [("other", 1.0), ("protan", 1.01), ("tritan", -0.1)])
def test_an_unknown_kind_or_severity_is_refused(kind, severity):
    with pytest.raises(ValueError, match=r"there is no kind|outside 0 to 1"):
        vision_matrix(kind, severity)
