"""What one cell of a chart says: which part it plays, and how many stitches of the round below it eats."""

from enum import IntEnum


class Part(IntEnum):
    """The part that a stitch plays in its round; the round's letters say in which yarn."""

    GROUND = 0
    FIGURE = 1
    THIRD = 2


class Shaping(IntEnum):
    """How a stitch is made: the number that it eats of the round below follows from it."""

    PLAIN = 0
    """Knitted into one stitch."""
    K2TOG = 1
    """Two knitted together, leaning right."""
    SSK = 2
    """Slip, slip, knit: two together, leaning left."""
    CENTRED = 3
    """Centred double decrease: three become one, without lean."""
    MAKE = 4
    """Make one: a new stitch that eats none."""


PART_SIGNS = ".x+"
"""The file's sign of each `Part`, by its number."""
SHAPING_SIGNS = ".><^+"
"""The file's sign of each `Shaping`, by its number."""

EATEN = (1, 2, 2, 3, 0)
"""Stitches of the round below that each `Shaping` eats, by its number."""
