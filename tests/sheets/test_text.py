import pytest

from chartmaker.sheets.faces import house_has
from chartmaker.sheets.text import clusters, set_runs, width_em


def kinds(text: str) -> list[tuple[str, str]]:
    return [(run.kind, run.text) for run in set_runs(text)]


def test_plain_text_is_one_run_of_the_house_face():
    assert kinds("Lockside cap") == [("house", "Lockside cap")]


def test_markup_is_written_as_it_stands():
    assert kinds("<b>&amp;</b>") == [("house", "<b>&amp;</b>")]


@pytest.mark.parametrize(
    "text", ["水辺の帽子", "한국어", "עברית", "हिन्दी", "ไทย", "ქართული", "አማርኛ", "Ελληνικά", "Кириллица", "🧶"]
)
def test_other_scripts_are_drawn_with_outlines_where_the_house_face_lacks_them(text):
    runs = set_runs(text)
    assert all(run.kind == "outline" for run in runs if not all(map(house_has, run.text)))
    assert all(run.kind != "code" for run in runs)
    assert all(any(glyph.commands for glyph in run.outline.glyphs) for run in runs if run.outline)


@pytest.mark.parametrize(
    ("character", "label"),
    [("\U000f0000", "U+F0000"), ("\u202e", "U+202E"), ("\x00", "U+0000"), ("\ud800", "U+D800"), ("\ufeff", "U+FEFF")],
)
def test_what_no_face_can_write_prints_as_its_code_point(character, label):
    assert kinds(f"a{character}b") == [("house", "a"), ("code", label), ("house", "b")]


def test_arabic_letters_join():
    # The joined forms of beh are narrower and other glyphs than two lone ones.
    alone = set_runs("ب")[0].outline
    joined = set_runs("بب")[0].outline
    assert joined.advance_em != pytest.approx(2 * alone.advance_em)


def test_right_to_left_words_stand_right_to_left():
    assert kinds("abc שלום מר") == [("house", "abc "), ("outline", "מר"), ("house", " "), ("outline", "שלום")]


def test_numbers_and_brackets_after_arabic_keep_their_pair():
    # Unicode Standard Annex 9, rule N0: both brackets take the direction of what they hold and follow.
    assert "".join(run.text for run in set_runs("of مرحبا (12)")) == "of (12) مرحبا"


def test_a_right_to_left_title_begins_at_the_right():
    assert [text for _, text in kinds("שלום abc")] == ["abc", " ", "שלום"]


def test_marks_stay_with_their_base():
    assert list(clusters("e\u0327\u0301x")) == ["e\u0327\u0301", "x"]


def test_joined_emoji_and_flags_are_one_cluster():
    assert list(clusters("👩\u200d🌾🇫🇷🇯🇵")) == ["👩\u200d🌾", "🇫🇷", "🇯🇵"]


def test_heaped_marks_do_not_climb_over_other_lines():
    runs = set_runs("Z" + "\u0301" * 40)
    assert runs[0].text.count("\u0301") <= 3
    assert {run.text for run in runs[1:]} == {"U+0301"}


def test_decomposed_and_composed_text_are_as_wide():
    assert width_em("é") > 0
    assert set_runs("é")[0].kind == "house"


def test_bold_is_heavier_in_every_face():
    regular, bold = set_runs("Проба")[0], set_runs("Проба", bold=True)[0]
    assert regular.outline.glyphs[0].commands != bold.outline.glyphs[0].commands
