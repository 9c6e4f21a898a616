"""The views of a hat: the fabric flat in its shades, in the greys of their values, and knitted; and the hat itself."""

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from chartmaker.appraisal import Appraisal
from chartmaker.pictures.cells import flat_cells
from chartmaker.pictures.flat import draw_flat
from chartmaker.pictures.frame import frame
from chartmaker.pictures.knit import draw_knit
from chartmaker.pictures.shades import shade_colours, value_colours
from chartmaker.pictures.turning import Dress, prepare
from chartmaker.pictures.viewpoint import Viewpoint

VIEWS = ("shade", "value", "knit", "hat")


@dataclass(frozen=True, slots=True)
class HatSight:
    """How the hat is shown, and where it is looked at from."""

    dress: Dress = Dress()
    seen_from: Viewpoint = Viewpoint()


def picture(appraisal: Appraisal, view: str, width_px: int, *, sight: HatSight | None = None) -> NDArray[np.uint8]:
    """Draw one of `VIEWS` as sRGB, shape (height, `width_px`, 3); `sight` is of the hat alone.

    Raises ValueError for another view, a width outside 16 to 8000, or a sight that the hat does not have.
    """
    if view not in VIEWS:
        raise ValueError(f"there is no view {view!r}; there are {', '.join(VIEWS)}")
    if view == "hat":
        wanted = sight or HatSight()
        return prepare(appraisal, wanted.dress).picture(wanted.seen_from, width_px)
    shades = {item.letter: item.shade for item in appraisal.letters}
    colours = value_colours(shades) if view == "value" else shade_colours(shades)
    gauge = appraisal.design.gauge
    height_per_width = gauge.round_height_cm / gauge.stitch_width_cm
    cells = flat_cells(appraisal.design, appraisal.fabric)
    rounds, columns = cells.letters.shape
    place = frame(columns, rounds, height_per_width=height_per_width, width_px=width_px)
    if view == "knit":
        return draw_knit(cells, colours, place, height_per_width=height_per_width)
    return draw_flat(cells, colours, place)
