import json
import subprocess
import sys

import numpy as np
import pytest

from chartmaker.model.settings import Viewing
from chartmaker.shade import colorimetry
from chartmaker.shade.colorimetry import colour, weighting_factors
from chartmaker.shade.difference import ciede2000
from chartmaker.shade.lab import lab_of_xyz
from chartmaker.shade.target import TARGET_TABLE
from chartmaker.shade.weights import (
    KEPT_BANDS,
    TABLES,
    VIEWINGS,
    Bands,
    table_path,
    weights,
    white_point,
    xyz_of_spectra,
)
from tests.shade.second_library import published_lab_of_target, xyz_by_colour_science

KEPT = 1e-9
"""How far a kept table may lie from what colour-science gives today."""
D50_2 = Viewing(illuminant="D50", observer="2")


def ids(value):
    return f"{value.start_nm:g}-{value.end_nm:g}-{value.step_nm:g}" if isinstance(value, Bands) else None


def target_spectra(name):
    """Give the bands and the reflectance (24 × bands) of a measured 24-patch target that colour-science carries."""
    patches = list(colour.SDS_COLOURCHECKERS[name].values())
    shape = patches[0].shape
    bands = Bands(shape.start, shape.interval, len(patches[0].values))
    return bands, np.array([patch.values for patch in patches])


@pytest.mark.parametrize("bands", KEPT_BANDS, ids=ids)
def test_a_kept_table_is_what_colour_science_gives_today(bands):
    for viewing in VIEWINGS:
        assert weights(bands, viewing) == pytest.approx(weighting_factors(bands, viewing), abs=KEPT)


@pytest.mark.parametrize("bands", KEPT_BANDS, ids=ids)
def test_a_kept_table_says_where_it_comes_from_and_which_bands_it_is_for(bands):
    table = json.loads(table_path(bands, TABLES).read_text(encoding="utf-8"))
    assert "colour-science" in table["origin"]
    assert Bands(table["start_nm"], table["step_nm"], table["number"]) == bands


def test_the_kept_white_points_are_what_colour_science_gives_today():
    for viewing in VIEWINGS:
        assert white_point(viewing) == pytest.approx(colorimetry.white_point_of(viewing), abs=KEPT)


def test_writing_the_tables_gives_the_kept_ones(tmp_path):
    colorimetry.write_tables(tmp_path)
    colorimetry.write_target(tmp_path / TARGET_TABLE.name)
    written = sorted(path.name for path in tmp_path.iterdir())
    assert written == sorted(path.name for path in TABLES.iterdir())
    for name in written:
        made, kept = (json.loads((folder / name).read_text(encoding="utf-8")) for folder in (tmp_path, TABLES))
        for key, rows in kept["rows"].items():
            assert np.array(made["rows"][key]) == pytest.approx(np.array(rows), abs=KEPT)


@pytest.mark.parametrize("bands", [*KEPT_BANDS, Bands(400, 1, 301), Bands(410, 10, 28), Bands(350, 10, 41)], ids=ids)
def test_the_factors_integrate_spectra_as_colour_science_does_one_by_one(bands):
    # The factors come from unit spectra: that they serve any spectrum is what being linear means.
    rng = np.random.default_rng(bands.number)
    within = (bands.wavelengths_nm >= 360) & (bands.wavelengths_nm <= 780)
    for viewing in VIEWINGS:
        reflectance = rng.uniform(0, 1, bands.number)
        direct = xyz_by_colour_science(
            reflectance[within], bands.wavelengths_nm[within], viewing, mi_5nm_omission_method=False
        )
        assert xyz_of_spectra(reflectance, bands=bands, viewing=viewing) == pytest.approx(direct, abs=1e-9)


