"""Pairs of lots in other lights and to other eyes: each entry of the tables against the pair computed alone."""

import pytest

from chartmaker.model.settings import Limits, Viewing
from chartmaker.shade.colorimetry import colour
from chartmaker.shade.elsewhere import elsewhere
from chartmaker.shade.lots import shades_of
from chartmaker.shade.spread import grade, value_difference
from chartmaker.shade.vision import KINDS, lab_seen_by
from chartmaker.shade.weights import white_point
from tests.builders import lot
from tests.shade.test_lights import BLUE, RED

LOTS = (RED, lot("lab", (60, -20, 30)), BLUE)
LIMITS = Limits()


DAYLIGHT = Viewing()


def compared(viewing=DAYLIGHT, lots=LOTS):
    return elsewhere(lots, [shade for shade in shades_of(lots, viewing) if shade])


def test_a_pair_with_spectra_is_judged_in_every_other_light_as_it_would_be_there():
    found = compared().in_lights(0, 2, LIMITS)
    assert [there.illuminant for there in found] == ["A", "LED-B3", "FL11"]
    for there in found:
        red, blue = shades_of((RED, BLUE), Viewing(illuminant=there.illuminant))
        alone = value_difference(red, blue)
        assert there.value_difference == pytest.approx(alone.difference, abs=1e-9)
        assert there.value_difference_low == pytest.approx(alone.low, abs=1e-9)
        assert there.ciede2000 == pytest.approx(colour.delta_E(red.lab, blue.lab), abs=1e-7)
        assert there.grade == grade(alone.low, LIMITS)
    assert len({there.value_difference for there in found}) == 3


def test_a_pair_without_spectra_is_unknown_in_other_lights():
    assert compared().in_lights(0, 1, LIMITS) == ()
    assert compared().in_lights(1, 2, LIMITS) == ()


def test_the_design_s_own_light_is_left_out():
    lights = [there.illuminant for there in compared(Viewing(illuminant="A")).in_lights(0, 2, LIMITS)]
    assert lights == ["D65", "LED-B3", "FL11"]


@pytest.mark.parametrize("pair", [(0, 1), (0, 2), (1, 2)])
def test_every_pair_is_told_to_eyes_that_lack_a_cone(pair):
    first, second = (shades_of((LOTS[index],), Viewing())[0].lab for index in pair)
    found = compared().to_eyes(*pair)
    assert tuple(eyes.kind for eyes in found) == KINDS
    for eyes in found:
        seen = [lab_seen_by(lab, eyes.kind, white=white_point(Viewing())) for lab in (first, second)]
        assert eyes.value_difference == pytest.approx(abs(seen[0][0] - seen[1][0]), abs=1e-9)
        assert eyes.ciede2000 == pytest.approx(colour.delta_E(*seen), abs=1e-7)


def test_red_and_green_of_one_value_come_together_to_deutan_eyes():
    lots = (lot("red", (50, 40, 20)), lot("green", (50, -25, 30)))
    deutan = compared(lots=lots).to_eyes(0, 1)[KINDS.index("deutan")]
    assert deutan.ciede2000 < colour.delta_E((50, 40, 20), (50, -25, 30)) / 2


def test_no_letters_make_no_tables():
    assert elsewhere((), ()).lights == ()
