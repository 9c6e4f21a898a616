from PySide6.QtCore import QPointF

from chartmaker.app.ladder_layout import THICKEST, bows, rungs
from chartmaker.appraisal import appraise
from tests.builders import chart


def ladder(text, lots, height=500.0):
    appraisal = appraise(chart(text, times=36, lots=lots))
    placed = rungs(appraisal, height=height, least_gap=20)
    return placed, bows(appraisal, placed)


def test_letters_stand_at_their_value_lightest_first():
    placed, _ = ladder("A B | x...", {"A": (30, 0, 0), "B": (80, 0, 0)})
    assert [(rung.letter, rung.value, rung.lane) for rung in placed] == [("B", 80, 0), ("A", 30, 0)]


def test_letters_of_like_value_stand_beside_one_another():
    placed, _ = ladder("A B C | x.+.", {"A": (30, 0, 0), "B": (31, 0, 0), "C": (32, 0, 0)})
    assert sorted(rung.lane for rung in placed) == [0, 1, 2]


def test_a_letter_without_a_shade_stands_nowhere():
    placed, joined = ladder("A B | x...", {"A": (30, 0, 0)})
    assert [rung.letter for rung in placed] == ["A"]
    assert joined == ()


def test_bows_are_as_thick_as_the_boundary_that_a_pair_shares():
    text = "A C | x...\nA B | x.x.\nA B | x.x."
    _, joined = ladder(text, {"A": (30, 0, 0), "B": (80, 0, 0), "C": (60, 0, 0)})
    by_pair = {bow.pair.letters: bow for bow in joined}
    assert by_pair["AB"].thickness == THICKEST
    share = by_pair["AC"].pair.drawn_cm / by_pair["AB"].pair.drawn_cm
    assert by_pair["AC"].thickness == THICKEST * share


def ink_along_the_bow(open_on, values):
    """Give the lightness of the ladder at the middle of the bow between two values, and at its quarter."""
    design = chart("A B | x...", times=36, lots={"A": (values[0], 0, 0), "B": (values[1], 0, 0)})
    ladder = open_on(design).chart.ladder
    (bow,) = bows(ladder.document.appraisal, ladder._rungs())
    image, path = ladder.grab().toImage(), ladder._path(bow)
    beside = QPointF(0, 10.5)  # between the mark and the end of the gap
    places = (path.pointAtPercent(0.5) + beside, path.pointAtPercent(0.2), path.pointAtPercent(0.5))
    return [image.pixelColor(place.toPoint()).lightness() for place in places]


def test_the_bow_of_a_clear_pair_is_whole(open_on):
    _, quarter, middle = ink_along_the_bow(open_on, (30, 80))
    assert (quarter, middle) == (0, 0)


def test_the_bow_of_a_lost_pair_is_broken_in_the_middle(open_on):
    beside, quarter, _ = ink_along_the_bow(open_on, (30, 36))
    assert quarter == 0
    assert beside > 80


def test_the_ladder_tells_its_pairs_in_words(open_on):
    design = chart("A B | x...", times=36, lots={"A": (30, 0, 0), "B": (36, 0, 0)})
    told = open_on(design).chart.ladder.accessibleDescription()
    assert "B at 36, A at 30" in told
    assert "A and B: lost" in told
