"""Which lots come from one pot: first bath and exhausts in the order of their strength.

Lots of one bath follow one another by their loads. Baths of one dyestuff that were run alike but for the ratio of
dyestuff to fibre become one chain: its pot is the strongest of them, and a lot of a weaker one comes from the exhaust
that is as strong. Strength is dye on the fibre; it is taken as proportional to the ratio, and each load keeps the share
q of the one before (`ladder`: fitted to the lots measured, or assumed).
"""

import math
from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from chartmaker.dye.ladder import ASSUMED_SHARE, Ladder, ladder_of
from chartmaker.model.bath_record import MOST_LOADS
from chartmaker.model.palette import Bath, Palette

NEAR_ENOUGH = 1.2
"""Strengths within this factor come from one load: common practice, no source."""
LIKE_C, LIKE_PH = 5.0, 0.5
"""Heat and pH within which two baths count as run alike: common practice, no source."""

Wanted = Mapping[int, tuple[tuple[str, float], ...]]
"""By load: the lots that are short and their grams."""


@dataclass(frozen=True, slots=True)
class Joined:
    """A lot of another bath that this chain dyes too."""

    lot: str
    bath: str
    """Where the lot came from, or was to come from."""
    load_there: int
    load: int
    """The load of this chain that comes nearest."""
    times_as_strong: float
    """Dye of that load as a multiple of the lot's own."""


@dataclass(frozen=True, slots=True)
class Chain:
    """One pot, and what is wanted of each of its loads."""

    bath: Bath
    wanted: Wanted
    joined: tuple[Joined, ...] = ()


@dataclass(frozen=True, slots=True)
class LoadStrength:
    """How much dye a load takes up, as a multiple of the first load's."""

    load: int
    low: float
    likely: float
    high: float
    is_assumed: bool
    """Whether nothing was measured that tells the share a load leaves."""


def chains(palette: Palette, short_g: Mapping[str, float]) -> tuple[Chain, ...]:
    """Put what is short into chains, in the palette's order of baths; lots without a bath are passed over."""
    wanted: dict[str, dict[int, list[tuple[str, float]]]] = defaultdict(lambda: defaultdict(list))
    for lot_id, grams in short_g.items():
        lot = palette.lot(lot_id)
        if grams > 0 and lot and lot.source and palette.bath(lot.source[0]):
            bath_id, load = lot.source
            wanted[bath_id][load].append((lot_id, grams))
    single = [
        Chain(bath, {load: tuple(lots) for load, lots in wanted[bath.id].items()})
        for bath in palette.baths
        if bath.id in wanted
    ]
    return _gathered(palette, single)


def share_of(palette: Palette, bath: Bath) -> float:
    """Give q, what a load of this bath leaves to the next."""
    ladder = _known_ladder(palette, bath)
    return ladder.share if ladder else ASSUMED_SHARE


def strengths(palette: Palette, bath: Bath, loads: Iterable[int]) -> tuple[LoadStrength, ...]:
    """Give the strength of these loads of a bath: measured on its lots, on those of one run alike, or assumed."""
    ladder = _known_ladder(palette, bath)
    if ladder is None:
        shares = ((load, ASSUMED_SHARE ** (load - 1)) for load in loads)
        return tuple(LoadStrength(load, share, share, share, True) for load, share in shares)
    found = ((load, *ladder.strength(load)) for load in loads)
    return tuple(LoadStrength(load, low, likely, high, ladder.is_assumed) for load, low, likely, high in found)


def are_run_alike(first: Bath, second: Bath) -> bool:
    """Tell whether two baths differ in nothing that moves a shade but the ratio of dyestuff to fibre."""
    return _recipe(first) == _recipe(second) and all(
        _is_near(getattr(first, name), getattr(second, name), reach)
        for name, reach in (("hottest_c", LIKE_C), ("ph_start", LIKE_PH))
    )


def _known_ladder(palette: Palette, bath: Bath) -> Ladder | None:
    """Give the ladder of a bath, or of one that was run alike and whose share was fitted, not assumed."""
    own = ladder_of(palette, bath)
    if own is not None and not own.is_assumed:
        return own
    alike = (other for other in palette.baths if other.id != bath.id and are_run_alike(bath, other))
    fitted = (ladder for other in alike if (ladder := ladder_of(palette, other)) and not ladder.is_assumed)
    return next(fitted, own)


def _gathered(palette: Palette, single: list[Chain]) -> tuple[Chain, ...]:
    """Let each chain be taken into the strongest that is run alike, where its lots find a load there."""
    leading: list[Chain] = []
    for chain in sorted(single, key=lambda one: -one.bath.ratio):
        for place, lead in enumerate(leading):
            found = _taken_in(palette, lead, chain) if are_run_alike(lead.bath, chain.bath) else None
            if found:
                leading[place] = found
                break
        else:
            leading.append(chain)
    order = [bath.id for bath in palette.baths]
    return tuple(sorted(leading, key=lambda chain: order.index(chain.bath.id)))


def _taken_in(palette: Palette, lead: Chain, other: Chain) -> Chain | None:
    """Give the chain that dyes the lots of both; None where one of them would come out of another strength."""
    share, other_share = share_of(palette, lead.bath), share_of(palette, other.bath)
    ratio = other.bath.ratio / lead.bath.ratio if lead.bath.ratio else 0.0
    wanted = dict(lead.wanted)
    joined = list(lead.joined)
    for load, lots in other.wanted.items():
        strength = ratio * other_share ** (load - 1)
        if strength <= 0:
            return None
        here = min(range(1, MOST_LOADS + 1), key=lambda number: abs(math.log(share ** (number - 1) / strength)))
        off = share ** (here - 1) / strength
        if not 1 / NEAR_ENOUGH <= off <= NEAR_ENOUGH:
            return None
        wanted[here] = (*wanted.get(here, ()), *lots)
        joined += [Joined(lot, other.bath.id, load, here, off) for lot, _ in lots]
    return Chain(lead.bath, dict(sorted(wanted.items())), tuple(joined))


def _recipe(bath: Bath) -> tuple[object, ...]:
    return (
        bath.dyestuff.casefold(),
        bath.part.casefold(),
        bath.state,
        frozenset((each.name.casefold(), each.percent_wof) for each in bath.mordants),
        frozenset((each.name.casefold(), each.grams) for each in bath.assists),
    )


def _is_near(first: float | None, second: float | None, reach: float) -> bool:
    return first == second or (first is not None and second is not None and abs(first - second) <= reach)
