"""A crown is known again by its rounds."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from chartmaker.knit.crown import POINTED, PROFILES, Crown, crown_counts, with_crown
from chartmaker.knit.crown_reading import crown_of
from chartmaker.knit.wedge import DECREASES
from chartmaker.model.band import Band
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge
from chartmaker.model.round import Round
from tests.knit.test_crown import drawn_crown


@given(
    profile=st.sampled_from(PROFILES),
    sections=st.integers(4, 11),
    decrease=st.sampled_from(DECREASES),
    width=st.integers(14, 30),
)
@settings(max_examples=80, deadline=None)
def test_a_crown_that_was_made_is_known_again(profile, sections, decrease, width):
    body = Band(name="body", times=sections * width, rounds=(Round("A", b"\0"),) * 6)
    design = Design(gauge=Gauge(stitches_per_10cm=30, rounds_per_10cm=34), bands=(body,))
    crown = Crown(profile=profile, sections=sections, decrease=decrease)
    made = with_crown(design, crown).applied_to(design)
    found = crown_of(made)
    assert (found.profile, found.sections, found.decrease) == (profile, sections, decrease)
    if profile == POINTED:
        assert found.rounds == len(crown_counts(crown, stitches=sections * width, gauge=design.gauge))
    assert with_crown(made, found) is None


def test_a_hat_without_a_crown_has_the_usual_one() -> None:
    assert crown_of(Design(bands=(Band(name="body", times=144, rounds=(Round("A", b"\0"),)),))) == Crown()


@pytest.mark.parametrize("sections", [7, 11])
def test_a_crown_behind_a_preparing_round_is_known_too(sections: int) -> None:
    design = drawn_crown()
    made = with_crown(design, Crown(sections=sections)).applied_to(design)
    assert crown_of(made) == Crown(sections=sections)
    assert with_crown(made, crown_of(made)) is None
