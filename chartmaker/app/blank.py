"""A new design to begin with: plain rounds of one band that fit an ordinary head at an ordinary gauge."""

from chartmaker.model.band import Band
from chartmaker.model.design import Colourway, Design
from chartmaker.model.round import Round

REPEAT, TIMES, ROUNDS = 12, 12, 40
"""144 stitches come within 3 % of 56 cm less 6 % at 28 stitches in 10 cm."""


def blank_design() -> Design:
    """Give a cap of one blank band, ground A and figure B, with no lots yet."""
    plain = Round("AB", bytes(REPEAT))
    band = Band(name="pattern", times=TIMES, rounds=(plain,) * ROUNDS)
    return Design(title="New cap", bands=(band,), colourways=(Colourway("first"),))
