"""Rounds added to a hat, or taken out, so that it gets the depth that is wanted.

Only plain rounds of one letter between brim and crown are worked more often or less often: a pattern is never cut.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import groupby

from chartmaker.knit.depth import Parts, parts_of, starts_of
from chartmaker.model.band import Band
from chartmaker.model.design import Design
from chartmaker.model.edits import ReplaceBands, with_bands
from chartmaker.model.round import Round


@dataclass(frozen=True, slots=True)
class Run:
    """Plain rounds of one letter, one above the other, within a band."""

    band: int
    first: int
    """Index in the band."""
    rounds: int
    is_rest: bool
    """Whether it stands between patterns by its band's name, so that it gives and takes before others do."""


REST_NAMES = ("rest", "plain", "before crown")
"""Names of bands that are there to keep others apart: those that new hats and plain rounds get."""


def add_or_take_rounds(design: Design, rounds: int) -> ReplaceBands | None:
    """Make the edit that adds plain rounds below the crown, or takes out as many where the number is negative.

    The longest plain run grows, or gives first, rests before others, which may be waiting for a motif; every run keeps
    a round, so that patterns stay apart. Where there is nothing plain to work again, a plain band is laid in below the
    crown.
    Raises ValueError, with a sentence, where the plain rounds don't suffice, or the hat would have too many.
    """
    if not rounds:
        return None
    runs = plain_runs(design)
    text = f"{'Add' if rounds > 0 else 'Take out'} {_counted(abs(rounds))}"
    if rounds < 0:
        return with_bands(design, tuple(_without(design, runs, -rounds)), text)
    if runs:
        longest = max(runs, key=lambda run: (run.is_rest, run.rounds, run.band, run.first))
        return with_bands(design, tuple(_with_more(design, longest, rounds)), text)
    return with_bands(design, tuple(_with_plain_band(design, rounds)), text)


def rounds_to_spare(design: Design) -> int:
    """Give how many plain rounds can be taken out between brim and crown."""
    return sum(run.rounds - 1 for run in plain_runs(design))


def plain_runs(design: Design) -> tuple[Run, ...]:
    """Give the runs of plain rounds between brim and crown; in a hat that is all brim below its crown, those of it."""
    parts = parts_of(design)
    if parts.body == parts.crown:
        return tuple(_last_of_brim(design, parts))
    placed = zip(starts_of(design.bands), design.bands, strict=True)
    return tuple(
        run for number, (start, band) in enumerate(placed) for run in _runs_in(band, number, start=start, parts=parts)
    )


def _runs_in(band: Band, number: int, *, start: int, parts: Parts) -> Iterator[Run]:
    """Walk the plain runs of a band that lie in the body."""
    inside = range(max(parts.body - start, 0), min(parts.crown - start, len(band.rounds)))
    for is_plain, group in groupby(inside, key=lambda index: _plain_letter(band.rounds[index])):
        indexes = list(group)
        if is_plain:
            yield Run(number, indexes[0], len(indexes), _is_rest(band))


def _plain_letter(line: Round) -> str:
    """Give the one letter that a round is worked in; empty for a pattern or for shaping."""
    letters = line.letters_in_use
    return letters if len(letters) == 1 and not line.is_shaped else ""


def _last_of_brim(design: Design, parts: Parts) -> Iterator[Run]:
    """Walk the run that a hat of rib alone grows and shrinks by: the top band of its brim, whatever its letters."""
    if parts.body == parts.worn or not parts.has_crown:
        return
    placed = [
        (number, start, band)
        for number, (start, band) in enumerate(zip(starts_of(design.bands), design.bands, strict=True))
        if start < parts.body
    ]
    number, start, band = placed[-1]
    last = parts.body - start - 1
    same = next((n for n in range(last, -1, -1) if band.rounds[n] != band.rounds[last]), -1) + 1
    first = max(same, parts.worn - start, 0)
    if not band.rounds[last].is_shaped:
        yield Run(number, first, last - first + 1, _is_rest(band))


def _with_more(design: Design, run: Run, rounds: int) -> Iterator[Band]:
    for number, band in enumerate(design.bands):
        if number != run.band:
            yield band
            continue
        place = run.first + run.rounds
        again = (band.rounds[place - 1],) * rounds
        yield replace(band, rounds=(*band.rounds[:place], *again, *band.rounds[place:]))


def _without(design: Design, runs: tuple[Run, ...], rounds: int) -> Iterator[Band]:
    left = [run.rounds for run in runs]
    spare = sum(left) - len(left)
    if spare < rounds:
        raise ValueError(
            f"{_counted(rounds)} should go, but only {spare} plain ones between brim and crown can: "
            "take rounds out of a pattern by hand, or set the depth that is wanted"
        )
    for _ in range(rounds):
        left[max(range(len(left)), key=lambda place: (runs[place].is_rest and left[place] > 1, left[place]))] -= 1
    gone = {
        (run.band, run.first + keeps + number)
        for run, keeps in zip(runs, left, strict=True)
        for number in range(run.rounds - keeps)
    }
    return (
        replace(band, rounds=tuple(line for index, line in enumerate(band.rounds) if (number, index) not in gone))
        for number, band in enumerate(design.bands)
    )


def _with_plain_band(design: Design, rounds: int) -> Iterator[Band]:
    """Lay plain rounds in where the crown begins, or on top where there is none; the counts there go on meeting.

    They are a band of their own, unless the crown begins amid a band.
    """
    below = max(parts_of(design).crown - 1, 0)
    starts = starts_of(design.bands)
    place = max(number for number, start in enumerate(starts) if start <= below)
    band, index = design.bands[place], below - starts[place]
    line = band.rounds[index]
    plain = (Round(line.letters[0], bytes(len(line))),) * rounds
    yield from design.bands[:place]
    if index + 1 < len(band.rounds):
        yield replace(band, rounds=(*band.rounds[: index + 1], *plain, *band.rounds[index + 1 :]))
    else:
        yield band
        yield Band(name="plain", times=band.times, rounds=plain)
    yield from design.bands[place + 1 :]


def _is_rest(band: Band) -> bool:
    return band.name.rstrip("0123456789 ").lower() in REST_NAMES


def _counted(rounds: int) -> str:
    return f"{rounds} round{'s' if rounds > 1 else ''}"
