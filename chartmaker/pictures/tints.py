"""The colours that a hat is shown in: as dyed, grey, by other lights, to other eyes; the chart's views without Qt."""

from collections.abc import Mapping
from dataclasses import replace

from chartmaker.appraisal import Appraisal
from chartmaker.dye.predicted import shade_in
from chartmaker.pictures.shades import LetterColours, shade_colours, value_colours
from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.vision import KINDS, seen_by

LAMPS = {"lamplight": "A", "led": "LED-B3", "tube": "FL11"}
"""An incandescent lamp, a white LED and a fluorescent tube, by the names of CIE 15."""
TIGHTNESS = "tightness"
TINTS = ("shade", "value", *LAMPS, *KINDS, TIGHTNESS)


def tinted(appraisal: Appraisal, tint: str, *, severity: float = 1.0) -> LetterColours:
    """Give the colour of each letter in one of `TINTS` but `TIGHTNESS`, which colours rounds.

    Args:
        appraisal: of the design, in the colourway in use.
        tint: its name.
        severity: of another colour vision, 0 to 1.

    Raises ValueError for another name.
    """
    if tint not in TINTS or tint == TIGHTNESS:
        raise ValueError(f"there is no tint {tint!r} of letters; there are {', '.join(TINTS[:-1])}")
    if tint in LAMPS:
        return shade_colours(_by_lamp(appraisal, LAMPS[tint]))
    shades = {item.letter: item.shade for item in appraisal.letters}
    if tint == "value":
        return value_colours(shades)
    colours = shade_colours(shades)
    return colours if tint == "shade" else LetterColours(seen_by(colours.rgb, tint, severity=severity), colours.hatched)


def _by_lamp(appraisal: Appraisal, illuminant: str) -> Mapping[str, LotShade | None]:
    """Take each letter's shade under another light; what has no spectrum is adapted to it."""
    viewing = replace(appraisal.design.viewing, illuminant=illuminant)
    return {
        item.letter: shade_in(appraisal.palette, item.lot, viewing) if item.lot else None for item in appraisal.letters
    }
