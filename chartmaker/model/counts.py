"""Whether rounds meet: each must eat exactly what the round below it holds, over all its repeats."""

from chartmaker.model.design import Design


def rounds_not_meeting(design: Design) -> frozenset[int]:
    """Give the rounds, by index in the whole hat, that do not eat what lies below; the first must be all plain."""
    breaks = set()
    number, below = 0, 0
    for band in design.bands:
        for line in band.rounds:
            meets = line.eaten * band.times == below if number else not line.is_shaped
            if not meets:
                breaks.add(number)
            below = len(line) * band.times
            number += 1
    return frozenset(breaks)


def stitches_below(design: Design, *, band: int, index: int) -> int | None:
    """Give the stitches, in one repeat of a band, that a round of it finds below.

    None for the first round of the hat, and where the band below does not divide among this one's repeats.
    """
    if index:
        return len(design.bands[band].rounds[index - 1])
    if not band:
        return None
    lower = design.bands[band - 1]
    whole, left_over = divmod(lower.stitches(len(lower.rounds) - 1), design.bands[band].times)
    return None if left_over else whole
