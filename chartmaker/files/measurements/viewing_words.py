"""Illuminant and observer out of the words of a file: "D65/10°", "2_Degree", "ILLUMINANT, D50", "CIE 1964"."""

import re
from dataclasses import dataclass

from chartmaker.model.settings import ILLUMINANTS, Viewing

_LONG_NAMES = r"LED[- ]?(?:B[1-5]|BH1|RGB1|V[12])|D\d{2}|FL?\d{1,2}(?:\.\d)?"
_LAMPS = rf"{_LONG_NAMES}|[ABCE]"
_ILLUMINANT = re.compile(rf"(?<![A-Z0-9])({_LAMPS})(?![A-Z0-9])")
_OBSERVER = re.compile(r"(?<![0-9.A-Z])(?<![0-9],)(10|2)(?:°|\s*[_-]?\s*DEG|\s*$|\s*[)\]/])|(CIE\W*)?(1931|1964)")
_BOTH = re.compile(
    rf"[(\[]?(?<![A-Z0-9])(?:CIE\s*)?(?:({_LONG_NAMES})\s*[/|,_ -]|([ABCE])\s*[/|])\s*(10|2)(?![0-9.,])\s*"
    r"(?:°|[_ ]?DEG(?:REES?)?)?[)\]]?"
)
"""A lamp of one letter needs a bar before the observer: "a 2" and "b 10" are coordinates."""
_TURNED = re.compile(
    rf"[(\[]?(?<![A-Z0-9.,])(10|2)\s*(?:°|[_ ]?DEG(?:REES?)?)?\s*[/|]\s*(?:CIE\s*)?({_LAMPS})(?![A-Z0-9])[)\]]?"
)
"""The same with the observer first, as in "10°/D65"."""
_LONGEST_LAMP = 30
_OF_YEAR = {"1931": "2", "1964": "10"}


@dataclass(frozen=True, slots=True)
class ToldViewing:
    """What a file says of its viewing conditions; empty is not told."""

    illuminant: str = ""
    """By the name of CIE 15 where it is one of `ILLUMINANTS`; else as the file has it."""
    observer: str = ""

    @property
    def is_whole(self) -> bool:
        """Whether both are told."""
        return bool(self.illuminant and self.observer)

    def with_more(self, other: "ToldViewing") -> "ToldViewing":
        """Give these, and from another what is not told here."""
        return ToldViewing(self.illuminant or other.illuminant, self.observer or other.observer)

    def completed(self, assumed: Viewing) -> Viewing:
        """Give the viewing conditions, from `assumed` what is not told.

        Raises ValueError where they are none that a reading can be kept under.
        """
        illuminant = self.illuminant or assumed.illuminant
        if illuminant not in ILLUMINANTS:
            raise ValueError(f"the illuminant is {illuminant!r}; a reading can be kept for {', '.join(ILLUMINANTS)}")
        return Viewing(illuminant=illuminant, observer=self.observer or assumed.observer)


def pair_in(text: str) -> tuple[ToldViewing, str]:
    """Find a pair like "(D65/10°)" or "10°/D65" in a text; give it and the text without it."""
    shown = text.upper()
    found, turned = _BOTH.search(shown), _TURNED.search(shown)
    if len(shown) != len(text):
        return ToldViewing(), text
    if found:
        told = ToldViewing(_cie_name(found.group(1) or found.group(2)), found.group(3))
    elif turned:
        found, told = turned, ToldViewing(_cie_name(turned.group(2)), turned.group(1))
    else:
        return ToldViewing(), text
    return told, text[: found.start()] + text[found.end() :]


def illuminant_in(text: str) -> str:
    """Find the illuminant that a value names, the whole of which is about it; empty where it names none."""
    found = _ILLUMINANT.search(_plain(text))
    return _cie_name(found.group(1)) if found else ""


def illuminant_or_words(value: str) -> str:
    """Give the illuminant that a value names, or its own words: a lamp that is not known is not to be passed over."""
    return illuminant_in(value) or value.strip().strip("\"'")[:_LONGEST_LAMP]


def observer_in(text: str) -> str:
    """Find the observer, "2" or "10", that a value names; empty where it names none."""
    found = _OBSERVER.search(_plain(text))
    if not found:
        return ""
    return found.group(1) or _OF_YEAR[found.group(3)]


def viewing_in(text: str) -> ToldViewing:
    """Find what a free text says of both: "Illumination=D50 ObserverAngle=2°", "D65/10", "CIE D50, 1931 observer"."""
    told, rest = pair_in(text)
    shown = _plain(rest)
    illuminant = re.search(rf"ILLUM\w*\W*(?:CIE\W*)?({_LAMPS})(?![A-Z0-9])", shown)
    observer = re.search(r"OBSERVER\w*\W*(10|2)(?![0-9.,])|(10|2)[ _-]*(?:°|DEG)|CIE\W*(1931|1964)", shown)
    years = observer and observer.group(3)
    named = ToldViewing(
        _cie_name(illuminant.group(1)) if illuminant else "",
        (_OF_YEAR[years] if years else observer.group(1) or observer.group(2)) if observer else "",
    )
    return told.with_more(named)


def _plain(text: str) -> str:
    return text.upper().strip().strip("\"'")


def _cie_name(word: str) -> str:
    """Give the name of CIE 15 for a word: F11 and FL11 are one lamp, LED B3 has a hyphen."""
    lamp = re.fullmatch(r"FL?(\d+)", word)
    if lamp:
        return f"FL{lamp.group(1)}"
    return re.sub(r"^LED[- ]?", "LED-", word)
