"""Edits of a block: what each comes to, the law of edits, and the laws that they keep among each other."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from chartmaker.knit.outline import chart_offsets
from chartmaker.model import block_edits
from chartmaker.model.block import Block, cut_out, drawing_of, whole_rounds
from chartmaker.model.clip import GAP, clip_from_text
from chartmaker.model.design import Design
from chartmaker.model.notation import rounds_to_text
from tests.builders import chart
from tests.model.blocks import designs_with_block
from tests.model.test_block import WEDGE

PLAIN = chart("A B | x....x\nA B | xx....\nA B | ......")
OVER = Block(band=0, first=1, last=2, column=4, width=3)
"""Stitches 5, 6 and 1 of the upper two rounds."""


def rounds_of(design, band=0):
    return [line.split("|")[1].strip() for line in rounds_to_text(design.bands[band].rounds).splitlines()]


def after(design, edit):
    return rounds_of(edit.applied_to(design)) if edit is not None else rounds_of(design)


def parts(design):
    return [[line.cells for line in band.rounds] for band in design.bands]


def test_clearing_leaves_ground_and_what_lies_beside():
    assert after(PLAIN, block_edits.clear(PLAIN, OVER)) == ["......", "......", "......"]
    part = Block(band=0, first=1, last=1, column=4, width=1)
    assert after(PLAIN, block_edits.clear(PLAIN, part)) == ["x....x", "x.....", "......"]


def test_a_piece_pasted_at_the_join_goes_on_round_it_and_stops_at_the_bands_top():
    clip = cut_out(PLAIN, OVER)
    laid = block_edits.paste(PLAIN, clip, to=(0, 0, 5))
    assert after(PLAIN, laid.edit) == ["x....x", ".x..xx", "x....x"]
    assert laid.left_out == 0
    top = block_edits.paste(PLAIN, clip, to=(0, 2, 2))
    assert after(PLAIN, top.edit) == ["x.xx.x", "xx....", "......"]
    assert top.left_out == 1
    assert top.block == Block(band=0, first=2, last=2, column=2, width=3)


def test_a_move_leaves_ground_where_the_block_was_and_wraps():
    block = Block(band=0, first=1, last=1, column=4, width=2)
    laid = block_edits.move(PLAIN, block, to=(0, 0, 5))
    assert after(PLAIN, laid.edit) == ["x....x", "......", "x....x"]
    assert laid.block == Block(band=0, first=0, last=0, column=5, width=2)
    assert laid.left_out == 0


def test_a_block_may_be_moved_onto_part_of_itself():
    block = Block(band=0, first=1, last=1, column=4, width=2)
    assert after(PLAIN, block_edits.move(PLAIN, block, to=(0, 1, 3)).edit) == ["x....x", ".xx...", "......"]


def test_a_copy_leaves_what_was_there():
    block = Block(band=0, first=1, last=1, column=4, width=2)
    assert after(PLAIN, block_edits.copy(PLAIN, block, to=(0, 0, 0)).edit) == ["x....x", "xx....", "....xx"]


def test_a_block_moves_to_another_band_as_one_edit():
    design = chart("A B | xx..\nA B | ....", "C D | ......")
    laid = block_edits.move(design, Block(band=0, first=1, last=1, column=2, width=2), to=(1, 0, -1))
    moved = laid.edit.applied_to(design)
    assert (rounds_of(moved, 0), rounds_of(moved, 1)) == (["....", "...."], ["x....x"])
    assert laid.edit.inverse().applied_to(moved) == design
    assert laid.block == Block(band=1, first=0, last=0, column=5, width=2)


def test_a_block_is_flipped_turned_and_shifted_where_it_stands_even_over_the_join():
    design = chart("A B | x....x\nA B | .....x\nA B | ......")
    assert after(design, block_edits.flip_sideways(design, OVER)) == ["xx....", ".x....", "......"]
    assert after(design, block_edits.flip_upright(design, OVER)) == [".....x", "x....x", "......"]
    assert after(design, block_edits.turn_half(design, OVER)) == [".x....", "xx....", "......"]
    assert after(design, block_edits.shift(design, OVER, stitches=-1)) == ["xx....", "x.....", "......"]
    assert after(design, block_edits.shift(design, OVER, rounds=1)) == [".....x", "x....x", "......"]


def test_whole_rounds_are_shifted_round_the_circumference():
    block = whole_rounds(PLAIN, band=0, first=0, last=2)
    assert after(PLAIN, block_edits.shift(PLAIN, block, stitches=1)) == ["....xx", "x....x", "......"]
    assert after(PLAIN, block_edits.shift(PLAIN, block, stitches=-1)) == ["xx....", ".xx...", "......"]


def test_a_block_is_repeated_across_its_rounds_from_where_it_stands():
    design = chart("A B | xxxxxx\nA B | x.....")
    block = Block(band=0, first=0, last=0, column=5, width=2)
    assert after(design, block_edits.repeat(design, block)) == ["xxxxxx", "x.x.x."]


def test_a_block_that_does_not_divide_the_repeat_is_told_which_would():
    with pytest.raises(
        ValueError, match=r"^a block of 4 stitches does not divide the repeat of 6; one of 1, 2, 3 or 6"
    ):
        block_edits.repeat(PLAIN, Block(band=0, first=0, last=0, column=0, width=4))


def test_a_piece_wider_than_the_repeat_or_past_the_rounds_is_refused():
    clip = clip_from_text("A B | x..x..x")
    with pytest.raises(ValueError, match="the piece is 7 stitches wide, the band's repeat only 6"):
        block_edits.paste(PLAIN, clip, to=(0, 0, 0))
    with pytest.raises(ValueError, match="the band has no round 4"):
        block_edits.paste(PLAIN, clip_from_text("A B | x"), to=(0, 3, 0))


def test_a_pasted_third_part_takes_the_letter_that_the_nearest_round_has_for_it():
    design = chart("A B | ...\nA B C | ..+\nA B | ...")
    pasted = block_edits.paste(design, clip_from_text("X Y Z | +x"), to=(0, 2, 0)).edit.applied_to(design)
    assert pasted.bands[0].rounds[2].letters == "ABC"
    assert rounds_of(pasted)[0] == ".+x"


# --- shaped bands


def test_a_whole_wedge_is_flipped_about_the_middle_of_each_round():
    design = chart("A B | .x | ><\nA B | ..xx | >..<\nA B | x....x", times=6)
    whole = whole_rounds(design, band=0, first=0, last=2, columns=chart_offsets)
    assert after(design, block_edits.flip_sideways(design, whole, chart_offsets)) == ["x.", "xx..", "x....x"]


def test_rounds_of_a_wedge_that_lean_are_flipped_each_about_its_own_middle():
    design = chart("A B | ..x | ..<\nA B | ..xx", times=6)
    whole = whole_rounds(design, band=0, first=0, last=1, columns=chart_offsets)
    assert after(design, block_edits.flip_sideways(design, whole, chart_offsets)) == ["x..", "xx.."]


@pytest.mark.parametrize(
    "make",
    [
        block_edits.flip_upright,
        block_edits.turn_half,
        lambda design, block, columns: block_edits.shift(design, block, stitches=1, columns=columns),
        lambda design, block, columns: block_edits.shift(design, block, rounds=1, columns=columns),
        block_edits.repeat,
    ],
)
def test_what_cannot_be_right_in_a_wedge_is_refused_with_a_sentence(make):
    whole = whole_rounds(WEDGE, band=0, first=0, last=2, columns=chart_offsets)
    with pytest.raises(ValueError, match="rounds of one count"):
        make(WEDGE, whole, chart_offsets)


def test_one_round_of_a_wedge_is_shifted_within_its_own_stitches():
    one = whole_rounds(WEDGE, band=0, first=1, last=1, columns=chart_offsets)
    design = block_edits.clear(WEDGE, Block(band=0, first=1, last=1, column=1, width=1), chart_offsets).applied_to(
        WEDGE
    )
    assert rounds_of(design) == ["xx", "xxx.", "x....x"]
    assert after(design, block_edits.shift(design, one, stitches=2, columns=chart_offsets)) == ["xx", "x.xx", "x....x"]


def test_a_piece_laid_over_a_wedges_edge_leaves_out_what_lies_beside_it():
    laid = block_edits.paste(WEDGE, clip_from_text("A | ...\nA | ..."), to=(0, 1, 0), columns=chart_offsets)
    assert after(WEDGE, laid.edit) == ["x.", "xx..", "x....x"]


# --- laws


@st.composite
def edits(draw, design, block):
    """Give the name of any edit of a block, and a function that makes it."""
    up, across = draw(st.integers(-9, 9)), draw(st.integers(-30, 30))
    band = draw(st.integers(0, len(design.bands) - 1))
    to = (band, draw(st.integers(0, len(design.bands[band].rounds) - 1)), across)
    clip = cut_out(design, block, chart_offsets)
    makers = {
        "clear": lambda: block_edits.clear(design, block, chart_offsets),
        "paste": lambda: block_edits.paste(design, clip, to=to, columns=chart_offsets).edit,
        "move": lambda: block_edits.move(design, block, to=to, columns=chart_offsets).edit,
        "copy": lambda: block_edits.copy(design, block, to=to, columns=chart_offsets).edit,
        "sideways": lambda: block_edits.flip_sideways(design, block, chart_offsets),
        "upright": lambda: block_edits.flip_upright(design, block, chart_offsets),
        "turn": lambda: block_edits.turn_half(design, block, chart_offsets),
        "shift": lambda: block_edits.shift(design, block, rounds=up, stitches=across, columns=chart_offsets),
        "repeat": lambda: block_edits.repeat(design, block, chart_offsets),
    }
    name = draw(st.sampled_from(sorted(makers)))
    return makers[name]


@given(st.data(), designs_with_block())
@settings(max_examples=120)
def test_every_edit_of_a_block_can_be_taken_back_keeps_shading_and_shaping_or_is_refused(data, drawn):
    design, block = drawn
    make = data.draw(edits(design, block))
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
            assert edit.text
        for (_, old), (_, new) in zip(design.rounds(), changed.rounds(), strict=True):
            assert new.shaping == old.shaping
            assert new.letters.startswith(old.letters)
        return
    assert len(sentence.split()) > 6


def tried(make, *, design):
    """Give the design after an edit; None where it is refused."""
    try:
        return make().applied_to(design)
    except ValueError:
        return None


@given(designs_with_block())
@settings(max_examples=100)
def test_flipping_twice_is_as_it_was_and_turning_is_flipping_both_ways(drawn):
    design, block = drawn
    for flip in (block_edits.flip_sideways, block_edits.flip_upright, block_edits.turn_half):
        once = tried(lambda flip=flip: flip(design, block, chart_offsets), design=design)
        if once is not None:
            assert parts(flip(once, block, chart_offsets).applied_to(once)) == parts(design)
    sideways = tried(lambda: block_edits.flip_sideways(design, block, chart_offsets), design=design)
    both = sideways and tried(lambda: block_edits.flip_upright(sideways, block, chart_offsets), design=sideways)
    if both:
        turned = block_edits.turn_half(design, block, chart_offsets).applied_to(design)
        assert parts(turned) == parts(both)


@given(designs_with_block(shaped=False, even=True), st.integers(-30, 30), st.integers(-9, 9))
def test_where_rounds_have_one_count_every_turn_can_be_and_shifts_are_taken_back_by_their_contrary(drawn, across, up):
    design, block = drawn
    for flip in (block_edits.flip_sideways, block_edits.flip_upright, block_edits.turn_half):
        once = flip(design, block).applied_to(design)
        assert parts(flip(once, block).applied_to(once)) == parts(design)
    there = block_edits.shift(design, block, stitches=across, rounds=up).applied_to(design)
    back = block_edits.shift(there, block, stitches=-across, rounds=-up).applied_to(there)
    assert parts(back) == parts(design)
    assert block_edits.shift(design, block, stitches=block.width, rounds=block.height).changes == ()


@given(designs_with_block())
def test_cutting_and_pasting_in_place_is_as_it_was(drawn):
    design, block = drawn
    clip = cut_out(design, block, chart_offsets)
    cut = block_edits.clear(design, block, chart_offsets).applied_to(design)
    emptied = cut_out(cut, block, chart_offsets)
    assert all(set(line) <= {0, GAP} for line in emptied.lines)
    laid = block_edits.paste(cut, clip, to=(block.band, block.first, block.column), columns=chart_offsets)
    assert (laid.edit.applied_to(cut) if laid.edit else cut) == design
    assert (laid.block, laid.left_out) == (block, 0)


@given(designs_with_block(), st.integers(-3, 3))
def test_moving_by_whole_repeats_is_as_it_was(drawn, times):
    design, block = drawn
    width = drawing_of(design.bands[block.band], chart_offsets).width
    to = (block.band, block.first, block.column + times * width)
    assert block_edits.move(design, block, to=to, columns=chart_offsets).edit is None
    assert block_edits.copy(design, block, to=to, columns=chart_offsets).edit is None


@given(designs_with_block(shaped=False, even=True))
def test_a_repeated_block_stands_all_round_and_repeating_again_changes_nothing(drawn):
    design, block = drawn
    repeated = tried(lambda: block_edits.repeat(design, block), design=design)
    width = drawing_of(design.bands[block.band]).width
    assert (repeated is None) == (width % block.width != 0)
    if repeated is not None:
        clip = cut_out(design, block)
        for copy in range(width // block.width):
            column = (block.column + copy * block.width) % width
            moved = Block(band=block.band, first=block.first, last=block.last, column=column, width=block.width)
            assert cut_out(repeated, moved).lines == clip.lines
        assert block_edits.repeat(repeated, block).changes == ()
