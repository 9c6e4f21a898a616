"""The rules of the model's values: what breaks one is told as a sentence with the value in it."""

import math

import pytest

from chartmaker.model.band import Band
from chartmaker.model.bounds import require_letter, require_one_of, require_short, require_text, require_within
from chartmaker.model.design import Colourway, Design
from chartmaker.model.gauge import Gauge, Swatch
from chartmaker.model.hat import CastOn, Finish, Hat, Trim
from chartmaker.model.notation import rounds_from_text
from chartmaker.model.palette import Assist, Bath, Lot, Mordant, Palette, Planned, Yarn
from chartmaker.model.reading import LabReading, ScreenReading, Spectrum, XyzReading
from chartmaker.model.round import Round
from chartmaker.model.settings import Allowances, Limits, Viewing
from tests.builders import chart, flat_spectrum, lot

PLAIN = Round("A", b"\0\0")
LAB = LabReading(lab=(50.0, 0.0, 0.0))

BROKEN_RULES = [
    (lambda: require_within("depth", math.nan, 0, 1), "depth must be a finite number, not nan"),
    (lambda: require_within("depth", 1.5, 0, 1), "depth is 1.5, outside 0 to 1"),
    (lambda: require_text("a name", " \n"), "a name is empty"),
    (lambda: require_short("a note", "n" * 20_001), "a note has 20001 characters, more than 20000"),
    (lambda: require_one_of("shape", "bonnet", ("cap", "tam")), "shape is 'bonnet'; it can be cap, tam"),
    (lambda: require_letter("the letter", "a"), "the letter is 'a'; a letter is one capital, A to Z"),
    (lambda: Gauge(stitches_per_10cm=4.0), "a gauge of 4 in 10 cm is outside 5 to 100"),
    (lambda: Gauge(rounds_per_10cm=math.inf), "a gauge of inf in 10 cm is outside 5 to 100"),
    (
        lambda: Swatch(stitches=100),
        "a swatch gives metres, grams, or the ball before and after: one of the three",
    ),
    (
        lambda: Swatch(stitches=100, metres=1.0, grams=1.0),
        "a swatch gives metres, grams, or the ball before and after: one of the three",
    ),
    (lambda: Swatch(stitches=100, ball_before_g=50), "a ball is weighed twice, before the swatch and after it"),
    (
        lambda: Swatch(stitches=100, ball_before_g=50, ball_after_g=60),
        "the ball weighs 60 g after the swatch, not less than the 50 g before",
    ),
    (lambda: Swatch(stitches=0, metres=1.0), "a swatch's stitches is 0, outside 1 to 1e+06"),
    (lambda: Hat(shape="bonnet"), "shape is 'bonnet'; it can be cap, tam, stocking"),
    (lambda: Hat(head_cm=560.0), "head_cm is 560, outside 20 to 90"),
    (lambda: Hat(ease_percent=-41.0), "ease_percent is -41, outside -40 to 40"),
    (lambda: CastOn("AB"), "the cast-on letter is 'AB'; a letter is one capital, A to Z"),
    (lambda: CastOn("A", "glued"), "the cast-on method is 'glued'; it can be long-tail, knitted, provisional"),
    (lambda: Finish("A", "sewn"), "the finishing method is 'sewn'; it can be drawn-through"),
    (lambda: Trim(kind="bead", letter="A", size_cm=5), "a trim's kind is 'bead'; it can be pompom, tassel"),
    (lambda: Trim(kind="tassel", letter="A", size_cm=0), "a tassel's size is 0 cm, outside 1 to 40 cm"),
    (lambda: Allowances(tail_cm=-1.0), "tail_cm is -1, outside 0 to 200"),
    (lambda: Limits(value_soft=21.0), "value_soft is 21, above value_clear, 20"),
    (lambda: Viewing(illuminant="moon"), "illuminant is 'moon'; it can be D65, D50, A, LED-B3, FL11"),
    (lambda: Viewing(observer="3"), "observer is '3'; it can be 2, 10"),
    (lambda: Round("", b"\0"), "a round has one to three letters, not 0"),
    (lambda: Round("ABCD", b"\0"), "a round has one to three letters, not 4"),
    (lambda: Round("A", b""), "a round has no cells"),
    (lambda: Round("A", bytes(601)), "a round has 601 cells, more than 600"),
    (lambda: Round("A", b"\0\0", b"\0"), "2 cells but 1 shaping signs"),
    (lambda: Round("A", b"\0", b"\5"), "5 is no shaping"),
    (lambda: Round("A", b"\1"), "a cell plays the figure, but the round has 1 letter(s)"),
    (lambda: Round("AB", b"\2"), "a cell plays the third, but the round has 2 letter(s)"),
    (lambda: Round("AB", b"\7"), "a cell plays the 7, but the round has 2 letter(s)"),
    (lambda: Band(name="rib", times=1, rounds=()), "a band has no rounds"),
    (lambda: Band(name="rib", times=0, rounds=(PLAIN,)), "times is 0, outside 1 to 600"),
    (
        lambda: Band(name="rib", times=301, rounds=(PLAIN,)),
        "round 1 has 2 × 301 = 602 stitches, more than 600",
    ),
    (lambda: Band(name="rib", times=1, rounds=(PLAIN,), texture="kx"), "texture is 'kx'; it is made of k and p"),
    (
        lambda: Band(name="rib", times=1, rounds=(PLAIN,), texture="kpp"),
        "round 1 has 2 cells, which a texture of 3 does not divide",
    ),
    (lambda: flat_spectrum(2.5), "a reflectance factor is 2.5, outside 0 to 2"),
    (lambda: Spectrum(start_nm=400, step_nm=10, reflectance=()), "a spectrum of 0 values is outside 8 to 600"),
    (
        lambda: Spectrum(start_nm=400, step_nm=10, reflectance=(0.5,) * 20),
        "a spectrum from 400 to 590 nm does not span 430 to 650 nm",
    ),
    (lambda: LabReading(lab=(120.0, 0.0, 0.0)), "L* is 120, outside 0 to 110"),
    (lambda: LabReading(lab=(50.0, 0.0, 201.0)), "b* is 201, outside -200 to 200"),
    (lambda: XyzReading(xyz=(10.0, -1.0, 10.0)), "Y is -1, outside 0 to 200"),
    (lambda: ScreenReading(hex="8a3b2f"), "hex is '8a3b2f'; it looks like '#8a3b2f'"),
    (lambda: Yarn(id="", name="oat"), "a yarn's id is empty"),
    (lambda: Mordant("alum", 201.0), "percent_wof is 201, outside 0 to 200"),
    (lambda: Assist("", 1.0), "an assist's name is empty"),
    (lambda: Bath(id="b", dyestuff="weld", ratio=1.0, ph_end=15.0), "ph_end is 15, outside 0 to 14"),
    (lambda: Bath(id="b", dyestuff="weld", ratio=1.0, state="frozen"), "state is 'frozen'; it can be dry, fresh"),
    (lambda: Planned("b", 13), "load is 13, outside 1 to 12"),
    (lambda: Lot(id="l", name="l", readings=(LAB,) * 65), "a lot has 65 readings, more than 64"),
    (
        lambda: Lot(id="l", name="l", planned=Planned("b"), readings=(LAB,)),
        "a planned lot cannot have readings: it does not exist yet",
    ),
    (
        lambda: Lot(id="l", name="l", planned=Planned("b"), bath="b"),
        "a lot is either planned or came from a bath, not both",
    ),
    (lambda: Palette(lots=(lot("a"), lot("a"))), "two lots have the id 'a'"),
    (lambda: Palette(lots=tuple(lot(f"l{n}") for n in range(401))), "a palette has 401 lots, more than 400"),
    (lambda: Colourway("c", (("A", "x"), ("A", "y"))), "colourway 'c' gives a letter twice"),
    (lambda: Design(bands=()), "a design has no bands"),
    (
        lambda: Design(bands=(Band(name="", times=1, rounds=(PLAIN,) * 301),) * 2),
        "a design has 602 rounds, more than 600",
    ),
    (
        lambda: Design(bands=(Band(name="", times=1, rounds=(PLAIN,)),), colourways=(Colourway("c", (("A", "x"),)),)),
        "colourway 'c': letter A is lot 'x', which is not there",
    ),
]


