"""Numbers as instruments and people write them: with a decimal point or comma, a percent sign, a true minus."""

import re

_NUMERAL = re.compile(r"[+-]?(?:\d{1,300}(?:[.,]\d{0,300})?|[.,]\d{1,300})(?:[eE][+-]?\d{1,3})?")


def number_in(text: str) -> float:
    """Read a number.

    Raises ValueError, with a sentence that lacks its subject, where there is none or it is past all measure.
    """
    kept = text.strip().replace("\N{MINUS SIGN}", "-").removesuffix("%").rstrip()
    if not kept:
        raise ValueError("is empty where a number is needed")
    if not _NUMERAL.fullmatch(kept):
        raise ValueError(f"is {kept!r}, which is no number")
    value = float(kept.replace(",", "."))
    if abs(value) > 1e9:
        raise ValueError(f"is {kept!r}, past all measure")
    return value


def is_number(text: str) -> bool:
    """Tell whether a text is a number."""
    try:
        number_in(text)
    except ValueError:
        return False
    return True
