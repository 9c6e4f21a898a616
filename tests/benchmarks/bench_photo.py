"""How long a photo of 24 megapixels takes from its file to the shades of its skeins."""

import tempfile
import time
from collections.abc import Iterator
from pathlib import Path

import numpy as np
from PIL import Image

from chartmaker.model.settings import Viewing
from chartmaker.pictures.source import read_picture
from chartmaker.pictures.target_photo import read_skein, read_target
from tests.benchmarks.row import Row
from tests.rendered_photo import Scene, take

ENLARGED = 5
"""From 1200 × 900 to 6000 × 4500; the lowest 500 rows are cut off, so that 24 million are left."""
ROWS = 4000


def measure() -> Iterator[Row]:
    """Read the photo three times, the target and 16 skeins, and tell the median."""
    photo = take(Scene())
    skeins = [np.array(skein) * ENLARGED for skein in photo.skeins[:16]]
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "photo.jpg"
        large = Image.fromarray(photo.pixels).resize((1200 * ENLARGED, 900 * ENLARGED)).crop((0, 0, 6000, ROWS))
        large.save(path, quality=92)
        seconds = sorted(_read(path, photo.corners * ENLARGED, skeins) for _ in range(3))
    yield Row(name="photo of 24 megapixels, file to 16 shades", figure=seconds[1], limit=2, unit="s")


def _read(path: Path, corners: np.ndarray, skeins: list[np.ndarray]) -> float:
    start = time.perf_counter()
    pixels = read_picture(path)
    target = read_target(pixels, corners, edition="before-2014-11", viewing=Viewing())
    for (left, top), (right, bottom) in skeins:
        read_skein(pixels, [(left, top), (right, top), (right, bottom), (left, bottom)], target)
    return time.perf_counter() - start
