"""The appraisal as a whole: one call, everything in it, and nothing that breaks it."""

import pytest
from hypothesis import given

from chartmaker.appraisal import appraise
from chartmaker.model.design import Design
from chartmaker.report.as_json import report_as_json
from chartmaker.report.as_text import report_as_text
from tests.builders import chart, lot
from tests.strategies import designs

CROWN = "A B | .x  | ^.\nA B | .x.x | ....\nA | .... | .><.\nA B | .xx.x. | ......"


def test_everything_is_in_one_value() -> None:
    lots = {"A": (80.0, 0.0, 10.0), "B": (30.0, 10.0, 10.0)}
    appraisal = appraise(chart("A B | xx..\nA | ....", CROWN, times=[36, 24], lots=lots))
    assert appraisal.cast_on_stitches == 144
    assert appraisal.circumference_cm == pytest.approx(144 / 2.8)
    assert [line.stitches for line in appraisal.rounds] == [144, 144, 144, 96, 96, 48]
    assert appraisal.letter("A").shade is appraisal.shade_of("A")
    assert appraisal.loop.source == "gauge"


def test_a_letter_that_is_not_in_use_is_not_known() -> None:
    appraisal = appraise(chart("A | ...."))
    assert appraisal.shade_of("Z") is None
    with pytest.raises(KeyError):
        appraisal.letter("Z")


def test_the_colourway_in_use_is_the_one_appraised() -> None:
    design = chart("A | ....", lots={"A": lot("first-lot", (80, 0, 0))})
    assert appraise(design.using("first")).letter("A").shade.lab == (80, 0, 0)


@given(designs())
def test_no_design_however_unfinished_breaks_the_appraisal_or_its_report(design: Design) -> None:
    appraisal = appraise(design)
    report = report_as_json(appraisal)
    stitches = sum(letter["stitches"] for letter in report["letters"])
    assert stitches == sum(line["stitches"] for line in report["rounds"])
    assert report["hat"]["rounds"] == len(report["rounds"])
    assert design.title in report_as_text(appraisal)


@given(designs())
def test_the_same_design_is_appraised_the_same(design: Design) -> None:
    assert report_as_json(appraise(design)) == report_as_json(appraise(design))
