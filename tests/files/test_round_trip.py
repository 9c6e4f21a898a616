"""What is written reads back as the same value, and as the same text when written again."""

import tomllib

import pytest
from hypothesis import given

from chartmaker.files.design_reading import design_from_text
from chartmaker.files.design_writing import design_to_text
from chartmaker.files.palette_reading import palette_from_text
from chartmaker.files.palette_writing import palette_to_text
from chartmaker.files.problems import FileRefused
from chartmaker.files.toml_writing import toml_from
from chartmaker.model.palette import Lot, Palette
from chartmaker.model.reading import LabReading
from tests.builders import chart, lot
from tests.strategies import designs, palettes, texts


@given(designs())
def test_a_design_reads_back_equal_and_writes_the_same_text_again(design):
    text = design_to_text(design)
    again = design_from_text(text, "again")
    assert again == design
    assert design_to_text(again) == text


@given(palettes())
def test_a_palette_reads_back_equal_and_writes_the_same_text_again(palette):
    text = palette_to_text(palette)
    again = palette_from_text(text, "again")
    assert again == palette
    assert palette_to_text(again) == text


@given(texts(), texts())
def test_any_text_survives_in_every_place_of_a_file(key, value):
    data = {
        "top": value,
        "section": {"text": value, key: {key: value, "row": [{"text": value}]}},
        "many": [{key: value}],
    }
    assert tomllib.loads(toml_from(data)) == data


@pytest.mark.parametrize(
    "value",
    [
        "\n",
        "\n\n",
        '"""',
        '\n"',
        '\n""""',
        '\n""',
        "\n\\",
        "a\r\nb",
        "a\rb\n",
        "\n\x00\x1f\x7f",
        "\n'''",
        "\t\n ",
        "\n\\u0041",
        "\u2028",
    ],
)
def test_texts_that_look_like_toml_survive(value):
    assert tomllib.loads(toml_from({"text": value, "section": {"text": value}})) == {
        "text": value,
        "section": {"text": value},
    }


def test_an_undyed_lot_writes_only_what_it_has():
    opening, lot_text = palette_to_text(chart("A | .", lots={"A": lot("oat")}).palette).split("\n\n")
    assert opening == 'format = "chartmaker-palette"\nversion = 1\nname = ""'
    assert lot_text == '[[lots]]\nid = "oat"\nname = "oat"\non_hand_g = 0.0\n'


def test_a_band_is_written_as_it_looks():
    text = design_to_text(chart("A B | .x | ^.\nA B | .x.x | ....\nC   | ....", times=6))
    assert text.endswith(
        '[[bands]]\nname = "band 1"\ntimes = 6\nrounds = """\nA B | .x | ^.\nA B | .x.x\nC   | ....\n"""\n'
    )


def test_the_sections_of_a_design_stand_in_the_order_of_the_format():
    design = chart("A | .", lots={"A": lot("oat", lab=(80.0, 0.0, 10.0))}, palette_file="../oat.palette.toml")
    assert list(tomllib.loads(design_to_text(design))) == [
        "format", "version", "title", "notes", "palette", "hat", "gauge", "yarn", "allowances", "limits", "viewing",
        "colourways", "bands", "lots",
    ]  # fmt: skip


def test_edges_and_trims_and_colourways_stand_on_one_line():
    lines = design_to_text(chart("A | .", lots={"A": lot("oat"), "B": lot("moss")})).splitlines()
    assert 'cast_on = {letter = "A", method = "long-tail"}' in lines
    assert 'finish = {letter = "A", method = "drawn-through"}' in lines
    assert "trims = []" in lines
    assert 'lots = {A = "oat", B = "moss"}' in lines


def test_a_reading_of_a_photo_says_so_in_the_file_and_one_of_an_instrument_is_written_as_ever():
    readings = (LabReading(lab=(50.0, 1.0, 2.0)), LabReading(lab=(50.0, 1.0, 2.0), source="photo"))
    palette = Palette(lots=(Lot(id="a", name="a", readings=readings),))
    written = palette_to_text(palette)
    assert written.count("source") == 1
    assert 'source = "photo"' in written
    assert palette_from_text(written, "p").lots[0].readings == readings


def test_a_source_that_is_none_is_refused_at_its_place():
    palette = Palette(lots=(Lot(id="a", name="a", readings=(LabReading(lab=(50.0, 1.0, 2.0), source="photo"),)),))
    with pytest.raises(FileRefused, match=r"lots\[1\].readings\[1\].*source is 'fancy'"):
        palette_from_text(palette_to_text(palette).replace('"photo"', '"fancy"'), "p")
