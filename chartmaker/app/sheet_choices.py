"""What the user chose to be printed, on which paper; the settings remember it from design to design."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from PySide6.QtCore import QSettings

    from chartmaker.model.units import Units
    from chartmaker.sheets.boxes import Pixels
    from chartmaker.sheets.job import PrintJob

KEY = "sheets"
PAPERS = ("a4", "letter", "a5")
SHEETS = ("cover", "key", "chart", "chart-bw", "chart-large", "rounds", "yarn", "contrast", "baths", "shopping")
"""In the order in which they are printed."""
USUAL_SHEETS = ("cover", "key", "chart", "rounds", "yarn", "contrast", "baths", "shopping")
HEAVY_LINES = (5, 10, 0)


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetChoices:
    """The choices of the Sheets page."""

    paper: str = "a4"
    is_landscape: bool = False
    sheets: tuple[str, ...] = USUAL_SHEETS
    """May be none, while the user turns them on and off."""
    heavy_lines: int = 5

    def job(self, *, units: Units, picture: Pixels | None) -> PrintJob:
        """Give the job that prints these choices today; raises ValueError where no sheet is chosen."""
        import datetime as dt

        from chartmaker.sheets.job import PrintJob

        return PrintJob(
            paper=self.paper,
            is_landscape=self.is_landscape,
            sheets=self.sheets,
            heavy_lines=self.heavy_lines,
            printed_on=dt.datetime.now(tz=dt.UTC).astimezone().date(),
            units=units,
            picture=picture,
        )


def kept_choices(settings: QSettings) -> SheetChoices:
    """Read the choices; what was damaged, or of another version, is as usual."""
    paper = str(settings.value(f"{KEY}/paper", "a4"))
    names = str(settings.value(f"{KEY}/names", ",".join(USUAL_SHEETS))).split(",")
    lines = str(settings.value(f"{KEY}/lines", "5"))
    return SheetChoices(
        paper=paper if paper in PAPERS else "a4",
        is_landscape=str(settings.value(f"{KEY}/landscape", "false")) == "true",
        sheets=tuple(name for name in SHEETS if name in names) or USUAL_SHEETS,
        heavy_lines=int(lines) if lines in map(str, HEAVY_LINES) else 5,
    )


def keep_choices(settings: QSettings, choices: SheetChoices) -> None:
    """Write the choices."""
    settings.setValue(f"{KEY}/paper", choices.paper)
    settings.setValue(f"{KEY}/landscape", "true" if choices.is_landscape else "false")
    settings.setValue(f"{KEY}/names", ",".join(choices.sheets))
    settings.setValue(f"{KEY}/lines", str(choices.heavy_lines))
