"""Repeats counted as shorter and as longer: the fabric stays, stitch for stitch."""

from dataclasses import replace

import numpy as np
from hypothesis import given

from chartmaker.knit.crown import Crown, body_and_crown, with_crown
from chartmaker.knit.fit import circumference_cm
from chartmaker.knit.layout import lay_out
from chartmaker.knit.refit import cast_on, refit
from chartmaker.knit.repeat_folding import with_long_repeats, with_short_repeats
from chartmaker.model.design import Design
from chartmaker.model.hat import Hat
from tests.builders import chart
from tests.strategies import designs

THREE_AS_ONE = chart("\n".join(["A B | " + 3 * "x..x........"] * 20), times=4)
"""A drawing of 12 stitches, three times in a repeat of 36, in 144."""


def same_fabric(one: Design, other: Design) -> bool:
    first, second = lay_out(one), lay_out(other)
    return np.array_equal(first.counts, second.counts) and np.array_equal(first.parts, second.parts)


@given(designs())
def test_short_repeats_are_the_same_fabric_and_so_are_long_ones_again(design: Design) -> None:
    try:
        short = with_short_repeats(design)
    except ValueError:  # nothing below its crown
        return
    whole = replace(design, bands=tuple(band for part in body_and_crown(design) for band in part))
    assert same_fabric(short, whole)
    again = replace(short, bands=with_long_repeats(short.bands, whole.bands))
    assert same_fabric(again, whole)


def test_a_repeat_of_three_drawings_is_counted_as_one_and_as_three_again() -> None:
    short = with_short_repeats(THREE_AS_ONE)
    assert (len(short.bands[0].rounds[0]), short.bands[0].times) == (12, 12)
    assert with_long_repeats(short.bands, THREE_AS_ONE.bands) == THREE_AS_ONE.bands


def test_a_hat_is_fitted_by_the_drawing_where_its_repeat_holds_several() -> None:
    crowned = with_crown(THREE_AS_ONE, Crown()).applied_to(THREE_AS_ONE)
    larger = replace(crowned, hat=Hat(head_cm=60.0, ease_percent=-7.0))
    fitted = refit(larger).applied_to(larger)
    # 55.8 cm at 28 to 10 cm are 156.2 stitches, 13 times the drawing; by 36 there are 144 and 180.
    assert cast_on(fitted) == 156
    assert circumference_cm(156, fitted.gauge) - 55.8 < 0.1
    body = fitted.bands[0]
    assert {line.cells for line in body.rounds} == {bytes(cell == "x" for cell in reversed("x..x........"))}
