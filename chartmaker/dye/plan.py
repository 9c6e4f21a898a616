"""From yarn that is short to baths: how much fibre each load takes, and what goes into the pot."""

from dataclasses import dataclass

from chartmaker.dye.chains import Chain, Joined, chains
from chartmaker.dye.fibre import fibre_for, skeins_for
from chartmaker.model.dyeing import DyeingHabits
from chartmaker.model.palette import Bath, Palette


@dataclass(frozen=True, slots=True)
class Load:
    """One load of fibre through a bath."""

    load: int
    """1 is the first load, 2 the first exhaust."""
    lot: str
    """Id of the lot that it repeats; empty where the load only leads to the next."""
    short_g: float
    """What the designs need of it."""
    fibre_g: float
    """Dry fibre to weigh out and put in: what is short, a sample, scouring and handling losses, whole skeins."""
    habits: DyeingHabits
    """By which the fibre was worked out."""
    lots: tuple[tuple[str, float], ...] = ()
    """All lots that are short and come from this load, each with its grams."""
    yarn: str = ""
    """Id of the base that is dyed; empty where no lot of the bath names one."""

    @property
    def skeins(self) -> int:
        """Skeins of the habit's weight; 0 where fibre is weighed freely."""
        return skeins_for(self.fibre_g, self.habits)

    @property
    def losses_g(self) -> float:
        """What scouring and handling are taken to cost of the fibre."""
        return self.fibre_g * (1 - self.habits.kept)

    @property
    def comes_out_g(self) -> float:
        """Dyed yarn that is expected, the sample not in it."""
        return max(0.0, self.fibre_g - self.losses_g - self.habits.sample_g)

    @property
    def to_stock_g(self) -> float:
        """Dyed yarn beyond what is short."""
        return max(0.0, self.comes_out_g - self.short_g)


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
    joined: tuple[Joined, ...] = ()
    """Lots of other baths of the same dyeing that come from these loads too."""

    @property
    def is_going_on(self) -> bool:
        """Whether loads before these were recorded, so that the liquor is there already."""
        return self.loads[0].load > 1

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
        return 0.0 if self.is_going_on else self.bath.ratio * self.loads[0].fibre_g

    @property
    def mordants(self) -> tuple[Portion, ...]:
        """Mordants for all fibre, by % WOF."""
        return tuple(Portion(item.name, item.percent_wof / 100 * self.fibre_g) for item in self.bath.mordants)

    @property
    def assists(self) -> tuple[Portion, ...]:
        """What else goes into the liquor, by grams to 100 g of the first load."""
        if self.is_going_on:
            return ()
        return tuple(Portion(item.name, item.grams / 100 * self.loads[0].fibre_g) for item in self.bath.assists)

    @property
    def water_l(self) -> float:
        """Liquor for the heaviest load; it serves all loads in turn."""
        return self.bath.liquor_l_per_100g / 100 * self.heaviest_g

    @property
    def skein_l(self) -> float:
        """Liquor of one skein; 0 where fibre is weighed freely."""
        return self.bath.liquor_l_per_100g / 100 * self.loads[0].habits.skein_g

    @property
    def lots(self) -> frozenset[str]:
        """All lots that are short and that this bath dyes."""
        return frozenset(lot for load in self.loads for lot, _ in load.lots)


def plan_baths(palette: Palette, short_g: dict[str, float], habits: DyeingHabits | None = None) -> tuple[BathPlan, ...]:
    """Plan the baths that dye what is short, in the palette's order of baths.

    Loads of one bath go together, from the first to the last that is needed, all of the weight of the heaviest: an
    exhaust comes out as it did only where the loads before it took as much, so a load that nothing is short of is
    dyed too and goes to stock. Where loads of the bath are on record and only later ones are wanted, planned from that
    very liquor, it goes on with those.

    Args:
        palette: where the lots' baths are found.
        short_g: grams that are short, by id of the lot; lots without a bath cannot be planned for and are passed over.
        habits: by which fibre is weighed; the palette's own where left out.
    """
    weighed = palette.dyeing if habits is None else habits
    return tuple(
        BathPlan(chain.bath, _loads(palette, chain, weighed), chain.joined) for chain in chains(palette, short_g)
    )


def _loads(palette: Palette, chain: Chain, habits: DyeingHabits) -> tuple[Load, ...]:
    heaviest = max(sum(grams for _, grams in short) for short in chain.wanted.values())
    fibre = fibre_for(heaviest, habits)
    bases = [lot.yarn for lot_id in _named(chain) if (lot := palette.lot(lot_id)) and lot.yarn]
    found = []
    for number in range(_first(palette, chain), max(chain.wanted) + 1):
        short = chain.wanted.get(number, ())
        lot_id = short[0][0] if short else _lot_of(palette, chain.bath.id, number)
        lot = palette.lot(lot_id)
        found.append(
            Load(
                load=number,
                lot=lot_id,
                short_g=sum(grams for _, grams in short),
                fibre_g=fibre,
                habits=habits,
                lots=short,
                yarn=(lot.yarn if lot else None) or next(iter(bases), ""),
            )
        )
    return tuple(found)


def _first(palette: Palette, chain: Chain) -> int:
    """Give the load to begin with: the one after the last on record, if all that is wanted is planned after it."""
    record = chain.bath.record
    last = max((load.load for load in record.loads), default=0) if record else 0
    wanted = [palette.lot(lot_id) for lot_id in _named(chain)]
    is_planned = all(lot is not None and lot.planned is not None for lot in wanted)
    return last + 1 if is_planned and min(chain.wanted) > last else 1


def _named(chain: Chain) -> list[str]:
    return [lot_id for short in chain.wanted.values() for lot_id, _ in short]


def _lot_of(palette: Palette, bath_id: str, load: int) -> str:
    return next((lot.id for lot in palette.lots if lot.source == (bath_id, load)), "")
