"""Opens a copy of one of the last saves in place of the design at hand."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.words import tr

if TYPE_CHECKING:
    from chartmaker.app.filing import Filing


def open_earlier_copy(filing: Filing) -> None:
    """Ask for a copy, and show it as unsaved changes of the design's file, which stays as it is until it is saved.

    Raises FileRefused where the copy cannot be read.
    """
    from chartmaker.files.design_reading import read_design

    path = filing.document.path
    copies = filing.own_file.copies(path) if path is not None else ()
    if not copies:
        filing.questions.tell(tr("There are no copies yet: one is kept with each save, and the last six stay."))
        return
    copy = filing.questions.which_copy(filing.name, copies)
    if copy is not None and filing.may_leave():
        filing.show_unsaved(read_design(copy.file), path)
