"""The pages as they will print, one below the other; only those in sight are drawn, and kept while the same."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QImage, QPainter, QPalette
from PySide6.QtWidgets import QAbstractScrollArea

from chartmaker.app.words import tr

if TYPE_CHECKING:
    from PySide6.QtGui import QKeyEvent, QPaintEvent, QResizeEvent, QWheelEvent

    from chartmaker.sheets.page_picture import PagePicture
    from chartmaker.sheets.print_sheets import Printed

GAP = 14
"""Around pages, in pixels."""
ZOOMS = (0.25, 0.35, 0.5, 0.7, 0.85, 1.0, 1.25, 1.5, 2.0, 3.0, 4.0)
"""Shares of the true size."""
MOST_KEPT = 40
"""Pages whose pictures are kept."""
MM_PER_INCH = 25.4


class SheetsView(QAbstractScrollArea):
    """Shows one print. Where no zoom is chosen, a page fits the width, or the height if it lies before a low window."""

    wanted = Signal()
    """A page came into sight that has no picture of its present size."""
    page_changed = Signal(int)
    """The index of the page that is in front."""
    zoomed = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(tr("Pages as they will print"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setFrameShape(QAbstractScrollArea.Shape.NoFrame)
        self.viewport().setBackgroundRole(QPalette.ColorRole.Mid)
        self.viewport().setAutoFillBackground(True)
        self._printed: Printed | None = None
        self._pictures: dict[int, QImage] = {}
        self._zoom: float | None = None
        self._fits_page = False
        self._front = 0
        self.verticalScrollBar().valueChanged.connect(self._follow_scroll)

    # --- what is shown

    @property
    def count(self) -> int:
        """How many pages there are."""
        return len(self._printed.pages) if self._printed else 0

    @property
    def page(self) -> int:
        """The index of the page in front: the one that takes most of the view."""
        return self._front

    def show_print(self, printed: Printed) -> None:
        """Show another print; pages that are as they were keep their pictures."""
        place = self._place_in_sheet()
        before, self._printed = self._printed, printed
        is_like = before is not None and before.paper == printed.paper
        same = zip(before.pages, printed.pages, strict=False) if before is not None and is_like else ()
        kept = {index for index, (old, new) in enumerate(same) if old == new}
        self._pictures = {index: picture for index, picture in self._pictures.items() if index in kept}
        self._lay_out()
        if before is not None and len(before.pages) != len(printed.pages):
            self._return_to(*place)
        self._follow_scroll()
        self.viewport().update()
        self.wanted.emit()

    def _place_in_sheet(self) -> tuple[str, int]:
        """Tell which sheet is in front, and how many of its pages come before."""
        names = [page.sheet for page in self._printed.pages] if self._printed else []
        if self._front >= len(names):
            return "", 0
        name = names[self._front]
        return name, self._front - names.index(name)

    def _return_to(self, sheet: str, number: int) -> None:
        """Bring the same page of the same sheet to the top, as far as there still is one."""
        found = [
            index for index, page in enumerate(self._printed.pages if self._printed else ()) if page.sheet == sheet
        ]
        if found:
            self.go_to(found[min(number, len(found) - 1)])

    def take(self, printed: Printed, index: int, raw: PagePicture) -> None:
        """Take the picture of a page."""
        if printed is self._printed:
            image = QImage(raw.bgrx, raw.width, raw.height, raw.stride, QImage.Format.Format_RGB32).copy()
            image.setDevicePixelRatio(self.devicePixelRatioF())
            self._pictures.pop(index, None)
            self._pictures[index] = image
            for old in list(self._pictures)[:-MOST_KEPT]:
                del self._pictures[old]
            self.viewport().update()

    def missing(self) -> tuple[int, int] | None:
        """Give index and width in pixels of the next page to be drawn: in sight first, then those around."""
        if not self.count:
            return None
        width = self._picture_width
        shown = self._in_sight()
        around = [index for index in (shown[-1] + 1, shown[0] - 1) if 0 <= index < self.count] if shown else []
        for index in (*shown, *around):
            picture = self._pictures.get(index)
            if picture is None or abs(picture.width() - width) > 1:
                return index, width
        return None

    # --- places

    @property
    def _scale(self) -> float:
        """Pixels of the screen to the millimetre."""
        true = self.logicalDpiX() / MM_PER_INCH
        if self._printed is None:
            return true
        paper, port = self._printed.paper, self.viewport()
        if self._zoom is not None:
            return self._zoom * true
        wide = max(40, port.width() - 2 * GAP) / paper.width_mm
        high = max(40, port.height() - 2 * GAP) / paper.height_mm
        return min(wide, high) if self._fits_page else min(wide, 1.6 * true)

    @property
    def _picture_width(self) -> int:
        paper = self._printed.paper if self._printed else None
        return max(1, round(paper.width_mm * self._scale * self.devicePixelRatioF())) if paper else 1

    @property
    def _step(self) -> float:
        """From page to page, in pixels."""
        return self._printed.paper.height_mm * self._scale + GAP if self._printed else 1.0

    def _lay_out(self) -> None:
        if self._printed is None:
            return
        port = self.viewport()
        high = round(self.count * self._step + GAP)
        wide = round(self._printed.paper.width_mm * self._scale + 2 * GAP)
        self.verticalScrollBar().setRange(0, max(0, high - port.height()))
        self.verticalScrollBar().setPageStep(port.height())
        self.verticalScrollBar().setSingleStep(40)
        self.horizontalScrollBar().setRange(0, max(0, wide - port.width()))
        self.horizontalScrollBar().setPageStep(port.width())

    def _place_of(self, index: int) -> QRectF:
        scale = self._scale
        paper = self._printed.paper if self._printed else None
        if paper is None:
            return QRectF()
        wide, high = paper.width_mm * scale, paper.height_mm * scale
        left = max(float(GAP), (self.viewport().width() - wide) / 2) - self.horizontalScrollBar().value()
        return QRectF(left, GAP + index * self._step - self.verticalScrollBar().value(), wide, high)

    def _in_sight(self) -> list[int]:
        port = QRectF(self.viewport().rect())
        return [index for index in range(self.count) if self._place_of(index).intersects(port)]

    # --- going about

    def go_to(self, index: int) -> None:
        """Bring a page to the top of the view."""
        if self.count:
            index = min(max(index, 0), self.count - 1)
            self.verticalScrollBar().setValue(round(index * self._step))
            self._set_front(index)

    def zoom_by(self, steps: int) -> None:
        """Take the next larger or smaller size."""
        true = self.logicalDpiX() / MM_PER_INCH
        now = self._scale / true
        larger = [zoom for zoom in ZOOMS if zoom > now * 1.01]
        smaller = [zoom for zoom in ZOOMS if zoom < now * 0.99]
        found = larger[:1] if steps > 0 else smaller[-1:]
        if found:
            self._set_zoom(found[0])

    def fit_width(self) -> None:
        """Make pages as wide as the view."""
        self._fits_page = False
        self._set_zoom(None)

    def fit_page(self) -> None:
        """Make a whole page fit the view."""
        self._fits_page = True
        self._set_zoom(None)

    @property
    def percent(self) -> int:
        """How large the pages are against the paper."""
        return round(100 * self._scale * MM_PER_INCH / self.logicalDpiX())

    def _set_zoom(self, zoom: float | None) -> None:
        front = self._front
        part = (self.verticalScrollBar().value() - front * self._step) / self._step
        self._zoom = zoom
        self._lay_out()
        self.verticalScrollBar().setValue(round((front + part) * self._step))
        self.viewport().update()
        self.wanted.emit()
        self.zoomed.emit()

    def _follow_scroll(self) -> None:
        if self.count:
            value, port = self.verticalScrollBar().value(), self.viewport().height()
            middle = (value + 0.4 * port) / self._step
            at_end = value >= self.verticalScrollBar().maximum() > 0
            self._set_front(self.count - 1 if at_end else min(int(middle), self.count - 1))
        self.wanted.emit()

    def _set_front(self, index: int) -> None:
        if index != self._front:
            self._front = index
            self.page_changed.emit(index)

    # --- events

    def paintEvent(self, _event: QPaintEvent) -> None:
        """Paint the pages in sight; one without a picture is white paper, one with an older size is scaled."""
        painter = QPainter(self.viewport())
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        for index in self._in_sight():
            place = self._place_of(index)
            painter.fillRect(place.adjusted(1.5, 2.0, 3.0, 3.5), QColor(0, 0, 0, 60))
            painter.fillRect(place, Qt.GlobalColor.white)
            picture = self._pictures.get(index)
            if picture is not None and abs(picture.width() - self._picture_width) <= 1:
                painter.drawImage(QPointF(round(place.left()), round(place.top())), picture)
            elif picture is not None:
                painter.drawImage(place, picture)
            if index == self._front and self.hasFocus():
                painter.setPen(self.palette().highlight().color())
                painter.drawRect(place.adjusted(-2, -2, 2, 2))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fit the pages anew."""
        super().resizeEvent(event)
        front = self._front
        self._lay_out()
        if self._zoom is None:
            self.go_to(front)
        self.wanted.emit()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Scroll, or with Ctrl zoom."""
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.zoom_by(1 if event.angleDelta().y() > 0 else -1)
            event.accept()
        else:
            super().wheelEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Go from page to page, and zoom."""
        steps = {
            Qt.Key.Key_PageDown: lambda: self.go_to(self._front + 1),
            Qt.Key.Key_PageUp: lambda: self.go_to(self._front - 1),
            Qt.Key.Key_Home: lambda: self.go_to(0),
            Qt.Key.Key_End: lambda: self.go_to(self.count - 1),
            Qt.Key.Key_Plus: lambda: self.zoom_by(1),
            Qt.Key.Key_Equal: lambda: self.zoom_by(1),
            Qt.Key.Key_Minus: lambda: self.zoom_by(-1),
            Qt.Key.Key_W: self.fit_width,
            Qt.Key.Key_F: self.fit_page,
        }
        run = steps.get(Qt.Key(event.key()))
        if run is None:
            super().keyPressEvent(event)
        else:
            run()
