"""Pictures that a user brings: every kind that is read, every way up, and none that does harm."""

import io
import os
import struct
import time
import zlib

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image, ImageOps
from PIL.PngImagePlugin import PngInfo

from chartmaker.files.problems import UserProblem
from chartmaker.pictures.source import MOST_BYTES, MOST_PIXELS, ORIENTATION, pixels_of, read_picture

PATIENCE_S = 20.0
"""Far more than a refusal takes, far less than decoding what is refused would."""
RED, GREEN, BLUE, WHITE = (255, 0, 0), (0, 255, 0), (0, 0, 255), (255, 255, 255)
QUARTERS = np.array([[RED, GREEN, GREEN], [BLUE, WHITE, WHITE]], dtype=np.uint8)


def _saved(image: Image.Image, path, **options):
    image.save(path, **options)
    return path


@pytest.mark.parametrize("mode", ["RGB", "RGBA", "P", "L", "LA", "1", "I;16"])
def test_every_mode_of_png_is_read_as_srgb(tmp_path, mode):
    grey = np.array([[0, 255], [255, 0]], dtype=np.uint8)
    image = Image.fromarray(grey.astype(np.uint16) * 257) if mode == "I;16" else Image.fromarray(grey).convert(mode)
    pixels = read_picture(_saved(image, tmp_path / "a.png"))
    assert pixels[..., :3].tolist() == [[[0] * 3, [255] * 3], [[255] * 3, [0] * 3]]


def test_the_middle_of_sixteen_bits_is_the_middle_of_eight(tmp_path):
    image = Image.fromarray(np.full((1, 1), 128 * 257, dtype=np.uint16))
    assert read_picture(_saved(image, tmp_path / "a.png")).tolist() == [[[128] * 3]]


@pytest.mark.parametrize(("mode", "options"), [("RGB", {}), ("RGB", {"progressive": True}), ("L", {}), ("CMYK", {})])
def test_every_mode_of_jpeg_is_read_as_srgb(tmp_path, mode, options):
    image = Image.new("RGB", (16, 16), (200, 200, 200)).convert(mode)
    pixels = read_picture(_saved(image, tmp_path / "a.jpg", quality=95, **options))
    assert pixels.shape == (16, 16, 3)
    assert np.abs(pixels.astype(int) - 200).max() <= 3


def test_opacity_comes_along_from_a_channel_and_from_a_palette(tmp_path):
    channel = Image.fromarray(np.array([[[9, 8, 7, 0], [9, 8, 7, 128]]], dtype=np.uint8))
    assert read_picture(_saved(channel, tmp_path / "a.png")).tolist() == [[[9, 8, 7, 0], [9, 8, 7, 128]]]
    palette = Image.new("P", (2, 1))
    palette.putpalette([9, 8, 7, 60, 50, 40])
    palette.putdata([0, 1])
    pixels = read_picture(_saved(palette, tmp_path / "b.png", transparency=0))
    assert pixels.tolist() == [[[9, 8, 7, 0], [60, 50, 40, 255]]]


@pytest.mark.parametrize("orientation", range(1, 9))
@pytest.mark.parametrize("ending", ["png", "jpg"])
def test_a_picture_taken_with_the_camera_turned_stands_upright(tmp_path, orientation, ending):
    """Pillow's own exif_transpose is the second implementation."""
    blocks = Image.fromarray(np.kron(QUARTERS, np.ones((16, 16, 1), dtype=np.uint8)))
    exif = Image.Exif()
    exif[ORIENTATION] = orientation
    path = _saved(blocks, tmp_path / f"a.{ending}", exif=exif, quality=95)
    with Image.open(path) as image:
        expected = np.asarray(ImageOps.exif_transpose(image).convert("RGB"))
    assert np.array_equal(read_picture(path), expected)
    if orientation == 6:  # held upright, the camera's left is down: its first row is the right-hand column
        assert read_picture(path)[8, :, :].reshape(2, 16, 3)[:, 8].argmax(axis=-1).tolist() == [2, 0]


def test_an_orientation_that_does_not_exist_turns_nothing(tmp_path):
    exif = Image.Exif()
    exif[ORIENTATION] = 77
    path = _saved(Image.fromarray(QUARTERS), tmp_path / "a.png", exif=exif)
    assert np.array_equal(read_picture(path), QUARTERS)


def _png(width: int, height: int, data: bytes = b"", extra: bytes = b"") -> bytes:
    def chunk(kind: bytes, body: bytes) -> bytes:
        return struct.pack(">I", len(body)) + kind + body + struct.pack(">I", zlib.crc32(kind + body))

    head = struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)
    return (
        b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head) + extra + chunk(b"IDAT", zlib.compress(data)) + chunk(b"IEND", b"")
    )


