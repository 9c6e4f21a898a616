"""Writing a picture as PNG, marked as sRGB and with its resolution."""

import io

import numpy as np
from numpy.typing import NDArray
from PIL import Image
from PIL.PngImagePlugin import PngInfo

PERCEPTUAL = b"\x00"
"""The rendering intent that the sRGB chunk carries (PNG, W3C Recommendation, 11.3.2.5)."""


def png_bytes(picture: NDArray[np.uint8], *, dpi: float = 96.0) -> bytes:
    """Code a picture of shape (height, width, 3) as PNG with an sRGB chunk.

    Raises ValueError for another shape.
    """
    if picture.ndim != 3 or picture.shape[2] != 3:
        raise ValueError(f"a picture has the shape (height, width, 3), not {picture.shape}")
    marks = PngInfo()
    marks.add(b"sRGB", PERCEPTUAL)
    stream = io.BytesIO()
    Image.fromarray(np.ascontiguousarray(picture)).save(stream, "PNG", pnginfo=marks, dpi=(dpi, dpi))
    return stream.getvalue()
