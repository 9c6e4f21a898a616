"""What is remembered of the room, the screen and the eye."""

import pytest

from chartmaker.app.seeing import USUAL_UNITS_PER_CM, Seeing, keep_seeing, kept_seeing


def test_what_was_kept_comes_back(settings):
    seeing = Seeing(distance_m=4.5, eye_cm=70, units_per_cm=41.5, severity=0.3)
    keep_seeing(settings, seeing)
    settings.sync()
    assert kept_seeing(settings) == seeing


@pytest.mark.parametrize("damage", ["", "far", "nan", "-1", "1e9", ["1", "2"]])
def test_damaged_settings_are_as_at_first(settings, damage):
    for name in ("distance_m", "eye_cm", "units_per_cm", "severity"):
        settings.setValue(f"seeing/{name}", damage)
    assert kept_seeing(settings) == Seeing()


def test_the_hands_measure_goes_before_the_screens_word_and_neither_is_taken_where_it_is_not_plausible():
    assert Seeing(units_per_cm=44).on_screen(38) == 44
    assert Seeing().on_screen(38) == 38
    assert Seeing().on_screen(0.4) == USUAL_UNITS_PER_CM
    assert Seeing(units_per_cm=2).on_screen(float("inf")) == USUAL_UNITS_PER_CM
