"""What a change would do to the yarn: each is the same as making the change and working everything out again."""

from dataclasses import replace

import pytest
from hypothesis import given, settings

from chartmaker.appraisal import appraise
from chartmaker.knit.what_if import COLOURWAY, SIZE, WITHOUT_BAND, changed_yarn, what_ifs
from chartmaker.model.counts import rounds_not_meeting
from chartmaker.model.design import Colourway, Design
from chartmaker.model.palette import Palette, Yarn
from tests.builders import chart, lot
from tests.strategies import designs

HAT = chart("A B | .x..", "B | ....", "A C | .x..", times=36, gauge=(28.0, 32.0))


def test_another_size_takes_its_share_of_stitches_more_or_less() -> None:
    sizes = [one for one in what_ifs(HAT) if one.kind == SIZE]
    assert [one.text.split()[0] for one in sizes] == sorted((one.text.split()[0] for one in sizes), key=int)
    wider = next(one for one in sizes if one.text.startswith("148 "))
    by_letter = {change.letter: change for change in changed_yarn(HAT, wider.edit)}
    assert by_letter["C"].now is not None
    assert by_letter["C"].then is not None
    assert (by_letter["C"].now.stitches, by_letter["C"].then.stitches) == (36, 37)


def test_another_colourway_weighs_by_its_own_lots_grist() -> None:
    thin = Yarn(id="thin", name="thin", metres_per_100g=920)
    lots = (lot("a"), lot("b"), lot("c", yarn="thin"))
    plain, other = Colourway("one", (("A", "a"), ("B", "b"))), Colourway("two", (("A", "c"), ("B", "b")))
    design = Design(bands=HAT.bands[:1], colourways=(plain, other), palette=Palette(yarns=(thin,), lots=lots))
    (colourway,) = (one for one in what_ifs(design) if one.kind == COLOURWAY)
    changes = {change.letter: change for change in changed_yarn(design, colourway.edit)}
    assert changes["B"].likely_g == 0
    assert changes["A"].now is not None
    assert changes["A"].likely_g == pytest.approx(-changes["A"].now.grams.likely / 2)


def test_a_band_left_out_takes_its_letters_yarn_with_it() -> None:
    without = [one for one in what_ifs(HAT) if one.kind == WITHOUT_BAND]
    assert [one.text for one in without] == ["band 1, 1 round", "band 2, 1 round", "band 3, 1 round"]
    changes = {change.letter: change for change in changed_yarn(HAT, without[2].edit)}
    assert changes["C"].then is None
    assert changes["C"].now is not None
    assert changes["C"].likely_g == -changes["C"].now.grams.likely


def test_a_band_that_the_next_one_stands_on_cannot_go() -> None:
    shaped = chart("A | ....", "A | .. | >>", "A | ..", times=10)
    assert [one.text for one in what_ifs(shaped) if one.kind == WITHOUT_BAND] == ["band 3, 1 round"]


@settings(max_examples=40)
@given(designs())
def test_no_change_leaves_more_rounds_unmet_and_each_is_what_appraising_it_says(design: Design) -> None:
    for one in what_ifs(design)[:4]:
        after = one.edit.applied_to(design)
        assert len(rounds_not_meeting(after)) <= len(rounds_not_meeting(design))
        then = [change.then for change in changed_yarn(design, one.edit) if change.then]
        assert then == [letter.requirement for letter in appraise(after).letters]


@settings(max_examples=40)
@given(designs())
def test_just_those_bands_can_go_without_which_no_more_rounds_miss(design: Design) -> None:
    missed = len(rounds_not_meeting(design))
    numbers = range(len(design.bands)) if len(design.bands) > 1 else ()
    expected = [(*design.bands[:number], *design.bands[number + 1 :]) for number in numbers]
    expected = [bands for bands in expected if len(rounds_not_meeting(replace(design, bands=bands))) <= missed]
    offered = [one.edit.applied_to(design).bands for one in what_ifs(design) if one.kind == WITHOUT_BAND]
    assert offered == expected


def test_bands_of_one_name_are_told_apart_by_their_place() -> None:
    plain, other = chart("A | ..", times=10).bands[0], chart("B | ..", times=10).bands[0]
    hat = replace(HAT, bands=(replace(plain, name="rest"), replace(other, name="edge"), replace(plain, name="rest")))
    without = [one.text for one in what_ifs(hat) if one.kind == WITHOUT_BAND]
    assert without == ["rest (band 1), 1 round", "edge, 1 round", "rest (band 3), 1 round"]
