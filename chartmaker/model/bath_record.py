"""What a bath really did, written down after the dyeing, beside the recipe that was planned."""

import datetime as dt
from dataclasses import dataclass

from chartmaker.model.bounds import require_short, require_within

MOST_LOADS = 12
"""As many loads as a bath may serve."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LoadRecord:
    """One load of fibre as it went in, and what came out."""

    load: int
    """1 is the first load, 2 the first exhaust."""
    fibre_g: float
    """Dry fibre weighed in."""
    dry_g: float | None = None
    """Yarn that came out, rinsed and dry; None while it is not weighed."""
    lot: str = ""
    """Id of the lot that it became; empty where none was made."""
    dyed_on: dt.date | None = None
    notes: str = ""

    def __post_init__(self) -> None:
        require_within("load", self.load, 1, MOST_LOADS)
        require_within("fibre_g", self.fibre_g, 0, 100_000)
        if self.dry_g is not None:
            require_within("dry_g", self.dry_g, 0, 100_000)
        require_short("notes", self.notes)


@dataclass(frozen=True, slots=True, kw_only=True)
class BathRecord:
    """What happened; a field that is None was not noted, and the recipe stands for it."""

    dyed_on: dt.date | None = None
    """The day of the first load."""
    loads: tuple[LoadRecord, ...] = ()
    dyestuff_g: float | None = None
    """Weighed in, once for all loads."""
    water_l: float | None = None
    ph_start: float | None = None
    ph_end: float | None = None
    hottest_c: float | None = None
    minutes: float | None = None
    """How long each load stayed in."""
    notes: str = ""

    def __post_init__(self) -> None:
        require_short("notes", self.notes)
        for name, value, highest in (
            ("dyestuff_g", self.dyestuff_g, 1_000_000),
            ("water_l", self.water_l, 10_000),
            ("ph_start", self.ph_start, 14),
            ("ph_end", self.ph_end, 14),
            ("hottest_c", self.hottest_c, 105),
            ("minutes", self.minutes, 100_000),
        ):
            if value is not None:
                require_within(name, value, 0, highest)
        numbers = [one.load for one in self.loads]
        for number in numbers:
            if numbers.count(number) > 1:
                raise ValueError(f"load {number} is recorded twice")

    def of_load(self, load: int) -> LoadRecord | None:
        """Give what is recorded of one load, or None."""
        return next((one for one in self.loads if one.load == load), None)
