"""Printing the sheets that are chosen: to a PDF, or by the system's printer."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.filing import kinds
from chartmaker.app.sheet_choices import kept_choices
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from collections.abc import Callable

    from chartmaker.app.background import Work
    from chartmaker.app.filing import Filing
    from chartmaker.model.units import Units


class PrintDesk:
    """What the File menu and the Sheets page print; the choices are those that the settings keep."""

    def __init__(self, filing: Filing, units: Units) -> None:
        self._filing, self._units = filing, units

    def print_pdf(self) -> None:
        """Ask for a file, and print to it as a PDF, beside the window's work."""
        path = self._filing.place_for(tr("Save sheets as PDF"), kinds(tr("PDF"), "*.pdf"), ".pdf")
        if path is not None:
            self._filing.make(tr("Printing {0}").format(path.name), self._sheets(), path)

    def print_paper(self) -> None:
        """Ask for a printer, and print on it."""
        from chartmaker.app.paper_printer import PaperPrinter, printer_for

        filing = self._filing
        if filing.background.is_busy:
            filing.questions.tell(tr("One thing at a time: something is still being made. Stop it, or wait."))
            return
        printer = filing.questions.printer(printer_for(kept_choices(filing.settings), filing.document.design.title))
        if printer is None:
            return

        def put(made: object) -> None:
            if isinstance(made, bytes):
                paper = PaperPrinter(printer, made, filing)
                paper.told.connect(filing.told)
                paper.failed.connect(filing.tell)
                paper.start()

        filing.background.start(tr("Printing"), self._sheets(), put)

    def _sheets(self) -> Work:
        """Give the work that makes the PDF."""
        document = self._filing.document
        document.appraise_now()
        appraisal, choices, units = document.appraisal, kept_choices(self._filing.settings), self._units

        def work(step: Callable[[int, int], None]) -> bytes:
            from chartmaker.printing import cover_picture
            from chartmaker.sheets.print_sheets import print_sheets

            picture = cover_picture(appraisal) if "cover" in choices.sheets else None
            return print_sheets(appraisal, choices.job(units=units, picture=picture), progress=step)

        return work
