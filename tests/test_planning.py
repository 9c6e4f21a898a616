"""Several designs planned together, and the command that does it."""

import json
import subprocess
import sys
from dataclasses import replace

import pytest
from hypothesis import HealthCheck, given, settings

from chartmaker.appraisal import appraise
from chartmaker.files.design_writing import save_design
from chartmaker.model.palette import Bath
from chartmaker.planning import plan_for
from chartmaker.report.baths_as_json import baths_as_json
from chartmaker.report.baths_as_text import baths_as_text
from tests.builders import chart, lot
from tests.strategies import designs

WELD = Bath(id="weld", dyestuff="weld", ratio=1.0)


def hat(on_hand_g: float = 10.0, title: str = "Cap"):
    lots = {
        "A": lot("oat", (90, 0, 0), on_hand_g=500.0),
        "B": lot("weld-1", (70, 0, 60), bath="weld", on_hand_g=on_hand_g),
    }
    return chart("A B | x...\n" * 40, times=36, lots=lots, baths=[WELD], title=title)


def test_one_design_is_planned_as_its_report_has_it():
    appraisal = appraise(hat())
    assert plan_for([appraisal]).baths == appraisal.baths
    assert len(appraisal.baths) == 1


def test_yarn_on_hand_is_counted_once_for_two_designs():
    first, second = appraise(hat()), appraise(hat(title="Tam"))
    need = first.letter("B").requirement
    assert need.planned_g > 10
    (both,) = plan_for([first, second]).needs
    assert both.planned_g == pytest.approx(2 * need.planned_g)
    assert both.short_g == pytest.approx(2 * need.planned_g - 10)
    assert both.designs == ("Cap", "Tam")


def test_where_copies_disagree_the_smaller_weight_counts():
    (need,) = plan_for([appraise(hat(10.0)), appraise(hat(4.0))]).needs
    assert need.on_hand_g == 4.0


def test_no_design_needs_nothing():
    plan = plan_for([])
    assert (plan.needs, plan.cards, plan.shopping) == ((), (), ())
    assert baths_as_text(plan) == "Nothing is short: no bath is needed."


def test_the_json_keeps_the_names_of_the_reports_baths():
    plan = plan_for([appraise(hat())])
    data = baths_as_json(plan)
    (bath,) = data["baths"]
    assert {"bath", "dyestuff", "loads", "fibre_g", "dyestuff_g", "mordants", "assists", "water_l"} <= set(bath)
    (load,) = bath["loads"]
    out = load["fibre_g"] - load["losses_g"] - load["sample_g"]
    assert out == pytest.approx(load["short_g"] + load["to_stock_g"], abs=1e-5)
    json.dumps(data, allow_nan=False)


@settings(max_examples=40, suppress_health_check=[HealthCheck.too_slow], deadline=None)
@given(designs())
def test_any_design_is_planned_and_told(design):
    plan = plan_for([appraise(design)])
    json.dumps(baths_as_json(plan), allow_nan=False)
    assert baths_as_text(plan)
    dyed = {lot for bath in plan.baths for lot in bath.lots}
    assert dyed | {need.lot for need in plan.without_bath} == {need.lot for need in plan.needs}
    for card in plan.cards:
        shared = [each for each in plan.mordantings if card.plan.bath.id in dict(each.baths)]
        assert all(dict(each.baths)[card.plan.bath.id] == pytest.approx(card.plan.fibre_g) for each in shared)


def test_the_command_plans_several_designs_together(tmp_path):
    paths = []
    for name in ("cap", "tam"):
        paths.append(tmp_path / f"{name}.hat.toml")
        save_design(replace(hat(), title=name), paths[-1])
    run = [sys.executable, "-m", "chartmaker", "baths", *map(str, paths)]
    data = json.loads(subprocess.run([*run, "--json"], capture_output=True, text=True, check=True).stdout)
    assert data["format"] == "chartmaker-baths"
    assert data["needs"][0]["designs"] == ["cap", "tam"]
    text = subprocess.run(run, capture_output=True, text=True, check=True).stdout
    assert "Bath weld" in text
    assert "safety data sheet" in text
