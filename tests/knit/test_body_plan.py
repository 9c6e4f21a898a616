from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.knit.body_plan import HEIGHTS, REST, body_plan, class_of


@given(rounds=st.integers(0, 600))
def test_a_plan_has_the_rounds_that_were_given_and_bands_of_the_trades_heights(rounds):
    plan = body_plan(rounds)
    assert sum(stretch.rounds for stretch in plan) == rounds
    assert all(stretch.rounds in HEIGHTS[stretch.name] for stretch in plan if stretch.is_for_a_motif)


@given(rounds=st.integers(3, 600))
def test_plain_rounds_part_the_bands_and_stand_at_both_ends(rounds):
    plan = body_plan(rounds)
    assert plan[0].name == plan[-1].name == REST
    assert all(stretch.rounds for stretch in plan)
    assert all(one.is_for_a_motif != other.is_for_a_motif for one, other in pairwise(plan))


@given(rounds=st.integers(3, 600))
def test_bands_are_alike_above_and_below_the_middle(rounds):
    heights = [stretch.rounds for stretch in body_plan(rounds) if stretch.is_for_a_motif]
    assert heights == heights[::-1]


@given(rounds=st.integers(20, 600))
def test_most_of_a_body_is_for_motifs(rounds):
    plan = body_plan(rounds)
    assert sum(stretch.rounds for stretch in plan if stretch.is_for_a_motif) > rounds / 2


@pytest.mark.parametrize(
    ("rounds", "plan"),
    [
        (3, "1 1 1"),
        (9, "1 7 1"),
        (19, "2 15 2"),
        (35, "2 7 2 13 2 7 2"),
    ],
)
def test_bodies_are_divided_as_a_knitter_would(rounds, plan):
    assert " ".join(str(stretch.rounds) for stretch in body_plan(rounds)) == plan


def test_classes_go_by_height():
    # the trade's class sheet: small 1-7, border 9-13, large 15-17 rounds
    assert [class_of(height) for height in (1, 7, 9, 13, 15, 17)] == [
        "peerie",
        "peerie",
        "border",
        "border",
        "large motif",
        "large motif",
    ]
