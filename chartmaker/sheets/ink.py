"""The few inks of the sheets, and what is drawn on a shade so that it reads; colours are red, green, blue, 0 to 1."""

from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.screen import grey_of

Ink = tuple[float, float, float]

BLACK: Ink = (0.0, 0.0, 0.0)
WHITE: Ink = (1.0, 1.0, 1.0)
QUIET: Ink = (0.38, 0.38, 0.38)
"""For what accompanies: still 5.7:1 on white, so that it survives a photocopier."""
HAIRLINE: Ink = (0.62, 0.62, 0.62)
"""Thin lines that show on pale and on dark shades alike."""
WASH: Ink = (0.945, 0.945, 0.935)
"""A ground for what is set apart."""
PALE_MARK: Ink = (0.5, 0.5, 0.5)
"""For marks on paled cells."""
ACCENT: Ink = (0.10, 0.34, 0.40)
"""The one accent; copied to grey it is nearly black."""

PAPER_VALUE_SPLIT = 50.0
"""From this value on a shade is marked in black, below in white: L* 50 differs from both alike."""


def ink_on(shade: LotShade | None) -> Ink:
    """Give black or white, whichever stands out more on a shade; black where there is none."""
    return WHITE if shade is not None and shade.value < PAPER_VALUE_SPLIT else BLACK


def fill_of(shade: LotShade | None) -> Ink:
    """Give the colour in which a shade is printed; white where there is none."""
    if shade is None:
        return WHITE
    red, green, blue = shade.srgb
    return red / 255, green / 255, blue / 255


def paled(ink: Ink) -> Ink:
    """Give a colour half-way and more to white."""
    red, green, blue = (0.35 * part + 0.65 for part in ink)
    return red, green, blue


def in_grey(ink: Ink) -> Ink:
    """Give the grey that a photocopier makes of a colour: the luma of ITU-R BT.601."""
    red, green, blue = ink
    grey = 0.299 * red + 0.587 * green + 0.114 * blue
    return grey, grey, grey


def grey_fill(value: float) -> Ink:
    """Give the grey of a value, CIE L* 0 to 100."""
    grey = float(grey_of(value)) / 255
    return grey, grey, grey
