"""Gathers every text that a translator is given: `python assets/make_translations.py`, from the repository's root.

Writes `assets/translations/chartmaker.ts`, the template of all languages, for Qt's tools, and `sentences.txt`, the
sentences of the layers below the window, with {0}, {1} … where they take something in, which the window knows them by.
A translation is `chartmaker_<language>.ts` made from the template; `pyside6-lrelease` makes the `.qm` that is loaded.
"""

from __future__ import annotations

import ast
import re
from pathlib import Path
from typing import TYPE_CHECKING
from xml.sax.saxutils import escape

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

ROOT = Path(__file__).resolve().parent.parent
FOLDER = ROOT / "assets" / "translations"
TEMPLATE, SENTENCES = FOLDER / "chartmaker.ts", FOLDER / "sentences.txt"
CONTEXT = "chartmaker"
FEWEST_LETTERS, MANY_LETTERS = 4, 9
"""A sentence with fewer letters of its own, the larger where it begins with what it takes in, could be anything."""
EDITS_OF_THE_WINDOW = ("app/*_edits.py", "app/strokes.py", "app/stamps.py", "app/colourway_box.py", "app/hat_fields.py")


def main() -> None:
    """Write both files anew."""
    FOLDER.mkdir(exist_ok=True)
    TEMPLATE.write_text(template(), encoding="utf-8")
    SENTENCES.write_text("".join(f"{text!r}\n" for text in sentences()), encoding="utf-8")


def template() -> str:
    """Give the template: every text once, in alphabetical order."""
    texts = sorted({*spoken_literally(), *spoken_from_tables(), *sentences()})
    messages = "".join(
        f"    <message>\n        <source>{escape(text)}</source>\n"
        '        <translation type="unfinished"></translation>\n    </message>\n'
        for text in texts
    )
    return (
        '<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n<TS version="2.1" sourcelanguage="en">\n'
        f"<context>\n    <name>{CONTEXT}</name>\n{messages}</context>\n</TS>\n"
    )


# --- what the window says


