"""The PNG file: what its chunks say, and that no pixel changes."""

import io
import struct

import numpy as np
import pytest
from PIL import Image

from chartmaker.pictures.png import png_bytes

PATTERN = np.arange(4 * 5 * 3, dtype=np.uint8).reshape(4, 5, 3)


def chunks(data: bytes) -> list[tuple[bytes, bytes]]:
    """Walk the chunks as the PNG recommendation lays them out: length, name, data, checksum."""
    found, place = [], 8
    while place < len(data):
        (length,) = struct.unpack(">I", data[place : place + 4])
        found.append((data[place + 4 : place + 8], data[place + 8 : place + 8 + length]))
        place += length + 12
    return found


def test_the_picture_is_marked_as_srgb_before_its_pixels() -> None:
    names = [name for name, _ in chunks(png_bytes(PATTERN))]
    assert names.index(b"sRGB") < names.index(b"IDAT")
    assert dict(chunks(png_bytes(PATTERN)))[b"sRGB"] == b"\x00"


def test_the_resolution_is_in_the_file() -> None:
    across, down, unit = struct.unpack(">IIB", dict(chunks(png_bytes(PATTERN, dpi=300)))[b"pHYs"])
    assert (across, down, unit) == (11811, 11811, 1)  # dots a metre: 300 / 0.0254


def test_pixels_come_back_as_they_were() -> None:
    with Image.open(io.BytesIO(png_bytes(PATTERN))) as opened:
        assert np.array_equal(np.asarray(opened), PATTERN)


def test_the_same_picture_gives_the_same_bytes() -> None:
    assert png_bytes(PATTERN) == png_bytes(PATTERN.copy())


def test_a_view_of_a_larger_array_is_written_as_seen() -> None:
    with Image.open(io.BytesIO(png_bytes(PATTERN[::-1, ::2]))) as opened:
        assert np.array_equal(np.asarray(opened), PATTERN[::-1, ::2])


@pytest.mark.parametrize("shape", [(4, 5), (4, 5, 4), (3,)])
def test_what_is_no_picture_is_refused(shape: tuple[int, ...]) -> None:
    with pytest.raises(ValueError, match="shape"):
        png_bytes(np.zeros(shape, dtype=np.uint8))
