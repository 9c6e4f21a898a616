"""Run every benchmark and print the table; the exit status is 1 where a limit is passed."""

import os
import sys

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from tests.benchmarks import (
    bench_appraisal,
    bench_baths,
    bench_canvas,
    bench_desk,
    bench_fill,
    bench_fit,
    bench_lots,
    bench_new_hat,
    bench_photo,
    bench_shades,
    bench_sheets,
    bench_turning,
    bench_views,
    bench_window,
)

BENCHMARKS = (
    bench_appraisal,
    bench_baths,
    bench_sheets,
    bench_window,
    bench_canvas,
    bench_desk,
    bench_fill,
    bench_fit,
    bench_new_hat,
    bench_lots,
    bench_views,
    bench_photo,
    bench_shades,
    bench_turning,
)


def main() -> int:
    """Print a row for each figure as it comes."""
    kept = True
    for benchmark in BENCHMARKS:
        for row in benchmark.measure():
            print(row, flush=True)
            kept = kept and row.is_kept
    return 0 if kept else 1


sys.exit(main())
