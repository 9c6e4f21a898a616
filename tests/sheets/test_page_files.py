"""Pages as SVG and PNG: the same as the PDF's, seen by renderers that are not ours."""

import io
import xml.etree.ElementTree as ET
from pathlib import Path

import numpy as np
import pypdfium2
import pytest
from PIL import Image
from PySide6.QtCore import QByteArray
from PySide6.QtGui import QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

from chartmaker.appraisal import appraise
from chartmaker.sheets.boxes import Pixels
from chartmaker.sheets.job import SHEETS, PrintJob
from chartmaker.sheets.page_files import page_files
from chartmaker.sheets.print_sheets import print_sheets
from tests.builders import chart
from tests.sheets.test_print_sheets import TITLES, hat

WIDTH_PX = 700
SVG = "{http://www.w3.org/2000/svg}"


def grey_of_svg(file: bytes, shape: tuple[int, int]) -> np.ndarray:
    """Draw an SVG by Qt's renderer."""
    renderer = QSvgRenderer(QByteArray(file))
    assert renderer.isValid()
    image = QImage(shape[1], shape[0], QImage.Format.Format_Grayscale8)
    image.fill(255)
    painter = QPainter(image)
    renderer.render(painter)
    painter.end()
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(shape[0], image.bytesPerLine())
    return rows[:, : shape[1]].astype(float)


def greys_of_pdf(pdf: bytes) -> list[np.ndarray]:
    document = pypdfium2.PdfDocument(pdf)
    pages = [
        np.asarray(page.render(scale=WIDTH_PX / page.get_width()).to_pil().convert("L")).astype(float)
        for page in document
    ]
    document.close()
    return pages


def coarse(grey: np.ndarray) -> np.ndarray:
    """Average squares of 5 × 5 pixels: two renderers soften edges differently."""
    rows, columns = (side // 5 for side in grey.shape)
    return grey[: 5 * rows, : 5 * columns].reshape(rows, 5, columns, 5).mean(axis=(1, 3))


@pytest.mark.parametrize("title", ["Lockside cap", TITLES["arabic"], TITLES["controls"], TITLES["lone surrogate"]])
def test_svg_looks_as_the_pdf_does(title, qapp):  # noqa: ARG001 - Qt draws
    job = PrintJob(sheets=SHEETS, picture=Pixels(2, 2, bytes((90, 90, 90) * 4)))
    appraisal = hat(title=title)
    files = [file for _, file in page_files(appraisal, job, Path("x.svg"), dpi=100)]
    pages = greys_of_pdf(print_sheets(appraisal, job))
    assert len(files) == len(pages) > 10
    for file, page in zip(files, pages, strict=True):
        apart = np.abs(coarse(grey_of_svg(file, page.shape)) - coarse(page))
        assert apart.mean() < 2
        assert apart.max() < 60
        assert coarse(page).std() > 5


def test_the_words_of_an_svg_are_kept_for_readers():
    (_, file), *_ = page_files(hat(), PrintJob(sheets=("key",)), Path("x.svg"), dpi=100)
    root = ET.fromstring(file)  # noqa: S314 - a file of our own
    labels = [group.get("aria-label") for group in root.iter(f"{SVG}g")]
    assert "Lockside cap" in labels
    assert root.find(f"{SVG}title").text.startswith("Lockside cap, page 1 of")
    # ISO 216: A4 is 210 × 297 mm.
    assert (root.get("width"), root.get("height")) == ("210mm", "297mm")


def test_pages_are_numbered_and_a_lone_page_is_not(tmp_path):
    appraisal = appraise(chart("A B | x.", times=72))
    job = PrintJob(sheets=("key", "chart"))
    assert [path.name for path, _ in page_files(appraisal, job, tmp_path / "c.svg", dpi=72)] == ["c-1.svg", "c-2.svg"]
    lone = list(page_files(appraisal, PrintJob(sheets=("cover",)), tmp_path / "c.PNG", dpi=72))
    assert [path.name for path, _ in lone] == ["c.PNG"]


def test_png_has_the_pixels_of_its_resolution():
    (_, file), *_ = page_files(hat(), PrintJob(sheets=("yarn",), paper="a5"), Path("x.png"), dpi=150)
    image = Image.open(io.BytesIO(file))
    # ISO 216: A5 is 148 × 210 mm.
    assert image.size == pytest.approx((148 / 25.4 * 150, 210 / 25.4 * 150), abs=1.5)
    assert image.info["dpi"] == pytest.approx((150, 150), abs=0.5)