@pytest.mark.parametrize(("make", "sentence"), BROKEN_RULES, ids=[sentence for _, sentence in BROKEN_RULES])
def test_a_broken_rule_is_told_as_a_sentence(make, sentence):
    with pytest.raises(ValueError) as caught:  # noqa: PT011 - the sentence is compared in full
        make()
    assert str(caught.value) == sentence


def test_what_a_round_eats_follows_from_its_shaping():
    plain, k2tog, ssk, centred, make = (chart(f"A | . | {sign}").bands[0].rounds[0].eaten for sign in ".><^+")
    assert (plain, k2tog, ssk, centred, make) == (1, 2, 2, 3, 0)
    assert chart("A | ..... | .><^+").bands[0].eaten(0) == 8


def test_the_letters_in_use_are_those_that_some_stitch_edge_or_trim_is_worked_in():
    design = chart(
        "A B C | .+\nD E | ..", hat=Hat(cast_on=CastOn("F"), trims=(Trim(kind="pompom", letter="G", size_cm=5),))
    )
    assert design.letters_in_use == "ACDFG"
    assert design.bands[0].rounds[1].letters_in_use == "AC"


def test_the_letter_codes_of_a_round_follow_its_cells():
    line = rounds_from_text("D A Z | .x+")[0]
    assert list(line.cells_by_letter) == [25, 0, 3]
    assert [line.letter_of(stitch) for stitch in range(3)] == ["Z", "A", "D"]


