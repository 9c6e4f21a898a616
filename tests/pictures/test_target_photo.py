"""Photos of skeins beside the target, rendered from spectra through measured cameras, and read end to end."""

from functools import cache

import numpy as np
import pytest

from chartmaker.model.reading import LabReading
from chartmaker.model.settings import Viewing
from chartmaker.pictures.target_grid import Position, patch_outlines
from chartmaker.pictures.target_photo import MOST_RESIDUAL, read_skein, read_target
from chartmaker.shade.adaptation import adapted
from chartmaker.shade.difference import ciede2000
from chartmaker.shade.lab import lab_of_xyz
from chartmaker.shade.lots import PHOTO_DEVIATION
from chartmaker.shade.screen import SRGB_WHITE, XYZ_OF_RGB, decoded
from chartmaker.shade.target import PatchPlace, patch_spectra
from chartmaker.shade.weights import white_point
from tests.rendered_photo import CAMERAS, NM, Scene, take

VIEWING = Viewing()
OLD, NEW = "before-2014-11", "from-2014-11"
taken = cache(lambda **scene: take(Scene(**scene)))


def _box(skein):
    (left, top), (right, bottom) = skein
    return [(left, top), (right, top), (right, bottom), (left, bottom)]


def _target(photo, edition=OLD, corners=None):
    return read_target(photo.pixels, photo.corners if corners is None else corners, edition=edition, viewing=VIEWING)


def _corrected(photo):
    target = _target(photo)
    return np.array([read_skein(photo.pixels, _box(skein), target).lab for skein in photo.skeins])


def _uncorrected(photo):
    """Give CIELAB of the skeins where the photo is believed as it is: sRGB, adapted to the viewing."""
    boxes = [np.array(skein, dtype=int) for skein in photo.skeins]
    means = [photo.pixels[a[1] : b[1], a[0] : b[0]].reshape(-1, 3).mean(axis=0) for a, b in boxes]
    white = white_point(VIEWING)
    xyz = adapted(decoded(np.array(means) / 255) @ XYZ_OF_RGB.T, from_white=SRGB_WHITE, to_white=white)
    return lab_of_xyz(xyz, white=white)


@pytest.mark.parametrize("seed", [1, 2])
@pytest.mark.parametrize(("illuminant", "most"), [("D65", 3), ("A", 5), ("FL11", 5)])
def test_skeins_come_out_right_by_any_light_and_far_better_than_uncorrected(illuminant, most, seed):
    photo = taken(illuminant=illuminant, seed=seed)
    off = ciede2000(_corrected(photo), photo.lab).mean()
    off_uncorrected = ciede2000(_uncorrected(photo), photo.lab).mean()
    assert off <= most
    assert off_uncorrected > 2 * off


@pytest.mark.parametrize(("illuminant", "most"), [("D65", 3.5), ("A", 5), ("FL11", 5)])
def test_a_camera_of_quite_another_make_is_corrected_too(illuminant, most):
    photo = taken(illuminant=illuminant, camera=CAMERAS[1])
    off = ciede2000(_corrected(photo), photo.lab).mean()
    assert off <= most
    assert ciede2000(_uncorrected(photo), photo.lab).mean() > 4 * off


def test_the_spread_that_a_photo_is_given_is_what_rendered_photos_err_by():
    off = np.concatenate([_corrected(photo) - photo.lab for photo in map(_lit, ("D65", "A", "FL11"))])
    assert np.sqrt((off**2).mean(axis=0)) == pytest.approx(PHOTO_DEVIATION, rel=0.25)


def _lit(illuminant):
    return taken(illuminant=illuminant)


@pytest.mark.parametrize("fall", [(0.0, -0.35), (-0.35, 0.0), (0.25, -0.3)])
def test_light_that_falls_off_across_the_photo_is_evened_out(fall, monkeypatch):
    photo = taken(fall=fall, vignetting=0.0)
    evened = ciede2000(_corrected(photo), photo.lab).mean()
    assert evened < 2.2
    assert not _target(photo).fall.is_even
    monkeypatch.setattr("chartmaker.pictures.light_fall.EVENED_FROM", 9.0)
    assert ciede2000(_corrected(photo), photo.lab).mean() > evened + 0.7


def test_the_fall_found_is_the_one_that_was_rendered():
    photo = taken(fall=(-0.4, 0.0), vignetting=0.0)
    height, width = photo.pixels.shape[:2]
    assert _target(photo).fall.slope * (width, height) == pytest.approx((-0.4, 0.0), abs=0.1)


def test_in_even_light_and_with_vignetting_alone_nothing_is_evened_out():
    for scene in ({"vignetting": 0.0}, {}, {"illuminant": "A"}, {"illuminant": "FL11"}):
        assert _target(taken(**scene)).fall.is_even


def test_half_the_light_leaves_hue_and_chroma_of_a_skein():
    """Exposure scales every term of the root-polynomial alike (Finlayson et al. 2015, section III)."""
    photo = taken(noise=0.0)
    correction = _target(photo).correction
    light = np.array([[0.3, 0.2, 0.1], [0.5, 0.5, 0.6]])
    assert correction.xyz(light / 2) == pytest.approx(correction.xyz(light) / 2)


