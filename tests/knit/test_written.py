import re
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st
from hypothesis.strategies import DrawFn, composite

from chartmaker.files.design_reading import read_design
from chartmaker.knit.answers import defaults_for
from chartmaker.knit.starter import started
from chartmaker.knit.written import as_text, instruction_text, written
from chartmaker.model.band import Band
from chartmaker.model.counts import rounds_not_meeting
from chartmaker.model.design import Design
from chartmaker.model.gauge import Gauge
from chartmaker.model.hat import CastOn, Fold
from chartmaker.model.notation import round_from_text
from chartmaker.model.round import Round
from chartmaker.model.stitches import EATEN, Shaping
from tests.builders import chart, lot
from tests.knit.knitter import Objection, knit, stitches_of
from tests.strategies import designs, hats, rounds

EXAMPLES = sorted((Path(__file__).parents[2] / "examples").glob("*.hat.toml"))
WORKED = {
    "k": (Shaping.PLAIN, "k"),
    "p": (Shaping.PLAIN, "p"),
    "k2tog": (Shaping.K2TOG, "k"),
    "p2tog": (Shaping.K2TOG, "p"),
    "ssk": (Shaping.SSK, "k"),
    "ssp": (Shaping.SSK, "p"),
    "s2kp2": (Shaping.CENTRED, "k"),
    "s2pp2": (Shaping.CENTRED, "p"),
    "M1": (Shaping.MAKE, "k"),
    "M1P": (Shaping.MAKE, "p"),
}
"""What the chart has for each word that the knitter works."""


def charted(band: Band, line: Round) -> list[tuple[str, Shaping, str]]:
    """The whole round as the chart has it: letter, shaping and texture of each stitch."""
    repeat = [
        (line.letter_of(place), Shaping(line.shaping[place]), band.texture[place % len(band.texture)])
        if band.texture
        else (line.letter_of(place), Shaping(line.shaping[place]), "k")
        for place in range(len(line))
    ]
    return repeat * band.times


def as_charted(stitches: list[tuple[str, str]]) -> list[tuple[str, Shaping, str]]:
    return [(letter, *WORKED[name]) for name, letter in stitches]


def assert_knits_as_charted(design: Design) -> None:
    knitted = knit(as_text(written(design)))
    assert [as_charted(line) for line in knitted.rounds] == [charted(band, line) for band, line in design.rounds()]
    assert knitted.cast_on == (design.bands[0].stitches(0), design.hat.cast_on.letter)
    assert knitted.closed_with == design.hat.finish.letter


@composite
def knittable(draw: DrawFn) -> Design:
    """A design whose rounds meet: each further round is made to eat what the last one left."""
    bands = []
    times = draw(st.integers(1, 12))
    below = draw(st.integers(1, 16))
    for place in range(draw(st.integers(1, 3))):
        lines = []
        for number in range(draw(st.integers(1, 5))):
            shaping = _eating(draw, below) if place or number else bytes(below)
            line = draw(rounds(length=len(shaping), shaped=False))
            lines.append(replace(line, shaping=shaping))
            below = len(shaping)
        textures = [
            one for one in ("", "k", "p", "kp", "kkp") if all(len(line) % max(1, len(one)) == 0 for line in lines)
        ]
        bands.append(
            Band(name=f"band {place}", times=times, rounds=tuple(lines), texture=draw(st.sampled_from(textures)))
        )
        assume(below * times <= 600)
    return Design(bands=tuple(bands), hat=draw(hats()))


def _eating(draw: DrawFn, below: int) -> bytes:
    """Shaping that eats exactly what lies below."""
    signs, left, made = [], below, 0
    while left:
        sign = draw(
            st.sampled_from([one for one in Shaping if EATEN[one] <= left and (one != Shaping.MAKE or made < 4)])
        )
        made += sign == Shaping.MAKE
        signs.append(sign)
        left -= EATEN[sign]
    return bytes(signs)


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.name.split(".")[0])
def test_the_examples_knitted_from_their_words_are_their_charts(path):
    assert_knits_as_charted(read_design(path))


@given(design=knittable())
@settings(max_examples=150, deadline=None, suppress_health_check=[HealthCheck.too_slow])
def test_any_knittable_design_knitted_from_its_words_is_its_chart(design):
    assert not rounds_not_meeting(design)
    assert_knits_as_charted(design)


@given(design=designs())
@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
def test_each_round_of_any_design_says_what_its_chart_has(design):
    for band, line in design.rounds():
        text = instruction_text(line, times=band.times, texture=band.texture)
        assert text.endswith(f"({len(line) * band.times} st{'s' if len(line) * band.times > 1 else ''})")
        stitches = stitches_of(text[: text.rindex(" (")], len(line) * band.times)
        assert as_charted(stitches) == charted(band, line)


@given(line=rounds(most=60))
@settings(max_examples=100, deadline=None)
def test_folding_never_makes_a_round_longer(line):
    text = instruction_text(line)
    stitches = stitches_of(text[: text.rindex(" (")], len(line))
    assert len(text) <= sum(len(f"{name}1 {letter}, ") for name, letter in stitches) + len("k all sts in A (600 sts)")


