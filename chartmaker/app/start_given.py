"""What stands in the dialog for a new hat, as values: made a hat, or told beside its field where it cannot be."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from functools import partial
from typing import TYPE_CHECKING, Any

from chartmaker.knit.answers import Answers, defaults_for, sources_for
from chartmaker.knit.brims import Brim
from chartmaker.knit.depth import depth_of
from chartmaker.knit.starter import started
from chartmaker.model.gauge import gauge_counted
from chartmaker.model.units import reason

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Mapping

    from chartmaker.model.design import Design
    from chartmaker.model.palette import Palette

BY_SHAPE = (
    "depth_cm",
    "brim_depth_cm",
    "widen_percent",
    "widen_rounds",
    "taper_decreases",
    "profile",
    "sections",
    "decrease",
)
"""What the knitter's own answer to one shape says nothing about for another."""

OF_THE_CROWN = ("profile", "sections", "decrease")


@dataclass(frozen=True, slots=True)
class Given:
    """Every answer, as it was typed or chosen."""

    shape: str = "cap"
    head_cm: float = 56.0
    size: str = ""
    """The name of the size that the head is of; "" where it was measured."""
    stitches: float = 30.0
    stitches_over_cm: float = 10.0
    rounds: float = 34.0
    rounds_over_cm: float = 10.0
    metres_per_100g: float = 420.0
    brim: str = Brim().kind
    title: str = ""
    own: Mapping[str, Any] = field(default_factory=dict)
    """What the knitter answered in the place of a default, by its name; a shape's own is "shape/name"."""

    def key(self, name: str) -> str:
        """Give the name under which an own answer stands for the shape that is chosen."""
        return f"{self.shape}/{name}" if name in BY_SHAPE else name

    def is_own(self, name: str) -> bool:
        """Tell whether the knitter's own answer stands there."""
        return self.key(name) in self.own


@dataclass(frozen=True, slots=True)
class Outcome:
    """What comes of it."""

    design: Design | None
    """The hat; None where there is none."""
    usual: Mapping[str, Any]
    """What is answered where the knitter gives no answer of her own, by the name of the field."""
    sources: Mapping[str, str]
    """What that rests on."""
    troubles: Mapping[str, str]
    """A sentence for each field that cannot be; "" stands for what is no field's alone."""


def outcome_of(given: Given, palette: Palette | None = None) -> Outcome:
    """Make the hat, as far as the answers allow; its letters are lots of the palette, where there is one."""
    troubles: dict[str, str] = {}

    def tried(name: str, make: Callable[[], Any]) -> Any:
        try:
            return make()
        except ValueError as refusal:
            troubles[name] = reason(refusal)
            return None

    across = tried("stitches", lambda: _gauge(given, rounds=False))
    up = tried("rounds", lambda: _gauge(given, stitches=False))
    head = tried("head_cm", lambda: replace(Answers(), head_cm=given.head_cm).head_cm)
    gauge = replace(up or Answers().gauge, stitches_per_10cm=(across or Answers().gauge).stitches_per_10cm)
    try:
        usual = defaults_for(shape=given.shape, head_cm=head or Answers().head_cm, gauge=gauge)
    except ValueError as refusal:
        return Outcome(None, {}, {}, troubles or {"": reason(refusal)})
    answers = usual
    for name, answer in _answers(given):
        taken = tried(name, partial(answer, answers))
        answers = taken or answers
    design = None
    if not troubles:
        design = tried("", lambda: started(answers, palette))
        if "" in troubles:
            troubles[_culprit(given, usual)] = troubles.pop("")
    shown = usual_by_field(usual)
    if design is not None and not given.is_own("depth_cm"):
        shown["depth_cm"] = round(depth_of(design).cm, 1)  # what is usual gives way to brim and crown
    return Outcome(design, shown, {one.field: one.source for one in sources_for(given.shape)}, troubles)


def _gauge(given: Given, *, stitches: bool = True, rounds: bool = True) -> Any:
    usual = Answers().gauge
    return gauge_counted(
        stitches=given.stitches if stitches else usual.stitches_per_10cm,
        width_cm=given.stitches_over_cm if stitches else 10,
        rounds=given.rounds if rounds else usual.rounds_per_10cm,
        height_cm=given.rounds_over_cm if rounds else 10,
    )


def _answers(given: Given) -> Iterator[tuple[str, Callable[[Answers], Answers]]]:
    """Give, field by field, what puts an answer among the others; it raises ValueError where it cannot be."""
    yield "metres_per_100g", lambda answers: replace(answers, metres_per_100g=given.metres_per_100g)
    yield "brim", lambda answers: replace(answers, brim=replace(answers.brim, kind=given.brim))
    yield "title", lambda answers: replace(answers, title=given.title)
    for name in usual_by_field(Answers()):
        if given.is_own(name):
            value = given.own[given.key(name)]
            yield name, partial(_with, name=name, value=value)


def _with(answers: Answers, *, name: str, value: Any) -> Answers:
    if name == "brim_depth_cm":
        return replace(answers, brim=Brim(answers.brim.kind, value))
    if name in OF_THE_CROWN:
        return replace(answers, crown=replace(answers.crown, **{name: value}))
    if name == "has_tassel":
        return replace(answers, trims=answers.trims if value else ())
    return replace(answers, **{name: value})


def usual_by_field(answers: Answers) -> dict[str, Any]:
    """Give what stands under More, by the names of the fields there."""
    return {
        "ease_percent": answers.ease_percent,
        "depth_cm": answers.depth_cm,
        "brim_depth_cm": answers.brim.depth_cm,
        "widen_percent": answers.widen_percent,
        "widen_rounds": answers.widen_rounds,
        "taper_decreases": answers.taper_decreases,
        "has_tassel": bool(answers.trims),
        **{name: getattr(answers.crown, name) for name in OF_THE_CROWN},
        "reserve_percent": answers.reserve_percent,
    }


def _culprit(given: Given, usual: Answers) -> str:
    """Give the field but for which the hat could be made; "" where no single one is it."""
    for name, _ in _answers(given):
        others = usual
        for other, answer in _answers(given):
            if other != name:
                others = answer(others)
        try:
            started(others)
        except ValueError:
            continue
        return name
    return ""
