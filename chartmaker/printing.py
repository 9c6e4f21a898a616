"""From an appraisal and choices to a print job with the hat's picture: what the command line and the window share."""

from chartmaker.appraisal import Appraisal
from chartmaker.pictures.picture import picture
from chartmaker.sheets.boxes import Pixels

COVER_PICTURE_PX = 640
"""Width of the cover's picture: 8 cm at 200 pixels to the inch."""


def cover_picture(appraisal: Appraisal) -> Pixels:
    """Draw the worn hat as the cover takes it."""
    array = picture(appraisal, "hat", COVER_PICTURE_PX)
    return Pixels(width=array.shape[1], height=array.shape[0], rgb=array.tobytes())
