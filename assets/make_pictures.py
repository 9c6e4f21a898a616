"""Makes the README's pictures from the program itself: its window on the example cap, and the cap's printed pages.

Run it from the repository's root, where the `test` extra is installed: `python assets/make_pictures.py`.
"""

import os
import tempfile
from pathlib import Path

os.environ["QT_QPA_PLATFORM"] = "offscreen"
os.environ["QT_SCALE_FACTOR"] = "2"

import pypdfium2
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication

from chartmaker.app.main import open_window
from chartmaker.app.window import Window
from chartmaker.appraisal import Appraisal
from chartmaker.sheets.print_sheets import print_sheets

ROOT = Path(__file__).resolve().parent.parent
DESIGN = ROOT / "examples" / "lockside-cap.hat.toml"
WINDOW_SIZE = (1200, 780)
PAGE_SCALE = 1.5
"""Pixels of a printed page to one point of it."""
LOST_COLOURWAY = "red on blue"
CURRENT_ROUND, CURRENT_STITCH = 27, 11
"""Where the cursor stands in the picture of the chart."""


def main() -> None:
    """Write every picture beside this file."""
    application = QApplication([])
    with tempfile.TemporaryDirectory() as folder:
        settings = QSettings(str(Path(folder) / "settings.ini"), QSettings.Format.IniFormat)
        window = open_window(settings, DESIGN)
        window.resize(*WINDOW_SIZE)
        for page in ("chart", "lots", "yarn", "hat", "baths"):
            show(application, window, page)
            window.grab().save(str(ROOT / "assets" / f"window-{page}.png"))
        save_printed(window.document.appraisal)
        show_a_lost_pair(application, window)
        window.grab().save(str(ROOT / "assets" / "window-value.png"))


def show(application: QApplication, window: Window, page: str) -> None:
    """Turn to a page, and let Qt do all that it has put off: layouts, the palette beside the design."""
    window.show_page(page)
    if page == "chart":
        window.chart.canvas.go_to(CURRENT_ROUND, CURRENT_STITCH)
        window.chart.canvas.hovered.emit(window.chart.canvas.current)
    for _ in range(8):
        application.processEvents()


def show_a_lost_pair(application: QApplication, window: Window) -> None:
    """Turn to the colourway that is there to be looked at in grey, and to the first finding that a lot would mend."""
    document = window.document
    document.replace(document.design.using(LOST_COLOURWAY), path=document.path, palette=document.palette)
    window.show_view("value")
    while not window.findings.has_remedy:
        window.findings.go(1)
    show(application, window, "chart")


def save_printed(appraisal: Appraisal) -> None:
    """Save every printed page as a picture."""
    document = pypdfium2.PdfDocument(print_sheets(appraisal, paper="a4"))
    for number in range(len(document)):
        picture = document[number].render(scale=PAGE_SCALE).to_pil()
        picture.save(ROOT / "assets" / f"page-{number + 1}.png", optimize=True)
    document.close()


if __name__ == "__main__":
    main()
