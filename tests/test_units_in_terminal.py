"""The commands with `--units imperial`: text alone changes, and no metric length or weight of yarn is left in it."""

import json
import re
from pathlib import Path

import pytest

from chartmaker.commands import run
from chartmaker.files.problems import UserProblem
from tests.metric_left import metric_amounts

EXAMPLES = sorted((Path(__file__).parent.parent / "examples").glob("*.hat.toml"))
PALETTE = Path(__file__).parent.parent / "palettes" / "allotment.palette.toml"


def told(capsys, *words):
    run([str(word) for word in words])
    return capsys.readouterr().out


@pytest.mark.parametrize("design", EXAMPLES, ids=lambda path: path.name)
@pytest.mark.parametrize("command", ["report", "fit"])
def test_text_in_inches_leaves_no_metric_measure(command, design, capsys):
    text = told(capsys, command, design, "--units", "imperial")
    assert " in" in text
    assert not metric_amounts(text)
    assert metric_amounts(told(capsys, command, design))


def test_lots_are_weighed_in_ounces(capsys):
    text = told(capsys, "lots", PALETTE, "--units", "imperial")
    assert "ounces" in text
    assert "grams" not in text
    # 60 g of the white fleece are 60 / 28.349523125 oz = 2.12 oz.
    assert re.search(r"^white .* 2\.12 ", text, re.MULTILINE)


def test_a_new_hat_is_told_in_inches(tmp_path, capsys):
    text = told(capsys, "new", tmp_path / "a.hat.toml", "--head", "22in", "--gauge", "30x34", "--units", "imperial")
    assert "for a head of 22 in (55.9 cm, US size 7)" in text
    assert metric_amounts(text.replace("(55.9 cm,", "(")) == []


def test_the_file_of_a_new_hat_is_the_same_in_all_units(tmp_path, capsys):
    for units in ("metric", "imperial"):
        told(
            capsys,
            "new",
            tmp_path / f"{units}.hat.toml",
            "--head",
            "57",
            "--gauge",
            "30x34",
            "--title",
            "A",
            "--units",
            units,
        )
    assert (tmp_path / "metric.hat.toml").read_bytes() == (tmp_path / "imperial.hat.toml").read_bytes()


@pytest.mark.parametrize("command", ["report", "fit", "lots"])
def test_json_stays_metric(command, capsys):
    path = PALETTE if command == "lots" else EXAMPLES[0]
    plain, asked = (told(capsys, command, path, "--json", *more) for more in ((), ("--units", "imperial")))
    assert plain == asked
    assert json.loads(plain)


def test_what_cannot_be_is_refused_in_inches(tmp_path):
    words = ["new", str(tmp_path / "a.hat.toml"), "--head", "57", "--gauge", "30x34", "--depth", "4in"]
    with pytest.raises(UserProblem, match=r"so a depth of 4 in leaves no body: ask for \d\.\d\d in or more"):
        run([*words, "--units", "imperial"])
    with pytest.raises(UserProblem, match=r"so a depth of 10.16 cm leaves no body"):
        run(words)
