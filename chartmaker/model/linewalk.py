"""The cells that a straight line between two cells passes, so that a fast hand leaves no gaps."""


def cells_between(start: tuple[int, int], end: tuple[int, int]) -> tuple[tuple[int, int], ...]:
    """Give the cells `(round, stitch)` from start to end, both included, one for each step along the longer axis.

    The rule is Bresenham's (IBM Systems Journal 4(1), 1965), written with rounding to the nearest cell.
    """
    rise, run = end[0] - start[0], end[1] - start[1]
    steps = max(abs(rise), abs(run))
    if steps == 0:
        return (start,)
    return tuple(
        (start[0] + _rounded(rise * step, steps), start[1] + _rounded(run * step, steps)) for step in range(steps + 1)
    )


def _rounded(numerator: int, denominator: int) -> int:
    return (2 * numerator + denominator) // (2 * denominator)
