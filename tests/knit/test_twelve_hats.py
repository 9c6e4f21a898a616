import pytest

from chartmaker.appraisal import appraise
from chartmaker.knit.body_plan import HEIGHTS
from tests.knit.test_written import assert_knits_as_charted
from tests.knit.twelve_hats import GAUGES, HATS, hat

OF_LOTS = {"yarn-short"}
"""What a hat may be warned of, since its lots deserve it."""


@pytest.mark.parametrize("counted", GAUGES, ids=lambda counted: f"{counted[0]}x{counted[1]}")
@pytest.mark.parametrize(("shape", "size"), HATS)
def test_a_hat_from_the_starter_with_motifs_has_nothing_wrong_and_knits_as_charted(shape, size, counted):
    design = hat(shape, size, counted)
    drawn = [band for band in design.bands if band.name in HEIGHTS]
    assert drawn
    assert all(any(line.cells.count(1) for line in band.rounds) for band in drawn)
    wrong = [f for f in appraise(design).findings if f.severity != "note" and f.check not in OF_LOTS]
    assert not wrong, [(f.check, f.message) for f in wrong]
    assert_knits_as_charted(design)
