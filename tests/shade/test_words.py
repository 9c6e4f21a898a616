"""Words for shades: against the Munsell renotation, against centroids of the ISCC-NBS system, and at every bound."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.model.settings import Viewing
from chartmaker.shade.adaptation import adapted
from chartmaker.shade.colorimetry import colour
from chartmaker.shade.lab import lab_of_lch, lab_of_xyz, lch_of_lab
from chartmaker.shade.lots import shades_of
from chartmaker.shade.screen import SRGB_WHITE, xyz_of_hex
from chartmaker.shade.weights import white_point
from chartmaker.shade.words import CHROMA_BOUNDS, CHROMAS, HUES, VALUE_BOUNDS, VALUES, words_of
from tests.examples.test_allotment import PALETTE

ENDS = [
    "2.5R",
    "7.5R",
    "2.5YR",
    "7.5YR",
    "2.5Y",
    "7.5Y",
    "2.5GY",
    "7.5GY",
    "2.5G",
    "10G",
    "7.5BG",
    "7.5B",
    "5PB",
    "7.5PB",
    "2.5P",
    "10P",
    "5RP",
]
"""The Munsell hue at which each of `HUES` ends."""
CENTROIDS = {
    "#ab4e52": "red",
    "#722f37": "red",
    "#79443b": "reddish brown",
    "#9e4732": "reddish orange",
    "#6f4e37": "brown",
    "#593319": "brown",
    "#fd943f": "orange",
    "#be6516": "orange",
    "#826644": "yellowish brown",
    "#ffc14f": "orange yellow",
    "#665d1e": "olive",
    "#fada5e": "yellow",
    "#ab9144": "yellow",
    "#e9e450": "greenish yellow",
    "#4a5d23": "olive green",
    "#bdda57": "yellow green",
    "#83d37d": "yellowish green",
    "#3eb489": "green",
    "#00543d": "green",
    "#317873": "bluish green",
    "#239eba": "greenish blue",
    "#4997d0": "blue",
    "#00416a": "blue",
    "#604e97": "violet",
    "#32174d": "violet",
    "#86608e": "purple",
    "#602f6b": "purple",
    "#78184a": "purplish red",
    "#915f6d": "purplish red",
    "#dea5a4": "pink",
    "#f99379": "yellowish pink",
    "#c17e91": "purplish pink",
    "#f0ead6": "yellowish white",
    "#28201c": "brownish black",
    "#555555": "grey",
    "#222222": "black",
}
"""sRGB of centroids of the ISCC-NBS system by the hue part of their name (Kelly and Judd 1976, NBS Spec. Publ. 440)."""


def of(lightness, chroma, hue):
    return words_of(lab_of_lch((lightness, chroma, hue)))


def test_hues_end_where_the_munsell_renotation_says():
    renotation = dict(colour.MUNSELL_COLOURS["Munsell Colours Real"])
    white = white_point(Viewing())
    from_white = 100 * colour.xy_to_XYZ(colour.CCS_ILLUMINANTS["CIE 1931 2 Degree Standard Observer"]["C"])
    for end, (degrees, name, _) in zip(ENDS, HUES, strict=True):
        x, y, luminance = renotation[end, 5.0, 6.0]
        xyz = colour.xyY_to_XYZ((x, y, luminance / 100)) * 100
        lch = lch_of_lab(lab_of_xyz(adapted(xyz, from_white=from_white, to_white=white), white=white))
        assert lch[2] == pytest.approx(degrees, abs=0.06), name


def test_centroids_of_the_iscc_nbs_system_are_called_as_they_are_there():
    # Its blocks have bounds that move with value and chroma, ours do not: a few dark ones come out a hue beside theirs.
    white = white_point(Viewing())
    beside = []
    for hexa, name in CENTROIDS.items():
        xyz = adapted(xyz_of_hex(hexa), from_white=SRGB_WHITE, to_white=white)
        called = words_of(lab_of_xyz(xyz, white=white)).hue
        if called != name:
            beside.append((name, called))
    order = [name for _, name, _ in HUES]
    assert len(beside) <= len(CENTROIDS) // 10, beside
    for name, called in beside:
        assert abs(order.index(name) - order.index(called)) in {1, len(order) - 1}, beside


@pytest.mark.parametrize(("bound", "below", "above"), [*zip(VALUE_BOUNDS, VALUES, VALUES[1:], strict=False)])
def test_a_word_of_value_begins_at_its_bound(bound, below, above):
    assert of(bound - 0.001, 40, 260).value == below
    assert of(bound + 0.001, 40, 260).value == above


@pytest.mark.parametrize(("bound", "below", "above"), [*zip(CHROMA_BOUNDS, CHROMAS, CHROMAS[1:], strict=False)])
def test_a_word_of_chroma_begins_at_its_bound(bound, below, above):
    assert of(55, bound - 0.001, 260).chroma == below
    assert of(55, bound + 0.001, 260).chroma == above


@pytest.mark.parametrize("index", range(len(HUES)))
def test_a_hue_begins_where_the_one_before_it_ends(index):
    end = HUES[index][0]
    # Vivid and of a middling value, no brown, olive or pink takes the hue's place.
    assert of(58, 70, end - 0.001).hue == HUES[index][1]
    assert of(58, 70, end + 0.001).hue == HUES[(index + 1) % len(HUES)][1]


@pytest.mark.parametrize(
    ("lch", "text"),
    [
        ((20, 12, 55), "very dark, greyish brown"),
        ((42, 29, 46), "dark, dull reddish brown"),
        ((55, 40, 25), "red"),
        ((40, 3, 200), "dark grey"),
        ((55, 0, 0), "medium grey"),
        ((55, 7, 250), "medium bluish grey"),
        ((92, 2, 90), "white"),
        ((92, 12, 90), "yellowish white"),
        ((15, 1, 0), "black"),
        ((15, 8, 60), "brownish black"),
        ((70, 34, 31), "light pink"),
        ((35, 20, 260), "dark, dull blue"),
        ((80, 70, 92), "light, vivid yellow"),
    ],
)
def test_shades_are_told_as_a_person_would(lch, text):
    assert of(*lch).text == text


def test_the_demonstration_palette_is_told_plausibly():
    told = {
        lot.id: words_of(shade.lab).text
        for lot, shade in zip(PALETTE.lots, shades_of(PALETTE.lots, Viewing()), strict=True)
        if shade
    }
    # By dyestuff: what each is known to give on wool.
    for start, words in {
        "madder": ("red", "pink"),
        "weld": ("yellow", "olive"),
        "walnut": ("brown",),
        "woad": ("blue",),
        "onion": ("orange",),
        "alder": ("grey",),
        "birch": ("yellow",),
        "white": ("white",),
    }.items():
        mine = [text for name, text in told.items() if name.startswith(start)]
        assert mine
        assert all(any(word in text for word in words) for text in mine), (start, mine)


@given(st.tuples(st.floats(0, 100), st.floats(-120, 120), st.floats(-120, 120)))
def test_every_shade_has_words_and_always_the_same(lab):
    found = words_of(lab)
    assert found == words_of(np.array(lab))
    assert found.value in VALUES
    assert found.chroma in CHROMAS
    assert found.text.endswith(found.hue)
