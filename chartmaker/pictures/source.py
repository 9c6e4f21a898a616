"""Pictures that a user brings: opened without trust, turned upright, laid on white, as pixels of sRGB."""

import stat
from pathlib import Path
from typing import Any, BinaryIO

import numpy as np
from numpy.typing import ArrayLike, NDArray
from PIL.Image import Image, Transpose, fromarray
from PIL.JpegImagePlugin import JpegImageFile
from PIL.PngImagePlugin import PngImageFile

from chartmaker.files.problems import UserProblem

MOST_BYTES = 64 * 1024 * 1024
"""A file past it is refused before it is read."""
MOST_PIXELS = 64_000_000
"""Pixels of a picture; one past it is refused before any is decoded, whatever its file's size."""
READERS = ((b"\x89PNG\r\n\x1a\n", PngImageFile), (b"\xff\xd8\xff", JpegImageFile))
"""How each kind of file begins, and what decodes it; named one by one, so that no other decoder ever sees the file."""
ORIENTATION = 0x0112
"""The tag of Exif 2.32, table 4, that says how the camera was held."""
UPRIGHT = {
    2: Transpose.FLIP_LEFT_RIGHT,
    3: Transpose.ROTATE_180,
    4: Transpose.FLIP_TOP_BOTTOM,
    5: Transpose.TRANSPOSE,
    6: Transpose.ROTATE_270,
    7: Transpose.TRANSVERSE,
    8: Transpose.ROTATE_90,
}
"""What sets each orientation upright (Exif 2.32, 4.6.4)."""

Pixels = NDArray[np.uint8]


def read_picture(path: Path) -> Pixels:
    """Read a PNG or JPEG as sRGB pixels, shape (height, width, 3 or 4); a fourth channel is its opacity.

    Embedded colour profiles are not applied: the numbers are taken as sRGB.
    Raises UserProblem, one sentence, for whatever is no such picture, is broken, or is too large.
    """
    where = str(path)
    try:
        kind = path.stat()
        if not stat.S_ISREG(kind.st_mode):  # a pipe or a device could keep us waiting for ever
            raise UserProblem("this is not an ordinary file", where=where)
        if kind.st_size > MOST_BYTES:
            raise UserProblem(f"the picture's file is larger than {MOST_BYTES // 1024**2} MB", where=where)
        with path.open("rb") as file:
            return _decoded(file, where)
    except FileNotFoundError:
        raise UserProblem("there is no such file", where=where) from None
    except (OSError, ValueError) as problem:
        reason = getattr(problem, "strerror", None) or problem
        raise UserProblem(f"the picture cannot be read: {reason}", where=where) from None


def pixels_of(picture: ArrayLike) -> Pixels:
    """Give an array of 0 to 255, shape (height, width) for grey or (height, width, 3 or 4), as pixels.

    Raises ValueError for another shape, for none at all, and for more than `MOST_PIXELS`.
    """
    pixels = np.asarray(picture, dtype=np.uint8)
    if pixels.ndim == 2:
        pixels = np.repeat(pixels[:, :, None], 3, axis=2)
    if pixels.ndim != 3 or pixels.shape[2] not in (3, 4) or not pixels.size:
        raise ValueError(f"a picture has the shape (height, width, 3 or 4), not {pixels.shape}")
    if pixels.shape[0] * pixels.shape[1] > MOST_PIXELS:
        raise ValueError(f"a picture of {pixels.shape[0] * pixels.shape[1]} pixels, more than {MOST_PIXELS}")
    return pixels


def _decoded(file: BinaryIO, where: str) -> Pixels:
    head = file.read(8)
    file.seek(0)
    reader = next((reader for mark, reader in READERS if head.startswith(mark)), None)
    if reader is None:
        raise UserProblem("this is neither a PNG nor a JPEG picture", where=where, now="save it as one of them")
    try:
        with reader(file) as image:
            _refuse_large(image.size, where)
            return np.asarray(_upright(_in_srgb(image), image))
    except UserProblem:
        raise
    except Exception as problem:  # noqa: BLE001 - a broken picture makes a decoder raise anything from SyntaxError on
        what = f"the picture is broken: {problem or type(problem).__name__}"
        raise UserProblem(what, where=where, now="save it again from where it came") from None


def _refuse_large(size: tuple[int, int], where: str) -> None:
    width, height = size
    if width * height > MOST_PIXELS:
        what = f"the picture has {width} × {height} pixels, more than {MOST_PIXELS // 10**6} million"
        raise UserProblem(what, where=where, now="make it smaller")


def _in_srgb(image: Image) -> Image:
    """Bring any of the modes that PNG and JPEG have to RGB, with opacity where there is some."""
    if image.mode.startswith("I"):  # 16-bit grey, whose upper byte is what 8 bits would hold
        grey = np.asarray(image, dtype=np.int64) // 257
        return fromarray(np.clip(grey, 0, 255).astype(np.uint8)).convert("RGB")
    has_opacity = "A" in image.getbands() or "transparency" in image.info
    wanted = "RGBA" if has_opacity else "RGB"
    return image if image.mode == wanted else image.convert(wanted)  # a copy of a large picture is dear


def _upright(pixels: Image, image: Any) -> Image:
    turn = UPRIGHT.get(image.getexif().get(ORIENTATION, 1))
    return pixels.transpose(turn) if turn is not None else pixels
