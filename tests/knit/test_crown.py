"""Crowns against the sphere, the disc and the cone, against published crowns, and on the needles."""

import math
from contextlib import suppress
from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from chartmaker.knit.crown import (
    FLAT,
    MOST_DRAWN,
    POINTED,
    PROFILES,
    ROUND,
    Crown,
    crown_bands,
    crown_counts,
    crown_start,
    followed,
    sections_for,
    steepest,
    with_crown,
)
from chartmaker.knit.layout import lay_out
from chartmaker.knit.outline import chart_offsets
from chartmaker.knit.profile import flat_disc_decreases, profile
from chartmaker.knit.wedge import CENTRED, DECREASES, PAIRED, SINGLE
from chartmaker.model.band import Band
from chartmaker.model.counts import rounds_not_meeting
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge
from chartmaker.model.notation import round_to_text, rounds_from_text, rounds_to_text
from chartmaker.model.round import Round
from chartmaker.model.stitches import EATEN, Part, Shaping
from tests.builders import chart
from tests.knit.test_written import assert_knits_as_charted
from tests.strategies import designs

GAUGES = ((22, 26), (28, 30), (30, 34), (36, 40))
"""A stranger's gauges and printed ones, per 10 cm."""
INCHES = Gauge(stitches_per_10cm=50 / 2.54, rounds_per_10cm=70 / 2.54)
"""Five stitches and seven rounds to the inch."""
FINE = Gauge(stitches_per_10cm=50, rounds_per_10cm=56)
crowns = st.builds(
    Crown,
    profile=st.sampled_from(PROFILES),
    sections=st.integers(4, 12),
    decrease=st.sampled_from(DECREASES),
)


@st.composite
def made(draw: st.DrawFn) -> tuple[Crown, int, Gauge]:
    """A crown with a count that its sections divide, for a head of 35 to 60 cm at a gauge that takes it."""
    crown = draw(crowns)
    gauge = gauge_of(draw(st.sampled_from(GAUGES)))
    fewest, most = (math.ceil(head / gauge.stitch_width_cm / crown.sections) for head in (35, 60))
    return crown, crown.sections * draw(st.integers(fewest, most)), gauge


def gauge_of(counts: tuple[int, int]) -> Gauge:
    return Gauge(stitches_per_10cm=counts[0], rounds_per_10cm=counts[1])


def hat(crown: Crown, stitches: int, gauge: Gauge, *, prepare: bool = False) -> Design:
    """Give six plain rounds and the crown."""
    body = Band(name="body", times=stitches, rounds=(Round("A", b"\0"),) * 6)
    return Design(gauge=gauge, bands=(body, *crown_bands(crown, stitches=stitches, gauge=gauge, prepare=prepare)))


@given(case=made())
@settings(max_examples=150, deadline=None)
def test_a_crown_meets_lies_without_a_pucker_and_is_drawn_up_on_6_to_15_stitches(case):
    """Craft pages: 6 to 15 stitches are drawn up; the pucker is the check's own."""
    crown, stitches, gauge = case
    design = hat(crown, stitches, gauge)
    outline = profile(lay_out(design), gauge)
    assert not rounds_not_meeting(design)
    assert not any(outline.puckers)
    assert 6 <= lay_out(design).counts[-1] <= 15
    assert_knits_as_charted(design)


@given(case=made())
@settings(max_examples=150, deadline=None)
def test_counts_are_never_further_than_half_a_decrease_round_from_the_curve_that_they_follow(case):
    crown, stitches, gauge = case
    curve = followed(crown, stitches=stitches, gauge=gauge)
    off = [
        abs(count - curve(number))
        for number, count in enumerate(crown_counts(crown, stitches=stitches, gauge=gauge), start=1)
    ]
    assert max(off) <= crown.a_round_takes / 2 + 1e-6


