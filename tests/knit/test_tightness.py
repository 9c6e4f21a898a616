"""How tight rounds are, and how fast they change, against geometry; and the sentences that tell it."""

import math

import pytest

from chartmaker.appraisal import Appraisal, appraise
from chartmaker.knit.tightness import RoundTightness, tightness, tightness_words
from chartmaker.model.gauge import Gauge
from chartmaker.model.hat import Fold, Hat
from tests.builders import chart
from tests.knit.test_profile import hat_of


def judged(appraisal: Appraisal) -> tuple[RoundTightness, ...]:
    return tightness(appraisal.design, appraisal.fabric, appraisal.profile)


def tube(stitches: int, *, rounds: int = 60, hat: Hat) -> tuple[RoundTightness, ...]:
    return judged(appraise(chart(f"A | {'.' * stitches}\n" * rounds, gauge=(25.0, 30.0), hat=hat)))


@pytest.mark.parametrize(
    ("stitches", "stretch", "grade"),
    [
        (150, -4, "easy"),
        (140, 0, "easy"),
        (130, 4, "snug"),
        (122, 7.2, "tight"),
        (115, 10, "tight"),
        (110, 12, "too tight"),
    ],
)
def test_a_round_is_judged_by_its_girth_against_the_head(stitches: int, stretch: float, grade: str) -> None:
    # 25 stitches to 10 cm: a stitch is 0.4 cm wide; the head is 56 cm.
    first = tube(stitches, hat=Hat(head_cm=56.0))[0]
    assert first.stretch_cm == pytest.approx(stretch)
    assert first.grade == grade


def test_rounds_above_the_head_are_free() -> None:
    rounds = tube(130, hat=Hat(head_cm=56.0))
    on_head = [one.grade for one in rounds].index("free")
    # A ninth of 56 cm at three rounds to the centimetre.
    assert on_head == math.ceil(0.11 * 56 * 3)
    assert all(one.stretch_cm is None for one in rounds[on_head:])


def test_a_fold_lies_where_it_is_worn() -> None:
    rounds = tube(130, hat=Hat(head_cm=56.0, fold=Fold("up", 30)))
    on_head = [number for number, one in enumerate(rounds) if one.stretch_cm is not None]
    reach = math.ceil(0.11 * 56 * 3)
    assert on_head == list(range(30 - reach, 30 + reach))


def test_a_crown_drawn_in_twice_as_fast_as_a_disc_puckers_by_as_much() -> None:
    # A disc loses 2π·h/w stitches a round (plane geometry): with square stitches 2π, so that 12.57 are twice as many.
    gauge = Gauge(stitches_per_10cm=25.0, rounds_per_10cm=25.0)
    counts = [100] * 20 + [round(100 - 4 * math.pi * step) for step in range(1, 5)]
    rounds = judged(appraise(hat_of(counts, gauge)))
    assert {one.grade for one in rounds[-3:]} == {"puckers"}
    assert -rounds[-2].run_per_height == pytest.approx(2, rel=0.06)
    words = tightness_words(rounds)
    assert "puckers" in words[-1]
    assert "2.0 times" in words[-1] or "2.1 times" in words[-1]


def test_the_sentences_name_rounds_and_amounts() -> None:
    words = tightness_words(tube(130, hat=Hat(head_cm=56.0)))
    assert words == ("It is 4.0 cm smaller than the head in rounds 1–19, which is snug.",)
    easy = tightness_words(tube(150, rounds=1, hat=Hat(head_cm=56.0)))
    assert easy == ("It is 4.0 cm larger than the head in round 1, which is easy.",)


def test_every_round_is_judged_once() -> None:
    assert len(tube(130, rounds=7, hat=Hat())) == 7
