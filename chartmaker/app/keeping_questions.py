"""What the window asks so that no work is lost: about work left over, changed files and earlier copies."""

from __future__ import annotations

from typing import TYPE_CHECKING, Literal

from chartmaker.app.words import tr

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtWidgets import QWidget

    from chartmaker.files.backups import SavedCopy
    from chartmaker.files.recovery import LeftWork

ChangeAnswer = Literal["mine", "theirs", "elsewhere", "later"]
LeftAnswer = Literal["restore", "discard", "later"]


class KeepingQuestions:
    """Asks by dialogs that are imported when the first is shown."""

    def __init__(self, parent: QWidget) -> None:
        self._parent = parent

    def what_of_changed(self, name: str, *, is_gone: bool) -> ChangeAnswer:
        """Ask whose version shall stand, where something else has changed or removed the design's file."""
        from PySide6.QtCore import Qt
        from PySide6.QtWidgets import QMessageBox

        box = QMessageBox(QMessageBox.Icon.Question, tr("The file has changed"), "", parent=self._parent)
        box.setTextFormat(Qt.TextFormat.PlainText)
        gone = tr("{0} is not there any more: something else has moved or removed it.")
        changed = tr("Something else has changed {0} since it was opened or saved here.")
        box.setText((gone if is_gone else changed).format(name))
        role = QMessageBox.ButtonRole
        answers: list[tuple[ChangeAnswer, str, QMessageBox.ButtonRole]] = [
            ("mine", tr("Keep mine"), role.AcceptRole),
            ("theirs", tr("Take the file's"), role.DestructiveRole),
            ("elsewhere", tr("Save mine as…"), role.AcceptRole),
        ]
        if is_gone:
            del answers[1]
        made = {box.addButton(text, kind): answer for answer, text, kind in answers}
        later = box.addButton(tr("Later"), role.RejectRole)
        box.setEscapeButton(later)
        box.setDefaultButton(later)  # Enter, typed on, overwrites nothing
        box.exec()
        pressed = box.clickedButton()
        return next((answer for button, answer in made.items() if button is pressed), "later")

    def what_of_left(self, works: Sequence[LeftWork]) -> tuple[LeftAnswer, LeftWork]:
        """Ask what to do with which of the unsaved works that were left, newest first; there is at least one."""
        from chartmaker.app.choice_dialog import ChoiceDialog, local_time

        dialog = ChoiceDialog(
            tr("Unsaved work"),
            tr("The program ended before this work was saved. Restored, it is an unsaved change of its file."),
            columns={
                tr("title"): [work.title for work in works],
                tr("file"): [_file_words(work) for work in works],
                tr("kept"): [local_time(work.kept_at) for work in works],
            },
            buttons={"restore": tr("&Restore"), "discard": tr("&Discard"), "later": tr("&Later")},
            parent=self._parent,
        )
        dialog.exec()
        answers: dict[str, LeftAnswer] = {"restore": "restore", "discard": "discard"}
        return answers.get(dialog.answer, "later"), works[dialog.row]

    def which_copy(self, name: str, copies: Sequence[SavedCopy]) -> SavedCopy | None:
        """Ask for one of the copies of a design's saves; None where the user thought better of it."""
        from chartmaker.app.choice_dialog import ChoiceDialog, local_time

        dialog = ChoiceDialog(
            tr("Earlier copies"),
            tr("A copy of {0} opens as an unsaved change; the file stays as it is until you save.").format(name),
            columns={
                tr("saved"): [local_time(copy.saved_at) for copy in copies],
                tr("copy"): [copy.file.name for copy in copies],
            },
            buttons={"open": tr("&Open"), "cancel": tr("&Cancel")},
            parent=self._parent,
        )
        dialog.exec()
        return copies[dialog.row] if dialog.answer == "open" else None


def _file_words(work: LeftWork) -> str:
    if work.path is None:
        return tr("never saved")
    return tr("{0} (changed since)").format(work.path) if work.has_file_changed else str(work.path)
