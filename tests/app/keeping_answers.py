"""Answers the questions that are asked so that no work is lost, and remembers what they were asked about."""

from typing import TYPE_CHECKING

from tests.app.answers import Answers

if TYPE_CHECKING:
    from chartmaker.app.keeping_questions import ChangeAnswer, LeftAnswer


class KeepingAnswers(Answers):
    """What the tests' user would say, who puts everything off unless told otherwise."""

    def __init__(self) -> None:
        super().__init__()
        self.changed: ChangeAnswer = "later"
        self.left: list[LeftAnswer] = []
        self.copy: int | None = None
        self.changes: list[tuple[str, bool]] = []
        self.offers: list[list[str]] = []
        self.offered_copies: list[int] = []

    def what_of_changed(self, name, *, is_gone):
        self.changes.append((name, is_gone))
        return self.changed

    def what_of_left(self, works):
        self.offers.append([work.title for work in works])
        return (self.left.pop(0) if self.left else "later"), works[0]

    def which_copy(self, _name, copies):
        self.offered_copies.append(len(copies))
        return None if self.copy is None else copies[self.copy]
