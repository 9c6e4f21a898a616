"""Stands in for the window's dialogs: answers what it was told to, and remembers what it was told."""

from pathlib import Path

from PySide6.QtPrintSupport import QPrinter

from chartmaker.app.questions import Answer


class Answers:
    """What the tests' user would say."""

    def __init__(self) -> None:
        self.unsaved: Answer = "cancel"
        self.path: Path | None = None
        self.print_to: Path | None = None
        self.sure = False
        self.motif_name: str | None = None
        self.asked: list[str] = []
        self.told: list[str] = []

    def over(self, _dialog: object) -> "Answers":
        return self

    def what_of_unsaved(self, name: str) -> Answer:
        self.asked.append(name)
        return self.unsaved

    def file_to_open(self, _title: str, _kind: str, _folder: Path) -> Path | None:
        return self.path

    def file_to_save(self, _title: str, _kind: str, proposed: Path) -> Path | None:
        self.asked.append(proposed.name)
        return self.path

    def printer(self, proposed: QPrinter) -> QPrinter | None:
        if self.print_to is None:
            return None
        proposed.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
        proposed.setOutputFileName(str(self.print_to))
        return proposed

    def name_of_motif(self, proposed: str) -> str | None:
        self.asked.append(proposed)
        return self.motif_name

    def is_sure(self, sentence: str, _yes: str) -> bool:
        self.asked.append(sentence)
        return self.sure

    def tell(self, sentence: str) -> None:
        self.told.append(sentence)
