"""Kubelka and Munk's relation, and spectra brought to common bands."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.model.reading import Spectrum
from chartmaker.shade.strength import (
    LEAST_REFLECTANCE,
    absorption_of,
    common_bands,
    on_bands,
    reflectance_of,
    sensitivity_of,
)
from chartmaker.shade.weights import Bands


def test_the_published_example_comes_out() -> None:
    """HunterLab Application Note 18-7 (2008): R 0.55 gives K/S 0.184."""
    assert float(absorption_of(0.55)) == pytest.approx(0.184, abs=0.0005)


@given(st.floats(LEAST_REFLECTANCE, 1.0))
def test_reflectance_comes_back_from_its_absorption(r: float) -> None:
    assert float(reflectance_of(absorption_of(r))) == pytest.approx(r, rel=1e-9, abs=1e-7)


def test_the_ends_are_guarded() -> None:
    assert np.all(np.isfinite(absorption_of([0.0, 1e-9, 1.0, 1.3])))
    assert absorption_of([1.0, 1.3]).tolist() == [0.0, 0.0]
    assert reflectance_of([-0.5, 0.0]).tolist() == [1.0, 1.0]
    assert 0 < float(reflectance_of(1e9)) < 1e-8


def test_sensitivity_is_the_slope_of_reflectance() -> None:
    """Against a difference quotient."""
    f = absorption_of(0.3)
    slope = (reflectance_of(f - 1e-6) - reflectance_of(f + 1e-6)) / 2e-6
    assert float(sensitivity_of(0.3)) == pytest.approx(float(slope), rel=1e-5)


def test_different_bands_meet_within_what_they_share() -> None:
    fine = Spectrum(start_nm=380, step_nm=10, reflectance=tuple(np.linspace(0.2, 0.9, 36).tolist()))
    coarse = Spectrum(start_nm=400, step_nm=20, reflectance=(0.5,) * 16)
    bands = common_bands([fine, coarse])
    assert bands == Bands(400, 20, 16)
    straight = np.interp(bands.wavelengths_nm, np.arange(380, 731, 10), fine.reflectance)
    assert on_bands([fine, coarse], bands)[0] == pytest.approx(straight)
    assert on_bands([fine, coarse], bands)[1].tolist() == [0.5] * 16
