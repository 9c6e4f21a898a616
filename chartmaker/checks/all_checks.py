"""The list of checks, in the order in which their findings are told within one severity."""

from collections.abc import Callable, Iterator

from chartmaker.checks import (
    circumference,
    crown_pucker,
    depth,
    float_length,
    fold,
    letters_in_round,
    letters_without_lots,
    light_and_dark,
    other_light,
    pair_contrast,
    round_contrast,
    shade_basis,
    stitch_counts,
    swatches,
    yarn_short,
)
from chartmaker.checks.facts import Facts
from chartmaker.checks.finding import SEVERITIES, Finding

Check = Callable[[Facts], Iterator[Finding]]

CHECKS: tuple[Check, ...] = (
    stitch_counts.check,
    letters_without_lots.check,
    pair_contrast.check,
    round_contrast.check,
    other_light.check,
    light_and_dark.check,
    float_length.check,
    letters_in_round.check,
    circumference.check,
    crown_pucker.check,
    depth.check,
    fold.check,
    yarn_short.check,
    swatches.check,
    shade_basis.check,
)


def run_checks(facts: Facts) -> tuple[Finding, ...]:
    """Run every check and give the findings, the worst first."""
    found = [finding for check in CHECKS for finding in check(facts)]
    return tuple(sorted(found, key=lambda finding: SEVERITIES.index(finding.severity)))
