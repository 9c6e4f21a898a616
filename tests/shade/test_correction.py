"""The root-polynomial correction: its terms and its fit against colour-science, its metric against CIEDE2000."""

import warnings

import numpy as np
import pytest

from chartmaker.model.settings import Viewing
from chartmaker.shade import correction as module
from chartmaker.shade.correction import fitted, left_out_residuals, residuals, root_terms
from chartmaker.shade.difference import ciede2000
from chartmaker.shade.lab import lab_of_xyz
from chartmaker.shade.target import patch_xyz
from chartmaker.shade.weights import white_point
from tests.rendered_photo import CAMERAS, own_matrix, signals, target_spectra

with warnings.catch_warnings(), np.printoptions():
    warnings.simplefilter("ignore")
    from colour.characterisation import matrix_colour_correction_Finlayson2015, polynomial_expansion_Finlayson2015

WHITE = white_point(Viewing())
XYZ = patch_xyz("before-2014-11", Viewing())
MIX = np.array([[0.9, 0.2, 0.1], [0.1, 0.8, 0.2], [0.0, 0.1, 0.7]]) / 100


@pytest.fixture
def rgb():
    """Give what an invented camera makes of the patches: a mixture, a little bent so that no matrix undoes it."""
    light = XYZ @ MIX.T
    return light + 0.03 * np.random.default_rng(4).random(light.shape) * light


def test_the_terms_are_those_of_the_second_library():
    rgb = np.random.default_rng(1).random((20, 3))
    assert root_terms(rgb) == pytest.approx(polynomial_expansion_Finlayson2015(rgb, 2, root_polynomial_expansion=True))


def test_with_all_steps_weighing_alike_the_fit_is_that_of_the_second_library(rgb, monkeypatch):
    monkeypatch.setattr(module, "_weights", lambda xyz, _white: np.broadcast_to(np.eye(3), (len(xyz), 3, 3)))
    monkeypatch.setattr(module, "EASE", 0.0)
    theirs = matrix_colour_correction_Finlayson2015(rgb, XYZ, 2, root_polynomial_expansion=True)
    assert fitted(rgb, XYZ, white=WHITE).matrix == pytest.approx(theirs.T, rel=1e-6, abs=1e-6)


@pytest.mark.parametrize("illuminant", ["D65", "A", "FL11"])
@pytest.mark.parametrize("camera", CAMERAS)
def test_weighing_by_what_is_seen_leaves_less_than_plain_least_squares_of_measured_cameras(camera, illuminant):
    rgb = np.maximum(signals(target_spectra(), camera, illuminant) @ own_matrix(camera), 0)
    plain = matrix_colour_correction_Finlayson2015(rgb, XYZ, 2, root_polynomial_expansion=True)
    off = ciede2000(lab_of_xyz(root_terms(rgb) @ plain.T, white=WHITE), lab_of_xyz(XYZ, white=WHITE))
    assert residuals(fitted(rgb, XYZ, white=WHITE), rgb, XYZ).mean() < off.mean()


def test_a_camera_that_is_a_root_polynomial_itself_is_undone():
    rgb = np.random.default_rng(2).uniform(0.05, 0.9, (24, 3))
    matrix = 100 * np.random.default_rng(3).uniform(0.05, 0.3, (6, 3))
    found = fitted(rgb, root_terms(rgb) @ matrix, white=WHITE)
    assert residuals(found, rgb, root_terms(rgb) @ matrix).max() < 0.2


def test_the_metric_is_ciede2000_of_small_steps():
    steps = 0.02 * np.random.default_rng(5).standard_normal((24, 3))
    seen = ciede2000(lab_of_xyz(XYZ, white=WHITE), lab_of_xyz(XYZ + steps, white=WHITE))
    reckoned = np.linalg.norm(np.einsum("nij,nj->ni", module._weights(XYZ, WHITE), steps), axis=1)
    assert reckoned == pytest.approx(seen, rel=0.08)


def test_a_patch_that_is_left_out_fits_worse_than_one_that_is_fitted(rgb):
    left_out = left_out_residuals(rgb, XYZ, white=WHITE)
    assert left_out.mean() > residuals(fitted(rgb, XYZ, white=WHITE), rgb, XYZ).mean()
    others = np.arange(24) != 5
    alone = fitted(rgb[others], XYZ[others], white=WHITE)
    assert left_out[5] == pytest.approx(residuals(alone, rgb[5:6], XYZ[5:6])[0])


def test_too_few_patches_are_refused(rgb):
    with pytest.raises(ValueError, match="too few"):
        fitted(rgb[:13], XYZ[:13], white=WHITE)
