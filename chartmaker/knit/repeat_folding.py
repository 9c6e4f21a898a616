"""The same drawing several times side by side in a repeat: counted as one, and as several again, the pattern kept.

A repeat that is longer than what is drawn in it keeps stitch counts away that the drawing itself allows.
"""

from collections.abc import Sequence
from dataclasses import replace
from math import gcd

from chartmaker.knit.crown import body_and_crown
from chartmaker.knit.starting_counts import repeat_for
from chartmaker.model.band import Band
from chartmaker.model.design import Design
from chartmaker.model.round import Round


def copies_in(band: Band) -> int:
    """Tell how often the same drawing stands side by side in a band's repeat."""
    texture = len(band.texture) or 1
    whole = gcd(*(len(line) for line in band.rounds))
    for copies in range(whole, 1, -1):
        if whole % copies or whole // copies % texture:
            continue
        if all(_is_copied(line, copies) for line in band.rounds):
            return copies
    return 1


def drawn_once(band: Band) -> Band:
    """Give a band whose repeat is its drawing once; it goes round as often as the longer one did."""
    copies = copies_in(band)
    rounds = tuple(
        replace(line, cells=line.cells[: len(line) // copies], shaping=line.shaping[: len(line) // copies])
        for line in band.rounds
    )
    return replace(band, rounds=rounds)


def with_short_repeats(design: Design) -> Design:
    """Give the same fabric with the repeat of each plain band below the crown as short as its drawing.

    Raises ValueError where the hat has nothing below its crown.
    """
    body, crown = body_and_crown(design)
    short = (band if band.is_shaped else replace(drawn_once(band), times=band.times * copies_in(band)) for band in body)
    return replace(design, bands=(*short, *crown))


def with_long_repeats(bands: Sequence[Band], like: Sequence[Band]) -> tuple[Band, ...]:
    """Give the same fabric with repeats as long as they can be up to those of other bands, which show the same."""
    longest = {drawn_once(band).rounds: len(band.rounds[0]) for band in like if not band.is_shaped}
    return tuple(_lengthened(band, longest.get(band.rounds, 0)) for band in bands)


def _lengthened(band: Band, most: int) -> Band:
    width = len(band.rounds[0])
    if most <= width:
        return band
    if width == 1:
        copies = repeat_for(band.times, None)
    else:
        copies = max(count for count in range(1, most // width + 1) if band.times % count == 0)
    rounds = tuple(replace(line, cells=line.cells * copies, shaping=line.shaping * copies) for line in band.rounds)
    return replace(band, times=band.times // copies, rounds=rounds)


def _is_copied(line: Round, copies: int) -> bool:
    width = len(line) // copies
    return line.cells == line.cells[:width] * copies and line.shaping == line.shaping[:width] * copies