def _text_bomb() -> bytes:
    info = PngInfo()
    info.add_text("a", "x" * 50_000_000, zip=True)
    stream = io.BytesIO()
    Image.new("RGB", (1, 1)).save(stream, "PNG", pnginfo=info)
    return stream.getvalue()


def _jpeg() -> bytes:
    stream = io.BytesIO()
    Image.fromarray(np.kron(QUARTERS, np.ones((16, 16, 1), dtype=np.uint8))).save(stream, "JPEG")
    return stream.getvalue()


def _gif() -> bytes:
    stream = io.BytesIO()
    Image.new("P", (4, 4)).save(stream, "GIF")
    return stream.getvalue()


@pytest.mark.parametrize(
    ("data", "sentence"),
    [
        pytest.param(b"", "neither a PNG nor a JPEG", id="an empty file"),
        pytest.param(b"A B | x.", "neither a PNG nor a JPEG", id="a text"),
        pytest.param(_gif(), "neither a PNG nor a JPEG", id="another kind"),
        pytest.param(b"\x89PNG\r\n\x1a\n", "the picture is broken", id="a mark alone"),
        pytest.param(b"\xff\xd8\xff", "the picture is broken", id="a JPEG's mark alone"),
        pytest.param(_png(60_000, 60_000), "60000 × 60000 pixels, more than 64 million", id="a bomb of pixels"),
        pytest.param(_png(2**31 - 1, 2**31 - 1), "more than 64 million", id="the largest size that PNG can say"),
        pytest.param(_png(0, 5), "the picture is broken", id="no width"),
        pytest.param(_png(8, 8, b"\0" * 20), "the picture is broken", id="too little data"),
        pytest.param(_jpeg()[:-400], "the picture is broken", id="a JPEG cut short"),
        pytest.param(_text_bomb(), "the picture is broken", id="a bomb of text"),
    ],
)
def test_a_file_made_to_do_harm_is_refused_with_one_sentence(tmp_path, data, sentence):
    path = tmp_path / "a.png"
    path.write_bytes(data)
    began = time.monotonic()
    with pytest.raises(UserProblem) as caught:
        read_picture(path)
    assert time.monotonic() - began < PATIENCE_S
    assert sentence in str(caught.value)
    assert "\n" not in str(caught.value)


def test_what_is_no_file_is_refused(tmp_path):
    os.mkfifo(tmp_path / "pipe")
    for path, sentence in (
        (tmp_path, "this is not an ordinary file"),
        (tmp_path / "pipe", "this is not an ordinary file"),
        (tmp_path / "nowhere.png", "there is no such file"),
        (tmp_path / "zero\0byte.png", "the picture cannot be read"),
    ):
        with pytest.raises(UserProblem, match=sentence):
            read_picture(path)


def test_a_file_past_the_limit_is_refused_unread(tmp_path):
    path = tmp_path / "a.png"
    with path.open("wb") as file:
        file.truncate(MOST_BYTES + 1)
    with pytest.raises(UserProblem, match="larger than 64 MB"):
        read_picture(path)


@given(st.sampled_from(["png", "jpg"]), st.lists(st.tuples(st.integers(0, 10_000), st.integers(0, 255)), max_size=8))
def test_a_damaged_picture_is_read_or_refused_and_nothing_else(tmp_path_factory, ending, damage):
    stream = io.BytesIO()
    exif = Image.Exif()
    exif[ORIENTATION] = 6
    Image.fromarray(QUARTERS).save(stream, "PNG" if ending == "png" else "JPEG", exif=exif)
    data = bytearray(stream.getvalue())
    for place, value in damage:
        data[place % len(data)] = value
    path = tmp_path_factory.mktemp("damaged") / f"a.{ending}"
    path.write_bytes(data)
    try:
        pixels = read_picture(path)
    except UserProblem as problem:
        told = str(problem)
    else:
        told = ""
        assert pixels.ndim == 3
    assert "\n" not in told


def test_an_array_is_taken_as_pixels():
    assert pixels_of([[0, 255]]).tolist() == [[[0] * 3, [255] * 3]]
    assert pixels_of(QUARTERS) is QUARTERS


@pytest.mark.parametrize("shape", [(4,), (2, 2, 2), (2, 2, 5), (0, 3, 3), (2, 2, 3, 1)])
def test_an_array_of_another_shape_is_no_picture(shape):
    with pytest.raises(ValueError, match="a picture has the shape"):
        pixels_of(np.zeros(shape, dtype=np.uint8))


def test_an_array_of_too_many_pixels_is_no_picture():
    vast = np.broadcast_to(np.zeros((1, 1, 3), dtype=np.uint8), (1, MOST_PIXELS + 1, 3))
    with pytest.raises(ValueError, match="more than 64000000"):
        pixels_of(vast)
