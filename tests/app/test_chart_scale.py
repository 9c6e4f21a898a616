from hypothesis import given
from hypothesis import strategies as st

from chartmaker.app.chart_scale import CellSize, cell_sizes, next_size, size_near
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


def test_a_step_from_between_two_sizes_goes_to_the_next_of_them():
    sizes = cell_sizes(Gauge(stitches_per_10cm=28, rounds_per_10cm=32))
    between = size_near(17, 28 / 32)
    assert next_size(sizes, between, 1).width > 17 > next_size(sizes, between, -1).width
    for index, size in enumerate(sizes):
        assert next_size(sizes, size, 1) == sizes[min(index + 1, len(sizes) - 1)]
        assert next_size(sizes, size, -1) == sizes[max(index - 1, 0)]
        assert next_size(sizes, size, 0) == size


def test_a_size_near_a_width_is_whole_pixels_in_proportion():
    assert size_near(16.6, 0.875) == CellSize(17, 15)
    assert size_near(0.2, 0.875) == CellSize(1, 1)
