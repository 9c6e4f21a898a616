"""The undyed base of a lot: the spectrum from which what its dye adds is reckoned."""

from chartmaker.model.palette import Lot, Palette
from chartmaker.model.reading import Spectrum


def undyed_of(palette: Palette, lot: Lot) -> Spectrum | None:
    """Give the spectrum of a lot's undyed yarn, or None where none was measured.

    A lot that names no yarn takes the only one of the palette that has a spectrum. Lots without a bath are no stand-in:
    theirs may only not be recorded.
    """
    if lot.yarn is None:
        measured = [yarn.reading for yarn in palette.yarns if isinstance(yarn.reading, Spectrum)]
        return measured[0] if len(measured) == 1 else None
    yarn = palette.yarn(lot.yarn)
    return yarn.reading if yarn is not None and isinstance(yarn.reading, Spectrum) else None
