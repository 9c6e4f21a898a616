"""One sample of every version of every format, written by hand and kept for good."""

import datetime as dt
from dataclasses import replace
from pathlib import Path

import pytest

from chartmaker.files.design_reading import design_from_text, read_design
from chartmaker.files.design_writing import design_to_text
from chartmaker.files.palette_reading import read_palette, read_palette_beside
from chartmaker.files.problems import FileRefused
from chartmaker.model.design import Colourway
from chartmaker.model.gauge import Gauge, Swatch
from chartmaker.model.hat import CastOn, Finish, Hat, Trim
from chartmaker.model.palette import Assist, Bath, Lot, Mordant, Palette, Planned, Yarn
from chartmaker.model.reading import LabReading, ScreenReading, Spectrum, XyzReading
from chartmaker.model.settings import Allowances, Limits, Viewing
from tests.builders import chart

SAMPLES = Path(__file__).parent / "samples"
MADDER_NM_400_TO_700 = (
    0.05, 0.05, 0.06, 0.06, 0.07, 0.08, 0.09, 0.12, 0.18, 0.26, 0.34, 0.41, 0.46, 0.49, 0.51, 0.53,
)  # fmt: skip


def test_the_design_of_version_1_opens_with_everything_that_it_says():
    design = read_design(SAMPLES / "design-1.hat.toml")
    assert design.title == "Lockside cap"
    assert design.notes == 'Written by hand,\nwith a "quoted" word and a back\\slash.'
    assert design.palette_file == "palette-1.palette.toml"
    assert design.hat == Hat(
        shape="tam",
        head_cm=57.5,
        ease_percent=-4.0,
        cast_on=CastOn("A", "provisional"),
        finish=Finish("B", "drawn-through"),
        trims=(Trim(kind="pompom", letter="B", size_cm=6.0), Trim(kind="tassel", letter="C", size_cm=9.0)),
    )
    assert design.gauge == Gauge(stitches_per_10cm=30.0, rounds_per_10cm=34.0)
    assert design.metres_per_100g == 420.0
    assert design.swatches == (Swatch(stitches=1200, metres=17.9),)
    assert design.allowances == Allowances(
        tail_cm=12.0, float_slack_percent=8.0, carry_up_rounds=6, reserve_percent=15.0
    )
    assert design.limits == Limits(float_cm=3.0, value_clear=22.0, value_soft=11.0)
    assert design.viewing == Viewing(illuminant="D50", observer="2")
    assert design.colourways == (
        Colourway("madder on walnut", (("A", "walnut-1"), ("B", "madder-1"))),
        Colourway("turned about", (("B", "walnut-1"), ("A", "madder-1"))),
    )
    assert design.palette == Palette(
        yarns=(
            Yarn(
                id="fingering",
                name="2-ply fingering, undyed",
                metres_per_100g=460.0,
                reading=ScreenReading(hex="#EFE9dc"),
            ),
        ),
        baths=(Bath(id="madder-sept", dyestuff="madder", ratio=1.0),),
        lots=(
            Lot(id="walnut-1", name="Walnut husk, first bath", readings=(LabReading(lab=(38.25, 8.0, 17.5)),)),
            Lot(id="madder-1", name="Madder, third load", yarn="fingering", planned=Planned("madder-sept", 3)),
        ),
    )


def test_the_bands_of_version_1_open_as_they_are_drawn():
    rib, crown = read_design(SAMPLES / "design-1.hat.toml").bands
    drawn = chart(
        "A B | xx..\nA B | xx..\nA | ....",
        "A B | .x | ^.\nA B | .x.x\nA B C | x.+. | >..<\nA B | x.x.x. | ..+...",
        times=[36, 6],
    )
    assert rib == replace(drawn.bands[0], name="rib", texture="kkpp")
    assert crown == replace(drawn.bands[1], name="crown")
    assert rib.rounds[0].letters == "A"  # the last line is the first round knitted
    assert crown.rounds[3].shaping == bytes([0, 3])  # the right-most sign is stitch 1


def test_the_palette_of_version_1_opens_with_everything_that_it_says():
    assert read_palette(SAMPLES / "palette-1.palette.toml") == Palette(
        name="Allotment, 2026",
        yarns=(
            Yarn(
                id="fingering",
                name="2-ply fingering, undyed",
                metres_per_100g=460.0,
                reading=XyzReading(xyz=(71.25, 75.0, 66.5)),
            ),
            Yarn(id="lace", name="lace"),
        ),
        baths=(
            Bath(
                id="madder-sept",
                dyestuff="madder",
                part="root",
                state="fresh",
                ratio=1.5,
                mordants=(Mordant("alum", 12.0), Mordant("cream of tartar", 6.0)),
                assists=(Assist("chalk", 1.0),),
                liquor_l_per_100g=8.0,
                ph_start=6.8,
                ph_end=6.4,
                hottest_c=70.0,
                minutes=60.0,
                notes="left to cool in the pot",
            ),
        ),
        lots=(
            Lot(
                id="madder-1",
                name="Madder, first bath",
                yarn="fingering",
                bath="madder-sept",
                load=2,
                dyed_on=dt.date(2026, 9, 12),
                on_hand_g=48.0,
                readings=(
                    Spectrum(start_nm=400, step_nm=20, reflectance=MADDER_NM_400_TO_700),
                    LabReading(lab=(38.2, 41.0, 27.5), viewing=Viewing(illuminant="A", observer="2")),
                    ScreenReading(hex="#8a3b2f"),
                ),
            ),
            Lot(id="madder-2", name="Madder, to come", planned=Planned("madder-sept", 1)),
        ),
    )


def test_the_least_that_a_design_needs_takes_every_default():
    text = 'format = "chartmaker-design"\nversion = 1\n[[bands]]\nname = "band 1"\ntimes = 4\nrounds = "A B | x."'
    assert design_from_text(text, "least") == chart("A B | x.", times=4)


def test_what_is_unfinished_opens_and_saves():
    unfinished = chart("A B | xx | >.\nA | ...", "A Z | x....", times=[7, 11])
    assert unfinished.bands[1].eaten(0) != unfinished.bands[0].stitches(1)  # counts do not meet
    assert unfinished.colourway.lot_of("Z") is None
    assert design_from_text(design_to_text(unfinished), "unfinished") == unfinished


def test_the_palette_beside_a_design_is_found_from_the_place_of_the_design():
    design = read_design(SAMPLES / "design-1.hat.toml")
    beside = read_palette_beside(design, SAMPLES / "design-1.hat.toml")
    assert beside == read_palette(SAMPLES / "palette-1.palette.toml")


@pytest.mark.parametrize("named", ["", "gone.palette.toml", "design-1.hat.toml/inside", "a\0b", "x" * 5000])
def test_a_palette_that_is_not_there_leaves_the_design_alone(named):
    design = chart("A | .", palette_file=named)
    assert read_palette_beside(design, SAMPLES / "design-1.hat.toml") is None


def test_a_palette_beside_that_is_broken_is_refused():
    design = chart("A | .", palette_file="broken/many-things.palette.toml")
    with pytest.raises(FileRefused, match=r"many-things\.palette\.toml: 15 problems"):
        read_palette_beside(design, SAMPLES / "design-1.hat.toml")
