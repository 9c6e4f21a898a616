"""Makes the README's pictures from the program itself: its window, its printed pages and its hats.

Run it from the repository's root, where the `test` extra is installed: `python assets/make_pictures.py`.
"""

import os
import tempfile
import time
from pathlib import Path

os.environ["QT_QPA_PLATFORM"] = "offscreen"
os.environ["QT_SCALE_FACTOR"] = "2"

import pypdfium2
from PIL import Image
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication

from chartmaker.app.lots_page import LotsPage
from chartmaker.app.main import open_window
from chartmaker.app.window import Window
from chartmaker.appraisal import Appraisal, appraise
from chartmaker.files.design_reading import read_design
from chartmaker.pictures.picture import picture
from chartmaker.sheets.job import PrintJob
from chartmaker.sheets.print_sheets import print_sheets

ROOT = Path(__file__).resolve().parent.parent
ASSETS = ROOT / "assets"
CAP, TAM = (ROOT / "examples" / name for name in ("lockside-cap.hat.toml", "towpath-tam.hat.toml"))
WINDOW_SIZE = (1200, 780)
PAGE_SCALE = 1.5
"""Pixels of a printed page to one point of it."""
PAGES = {"page-crown": ("chart", -1), "page-bath": ("baths", 0)}
"""The printed pages that are shown: of which sheet, and which page of it."""
COMPARED_LOTS = ("weld-1", "weld-iron-1")
STEADY_PAGES = ("hat", "yarn", "baths", "sheets")
"""Pages that are shown as they come."""
STEADY_SECONDS = 3.0
"""For what such a page makes beside the window: the turning hat, the printed pages."""
LOST_COLOURWAY = "red on blue"
CURRENT_ROUND, CURRENT_STITCH = 27, 11
"""Where the cursor stands in the picture of the chart."""
MOST_SECONDS = 20.0
"""For the chart to come to the window."""


def main() -> None:
    """Write every picture beside this file."""
    save_hats()
    save_printed(appraise(read_design(CAP)))
    application = QApplication([])
    with tempfile.TemporaryDirectory() as folder:
        os.environ["CHARTMAKER_STATE"] = folder
        settings = QSettings(str(Path(folder) / "settings.ini"), QSettings.Format.IniFormat)
        window = open_window(settings, CAP)
        window.resize(*WINDOW_SIZE)
        wait_for_the_chart(application, window)
        show_chart(application, window)
        save_window(window, "window-chart")
        show_two_lots(application, window)
        save_window(window, "window-lots")
        for page in STEADY_PAGES:
            show_steady(application, window, page)
            save_window(window, f"window-{page}")
        show_knitted(application, window)
        save_window(window, "window-knit")
        show_a_lost_pair(application, window)
        save_window(window, "window-value")


def wait_for_the_chart(application: QApplication, window: Window) -> None:
    """Let Qt run until the design is read and its chart is shown, and then do all that it has put off."""
    end = time.monotonic() + MOST_SECONDS
    while not window.has_chart and time.monotonic() < end:
        application.processEvents()
    settle(application)


def settle(application: QApplication) -> None:
    """Let Qt do what it has put off: layouts, the palette beside the design."""
    for _ in range(20):
        application.processEvents()
        time.sleep(0.01)


def show_chart(application: QApplication, window: Window) -> None:
    """Turn to the chart with the cursor in its large band."""
    window.show_page("chart")
    window.chart.canvas.go_to(CURRENT_ROUND, CURRENT_STITCH)
    window.chart.canvas.hovered.emit(window.chart.canvas.current)
    settle(application)


def show_two_lots(application: QApplication, window: Window) -> None:
    """Turn to the lots with two of one dyestuff picked."""
    window.show_page("lots")
    page = window.findChild(LotsPage)
    if page is None:
        raise RuntimeError("the window has no page of lots")
    page.pick(*COMPARED_LOTS)
    settle(application)


def show_steady(application: QApplication, window: Window, page: str) -> None:
    """Turn to a page, and wait until nothing moves on it any more."""
    window.show_page(page)
    end = time.monotonic() + STEADY_SECONDS
    while time.monotonic() < end:
        settle(application)


def show_knitted(application: QApplication, window: Window) -> None:
    """Turn to the knitted surface, with the shelf of motifs beside it."""
    show_chart(application, window)
    window.show_view("knit")
    window.chart.show_shelf(is_shown=True)
    settle(application)


def show_a_lost_pair(application: QApplication, window: Window) -> None:
    """Turn to the colourway that is there to be looked at in grey, and to the first finding that a lot would mend."""
    window.chart.show_shelf(is_shown=False)
    document = window.document
    document.replace(document.design.using(LOST_COLOURWAY), path=document.path, palette=document.palette)
    window.show_view("value")
    while not window.findings.has_remedy:
        window.findings.go(1)
    show_chart(application, window)


def save_window(window: Window, name: str) -> None:
    """Save the window as it stands."""
    path = ASSETS / f"{name}.png"
    window.grab().save(str(path))
    save_small(Image.open(path), name)


def save_printed(appraisal: Appraisal) -> None:
    """Save the printed pages that are shown."""
    for name, (sheet, place) in PAGES.items():
        document = pypdfium2.PdfDocument(print_sheets(appraisal, PrintJob(sheets=(sheet,))))
        save_small(document[place % len(document)].render(scale=PAGE_SCALE).to_pil(), name)
        document.close()


def save_hats() -> None:
    """Save both hats as they are worn."""
    for name, path in (("hat-cap", CAP), ("hat-tam", TAM)):
        save_small(Image.fromarray(picture(appraise(read_design(path)), "hat", 700)), name)


def save_small(image: Image.Image, name: str) -> None:
    """Save a picture with 256 colours of its own, a third of its size otherwise."""
    image.convert("RGB").quantize(256, dither=Image.Dither.NONE).save(ASSETS / f"{name}.png", optimize=True)


if __name__ == "__main__":
    main()
