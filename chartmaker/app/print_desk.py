"""Printing the sheets that are chosen: to a PDF, or by the system's printer."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.filing import kinds
from chartmaker.app.sheet_choices import kept_choices
from chartmaker.app.words import tr

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from chartmaker.app.background import Work
    from chartmaker.app.filing import Filing
    from chartmaker.appraisal import Appraisal
    from chartmaker.model.units import Units
    from chartmaker.sheets.job import PrintJob


PICTURES = (".svg", ".png")
"""Endings of files that hold one page."""
PICTURE_DPI = 200


class PrintDesk:
    """What the File menu and the Sheets page print; the choices are those that the settings keep."""

    def __init__(self, filing: Filing, units: Units) -> None:
        self._filing, self._units = filing, units

    def print_pdf(self) -> None:
        """Ask for a file, and print to it, beside the window's work: a PDF, or by its ending pictures of the pages."""
        patterns = (
            f"{tr('PDF')} (*.pdf);;{tr('SVG, a file a page')} (*.svg);;{kinds(tr('PNG, a file a page'), '*.png')}"
        )
        path = self._filing.place_for(tr("Save sheets"), patterns, ".pdf", others=PICTURES)
        if path is not None:
            work = self._pictures(path) if path.suffix.lower() in PICTURES else self._sheets()
            self._filing.make(tr("Printing {0}").format(path.name), work, path)

    def save_yarn_table(self) -> None:
        """Ask for a file, and write the yarn table to it for spreadsheets."""
        path = self._filing.place_for(tr("Save the yarn table"), kinds(tr("CSV"), "*.csv"), ".csv")
        if path is None:
            return
        appraisal = self._appraisal()

        def work(_step: Callable[[int, int], None]) -> bytes:
            from chartmaker.report.yarn_as_csv import yarn_as_csv

            return yarn_as_csv(appraisal).encode()

        self._filing.make(tr("Writing {0}").format(path.name), work, path)

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
        appraisal, job = self._appraisal(), self._job()

        def work(step: Callable[[int, int], None]) -> bytes:
            from chartmaker.sheets.print_sheets import print_sheets

            return print_sheets(appraisal, job(appraisal), progress=step)

        return work

    def _pictures(self, path: Path) -> Work:
        """Give the work that makes a picture of every page."""
        appraisal, job = self._appraisal(), self._job()

        def work(step: Callable[[int, int], None]) -> list[tuple[Path, bytes]]:
            from chartmaker.sheets.page_files import page_files

            made = []
            for number, file in enumerate(page_files(appraisal, job(appraisal), path, dpi=PICTURE_DPI), start=1):
                made.append(file)
                step(number, 0)
            return made

        return work

    def _appraisal(self) -> Appraisal:
        document = self._filing.document
        document.appraise_now()
        return document.appraisal

    def _job(self) -> Callable[[Appraisal], PrintJob]:
        """Give what makes the job by the choices that are kept; it draws the hat, so it is called beside the window."""
        choices, units = kept_choices(self._filing.settings), self._units

        def job(appraisal: Appraisal) -> PrintJob:
            from chartmaker.printing import cover_picture

            picture = cover_picture(appraisal) if "cover" in choices.sheets else None
            return choices.job(units=units, picture=picture)

        return job
