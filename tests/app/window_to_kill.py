"""A window that is edited by real keys and then waits to be killed; it is given a design and a folder for its state."""

import sys
from pathlib import Path

from PySide6.QtCore import QSettings, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from chartmaker.app.main import open_window


def main(design: Path, state: Path) -> None:
    application = QApplication([])
    settings = QSettings(str(state.with_name("other.ini")), QSettings.Format.IniFormat)
    window = open_window(settings, design, state)

    def edit() -> None:
        window.chart.canvas.setFocus()
        QTest.keyClick(window.chart.canvas, Qt.Key.Key_Space)
        QTest.keyClick(window.chart.canvas, Qt.Key.Key_Left)
        QTest.keyClick(window.chart.canvas, Qt.Key.Key_Space)
        print(window.document.stack.count(), flush=True)

    window.chart_came.connect(edit, Qt.ConnectionType.QueuedConnection)
    application.exec()


if __name__ == "__main__":
    main(Path(sys.argv[1]), Path(sys.argv[2]))
