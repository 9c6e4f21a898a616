"""Bands that a round which changes the count parts into groups: each is fitted for itself, and the round made anew.

A brim is often tighter or fuller than its body by such a round. Its shaping is spread over the count that it was made
for, so that it would keep other counts away; made anew it keeps none away.
"""

from collections.abc import Sequence
from dataclasses import replace

from chartmaker.knit.changing_band import changing_band
from chartmaker.knit.fit import Counts, allowed, bands_for, feet_of
from chartmaker.model.band import Band


def changes_the_count(band: Band) -> bool:
    """Tell whether a band is one plain round that is there to change the count."""
    line = band.rounds[0]
    return len(band.rounds) == 1 and line.is_shaped and len(line.letters_in_use) == 1 and line.eaten != len(line)


def is_grouped(bands: Sequence[Band]) -> bool:
    """Tell whether a round amid some bands changes their count."""
    return any(changes_the_count(band) for band in bands[1:-1])


def lowest_counts(bands: Sequence[Band]) -> Counts:
    """Give the counts that the bands below the first such round allow."""
    return allowed(feet_of(_groups(bands)[0]))


def bands_in_groups(bands: Sequence[Band], stitches: int) -> tuple[Band, ...]:
    """Give the bands for another count cast on, each group at the count nearest to its old share of the one below.

    Raises ValueError where a group allows no count near it.
    """
    lowest, *others = _groups(bands)
    made = list(bands_for(lowest, stitches))
    rounds = [band for band in bands[1:-1] if changes_the_count(band)]
    for change, group in zip(rounds, others, strict=True):
        line, below = change.rounds[0], made[-1].stitches(-1)
        above = _nearest(allowed(feet_of(_rooted(group))), below * len(line) / line.eaten)
        if above != below:
            anew = changing_band(below=below, above=above, letter=line.letters_in_use)
            made.append(replace(anew, name=change.name))
        made += bands_for(_rooted(group), above)
    return tuple(made)


def _groups(bands: Sequence[Band]) -> list[tuple[Band, ...]]:
    groups: list[list[Band]] = [[]]
    for place, band in enumerate(bands):
        if 0 < place < len(bands) - 1 and changes_the_count(band):
            groups.append([])
        else:
            groups[-1].append(band)
    return [tuple(group) for group in groups]


def _rooted(group: Sequence[Band]) -> Sequence[Band]:
    """Give a group whose first round is plain: only of such a one is what it has what it eats."""
    if not group or group[0].rounds[0].is_shaped:
        raise ValueError("the round that changes the count has a shaped round above it")
    return group


def _nearest(counts: Counts, wanted: float) -> int:
    near = [count for count in counts.all if 2 * count >= wanted and count <= 2 * wanted]
    if not near:
        raise ValueError(f"the bands above allow no count near {wanted:.0f} stitches")
    return min(near, key=lambda count: (abs(count - wanted), count))
