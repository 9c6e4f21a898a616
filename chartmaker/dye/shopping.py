"""What is to be gathered, bought or wound for all baths of a plan."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from chartmaker.dye.cautions import cautions_at, cautions_of
from chartmaker.dye.fibre import skeins_for
from chartmaker.dye.mordanting import Mordanting
from chartmaker.dye.plan import BathPlan, Load, Portion
from chartmaker.dye.supply import Supply
from chartmaker.model.palette import Palette

NO_YARN = "undyed yarn, base not written down"


@dataclass(frozen=True, slots=True, kw_only=True)
class ShoppingItem:
    """One thing on the list."""

    kind: str
    """`yarn`, `dyestuff`, `mordant` or `assist`."""
    name: str
    needed_g: float
    at_hand_g: float | None
    """None where nobody keeps count of it."""
    skeins: int = 0
    """Of undyed yarn, for what is missing of it."""
    cautions: tuple[str, ...] = ()

    @property
    def missing_g(self) -> float:
        """What is to be got; all of it where nobody keeps count."""
        return max(0.0, self.needed_g - (self.at_hand_g or 0.0))


def shopping_list(
    palette: Palette, plans: Sequence[BathPlan], mordantings: Sequence[Mordanting], supplies: Sequence[Supply]
) -> tuple[ShoppingItem, ...]:
    """Give yarn by base, dyestuffs, mordants and assists, each once, in that order."""
    return (
        *_yarns(palette, plans),
        *_dyestuffs(supplies),
        *_weighed("mordant", (portion for each in mordantings for portion in each.portions)),
        *_weighed("assist", (portion for plan in plans for portion in plan.assists)),
    )


def _yarns(palette: Palette, plans: Sequence[BathPlan]) -> Iterator[ShoppingItem]:
    grams: dict[str, float] = {}
    for plan in plans:
        for load in plan.loads:
            for base, share in _bases(palette, load):
                grams[base] = grams.get(base, 0.0) + share
    for yarn_id, fibre in grams.items():
        yarn = palette.yarn(yarn_id)
        there = palette.undyed_g(yarn_id) if yarn else None
        yield ShoppingItem(
            kind="yarn",
            name=yarn.name if yarn else NO_YARN,
            needed_g=fibre,
            at_hand_g=there,
            skeins=skeins_for(max(0.0, fibre - (there or 0.0)), palette.dyeing),
        )


def _bases(palette: Palette, load: Load) -> Iterator[tuple[str, float]]:
    """Share a load among the bases of its lots, by what each is short."""
    for lot_id, grams in load.lots:
        lot = palette.lot(lot_id)
        yield (lot.yarn if lot and lot.yarn else load.yarn), load.fibre_g * grams / load.short_g
    if not load.lots:
        yield load.yarn, load.fibre_g


def _dyestuffs(supplies: Sequence[Supply]) -> Iterator[ShoppingItem]:
    """Add up what the baths need of each dyestuff; the first finds all of it on the shelf."""
    found: dict[tuple[str, str, str], tuple[float, float]] = {}
    for each in supplies:
        key = each.dyestuff, each.part, each.state
        needed, at_hand = found.get(key, (0.0, each.at_hand_g))
        found[key] = needed + each.needed_g, at_hand
    gathering = tuple(each.short for each in cautions_at("gathering"))
    for (name, part, state), (needed, at_hand) in found.items():
        yield ShoppingItem(
            kind="dyestuff",
            name=f"{' '.join(filter(None, (name, part)))} ({state})",
            needed_g=needed,
            at_hand_g=at_hand,
            cautions=gathering,
        )


def _weighed(kind: str, portions: Iterable[Portion]) -> Iterator[ShoppingItem]:
    found: dict[str, tuple[str, float]] = {}
    for portion in portions:
        name, grams = portion.name, portion.grams
        first, sofar = found.get(name.casefold(), (name, 0.0))
        found[name.casefold()] = first, sofar + grams
    for name, grams in found.values():
        yield ShoppingItem(
            kind=kind,
            name=name,
            needed_g=grams,
            at_hand_g=None,
            cautions=tuple(each.short for each in cautions_of(name)),
        )