@pytest.mark.parametrize("turns", range(4))
@pytest.mark.parametrize("mirrored", [False, True])
def test_however_the_target_lies_it_is_found_and_told(turns, mirrored):
    photo = taken(turns=turns, mirrored=mirrored, number=2)
    found = _target(photo)
    assert found.mean < 2.5
    assert found.position.is_mirrored == mirrored
    upright = _target(taken(number=2))
    assert (found.position == upright.position) == (turns == 0 and not mirrored)
    # A photo that is turned back shows the same patches: the greys end on the side that was told.
    greys = patch_outlines(found.corners, found.position)[18:].mean(axis=(0, 1)) - found.corners.mean(axis=0)
    assert np.argmax([greys @ side for side in ([0, 1], [-1, 0], [0, -1], [1, 0])]) == found.position.turns


def test_corners_are_taken_in_any_order():
    photo = taken()
    rng = np.random.default_rng(3)
    wanted = _target(photo)
    for _ in range(6):
        found = _target(photo, corners=rng.permutation(photo.corners))
        assert found.mean == wanted.mean
        assert found.position == Position()


@pytest.mark.parametrize("gap", [0.0, 0.3])
def test_a_target_with_other_gaps_is_read_as_well(gap, monkeypatch):
    monkeypatch.setattr("tests.rendered_photo.GAP", gap)
    photo = take(Scene(number=2))
    assert _target(photo).mean < 2.5


@pytest.mark.parametrize("step", [(1, 0), (0, 1), (-1, 0), (0, -1)])
def test_corners_a_third_of_a_patch_off_do_no_harm_and_half_a_patch_off_are_refused(step):
    photo = taken()
    patch = np.linalg.norm(photo.corners[1] - photo.corners[0]) / 6.75
    exact, near, off = (_target(photo, corners=photo.corners + far * patch * np.array(step)) for far in (0, 0.33, 0.55))
    assert near.mean < exact.mean + 0.2
    assert off.refusal


def test_corners_set_wrong_are_refused_and_the_sentence_says_what_to_do():
    photo = taken()
    found = _target(photo, corners=photo.corners + np.array([60, 0]))
    assert found.mean > MOST_RESIDUAL
    assert "set the corners" in found.refusal
    assert found.worst_place.words in found.refusal
    assert "\n" not in found.refusal
    assert _target(photo).refusal == ""


@pytest.mark.parametrize(
    ("corners", "words"),
    [
        ([(0, 0), (100, 100), (200, 200), (300, 300)], "four-sided"),
        ([(10, 10), (300, 10), (60, 60), (10, 300)], "four-sided"),
        ([(-5, 10), (300, 10), (300, 200), (10, 200)], "outside"),
    ],
)
def test_corners_that_make_no_target_are_refused_in_a_sentence(corners, words):
    with pytest.raises(ValueError, match=words):
        _target(taken(), corners=np.array(corners, dtype=float))


def test_a_patch_that_glares_is_left_out_of_the_fit_and_named():
    photo = taken()
    pixels = photo.pixels.copy()
    outline = patch_outlines(_target(photo).corners, Position())[9]
    (left, top), (right, bottom) = outline.min(axis=0).astype(int), outline.max(axis=0).astype(int)
    pixels[top:bottom, left : (left + right) // 2] = 255
    found = read_target(pixels, photo.corners, edition=OLD, viewing=VIEWING)
    assert found.unused == (PatchPlace(1, 3),)
    assert found.clipped[9] > 0.3
    assert found.mean < 2.5


def test_one_overexposed_or_dark_throughout_is_refused():
    photo = taken()
    bright = np.clip(photo.pixels.astype(int) * 3, 0, 255).astype(np.uint8)
    with pytest.raises(ValueError, match="too bright"):
        read_target(bright, photo.corners, edition=OLD, viewing=VIEWING)
    with pytest.raises(ValueError, match="too dark"):
        read_target(photo.pixels // 60, photo.corners, edition=OLD, viewing=VIEWING)


def test_sixteen_bits_are_read_as_eight_are():
    photo = taken()
    fine = read_target(photo.pixels.astype(np.uint16) * 257, photo.corners, edition=OLD, viewing=VIEWING)
    assert fine.residual == pytest.approx(_target(photo).residual)


@pytest.mark.parametrize("true", [OLD, NEW])
def test_the_other_edition_is_named_where_it_fits_clearly_better(true):
    """A camera whose sensitivities are the observer's own leaves nothing but the edition to be wrong."""
    spectra = np.array([np.interp(NM, 380 + 10 * np.arange(36), each) for each in patch_spectra(true)])
    photo = take(Scene(number=1, target=spectra, camera="observer", noise=0.002, vignetting=0.0))
    assert {_target(photo, edition).likely_edition for edition in (OLD, NEW)} == {true}


def test_a_skein_tells_its_spread_and_what_is_lost_of_it():
    photo = taken()
    target = _target(photo)
    even = read_skein(photo.pixels, _box(photo.skeins[2]), target)
    (left, top), (right, bottom) = np.array(photo.skeins[2], dtype=int)
    pixels = photo.pixels.copy()
    pixels[top:bottom, left : (left + right) // 2] //= 2
    uneven = read_skein(pixels, _box(photo.skeins[2]), target)
    assert even.spread < 1
    assert uneven.spread > 5
    assert uneven.deviation[0] > 10 * even.deviation[0]
    pixels[top:bottom, left : left + (right - left) // 4] = 255
    assert read_skein(pixels, _box(photo.skeins[2]), target).clipped == pytest.approx(0.25, abs=0.05)


def test_a_skein_makes_a_reading_that_says_it_is_of_a_photo():
    photo = taken()
    found = read_skein(photo.pixels, _box(photo.skeins[0]), _target(photo))
    assert found.reading == LabReading(lab=tuple(np.round(found.lab, 2)), viewing=VIEWING, source="photo")
