"""Sheets in inches, yards and ounces: the same numbers, exactly converted, and no metric length or weight is left."""

import io
from pathlib import Path

import pypdf
import pytest

from chartmaker.appraisal import appraise
from chartmaker.files.design_reading import read_design
from chartmaker.files.palette_reading import read_palette
from chartmaker.model.units import GRAMS_PER_OUNCE, IMPERIAL, METRES_PER_YARD
from chartmaker.sheets.job import PrintJob
from chartmaker.sheets.print_sheets import print_sheets
from tests.metric_left import metric_amounts

ROOT = Path(__file__).parent.parent.parent
FOR_THE_NEEDLES = ("cover", "key", "rounds", "yarn", "contrast")


@pytest.fixture(scope="module", params=["lockside-cap", "towpath-tam"])
def appraisal(request):
    return appraised(request.param)


def appraised(name):
    design = read_design(ROOT / "examples" / f"{name}.hat.toml")
    return appraise(design, read_palette(ROOT / "palettes" / "allotment.palette.toml"))


def printed(appraisal, sheet, units=IMPERIAL):
    pdf = print_sheets(appraisal, PrintJob(sheets=(sheet,), units=units))
    pages = pypdf.PdfReader(io.BytesIO(pdf)).pages
    return " ".join(" ".join(page.extract_text() for page in pages).split())


@pytest.mark.parametrize("sheet", FOR_THE_NEEDLES)
def test_a_sheet_in_inches_leaves_no_metric_measure(appraisal, sheet):
    text = printed(appraisal, sheet)
    assert metric_amounts(text) == []


def test_yarn_is_told_in_yards_and_ounces(appraisal):
    text = printed(appraisal, "yarn")
    for letter in appraisal.letters:
        need = letter.requirement
        yards = [part / METRES_PER_YARD for part in (need.metres.low, need.metres.likely, need.metres.high)]
        ounces = [part / GRAMS_PER_OUNCE for part in (need.grams.low, need.grams.likely, need.grams.high)]
        weights = (*ounces, need.planned_g / GRAMS_PER_OUNCE)
        told = [*(f"{part:.1f}" for part in yards), *(f"{part:.2f}" for part in weights)]
        assert " ".join(told) in text
    assert "Where it goes, likely yards" in text


def test_fibre_for_the_pot_has_its_ounces_beside_its_grams():
    """What is dissolved stays in grams alone: it is a share of the fibre's weight."""
    appraisal = appraised("lockside-cap")
    text = printed(appraisal, "baths")
    loads = [load for plan in appraisal.baths for load in plan.loads]
    assert loads
    for load in loads:
        assert f"{load.fibre_g / GRAMS_PER_OUNCE:.2f} oz" in text
        assert f"{load.fibre_g:.1f} g" in text
