"""The history of edits: steps far back are kept small, and undone and redone all the same."""

from dataclasses import replace

import pytest

from chartmaker.app.open_design import STEPS_AT_HAND, OpenDesign
from chartmaker.model.compact_edit import RedrawRounds
from chartmaker.model.edits import ReplaceRounds
from tests.builders import chart

pytestmark = pytest.mark.usefixtures("qapp")
WIDE = chart("\n".join(["A B | " + "x." * 100] * 60))


def fill(design, number):
    """Give an edit that draws every round anew, another way for every number."""
    changes = tuple(
        (index, line, replace(line, cells=bytes((index + stitch + number) % 3 % 2 for stitch in range(200))))
        for index, line in enumerate(design.bands[0].rounds)
    )
    return ReplaceRounds(0, changes, f"Fill {number}")


def filled(steps):
    document = OpenDesign(WIDE)
    seen = [document.design]
    for number in range(steps):
        document.do(fill(document.design, number))
        seen.append(document.design)
    return document, seen


def kinds(document):
    assert len(document._steps) == document.stack.count()
    return [type(step.edit) for step in document._steps]


def test_steps_far_back_are_compacted_and_the_last_ones_kept_as_they_are(qtbot):
    document, _ = filled(STEPS_AT_HAND + 5)
    qtbot.waitUntil(lambda: RedrawRounds in kinds(document))
    assert kinds(document) == [RedrawRounds] * 5 + [ReplaceRounds] * STEPS_AT_HAND


def test_compacted_steps_are_undone_and_redone_to_the_same_designs():
    document, seen = filled(STEPS_AT_HAND + 5)
    document.compact_past()
    for design in reversed(seen[:-1]):
        document.stack.undo()
        assert document.design == design
    for design in seen[1:]:
        document.stack.redo()
        assert document.design == design
    assert document.stack.undoText() == f"Fill {STEPS_AT_HAND + 4}"


def test_what_was_undone_is_not_compacted_and_later_steps_go_on_being():
    document, _ = filled(STEPS_AT_HAND + 5)
    document.stack.setIndex(STEPS_AT_HAND + 2)
    document.compact_past()
    assert kinds(document).count(RedrawRounds) == 2
    for number in range(4):
        document.do(fill(document.design, 50 + number))
    document.compact_past()
    assert kinds(document).count(RedrawRounds) == 6