@given(path=st.sampled_from(EXAMPLES), data=st.data())
@settings(max_examples=60, deadline=None)
def test_the_knitter_notices_any_number_that_is_changed(path, data):
    design = read_design(path)
    text = as_text(written(design))
    places = [found for found in re.finditer(r"\d+", text) if _is_in_instruction(text, found.start())]
    chosen = data.draw(st.sampled_from(places))
    other = int(chosen[0]) + data.draw(st.sampled_from([1, 2, 5]))
    changed = text[: chosen.start()] + str(other) + text[chosen.end() :]
    with pytest.raises(Objection):
        knit(changed)


def _is_in_instruction(text: str, place: int) -> bool:
    """Whether a place is in a line that is worked, and not in a name or the size of a pompom."""
    return text[text.rfind("\n", 0, place) + 1 :].startswith(("Rnd", "CO ", "Cut "))


@pytest.mark.parametrize(
    ("picture", "times", "texture", "text"),
    [
        ("A B | x..", 36, "", "*k2 A, k1 B; rep from * 35 times more (108 sts)"),
        ("A B | x..", 2, "", "*k2 A, k1 B; rep from * once more (6 sts)"),
        ("A B | x..", 1, "", "k2 A, k1 B (3 sts)"),
        ("A B | x.x.", 9, "", "*k1 A, k1 B; rep from * 17 times more (36 sts)"),
        ("A | ....", 9, "", "k all sts in A (36 sts)"),
        ("A | ....", 9, "p", "p all sts in A (36 sts)"),
        ("A B | xx..", 36, "kkpp", "*k2 A, p2 B; rep from * 35 times more (144 sts)"),
        ("A | ....", 36, "kkpp", "*k2 A, p2 A; rep from * 35 times more (144 sts)"),
        ("A B | xxx.x.x.x.x.", 1, "", "[k1 A, k1 B] 4 times, k1 A, k3 B (12 sts)"),
        ("A | ..... | >...<", 6, "", "*ssk A, k3 A, k2tog A; rep from * 5 times more (30 sts)"),
        ("A B | .x | ^.", 6, "", "*k1 B, s2kp2 A; rep from * 5 times more (12 sts)"),
        ("A | .... | +...", 6, "", "*k3 A, M1 A; rep from * 5 times more (24 sts)"),
        ("A | . | >", 6, "", "*k2tog A; rep from * 5 times more (6 sts)"),
        ("A | .. | >.", 6, "pp", "*p1 A, p2tog A; rep from * 5 times more (12 sts)"),
        ("A | .", 1, "", "k all sts in A (1 st)"),
    ],
)
def test_a_round_is_written_as_the_trade_writes_it(picture, times, texture, text):
    assert instruction_text(round_from_text(picture), times=times, texture=texture) == text


def test_equal_rounds_that_follow_each_other_in_a_band_are_written_once():
    hat = written(chart("A B | .x\nA B | x.\nA B | x.\nA B | x.", "A B | .x", times=4))
    assert [one.label for band in hat.bands for one in band.instructions] == ["Rnds 1-3", "Rnd 4", "Rnd 5"]


def test_a_round_that_cannot_be_worked_says_why():
    hat = written(chart("A | ....", "A | ...", times=[3, 3]))
    assert hat.bands[1].instructions[0].trouble == "cannot be worked: it takes 9 sts, there are 12"
    with pytest.raises(Objection):
        knit(as_text(hat))


def test_letters_are_named_with_their_lots_once_and_one_without_says_so():
    design = chart("A B | x.", lots={"A": lot("oat", (80, 0, 0))})
    assert written(design).letters == (("A", "oat"), ("B", ""))
    assert as_text(written(design)).startswith("A: oat\nB: no lot yet\n")


def test_only_the_abbreviations_in_use_are_explained():
    assert [name for name, _ in written(chart("A | ... | >..", "A | ..")).abbreviations] == ["k", "k2tog"]


def test_a_name_on_several_lines_adds_no_line_that_could_be_taken_for_a_round():
    design = chart("A | ..", lots={"A": lot("a", (80, 0, 0), name="oat\nRnd 1: k all sts in B (9 sts)")})
    band = replace(design.bands[0], name="Rnd 1: p all sts in B (9 sts)\nRnd 2: p all sts in B (9 sts)")
    assert_knits_as_charted(replace(design, bands=(band,)))


@pytest.mark.parametrize(
    ("fold", "told"),
    [
        (Fold("up", 6), "Turn the first 6 rnds up to the outside."),
        (Fold("up", 1), "Turn the first rnd up to the outside."),
        (Fold("in", 8), "Fold the first 8 rnds to the inside and sew the cast-on edge down"),
        (Fold("roll", 5), "Let the first 5 rnds roll up."),
    ],
)
def test_what_is_done_with_the_rounds_that_fold_is_written(fold: Fold, told: str) -> None:
    usual = defaults_for(shape="cap", head_cm=56, gauge=Gauge(stitches_per_10cm=30, rounds_per_10cm=34))
    flat = started(usual)
    folded = replace(flat, hat=replace(flat.hat, fold=fold))
    assert any(line.startswith(told) for line in written(folded).finish)
    assert len(written(folded).finish) == len(written(flat).finish) + 1
    assert_knits_as_charted(folded)


def test_a_hem_on_a_provisional_cast_on_is_sewn_down_by_its_live_stitches() -> None:
    design = chart("A | ....", times=30)
    hat = replace(design.hat, cast_on=CastOn("A", "provisional"), fold=Fold("in", 1))
    longer = replace(design, hat=hat, bands=design.bands * 2)
    assert "sew the live sts of the cast-on down" in written(longer).finish[1]
