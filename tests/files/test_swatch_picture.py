"""A lot's picture is looked for in its palette's folder alone, however its name is written."""

import pytest

from chartmaker.files.palette_reading import palette_from_text, read_palette
from chartmaker.files.palette_writing import palette_to_text, save_palette
from chartmaker.files.swatch_picture import picture_file, picture_name
from chartmaker.model.palette import Palette
from tests.builders import lot


@pytest.fixture
def place(tmp_path):
    """Give the path of a palette with pictures in its folder, below it and above it."""
    folder = tmp_path / "lots"
    (folder / "swatches").mkdir(parents=True)
    for file in (folder / "a.png", folder / "swatches" / "b.JPG", tmp_path / "outside.png", folder / "c.svg"):
        file.write_bytes(b"picture")
    return folder / "lots.palette.toml"


def test_a_picture_beside_or_below_the_palette_is_found(place):
    assert picture_file(place, "a.png") == place.parent / "a.png"
    assert picture_file(place, "swatches/b.JPG") == place.parent / "swatches" / "b.JPG"


@pytest.mark.parametrize(
    "name",
    ["", "missing.png", "../outside.png", "swatches/../../outside.png", "C:/outside.png", "\\\\host\\a.png", "c.svg",
     "a\x00.png", "swatches", "file:a.png", "~/a.png", "x" * 5000 + ".png"],
)  # fmt: skip
def test_what_is_absent_or_leads_out_is_as_if_missing(place, name):
    assert picture_file(place, name) is None


def test_an_absolute_path_is_as_if_missing_even_where_it_leads_into_the_folder(place):
    assert picture_file(place, str(place.parent / "a.png")) is None


def test_a_link_that_leads_out_is_as_if_missing(place):
    (place.parent / "link.png").symlink_to(place.parent.parent / "outside.png")
    assert picture_file(place, "link.png") is None


def test_links_that_lead_round_in_a_circle_are_as_if_missing(place):
    (place.parent / "round.png").symlink_to(place.parent / "round.png")
    assert picture_file(place, "round.png") is None


def test_a_palette_without_a_file_has_no_pictures():
    assert picture_file(None, "a.png") is None


def test_a_picture_is_named_from_the_palettes_folder_and_found_by_that_name(place):
    name = picture_name(place, place.parent / "swatches" / "b.JPG")
    assert name == "swatches/b.JPG"
    assert picture_file(place, name) is not None


@pytest.mark.parametrize(
    ("file", "sentence"), [("../outside.png", "in the folder of its palette"), ("c.svg", "no PNG")]
)
def test_a_picture_elsewhere_or_of_another_kind_is_refused(place, file, sentence):
    with pytest.raises(ValueError, match=sentence):
        picture_name(place, place.parent / file)


def test_notes_and_picture_are_kept_in_the_file_and_a_hostile_name_does_not_keep_a_palette_from_opening(tmp_path):
    palette = Palette(lots=(lot("one", notes="two\nlines", picture="../../etc/shadow.png"),))
    path = tmp_path / "x.palette.toml"
    save_palette(palette, path)
    assert read_palette(path) == palette
    assert 'picture = "../../etc/shadow.png"' in path.read_text(encoding="utf-8")


def test_a_palette_without_notes_is_written_without_their_keys():
    text = palette_to_text(Palette(lots=(lot("one"),)))
    assert "notes" not in text
    assert "picture" not in text
    assert palette_from_text(text, "x").lots[0].notes == ""
