"""Screen colours of letters and lots: as dyed, in the other tints of the views, as neighbours faded, or not known.

The sums behind them are imported when they are first used: the surround is painted before numpy is loaded.
"""

from __future__ import annotations

from dataclasses import replace
from functools import lru_cache
from typing import TYPE_CHECKING

from PySide6.QtGui import QColor

from chartmaker.app.views import KINDS_OF_EYES, view_named

if TYPE_CHECKING:
    from chartmaker.appraisal import Appraisal
    from chartmaker.model.palette import Lot, Palette
    from chartmaker.model.settings import Viewing
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
    return _shade(known_lot(appraisal, letter), appraisal.design.viewing, appraisal.palette)


def known_lot(appraisal: Appraisal, letter: str) -> Lot | None:
    """Give the lot that a letter is, be the letter in use already or not; None where it is none yet."""
    entry = next((entry for entry in appraisal.letters if entry.letter == letter), None)
    if entry is not None:
        return entry.lot
    lot_id = appraisal.design.colourway.lot_of(letter)
    return appraisal.design.palette.lot(lot_id) if lot_id else None


def letter_colour(appraisal: Appraisal, letter: str, *, view: str = "shade", severity: float = 1.0) -> QColor:
    """Give the colour that a letter is drawn in under a view, by its id; `severity` is of another colour vision."""
    if view_named(view).tint == "paper":
        return PAPER
    lot, viewing = known_lot(appraisal, letter), appraisal.design.viewing
    return lot_colour(lot, viewing, appraisal.palette, view=view, severity=severity)


def lot_colour(
    lot: Lot | None, viewing: Viewing, palette: Palette, *, view: str = "shade", severity: float = 1.0
) -> QColor:
    """Give the colour of a lot under a view: grey, under a lamp, to other eyes, or as dyed; `UNKNOWN` without one.

    A planned lot has the shade that the palette foretells.
    """
    tint = view_named(view).tint
    shade = _shade(lot, replace(viewing, illuminant="A") if tint == "lamp" else viewing, palette)
    if shade is None:
        return UNKNOWN
    if tint == "value":
        return grey_of(shade.value)
    return QColor(*(_seen_by(shade.srgb, tint, severity) if tint in KINDS_OF_EYES else shade.srgb))


def is_only_adapted(lot: Lot, viewing: Viewing) -> bool:
    """Tell whether a lot's shade by lamplight is adapted from another light, since it has no spectrum to tell it."""
    from chartmaker.shade.lots import shade_of

    shade = shade_of(lot, replace(viewing, illuminant="A"))
    return shade is not None and shade.is_adapted


def _shade(lot: Lot | None, viewing: Viewing, palette: Palette) -> LotShade | None:
    from chartmaker.dye.predicted import shade_in

    return shade_in(palette, lot, viewing) if lot else None


@lru_cache(maxsize=256)
def _seen_by(rgb: tuple[int, int, int], kind: str, severity: float) -> tuple[int, ...]:
    from chartmaker.shade.vision import seen_by

    return tuple(seen_by(rgb, kind, severity=severity).tolist())


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
