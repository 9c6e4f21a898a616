"""Files made to do harm: none ends in anything but a refusal, and none takes long."""

import datetime as dt
import os
import time
import tomllib
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.files.design_reading import design_from_text, read_design
from chartmaker.files.palette_reading import palette_from_text
from chartmaker.files.problems import LONGEST_SHOWN, MOST_SHOWN, FileRefused
from chartmaker.files.toml_text import MOST_BYTES, plain_data
from chartmaker.files.toml_writing import toml_from
from tests.strategies import texts

SAMPLES = Path(__file__).parent / "samples"
DESIGN = (SAMPLES / "design-1.hat.toml").read_text(encoding="utf-8")
PALETTE = (SAMPLES / "palette-1.palette.toml").read_text(encoding="utf-8")
HEAD = 'format = "chartmaker-design"\nversion = 1\n'
BAND = '[[bands]]\nname = ""\ntimes = 1\nrounds = "A | ."\n'
PATIENCE_S = 60.0
"""Far more than any of these takes, far less than the hours that they could be made to take."""


def _refusal_of(text: str) -> FileRefused:
    began = time.monotonic()
    with pytest.raises(FileRefused) as caught:
        design_from_text(text, "cap")
    assert time.monotonic() - began < PATIENCE_S
    shown = str(caught.value).splitlines()
    assert len(shown) <= MOST_SHOWN + 2
    assert all(len(line) <= 3 * LONGEST_SHOWN for line in shown)  # path and sentence, some written out
    return caught.value


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        pytest.param("x = " + "[" * 1_000_000, "nested too deep", id="arrays in arrays"),
        pytest.param("x = " + "{a = " * 1_000_000, "nested too deep", id="tables in tables"),
        pytest.param("a" + ".a" * 1_000_000 + " = 1", "line 2: a key has more than 8 parts", id="a dotted key"),
        pytest.param("[" + "a." * 1_000_000 + "a]", "line 2: a key has more than 8 parts", id="a dotted header"),
        pytest.param("x = {" + "a . " * 1_000_000 + "a = 1}", "line 2: a key has more than", id="spaced dots inline"),
        pytest.param('"a"' + ".'a'" * 1_000_000 + " = 1", "line 2: a key has more than", id="a quoted dotted key"),
        pytest.param('x = """\n"a"""""\n' + "a." * 9 + "a = 1", "line 4: a key has", id="dots after five quotes"),
        pytest.param('x = "#" # \'\n' + "a." * 9 + "a = 1", "line 3: a key has", id="dots after a comment"),
        pytest.param("x = " + "9" * 1_000_000, "a number that cannot be read", id="a million digits"),
        pytest.param("version = 0x" + "f" * 1_000_000, "in version far ahead", id="a version of a million digits"),
        pytest.param("x = " + '"' * 3 + '\\"""' * 500_000, "not valid TOML", id="quotes that never close"),
        pytest.param("#" * MOST_BYTES, "larger than 8 MB", id="a comment past the limit"),
    ],
)
def test_toml_made_to_hang_the_parser_is_refused(text, sentence):
    assert sentence in str(_refusal_of('format = "chartmaker-design"\n' + text))


def test_dots_in_texts_comments_and_numbers_are_no_long_keys():
    text = (
        '# a.a.a.a.a.a.a.a.a.a.a\nx = \'a.a.a.a.a.a.a.a.a.a\'\ny = """\nx.x.x.x.x.x.x.x.x.x.x\\""""\nz = [0.1, 0.2]\n'
    )
    assert plain_data(text, "cap") == {
        "x": "a.a.a.a.a.a.a.a.a.a",
        "y": 'x.x.x.x.x.x.x.x.x.x.x"',
        "z": [0.1, 0.2],
    }


@pytest.mark.parametrize(
    ("change", "sentence"),
    [
        pytest.param(("times = 1", "times = 1000000000"), "bands[1].times: times is 1e+09, outside", id="times 10^9"),
        pytest.param(("times = 1", "times = 1" + "0" * 4000), "bands[1].times: is too large", id="times 10^4000"),
        pytest.param(("times = 1", "times = true"), "must be a whole number, not true or false", id="a boolean"),
        pytest.param(("times = 1", "times = 2026-01-01"), "must be a whole number, not a date", id="a date"),
        pytest.param(("A | .", "A | " + "." * 601), "a round has 601 cells, more than 600", id="601 stitches"),
        pytest.param(("A | .", "A | " + "." * 4_000_000), "the line has 4000004 characters", id="a line of 4 MB"),
        pytest.param(("A | .", "A | .\\n" * 601), "there are 601 rounds, more than 600", id="601 rounds of a band"),
        pytest.param(("A | .", "A | .\\n" * 1_000_000), "there are 1000000 rounds", id="a million rounds"),
        pytest.param(("A | .", "A | |" * 1000), "is not 'letters | cells'", id="bars"),
        pytest.param(("A | .", "ABCD | ."), "one to three letters, not 4", id="four letters"),
        pytest.param(("A | .", "é | ."), "a letter is one capital", id="a letter that is none"),
        pytest.param(("A | .", "A | \\u0000"), "'\\x00' at place 1 is no cell", id="a zero byte for a cell"),
        pytest.param(('name = ""', 'name = "' + "n" * 20_001 + '"'), "20001 characters, more than 20000", id="a name"),
    ],
)  # fmt: skip
def test_a_band_past_all_measure_is_refused(change, sentence):
    assert sentence in str(_refusal_of(HEAD + BAND.replace(*change)))


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        pytest.param(HEAD + BAND * 601, "bands: there are 601, more than 600", id="601 bands"),
        pytest.param(
            HEAD + BAND.replace("A | .", "A | .\\n" * 301) * 2,
            "bands: a design has 602 rounds, more than 600",
            id="602 rounds in two bands",
        ),
        pytest.param(
            HEAD + BAND + "".join(f'[[lots]]\nid = "l{n}"\nname = "l"\n' for n in range(401)),
            "lots: there are 401, more than 400",
            id="401 lots",
        ),
        pytest.param(
            HEAD
            + '[[colourways]]\nname = ""\nlots = {A = "l0"}\n'
            + BAND
            + "".join(f'[[lots]]\nid = "l{n}"\nname = "l"\n' for n in range(401)),
            "lots: there are 401, more than 400",
            id="401 lots, one of them in use",
        ),
        pytest.param(
            HEAD
            + BAND
            + '[[lots]]\nid = "l"\nname = "l"\n'
            + '[[lots.readings]]\nkind = "lab"\nlab = [1, 1, 1]\n' * 65,
            "lots[1].readings: there are 65, more than 64",
            id="65 readings",
        ),
    ],
)
def test_each_limit_is_named_and_is_the_only_complaint(text, sentence):
    assert str(_refusal_of(text)) == f"cap: {sentence}; mend it and open the file again"


