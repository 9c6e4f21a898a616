"""Where the rounds of a band are drawn: lines of decreases and the stitches between them stay upright."""

import pytest

from chartmaker.knit.outline import chart_offsets, chart_width
from chartmaker.model.notation import rounds_from_text


def drawing(text: str) -> tuple[int, ...]:
    return chart_offsets(rounds_from_text(text))


@pytest.mark.parametrize(
    ("text", "offsets"),
    [
        ("A | ... | >..\nA | ....\nA | ....", (0, 0, 0)),
        ("A | ... | <..\nA | .... | <...\nA | .....", (0, 0, 0)),
        ("A | ... | ..<\nA | .... | ...<\nA | .....", (0, 1, 2)),
        ("A | . | ^\nA | ... | .^.\nA | .....", (0, 1, 2)),
        ("A | .. | .^\nA | .... | ..^.\nA | ......", (0, 1, 2)),
        ("A | .. | ^.\nA | .... | .^..\nA | ......", (0, 1, 2)),
        ("A | .. | ><\nA | .... | >..<\nA | ......", (0, 1, 2)),
        ("A | .. | ^.\nA | .... | >.<.\nA | ...... | >...<.\nA | ........", (0, 1, 2, 3)),
        ("A | . | >\nA | ..", (0, 0)),
        ("A | . | <\nA | ..", (0, 1)),
    ],
)
def test_a_spine_or_the_stitches_between_a_pair_stand_above_each_other(text: str, offsets: tuple[int, ...]) -> None:
    assert drawing(text) == offsets


def test_a_round_that_is_all_made_stitches_stays_where_it_is() -> None:
    assert drawing("A | .. | ++\nA | ..") == (0, 0)


def test_the_drawing_is_as_wide_as_its_outermost_stitches() -> None:
    assert chart_width(rounds_from_text("A | ..... | +...+\nA | ...")) == 5
