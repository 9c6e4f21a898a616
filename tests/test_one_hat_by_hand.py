"""One hat of one letter and one bath, from stitches to the dye pot, by arithmetic that calls nothing of the program.

Constants are those of the published sources; what is common practice without a source says so.
"""

import json
import math

import pytest

from chartmaker.cli import main
from chartmaker.files.design_writing import save_design
from chartmaker.model.gauge import Gauge
from chartmaker.model.palette import Assist, Bath, Mordant, Planned, Yarn
from chartmaker.model.settings import Allowances
from tests.builders import chart, lot

STITCHES_ROUND, ROUNDS = 100, 40
STITCHES_PER_CM, ROUNDS_PER_CM = 2.0, 2.5
METRES_IN_100G = 250.0
KS_DRY, KS_WET, KS_FULL = 19.0, 21.6, 23.1
"""Munden 1959; fully relaxed from the data of GATE TF 2015, question 54 (5.5 × 4.2)."""


@pytest.fixture(scope="module")
def told(tmp_path_factory):
    """Give what `report --json` and `baths --json` say of the hat, as a script would read it."""
    bath = Bath(
        id="weld-pot",
        dyestuff="weld",
        ratio=2.0,
        mordants=(Mordant("alum", 10.0), Mordant("cream of tartar", 5.0)),
        assists=(Assist("chalk", 1.5),),
        liquor_l_per_100g=5.0,
    )
    coming = lot("coming", yarn="wool", planned=Planned("weld-pot", 1), on_hand_g=20.0)
    hat = chart(
        "\n".join(["A | ....."] * ROUNDS),
        times=STITCHES_ROUND // 5,
        lots={"A": coming},
        baths=(bath,),
        yarns=(Yarn(id="wool", name="two-ply", metres_per_100g=METRES_IN_100G),),
        gauge=Gauge(stitches_per_10cm=10 * STITCHES_PER_CM, rounds_per_10cm=10 * ROUNDS_PER_CM),
        allowances=Allowances(tail_cm=15.0, reserve_percent=10.0),
    )
    path = tmp_path_factory.mktemp("by hand") / "one.hat.toml"
    save_design(hat, path)
    return path


def said(capsys, *arguments):
    main([*arguments, "--json"])
    return json.loads(capsys.readouterr().out)


def stitch_metres(ks, more=0.0):
    """Give the yarn in all stitches: l = √(Ks/S), with S counted half a stitch and half a round more or less."""
    density = (10 * STITCHES_PER_CM + more) * (10 * ROUNDS_PER_CM + more) / 100
    return STITCHES_ROUND * ROUNDS * math.sqrt(ks / density) / 100


def edge_metres(factor):
    """Long-tail cast-on: three widths and a tenth, and the loops on the needle, so much more or less (no source).

    Then two tails of 15 cm, and the yarn drawn twice round through the top (no source).
    """
    width_cm = STITCHES_ROUND / STITCHES_PER_CM
    loops_cm = STITCHES_ROUND * math.sqrt(KS_WET / (STITCHES_PER_CM * ROUNDS_PER_CM))
    return (factor * (3 * width_cm * 1.1 + loops_cm) + 2 * 15 + 2 * width_cm) / 100


def planned_grams():
    return 1.10 * (stitch_metres(KS_FULL, -0.5) + edge_metres(1.15)) * 100 / METRES_IN_100G


def test_metres_and_grams(told, capsys):
    (letter,) = said(capsys, "report", str(told))["letters"]
    ends = {
        "low": stitch_metres(KS_DRY, 0.5) + edge_metres(0.85),
        "likely": stitch_metres(KS_WET) + edge_metres(1.0),
        "high": stitch_metres(KS_FULL, -0.5) + edge_metres(1.15),
    }
    assert letter["stitches"] == 4000
    assert letter["float_metres"] == 0
    for end, metres in ends.items():
        assert letter["metres"][end] == pytest.approx(metres, abs=1e-3)
        assert letter["grams"][end] == pytest.approx(metres * 100 / METRES_IN_100G, abs=1e-3)
    assert letter["planned_grams"] == pytest.approx(planned_grams(), abs=1e-3)
    assert letter["short_g"] == pytest.approx(planned_grams() - 20.0, abs=1e-3)


def test_the_stitches_weigh_what_the_areal_density_says(told, capsys):
    """g/m² = Ks · tex / l[mm] (Texcoms Textile Technical Handbook 2023, p. 147; derived): 50 × 16 cm of cloth."""
    (letter,) = said(capsys, "report", str(told))["letters"]
    tex = 100_000 / METRES_IN_100G
    loop_mm = 10 * math.sqrt(KS_WET / 5.0)
    assert letter["stitch_metres"] * tex / 1000 == pytest.approx(0.50 * 0.16 * KS_WET * tex / loop_mm, abs=1e-3)


def test_fibre_skeins_dyestuff_mordants_and_water(told, capsys):
    short = planned_grams() - 20.0
    # A sample of 2 g, 3 % for scouring, 2 % for handling (no source), then whole skeins of 25 g.
    fibre = 25 * math.ceil((short + 2) / 0.97 / 0.98 / 25)
    (bath,) = said(capsys, "baths", str(told))["baths"]
    (load,) = bath["loads"]
    assert (load["fibre_g"], load["skeins"]) == (fibre, fibre / 25)
    assert load["short_g"] == pytest.approx(short, abs=1e-3)
    assert load["to_stock_g"] == pytest.approx(fibre * 0.97 * 0.98 - 2 - short, abs=1e-3)
    assert bath["dyestuff_g"] == pytest.approx(2.0 * fibre)
    assert {each["name"]: each["grams"] for each in bath["mordants"]} == pytest.approx(
        {"alum": 0.10 * fibre, "cream of tartar": 0.05 * fibre}
    )
    assert [(each["name"], each["grams"]) for each in bath["assists"]] == [("chalk", pytest.approx(0.015 * fibre))]
    assert bath["water_l"] == pytest.approx(5.0 * fibre / 100)
    assert said(capsys, "report", str(told))["baths"][0]["dyestuff_g"] == bath["dyestuff_g"]
