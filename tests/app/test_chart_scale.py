from hypothesis import given
from hypothesis import strategies as st

from chartmaker.app.chart_scale import cell_sizes
from chartmaker.model.gauge import Gauge


@given(st.floats(14, 50), st.floats(0.7, 1.6))
def test_a_drawn_stitch_keeps_the_proportion_of_the_gauge(stitches, ratio):
    gauge = Gauge(stitches_per_10cm=stitches, rounds_per_10cm=stitches * ratio)
    true = gauge.round_height_cm / gauge.stitch_width_cm
    for size in cell_sizes(gauge):
        # Whole pixels: no height is more than half a pixel off.
        assert abs(size.height - size.width * true) <= 0.5 + 1e-9
        if size.width >= 16:
            assert abs(size.height / size.width / true - 1) < 0.05


def test_each_step_of_the_zoom_is_larger_than_the_one_before():
    widths = [size.width for size in cell_sizes(Gauge(stitches_per_10cm=28, rounds_per_10cm=32))]
    assert widths == sorted(set(widths))
    assert len(widths) > 12


def test_a_proportion_that_whole_pixels_can_hold_is_held_exactly():
    sizes = cell_sizes(Gauge(stitches_per_10cm=28, rounds_per_10cm=32))
    assert (16, 14) in [(size.width, size.height) for size in sizes]
