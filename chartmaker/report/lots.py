"""What the list of lots tells of each, gathered once for JSON and for text."""

from dataclasses import dataclass

from chartmaker.dye.predicted import shades_in
from chartmaker.model.palette import Lot, Palette
from chartmaker.model.settings import Viewing
from chartmaker.shade.lights import Inconstancy, inconstancies_of_all
from chartmaker.shade.lot_shade import LotShade
from chartmaker.shade.trust import LotTrust, trusts_of
from chartmaker.shade.words import ShadeWords, words_of


@dataclass(frozen=True, slots=True, kw_only=True)
class ListedLot:
    """A lot, its shade, and how far that can be trusted."""

    lot: Lot
    shade: LotShade | None
    """None where it has no reading and cannot be predicted."""
    words: ShadeWords | None
    trust: LotTrust | None
    inconstancies: tuple[Inconstancy, ...]
    """One for each other light, without a figure where the lot has no spectra."""

    @property
    def least_constant(self) -> tuple[float, str] | None:
        """The largest change by another light (CIEDE2000) and that light; None where it cannot be known."""
        known = [(item.ciede2000, item.illuminant) for item in self.inconstancies if item.ciede2000 is not None]
        return max(known) if known else None


def listed(palette: Palette, viewing: Viewing) -> tuple[ListedLot, ...]:
    """Gather what is known of a palette's lots, in their order; planned ones have the shade that it foretells."""
    lots = palette.lots
    columns = (lots, shades_in(palette, viewing), trusts_of(lots, viewing), inconstancies_of_all(lots, viewing))
    return tuple(
        ListedLot(
            lot=lot,
            shade=shade,
            words=words_of(shade.lab) if shade else None,
            trust=trust,
            inconstancies=inconstancies,
        )
        for lot, shade, trust, inconstancies in zip(*columns, strict=True)
    )
