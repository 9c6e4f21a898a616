"""The picture that a pattern is made of: opened, cropped, and set to a count of stitches and rounds."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QRect, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QImage
from PySide6.QtWidgets import (
    QCheckBox,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QSizePolicy,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from chartmaker.app.crop_view import CropView
from chartmaker.app.pattern_wish import PictureWish
from chartmaker.app.repeat_field import RepeatField
from chartmaker.app.words import plain_tip, tr
from chartmaker.model.bounds import MOST_ROUNDS
from chartmaker.pictures.scaling import Block, rounds_for

if TYPE_CHECKING:
    from pathlib import Path

    from chartmaker.app.pattern_wish import Look
    from chartmaker.pictures.source import Pixels

FIRST_STITCHES = 24


class PictureSide(QWidget):
    """Holds a working copy of the picture, the frame on it, and the size of the pattern."""

    changed = Signal()
    wanted = Signal()
    """A picture is to be chosen."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._pixels: Pixels | None = None
        self._side = 1
        """Pixels of the picture that one of the working copy stands for, along a side."""
        self._size = QSize()
        self.open = QPushButton(tr("&Open a picture…"))
        self.open.setToolTip(tr("A PNG or JPEG picture; it can be dropped here too"))
        self.name = QLabel(tr("PNG or JPEG"))
        self.name.setTextFormat(Qt.TextFormat.PlainText)
        self.name.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.view = CropView()
        self.edges = {
            "left": _edge(tr("Left edge of the frame, in pixels")),
            "top": _edge(tr("Upper edge of the frame, in pixels")),
            "width": _edge(tr("Width of the frame, in pixels")),
            "height": _edge(tr("Height of the frame, in pixels")),
        }
        self.whole = QPushButton(tr("&Whole picture"))
        self.repeat = RepeatField()
        self.repeat.show_stitches(FIRST_STITCHES)
        self.rounds = QSpinBox()
        self.rounds.setRange(1, MOST_ROUNDS)
        self.rounds.setAccessibleName(tr("Rounds of the pattern"))
        self.follows = QCheckBox(tr("follow the &proportion"))
        self.follows.setToolTip(tr("Let the rounds follow from the stitches, so that nothing is cut off or added"))
        self.follows.setChecked(True)
        self.fills = QCheckBox(tr("&Fill it and cut off what juts out"))
        self.fills.setToolTip(tr("Otherwise all of the picture shows, with white beside it"))
        self._height_per_width = 1.0
        self._lay_out()
        self._connect()
        self._show_state()

    # --- what it holds

    def take_picture(self, copy: tuple[Pixels, int], size: tuple[int, int], path: Path) -> None:
        """Show a picture; `size` is width and height of the one that the working copy was made of."""
        self._pixels, self._side = copy
        self._size = QSize(*size)
        height, width = self._pixels.shape[:2]
        data = self._pixels.tobytes()  # held until it is copied: Qt only looks at it
        image = QImage(data, width, height, 3 * width, QImage.Format.Format_RGB888)
        self.view.take_picture(image.copy(), self._size)
        self.name.setText(tr("{0}, {1} × {2} px").format(path.name, *size))
        self.name.setToolTip(plain_tip(str(path)))
        self._show_frame()
        self._show_state()
        self._take_size()

    def take_band(self, stitches: int, height_per_width: float) -> None:
        """Take the round that the repeat shall divide, and the proportion of a stitch."""
        self._height_per_width = height_per_width
        self.repeat.take_round(stitches)
        self._follow_proportion()

    def wish(self, look: Look) -> PictureWish | None:
        """Give what is wished for; None without a picture."""
        if self._pixels is None:
            return None
        block = Block(
            stitches=self.repeat.stitches,
            rounds=self.rounds.value(),
            height_per_width=self._height_per_width,
            crops=self.fills.isChecked() and not self.follows.isChecked(),
        )
        return PictureWish(pixels=self._pixels, crop=self._crop, block=block, look=look)

    @property
    def _crop(self) -> tuple[int, int, int, int]:
        """The frame in pixels of the working copy: at least one."""
        frame, side = self.view.frame, self._side
        right, bottom = frame.left() + frame.width(), frame.top() + frame.height()
        return frame.left() // side, frame.top() // side, -(-right // side), -(-bottom // side)

    # --- upkeep

    def _connect(self) -> None:
        self.open.clicked.connect(self.wanted)
        self.view.cropped.connect(self._take_frame)
        for edge in self.edges.values():
            edge.valueChanged.connect(self._take_edges)
        self.whole.clicked.connect(self._frame_whole)
        self.repeat.changed.connect(self._take_size)
        self.rounds.valueChanged.connect(lambda _value: self.changed.emit())
        self.follows.toggled.connect(self._show_state)
        self.follows.toggled.connect(self._take_size)
        self.fills.toggled.connect(lambda _on: self.changed.emit())

    def _take_frame(self) -> None:
        self._show_frame()
        self._take_size()

    def _take_edges(self) -> None:
        left, top = self.edges["left"].value(), self.edges["top"].value()
        width = min(self.edges["width"].value(), self._size.width() - left)
        height = min(self.edges["height"].value(), self._size.height() - top)
        self.view.show_frame(QRect(left, top, width, height))
        self._take_frame()

    def _frame_whole(self) -> None:
        self.view.show_frame(QRect(0, 0, self._size.width(), self._size.height()))
        self._take_frame()

    def _take_size(self) -> None:
        self._follow_proportion()
        self.changed.emit()

    def _follow_proportion(self) -> None:
        if self._pixels is None or not self.follows.isChecked():
            return
        left, top, right, bottom = self._crop
        framed = self._pixels[top:bottom, left:right]
        rounds = rounds_for(framed, stitches=self.repeat.stitches, height_per_width=self._height_per_width)
        with QSignalBlocker(self.rounds):
            self.rounds.setValue(rounds)

    def _show_frame(self) -> None:
        frame = self.view.frame
        shown = {
            "left": (0, frame.left(), self._size.width() - 1),
            "top": (0, frame.top(), self._size.height() - 1),
            "width": (1, frame.width(), self._size.width() - frame.left()),
            "height": (1, frame.height(), self._size.height() - frame.top()),
        }
        for name, (low, value, high) in shown.items():
            edge = self.edges[name]
            with QSignalBlocker(edge):
                edge.setRange(low, high)
                edge.setValue(value)

    def _show_state(self) -> None:
        for control in (*self.edges.values(), self.whole):
            control.setEnabled(self._pixels is not None)
        self.rounds.setEnabled(not self.follows.isChecked())
        self.fills.setEnabled(not self.follows.isChecked())

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 8, 8, 8)
        layout.setSpacing(6)
        top = QHBoxLayout()
        top.addWidget(self.open)
        top.addWidget(self.whole)
        top.addStretch(1)
        layout.addLayout(top)
        layout.addWidget(self.name)
        layout.addWidget(self.view, 1)
        frame = QGridLayout()
        frame.setVerticalSpacing(4)
        words = {"left": tr("Left"), "top": tr("Top"), "width": tr("Width"), "height": tr("Height")}
        for number, (name, word) in enumerate(words.items()):
            label = QLabel(word)
            label.setBuddy(self.edges[name])
            frame.addWidget(label, number // 2, number % 2 * 2)
            frame.addWidget(self.edges[name], number // 2, number % 2 * 2 + 1)
        for column in (1, 3):
            frame.setColumnStretch(column, 1)
        layout.addLayout(frame)
        size = QGridLayout()
        size.setVerticalSpacing(4)
        for row, (word, control) in enumerate(((tr("&Stitches"), self.repeat), (tr("&Rounds"), self.rounds))):
            label = QLabel(word)
            label.setBuddy(control)
            size.addWidget(label, row, 0)
            size.addWidget(control, row, 1, 1, 2 if control is self.repeat else 1)
        size.addWidget(self.follows, 1, 2)
        size.addWidget(self.fills, 2, 1, 1, 2)
        size.setColumnStretch(2, 1)
        layout.addLayout(size)


def _edge(name: str) -> QSpinBox:
    spin = QSpinBox()
    spin.setAccessibleName(name)
    spin.setToolTip(name)
    spin.setRange(0, 0)
    return spin
