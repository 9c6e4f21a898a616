import re
import zlib

import pytest

from chartmaker.sheets.marks import CATCH, LETTER_MARKS, TICK_BOX
from chartmaker.sheets.pdf_marks import drawn_at, mark_code


def places_in(code: str) -> list[tuple[float, float]]:
    """Add up the moves of ISO 32000-1, 8.4.4."""
    x = y = 0.0
    found = []
    for dx, dy in re.findall(r"1 0 0 1 (\S+) (\S+) cm", code):
        x, y = x + float(dx), y + float(dy)
        found.append((x, y))
    return found


def test_what_is_rounded_off_does_not_add_up():
    centres = [(column * 11.3373, row * 9.9217) for row in range(60) for column in range(60)]
    for place, centre in zip(places_in(drawn_at(centres, "f*")), centres, strict=True):
        assert place == pytest.approx(centre, abs=0.0051)


def test_a_mark_takes_about_a_byte_a_place_where_places_are_even():
    centres = [(column * 11.34, row * 9.92) for row in range(60) for column in range(60)]
    _, stroked = mark_code(TICK_BOX, 7.0)
    assert len(zlib.compress(drawn_at(centres, stroked).encode())) < 3600


def test_filled_and_drawn_parts_are_apart():
    for mark in (*LETTER_MARKS, CATCH, TICK_BOX):
        filled, stroked = mark_code(mark, 5.0)
        assert filled.endswith("f*") or not filled
        assert stroked.endswith("S") or not stroked
        assert bool(filled or stroked) == bool(mark.shapes)
