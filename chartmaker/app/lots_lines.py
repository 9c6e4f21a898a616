"""The lots as the page lists them: each with its shade, its bath and its letters, put in order, searched, and told."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from chartmaker.app.words import number, tr
from chartmaker.dye.predicted import shades_in
from chartmaker.model.units import METRIC, Units
from chartmaker.shade.lab import lch_of_lab
from chartmaker.shade.words import CHROMA_BOUNDS, words_of

if TYPE_CHECKING:
    from collections.abc import Iterable

    from chartmaker.appraisal import Appraisal
    from chartmaker.model.design import Design
    from chartmaker.model.palette import Bath, Lot, Palette, Yarn
    from chartmaker.shade.lot_shade import LotShade

ORDERS = ("value", "hue", "dyestuff", "date")
"""What the page can be ordered by."""
ORDER_WORDS = {"value": "Value", "hue": "Hue", "dyestuff": "Dyestuff", "date": "Date"}


@dataclass(frozen=True, slots=True)
class LotLine:
    """One lot with what belongs to it."""

    lot: Lot
    shade: LotShade | None
    bath: Bath | None
    yarn: Yarn | None
    letters: str
    """The letters that it is in the colourway in use."""
    units: Units = METRIC
    """What it is told in."""

    @property
    def on_hand(self) -> str:
        """Its weight with the unit."""
        return self.units.weight.rough(self.lot.on_hand_g)

    @property
    def load(self) -> int:
        """Which load of its bath it is, or is to be."""
        source = self.lot.source
        return source[1] if source else 0

    @property
    def dyestuff(self) -> str:
        """The dyestuff and its part; empty where no bath is known."""
        return f"{self.bath.dyestuff} {self.bath.part}".strip() if self.bath else ""

    @property
    def is_predicted(self) -> bool:
        """Whether its shade was computed for a lot that is not dyed yet."""
        return self.shade is not None and self.shade.rests_on == "predicted"

    @property
    def basis(self) -> str:
        """What its shade rests on, with the readings where there are some."""
        shade = self.shade
        if shade is None:
            return tr("planned, not dyed") if self.lot.planned else tr("no reading")
        return tr(shade.rests_on) if self.is_predicted else f"{tr(shade.rests_on)}, {shade.readings} ×"

    @property
    def description(self) -> str:
        """All of it in words, as a screen reader tells it after the name."""
        parts = [tr("no shade yet, {0}").format(self.basis)]
        if self.shade:
            parts = [tr("value {0}").format(number(self.shade.value)), shade_words(self.shade), self.basis]
            if self.shade.is_out_of_gamut:
                parts.append(tr("beyond what the screen shows"))
        parts.append(self.on_hand)
        if self.letters:
            parts.append(tr("letter {0}").format(" ".join(self.letters)))
        return ", ".join(parts)


def shade_words(shade: LotShade) -> str:
    """Tell a shade as a dyer would, in the language of the window."""
    words = words_of(shade.lab)
    before = [part for part in words.text.removesuffix(words.hue).strip().split(", ") if part]
    return f"{', '.join(tr(part) for part in before)} {tr(words.hue)}".strip()


def lot_lines(appraisal: Appraisal, palette: Palette | None, units: Units = METRIC) -> tuple[LotLine, ...]:
    """Give every lot at hand once, the palette's own rather than the design's copy, since it is worked on here."""
    design = appraisal.design
    at_hand = lots_at_hand(design, palette)
    letters: dict[str, str] = {}
    for letter, lot_id in design.colourway.lots:
        letters[lot_id] = letters.get(lot_id, "") + letter
    lines = []
    for lot, shade in zip(at_hand.lots, shades_in(at_hand, design.viewing), strict=True):
        bath = at_hand.bath(lot.source[0]) if lot.source else None
        lines.append(LotLine(lot, shade, bath, at_hand.yarn(lot.yarn), letters.get(lot.id, ""), units))
    return tuple(lines)


def lots_at_hand(design: Design, palette: Palette | None) -> Palette:
    """Give the palette with what only the design has behind it, as one palette."""
    return palette.followed_by(design.palette) if palette else design.palette


def in_order(lines: Iterable[LotLine], order: str) -> list[LotLine]:
    """Put lines in one of `ORDERS`: by value, round the hues, by bath and load, or newest first."""
    keys = {"value": _by_value, "hue": _by_hue, "dyestuff": _by_dyestuff, "date": _by_date}
    return sorted(lines, key=keys.get(order, _by_value))


def matching(lines: Iterable[LotLine], text: str) -> list[LotLine]:
    """Keep the lines in whose name, id, dyestuff, part, bath, letters or notes every word of a text stands."""
    words = text.casefold().split()
    return [line for line in lines if all(word in _searched(line) for word in words)]


def _searched(line: LotLine) -> str:
    bath = line.bath
    parts = [line.lot.name, line.lot.id, getattr(line.lot, "notes", ""), line.basis]
    if bath:
        parts += [bath.id, bath.dyestuff, bath.part, bath.notes, *(mordant.name for mordant in bath.mordants)]
    return "\n".join(parts).casefold()


def _by_value(line: LotLine) -> tuple[float, str]:
    return -line.shade.value if line.shade else 1, line.lot.name.casefold()


def _by_hue(line: LotLine) -> tuple[int, float, str]:
    if line.shade is None:
        return 2, 0.0, line.lot.name.casefold()
    lightness, chroma, hue = lch_of_lab(line.shade.lab).tolist()
    is_grey = chroma < CHROMA_BOUNDS[0]
    return int(is_grey), -lightness if is_grey else hue, line.lot.name.casefold()


def _by_dyestuff(line: LotLine) -> tuple[bool, str, str, int, str]:
    bath = line.bath.id if line.bath else ""
    return not line.dyestuff, line.dyestuff.casefold(), bath, line.load, line.lot.name.casefold()


def _by_date(line: LotLine) -> tuple[int, str]:
    return -line.lot.dyed_on.toordinal() if line.lot.dyed_on else 1, line.lot.name.casefold()
