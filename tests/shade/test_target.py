"""The 24-patch target: its table against colour-science, and its spectra against what is stated."""

import numpy as np
import pytest

from chartmaker.model.settings import Viewing
from chartmaker.shade.colorimetry import target_lab, target_spectra, write_target
from chartmaker.shade.difference import ciede2000
from chartmaker.shade.lab import lab_of_xyz
from chartmaker.shade.target import (
    EDITIONS,
    SPECTRA_BANDS,
    STATED_FOR,
    TARGET_TABLE,
    PatchPlace,
    measured_spectra,
    other_edition,
    patch_lab,
    patch_spectra,
    place_of,
    stated_lab,
)
from chartmaker.shade.weights import white_point, xyz_of_spectra

OLD, NEW = EDITIONS


@pytest.mark.parametrize("edition", EDITIONS)
def test_the_table_is_what_colour_science_keeps(edition, tmp_path):
    write_target(tmp_path / "again.json")
    assert (tmp_path / "again.json").read_text(encoding="utf-8") == TARGET_TABLE.read_text(encoding="utf-8")
    assert stated_lab(edition) == pytest.approx(target_lab(edition))
    assert measured_spectra() == pytest.approx(target_spectra(), abs=1e-5)


def test_mixing_up_the_editions_costs_what_the_makers_data_say():
    """Mean 0.85 and worst 1.95 CIEDE2000: computed from the maker's data in colour-science."""
    apart = ciede2000(stated_lab(OLD), stated_lab(NEW))
    assert (apart.mean(), apart.max()) == pytest.approx((0.85, 1.95), abs=0.005)


@pytest.mark.parametrize("edition", EDITIONS)
def test_the_spectra_come_to_what_is_stated_exactly(edition):
    assert patch_lab(edition, STATED_FOR) == pytest.approx(stated_lab(edition), abs=1e-6)
    assert patch_spectra(edition).min() > 0
    assert patch_spectra(edition).max() < 1


def test_what_was_measured_of_the_older_edition_is_near_what_is_stated_so_little_is_changed():
    measured = xyz_of_spectra(measured_spectra(), bands=SPECTRA_BANDS, viewing=STATED_FOR)
    apart = ciede2000(lab_of_xyz(measured, white=white_point(STATED_FOR)), stated_lab(OLD))
    assert apart.mean() < 0.6
    assert np.abs(patch_spectra(OLD) / measured_spectra() - 1).max() < 0.06
    assert np.abs(patch_spectra(NEW) / measured_spectra() - 1).max() < 0.15


def test_greys_stay_grey_under_any_viewing():
    for viewing in (Viewing(), Viewing(illuminant="A", observer="2")):
        greys = patch_lab(OLD, viewing)[18:]
        assert np.abs(greys[:, 1:]).max() < 3
        assert (np.diff(greys[:, 0]) < -10).all()


def test_a_place_is_counted_from_the_upper_left_and_told_so():
    assert place_of(0) == PatchPlace(0, 0)
    assert place_of(8).words == "patch 3 of row 2"
    assert place_of(23).words == "patch 6 of row 4"


def test_each_edition_is_the_others_other():
    assert [other_edition(edition) for edition in (OLD, NEW)] == [NEW, OLD]
    with pytest.raises(ValueError, match="edition"):
        stated_lab("of next year")
