from pathlib import Path

import pytest

from chartmaker.appraisal import appraise
from chartmaker.files.design_reading import read_design
from chartmaker.sheets.boxes import Lines, Text
from chartmaker.sheets.hat_outline import hat_outline

EXAMPLES = sorted((Path(__file__).parents[2] / "examples").glob("*.hat.toml"))


@pytest.mark.parametrize("width", [50.0, 60.0, 90.0])
@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.name.split(".")[0])
def test_a_line_leads_from_the_hat_to_every_band_s_number(path, width):
    boxes = hat_outline(appraise(read_design(path)), width=width).boxes
    numbers = [box for box in boxes if isinstance(box, Text) and box.text.isdigit()]
    segments = [segment for box in boxes if isinstance(box, Lines) for segment in box.segments]
    assert len(numbers) > 4
    for number in numbers:
        x, top, right, bottom = number.extent
        assert right <= width
        (leader,) = [(x1, x2) for x1, _, x2, y2 in segments if 0 < x - x2 < 1.5 and top < y2 < bottom]
        assert leader[0] < leader[1]
