"""The settings of a design that the hat page shows: where each stands, what it is called, and what it may be."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any, Literal

from chartmaker.model.bounds import MOST_ROUNDS
from chartmaker.model.edits import ReplaceSetting
from chartmaker.model.hat import CAST_ON_METHODS, FINISH_METHODS, FOLD_WAYS, SHAPES, Fold

if TYPE_CHECKING:
    from chartmaker.model.design import Design
    from chartmaker.model.edits import Edit
    from chartmaker.model.hat import Hat

Kind = Literal["", "length", "gauge", "grist"]
ROLLED_ROUNDS = 6
"""Rounds that an edge of plain knitting rolls up, about 2 cm: common practice, no source."""
LETTERS = tuple("ABCDEFGHIJKLMNOPQRSTUVWXYZ")


@dataclass(frozen=True, slots=True)
class Field:
    """One setting."""

    path: tuple[str, ...]
    """Attributes from the design down to the value."""
    label: str
    choices: tuple[str, ...] = ()
    """Values to choose from; none for a number or a text."""
    words: tuple[str, ...] = ()
    """What the choices are called, where that is not what they are."""
    lowest: float = 0.0
    highest: float = 0.0
    step: float = 0.0
    """Of a number; 0 for a text."""
    is_whole: bool = False
    unit: str = ""
    """Written behind a number that is the same in all units …"""
    kind: Kind = ""
    """… and of what kind one is that is not."""
    hint: str = ""

    @property
    def spoken_choices(self) -> tuple[str, ...]:
        """What the choices are called."""
        return self.words or self.choices

    @property
    def is_number(self) -> bool:
        """Whether it is a number."""
        return self.step > 0

    def of(self, design: Design) -> Any:
        """Give its value."""
        value: Any = design
        for name in self.path:
            value = getattr(value, name)
        return value

    def edit(self, design: Design, value: Any) -> Edit | None:
        """Make the edit that sets it, None where it is so already.

        Raises ValueError, with a sentence, for a value that the design's rules refuse.
        """
        if self.of(design) == value:
            return None
        top = self.path[0]
        edit = ReplaceSetting(top, getattr(design, top), self.after(design, value), f"Change {self.label}")
        edit.applied_to(design)
        return edit

    def after(self, design: Design, value: Any) -> Any:
        """Give what the first attribute of the path is to be."""
        return _with(getattr(design, self.path[0]), self.path[1:], value) if len(self.path) > 1 else value


class OptionalField(Field):
    """A number that may be left to a rule: None where it is."""


class FoldWayField(Field):
    """How the brim folds, "" where it does not."""

    def of(self, design: Design) -> str:
        """Give the way, or ""."""
        return design.hat.fold.way if design.hat.fold else ""

    def after(self, design: Design, value: str) -> Hat:
        """Fold as many rounds as before; at first half the brim, or what a small roll takes."""
        fold = design.hat.fold
        rounds = fold.rounds if fold else usual_fold(design, value)
        return replace(design.hat, fold=Fold(value, rounds) if value else None)


class FoldRoundsField(Field):
    """How many rounds lie double."""

    def of(self, design: Design) -> int:
        """Give the rounds, 0 where nothing folds."""
        return design.hat.fold.rounds if design.hat.fold else 0

    def after(self, design: Design, value: int) -> Hat:
        """Change the rounds of the fold that there is; none is made."""
        fold = design.hat.fold
        return replace(design.hat, fold=replace(fold, rounds=value) if fold else None)


def usual_fold(design: Design, way: str) -> int:
    """Give the rounds that a brim folds over at first: half of it, so that it just covers itself."""
    from chartmaker.knit.depth import depth_of

    if way == "roll":
        return ROLLED_ROUNDS
    brim = depth_of(replace(design, hat=replace(design.hat, fold=None))).part("brim").rounds
    return max(1, (brim or len(design.bands[0].rounds)) // 2)


def depth_unasked(design: Design) -> tuple[float, bool]:
    """Give the depth in cm of a hat that sets none, and whether head and shape ask for it.

    Of a hat that may be any deeper it is its own.
    """
    from chartmaker.knit.depth import depth_of

    depth = depth_of(replace(design, hat=replace(design.hat, depth_cm=None)))
    if depth.wanted.highest_cm is None and depth.has_crown and not depth.off_cm:
        return depth.cm, False
    return depth.wanted.wanted_cm, True


def _with(owner: Any, path: tuple[str, ...], value: Any) -> Any:
    if len(path) > 1:
        value = _with(getattr(owner, path[0]), path[1:], value)
    return replace(owner, **{path[0]: value})


GROUPS: tuple[tuple[str, tuple[Field, ...]], ...] = (
    (
        "Hat",
        (
            Field(("title",), "title"),
            Field(("hat", "shape"), "shape", choices=SHAPES),
            Field(("hat", "head_cm"), "head", lowest=20, highest=90, step=0.5, kind="length"),
            Field(
                ("hat", "ease_percent"),
                "ease",
                lowest=-40,
                highest=40,
                step=1,
                unit=" %",
                hint="Negative is smaller than the head, which a stranded hat needs to stay on.",
            ),
            OptionalField(
                ("hat", "depth_cm"),
                "depth",
                lowest=5,
                highest=150,
                step=0.5,
                kind="length",
                hint="From the worn edge along the fabric to the middle of the top. Empty, head and shape say it.",
            ),
            FoldWayField(
                ("hat", "fold"),
                "brim",
                choices=("", *FOLD_WAYS),
                words=("not folded", "turned up", "hem inside", "rolls by itself"),
                hint="The first rounds, laid double when the hat is worn.",
            ),
            FoldRoundsField(
                ("hat", "fold", "rounds"),
                "rounds that fold",
                lowest=1,
                highest=MOST_ROUNDS,
                step=1,
                is_whole=True,
                unit=" rounds",
                hint="From the cast-on edge; the worn edge is above them.",
            ),
            Field(("hat", "cast_on", "letter"), "cast-on letter", choices=LETTERS),
            Field(("hat", "cast_on", "method"), "cast-on method", choices=CAST_ON_METHODS),
            Field(("hat", "finish", "letter"), "finishing letter", choices=LETTERS),
            Field(("hat", "finish", "method"), "finishing method", choices=FINISH_METHODS),
        ),
    ),
    (
        "Gauge and yarn",
        (
            Field(("gauge", "stitches_per_10cm"), "stitch gauge", lowest=5, highest=100, step=0.5, kind="gauge"),
            Field(("gauge", "rounds_per_10cm"), "round gauge", lowest=5, highest=100, step=0.5, kind="gauge"),
            Field(
                ("metres_per_100g",),
                "grist",
                lowest=10,
                highest=5000,
                step=5,
                kind="grist",
                hint="Unless a lot's own yarn says otherwise.",
            ),
        ),
    ),
    (
        "Allowances",
        (
            Field(("allowances", "tail_cm"), "each tail", lowest=0, highest=200, step=1, kind="length"),
            Field(("allowances", "float_slack_percent"), "slack of floats", lowest=0, highest=100, step=1, unit=" %"),
            Field(
                ("allowances", "carry_up_rounds"),
                "carry up at most",
                lowest=0,
                highest=600,
                step=1,
                is_whole=True,
                unit=" rounds",
                hint="A letter idle for longer is cut and joined anew.",
            ),
            Field(("allowances", "reserve_percent"), "reserve", lowest=0, highest=200, step=1, unit=" %"),
        ),
    ),
    (
        "Limits",
        (
            Field(("limits", "float_cm"), "longest float", lowest=0.1, highest=50, step=0.1, kind="length"),
            Field(
                ("limits", "value_clear"),
                "clear from",
                lowest=0,
                highest=100,
                step=1,
                hint="Difference in L*, CIE 1976; 20 is two Munsell value steps. Common practice, no source.",
            ),
            Field(
                ("limits", "value_soft"),
                "soft from",
                lowest=0,
                highest=100,
                step=1,
                hint="Below this difference in L* a pair is lost.",
            ),
        ),
    ),
)
"""Headings and fields in the order of the page; notes stand apart, since they take a whole box."""
NOTES = Field(("notes",), "notes")
