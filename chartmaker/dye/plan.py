"""From yarn that is short to baths: how much fibre each load takes, and what goes into the pot."""

from collections import defaultdict
from dataclasses import dataclass

from chartmaker.model.palette import Bath, Palette


@dataclass(frozen=True, slots=True)
class Load:
    """One load of fibre through a bath."""

    load: int
    """1 is the first load, 2 the first exhaust."""
    lot: str
    """Id of the lot that it repeats; empty where the load only leads to the next."""
    short_g: float
    """What the design needs of it."""
    fibre_g: float
    """Dry fibre to put in."""


@dataclass(frozen=True, slots=True)
class Portion:
    """Something weighed into a bath."""

    name: str
    grams: float


@dataclass(frozen=True, slots=True)
class BathPlan:
    """A bath to run: its recipe scaled to what is short."""

    bath: Bath
    loads: tuple[Load, ...]

    @property
    def fibre_g(self) -> float:
        """All fibre of all loads; they share one mordanting."""
        return sum(load.fibre_g for load in self.loads)

    @property
    def heaviest_g(self) -> float:
        """The heaviest load: what the liquor must cover."""
        return max(load.fibre_g for load in self.loads)

    @property
    def dyestuff_g(self) -> float:
        """Dyestuff, once for all loads: the recipe's ratio to the first load; exhausts use what that leaves."""
        return self.bath.ratio * self.loads[0].fibre_g

    @property
    def mordants(self) -> tuple[Portion, ...]:
        """Mordants for all fibre, by % WOF."""
        return tuple(Portion(item.name, item.percent_wof / 100 * self.fibre_g) for item in self.bath.mordants)

    @property
    def assists(self) -> tuple[Portion, ...]:
        """What else goes into the liquor, by grams to 100 g of the first load."""
        return tuple(Portion(item.name, item.grams / 100 * self.loads[0].fibre_g) for item in self.bath.assists)

    @property
    def water_l(self) -> float:
        """Liquor for the heaviest load; it serves all loads in turn."""
        return self.bath.liquor_l_per_100g / 100 * self.heaviest_g


def plan_baths(palette: Palette, short_g: dict[str, float]) -> tuple[BathPlan, ...]:
    """Plan the baths that dye what is short, in the palette's order of baths.

    Loads of one bath go together, from the first to the last that is needed, all of the weight of the heaviest: an
    exhaust comes out as it did only where the loads before it took as much, so a load that nothing is short of is
    dyed too and goes to stock.

    Args:
        palette: where the lots' baths are found.
        short_g: grams that are short, by id of the lot; lots without a bath cannot be planned for and are passed over.
    """
    wanted: dict[str, dict[int, list[tuple[str, float]]]] = defaultdict(lambda: defaultdict(list))
    for lot_id, grams in short_g.items():
        lot = palette.lot(lot_id)
        if grams > 0 and lot and lot.source and palette.bath(lot.source[0]):
            bath_id, load = lot.source
            wanted[bath_id][load].append((lot_id, grams))
    return tuple(BathPlan(bath, _loads(palette, bath, wanted[bath.id])) for bath in palette.baths if bath.id in wanted)


def _loads(palette: Palette, bath: Bath, by_load: dict[int, list[tuple[str, float]]]) -> tuple[Load, ...]:
    heaviest = max(sum(grams for _, grams in short) for short in by_load.values())
    return tuple(
        Load(
            load=number,
            lot=by_load[number][0][0] if number in by_load else _lot_of(palette, bath.id, number),
            short_g=sum(grams for _, grams in by_load.get(number, ())),
            fibre_g=heaviest,
        )
        for number in range(1, max(by_load) + 1)
    )


def _lot_of(palette: Palette, bath_id: str, load: int) -> str:
    return next((lot.id for lot in palette.lots if lot.source == (bath_id, load)), "")