@pytest.mark.parametrize(
    "bands", [*KEPT_BANDS, Bands(405, 10, 30), Bands(402.5, 2.5, 121), Bands(400, 3, 101)], ids=ids
)
def test_a_perfect_white_is_white_in_any_bands(bands):
    for viewing in VIEWINGS:
        xyz = xyz_of_spectra(np.ones(bands.number), bands=bands, viewing=viewing)
        assert xyz == pytest.approx(white_point(viewing), abs=1e-9)
        assert xyz[1] == pytest.approx(100, abs=1e-9)


@pytest.mark.parametrize(
    ("illuminant", "observer", "xyz"),
    [
        ("D65", "2", (95.04, 100, 108.88)),
        ("D65", "10", (94.81, 100, 107.32)),
        ("A", "2", (109.85, 100, 35.58)),
        ("A", "10", (111.14, 100, 35.20)),
    ],
)
def test_white_points_are_those_of_cie_15(illuminant, observer, xyz):
    # CIE 15 prints sums at 5 nm; ours are at 1 nm, as the factors of ASTM E308 are.
    assert white_point(Viewing(illuminant=illuminant, observer=observer)) == pytest.approx(xyz, abs=0.02)


@pytest.mark.parametrize(("illuminant", "xy"), [("LED-B3", (0.3756, 0.3723)), ("FL11", (0.3805, 0.3769))])
def test_chromaticities_of_the_lamps_are_those_of_cie_15(illuminant, xy):
    # CIE 15:2018, 2° observer, from sums at 5 nm; narrow bands move by 0.0003 between 5 nm and 1 nm.
    white = white_point(Viewing(illuminant=illuminant, observer="2"))
    assert white[:2] / white.sum() == pytest.approx(xy, abs=0.0003)


def test_spectra_of_the_24_patch_target_give_its_published_lab():
    # The spectra and the CIELAB that the same measurers published of the same 30 charts, under D50 and 2°.
    bands, spectra = target_spectra("BabelColor Average")
    lab = lab_of_xyz(xyz_of_spectra(spectra, bands=bands, viewing=D50_2), white=white_point(D50_2))
    distances = ciede2000(lab, published_lab_of_target("BabelColor Average"))
    assert distances.mean() < 0.05
    assert distances.max() < 0.18


def test_spectra_of_old_charts_are_nearer_to_the_maker_s_old_lab_than_to_the_new():
    # Those charts are from before November 2014; the maker's figures are of other charts, so they are near, not equal.
    bands, spectra = target_spectra("BabelColor Average")
    lab = lab_of_xyz(xyz_of_spectra(spectra, bands=bands, viewing=D50_2), white=white_point(D50_2))
    before = ciede2000(lab, published_lab_of_target("ColorChecker24 - Before November 2014"))
    after = ciede2000(lab, published_lab_of_target("ColorChecker24 - After November 2014"))
    assert before.mean() < 0.5
    assert before.max() < 1.2
    assert after.mean() > 1.5 * before.mean()


@pytest.mark.parametrize("viewing", VIEWINGS)
def test_ten_and_twenty_nanometres_tell_nearly_the_same_as_five(viewing):
    bands, spectra = target_spectra("ColorChecker N Ohta")
    assert bands == Bands(380, 5, 81)
    fine, ten, twenty = (
        lab_of_xyz(xyz_of_spectra(spectra[:, ::every], bands=other, viewing=viewing), white=white_point(viewing))
        for every, other in ((1, bands), (2, Bands(380, 10, 41)), (4, Bands(380, 20, 21)))
    )
    assert ciede2000(fine, ten).max() < 0.1
    # Three narrow lines make up most of FL11's light; 20 nm is coarse for them.
    assert ciede2000(fine, twenty).max() < (0.7 if viewing.illuminant == "FL11" else 0.15)


@pytest.mark.parametrize("viewing", VIEWINGS)
def test_at_five_nanometres_the_factors_tell_nearly_the_same_as_sums_at_five(viewing):
    # The other way that ASTM E308 leaves for 5 nm; each is taken against its own white.
    bands, spectra = target_spectra("ColorChecker N Ohta")
    ours = lab_of_xyz(xyz_of_spectra(spectra, bands=bands, viewing=viewing), white=white_point(viewing))
    white, *others = (
        xyz_by_colour_science(row, bands.wavelengths_nm, viewing) for row in (np.ones(bands.number), *spectra)
    )
    assert ciede2000(ours, lab_of_xyz(others, white=white)).max() < 0.15


