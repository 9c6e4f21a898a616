"""Yarn shared out over bands and rounds: nothing is lost and nothing counted twice."""

import pytest
from hypothesis import given, settings

from chartmaker.knit.floats import find_floats
from chartmaker.knit.interval import NOTHING
from chartmaker.knit.layout import lay_out
from chartmaker.knit.loop import loop_length
from chartmaker.knit.yarn import needs_of
from chartmaker.knit.yarn_by_band import PieceYarn, yarn_by_band, yarn_by_round
from chartmaker.model.design import Design
from chartmaker.model.gauge import Swatch
from chartmaker.model.settings import Allowances
from tests.builders import chart
from tests.strategies import designs


def pieces(design: Design, share=yarn_by_band) -> tuple[PieceYarn, ...]:
    fabric = lay_out(design)
    return share(design, fabric, find_floats(fabric), loop_length(design))


def test_each_band_takes_its_own_stitches_and_floats() -> None:
    design = chart(
        "A B | .x..\nA | ....",
        "B | ....",
        times=10,
        gauge=(25, 32),
        swatches=(Swatch(stitches=100, metres=1.0),),
        allowances=Allowances(float_slack_percent=0),
    )
    found = {(one.piece, one.letter): one for one in pieces(design)}
    assert set(found) == {(0, "A"), (0, "B"), (1, "B")}
    assert (found[0, "A"].stitches, found[0, "B"].stitches, found[1, "B"].stitches) == (70, 10, 40)
    assert found[0, "B"].float_m.likely == pytest.approx(10 * 3 * 0.4 / 100)
    assert found[0, "A"].float_m.likely == pytest.approx(10 * 1 * 0.4 / 100)
    assert found[1, "B"].float_m.likely == 0
    assert found[1, "B"].grams.likely == pytest.approx(0.40 * 100 / 460)


@settings(max_examples=60)
@given(designs())
def test_bands_and_rounds_each_add_up_to_the_whole(design: Design) -> None:
    needs = needs_of(design)
    for share in (yarn_by_band, yarn_by_round):
        found = pieces(design, share)
        for need in needs:
            own = [one for one in found if one.letter == need.letter]
            assert sum(one.stitches for one in own) == need.stitches
            metres = sum((one.metres for one in own), start=NOTHING)
            assert metres.likely == pytest.approx((need.stitch_m + need.float_m).likely)
            assert metres.high == pytest.approx((need.stitch_m + need.float_m).high)
