"""A brim that folds over more rounds than there are above its edge."""

from collections.abc import Iterator

from chartmaker.checks.facts import Facts
from chartmaker.checks.finding import Finding, Place

NAME = "fold"
LYING_DOUBLE = ("up", "in")
"""Ways to fold that lay the rounds on as many others; an edge that rolls lies on itself."""


def check(facts: Facts) -> Iterator[Finding]:
    """Report a turned brim, or a hem, that reaches past the rounds it is to lie on, and how many rounds may fold."""
    fold, depth = facts.design.hat.fold, facts.depth
    above = depth.rounds - depth.part("crown").rounds
    if fold is None or fold.way not in LYING_DOUBLE or depth.folded_rounds <= above:
        return
    most = (depth.folded_rounds + above) // 2
    yield Finding(
        check=NAME,
        severity="warn",
        place=Place(text="brim", page="hat"),
        message=f"{fold.rounds} rounds fold on the {above} between the worn edge and the crown, which are too few",
        remedy=f"fold {most} rounds or fewer" if most else "let nothing fold",
    )
