"""What is said of a hat too short or too deep, and how gravely."""

import pytest

from chartmaker.appraisal import appraise
from chartmaker.checks.finding import Finding
from chartmaker.model.design import Design
from chartmaker.model.hat import Fold
from chartmaker.report.as_json import report_as_json
from chartmaker.report.as_text import report_as_text
from tests.knit.test_depth import GAUGE, cap, plain

HEAD = 54.0
"""A cap for it is 20.0 to 21.6 cm deep; 68 rounds at 34 to 10 cm are 20.0."""


def found(design: Design) -> list[Finding]:
    return [finding for finding in appraise(design).findings if finding.check == "depth"]


@pytest.mark.parametrize("body", [27, 30, 38])
def test_a_depth_within_the_two_rules_and_the_tolerance_says_nothing(body: int) -> None:
    assert found(cap(body=body, head_cm=HEAD)) == []


@pytest.mark.parametrize(
    ("body", "severity", "remedy"),
    [
        (25, "note", "add 8 rounds between brim and crown"),
        (18, "warn", "add 15 rounds between brim and crown"),
        (45, "note", "take 12 rounds out between brim and crown"),
        (60, "warn", "take 27 rounds out between brim and crown"),
    ],
)
def test_off_by_much_is_a_warning_sooner_where_it_is_short(body: int, severity: str, remedy: str) -> None:
    (finding,) = found(cap(body=body, head_cm=HEAD))
    assert (finding.severity, finding.place.page) == (severity, "hat")
    assert finding.remedy.startswith(remedy)
    assert "20.0 to 21.6 cm, within 1 cm" in finding.message


def test_a_hat_that_nothing_closes_is_not_judged() -> None:
    assert found(Design(bands=(plain("body", 5),), gauge=GAUGE)) == []


def test_a_stocking_cap_is_never_too_deep() -> None:
    assert found(cap(body=150, head_cm=HEAD, shape="stocking")) == []
    assert found(cap(body=150, head_cm=HEAD))


def test_the_report_tells_depth_and_worn_height_without_the_fold() -> None:
    flat, folded = (
        report_as_json(appraise(cap(brim=40, body=20, head_cm=HEAD, fold=fold)))["hat"]
        for fold in (None, Fold("up", 20))
    )
    assert flat["depth_cm"] - folded["depth_cm"] == pytest.approx(20 / 3.4, abs=1e-5)
    assert flat["worn_height_cm"] - folded["worn_height_cm"] == pytest.approx(20 / 3.4, abs=1e-5)
    assert flat["height_cm"] == folded["height_cm"] == flat["worn_height_cm"]
    assert folded["depth"]["folded_rounds"] == 20
    assert [(part["part"], part["rounds"]) for part in folded["depth"]["parts"]] == [
        ("brim", 20),
        ("body", 20),
        ("crown", 28),
    ]
    assert folded["depth"]["verdict"] == "fits"
    assert flat["depth"]["rounds_to_add"] < 0


def test_the_report_in_words_has_the_budget_and_the_rounds_to_take() -> None:
    text = report_as_text(appraise(cap(body=60, head_cm=HEAD)))
    assert "Depth 28.8 cm along the fabric, 98 rounds: brim 10 (2.9 cm), body 60 (17.6 cm), crown 28 (8.2 cm)" in text
    assert "asked for 20.0 to 21.6 cm" in text
    assert "too deep, take 27 rounds out" in text
