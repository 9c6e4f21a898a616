"""Pages of a finished PDF as pixels, by PDFium: what is seen is the very file that is printed.

PDFium works on one page at a time: callers in several threads take turns here.
"""

import threading
from dataclasses import dataclass

import pypdfium2  # type: ignore[import-untyped]  # ships no types

from chartmaker.sheets.boxes import Pixels

_TURN = threading.Lock()


@dataclass(frozen=True, slots=True, eq=False)
class PagePicture:
    """One page as pixels of four bytes: blue, green, red and one that is not used."""

    width: int
    height: int
    stride: int
    """Bytes from row to row."""
    bgrx: bytes


def page_picture(pdf: bytes, index: int, *, width_px: int) -> PagePicture:
    """Draw a page, by its index, so many pixels wide."""
    with _TURN:
        document = pypdfium2.PdfDocument(pdf)
        try:
            page = document[index]
            bitmap = page.render(scale=width_px / page.get_width(), prefer_bgrx=True)
            return PagePicture(bitmap.width, bitmap.height, bitmap.stride, bytes(bitmap.buffer))
        finally:
            document.close()


def page_pixels(pdf: bytes, index: int, *, dpi: float) -> Pixels:
    """Draw a page at a resolution, for files."""
    with _TURN:
        document = pypdfium2.PdfDocument(pdf)
        try:
            image = document[index].render(scale=dpi / 72).to_pil().convert("RGB")
            return Pixels(image.width, image.height, image.tobytes())
        finally:
            document.close()


def page_count(pdf: bytes) -> int:
    """Count the pages of a PDF."""
    with _TURN:
        document = pypdfium2.PdfDocument(pdf)
        try:
            return len(document)
        finally:
            document.close()
