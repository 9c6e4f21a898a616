"""A finding: something that a check noticed, told alike in the window, on paper and in the terminal."""

from dataclasses import dataclass

SEVERITIES = ("stop", "warn", "note")
"""How bad, worst first: it cannot be knitted so, it will disappoint, it is good to know."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """Where a finding leads: as words, and as what the window needs to go there."""

    text: str
    """As told to a person: "round 12", "A with C", "lot madder-1"."""
    round: int | None = None
    """Index of the round in the whole hat, 0 the first knitted."""
    stitch: int | None = None
    """Index of the stitch in the round's repeat."""
    letters: str = ""
    """The letters that it is about."""
    page: str = "chart"
    """The window's page that shows it: lots, hat, chart, yarn or baths."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Finding:
    """What, where, how bad, and what would mend it."""

    check: str
    """The check's name, as in the report."""
    severity: str
    """One of `SEVERITIES`."""
    place: Place
    message: str
    remedy: str = ""
    remedy_lot: tuple[str, str] | None = None
    """Where changing one lot would mend it: the letter, and the id of the lot to give it."""
