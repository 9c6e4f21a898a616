import math

import numpy as np
import pytest

from chartmaker.pictures.camera import camera

CONE = (np.array([9.0, 6.0, 0.0]), np.array([0.0, 8.0, 14.0]))


@pytest.mark.parametrize("tilt_degrees", [-90, -30, 0, 14, 60, 90])
def test_a_hat_that_is_fitted_into_a_picture_is_wholly_in_it_from_every_tilt(tilt_degrees):
    view = camera(*CONE, width_px=300, tilt=math.radians(tilt_degrees))
    assert view.tilt == math.radians(tilt_degrees)
    turns = np.linspace(0, 2 * math.pi, 73)
    for radius, height in zip(*CONE, strict=True):
        across = view.across_px(radius * np.sin(turns))
        down = view.down_px(radius * np.cos(turns), height)
        assert 0 <= across.min() <= across.max() <= view.width_px
        assert 0 <= down.min() <= down.max() <= view.height_px
