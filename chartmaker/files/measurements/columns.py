"""What the columns of a table hold, by their headings: the name, a spectrum, L a b, X Y Z or L C h.

CGATS.17 and ISO 28178 call them SAMPLE_NAME, SPECTRAL_NM400, LAB_L and so on; instruments and spreadsheets call them
"R 400", "400 nm (%)", "L*(D65/10)" too. A table says nothing of what a heading does not name.
"""

import itertools
import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from chartmaker.files.measurements.viewing_words import ToldViewing, pair_in
from chartmaker.model.settings import ILLUMINANTS

MOST_COLUMNS = 2000
"""No instrument writes as many; a table past it is refused."""
FEWEST_BANDS = 8
"""Fewer columns with a wavelength are no spectrum."""
SHORTEST_NM, LONGEST_NM = 300, 900
"""What a reading may span; columns outside are left aside."""

TEXTILE = ToldViewing("D65", "10")
"""Of several viewing conditions the one that is taken: designs are judged under it as a rule."""

_BAND = re.compile(
    r"(?:SPECTRALNM|SPECTRAL|SPECTRUM|SPEC|SP|NM|REFLECTANCE|REFL|SCI|SCE|R|WAVELENGTH|WL|LAMBDA|Λ)?(\d{3,4}(?:[.,]\d+)?)(?:NM)?"
)
_TRIPLES: Mapping[str, tuple[str, str, str]] = {"lab": ("L", "A", "B"), "xyz": ("X", "Y", "Z"), "lch": ("L", "C", "H")}
_PREFIXES = ("CIELAB", "CIELCH", "CIEXYZ", "CIE", "LAB", "LCH", "XYZ")
_NAMES = (
    *("SAMPLENAME", "NAME", "LOTNAME", "LOT", "LOTID", "SAMPLE", "SAMPLEID", "COLOURNAME", "COLORNAME"),
    *("COLOUR", "COLOR", "SKEIN", "DESCRIPTION", "LABEL", "ID"),
)
"""Headings of names, as letters alone, the best first."""
_ILLUMINANTS = ("ILLUMINANT", "VIEWING", "ILLUMINANTOBSERVER", "LIGHT", "LIGHTSOURCE")
_OBSERVERS = ("OBSERVER", "OBSERVERANGLE")
_NO_MARKS = str.maketrans("", "", ".,")
_COORDINATE_WORDS = {"LIGHTNESS": "L", "CHROMA": "C", "HUE": "H", "HUEANGLE": "H"}


@dataclass(frozen=True, slots=True)
class Band:
    """A column of a spectrum."""

    nm: float
    column: int


@dataclass(frozen=True, slots=True)
class Triple:
    """The three columns of a colour."""

    kind: str
    """"lab", "xyz" or "lch"."""
    columns: tuple[int, int, int]
    told: ToldViewing


@dataclass(frozen=True, slots=True)
class Columns:
    """Where things stand in a row."""

    names: tuple[int, ...]
    """Columns of names, the best first: where one is empty in a row, the next serves."""
    bands: tuple[Band, ...]
    """By wavelength; empty where the table has no spectra."""
    triple: Triple | None
    """Lab before XYZ before LCh; of several viewing conditions those that a reading can be kept for."""
    are_percent: bool
    """Whether the headings of the bands say percent."""
    illuminant: int | None = None
    """A column that tells each row's illuminant, or illuminant and observer."""
    observer: int | None = None
    """A column that tells each row's observer."""

    @property
    def weight(self) -> int:
        """How much of a colour the headings tell: 0 is nothing."""
        return len(self.bands) + (3 if self.triple else 0)

    @property
    def problem(self) -> str:
        """Say where one wavelength stands twice; empty where none does."""
        for one, other in itertools.pairwise(self.bands):
            if one.nm == other.nm:
                return f"there are two columns for {one.nm:g} nm, {one.column + 1} and {other.column + 1}"
        return ""

    @property
    def has_colour(self) -> bool:
        """Whether there is a colour in the table."""
        return bool(self.bands or self.triple)


def columns_of(headings: Sequence[str]) -> Columns:
    """Find what the columns hold."""
    bands = tuple(sorted(_bands(headings), key=lambda band: band.nm))
    are_percent = any("%" in headings[band.column] for band in bands)
    return Columns(
        _name_columns(headings),
        bands,
        _triple(headings),
        are_percent,
        illuminant=_first_of(headings, _ILLUMINANTS),
        observer=_first_of(headings, _OBSERVERS),
    )


def _key(heading: str) -> str:
    """Give a heading's letters and digits alone, as capitals."""
    return "".join(sign for sign in heading.upper() if sign.isalnum() or sign in ".,")


def _bands(headings: Sequence[str]) -> Iterator[Band]:
    found = [(_BAND.fullmatch(_key(heading)[:40].strip(".,")), column) for column, heading in enumerate(headings)]
    bands = [Band(float(match.group(1).replace(",", ".")), column) for match, column in found if match]
    kept = [band for band in bands if SHORTEST_NM <= band.nm <= LONGEST_NM]
    if len(kept) >= FEWEST_BANDS:
        yield from kept


def _name_columns(headings: Sequence[str]) -> tuple[int, ...]:
    keys = [_key(heading).translate(_NO_MARKS) for heading in headings]
    return tuple(keys.index(name) for name in _NAMES if name in keys)


def _first_of(headings: Sequence[str], words: Sequence[str]) -> int | None:
    return next((column for column, heading in enumerate(headings) if _key(heading) in words), None)


def _triple(headings: Sequence[str]) -> Triple | None:
    """Give the triple to read: of conditions that can be kept, the first of the best kind."""
    by_viewing: dict[ToldViewing, dict[str, int]] = {}
    for column, heading in enumerate(headings):
        told, rest = pair_in(heading)
        by_viewing.setdefault(told, {}).setdefault(_coordinate(rest), column)
    found = [
        Triple(kind, (at[names[0]], at[names[1]], at[names[2]]), told)
        for kind, names in _TRIPLES.items()
        for told, at in by_viewing.items()
        if all(name in at for name in names)
    ]
    usable = [triple for triple in found if not triple.told.illuminant or triple.told.illuminant in ILLUMINANTS]
    usual = [triple for triple in usable if triple.told == TEXTILE]
    return next(iter(usual or usable or found), None)


def _coordinate(heading: str) -> str:
    """Give the letter of a coordinate that a heading is for: "LAB_A" and "a*" are A; empty where it is none."""
    key = _key(heading.replace("°", ""))
    if key in _COORDINATE_WORDS:
        return _COORDINATE_WORDS[key]
    for prefix in _PREFIXES:
        if key.startswith(prefix) and len(key) == len(prefix) + 1:
            return key[-1]
    return key if len(key) == 1 and key in "LABXYZCH" else ""
