"""What is said of a brim that folds over more than there is."""

import pytest

from chartmaker.appraisal import appraise
from chartmaker.checks.finding import Finding
from chartmaker.model.hat import Fold
from chartmaker.report.as_text import report_as_text
from tests.knit.test_depth import cap


def found(fold: Fold | None) -> list[Finding]:
    """Check a cap of 20 rounds of rib and 20 of body below its crown."""
    design = cap(brim=20, body=20, head_cm=54, fold=fold)
    return [finding for finding in appraise(design).findings if finding.check == "fold"]


@pytest.mark.parametrize("fold", [None, Fold("up", 10), Fold("in", 20), Fold("roll", 30)])
def test_rounds_that_lie_on_as_many_others_are_not_told(fold: Fold | None) -> None:
    assert found(fold) == []


@pytest.mark.parametrize(("way", "rounds", "left"), [("up", 21, 19), ("in", 39, 1), ("up", 40, 0)])
def test_a_fold_past_the_crown_is_told_with_the_most_that_may_fold(way: str, rounds: int, left: int) -> None:
    (finding,) = found(Fold(way, rounds))
    assert f"the {left} between" in finding.message
    assert finding.remedy == "fold 20 rounds or fewer"
    assert (finding.severity, finding.place.page) == ("warn", "hat")
    assert found(Fold(way, 20)) == []


def test_a_hat_of_which_nothing_is_left_above_the_fold_has_no_parts_to_list() -> None:
    told = report_as_text(appraise(cap(brim=20, body=20, head_cm=54, fold=Fold("up", 600))))
    assert "0 rounds;" in told
