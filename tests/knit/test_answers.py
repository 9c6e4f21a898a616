from dataclasses import fields, replace

import pytest

from chartmaker.knit.answers import Answers, defaults_for, sources_for
from chartmaker.model.gauge import Gauge, gauge_counted
from chartmaker.model.hat import SHAPES

FINE = Gauge(stitches_per_10cm=30, rounds_per_10cm=34)


@pytest.mark.parametrize("shape", SHAPES)
def test_every_default_has_its_source_and_every_source_its_field(shape):
    names = {field.name for field in fields(Answers)}
    sources = sources_for(shape)
    assert {one.field for one in sources} <= names
    assert {"ease_percent", "depth_cm", "brim", "reserve_percent"} <= {one.field for one in sources}
    assert all(one.source for one in sources)


@pytest.mark.parametrize("head_cm", [34.0, 46.0, 56.0, 60.0])
def test_a_cap_is_as_deep_as_the_craft_pages_say(head_cm):
    # craft pages, which differ: girth / 3 + 2 cm, or 0.4 × girth
    low, high = sorted((head_cm / 3 + 2, 0.4 * head_cm))
    assert low - 0.05 <= defaults_for(shape="cap", head_cm=head_cm, gauge=FINE).depth_cm <= high + 0.05


def test_ease_is_what_is_published_for_stranded_hats():
    # The Knitter, 2019: about 5 cm smaller, some 9 %
    answers = defaults_for(shape="cap", head_cm=56, gauge=FINE)
    assert answers.head_cm - answers.wanted_cm == pytest.approx(5, abs=0.1)


def test_a_stocking_cap_is_much_deeper_and_bears_a_tassel():
    cap, stocking = (defaults_for(shape=shape, head_cm=56, gauge=FINE) for shape in ("cap", "stocking"))
    assert stocking.depth_cm > 2 * cap.depth_cm
    assert [trim.kind for trim in stocking.trims] == ["tassel"]
    assert not cap.trims


@pytest.mark.parametrize(
    ("change", "sentence"),
    [
        ({"shape": "bonnet"}, "shape is 'bonnet'"),
        ({"head_cm": 12.0}, "head_cm is 12"),
        ({"letters": "A"}, "at least two, each once"),
        ({"letters": "ABA"}, "at least two, each once"),
        ({"letters": "aB"}, "one capital"),
        ({"widen_percent": 300.0}, "widen_percent is 300"),
        ({"ease_percent": float("nan")}, "ease_percent must be a finite number"),
        ({"motif_repeat": 0}, "motif_repeat is 0"),
    ],
)
def test_answers_out_of_range_are_refused_in_a_sentence(change, sentence):
    with pytest.raises(ValueError, match=sentence):
        replace(Answers(), **change)


def test_a_swatch_counted_over_any_stretch_gives_the_gauge():
    assert gauge_counted(stitches=36, width_cm=12, rounds=17, height_cm=5) == FINE
    assert gauge_counted(stitches=30, width_cm=10, rounds=34, height_cm=10) == FINE
    inch = gauge_counted(stitches=20, width_cm=4 * 2.54, rounds=28, height_cm=4 * 2.54)
    assert inch.stitches_per_10cm == pytest.approx(20 / 10.16 * 10)


@pytest.mark.parametrize("counted", [(0, 10, 34, 10), (30, 0, 34, 10), (30, 10, -1, 10), (30, 10, 34, float("inf"))])
def test_a_swatch_that_counts_nothing_is_refused(counted):
    stitches, width, rounds, height = counted
    with pytest.raises(ValueError, match="counted"):
        gauge_counted(stitches=stitches, width_cm=width, rounds=rounds, height_cm=height)
