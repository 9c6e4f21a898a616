"""The cap and the tam: that they can be knitted as printed, and say nothing but what they are there to say."""

import sys
from dataclasses import replace
from pathlib import Path

import pytest

from chartmaker.appraisal import Appraisal, appraise
from chartmaker.files.design_reading import read_design
from chartmaker.files.palette_reading import read_palette_beside
from chartmaker.knit.profile import flat_disc_decreases
from chartmaker.model.band import Band
from chartmaker.model.design import Design

FOLDER = Path(__file__).parents[2] / "examples"
PATHS = {"cap": FOLDER / "lockside-cap.hat.toml", "tam": FOLDER / "towpath-tam.hat.toml"}
CAP, TAM = (read_design(path) for path in PATHS.values())
BOTH = pytest.mark.parametrize("design", [CAP, TAM], ids=["cap", "tam"])
WOAD_SHORT = [("yarn-short", "letter B, lot woad-1"), ("yarn-short", "letter C, lot woad-2")]
RED_SUNK_IN_BLUE = [
    ("pair-contrast", "C with E"),
    ("round-contrast", "round 15, small lozenges"),
    ("round-contrast", "round 19, small lozenges"),
    ("round-contrast", "round 25, lozenges and crosses"),
    ("round-contrast", "round 35, lozenges and crosses"),
    ("round-contrast", "round 51, crown"),
    ("round-contrast", "round 59, crown"),
]


def warnings_of(appraisal: Appraisal) -> list[tuple[str, str]]:
    return [(each.check, each.place.text) for each in appraisal.findings if each.severity == "warn"]


def band(design: Design, name: str) -> Band:
    return next(each for each in design.bands if each.name == name)


@pytest.mark.parametrize(
    ("design", "colourway", "expected"),
    [
        (CAP, "woad and onion", WOAD_SHORT),
        (CAP, "madder on walnut", []),
        (CAP, "red on blue", RED_SUNK_IN_BLUE + WOAD_SHORT),
        (TAM, "madder and woad", []),
        (TAM, "weld and alder", []),
    ],
    ids=lambda value: value if isinstance(value, str) else None,
)
def test_each_colourway_warns_of_what_it_is_there_to_show(
    design: Design, colourway: str, expected: list[tuple[str, str]]
) -> None:
    appraisal = appraise(design.using(colourway))
    assert warnings_of(appraisal) == expected
    assert not [each for each in appraisal.findings if each.severity == "stop"]


@BOTH
def test_the_colourway_in_use_is_clear_in_every_pair_and_round(design: Design) -> None:
    appraisal = appraise(design)
    assert {pair.grade for pair in appraisal.pairs if pair.drawn_cm > 0} == {"clear"}
    assert {line.grade for line in appraisal.rounds} == {"clear", "plain"}
    assert "note" not in {each.severity for each in appraisal.findings}


@BOTH
def test_every_colourway_is_tried_above_and_gives_each_letter_a_lot(design: Design) -> None:
    tried = {"woad and onion", "madder on walnut", "red on blue", "madder and woad", "weld and alder"}
    for colourway in design.colourways:
        assert colourway.name in tried
        assert [letter for letter, _ in colourway.lots] == list(design.letters_in_use)


@BOTH
def test_every_round_eats_what_lies_below_it(design: Design) -> None:
    appraisal = appraise(design)
    assert all(appraisal.fabric.meets)
    assert len(appraisal.fabric.counts) == len(appraisal.rounds)


@BOTH
def test_no_round_holds_more_than_two_letters(design: Design) -> None:
    assert max(len(line.letters) for line in appraise(design).rounds) == 2


@BOTH
def test_no_float_is_longer_than_the_limit(design: Design) -> None:
    longest = max(line.longest_float_cm for line in appraise(design).rounds)
    assert 0 < longest <= 2.5 == design.limits.float_cm


