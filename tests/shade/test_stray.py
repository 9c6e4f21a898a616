import re

import pytest

from chartmaker.model.palette import Lot
from chartmaker.model.reading import LabReading
from chartmaker.model.settings import Viewing
from chartmaker.shade.stray import stray_note, stray_of
from tests.builders import lot

VIEWING = Viewing()


def test_the_difference_is_that_of_a_published_pair():
    # Sharma, Wu, Dalal 2005, table 1, pair 25: (60.2574, -34.0099, 36.2677), (60.4626, -34.1751, 39.4387): 1.2644.
    one = lot("a", (60.2574, -34.0099, 36.2677))
    other = (LabReading(lab=(60.4626, -34.1751, 39.4387)),)
    assert stray_of(other, one, VIEWING) == pytest.approx(1.2644, abs=1e-4)
    assert stray_note(other, one, VIEWING) == ""


def test_readings_of_another_yarn_are_told():
    note = stray_note((LabReading(lab=(30, 0, 0)), LabReading(lab=(32, 0, 0))), lot("a", (80, 0, 0)), VIEWING)
    assert re.fullmatch(r"CIEDE2000 4\d\.\d from the shade that the lot had", note)


def test_a_lot_without_a_shade_has_nothing_to_stray_from():
    reading = (LabReading(lab=(30, 0, 0)),)
    assert stray_of(reading, None, VIEWING) is None
    assert stray_of(reading, Lot(id="a", name="a"), VIEWING) is None
