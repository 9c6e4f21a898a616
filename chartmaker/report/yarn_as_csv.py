"""The yarn table as CSV, for spreadsheets: a row a letter, figures as the report has them."""

import csv
import io

from chartmaker.appraisal import Appraisal, LetterAppraisal

HEAD = (
    "letter", "lot_id", "lot_name", "stitches", "stitch_m", "float_m", "other_m", "metres_low", "metres_likely",
    "metres_high", "grams_low", "grams_likely", "grams_high", "planned_g", "on_hand_g", "short_g",
)  # fmt: skip


def yarn_as_csv(appraisal: Appraisal) -> str:
    """Give the table with its head, by RFC 4180 but for lines that end as the platform's do."""
    text = io.StringIO()
    writer = csv.writer(text, lineterminator="\n")
    writer.writerow(HEAD)
    writer.writerows(_row(item) for item in appraisal.letters)
    return text.getvalue()


def _row(item: LetterAppraisal) -> list[str]:
    need = item.requirement
    figures = (
        need.stitch_m.likely, need.float_m.likely, need.other_m.likely, need.metres.low, need.metres.likely,
        need.metres.high, need.grams.low, need.grams.likely, need.grams.high, need.planned_g, need.on_hand_g,
        need.short_g,
    )  # fmt: skip
    name = item.lot.name if item.lot else ""
    names = [item.letter, _plain(item.lot.id if item.lot else ""), _plain(name), str(need.stitches)]
    return [*names, *(f"{figure:.2f}" for figure in figures)]


def _plain(text: str) -> str:
    """Keep a spreadsheet from taking a name for a formula."""
    return f"'{text}" if text[:1] in ("=", "+", "-", "@") else text
