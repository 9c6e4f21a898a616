import pytest

from chartmaker.knit.brims import BRIM_KINDS, Brim, knitted_brim
from chartmaker.model.gauge import Gauge
from chartmaker.model.hat import Fold

TEN_TO_TEN_CM = Gauge(stitches_per_10cm=10, rounds_per_10cm=10)


def knitted(kind, *, stitches=48, depth_cm=5.0, gauge=TEN_TO_TEN_CM):
    return knitted_brim(Brim(kind, depth_cm), stitches=stitches, gauge=gauge, letters="CD")


def test_two_coloured_rib_whose_floats_would_snag_is_refused():
    # two stitches of 10 / 7 cm are 2.86 cm, and a float of more than 2.5 cm is to be caught
    coarse = Gauge(stitches_per_10cm=7, rounds_per_10cm=9)
    with pytest.raises(ValueError, match=r"makes floats of 2\.9 cm at this gauge, longer than 2\.5 cm"):
        knitted("two-coloured-2x2", gauge=coarse)
    assert knitted("two-coloured-1x1", gauge=coarse)
    assert knitted("rib-2x2", gauge=coarse)


@pytest.mark.parametrize("kind", BRIM_KINDS)
def test_every_round_of_every_kind_has_the_stitches_that_were_asked_for(kind):
    made = knitted(kind)
    assert {band.stitches(index) for band in made.bands for index in range(len(band.rounds))} == {48}
    assert not any(band.is_shaped for band in made.bands)


@pytest.mark.parametrize("kind", BRIM_KINDS)
def test_a_brim_is_as_deep_when_worn_as_it_should_be(kind):
    # at one round to the centimetre, 5 cm are 5 rounds
    assert knitted(kind).worn_rounds == 5


def test_a_hem_is_knitted_twice_as_deep_and_a_cuff_lies_a_little_lower_than_its_rib():
    assert knitted("hem").fold == Fold("in", 5)
    assert knitted("turned-up").fold == Fold("up", 2)
    assert [sum(len(band.rounds) for band in knitted(kind).bands) for kind in ("hem", "turned-up")] == [10, 7]


def test_an_edge_that_rolls_is_held_by_rib():
    rolled = knitted("rolled")
    assert rolled.fold == Fold("roll", 2)
    assert [(band.texture, len(band.rounds)) for band in rolled.bands] == [("", 2), ("kp", 5)]


def test_a_hem_turns_at_a_purl_ridge_that_is_its_worn_edge():
    facing, ridge, outside = knitted("hem").bands
    assert (len(facing.rounds), len(ridge.rounds), len(outside.rounds)) == (5, 1, 4)
    assert (facing.texture, ridge.texture, outside.texture) == ("", "p", "")


@pytest.mark.parametrize(("kind", "texture"), [("two-coloured-1x1", "kp"), ("two-coloured-2x2", "kkpp")])
def test_two_coloured_rib_knits_the_ground_and_purls_the_figure(kind, texture):
    rib = knitted(kind).bands[-1]
    assert rib.texture == texture
    assert all(line.letters == "CD" for line in rib.rounds)
    assert all(
        (line.letter_of(place) == "D") == (sign == "p") for line in rib.rounds for place, sign in enumerate(texture)
    )


def test_other_kinds_are_of_the_ground_alone():
    for kind in BRIM_KINDS:
        if not Brim(kind).is_two_coloured:
            assert all(line.letters_in_use == "C" for band in knitted(kind).bands for line in band.rounds)


def test_the_outside_of_a_hem_is_ready_for_a_motif():
    outside = knitted("hem").bands[-1]
    assert {line.letters for line in outside.rounds} == {"CD"}
    assert len(outside.rounds[0]) == 24


@pytest.mark.parametrize("kind", ["rib-2x2", "two-coloured-2x2", "turned-up"])
def test_a_count_that_the_rib_does_not_divide_is_refused(kind):
    with pytest.raises(ValueError, match="repeats over 4 stitches, which do not divide 50"):
        knitted(kind, stitches=50)


def test_the_shallowest_brim_still_has_two_rounds_each_side():
    assert all(knitted(kind, depth_cm=0.5).worn_rounds >= 2 for kind in BRIM_KINDS)
    assert all(made.fold.rounds >= 2 for kind in BRIM_KINDS if (made := knitted(kind, depth_cm=0.5)).fold)


def test_a_kind_that_there_is_not_and_a_depth_that_no_brim_has_are_refused():
    with pytest.raises(ValueError, match="a brim's kind is 'lace'"):
        Brim("lace")
    with pytest.raises(ValueError, match="a brim's depth is 50 cm"):
        Brim("hem", 50)
