"""Error diffusion: what a stitch's colour errs by is handed to its neighbours, so that the mean is kept.

Floyd and Steinberg 1976, An adaptive algorithm for spatial greyscale, Proc. SID 17, 75-77: 7/16 to the next stitch,
3/16, 5/16 and 1/16 to the three of the next row. It works on light, which is what blends at a distance. The row wraps
round the repeat for the row to come, so that no seam shows at the join.
"""

from collections.abc import Callable

import numpy as np
from numpy.typing import NDArray

LARGEST_ERROR = 1.0
"""An error past it, in units of the colours' greatest component, is cut off: a colour out of reach would pile it up."""


def diffused(
    light: NDArray[np.float64],
    colours: NDArray[np.float64],
    *,
    choose: Callable[[int, list[float]], int],
    step: Callable[[int, int], None] | None = None,
) -> NDArray[np.uint8]:
    """Give the index of each stitch's colour, shape (rounds, stitches).

    Args:
        light: what is wanted, shape (rounds, stitches, components), on a scale of light.
        colours: what there is, shape (colours, components), on the same scale.
        choose: gives the index of the colour for a round's index and the light wanted, errors included.
        step: told before each round how many are done and how many there are; what it raises ends the work.
    """
    rounds, stitches, components = light.shape
    wanted, there = light.tolist(), colours.tolist()  # Python's own numbers: arrays of three are ten times as slow
    most = LARGEST_ERROR * float(colours.max())
    codes = np.empty((rounds, stitches), dtype=np.uint8)
    carried = [[0.0] * components for _ in range(stitches)]
    for row in range(rounds - 1, -1, -1):  # as one reads the picture: from the top, left to right
        if step is not None:
            step(rounds - 1 - row, rounds)
        here = [
            [want + more for want, more in zip(*both, strict=True)] for both in zip(wanted[row], carried, strict=True)
        ]
        carried = [[0.0] * components for _ in range(stitches)]
        for stitch in range(stitches - 1, -1, -1):
            codes[row, stitch] = code = choose(row, here[stitch])
            before, under, after = carried[(stitch + 1) % stitches], carried[stitch], carried[stitch - 1]
            for part, (want, got) in enumerate(zip(here[stitch], there[code], strict=True)):
                error = min(max(want - got, -most), most) / 16
                if stitch:
                    here[stitch - 1][part] += 7 * error
                before[part] += 3 * error
                under[part] += 5 * error
                after[part] += error
    return codes
