import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.sheets.lines import elided, width_mm, wrapped
from chartmaker.sheets.text import as_one_line

ANY_TEXT = st.text(max_size=80) | st.text(alphabet="aW مرحبا水한हिन्दी🧶\u0301\u202e\u200d (12)", max_size=60)
"""Any Unicode at all, lone surrogates among it, and texts that mix scripts and directions on purpose."""


@given(text=ANY_TEXT, most=st.floats(12, 120), bold=st.booleans())
def test_an_elided_line_fits(text, most, bold):
    assert width_mm(elided(text, most_mm=most, size_pt=9, bold=bold), size_pt=9, bold=bold) <= most


@given(text=ANY_TEXT, most=st.floats(12, 120))
def test_every_wrapped_line_fits(text, most):
    assert all(width_mm(line, size_pt=9) <= most for line in wrapped(text, most_mm=most, size_pt=9))


@given(text=st.text(alphabet="ab é水W", max_size=200))
def test_wrapping_loses_nothing_but_spaces(text):
    lines = wrapped(text, most_mm=30, size_pt=9, most_lines=1000)
    assert "".join(lines).replace(" ", "") == unicodedata.normalize("NFC", text).replace(" ", "")


def test_a_line_that_fits_is_left_alone():
    assert elided("Lockside cap", most_mm=100, size_pt=10) == "Lockside cap"


def test_a_line_that_does_not_fit_ends_in_an_ellipsis():
    short = elided("Lockside cap", most_mm=15, size_pt=10)
    assert short.endswith("…")
    assert short.startswith("Lock")


def test_words_are_broken_only_where_a_word_is_wider_than_the_line():
    assert wrapped("moss oat walnut", most_mm=20, size_pt=10) == ("moss oat", "walnut")
    assert len(wrapped("w" * 60, most_mm=20, size_pt=10)) > 1


def test_ideographs_break_without_spaces():
    assert len(wrapped("水辺の帽子" * 6, most_mm=30, size_pt=10)) > 1


def test_lines_past_the_most_are_elided():
    lines = wrapped("oat " * 200, most_mm=30, size_pt=10, most_lines=3)
    assert len(lines) == 3
    assert lines[-1].endswith("…")


@pytest.mark.parametrize("character", ["x", "م", "水", "\u0301", "\u202e", "🧶", "a b "])
def test_endless_text_is_elided(character):
    endless = (character * 20_000)[:20_000]
    assert width_mm(elided(endless, most_mm=100, size_pt=14), size_pt=14) <= 100
    assert all(width_mm(line, size_pt=9) <= 60 for line in wrapped(endless, most_mm=60, size_pt=9, most_lines=3))


def test_line_breaks_and_tabs_become_spaces():
    assert as_one_line("woad\n\tand weld") == "woad and weld"
