"""The JSON report keeps the names of the format to the letter."""

from chartmaker.appraisal import appraise
from chartmaker.model.palette import Assist, Bath, Mordant, Palette
from chartmaker.model.settings import Viewing
from chartmaker.report.as_json import lots_as_json, report_as_json
from chartmaker.report.as_text import lots_as_text
from tests.builders import chart, lot
from tests.examples.test_allotment import PALETTE
from tests.shade.test_lights import RED, bump, metamer_of, spectral

BATH = Bath(id="weld-july", dyestuff="weld", ratio=0.5, mordants=(Mordant("alum", 10),), assists=(Assist("chalk", 1),))
DESIGN = chart(
    "\n".join(["A B | .xxxxxxxxx"] * 12),
    times=14,
    lots={"A": lot("a", (80, 0, 10), bath="weld-july"), "B": lot("b", (78, 0, 0))},
    baths=[BATH],
)

SHAPE = {
    "format": str,
    "version": int,
    "hat": {
        "title": str,
        "cast_on_stitches": int,
        "rounds": int,
        "circumference_cm": float,
        "height_cm": float,
        "loop_length_cm": float,
        "loop_source": str,
    },
    "rounds": [
        {
            "round": int,
            "band": str,
            "stitches": int,
            "letters": [str],
            "value_difference": float,
            "value_difference_low": float,
            "grade": str,
            "longest_float_stitches": int,
            "longest_float_cm": float,
        }
    ],
    "pairs": [
        {
            "letters": [str],
            "boundary_cm": float,
            "value_difference": float,
            "value_difference_low": float,
            "ciede2000": float,
            "grade": str,
        }
    ],
    "letters": [
        {
            "letter": str,
            "lot": str,
            "lab": [float],
            "stitches": int,
            "stitch_metres": float,
            "float_metres": float,
            "other_metres": float,
            "metres": {"low": float, "likely": float, "high": float},
            "grams": {"low": float, "likely": float, "high": float},
            "planned_grams": float,
            "on_hand_g": float,
            "short_g": float,
        }
    ],
    "baths": [
        {
            "bath": str,
            "dyestuff": str,
            "loads": [{"load": int, "lot": str, "fibre_g": float}],
            "fibre_g": float,
            "dyestuff_g": float,
            "mordants": [{"name": str, "grams": float}],
            "water_l": float,
        }
    ],
    "findings": [{"check": str, "severity": str, "where": str, "message": str, "remedy": str}],
}
"""The report as `formats` of the project fixes it; keys may be added to it."""


def assert_shaped(value: object, shape: object, place: str = "report") -> None:
    if isinstance(shape, dict):
        assert isinstance(value, dict), place
        assert not shape.keys() - value.keys(), place
        for key, inner in shape.items():
            assert_shaped(value[key], inner, f"{place}.{key}")
    elif isinstance(shape, list):
        assert isinstance(value, list), place
        assert value, f"{place} is empty, so nothing was checked"
        for item in value:
            assert_shaped(item, shape[0], f"{place}[]")
    else:
        assert isinstance(shape, type)
        assert isinstance(value, shape), f"{place} is {value!r}"


def test_the_report_has_every_name_of_the_format() -> None:
    report = report_as_json(appraise(DESIGN))
    assert_shaped(report, SHAPE)
    assert (report["format"], report["version"]) == ("chartmaker-report", 1)


def test_planned_and_short_are_what_the_format_says() -> None:
    for letter in report_as_json(appraise(DESIGN))["letters"]:
        assert abs(letter["planned_grams"] - 1.1 * letter["grams"]["high"]) < 1e-5
        assert abs(letter["short_g"] - max(0, letter["planned_grams"] - letter["on_hand_g"])) < 1e-5


def test_lots_are_listed_with_every_name_of_the_format() -> None:
    palette = Palette(lots=(lot("a", labs=[(50, 0, 0), (52, 0, 0)], bath="weld-july", on_hand_g=12), lot("bare")))
    listed = lots_as_json(palette, Viewing())
    assert (listed["format"], listed["version"]) == ("chartmaker-lots", 1)
    first, bare = listed["lots"]
    assert set(first) == {
        "id",
        "name",
        "lab",
        "readings",
        "deviation_lab",
        "mcdm",
        "rests_on",
        "on_hand_g",
        "bath",
        "load",
        "words",
        "distances_ciede2000",
        "outlier",
        "inconstancy_ciede2000",
    }
    assert first["lab"] == [51.0, 0.0, 0.0]
    assert (first["rests_on"], first["readings"], first["bath"], first["load"]) == ("lab", 2, "weld-july", 1)
    assert (bare["rests_on"], bare["lab"], bare["readings"]) == ("nothing", None, 0)


def test_lots_are_told_the_lightest_first() -> None:
    palette = Palette(name="Shed", lots=(lot("dark", (20, 0, 0)), lot("bare"), lot("light", (80, 0, 0))))
    lines = lots_as_text(palette, Viewing()).splitlines()
    assert [line.split()[0] for line in lines[3::2]] == ["light", "dark", "bare"]
    assert [line.strip() for line in lines[4::2]] == ["light", "dark", "bare"]


def test_lots_are_told_in_words_with_the_reading_that_stands_apart_and_what_other_light_does() -> None:
    steady = [(40.0, 30.0, 20.0), (40.6, 29.4, 20.5), (39.7, 30.3, 19.8), (40.2, 29.8, 20.6), (48.0, 30.0, 20.0)]
    palette = Palette(lots=(lot("odd", labs=steady), RED))
    odd, red = lots_as_json(palette, Viewing())["lots"]
    assert odd["words"] == "dark reddish brown"
    assert (odd["outlier"]["reading"], odd["outlier"]["coordinate"]) == (5, "L*")
    assert len(odd["distances_ciede2000"]) == 5
    assert odd["inconstancy_ciede2000"] == {"A": None, "LED-B3": None, "FL11": None}
    assert red["outlier"] is None
    assert all(change > 1 for change in red["inconstancy_ciede2000"].values())
    text = lots_as_text(palette, Viewing())
    assert "odd: reading 5 stands apart from the others, L* +7.9, " in text
    worst = max(red["inconstancy_ciede2000"].items(), key=lambda item: item[1])
    assert f"{worst[1]:.1f} {worst[0]}" in text


def test_pairs_that_other_lights_part_are_listed() -> None:
    base = 0.3 + bump(600, 80, 0.2)
    palette = Palette(lots=(spectral("one", base), RED, spectral("other", metamer_of(base, Viewing()))))
    (pair,) = lots_as_json(palette, Viewing())["metameric_pairs"]
    assert (pair["lots"], pair["matching"]["illuminant"]) == (["one", "other"], "D65")
    assert pair["matching"]["ciede2000"] < 0.001
    assert pair["parted"]["ciede2000"] > 4
    assert "  one and other: ΔE00 0.0 under D65, ΔE00 " in lots_as_text(palette, Viewing())


def test_the_demonstration_palette_is_told_on_lines_of_a_hundred_letters() -> None:
    lines = lots_as_text(PALETTE, Viewing()).splitlines()
    assert len(lines) >= 3 + 2 * len(PALETTE.lots)
    assert max(map(len, lines)) <= 100
