"""Edits that change which rounds a band has: a run of rounds, from `first` to `last`, is worked on as one.

All indices count within the band, 0 the first knitted; both ends belong to the run. Each raises ValueError, with a
sentence, for what cannot be: a band without rounds, a hat with too many, a round moved out of its band.
"""

from dataclasses import replace

from chartmaker.model.design import Design
from chartmaker.model.edits import ReplaceBands, with_bands
from chartmaker.model.round import Round


def insert_rounds(design: Design, *, band: int, first: int, last: int, above: bool) -> ReplaceBands | None:
    """Make the edit that adds as many plain rounds as the run has, above or below it, in its neighbour's letters.

    Above a round they have as many stitches as it; below it as many as it eats, so that its own count still meets.
    """
    rounds = design.bands[band].rounds
    count = last - first + 1
    neighbour = rounds[last] if above else rounds[first]
    stitches = len(neighbour) if above else neighbour.eaten or len(neighbour)
    at = last + 1 if above else first
    plain = (Round(neighbour.letters, bytes(stitches)),) * count
    return _with_rounds(design, band, (*rounds[:at], *plain, *rounds[at:]), _told("Insert", count))


def duplicate_rounds(design: Design, *, band: int, first: int, last: int) -> ReplaceBands | None:
    """Make the edit that works the run a second time, above itself."""
    rounds = design.bands[band].rounds
    copies = rounds[first : last + 1]
    text = _told("Duplicate", len(copies))
    return _with_rounds(design, band, (*rounds[: last + 1], *copies, *rounds[last + 1 :]), text)


def delete_rounds(design: Design, *, band: int, first: int, last: int) -> ReplaceBands | None:
    """Make the edit that takes the run out; a band keeps at least one round."""
    rounds = design.bands[band].rounds
    left = (*rounds[:first], *rounds[last + 1 :])
    if not left:
        raise ValueError("a band keeps at least one round; delete the band itself instead")
    return _with_rounds(design, band, left, _told("Delete", last - first + 1))


def move_rounds(design: Design, *, band: int, first: int, last: int, up: bool) -> ReplaceBands | None:
    """Make the edit that lets the run change places with the round above or below it, within its band."""
    rounds = design.bands[band].rounds
    name = design.bands[band].name
    run = rounds[first : last + 1]
    if up:
        if last + 1 == len(rounds):
            raise ValueError(f"the top of band {name!r} is reached; rounds move within their band")
        moved = (*rounds[:first], rounds[last + 1], *run, *rounds[last + 2 :])
    else:
        if not first:
            raise ValueError(f"the foot of band {name!r} is reached; rounds move within their band")
        moved = (*rounds[: first - 1], *run, rounds[first - 1], *rounds[last + 1 :])
    return _with_rounds(design, band, moved, _told("Move", len(run), " up" if up else " down"))


def _with_rounds(design: Design, band: int, rounds: tuple[Round, ...], text: str) -> ReplaceBands | None:
    changed = replace(design.bands[band], rounds=rounds)
    return with_bands(design, (*design.bands[:band], changed, *design.bands[band + 1 :]), text)


def _told(what: str, count: int, where: str = "") -> str:
    return f"{what} round{where}" if count == 1 else f"{what} {count} rounds{where}"
