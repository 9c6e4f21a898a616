"""Everything that the window asks or tells in a dialog; tests put their own answers in its place.

Dialogs are imported when the first is shown, since Qt's classes cost time that the start can do without.
"""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Literal

from chartmaker.app.keeping_questions import KeepingQuestions
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter
    from PySide6.QtWidgets import QWidget

Answer = Literal["save", "discard", "cancel"]


class Questions(KeepingQuestions):
    """Asks by the system's own dialogs."""

    def over(self, dialog: QWidget) -> Questions:
        """Give what asks over a dialog rather than over the window."""
        return Questions(dialog)

    def what_of_unsaved(self, name: str) -> Answer:
        """Ask what to do with unsaved work."""
        from PySide6.QtWidgets import QMessageBox

        box = QMessageBox(QMessageBox.Icon.Question, tr("Unsaved work"), "", parent=self._parent)
        box.setText(tr("{0} has changes that are not saved.").format(name))
        buttons = QMessageBox.StandardButton
        box.setStandardButtons(buttons.Save | buttons.Discard | buttons.Cancel)
        box.setDefaultButton(buttons.Save)
        pressed = buttons(box.exec())
        if pressed == buttons.Save:
            return "save"
        return "discard" if pressed == buttons.Discard else "cancel"

    def file_to_open(self, title: str, kind: str, folder: Path) -> Path | None:
        """Ask for a file that exists; None where the user thought better of it."""
        from PySide6.QtWidgets import QFileDialog

        name, _ = QFileDialog.getOpenFileName(self._parent, title, str(folder), kind)
        return Path(name) if name else None

    def file_to_save(self, title: str, kind: str, proposed: Path) -> Path | None:
        """Ask for a place to write to; None where the user thought better of it."""
        from PySide6.QtWidgets import QFileDialog

        name, _ = QFileDialog.getSaveFileName(self._parent, title, str(proposed), kind)
        return Path(name) if name else None

    def printer(self, proposed: QPrinter) -> QPrinter | None:
        """Ask by which printer and how, with what is proposed set; None where the user thought better of it."""
        from PySide6.QtPrintSupport import QPrintDialog
        from PySide6.QtWidgets import QDialog

        dialog = QPrintDialog(proposed, self._parent)
        dialog.setOption(QPrintDialog.PrintDialogOption.PrintPageRange)
        return proposed if dialog.exec() == QDialog.DialogCode.Accepted else None

    def name_of_motif(self, proposed: str) -> str | None:
        """Ask what a motif is to be called; None where the user thought better of it."""
        from PySide6.QtWidgets import QInputDialog, QLineEdit

        name, is_given = QInputDialog.getText(
            self._parent, tr("Save as a motif"), tr("Name:"), QLineEdit.EchoMode.Normal, proposed
        )
        return name.strip() if is_given else None

    def is_sure(self, sentence: str, yes: str) -> bool:
        """Ask before something that is easily regretted; `yes` is what the button says that does it."""
        from PySide6.QtCore import Qt
        from PySide6.QtWidgets import QMessageBox

        box = QMessageBox(QMessageBox.Icon.Question, tr("Are you sure?"), "", parent=self._parent)
        box.setTextFormat(Qt.TextFormat.PlainText)
        box.setText(sentence)
        does = box.addButton(yes, QMessageBox.ButtonRole.AcceptRole)
        cancel = box.addButton(QMessageBox.StandardButton.Cancel)
        box.setDefaultButton(cancel)  # Enter, typed on, does nothing
        box.setEscapeButton(cancel)
        box.exec()
        return box.clickedButton() is does

    def tell(self, sentence: str) -> None:
        """Tell what went wrong: the one place where the window shows an error."""
        from PySide6.QtCore import Qt
        from PySide6.QtWidgets import QMessageBox

        box = QMessageBox(QMessageBox.Icon.Warning, tr("Chartmaker"), "", parent=self._parent)
        box.setTextFormat(Qt.TextFormat.PlainText)
        box.setText(sentence)
        box.exec()
