"""A colour as a person types it: "38.2 41 27.5", "L 38,2 a 41 b 27,5", "LCh 50 30 270", "#8a3b2f"."""

import re

from chartmaker.files.measurements.numerals import number_in
from chartmaker.files.measurements.spectra import lab_of_lch
from chartmaker.files.measurements.viewing_words import pair_in
from chartmaker.files.problems import UserProblem
from chartmaker.model.reading import LabReading, Reading, ScreenReading, XyzReading
from chartmaker.model.settings import Viewing

LONGEST_LINE = 200
EXAMPLES = "write it like 38.2 41 27.5, LCh 50 30 270 or #8a3b2f"

_NUMBER = r"[+\-\N{MINUS SIGN}]?\d+(?:[.,]\d+)?"
_SPACE = r"[\s;:=*°/]*"


def typed_reading(text: str, viewing: Viewing | None = None) -> Reading:
    """Read a typed colour; numbers alone are L*, a*, b* under `viewing`, CIE D65 and 10° where that is not given.

    "(D65/10)" at the end tells another viewing. Raises UserProblem where it cannot be understood.
    """
    line = " ".join(text.split())
    if not line or len(line) > LONGEST_LINE:
        raise UserProblem("there is no colour in it" if not line else "this is too long for a colour", now=EXAMPLES)
    try:
        if line.startswith("#") or (re.fullmatch(r"[0-9a-fA-F]{6}", line) and not line.isdecimal()):
            return ScreenReading(hex=_whole_hex(line))
        told, rest = pair_in(line)
        seen = told.completed(viewing or Viewing())
        return _coordinates(rest, seen)
    except ValueError as problem:
        raise UserProblem(str(problem), now=EXAMPLES) from None


def _whole_hex(line: str) -> str:
    """Give "#rrggbb"; three digits stand for six."""
    digits = line.removeprefix("#").strip()
    if re.fullmatch(r"[0-9a-fA-F]{3}", digits):
        digits = "".join(2 * digit for digit in digits)
    return f"#{digits.lower()}"


def _coordinates(line: str, viewing: Viewing) -> Reading:
    for kind, letters in (("lab", "Lab"), ("lch", "LCh"), ("xyz", "XYZ")):
        values = _named(line, letters)
        if values:
            return _reading(kind, values, viewing)
    raise ValueError("this is no colour")


def _named(line: str, letters: str) -> tuple[float, float, float] | None:
    """Find three numbers after a word, or each after its letter; of Lab the letters may be left out."""
    one, two, three = (rf"{letter}{_SPACE}({_NUMBER})[\s;]*" for letter in letters)
    gap = r"(?:\s*;\s*|\s*,\s+|\s+)"
    bare = rf"({_NUMBER}){gap}({_NUMBER}){gap}({_NUMBER})°?"
    word = r"\s*".join(rf"{letter}\*?" for letter in letters)
    named = rf"(?:CIE\s*)?{word}{_SPACE}" if letters != "Lab" else rf"(?:(?:CIE\s*)?{word}{_SPACE})?"
    tight = r"([+-]?\d+(?:\.\d+)?),([+-]?\d+(?:\.\d+)?),([+-]?\d+(?:\.\d+)?)"
    for pattern in (named + bare, named + tight, one + ",?\\s*" + two + ",?\\s*" + three + "°?"):
        found = re.fullmatch(pattern + r"[\s;.]*", line.strip(), re.IGNORECASE)
        if found:
            return number_in(found.group(1)), number_in(found.group(2)), number_in(found.group(3))
    return None


def _reading(kind: str, values: tuple[float, float, float], viewing: Viewing) -> Reading:
    if kind == "xyz":
        return XyzReading(xyz=values, viewing=viewing)
    return LabReading(lab=values if kind == "lab" else lab_of_lch(*values), viewing=viewing)
