"""What a change would do to the yarn: another size, another colourway, a band left out."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from chartmaker.knit.fit import Candidate, cast_on_edit, fit
from chartmaker.knit.yarn import Requirement, needs_of
from chartmaker.model.band import Band
from chartmaker.model.band_edits import delete_band
from chartmaker.model.design import Design
from chartmaker.model.edits import Edit, ReplaceSetting
from chartmaker.model.units import Measured

SIZE, COLOURWAY, WITHOUT_BAND = "size", "colourway", "without-band"


@dataclass(frozen=True, slots=True, kw_only=True)
class WhatIf:
    """One change that could be made."""

    kind: str
    """One of size, colourway, without-band."""
    text: str
    """As a choice in a list: "132 stitches, 47.1 cm round"."""
    edit: Edit


@dataclass(frozen=True, slots=True)
class LetterChange:
    """A letter's yarn now and then; None where the letter is not in use."""

    letter: str
    now: Requirement | None
    then: Requirement | None

    @property
    def likely_g(self) -> float:
        """How many grams more it would likely take; negative is less."""
        return (self.then.grams.likely if self.then else 0.0) - (self.now.grams.likely if self.now else 0.0)


def what_ifs(design: Design) -> tuple[WhatIf, ...]:
    """List the changes whose yarn can be compared: sizes that the bands allow, colourways, bands that can go."""
    return (*_sizes(design), *_colourways(design), *_without_bands(design))


def changed_yarn(design: Design, edit: Edit) -> tuple[LetterChange, ...]:
    """Compare what every letter takes before and after an edit, in alphabetical order."""
    now = {need.letter: need for need in needs_of(design)}
    then = {need.letter: need for need in needs_of(edit.applied_to(design))}
    return tuple(LetterChange(letter, now.get(letter), then.get(letter)) for letter in sorted(now | then))


def _sizes(design: Design) -> Iterator[WhatIf]:
    for candidate in sorted(fit(design).candidates, key=lambda one: one.stitches):
        edit = cast_on_edit(design, candidate.stitches)
        if edit:
            yield WhatIf(kind=SIZE, text=_size_words(candidate), edit=edit)


def _size_words(candidate: Candidate) -> str:
    return Measured(
        lambda units: f"{candidate.stitches} stitches, {units.length.told(candidate.circumference_cm)} round"
    )


def _colourways(design: Design) -> Iterator[WhatIf]:
    for number, colourway in enumerate(design.colourways):
        if number:
            order = (colourway, *design.colourways[:number], *design.colourways[number + 1 :])
            edit = ReplaceSetting("colourways", design.colourways, order, f"Use colourway {colourway.name}")
            yield WhatIf(kind=COLOURWAY, text=colourway.name, edit=edit)


def _without_bands(design: Design) -> Iterator[WhatIf]:
    """Offer to drop each band whose going leaves the counts of the others as well as they met before."""
    if len(design.bands) == 1:
        return
    names = [band.name for band in design.bands]
    for index, band in enumerate(design.bands):
        edit = delete_band(design, band=index) if _may_go(design.bands, index) else None
        if edit:
            place = f"band {index + 1}"
            name = band.name if names.count(band.name) == 1 else f"{band.name} ({place})"
            rounds = f"{len(band.rounds)} round{'s' if len(band.rounds) > 1 else ''}"
            yield WhatIf(kind=WITHOUT_BAND, text=f"{name if band.name else place}, {rounds}", edit=edit)


def _may_go(bands: Sequence[Band], index: int) -> bool:
    """Tell whether a band can go without a place more where counts do not meet."""
    lower = bands[index - 1] if index else None
    if index + 1 == len(bands) or _meets(bands[index + 1], lower):
        return True
    met_before = _meets(bands[index], lower) and _meets(bands[index + 1], bands[index])
    return not met_before or _breaks_inside(bands[index])


def _meets(band: Band, lower: Band | None) -> bool:
    """Tell whether a band's first round eats what the last of the one below holds; the hat's first is all plain."""
    if lower is None:
        return not band.rounds[0].is_shaped
    return band.eaten(0) == lower.stitches(len(lower.rounds) - 1)


def _breaks_inside(band: Band) -> bool:
    return any(line.eaten != len(below) for below, line in pairwise(band.rounds))
