"""Edits of rounds, bands, repeats and shaping: each keeps the law of edits, and none breaks the rules of a design."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from chartmaker.knit.layout import lay_out
from chartmaker.model import band_edits, repeat_edits, round_edits
from chartmaker.model.bounds import MOST_ROUNDS
from chartmaker.model.counts import rounds_not_meeting, stitches_below
from chartmaker.model.design import Design
from chartmaker.model.edits import redraw
from chartmaker.model.notation import rounds_from_text, rounds_to_text
from chartmaker.model.shaping_edits import shape
from chartmaker.model.stitches import Part, Shaping
from tests.builders import chart
from tests.strategies import designs, texts

PATTERNS = ("A B | .x", "C | .", "D A | ...x\nB | ....", "A B C | ..x.+")
"""Rounds to lay in, of repeats that divide much, little or nothing."""
SIDES = st.sampled_from(["left", "right"])


def cells_of(line):
    """Give any cells for a round, parts among them that it has no letter for yet."""
    return st.lists(st.sampled_from(Part), min_size=len(line), max_size=len(line)).map(bytes)


@st.composite
def structure_edits(draw, design):
    """Give the name of any structure edit and a function that makes it, at any place of a design."""
    band = draw(st.integers(0, len(design.bands) - 1))
    rounds = design.bands[band].rounds
    first = draw(st.integers(0, len(rounds) - 1))
    run = {"first": first, "last": draw(st.integers(first, len(rounds) - 1))}
    up = draw(st.booleans())
    stitch = draw(st.integers(0, len(rounds[first]) - 1))
    texture = draw(st.sampled_from(["", "k", "kp", "kkpp", "K P", "kx"]))
    makers = {
        "insert": lambda: round_edits.insert_rounds(design, band=band, above=up, **run),
        "duplicate": lambda: round_edits.duplicate_rounds(design, band=band, **run),
        "delete": lambda: round_edits.delete_rounds(design, band=band, **run),
        "move": lambda: round_edits.move_rounds(design, band=band, up=up, **run),
        "add band": lambda: band_edits.add_band(design, band=band, above=up),
        "lay in": lambda: band_edits.lay_in_rounds(
            design, band=band, rounds=rounds_from_text(draw(st.sampled_from(PATTERNS))), name=draw(texts())
        ),
        "duplicate band": lambda: band_edits.duplicate_band(design, band=band),
        "delete band": lambda: band_edits.delete_band(design, band=band),
        "move band": lambda: band_edits.move_band(design, band=band, up=up),
        "rename": lambda: band_edits.rename_band(design, band=band, name=draw(texts())),
        "times": lambda: band_edits.set_times(design, band=band, times=draw(st.integers(0, 700))),
        "texture": lambda: band_edits.set_texture(design, band=band, texture=texture),
        "join": lambda: band_edits.join_band(design, band=band),
        "split": lambda: band_edits.split_band(design, band=band, index=first),
        "repeat": lambda: repeat_edits.change_repeat(
            design, band=band, by=draw(st.integers(-30, 30)), side=draw(SIDES)
        ),
        "double": lambda: repeat_edits.double_repeat(design, band=band),
        "halve": lambda: repeat_edits.halve_repeat(design, band=band),
        "redraw": lambda: redraw(design, band=band, drawn={first: draw(cells_of(rounds[first]))}, text="Draw"),
        "shape": lambda: shape(design, band=band, index=first, stitch=stitch, sign=draw(st.sampled_from(Shaping))).edit,
    }
    name = draw(st.sampled_from(sorted(makers)))
    return name, makers[name]


@given(st.data(), designs())
@settings(max_examples=150)
def test_every_structure_edit_can_be_taken_back_or_is_refused_with_a_sentence(data, design):
    _name, make = data.draw(structure_edits(design))
    try:
        edit = make()
    except ValueError as refusal:
        sentence = str(refusal)
    else:
        changed = design if edit is None else edit.applied_to(design)
        # Made anew, so that every rule of bands and rounds judges it.
        assert Design(**{field: getattr(changed, field) for field in Design.__slots__}) == changed
        if edit is not None:
            assert edit.inverse().applied_to(changed) == design
            assert edit.inverse().inverse().applied_to(design) == changed
            assert edit.text
        return
    assert len(sentence.split()) > 4


@given(designs())
def test_rounds_that_do_not_meet_are_those_that_the_layout_finds(design):
    meets = lay_out(design).meets
    assert rounds_not_meeting(design) == {index for index, met in enumerate(meets) if not met}


def text(design, band=0):
    return [line.replace(" ", "") for line in rounds_to_text(design.bands[band].rounds).splitlines()]


THREE = chart("A B | .x\nA C | xx\nA D | x.", times=72)


def test_a_round_is_inserted_above_and_below_in_its_neighbours_letters():
    above = round_edits.insert_rounds(THREE, band=0, first=1, last=1, above=True).applied_to(THREE)
    assert text(above) == ["AB|.x", "AC|..", "AC|xx", "AD|x."]
    below = round_edits.insert_rounds(THREE, band=0, first=0, last=1, above=False).applied_to(THREE)
    assert text(below) == ["AB|.x", "AC|xx", "AD|x.", "AD|..", "AD|.."]


def test_a_round_inserted_below_a_decrease_has_what_the_decrease_eats():
    design = chart("A | .. | .>\nA | ...", times=6)
    after = round_edits.insert_rounds(design, band=0, first=1, last=1, above=False).applied_to(design)
    assert text(after) == ["A|..|.>", "A|...", "A|..."]
    assert not rounds_not_meeting(after)


def test_a_run_of_rounds_is_duplicated_deleted_and_moved_together():
    assert text(round_edits.duplicate_rounds(THREE, band=0, first=0, last=1).applied_to(THREE)) == [
        *["AB|.x", "AC|xx", "AD|x.", "AC|xx", "AD|x."]
    ]
    assert text(round_edits.delete_rounds(THREE, band=0, first=1, last=2).applied_to(THREE)) == ["AD|x."]
    up = round_edits.move_rounds(THREE, band=0, first=0, last=1, up=True).applied_to(THREE)
    assert text(up) == ["AC|xx", "AD|x.", "AB|.x"]
    assert round_edits.move_rounds(up, band=0, first=1, last=2, up=False).applied_to(up) == THREE


def test_a_band_keeps_a_round_and_a_hat_a_band():
    with pytest.raises(ValueError, match="a band keeps at least one round"):
        round_edits.delete_rounds(THREE, band=0, first=0, last=2)
    with pytest.raises(ValueError, match="a hat keeps at least one band"):
        band_edits.delete_band(THREE, band=0)


def test_rounds_do_not_leave_their_band():
    with pytest.raises(ValueError, match="the top of band 'band 1' is reached"):
        round_edits.move_rounds(THREE, band=0, first=1, last=2, up=True)
    with pytest.raises(ValueError, match="the foot of band 'band 1' is reached"):
        round_edits.move_rounds(THREE, band=0, first=0, last=0, up=False)


def test_a_hat_takes_no_more_rounds_than_the_limit():
    full = chart("A | .\n" * MOST_ROUNDS, times=144)
    with pytest.raises(ValueError, match="601 rounds, more than 600"):
        round_edits.duplicate_rounds(full, band=0, first=0, last=0)
    with pytest.raises(ValueError, match="608 rounds, more than 600"):
        band_edits.add_band(full, band=0, above=True)


TWO = chart("A B | x.", "A C | ..x", times=(72, 48))


def test_a_band_is_added_with_its_neighbours_times_repeat_and_letters():
    added = band_edits.add_band(TWO, band=0, above=True).applied_to(TWO)
    assert [band.name for band in added.bands] == ["band 1", "band 3", "band 2"]
    assert (added.bands[1].times, text(added, 1)) == (72, ["AB|.."] * 8)
    assert not rounds_not_meeting(added)
    lowest = band_edits.add_band(TWO, band=0, above=False).applied_to(TWO)
    assert [band.name for band in lowest.bands] == ["band 3", "band 1", "band 2"]


def test_a_band_added_below_a_shaped_one_has_what_it_eats():
    design = chart("A | .. | .>", times=6)
    added = band_edits.add_band(design, band=0, above=False).applied_to(design)
    assert text(added, 0) == ["A|..."] * 8
    assert not rounds_not_meeting(added)


def test_bands_are_duplicated_deleted_and_moved():
    twice = band_edits.duplicate_band(TWO, band=0).applied_to(TWO)
    assert [band.name for band in twice.bands] == ["band 1", "band 3", "band 2"]
    assert twice.bands[1].rounds == twice.bands[0].rounds
    named = band_edits.rename_band(TWO, band=0, name="rib").applied_to(TWO)
    again = band_edits.duplicate_band(named, band=0).applied_to(named)
    assert [band.name for band in band_edits.duplicate_band(again, band=1).applied_to(again).bands] == [
        *["rib", "rib 2", "rib 3", "band 2"]
    ]
    assert band_edits.delete_band(twice, band=1).applied_to(twice) == TWO
    moved = band_edits.move_band(TWO, band=0, up=True).applied_to(TWO)
    assert moved.bands == TWO.bands[::-1]
    with pytest.raises(ValueError, match="is the top one already"):
        band_edits.move_band(TWO, band=1, up=True)
    with pytest.raises(ValueError, match="is the lowest one already"):
        band_edits.move_band(TWO, band=0, up=False)


def test_times_past_the_limit_are_refused():
    assert band_edits.set_times(TWO, band=0, times=300).applied_to(TWO).bands[0].times == 300
    with pytest.raises(ValueError, match="2 × 301 = 602 stitches, more than 600"):
        band_edits.set_times(TWO, band=0, times=301)


def test_a_texture_must_divide_the_repeat_and_be_made_of_k_and_p():
    assert band_edits.set_texture(TWO, band=1, texture="K K P").applied_to(TWO).bands[1].texture == "kkp"
    with pytest.raises(ValueError, match="a texture of 2 stitches does not divide the repeat, which has 3"):
        band_edits.set_texture(TWO, band=1, texture="kp")
    with pytest.raises(ValueError, match="it is made of k and p"):
        band_edits.set_texture(TWO, band=1, texture="kyp")


def test_a_band_is_split_at_a_round_and_joined_again():
    split = band_edits.split_band(THREE, band=0, index=1).applied_to(THREE)
    assert [band.name for band in split.bands] == ["band 1", "band 2"]
    assert (text(split, 0), text(split, 1)) == (["AD|x."], ["AB|.x", "AC|xx"])
    assert band_edits.join_band(split, band=0).applied_to(split) == THREE
    with pytest.raises(ValueError, match="begins with this round already"):
        band_edits.split_band(THREE, band=0, index=0)


def test_only_bands_of_one_repeat_and_texture_join():
    with pytest.raises(ValueError, match="here it is 2 × 72, and the band above eats 3 × 48"):
        band_edits.join_band(TWO, band=0)
    with pytest.raises(ValueError, match="has none above it"):
        band_edits.join_band(TWO, band=1)
    split = band_edits.split_band(THREE, band=0, index=1).applied_to(THREE)
    ribbed = band_edits.set_texture(split, band=0, texture="kp").applied_to(split)
    with pytest.raises(ValueError, match="two textures, kp and all knit"):
        band_edits.join_band(ribbed, band=0)


def test_a_repeat_is_widened_and_narrowed_at_either_side():
    left = repeat_edits.change_repeat(THREE, band=0, by=2, side="left").applied_to(THREE)
    assert text(left) == ["AB|...x", "AC|..xx", "AD|..x."]
    right = repeat_edits.change_repeat(THREE, band=0, by=1, side="right").applied_to(THREE)
    assert text(right) == ["AB|.x.", "AC|xx.", "AD|x.."]
    assert right.bands[0].times == 72
    assert text(repeat_edits.change_repeat(THREE, band=0, by=-1, side="right").applied_to(THREE)) == [
        *["AB|.", "AC|x", "AD|x"]
    ]
    with pytest.raises(ValueError, match="a round of 2 stitches cannot lose 2"):
        repeat_edits.change_repeat(THREE, band=0, by=-2, side="left")


@given(designs(), st.data())
def test_narrowing_what_was_widened_gives_the_repeat_back(design, data):
    band = data.draw(st.integers(0, len(design.bands) - 1))
    step = len(design.bands[band].texture) or 1
    widest = max(map(len, design.bands[band].rounds))
    if (widest + step) * design.bands[band].times > 600:
        with pytest.raises(ValueError, match="more than 600"):
            repeat_edits.change_repeat(design, band=band, by=step, side="left")
        return
    side = data.draw(SIDES)
    wide = repeat_edits.change_repeat(design, band=band, by=step, side=side).applied_to(design)
    assert repeat_edits.change_repeat(wide, band=band, by=-step, side=side).applied_to(wide) == design


def test_a_shaped_band_goes_on_meeting_when_it_is_widened_or_narrowed():
    crown = chart("A | .. | ><\nA | .... | ....", times=6)
    for by, side in ((1, "left"), (2, "right"), (-1, "left"), (-1, "right")):
        edit = repeat_edits.change_repeat(crown, band=0, by=by, side=side)
        if by > 0:
            assert not rounds_not_meeting(edit.applied_to(crown))
    design = chart("A | .... | .><.\nA | ......", times=6)
    narrow = repeat_edits.change_repeat(design, band=0, by=-1, side="right").applied_to(design)
    assert text(narrow) == ["A|...|.><", "A|....."]
    assert not rounds_not_meeting(narrow)


def test_a_texture_is_widened_by_whole_patterns():
    rib = band_edits.set_texture(THREE, band=0, texture="kp").applied_to(THREE)
    with pytest.raises(ValueError, match="change it by 2 at a time"):
        repeat_edits.change_repeat(rib, band=0, by=1, side="left")
    assert len(repeat_edits.change_repeat(rib, band=0, by=2, side="left").applied_to(rib).bands[0].rounds[0]) == 4


@given(designs(), st.data())
def test_a_doubled_repeat_is_the_same_hat_and_halves_again(design, data):
    band = data.draw(st.integers(0, len(design.bands) - 1))
    if design.bands[band].times % 2:
        with pytest.raises(ValueError, match="an odd number"):
            repeat_edits.double_repeat(design, band=band)
        return
    twice = repeat_edits.double_repeat(design, band=band).applied_to(design)
    assert lay_out(twice).letters.tolist() == lay_out(design).letters.tolist()
    assert lay_out(twice).shaping.tolist() == lay_out(design).shaping.tolist()
    assert repeat_edits.halve_repeat(twice, band=band).applied_to(twice) == design


def test_unequal_halves_are_not_halved():
    with pytest.raises(ValueError, match="the two halves of round 1 of band 'band 1' differ"):
        repeat_edits.halve_repeat(THREE, band=0)
    rib = replace(chart("A | ....", times=36).bands[0], texture="kkpp")
    with pytest.raises(ValueError, match="the texture kkpp does not divide half the repeat"):
        repeat_edits.halve_repeat(Design(bands=(rib,)), band=0)


BARE = chart("A B | ......\n" * 3 + "A B | xx.x.x", times=24)


def shaped(design, index, stitch, sign):
    outcome = shape(design, band=0, index=index, stitch=stitch, sign=sign)
    after = outcome.edit.applied_to(design)
    assert after.bands[0].rounds[index].shaping[outcome.stitch] == sign
    return after


def test_a_decrease_takes_in_the_neighbour_that_it_leans_over_and_the_rounds_above_follow():
    right = shaped(BARE, 1, 2, Shaping.K2TOG)
    assert text(right) == ["AB|.....", "AB|.....", "AB|.....|...>.", "AB|xx.x.x"]
    left = shaped(BARE, 1, 2, Shaping.SSK)
    assert text(left) == ["AB|.....", "AB|.....", "AB|.....|..<..", "AB|xx.x.x"]
    both = shaped(BARE, 2, 2, Shaping.CENTRED)
    assert text(both) == ["AB|....", "AB|....|..^.", "AB|......", "AB|xx.x.x"]
    for design in (right, left, both):
        assert not rounds_not_meeting(design)


def test_a_decrease_at_the_edge_of_the_repeat_takes_in_its_neighbour_of_the_other_side():
    assert text(shaped(BARE, 3, 0, Shaping.K2TOG))[0] == "AB|.....|....>"
    assert text(shaped(BARE, 3, 5, Shaping.SSK))[0] == "AB|.....|<...."
    assert text(shaped(BARE, 3, 0, Shaping.CENTRED))[0] == "AB|....|...^"


def test_a_made_stitch_pushes_its_neighbours_apart_and_leaves_again():
    made = shaped(BARE, 1, 2, Shaping.MAKE)
    assert text(made) == ["AB|.......", "AB|.......", "AB|.......|....+..", "AB|xx.x.x"]
    assert not rounds_not_meeting(made)
    assert shaped(made, 1, 2, Shaping.PLAIN) == BARE


def test_shaping_that_a_texture_or_the_limit_forbids_is_refused():
    rib = band_edits.set_texture(BARE, band=0, texture="kp").applied_to(BARE)
    with pytest.raises(ValueError, match="round 2 has 5 cells, which a texture of 2 does not divide"):
        shape(rib, band=0, index=1, stitch=2, sign=Shaping.SSK)
    full = chart("A | ..\nA | ..", times=300)
    with pytest.raises(ValueError, match="3 × 300 = 900 stitches, more than 600"):
        shape(full, band=0, index=1, stitch=0, sign=Shaping.MAKE)


@pytest.mark.parametrize("sign", [Shaping.K2TOG, Shaping.SSK, Shaping.CENTRED, Shaping.MAKE])
@pytest.mark.parametrize("stitch", range(6))
def test_making_a_stitch_plain_again_gives_the_count_back(sign, stitch):
    outcome = shape(BARE, band=0, index=1, stitch=stitch, sign=sign)
    after = outcome.edit.applied_to(BARE)
    again = shape(after, band=0, index=1, stitch=outcome.stitch, sign=Shaping.PLAIN).edit.applied_to(after)
    assert again == BARE


def test_another_lean_changes_the_sign_alone():
    right = shaped(BARE, 1, 2, Shaping.K2TOG)
    assert text(shaped(right, 1, 1, Shaping.SSK)) == [*text(right)[:2], "AB|.....|...<.", "AB|xx.x.x"]


def test_a_decrease_above_gives_way_to_one_below():
    design = chart("A | ... | .>.\nA | ....\nA | ....", times=6)
    after = shaped(design, 1, 1, Shaping.SSK)
    assert text(after) == ["A|...", "A|...|.<.", "A|...."]
    assert not rounds_not_meeting(after)
    centred = chart("A | ... | .^.\nA | .....\nA | .....", times=6)
    assert text(shaped(centred, 1, 0, Shaping.SSK)) == ["A|...|.<.", "A|....|...<", "A|....."]
    assert text(shaped(centred, 1, 4, Shaping.K2TOG)) == ["A|...|.>.", "A|....|>...", "A|....."]


def test_a_sign_first_mends_a_count_that_did_not_meet():
    design = chart("A | .....\nA | ......", times=6)
    assert text(shaped(design, 1, 4, Shaping.K2TOG)) == ["A|.....|>....", "A|......"]
    over = chart("A | ..... | >...>\nA | ......", times=6)
    assert text(shaped(over, 1, 0, Shaping.PLAIN)) == ["A|.....|>....", "A|......"]


def test_a_round_that_did_not_meet_is_left_as_it_was_when_the_one_below_changes():
    design = chart("A | ....\nA | ......\nA | ......", times=6)
    assert text(shaped(design, 1, 1, Shaping.K2TOG)) == ["A|....", "A|.....|....>", "A|......"]


def test_the_count_of_the_band_below_counts_where_it_divides():
    design = chart("A | ..", "A | ...", times=(72, 36))
    assert stitches_below(design, band=1, index=0) == 4
    outcome = shape(design, band=1, index=0, stitch=1, sign=Shaping.K2TOG)
    assert text(outcome.edit.applied_to(design), 1) == ["A|...|.>."]
    odd = chart("A | ..", "A | ...", times=(72, 35))
    assert stitches_below(odd, band=1, index=0) is None
    assert stitches_below(odd, band=0, index=0) is None


def test_a_decrease_needs_another_plain_stitch():
    with pytest.raises(ValueError, match="no other plain stitch"):
        shape(chart("A | .\nA | .", times=6), band=0, index=1, stitch=0, sign=Shaping.SSK)


def test_rounds_that_are_laid_in_keep_their_letters_and_go_round_as_the_round_below_does():
    design = chart("A B | ...x..", "B | ........", times=(4, 3))
    rounds = rounds_from_text("D C | .x..xx\nC   | ......")
    edit = band_edits.lay_in_rounds(design, band=0, rounds=rounds, name="pattern")
    laid_in = edit.applied_to(design).bands[1]
    assert (laid_in.times, laid_in.rounds, laid_in.name) == (4, rounds, "pattern")
    with pytest.raises(ValueError, match="pattern repeats every 5 stitches, which does not divide 24"):
        band_edits.lay_in_rounds(design, band=0, rounds=rounds_from_text("A | ....."), name="pattern")