def test_a_design_uses_the_colourway_that_is_named():
    lots = Palette(lots=(lot("oat"), lot("moss")))
    ways = (Colourway("light", (("A", "oat"),)), Colourway("dark", (("A", "moss"),)))
    design = chart("A | .")
    design = Design(bands=design.bands, palette=lots, colourways=ways)
    assert design.using("dark").colourway.lot_of("A") == "moss"
    assert design.using("dark").using("light").colourways == design.colourways
    with pytest.raises(ValueError, match="there is no colourway 'dim'; the design has 'light', 'dark'"):
        design.using("dim")


def test_the_wanted_circumference_is_head_and_ease():
    assert Hat(head_cm=50.0, ease_percent=-10.0).wanted_cm == pytest.approx(45.0)


def test_a_gauge_gives_the_size_of_one_stitch():
    gauge = Gauge(stitches_per_10cm=25.0, rounds_per_10cm=40.0)
    assert (gauge.stitch_width_cm, gauge.round_height_cm) == (0.4, 0.25)


def test_a_palette_takes_a_lot_with_its_yarn_and_its_bath():
    source = Palette(
        yarns=(Yarn(id="y", name="y"),),
        baths=(Bath(id="b", dyestuff="weld", ratio=1.0), Bath(id="other", dyestuff="madder", ratio=1.0)),
        lots=(lot("dyed", yarn="y", bath="b"), Lot(id="to-come", name="to come", planned=Planned("other", 2))),
    )
    taken = Palette(name="mine").with_lot_from(source, "dyed")
    assert taken == Palette(name="mine", yarns=source.yarns, baths=source.baths[:1], lots=source.lots[:1])
    assert taken.with_lot_from(source, "dyed") == taken
    assert taken.with_lot_from(source, "to-come").baths == source.baths
    with pytest.raises(ValueError, match="there is no lot 'gone'"):
        taken.with_lot_from(source, "gone")
