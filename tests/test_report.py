"""The JSON report keeps the names of the format to the letter."""

from chartmaker.appraisal import appraise
from chartmaker.model.palette import Assist, Bath, Mordant, Palette
from chartmaker.model.settings import Viewing
from chartmaker.report.as_json import lots_as_json, report_as_json
from chartmaker.report.as_text import lots_as_text
from tests.builders import chart, lot

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
    }
    assert first["lab"] == [51.0, 0.0, 0.0]
    assert (first["rests_on"], first["readings"], first["bath"], first["load"]) == ("lab", 2, "weld-july", 1)
    assert (bare["rests_on"], bare["lab"], bare["readings"]) == ("nothing", None, 0)


def test_lots_are_told_the_lightest_first() -> None:
    palette = Palette(name="Shed", lots=(lot("dark", (20, 0, 0)), lot("bare"), lot("light", (80, 0, 0))))
    lines = lots_as_text(palette, Viewing()).splitlines()
    assert [line.split()[0] for line in lines[3:]] == ["light", "dark", "bare"]