def test_a_right_value_that_leans_on_a_wrong_one_is_not_complained_of():
    band = '[[bands]]\nname = "rib"\ntimes = 0\ntexture = "kkpp"\nrounds = "A B | xx.."\n'
    refused = _refusal_of(HEAD + band + "[limits]\nfloat_cm = 99.0\nvalue_soft = 30.0\nvalue_clear = 40.0\n")
    assert [problem.path for problem in refused.problems] == ["limits.float_cm", "bands[1].times"]


def test_what_stands_at_a_limit_opens():
    band = BAND.replace("A | .", "\\n".join(["A | " + "." * 6] * 300)).replace("times = 1", "times = 100")
    lots = "".join(f'[[lots]]\nid = "l{n}"\nname = "l"\n' for n in range(400))
    design = design_from_text(HEAD + band * 2 + lots, "cap")
    assert sum(len(each.rounds) for each in design.bands) == 600
    assert design.bands[0].stitches(0) == 600
    assert len(design.palette.lots) == 400


@pytest.mark.parametrize(
    "flood",
    [
        pytest.param("".join(f"hat{n} = 1\n" for n in range(200_000)) + BAND, id="unknown keys"),
        pytest.param("k" * 4_000_000 + " = 1\n" + BAND, id="a key of 4 MB"),
        pytest.param("bands = [" + "1," * 1_000_000 + "]", id="bands that are numbers"),
        pytest.param(BAND + "[[lots]]\nid = 1\n" * 200_000, id="lots without names"),
        pytest.param(BAND + '[[yarns]]\nid = "y"\n' * 200_000, id="yarns of one id"),
        pytest.param(BAND.replace("A | .", "? | .\\n" * 600), id="600 wrong rounds"),
    ],
)
def test_a_flood_of_problems_is_counted_not_told(flood):
    _refusal_of(HEAD + flood)


@pytest.mark.skipif(os.name != "posix", reason="only there do pipes and devices have names in folders")
def test_a_pipe_or_a_device_is_not_waited_for(tmp_path):
    os.mkfifo(tmp_path / "pipe.hat.toml")
    for path in (tmp_path / "pipe.hat.toml", Path("/dev/zero")):
        with pytest.raises(FileRefused, match="this is not an ordinary file"):
            read_design(path)


def test_a_folder_an_absent_file_and_an_impossible_name_are_refused(tmp_path):
    for path, sentence in (
        (tmp_path, "this is a folder, not a file"),
        (tmp_path / "gone.hat.toml", "there is no such file"),
        (Path("a\0b.hat.toml"), "cannot be opened"),
        (tmp_path / ("x" * 5000), "cannot be read"),
    ):
        with pytest.raises(FileRefused, match=sentence):
            read_design(path)


def test_a_file_past_the_limit_is_refused_before_it_is_parsed(tmp_path):
    path = tmp_path / "large.hat.toml"
    with path.open("wb") as file:
        file.truncate(MOST_BYTES * 1000)  # a hole in the file: it takes no room
    with pytest.raises(FileRefused, match="the file is larger than 8 MB"):
        read_design(path)


@given(st.sampled_from([DESIGN, PALETTE]), st.integers(0, 4000), st.integers(0, 12), texts())
def test_a_file_with_a_piece_replaced_opens_or_is_refused(text, start, length, piece):
    _opens_or_is_refused(text[:start] + piece + text[start + length :])


def _any_value():
    moments = st.one_of(st.dates(), st.times(), st.datetimes(timezones=st.just(dt.UTC)))
    plain = st.one_of(st.booleans(), st.integers(), st.floats(), texts(), moments)
    return st.recursive(plain, lambda inner: st.lists(inner, max_size=3) | st.dictionaries(texts(), inner, max_size=3))


@given(st.sampled_from([DESIGN, PALETTE]), st.data())
def test_a_file_with_any_value_in_any_place_opens_or_is_refused(text, data):
    whole = tomllib.loads(text)
    place, key = whole, ""
    while True:
        keys = range(len(place)) if isinstance(place, list) else sorted(place)
        key = data.draw(st.sampled_from(keys))
        if not isinstance(place[key], dict | list) or not place[key] or data.draw(st.integers(0, 3)) == 0:
            break
        place = place[key]
    place[key] = data.draw(_any_value())
    _opens_or_is_refused(toml_from(whole))


def _opens_or_is_refused(text: str) -> None:
    for read in (design_from_text, palette_from_text):
        try:
            read(text, "cap")
        except FileRefused as refused:
            told = str(refused)
        else:
            told = "opened"
        assert told