def calls_of_tr() -> Iterator[tuple[Path, ast.expr]]:
    """Give the argument of every `tr(...)` in the window's modules."""
    for path in sorted((ROOT / "chartmaker" / "app").glob("*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "tr":
                yield path, node.args[0]


def spoken_literally() -> set[str]:
    """Give the texts that stand in a `tr(...)` as they are, also as the two ends of a choice."""
    return {text for _, argument in calls_of_tr() for text in _literals(argument)}


def _literals(node: ast.expr) -> Iterator[str]:
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        yield node.value
    elif isinstance(node, ast.IfExp):
        yield from _literals(node.body)
        yield from _literals(node.orelse)


def not_literal() -> dict[str, str]:
    """Give what else stands in a `tr(...)`, as written, with the module where it does."""
    return {ast.unparse(node): path.name for path, node in calls_of_tr() if not [*_literals(node)]}


def tables() -> dict[str, Callable[[], Iterator[str]]]:
    """Give, for each thing that is no literal in a `tr(...)`, the texts that it may be."""
    from chartmaker.app import (
        chart_words,
        control_keys,
        depth_bar,
        findings_strip,
        hat_fields,
        hat_panel,
        lots_ladder,
        lots_lines,
        motif_shelf,
        start_more,
        strokes,
        views,
    )
    from chartmaker.app.action import MENUS
    from chartmaker.app.actions import ACTIONS
    from chartmaker.app.motif_actions import ON_THE_SHELF
    from chartmaker.checks.finding import SEVERITIES
    from chartmaker.dye.cautions import DEFERS, GENERAL, PARTICULAR, UNKNOWN
    from chartmaker.dye.spoons import WEIGH_INSTEAD
    from chartmaker.dye.timetable import COMMON, MAIRET, RECIPE
    from chartmaker.knit.answers import sources_for
    from chartmaker.knit.brims import BRIM_KINDS
    from chartmaker.knit.depth import DEEP, FITS, SHORT
    from chartmaker.knit.fit import LOOSE, SNUG, TOO_TIGHT
    from chartmaker.knit.sizes import sizes
    from chartmaker.knit.tightness import GRADES
    from chartmaker.model.copies import BATH_WORDS, FIELD_WORDS, YARN_WORDS
    from chartmaker.model.hat import SHAPES, TRIM_KINDS
    from chartmaker.model.palette import STATES
    from chartmaker.model.units import SYSTEMS, in_units
    from chartmaker.shade import words as shade_words
    from chartmaker.shade.lot_shade import RESTS_ON

    fields = [field for _, group in hat_fields.GROUPS for field in group]
    keys = control_keys.CONTROL_KEYS
    choices = (BRIM_KINDS, *start_more.EVERY_CHOICE)
    rests = [in_units(one.source, units) for shape in SHAPES for one in sources_for(shape) for units in SYSTEMS]
    grades = ("clear", "soft", "lost", "plain")
    return {
        "action.text": lambda: (action.text for action in ACTIONS),
        "action.tip": lambda: (action.tip for action in ACTIONS if action.tip),
        "MENUS[action.menu]": lambda: iter(MENUS.values()),
        "name": lambda: iter(MENUS.values()),
        "words": lambda: iter((*(words for _, words in ON_THE_SHELF), *hat_panel.TINT_WORDS.values())),
        "entry.where": lambda: (entry.where for entry in keys),
        "entry.what": lambda: (entry.what for entry in keys),
        "entry.keys": lambda: (entry.keys for entry in keys),
        "entry.grade": lambda: iter(grades),
        "bow.pair.grade": lambda: iter(grades),
        "outcome.grade": lambda: iter(grades),
        "relief.grade": lambda: iter(grades),
        "relief.grade_before": lambda: iter(grades),
        "outcome.grade_of_mean": lambda: iter(grades),
        "finding.severity": lambda: iter(SEVERITIES),
        "one if count == 1 else many": lambda: (w for pair in findings_strip.COUNT_WORDS.values() for w in pair),
        "field.label": lambda: (field.label for field in fields),
        "field.hint": lambda: (field.hint for field in fields if field.hint),
        "field.unit": lambda: (field.unit for field in fields if field.unit),
        "choice": lambda: (choice for field in fields if len(field.choices) < 26 for choice in field.spoken_choices),
        "called": lambda: (called for words in choices for called in words.values()),
        "kind": lambda: iter(TRIM_KINDS),
        "grade": lambda: iter(GRADES),
        "quantity.unit": unit_words,
        "units.length.unit": unit_words,
        "PART_WORDS[part.name]": lambda: iter(depth_bar.PART_WORDS.values()),
        "candidate.verdict": lambda: iter((FITS, SNUG, LOOSE, TOO_TIGHT)),
        "depth.verdict": lambda: iter((FITS, SHORT, DEEP)),
        "self.quantity.unit": unit_words,
        "self._unit": unit_words,
        "length.unit": unit_words,
        "units.weight.unit": unit_words,
        "gauge.unit": unit_words,
        "said": lambda: iter((*rests, *start_more.UNSOURCED)),
        "size.name": lambda: (size.name for size in sizes()),
        "size.source": lambda: (size.source for size in sizes()),
        "title": lambda: (title for title, _ in hat_fields.GROUPS),
        "FAMILY_WORDS[name]": lambda: iter(motif_shelf.FAMILY_WORDS.values()),
        "FAMILY_WORDS[motif.family]": lambda: iter(motif_shelf.FAMILY_WORDS.values()),
        "SHAPING_WORDS[shaping]": lambda: iter(chart_words.SHAPING_WORDS.values()),
        "PART_WORDS[Part(line.cells[spot.stitch])]": lambda: iter(strokes.PART_WORDS.values()),
        "view.words": lambda: (view.words for view in views.VIEWS),
        "part": lambda: iter((*shade_words.VALUES, *shade_words.CHROMAS)),
        "words.hue": lambda: iter(shade_words.every_hue()),
        "BASIS_WORDS[rung.basis]": lambda: iter(lots_ladder.BASIS_WORDS.values()),
        "ORDER_WORDS[name]": lambda: iter(lots_lines.ORDER_WORDS.values()),
        "bath.state": lambda: iter(STATES),
        "each.state": lambda: iter(STATES),
        "plan.bath.state": lambda: iter(STATES),
        "step.source": lambda: iter((COMMON, MAIRET, RECIPE)),
        "WEIGH_INSTEAD": lambda: iter((WEIGH_INSTEAD,)),
        "caution.short": lambda: (caution.short for caution in (*GENERAL, *PARTICULAR, UNKNOWN)),
        "each.short": lambda: (caution.short for caution in (*GENERAL, *PARTICULAR, UNKNOWN)),
        "difference.what": lambda: iter((*FIELD_WORDS.values(), *BATH_WORDS.values(), *YARN_WORDS.values())),
        "shade.rests_on": lambda: iter(RESTS_ON),
        "rests_on(reading)": lambda: iter(RESTS_ON),
        "source": lambda: iter(sentences()),
        "DEFERS": lambda: iter((DEFERS,)),
        "caution.text": lambda: (caution.text for caution in (*GENERAL, *PARTICULAR, UNKNOWN)),
    }


def unit_words() -> Iterator[str]:
    """Give the units of all systems."""
    from chartmaker.model.units import SYSTEMS

    for units in SYSTEMS:
        quantities = (units.length, units.gauge, units.yarn, units.weight, units.grist, units.heat, units.room)
        yield from (quantity.unit for quantity in quantities)


def spoken_from_tables() -> set[str]:
    """Give the texts of all tables."""
    return {text for give in tables().values() for text in give()}


# --- what the layers below say


def sentences() -> tuple[str, ...]:
    """Give the sentences of edits, refusals and findings, those with most letters of their own first."""
    found = set()
    for pattern in (
        "model/*.py",
        "checks/*.py",
        "knit/*.py",
        "files/*.py",
        "files/measurements/*.py",
        "shade/stray.py",
        "dye/*.py",
        *EDITS_OF_THE_WINDOW,
    ):
        for path in sorted((ROOT / "chartmaker").glob(pattern)):
            for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
                found.update(text for part in _said_by(node) for text in templates_of(part))
    kept = filter(_is_known_by_its_words, found)
    return tuple(sorted(kept, key=lambda text: (-len(_own_letters(text)), text)))


def _said_by(node: ast.AST) -> Iterator[ast.expr]:
    """Give the texts of an exception that is raised, a keyword or a name for what is told, and an edit's own text."""
    if isinstance(node, ast.Raise) and isinstance(node.exc, ast.Call):
        yield from _texts([*node.exc.args, *(keyword.value for keyword in node.exc.keywords)])
    elif isinstance(node, ast.Call):
        yield from _texts([word.value for word in node.keywords if word.arg in ("text", "message", "remedy")])
        name = node.func.id if isinstance(node.func, ast.Name) else ""
        if name.startswith(("_", "with_", "Replace", "_told")) and node.args:
            yield from _texts(node.args[-1:])
    elif (
        isinstance(node, ast.Assign) and any(isinstance(at, ast.Name) and at.id == "text" for at in node.targets)
    ) or (
        isinstance(node, ast.Return)
        and node.value is not None
        and (isinstance(node.value, ast.JoinedStr | ast.IfExp) or _is_measured(node.value))
    ):
        yield from _texts([node.value])


def _texts(nodes: list[ast.expr]) -> Iterator[ast.expr]:
    for node in nodes:
        if isinstance(node, ast.IfExp):
            yield from _texts([node.body, node.orelse])
        elif _is_measured(node):
            yield from _texts([part.body for part in ast.walk(node) if isinstance(part, ast.Lambda)])
        elif isinstance(node, ast.JoinedStr) or (isinstance(node, ast.Constant) and isinstance(node.value, str)):
            yield node


def _is_measured(node: ast.AST) -> bool:
    """Tell whether a text is one that is made anew for each system of units."""
    return isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "Measured"


def templates_of(node: ast.expr) -> list[str]:
    """Write a text with {0}, {1} … in the place of what it takes in; words of a closed list stand in it themselves."""
    written, count = [""], 0
    for part in node.values if isinstance(node, ast.JoinedStr) else [node]:
        if isinstance(part, ast.Constant):
            ends = [str(part.value).replace("{", "{{").replace("}", "}}")]
        else:
            ends = _closed_words(part.value if isinstance(part, ast.FormattedValue) else part)
            if not ends:
                ends = [f"{{{count}}}"]
                count += 1
        written = [start + end for start in written for end in ends]
    return written


def _closed_words(node: ast.expr) -> list[str]:
    """Give the words that an expression chooses among, where they are known here; else none."""
    from chartmaker.app import hat_fields, strokes

    lists = {
        "PART_WORDS[part]": list(strokes.PART_WORDS.values()),
        "self.label": [field.label for _, group in hat_fields.GROUPS for field in group],
        "what": ["Insert", "Duplicate", "Delete", "Move"],
        "where": ["", " up", " down"],
    }
    return lists.get(ast.unparse(node), [*_literals(node)] if isinstance(node, ast.IfExp) else [])


def _is_known_by_its_words(text: str) -> bool:
    """Tell whether a text has words enough of its own, at its start or in all, to be known by them."""
    own = len(_own_letters(text))
    return (
        " " in text
        and "}{" not in text
        and (own >= MANY_LETTERS or (own >= FEWEST_LETTERS and not text.startswith("{")))
    )


def _own_letters(text: str) -> str:
    return "".join(re.findall(r"[A-Za-z]", re.sub(r"\{\d+\}", "", text)))


if __name__ == "__main__":
    main()
