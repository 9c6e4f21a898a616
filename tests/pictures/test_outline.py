import numpy as np
import pytest

from chartmaker.appraisal import appraise
from chartmaker.knit.answers import Answers, defaults_for
from chartmaker.knit.starter import started
from chartmaker.model.gauge import Gauge
from chartmaker.pictures.outline import eased, outline

GAUGE = Gauge(stitches_per_10cm=30, rounds_per_10cm=34)
CAP = started(Answers())
TAM = started(defaults_for(shape="tam", head_cm=56, gauge=GAUGE))


def both(design):
    stepped = outline(appraise(design).profile)
    return stepped, eased(stepped, round_cm=design.gauge.round_height_cm)


@pytest.mark.parametrize("design", [CAP, TAM], ids=["cap", "tam"])
def test_an_eased_hat_is_as_tall_as_wide_and_as_closed_as_before(design):
    stepped, smooth = both(design)
    assert smooth.height_cm[-1] == pytest.approx(stepped.height_cm[-1])
    assert smooth.radius_cm.max() == pytest.approx(stepped.radius_cm.max())
    assert smooth.radius_cm[0] == pytest.approx(stepped.radius_cm[0])
    assert smooth.radius_cm[-1] == pytest.approx(0, abs=1e-9)
    assert len(smooth.radius_cm) == len(stepped.radius_cm)


def test_no_ledge_shows_on_a_round_crown():
    # a ledge is a round that draws in much faster than those on both sides of it
    stepped, smooth = (-shape.run_cm[40:-8] for shape in both(CAP))
    assert np.abs(np.diff(stepped)).max() > GAUGE.round_height_cm / 3
    assert np.abs(np.diff(smooth)).max() < GAUGE.round_height_cm / 6


def test_a_rim_and_a_brim_keep_their_edge():
    stepped, smooth = both(TAM)
    widening = np.flatnonzero(stepped.run_cm > 0)
    assert smooth.run_cm[widening] == pytest.approx(stepped.run_cm[widening])
    assert smooth.radius_cm[: widening[0]] == pytest.approx(stepped.radius_cm[: widening[0]])
