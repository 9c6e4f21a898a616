"""Bands parted by a round that changes the count: each group keeps its repeat, the round is made for the new counts."""

import pytest

from chartmaker.knit.changing_band import changing_band
from chartmaker.knit.fit_groups import bands_in_groups, changes_the_count, is_grouped, lowest_counts
from chartmaker.model.band import Band
from chartmaker.model.counts import rounds_not_meeting
from chartmaker.model.design import Design
from chartmaker.model.round import Round
from tests.knit.test_depth import plain

RIB = plain("rib", 10, times=30, texture="kkpp")
MOTIF = Band(name="motif", times=11, rounds=(Round("AB", bytes([0, 1] * 6)),) * 9)


def hat(*bands: Band) -> tuple[Band, ...]:
    return (RIB, changing_band(below=120, above=132, letter="A"), *bands)


def test_a_round_that_changes_the_count_is_known_by_its_being_alone_and_plain() -> None:
    assert changes_the_count(changing_band(below=120, above=132, letter="A"))
    assert not changes_the_count(MOTIF)
    assert is_grouped(hat(MOTIF, MOTIF))
    assert not is_grouped((RIB, MOTIF))


@pytest.mark.parametrize(
    ("cast_on", "above"),
    [(100, 108), (112, 120), (132, 144)],  # 110, 123.2 and 145.2 by the old share of 132 to 120; the motif is of 12
)
def test_each_group_takes_the_count_nearest_to_its_old_share(cast_on: int, above: int) -> None:
    assert cast_on in lowest_counts(hat(MOTIF)).all
    bands = bands_in_groups(hat(MOTIF), cast_on)
    assert [bands[0].stitches(0), bands[-1].stitches(0)] == [cast_on, above]
    assert not rounds_not_meeting(Design(bands=bands))
    assert bands[-1].rounds == MOTIF.rounds
    assert bands[1].name == "increase"


def test_the_round_goes_where_it_changes_nothing_any_more() -> None:
    narrow = plain("motif", 5, times=31)
    bands = bands_in_groups((RIB, changing_band(below=120, above=124, letter="A"), narrow), 12)
    assert [band.stitches(0) for band in bands] == [12, 12]


def test_a_group_that_allows_nothing_near_is_refused() -> None:
    wide = Band(name="wide", times=1, rounds=(Round("A", bytes(132)),))
    with pytest.raises(ValueError, match="allow no count near 22 stitches"):
        bands_in_groups(hat(wide), 20)
