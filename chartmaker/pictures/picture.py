"""The views of a hat: the fabric flat in its shades, in the greys of their values, and knitted; and the worn hat."""

import numpy as np
from numpy.typing import NDArray

from chartmaker.appraisal import Appraisal
from chartmaker.pictures.cells import flat_cells
from chartmaker.pictures.flat import draw_flat
from chartmaker.pictures.frame import frame
from chartmaker.pictures.knit import draw_knit
from chartmaker.pictures.shades import shade_colours, value_colours
from chartmaker.pictures.worn import draw_worn

VIEWS = ("shade", "value", "knit", "hat")


def picture(appraisal: Appraisal, view: str, width_px: int) -> NDArray[np.uint8]:
    """Draw one of `VIEWS` as sRGB, shape (height, `width_px`, 3).

    Raises ValueError for another view, or a width outside 16 to 8000.
    """
    if view not in VIEWS:
        raise ValueError(f"there is no view {view!r}; there are {', '.join(VIEWS)}")
    shades = {item.letter: item.shade for item in appraisal.letters}
    colours = value_colours(shades) if view == "value" else shade_colours(shades)
    if view == "hat":
        return draw_worn(appraisal.design, appraisal.fabric, appraisal.profile, colours, width_px=width_px)
    gauge = appraisal.design.gauge
    height_per_width = gauge.round_height_cm / gauge.stitch_width_cm
    cells = flat_cells(appraisal.design, appraisal.fabric)
    rounds, columns = cells.letters.shape
    place = frame(columns, rounds, height_per_width=height_per_width, width_px=width_px)
    if view == "knit":
        return draw_knit(cells, colours, place, height_per_width=height_per_width)
    return draw_flat(cells, colours, place)
