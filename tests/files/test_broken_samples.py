"""Files broken on purpose, one of every kind: each gets its sentence, and no other exception than a refusal."""

from pathlib import Path

import pytest

from chartmaker.files.design_reading import read_design
from chartmaker.files.palette_reading import read_palette
from chartmaker.files.problems import FileRefused

BROKEN = Path(__file__).parent / "samples" / "broken"

SENTENCES = {
    "empty.hat.toml": "the file is empty",
    "blank.hat.toml": "the file is empty",
    "byte-order-mark.hat.toml": "this is UTF-8 with a byte order mark; save it as plain UTF-8",
    "utf-16.hat.toml": "this is UTF-16; save it as plain UTF-8",
    "latin-1.hat.toml": "line 3 is not UTF-8 text; save it as plain UTF-8",
    "picture.hat.toml": "line 1 is not UTF-8 text; save it as plain UTF-8",
    "syntax.hat.toml": "line 3, column 18 is not valid TOML: illegal character '\\n'; mend it and open the file again",
    "cut-short.hat.toml": "line 9, column 1 is not valid TOML: unterminated string; mend it and open the file again",
    "key-twice.hat.toml": "line 4, column 12 is not valid TOML: cannot overwrite a value; "
    "mend it and open the file again",
    "no-format.hat.toml": "format: is missing; a design says format = 'chartmaker-design'",
    "other-format.hat.toml": "format: is 'recipe'; a design says 'chartmaker-design'",
    "a-palette.hat.toml": "this is a palette, not a design",
    "a-design.palette.toml": "this is a design, not a palette",
    "no-version.hat.toml": "version: is missing",
    "version-in-words.hat.toml": "version: must be a whole number, not a text",
    "version-0.hat.toml": "version: the first is 1",
    "newer.hat.toml": "it was written by a newer Chartmaker, in version 2; this one reads up to 1; it is left as it is",
    "no-bands.hat.toml": "bands: is missing; a design has at least one band; mend it and open the file again",
}

DESIGN_PROBLEMS = [
    "hat.cast_on.letter: the cast-on letter is 'AB'; a letter is one capital, A to Z",
    "hat.cast_on.methud: unknown key; did you mean 'method'?",
    "hat.trims[1].diameter_cm: is missing",
    "hat.trims[1].length_cm: unknown key",
    "hat.trims[2].kind: a trim's kind is 'bead'; it can be pompom, tassel",
    "hat.head_cm: head_cm is 560, outside 20 to 90",
    "gauge.stitches_per_10cm: must be a finite number, not nan",
    "limits.value_soft: value_soft is 30, above value_clear, 20",
    "lots[1].on_hand_g: must be a number, not true or false",
    "lots[1].yarn: there is no yarn 'fingering' here",
    "colourways[1].lots.A: there is no lot 'waldnut-1' here; did you mean 'walnut-1'?",
    "colourways[1].lots.ab: a colourway's letter is 'ab'; a letter is one capital, A to Z",
    "bands[1].times: must be a whole number, not the number 36.0",
    "bands[1].rounds, line 2: '?' at place 3 is no cell; the signs are . x +",
    "bands[1].rounds, line 3: a cell plays the figure, but the round has 1 letter(s)",
    "bands[1].rounds, line 4: 4 cells but 3 shaping signs",
    "bands[2].name: is missing",
    "bands[2].rounds: a band has no rounds",
    "bands[2].times: times is 601, outside 1 to 600",
    "titel: unknown key; did you mean 'title'?",
]

PALETTE_PROBLEMS = [
    "yarns[1].name: a yarn's name is empty",
    "baths[1].ratio: must be a number, not a text",
    "baths[1].mordants[1].percent_wof: is missing",
    "baths[1].mordants[1].percent: unknown key; did you mean 'percent_wof'?",
    "baths[1].hottest_c: hottest_c is 212, outside 0 to 105",
    "lots[1].dyed_on: must be a date like 2026-09-12, not a date with a time",
    "lots[1].bath: there is no bath 'mader' here; did you mean 'madder'?",
    "lots[1].readings[1]: a spectrum of 0 values is outside 8 to 600",
    "lots[1].readings[2].lab: must be an array of 3 numbers, not of 2",
    "lots[1].readings[3].kind: is 'rgb'; it can be spectrum, lab, xyz, srgb; did you mean 'srgb'?",
    "lots[1].load: load is 0, outside 1 to 12",
    "lots[1].colour: unknown key",
    "lots[2].readings[1].hex: hex is 'red'; it looks like '#8a3b2f'",
    "lots[2].readings: a planned lot cannot have readings: it does not exist yet",
    "lots[2].id: 'madder-1' is an id that stands above already",
]


def _refusal_of(name: str) -> FileRefused:
    path = BROKEN / name
    with pytest.raises(FileRefused) as caught:
        (read_palette if name.endswith(".palette.toml") else read_design)(path)
    return caught.value


def test_every_broken_sample_has_its_expected_sentence():
    told = {"many-things.hat.toml", "many-things.palette.toml", *SENTENCES}
    assert {path.name for path in BROKEN.iterdir()} == told


@pytest.mark.parametrize(("name", "sentence"), SENTENCES.items())
def test_a_broken_file_is_refused_with_one_sentence(name, sentence):
    assert str(_refusal_of(name)) == f"{BROKEN / name}: {sentence}"


@pytest.mark.parametrize(
    ("name", "problems"),
    [("many-things.hat.toml", DESIGN_PROBLEMS), ("many-things.palette.toml", PALETTE_PROBLEMS)],
)
def test_everything_wrong_in_a_file_is_told_together_each_at_its_path(name, problems):
    refused = _refusal_of(name)
    assert [str(problem) for problem in refused.problems] == problems
    opening, *lines = str(refused).splitlines()
    assert opening == f"{BROKEN / name}: {len(problems)} problems; mend them and open the file again"
    assert lines == [f"  {problem}" for problem in problems]
