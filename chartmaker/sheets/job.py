"""What is to be printed, and on what: everything that a print is made of beside the appraisal."""

import datetime as dt
from collections.abc import Sequence
from dataclasses import dataclass

from chartmaker.model.units import METRIC, Units
from chartmaker.sheets.boxes import Pixels
from chartmaker.sheets.paper import Paper, paper_named

SHEET_TITLES = {
    "cover": "Cover",
    "key": "Key",
    "chart": "Chart",
    "chart-bw": "Chart, black and white",
    "chart-large": "Chart, large print",
    "rounds": "Rounds",
    "yarn": "Yarn",
    "contrast": "Contrast",
    "baths": "Baths",
    "shopping": "Shopping list",
}
"""The sheets by the word of the command line, in their usual order, with what is printed on them."""
SHEETS = tuple(SHEET_TITLES)
USUAL_SHEETS = ("cover", "key", "chart", "rounds", "yarn", "contrast", "baths", "shopping")
"""Printed where nothing else is asked for."""
HEAVY_LINES = (5, 10, 0)
"""Heavier lines every five and ten, every ten, or none."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintJob:
    """The choices of one print; raises ValueError, told with what there is, for a paper or sheet that is not known."""

    paper: str = "a4"
    is_landscape: bool = False
    sheets: Sequence[str] = USUAL_SHEETS
    """Printed in this order, each once."""
    heavy_lines: int = 5
    printed_on: dt.date | None = None
    """Printed on every page; this package keeps no clock."""
    units: Units = METRIC
    """That lengths and yarn are told in; baths are weighed in grams and litres, their fibre with ounces beside it."""
    picture: Pixels | None = None
    """The worn hat, for the cover."""

    def __post_init__(self) -> None:
        paper_named(self.paper)
        object.__setattr__(self, "sheets", sheets_named(self.sheets))
        if self.heavy_lines not in HEAVY_LINES:
            raise ValueError(f"heavier lines come every 5 or 10, or not at all (0); not every {self.heavy_lines}")

    @property
    def sheet(self) -> Paper:
        """The paper as it lies."""
        return paper_named(self.paper, is_turned=self.is_landscape)


def sheets_named(names: Sequence[str]) -> tuple[str, ...]:
    """Give the sheets asked for, each once, in the order asked for; raises ValueError for one that is not known."""
    if isinstance(names, str):
        raise ValueError(f"sheets are given one by one, not as the text {names!r}")  # noqa: TRY004 - told to the user
    for name in names:
        if name not in SHEET_TITLES:
            raise ValueError(f"there is no sheet {name!r}; the sheets are {', '.join(SHEETS)}")
    if not names:
        raise ValueError(f"no sheet is named; the sheets are {', '.join(SHEETS)}")
    return tuple(dict.fromkeys(names))
