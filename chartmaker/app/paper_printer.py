"""Printing by the system's printer: each page of the PDF as PDFium draws it, fine enough for paper."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QMarginsF, QObject, QRectF, Signal
from PySide6.QtGui import QImage, QPageLayout, QPageSize, QPainter
from PySide6.QtPrintSupport import QPrinter

from chartmaker.app.side_thread import SideThread
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from chartmaker.app.sheet_choices import SheetChoices
    from chartmaker.sheets.page_picture import PagePicture

COARSEST_DPI, FINEST_DPI = 300, 450
"""A page is drawn as fine as the printer is, within these: finer ones would take more memory than they show."""
PAGE_SIZES = {
    "a4": QPageSize.PageSizeId.A4,
    "letter": QPageSize.PageSizeId.Letter,
    "a5": QPageSize.PageSizeId.A5,
}


def printer_for(choices: SheetChoices, title: str) -> QPrinter:
    """Give the system's printer, set to the paper that is chosen; pages reach to its edges, their margins are ours."""
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    lie = QPageLayout.Orientation.Landscape if choices.is_landscape else QPageLayout.Orientation.Portrait
    printer.setPageLayout(QPageLayout(QPageSize(PAGE_SIZES[choices.paper]), lie, QMarginsF()))
    printer.setFullPage(True)
    printer.setDocName(title.strip() or "Chartmaker")
    printer.setCreator("Chartmaker")
    return printer


class PaperPrinter(QObject):
    """Prints one PDF page by page; the pages are drawn beside the window, and given to the printer in its thread."""

    told = Signal(str)
    """How far it is, and the end."""
    failed = Signal(object)
    """The exception, or the sentence, that ended it."""
    ended = Signal()

    def __init__(self, printer: QPrinter, pdf: bytes, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._printer, self._pdf = printer, pdf
        self._painter: QPainter | None = None
        self._pages: list[int] = []
        self._count = 0
        self._thread = SideThread(self)
        self._thread.done.connect(self._put)
        self._thread.failed.connect(self._fail)

    def start(self) -> None:
        """Begin with the first page that was asked for in the printer's dialog."""
        from chartmaker.sheets.page_picture import page_count

        last = page_count(self._pdf)
        first, end = self._printer.fromPage() or 1, self._printer.toPage() or last
        self._pages = list(range(first - 1, min(end, last)))
        if self._printer.pageOrder() == QPrinter.PageOrder.LastPageFirst:
            self._pages.reverse()
        self._count = len(self._pages)
        self._painter = QPainter()
        if not self._pages or not self._painter.begin(self._printer):
            self._fail(OSError(None, tr("it cannot be printed on"), self._printer.printerName()))
            return
        self._draw()

    def _draw(self) -> None:
        index, pdf = self._pages[0], self._pdf
        dpi = min(max(self._printer.resolution(), COARSEST_DPI), FINEST_DPI)
        width_px = round(self._printer.paperRect(QPrinter.Unit.Inch).width() * dpi)
        self.told.emit(tr("Printing page {0} of {1}").format(self._count - len(self._pages) + 1, self._count))

        def work() -> PagePicture:
            from chartmaker.sheets.page_picture import page_picture

            return page_picture(pdf, index, width_px=width_px)

        self._thread.start(work)

    def _put(self, raw: PagePicture) -> None:
        """Put a page on paper: as large as it is, in the middle where the paper is another."""
        painter = self._painter
        if painter is None:
            return
        image = QImage(raw.bgrx, raw.width, raw.height, raw.stride, QImage.Format.Format_RGB32)
        paper = self._printer.paperRect(QPrinter.Unit.DevicePixel)
        scale = min(paper.width() / raw.width, paper.height() / raw.height)
        wide, high = raw.width * scale, raw.height * scale
        painter.drawImage(QRectF((paper.width() - wide) / 2, (paper.height() - high) / 2, wide, high), image)
        del self._pages[0]
        if self._pages:
            self._printer.newPage()
            self._draw()
            return
        painter.end()
        self.told.emit(tr("Printed {0} pages").format(self._count))
        self._end()

    def _fail(self, error: BaseException) -> None:
        if self._painter is not None and self._painter.isActive():
            self._painter.end()
        self.failed.emit(error)
        self._end()

    def _end(self) -> None:
        self._painter = None
        self.ended.emit()
        self.deleteLater()
