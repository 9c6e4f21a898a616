"""What filling reaches, against a plain search stitch by stitch and against scipy's labels joined by hand."""

from collections import deque

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.ndimage import label

from chartmaker.knit.outline import chart_offsets
from chartmaker.model.band import Band
from chartmaker.model.flood import flooded
from chartmaker.model.notation import rounds_from_text
from chartmaker.model.round import Round
from tests.strategies import bands


def band_of(text):
    return Band(name="", times=1, rounds=rounds_from_text(text))


def reached(text, at):
    """Draw what is reached, the last round first; a blank where no stitch is."""
    band = band_of(text)
    offsets = chart_offsets(band.rounds)
    region = flooded(band, at=at, offsets=offsets)
    lines = []
    for columns, line, offset in zip(region, band.rounds, offsets, strict=True):
        signs = ["#" if columns[column] else "-" for column in range(len(columns))]
        here = range(offset, offset + len(line))
        lines.append("".join(sign if column in here else " " for column, sign in enumerate(signs))[::-1])
    return lines[::-1]


def searched(band, at, offsets):
    """Search breadth first from a stitch, neighbour by neighbour."""

    def part(index, column):
        stitch = column - offsets[index]
        line = band.rounds[index].cells
        return line[stitch] if 0 <= stitch < len(line) else None

    start = (at[0], offsets[at[0]] + at[1])
    wanted, found, queue = part(*start), {start}, deque([start])
    while queue:
        index, column = queue.popleft()
        length, first = len(band.rounds[index]), offsets[index]
        beside = [(index, first + (column - first + step) % length) for step in (-1, 1)]
        near = [*beside, *((index + step, column) for step in (-1, 1) if 0 <= index + step < len(band.rounds))]
        for place in near:
            if place not in found and part(*place) == wanted:
                found.add(place)
                queue.append(place)
    return found


def labelled(picture, at):
    """Take scipy's labels of one part, and join those that meet at both ends of a round until none is left to join."""
    labels, _ = label(picture == picture[at])
    reached = {labels[at]}
    while True:
        ends = [set(pair) for pair in labels[:, [0, -1]].tolist() if all(pair)]
        more = set().union(*(pair for pair in ends if pair & reached)) | reached
        if more == reached:
            return np.isin(labels, list(reached))
        reached = more


def test_filling_stops_at_another_part():
    assert reached("A B | ......\nA B | .xxxx.\nA B | .x..x.\nA B | .xxxx.", (1, 2)) == [
        "------",
        "------",
        "--##--",
        "------",
    ]


def test_filling_closes_round_the_join():
    assert reached("A B | .xxxx.\nA B | xx..xx\nA B | .xxxx.", (0, 0)) == ["------", "------", "#----#"]
    assert reached("A B | ..xx..", (0, 1)) == ["##--##"]


def test_stitches_that_touch_at_a_corner_do_not_hang_together():
    assert reached("A B | x.\nA B | .x", (0, 0)) == ["--", "-#"]


def test_in_a_shaped_band_filling_goes_up_the_columns_of_the_drawing():
    wedge = "A B | xxx   | .^.\nA B | x.x.x | ....."
    assert reached(wedge, (0, 2)) == [" ### ", "--#--"]
    assert reached(wedge, (0, 0)) == [" --- ", "#---#"]
    assert reached("A B | .x. | .^.\nA B | ..x..\nA B | ..x..", (0, 2)) == [" -#- ", "--#--", "--#--"]


@given(bands(), st.data())
def test_filling_reaches_what_a_search_stitch_by_stitch_does(band, data):
    index = data.draw(st.integers(0, len(band.rounds) - 1))
    stitch = data.draw(st.integers(0, len(band.rounds[index]) - 1))
    offsets = chart_offsets(band.rounds)
    region = flooded(band, at=(index, stitch), offsets=offsets)
    assert set(map(tuple, np.argwhere(region).tolist())) == searched(band, (index, stitch), offsets)


def spiral(side):
    """Wind one path of the ground inwards, a cell wide."""
    drawn = np.ones((side, side), np.uint8)
    top, left, bottom, right = 0, 0, side - 1, side - 2
    while top <= bottom and left <= right:
        drawn[top, left : right + 1] = drawn[bottom, left : right + 1] = 0
        drawn[top : bottom + 1, right] = drawn[top + 2 : bottom + 1, left] = 0
        drawn[top + 2, left : left + 3] = 0
        top, left, bottom, right = top + 2, left + 2, bottom - 2, right - 2
    return drawn


def meander(side):
    """Let one path of the ground go up and down, a cell wide."""
    drawn = np.zeros((side, side), np.uint8)
    drawn[:, 1::2] = 1
    drawn[0, 1::4] = drawn[-1, 3::4] = 0
    return drawn


def comb(side):
    """Hang teeth of the figure between teeth of the ground."""
    drawn = np.zeros((side, side), np.uint8)
    drawn[:-1, 1::2] = 1
    return drawn


def scattered(share):
    """Scatter figure over a share of the stitches."""
    return lambda side: (np.random.default_rng(7).random((side, side)) < share).astype(np.uint8)


DRAWINGS = {"spiral": spiral, "meander": meander, "comb": comb, "few": scattered(0.3), "half": scattered(0.5)}


@pytest.mark.parametrize("name", DRAWINGS)
def test_filling_a_large_drawing_reaches_what_scipys_labels_do(name):
    drawn = DRAWINGS[name](120)
    band = Band(name="", times=1, rounds=tuple(Round("AB", line.tobytes()) for line in drawn))
    for at in ((0, 0), (60, 61), (119, 119)):
        assert (flooded(band, at=at, offsets=(0,) * 120) == labelled(drawn, at)).all()
    for turned in (drawn[::-1], drawn.T):
        band = Band(name="", times=1, rounds=tuple(Round("AB", line.tobytes()) for line in turned))
        assert (flooded(band, at=(0, 0), offsets=(0,) * 120) == labelled(turned, (0, 0))).all()