def test_bands_off_the_practice_s_grid_are_brought_to_one_nanometre():
    off_grid, on_grid = Bands(405, 10, 30), Bands(400, 1, 301)
    viewing = Viewing()
    smooth = 0.3 + 0.2 * np.sin(off_grid.wavelengths_nm / 40)
    finer = 0.3 + 0.2 * np.sin(np.clip(on_grid.wavelengths_nm, 405, 695) / 40)
    assert xyz_of_spectra(smooth, bands=off_grid, viewing=viewing) == pytest.approx(
        xyz_of_spectra(finer, bands=on_grid, viewing=viewing), abs=0.001
    )


def test_bands_outside_the_practice_s_range_weigh_nothing():
    factors = weights(Bands(300, 10, 61), Viewing())
    assert not factors[:6].any()
    assert not factors[49:].any()
    assert factors[6:49] == pytest.approx(weights(Bands(360, 10, 43), Viewing()), abs=KEPT)


def test_too_few_bands_within_the_range_are_refused():
    with pytest.raises(ValueError, match=r"5 bands of .* lie within 360-780 nm; 8 are needed"):
        weighting_factors(Bands(740, 10, 20), Viewing())


def test_factors_cannot_be_changed_by_who_holds_them():
    for array in (weights(KEPT_BANDS[0], Viewing()), white_point(Viewing())):
        with pytest.raises(ValueError, match="read-only"):
            array[0] = 1


def test_a_stack_of_spectra_gives_what_each_gives_alone():
    stack = np.random.default_rng(7).uniform(0, 1, (2, 5, 31))
    xyz = xyz_of_spectra(stack, bands=KEPT_BANDS[0], viewing=Viewing())
    assert xyz.shape == (2, 5, 3)
    assert xyz[1, 3] == pytest.approx(xyz_of_spectra(stack[1, 3], bands=KEPT_BANDS[0], viewing=Viewing()), rel=1e-12)


def run_python(text):
    return subprocess.run([sys.executable, "-W", "error", "-c", text], capture_output=True, text=True, check=False)


def test_shades_of_the_usual_bands_need_neither_colour_science_nor_scipy():
    done = run_python(
        "import sys\n"
        "from chartmaker.model.palette import Lot\n"
        "from chartmaker.model.reading import ScreenReading, Spectrum\n"
        "from chartmaker.model.settings import Viewing\n"
        "from chartmaker.shade import least_change, lots, screen, spread\n"
        "spectrum = Spectrum(start_nm=400, step_nm=10, reflectance=(0.2,) * 31)\n"
        "lot = Lot(id='a', name='a', readings=(spectrum, ScreenReading(hex='#808080')))\n"
        "print(round(lots.shade_of(lot, Viewing()).value))\n"
        "print(sorted({'colour', 'scipy', 'matplotlib', 'skimage', 'PIL'} & set(sys.modules)))\n"
    )
    assert done.stdout.splitlines() == ["53", "[]"], done.stderr


def test_colour_science_comes_in_for_other_bands_without_a_word_and_without_a_trace_in_the_printing():
    done = run_python(
        "import sys\n"
        "import numpy\n"
        "before = numpy.get_printoptions()\n"
        "from chartmaker.model.settings import Viewing\n"
        "from chartmaker.shade.weights import Bands, weights\n"
        "print(weights(Bands(400, 25 / 3, 37), Viewing()).shape, 'colour' in sys.modules)\n"
        "print(numpy.get_printoptions() == before)\n"
    )
    assert (done.stdout.splitlines(), done.stderr) == (["(37, 3) True", "True"], "")