@BOTH
def test_the_crown_closes_without_puckering_on_few_stitches(design: Design) -> None:
    appraisal = appraise(design)
    assert not any(appraisal.profile.puckers)
    assert 8 <= appraisal.fabric.counts[-1] <= 16


@BOTH
def test_the_texts_are_as_the_scripts_draw_them(design: Design, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.syspath_prepend(str(FOLDER))
    import make_examples  # its folder is on the path in this test alone

    made = make_examples.cap() if design is CAP else make_examples.tam()
    assert replace(made, palette=design.palette) == design
    assert {lot.id for lot in made.palette.lots} == {lot.id for lot in design.palette.lots}
    for name in ("make_examples", "motifs"):
        sys.modules.pop(name)


@pytest.mark.parametrize("path", PATHS.values(), ids=PATHS)
def test_the_palette_beside_the_design_holds_the_lots_that_it_copies(path: Path) -> None:
    design = read_design(path)
    palette = read_palette_beside(design, path)
    assert palette is not None
    for lot in design.palette.lots:
        assert palette.lot(lot.id) == lot


def test_the_cap_has_the_size_that_it_is_for() -> None:
    appraisal = appraise(CAP)
    assert appraisal.cast_on_stitches == 144
    assert appraisal.circumference_cm == pytest.approx(CAP.hat.wanted_cm, abs=0.2)
    assert appraisal.height_cm == pytest.approx(
        CAP.hat.head_cm / 3 + 2, abs=1.0
    )  # craft pages: a third of the head, + 2


def test_the_tam_widens_by_half_and_closes_as_a_flat_disc() -> None:
    appraisal = appraise(TAM)
    counts = appraisal.fabric.counts
    assert appraisal.circumference_cm == pytest.approx(TAM.hat.wanted_cm, abs=0.4)
    assert max(counts) == 1.5 * counts[0]  # The Knitter 2017: about half as wide again
    wheel = len(band(TAM, "wheel").rounds)
    rate = (max(counts) - counts[-1]) / wheel
    assert rate == pytest.approx(flat_disc_decreases(TAM.gauge), rel=0.05)
    assert sum(appraisal.profile.rise_cm[-wheel:]) < 1.0  # of 10.6 cm of fabric


def test_the_tam_has_yarn_enough_and_the_cap_is_short_of_two_loads_of_one_bath() -> None:
    assert {each.requirement.short_g for each in appraise(TAM).letters} == {0.0}
    cap = appraise(CAP)
    assert [each.letter for each in cap.letters if each.requirement.short_g > 0] == ["B", "C"]
    assert [(plan.bath.id, [load.load for load in plan.loads]) for plan in cap.baths] == [("woad-aug", [1, 2])]


def test_the_tam_takes_its_loop_from_a_swatch_and_the_cap_from_gauge() -> None:
    assert appraise(TAM).loop.source == "swatch"
    assert appraise(CAP).loop.source == "gauge"


@pytest.mark.parametrize(("design", "name"), [(CAP, "lozenges and crosses"), (TAM, "border")], ids=["cap", "tam"])
def test_shading_and_motif_are_mirrored_about_the_middle_round(design: Design, name: str) -> None:
    border = band(design, name)
    assert 13 <= len(border.rounds) <= 17
    assert border.rounds == border.rounds[::-1]
    assert border.rounds[0].letters != border.rounds[len(border.rounds) // 2].letters


@BOTH
def test_every_motif_is_the_same_from_left_and_right(design: Design) -> None:
    for each in design.bands:
        if each.texture or len(each.rounds) < 5:
            continue
        for line in each.rounds:
            doubled = line.cells + line.cells
            turns = {doubled[start : start + len(line)] for start in range(len(line))}
            assert line.cells[::-1] in turns


def test_the_rib_purls_its_figure_and_knits_its_ground() -> None:
    for design in (CAP, TAM):
        rib = band(design, "rib")
        assert rib.texture == "kkpp"
        assert {line.cells for line in rib.rounds} == {bytes([0, 0, 1, 1])}
