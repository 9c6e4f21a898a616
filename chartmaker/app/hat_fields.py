"""The settings of a design that the hat page shows: where each stands, what it is called, and what it may be."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any

from chartmaker.model.edits import ReplaceSetting
from chartmaker.model.hat import CAST_ON_METHODS, FINISH_METHODS, SHAPES

if TYPE_CHECKING:
    from chartmaker.model.design import Design
    from chartmaker.model.edits import Edit

LETTERS = tuple("ABCDEFGHIJKLMNOPQRSTUVWXYZ")


@dataclass(frozen=True, slots=True)
class Field:
    """One setting."""

    path: tuple[str, ...]
    """Attributes from the design down to the value."""
    label: str
    choices: tuple[str, ...] = ()
    """Words to choose from; none for a number or a text."""
    lowest: float = 0.0
    highest: float = 0.0
    step: float = 0.0
    """Of a number; 0 for a text."""
    is_whole: bool = False
    unit: str = ""
    hint: str = ""

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
        after = _with(getattr(design, top), self.path[1:], value) if len(self.path) > 1 else value
        edit = ReplaceSetting(top, getattr(design, top), after, f"Change {self.label}")
        edit.applied_to(design)
        return edit


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
            Field(("hat", "head_cm"), "head", lowest=20, highest=90, step=0.5, unit=" cm"),
            Field(
                ("hat", "ease_percent"),
                "ease",
                lowest=-40,
                highest=40,
                step=1,
                unit=" %",
                hint="Negative is smaller than the head, which a stranded hat needs to stay on.",
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
            Field(("gauge", "stitches_per_10cm"), "stitches in 10 cm", lowest=5, highest=100, step=0.5),
            Field(("gauge", "rounds_per_10cm"), "rounds in 10 cm", lowest=5, highest=100, step=0.5),
            Field(
                ("metres_per_100g",),
                "grist",
                lowest=10,
                highest=5000,
                step=5,
                unit=" m in 100 g",
                hint="Unless a lot's own yarn says otherwise.",
            ),
        ),
    ),
    (
        "Allowances",
        (
            Field(("allowances", "tail_cm"), "each tail", lowest=0, highest=200, step=1, unit=" cm"),
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
            Field(("limits", "float_cm"), "longest float", lowest=0.1, highest=50, step=0.1, unit=" cm"),
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
