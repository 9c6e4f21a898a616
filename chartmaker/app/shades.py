"""Screen colours of letters and lots: as dyed, as grey of the same value, as neighbours faded, or not known.

The sums behind them are imported when they are first used: the surround is painted before numpy is loaded.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtGui import QColor

if TYPE_CHECKING:
    from chartmaker.appraisal import Appraisal
    from chartmaker.shade.lot_shade import LotShade

SURROUND = QColor(119, 119, 119)
"""Neutral grey of L* 50 around everything that is judged by eye, in the sense of ISO 3664."""
UNKNOWN = QColor(228, 228, 228)
"""Stands for a shade that is not known; its letter is written on it."""
PAPER = QColor(250, 250, 250)
INK = QColor(16, 16, 16)
GHOST_SHARE = 0.42
"""How much of a ghosted neighbour's colour is left, the rest being the surround."""


def grey_of(value: float) -> QColor:
    """Give the neutral grey whose CIE L* is `value`."""
    from chartmaker.shade import screen

    level = int(screen.grey_of(value))
    return QColor(level, level, level)


def colour_of(shade: LotShade | None) -> QColor:
    """Give a lot's screen colour, or `UNKNOWN`."""
    return UNKNOWN if shade is None else QColor(*shade.srgb)


def known_shade(appraisal: Appraisal, letter: str) -> LotShade | None:
    """Give a letter's shade, be the letter in use already or only given a lot; None where it is not known."""
    entry = next((entry for entry in appraisal.letters if entry.letter == letter), None)
    if entry is not None:
        return entry.shade
    from chartmaker.shade.lots import shade_of

    lot_id = appraisal.design.colourway.lot_of(letter)
    lot = appraisal.design.palette.lot(lot_id) if lot_id else None
    return shade_of(lot, appraisal.design.viewing) if lot else None


def letter_colour(appraisal: Appraisal, letter: str, *, view: str = "shade") -> QColor:
    """Give the colour that a letter is drawn in under a view: "shade", "value" or "symbols"."""
    if view == "symbols":
        return PAPER
    shade = known_shade(appraisal, letter)
    if view == "value" and shade is not None:
        return grey_of(shade.value)
    return colour_of(shade)


def ghosted(colour: QColor) -> QColor:
    """Give a colour as a neighbour of the live repeat has it."""
    pairs = ((colour.red(), SURROUND.red()), (colour.green(), SURROUND.green()), (colour.blue(), SURROUND.blue()))
    red, green, blue = (round(GHOST_SHARE * part + (1 - GHOST_SHARE) * around) for part, around in pairs)
    return QColor(red, green, blue)


def ink_on(colour: QColor) -> QColor:
    """Give black or white, whichever stands out more from a colour by the WCAG ratio."""
    luminance = 0.2126 * _linear(colour.redF()) + 0.7152 * _linear(colour.greenF()) + 0.0722 * _linear(colour.blueF())
    return QColor(255, 255, 255) if 1.05 / (luminance + 0.05) > (luminance + 0.05) / 0.05 else QColor(0, 0, 0)


def _linear(level: float) -> float:
    return level / 12.92 if level <= 0.04045 else ((level + 0.055) / 1.055) ** 2.4