@given(case=made())
@settings(max_examples=100, deadline=None)
def test_a_curve_that_is_followed_is_the_profile_wherever_the_crown_can_be_so_steep(case):
    """Geometry: S₀·cos(πk / 2N) with N = (C/4)/h, and a disc's S₀ − 2π·h/w·k, as long as they fall slowly enough."""
    crown, stitches, gauge = case
    curve = followed(crown, stitches=stitches, gauge=gauge)
    disc = 2 * math.pi * gauge.round_height_cm / gauge.stitch_width_cm
    quarter = stitches * gauge.stitch_width_cm / 4 / gauge.round_height_cm
    most = steepest(crown, gauge)
    for number in range(int(quarter)):
        wanted = stitches * math.cos(math.pi * number / 2 / quarter)
        slope = disc * math.sin(math.pi * number / 2 / quarter)
        if crown.profile == ROUND and slope <= most:
            assert curve(number) == pytest.approx(wanted)
        if crown.profile == FLAT and disc <= most:
            assert curve(number) == pytest.approx(stitches - disc * number)
        assert curve(number) - curve(number + 1) <= min(most, disc) + 1e-9


@pytest.mark.parametrize(("sections", "decrease", "stitches"), [(6, SINGLE, 240), (8, PAIRED, 240), (5, CENTRED, 245)])
def test_a_round_crown_is_a_hemisphere_in_radius_and_height(sections: int, decrease: str, stitches: int) -> None:
    """Geometry: radius² + height² = R² at every round, within an eighth of R.

    Decreases in whole rounds cost height where the top is nearly flat: √(h² − run²) falls the more, the less even
    the run is. In the lower half, where that weighs little, it is within a fifteenth.
    """
    outline = profile(lay_out(hat(Crown(sections=sections, decrease=decrease), stitches, FINE)), FINE)
    large = outline.radius_cm[0]
    radius, height, off = large, 0.0, []
    for run, rise in list(zip(outline.run_cm, outline.rise_cm, strict=True))[6:]:
        radius, height = radius + run, height + rise
        off.append(abs(math.hypot(radius, height) - large))
    assert max(off) < large / 8
    assert max(off[: len(off) // 2]) < large / 15


def test_a_round_crown_has_the_area_of_a_hemisphere() -> None:
    """Geometry: 2πr² is what all the stitches cover together, each a stitch width by a round height."""
    stitches = 240
    counts = crown_counts(Crown(sections=6, decrease=SINGLE), stitches=stitches, gauge=FINE)
    area = sum(counts) * FINE.stitch_width_cm * FINE.round_height_cm
    radius = stitches * FINE.stitch_width_cm / 2 / math.pi
    assert area == pytest.approx(2 * math.pi * radius**2, rel=0.03)


def test_the_area_of_stitches_is_that_of_the_surface_they_make() -> None:
    """Geometry: each round is a cone's frustum, π(r₁ + r₂)·s; a second way to the sum of stitch areas."""
    gauge = gauge_of((28, 30))
    outline = profile(lay_out(hat(Crown(sections=6, decrease=PAIRED), 150, gauge)), gauge)
    stitches = sum(outline.radius_cm) * 2 * math.pi * gauge.round_height_cm
    radius, surface = outline.radius_cm[0], 0.0
    for run, rise in zip(outline.run_cm, outline.rise_cm, strict=True):
        surface += math.pi * (2 * radius + run) * math.hypot(run, rise)
        radius += run
    assert surface == pytest.approx(stitches, rel=0.03)


def test_a_flat_crown_lies_flat() -> None:
    """Geometry: a disc of πR² without height; six sections of two come near the rate of it at 28 × 30."""
    gauge = gauge_of((28, 30))
    design = hat(Crown(profile=FLAT, sections=6, decrease=PAIRED), 150, gauge)
    outline = profile(lay_out(design), gauge)
    large = outline.radius_cm[0]
    assert sum(outline.rise_cm[7:]) < 0.25 * large
    area = sum(lay_out(design).counts[6:]) * gauge.stitch_width_cm * gauge.round_height_cm
    assert area == pytest.approx(math.pi * large**2, rel=0.05)


def test_a_flat_crown_of_nine_sections_is_the_published_one() -> None:
    """Published crown: 120 stitches less 9 every other round; flat rate 4.488 at 5 × 7 per inch (craft pages)."""
    assert flat_disc_decreases(INCHES) == pytest.approx(4.488, abs=5e-4)
    counts = crown_counts(Crown(profile=FLAT, sections=9, decrease=SINGLE), stitches=117, gauge=INCHES)
    changes = [number for number, (below, here) in enumerate(pairwise((117, *counts))) if here < below]
    gaps = [later - sooner for sooner, later in pairwise(changes)]
    assert {below - here for below, here in pairwise((117, *counts)) if here < below} == {9}
    assert sorted(gaps)[len(gaps) // 2] == 2
    assert sum(gaps) / len(gaps) == pytest.approx(9 / 4.488, abs=0.1)


def test_a_pointed_crown_is_a_cone() -> None:
    """Geometry: the radius falls in a straight line along the fabric, and its height is √(slant² − fall²)."""
    crown = Crown(profile=POINTED, sections=6, decrease=SINGLE, rounds=90)
    outline = profile(lay_out(hat(crown, 240, FINE)), FINE)
    radius = outline.radius_cm[5:]
    assert len(radius) == 91
    line = [radius[0] + (radius[-1] - radius[0]) * number / 90 for number in range(91)]
    most = crown.a_round_takes * FINE.stitch_width_cm / 2 / math.pi
    assert max(abs(one - other) for one, other in zip(radius, line, strict=True)) <= most
    slant = 90 * FINE.round_height_cm
    height = math.sqrt(slant**2 - (radius[0] - radius[-1]) ** 2)
    assert sum(outline.rise_cm[6:]) == pytest.approx(height, rel=0.01)


def test_a_pointed_crown_has_the_rounds_that_are_asked_for_and_draws_up_the_fewest() -> None:
    for rounds in (40, 55, 80):
        counts = crown_counts(
            Crown(profile=POINTED, sections=6, decrease=CENTRED, rounds=rounds), stitches=144, gauge=Gauge()
        )
        assert len(counts) == rounds
        assert counts[-1] == 6
        assert counts[-2] > 6


def test_a_point_in_too_few_rounds_is_refused_and_says_how_many_it_takes() -> None:
    crown = Crown(profile=POINTED, sections=6, decrease=PAIRED, rounds=10)
    with pytest.raises(ValueError, match=r"would pucker; 6 sections take (\d+) rounds or more") as refusal:
        crown_counts(crown, stitches=144, gauge=Gauge())
    fewest = int(str(refusal.value).split("take ")[1].split()[0])
    assert len(crown_counts(replace(crown, rounds=fewest), stitches=144, gauge=Gauge())) == fewest


def test_more_decreases_in_a_round_than_the_fabric_can_take_are_refused() -> None:
    with pytest.raises(ValueError, match=r"24 stitches fewer in one round .* 23 at the most"):
        steepest(Crown(sections=12, decrease=PAIRED), INCHES)


def test_sections_that_do_not_divide_the_count_are_refused_or_prepared_for() -> None:
    crown, gauge = Crown(sections=7, decrease=PAIRED), gauge_of((28, 30))
    with pytest.raises(ValueError, match="7 sections do not divide 144 stitches; those that do: 4, 6, 8, 9, 12"):
        crown_bands(crown, stitches=144, gauge=gauge)
    design = hat(crown, 144, gauge, prepare=True)
    assert [band.stitches(len(band.rounds) - 1) for band in design.bands[:2]] == [144, 140]
    assert not rounds_not_meeting(design)
    assert_knits_as_charted(design)


@given(stitches=st.integers(60, 250), gauge=st.sampled_from(GAUGES).map(gauge_of), crown=crowns)
@settings(max_examples=100, deadline=None)
def test_a_crown_with_a_preparing_round_lies_without_a_pucker(stitches, gauge, crown):
    design = hat(crown, stitches, gauge, prepare=True)
    assert not rounds_not_meeting(design)
    assert not any(profile(lay_out(design), gauge).puckers)


def test_sections_for_a_count_are_its_divisors_from_4_to_12() -> None:
    assert sections_for(144) == (4, 6, 8, 9, 12)
    assert sections_for(127) == ()


@pytest.mark.parametrize("decrease", DECREASES)
@pytest.mark.parametrize("stitches", [132, 138])
def test_plain_stitches_stand_above_each_other_all_the_way_up(decrease: str, stitches: int) -> None:
    """The true line: in the drawing, every stitch but the decreases has the stitch that it eats right below it.

    That is so on the side of a centred double's spine that has no more shaping to cross, for one column at least.
    """
    band = crown_bands(Crown(sections=6, decrease=decrease), stitches=stitches, gauge=Gauge())[0]
    straight = set(range(len(band.rounds[0])))
    offsets = chart_offsets(band.rounds)
    for (below, lower), (here, upper) in pairwise(zip(band.rounds, offsets, strict=True)):
        assert lower <= upper
        ways = {}
        eaten = 0
        for stitch, code in enumerate(here.shaping):
            if code in (Shaping.PLAIN, Shaping.CENTRED):
                middle = eaten + EATEN[code] // 2
                ways[upper + stitch] = lower + middle
            eaten += EATEN[code]
        assert eaten == len(below)
        if len(here) > 2:
            straight &= {column for column, under in ways.items() if column == under}
            assert straight


@pytest.mark.parametrize("stitches", [132, 138])
@pytest.mark.parametrize("decrease", [CENTRED, PAIRED])
def test_a_section_is_symmetric_about_its_middle_in_every_round(decrease: str, stitches: int) -> None:
    """Mirrored, each round shapes the same places with the other lean; a spine about itself, all round."""
    band = crown_bands(Crown(sections=6, decrease=decrease), stitches=stitches, gauge=Gauge())[0]
    lean = bytes.maketrans(bytes([Shaping.K2TOG, Shaping.SSK]), bytes([Shaping.SSK, Shaping.K2TOG]))
    for line in band.rounds:
        if Shaping.CENTRED in line.shaping:
            spine = line.shaping.index(Shaping.CENTRED)
            around = line.shaping[spine:] + line.shaping[:spine]
            assert around[1:] == around[:0:-1]
            assert abs(2 * spine - len(line) + 1) <= 1
        elif len(line) > 1:
            panel = line.shaping[1 - len(line) % 2 :]
            assert line.shaping[: len(line) - len(panel)] in (b"", bytes([Shaping.PLAIN]))
            assert len(panel) % 2 or len(line) == 2
            assert panel == panel[::-1].translate(lean)


def test_the_wedges_are_drawn_as_a_knitter_would_draw_them() -> None:
    pictures = {
        decrease: [
            line.split("|")[-1].strip()
            for line in rounds_to_text(
                tuple(
                    line
                    for line in crown_bands(
                        Crown(profile=POINTED, sections=6, decrease=decrease), stitches=54, gauge=Gauge()
                    )[0].rounds
                    if line.is_shaped
                )
            ).splitlines()
        ]
        for decrease in DECREASES
    }
    assert pictures == {
        SINGLE: [">", ">.", ">..", ">...", ">....", ">.....", ">......", ">......."],
        CENTRED: ["^", ".^.", "..^..", "...^..."],
        PAIRED: ["^", ">.<", ">...<", ">.....<"],
    }
    even = crown_bands(Crown(profile=POINTED, sections=6), stitches=60, gauge=Gauge())[0]
    assert [round_to_text(line).split("|")[-1].strip() for line in even.rounds if line.is_shaped] == [
        ">.....<.",
        ">...<.",
        ">.<.",
        "^.",
        ">",
    ]


def test_an_even_section_leaves_its_odd_decrease_to_a_last_k2tog() -> None:
    for decrease in (CENTRED, PAIRED):
        crown = Crown(profile=POINTED, sections=6, decrease=decrease)
        band = crown_bands(crown, stitches=60, gauge=Gauge())[0]
        assert [len(line) for line in band.rounds if line.is_shaped] == [8, 6, 4, 2, 1]
        assert band.rounds[-1].shaping == bytes([Shaping.K2TOG])


def test_a_round_top_ends_without_a_lone_decrease_where_few_enough_are_left() -> None:
    """Craft pages: 6 to 15 stitches are drawn up."""
    ends = {
        (stitches, sections): crown_counts(Crown(sections=sections), stitches=stitches, gauge=Gauge())[-1]
        for stitches, sections in ((140, 7), (144, 6), (150, 6), (144, 8), (140, 5))
    }
    assert ends == {(140, 7): 14, (144, 6): 12, (150, 6): 6, (144, 8): 8, (140, 5): 10}


def test_a_crown_of_too_few_stitches_is_refused() -> None:
    with pytest.raises(ValueError, match=f"begins with {MOST_DRAWN + 1} to 600 stitches"):
        crown_counts(Crown(sections=6), stitches=12, gauge=Gauge())


@pytest.mark.parametrize(
    ("fields", "sentence"),
    [
        ({"profile": "square"}, "profile is 'square'; it can be round, flat, pointed"),
        ({"sections": 3}, "sections is 3, outside 4 to 12"),
        ({"decrease": "double"}, "can be single, centred, paired"),
        ({"rounds": 0}, "rounds is 0, outside 1 to 300"),
    ],
)
def test_a_crown_that_is_none_is_refused(fields, sentence):
    with pytest.raises(ValueError, match=sentence):
        Crown(**fields)


def body(rounds: int = 6, times: int = 36, width: int = 4) -> Band:
    return Band(name="body", times=times, rounds=(Round("A", bytes(width)),) * rounds)


def test_the_crown_begins_at_its_lowest_closing_band_or_at_the_round_that_prepares_it() -> None:
    crown = crown_bands(Crown(sections=6), stitches=144, gauge=Gauge())[0]
    lower, upper = replace(crown, rounds=crown.rounds[:20]), replace(crown, rounds=crown.rounds[20:])
    stripe = replace(lower, rounds=(Round("B", bytes(len(lower.rounds[-1]))),) * 3)
    assert crown_start(Design(bands=(body(), crown))) == 1
    assert crown_start(Design(bands=(body(), body(), lower, stripe, upper))) == 2
    prepared = crown_bands(Crown(sections=7), stitches=144, gauge=Gauge(), prepare=True)
    assert crown_start(Design(bands=(body(), *prepared))) == 1
    assert crown_start(Design(bands=(body(),))) is None


def test_a_decrease_above_the_brim_and_a_tam_s_increase_are_no_crown() -> None:
    crown = crown_bands(Crown(sections=6), stitches=144, gauge=Gauge())[0]
    narrows = chart("A | .... | ....\nA | .... | ...>", times=36).bands[0]
    assert crown_start(Design(bands=(body(width=5), narrows, body(30), crown))) == 3
    widens = chart("A | .... | +...", times=36).bands[0]
    assert crown_start(Design(bands=(body(width=3), widens, body(6), crown))) == 3


def drawn_crown(decrease: str = PAIRED, stitches: int = 150) -> Design:
    """Give a hat whose crown has its middle column drawn in figure, in two letters of its own."""
    design = hat(Crown(sections=6, decrease=decrease), stitches, Gauge())
    crown = design.bands[1]
    rounds = []
    for number, line in enumerate(crown.rounds):
        cells = bytearray(len(line))
        cells[len(line) // 2] = Part.FIGURE
        rounds.append(replace(line, letters="CB" if number % 2 else "DB", cells=bytes(cells)))
    return replace(design, bands=(design.bands[0], replace(crown, name="stars", rounds=tuple(rounds))))


def test_another_crown_keeps_the_pattern_in_the_middle_of_its_sections() -> None:
    design = drawn_crown()
    edit = with_crown(design, Crown(profile=FLAT, sections=6, decrease=PAIRED))
    after = edit.applied_to(design)
    assert edit.inverse().applied_to(after) == design
    assert after.bands[1].name == "stars"
    for number, line in enumerate(after.bands[1].rounds):
        if len(line) % 2:
            assert line.cells[len(line) // 2] == Part.FIGURE
            assert sum(line.cells) == 1
        assert line.letters == ("CB" if number % 2 else "DB")


def test_a_crown_on_another_count_keeps_the_pattern_in_the_middle() -> None:
    design = drawn_crown()
    wider = replace(design, bands=(replace(design.bands[0], times=174), design.bands[1]))
    after = with_crown(wider, Crown(sections=6, decrease=PAIRED)).applied_to(wider)
    assert not rounds_not_meeting(after)
    assert all(
        line.cells[len(line) // 2] == Part.FIGURE for line in after.bands[1].rounds[: len(design.bands[1].rounds)]
    )


@pytest.mark.parametrize(("before", "after"), [(150, 150), (150, 144), (144, 156), (144, 150)])
@pytest.mark.parametrize("decrease", [CENTRED, PAIRED])
def test_a_motif_with_a_middle_stitch_stays_in_the_middle_of_the_pair(decrease: str, before: int, after: int) -> None:
    """Odd sections and even ones both have a middle stitch: a line drawn up it stays there, whatever the count was."""
    design = drawn_crown(PAIRED, before)
    other = replace(design, bands=(replace(design.bands[0], times=after), design.bands[1]))
    crown = with_crown(other, Crown(sections=6, decrease=decrease))
    band = (crown.applied_to(other) if crown else other).bands[1]
    for line in band.rounds[: len(design.bands[1].rounds) - 2]:
        if line.is_shaped and len(line) > 3:
            shaped = [place for place, code in enumerate(line.shaping) if code]
            assert line.cells[(shaped[0] + shaped[-1]) // 2] == Part.FIGURE
            assert sum(line.cells) == 1


def test_the_same_crown_once_more_changes_nothing() -> None:
    assert with_crown(drawn_crown(), Crown(sections=6, decrease=PAIRED)) is None


def test_a_crown_without_the_old_pattern_is_ground_in_the_letters_given() -> None:
    design = drawn_crown()
    after = with_crown(design, Crown(sections=10, decrease=SINGLE), letters="E", keep_pattern=False).applied_to(design)
    assert {(line.letters, any(line.cells)) for line in after.bands[1].rounds} == {("E", False)}


def test_other_letters_leave_the_pattern_drawn() -> None:
    design = drawn_crown()
    after = with_crown(design, Crown(sections=6, decrease=PAIRED), letters="EF").applied_to(design)
    assert {line.letters for line in after.bands[1].rounds} == {"EF"}
    assert [line.cells for line in after.bands[1].rounds] == [line.cells for line in design.bands[1].rounds]


def test_a_hat_without_a_crown_gets_one_on_top() -> None:
    design = Design(bands=(body(),))
    after = with_crown(design, Crown(sections=6)).applied_to(design)
    assert after.bands[0] == design.bands[0]
    assert not rounds_not_meeting(after)


def test_a_hat_of_one_band_is_parted_at_its_first_decrease() -> None:
    whole = Band(name="hat", times=6, rounds=rounds_from_text("A | . | ^\nA | ... | .^.\nA | .....\nB | ....."))
    design = Design(bands=(replace(whole, times=6),))
    after = with_crown(design, Crown(sections=6, decrease=CENTRED), keep_pattern=False).applied_to(design)
    assert after.bands[0].rounds == whole.rounds[:2]
    assert not rounds_not_meeting(after)


def test_a_count_that_does_not_divide_gets_a_preparing_round_in_the_edit() -> None:
    design = Design(bands=(body(),))
    after = with_crown(design, Crown(sections=7)).applied_to(design)
    assert len(after.bands) == 3
    again = with_crown(after, Crown(sections=6)).applied_to(after)
    assert len(again.bands) == 2
    with pytest.raises(ValueError, match="7 sections do not divide"):
        with_crown(design, Crown(sections=7), prepare=False)


@given(design=designs(), crown=crowns, keeps=st.booleans())
@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
def test_any_design_gets_a_crown_that_meets_what_is_below_and_can_be_taken_back(design, crown, keeps):
    edit = None
    with suppress(ValueError):
        edit = with_crown(design, crown, keep_pattern=keeps)
    if edit is None:
        return
    after = edit.applied_to(design)
    assert edit.inverse().applied_to(after) == design
    assert crown_start(after) is not None
    assert rounds_not_meeting(after) <= rounds_not_meeting(design)


def test_a_crown_that_a_design_cannot_hold_is_refused() -> None:
    design = Design(bands=(body(rounds=590),))
    with pytest.raises(ValueError, match="more than 600"):
        with_crown(design, Crown())
