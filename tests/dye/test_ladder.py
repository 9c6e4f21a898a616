"""The ladder on invented loads of a known share, and the shades foretold from it."""

from dataclasses import replace

import numpy as np
import pytest

from chartmaker.appraisal import appraise
from chartmaker.dye.ladder import ASSUMED_SHARE, ladder_of, why_no_ladder
from chartmaker.dye.predicted import shade_in
from chartmaker.dye.rungs import answer_to, rungs_of
from chartmaker.model.design import Design
from chartmaker.model.edits import assign
from chartmaker.model.palette import Bath, Lot, Palette, Planned
from chartmaker.model.settings import Viewing
from chartmaker.report.as_json import report_as_json
from chartmaker.shade.lots import shade_of
from tests.builders import chart
from tests.dye.invented_dyes import lot_with, red_dye, shed

BATH = Bath(id="pot", dyestuff="madder", ratio=1.0)
PLANNED = Lot(id="to-come", name="to come", yarn="wool", planned=Planned("pot", 4))


def loads(share: float, numbers: tuple[int, ...], *, scatter: float = 0.0, seed: int = 1) -> list[Lot]:
    random = np.random.default_rng(seed)
    return [
        lot_with(
            f"load-{number}",
            red_dye() * share ** (number - 1) * np.exp(random.normal(0, scatter)),
            scatter=scatter,
            seed=seed + number,
            bath="pot",
            load=number,
        )
        for number in numbers
    ]


@pytest.mark.parametrize("share", [0.25, 0.47, 0.7])
@pytest.mark.parametrize("numbers", [(1, 2), (1, 2, 3), (2, 4)])
def test_a_known_share_is_given_back(share: float, numbers: tuple[int, ...]) -> None:
    ladder = ladder_of(shed(loads(share, numbers), [BATH]), BATH)
    assert ladder is not None
    assert ladder.share == pytest.approx(share, abs=1e-4)
    assert ladder.dye == pytest.approx(red_dye(), rel=1e-3, abs=1e-6)


def test_with_scatter_the_share_lies_within_its_interval_as_often_as_told() -> None:
    """A 90 % interval on 60 seeds: fewer than 48 hits would come by chance once in a hundred runs."""
    hits = 0
    for seed in range(60):
        ladder = ladder_of(shed(loads(0.5, (1, 2, 3), scatter=0.06, seed=10 * seed), [BATH]), BATH)
        assert ladder is not None
        hits += ladder.share_low <= 0.5 <= ladder.share_high
    assert hits >= 48


def test_one_load_alone_takes_the_share_for_granted_and_says_so() -> None:
    ladder = ladder_of(shed(loads(0.3, (1,)), [BATH]), BATH)
    assert ladder is not None
    assert (ladder.is_assumed, ladder.share) == (True, ASSUMED_SHARE)
    rungs = rungs_of(ladder, Viewing())
    assert [rung.basis for rung in rungs] == ["measured", "assumed", "assumed", "assumed"]
    widths = [rung.strength_high / rung.strength_low for rung in rungs]
    assert widths == sorted(widths)


def test_the_next_load_is_foretold_as_it_comes_out() -> None:
    palette = shed(loads(0.47, (1, 2, 3)), [BATH])
    foretold = shade_in(palette, PLANNED, Viewing())
    (real,) = loads(0.47, (4,))
    seen = shade_of(real, Viewing())
    assert foretold is not None
    assert seen is not None
    assert foretold.lab == pytest.approx(seen.lab, abs=0.05)
    assert (foretold.rests_on, foretold.readings) == ("predicted", 0)
    assert foretold.deviation[0] > 1


def test_what_is_missing_for_a_ladder_is_told() -> None:
    assert "has a spectrum yet" in why_no_ladder(shed([PLANNED], [BATH]), "pot")
    assert "recipe" in why_no_ladder(shed([PLANNED]), "pot")
    bare = Palette(baths=(BATH,), lots=tuple(loads(0.5, (1,))))
    assert "undyed yarn" in why_no_ladder(bare, "pot")
    assert why_no_ladder(shed(loads(0.5, (1,)), [BATH]), "pot") == ""


def test_the_target_of_a_known_load_and_ratio_is_found() -> None:
    ladder = ladder_of(shed(loads(0.5, (1, 2)), [BATH]), BATH)
    assert ladder is not None
    (third,) = loads(0.5, (3,))
    shade = shade_of(third, Viewing())
    assert shade is not None
    answer = answer_to(ladder, shade.lab, Viewing())
    assert answer.load == 3
    assert answer.ciede2000 < 0.1
    assert answer.factor == pytest.approx(0.25, rel=0.02)
    assert not answer.is_extrapolated
    strong = shade_of(lot_with("strong", 3 * red_dye(), scatter=0.0), Viewing())
    assert strong is not None
    answer = answer_to(ladder, strong.lab, Viewing())
    assert answer.factor == pytest.approx(3, rel=0.03)
    assert "extrapolation" in answer.text


def design_with(palette: Palette, **_: object) -> Design:
    bare = chart("\n".join(["A B | .x.x"] * 4), times=36)
    first = assign(bare, "A", "load-1", source=palette).applied_to(bare)
    return assign(first, "B", "to-come", source=palette).applied_to(first)


def test_a_planned_lot_stands_in_a_design_and_everything_says_predicted() -> None:
    design = design_with(shed([*loads(0.3, (1, 2)), PLANNED], [BATH]))
    appraisal = appraise(design)
    report = report_as_json(appraisal)
    assert [one["rests_on"] for one in report["letters"]] == ["spectrum", "predicted"]
    assert {one["rests_on"] for one in report["pairs"]} == {"predicted"}
    assert {one["rests_on"] for one in report["rounds"]} == {"predicted"}
    assert report["pairs"][0]["grade"]
    assert any("predicted" in finding.message for finding in appraisal.findings if finding.check == "shade-basis")


def test_a_planned_lot_brings_its_bath_s_dyed_loads_into_the_design() -> None:
    design = design_with(shed([*loads(0.3, (1, 2)), PLANNED], [BATH]))
    assert {one.id for one in design.palette.lots} == {"load-1", "load-2", "to-come"}


def test_a_planned_lot_that_cannot_be_foretold_says_what_is_missing() -> None:
    palette = shed([*loads(0.3, (1,)), replace(PLANNED, planned=Planned("other"))], [BATH, replace(BATH, id="other")])
    found = [finding for finding in appraise(design_with(palette)).findings if finding.check == "shade-basis"]
    assert any("no load of bath other has a spectrum yet" in finding.message for finding in found)


def test_a_shade_that_rests_on_an_assumed_share_says_so() -> None:
    for numbers, words in (((1,), "is assumed"), ((1, 2), "from 2 measured loads")):
        design = design_with(shed([*loads(0.3, numbers), PLANNED], [BATH]))
        told = [finding.message for finding in appraise(design).findings if finding.check == "shade-basis"]
        assert any(words in message for message in told)


def test_a_judgement_on_a_planned_lot_says_so() -> None:
    design = design_with(shed([*loads(0.9, (1, 2)), PLANNED], [BATH]))
    told = [finding.message for finding in appraise(design).findings if finding.check == "pair-contrast"]
    assert told
    assert all("predicted: B is not dyed yet" in message for message in told)
