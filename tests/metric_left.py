"""Finds metric lengths and weights in a text that should have none, but for those that stay metric for a reason."""

import re

AMOUNT = re.compile(r"(?<![\w.])[−-]?\d+(?:[.,]\d+)? ?(?:cm|mm|m|g|kg)\b(?!/)")
UNIT_ALONE = re.compile(
    r"\b(?:centi|milli)?met(?:re|er)s?\b|\bgrams?\b|(?:, | in |\()(?:cm|mm|m|g)\b|\b(?:cm|m|g)(?:,| round| high| short)"
)
"""In headings of columns and labels of fields."""
STAYS = (
    # At the pot: scales there show grams, and shares of the fibre's weight are easy in grams and litres alone.
    (re.compile(r"\d+(?:\.\d+)? g \(\d+(?:\.\d+)? oz\)"), "fibre for a bath, with its ounces beside it"),
    (re.compile(r"\d+(?:\.\d+)? g of (?!fibre|yarn)\w+"), "dyestuff weighed for a bath"),
    (re.compile(r"\d+(?:\.\d+)? g to 1 g"), "the ratio of dyestuff to fibre"),
    (re.compile(r"g of dyestuff to 1 g of (?:dry )?fibre"), "the ratio, as it is asked for"),
    (re.compile(r"\bg to 100 g\b|\bl to 100 g\b|\d+(?:\.\d+)? L to 100 g"), "assists and liquor by their recipe"),
    (re.compile(r"^  \w.*, water \d+(?:\.\d+)? l$", re.MULTILINE), "what goes into a bath, in the report"),
)


def metric_amounts(text: str) -> list[str]:
    """Give the metric measures that are left in a text when those that stay for a reason are taken out."""
    for pattern, _reason in STAYS:
        text = pattern.sub("", text)
    return [found[0] for pattern in (AMOUNT, UNIT_ALONE) for found in pattern.finditer(text)]
