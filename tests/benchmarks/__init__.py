"""Speed and memory, as ratios measured in one run: `python -m tests.benchmarks` prints the table.

Timed figures are no tests: they would fail on a busy machine and say nothing. Each row gives what was measured, what
it is held against in the same run, and the limit that the design sets.
"""
