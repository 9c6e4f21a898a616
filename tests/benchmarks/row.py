"""One line of the table, and the ways in which times are taken."""

import gc
import statistics
import time
from collections.abc import Callable
from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """A figure against its limit."""

    name: str
    figure: float
    limit: float | None
    """None where the figure is told for its own sake."""
    unit: str
    detail: str = ""

    @property
    def is_kept(self) -> bool:
        """Whether the limit is kept."""
        return self.limit is None or self.figure <= self.limit

    def __str__(self) -> str:
        limit = "" if self.limit is None else f"≤ {self.limit:g}"
        verdict = "" if self.limit is None else ("kept" if self.is_kept else "PASSED")
        return f"{self.name:<58} {self.figure:>9.3g} {self.unit:<3} {limit:<7} {verdict:<7} {self.detail}"


def median_ms(run: Callable[[], object], *, times: int = 25, clock: Callable[[], float] = time.perf_counter) -> float:
    """Give the median duration of a call in milliseconds, after one call to warm up.

    `time.thread_time` as the clock counts what the call itself takes, whatever else the machine does meanwhile.
    """
    run()
    durations = []
    gc.collect()
    for _ in range(times):
        start = clock()
        run()
        durations.append(1000 * (clock() - start))
    return statistics.median(durations)


def interleaved_ms(first: Callable[[], object], second: Callable[[], object], *, times: int) -> tuple[float, float]:
    """Give the median durations of two calls made turn about, so that a busy machine slows both alike."""
    first()
    second()
    durations: tuple[list[float], list[float]] = ([], [])
    for _ in range(times):
        for run, kept in zip((first, second), durations, strict=True):
            start = time.perf_counter()
            run()
            kept.append(1000 * (time.perf_counter() - start))
    return statistics.median(durations[0]), statistics.median(durations[1])
