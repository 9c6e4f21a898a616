"""Controls in a row that goes on in the next line where the width ends."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QSizePolicy, QWidget

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from PySide6.QtCore import QEvent
    from PySide6.QtGui import QResizeEvent

GAP = 4


class FlowRow(QWidget):
    """As high as its lines need at the width that it has."""

    def __init__(self, controls: Sequence[QWidget], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._controls = tuple(controls)
        for control in self._controls:
            control.setParent(self)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def hasHeightForWidth(self) -> bool:
        """Say that the height follows the width."""
        return True

    def heightForWidth(self, width: int) -> int:
        """Give the height of all lines."""
        return max((box.bottom() + 1 for _, box in self._places(width)), default=0)

    def sizeHint(self) -> QSize:
        """Ask for one line, or for the lines at the width that it has."""
        width = sum(control.sizeHint().width() + GAP for control in self._shown())
        return QSize(width, self.heightForWidth(self.width()))

    def minimumSizeHint(self) -> QSize:
        """Need the widest control."""
        widest = max((control.sizeHint().width() for control in self._shown()), default=0)
        return QSize(widest, self.heightForWidth(max(widest, self.width())))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Put the controls in their places."""
        super().resizeEvent(event)
        self._place()

    def event(self, event: QEvent) -> bool:
        """Lay out anew when a control comes, goes or changes its size."""
        if event.type() == event.Type.LayoutRequest:
            self._place()
            self.updateGeometry()
        return super().event(event)

    def _place(self) -> None:
        for control, box in self._places(self.width()):
            control.setGeometry(box)

    def _shown(self) -> list[QWidget]:
        return [control for control in self._controls if not control.isHidden()]

    def _places(self, width: int) -> Iterator[tuple[QWidget, QRect]]:
        at, line = QPoint(0, 0), 0
        is_leftwards = self.layoutDirection() == Qt.LayoutDirection.RightToLeft
        for control in self._shown():
            size = control.sizeHint()
            if at.x() and at.x() + size.width() > width:
                at, line = QPoint(0, at.y() + line + GAP), 0
            line = max(line, size.height())
            box = QRect(at, size)
            if is_leftwards:
                box.moveRight(width - 1 - at.x())
            yield control, box
            at += QPoint(size.width() + GAP, 0)
