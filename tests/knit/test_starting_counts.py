from dataclasses import replace

import pytest

from chartmaker.files.motif_reading import read_shelf
from chartmaker.knit.fit import NEAR_ENOUGH, TOLERANCE_CM
from chartmaker.knit.starting_counts import USUAL_REPEATS, Asked, motifs_in, repeat_for, starting_counts
from chartmaker.model.gauge import Gauge

FINE = Gauge(stitches_per_10cm=30, rounds_per_10cm=34)
CAP = Asked(
    head_cm=56,
    wanted_cm=56 * 0.91,
    gauge=FINE,
    brim_repeat=4,
    sections=6,
    motif_repeat=None,
    widen_percent=None,
)


def test_the_usual_repeats_are_those_of_the_motifs_that_come_with_the_program():
    motifs = read_shelf().motifs
    for repeat, share in USUAL_REPEATS.items():
        having = sum(motif.repeat == repeat for motif in motifs)
        assert 100 * having / len(motifs) == pytest.approx(share, abs=5)
    assert sum(USUAL_REPEATS.values()) >= 90


def test_a_count_holds_as_many_motifs_as_its_divisors_let_it():
    assert motifs_in(24) == sum(USUAL_REPEATS[repeat] for repeat in (4, 6, 8, 12, 24))
    assert motifs_in(13) == 0


def test_a_cap_for_56_cm_at_30_to_10_cm_is_156_stitches_which_hold_more_than_their_neighbours():
    # 56 cm less 9 % are 50.96 cm, 152.9 stitches; within 1.5 cm lie 149 to 157, of which 156 has 4, 6 and 12
    assert starting_counts(CAP).body == 156
    assert max(range(149, 158), key=motifs_in) == 156


@pytest.mark.parametrize("head_cm", range(34, 64, 2))
def test_a_brim_at_a_fine_gauge_is_as_near_as_fit_asks_for_and_the_body_hardly_wider(head_cm):
    counts = starting_counts(replace(CAP, head_cm=head_cm, wanted_cm=head_cm * 0.91))
    assert abs(counts.brim / 3 - head_cm * 0.91) <= NEAR_ENOUGH * head_cm
    assert counts.brim <= counts.body <= max(1.05 * 3 * head_cm * 0.91, 3 * (head_cm * 0.91 + TOLERANCE_CM))


def test_a_body_is_a_little_fuller_than_its_brim_where_that_makes_room_for_motifs():
    # 42.2 cm less 9 % are 38.4 cm, 115 stitches: 116 hold a repeat of 4 alone, 120 nearly all
    counts = starting_counts(replace(CAP, head_cm=42.2, wanted_cm=38.4))
    assert (counts.brim, counts.body) == (116, 120)


def test_a_wish_for_a_repeat_is_met_where_a_count_within_the_tolerance_holds_it():
    assert starting_counts(replace(CAP, motif_repeat=10)).body == 160
    assert starting_counts(replace(CAP, motif_repeat=15)).body == 150
    assert starting_counts(replace(CAP, motif_repeat=11)).body == 154
    assert starting_counts(replace(CAP, motif_repeat=100)) == starting_counts(CAP)


def test_the_brim_has_a_count_of_its_own_where_the_body_does_not_suit_it():
    counts = starting_counts(replace(CAP, motif_repeat=11))
    assert (counts.brim, counts.body) == (152, 154)
    assert abs(counts.brim / 3 - CAP.wanted_cm) <= TOLERANCE_CM


def test_a_tam_is_widened_to_a_rim_that_holds_many_motifs():
    counts = starting_counts(replace(CAP, widen_percent=50))
    assert counts.brim * 1.4 < counts.body < counts.brim * 1.6
    assert motifs_in(counts.body) >= 35


def test_a_hat_as_tight_as_goes_on_is_not_made_tighter():
    # up to 10 cm under the head are tolerated (The Knitter, 2019)
    counts = starting_counts(replace(CAP, wanted_cm=46.2))
    assert 46 <= counts.brim / 3 <= 46.2 + TOLERANCE_CM


@pytest.mark.parametrize(
    ("change", "sentence"),
    [
        (
            {"head_cm": 20, "wanted_cm": 18.2, "gauge": Gauge(stitches_per_10cm=5, rounds_per_10cm=6)},
            "a head of 20 cm at 5 stitches in 10 cm comes to 9 stitches, and a hat has at least 24",
        ),
        (
            {"head_cm": 90, "wanted_cm": 90, "gauge": Gauge(stitches_per_10cm=90, rounds_per_10cm=100)},
            "comes to 810 stitches, more than 600",
        ),
        ({"widen_percent": 100, "gauge": Gauge(stitches_per_10cm=70, rounds_per_10cm=90)}, "a rim of 713 stitches"),
        ({"wanted_cm": 44}, "too tight for a head of 56 cm"),
        (
            {"gauge": Gauge(stitches_per_10cm=7, rounds_per_10cm=9), "wanted_cm": 54.0},
            "no multiple of 4 stitches comes within 1.5 cm of 54.0 cm at 7 stitches in 10 cm",
        ),
    ],
)
def test_what_cannot_be_knitted_is_refused_in_a_sentence(change, sentence):
    with pytest.raises(ValueError, match=sentence):
        starting_counts(replace(CAP, **change))


def test_a_plain_bands_repeat_is_the_shortest_that_holds_all_motifs_of_its_count():
    assert repeat_for(156, None) == 12
    assert repeat_for(144, None) == 24
    assert repeat_for(156, 13) == 13
    assert repeat_for(156, 10) == 12
