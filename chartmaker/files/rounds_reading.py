"""The drawing of a band or a motif from the text of its file: each line that is wrong is told with its number."""

from chartmaker.files.table import Table
from chartmaker.model.bounds import LONGEST_TEXT, MOST_ROUNDS
from chartmaker.model.notation import round_from_text
from chartmaker.model.round import Round


def rounds_of(table: Table, drawing: str, *, whose: str) -> tuple[Round, ...]:
    """Read the value of the key `rounds`, last line first; none, with what is wrong noted, where that cannot be done.

    `whose` is what the problems call the thing that is drawn.
    """
    lines = list(enumerate(drawing.split("\n"), start=1))
    while lines and not lines[-1][1].strip():
        lines.pop()
    while lines and not lines[0][1].strip():
        lines.pop(0)
    if not lines:
        table.complain("rounds", f"{whose} has no rounds")
    if len(lines) > MOST_ROUNDS:
        table.complain("rounds", f"there are {len(lines)} rounds, more than {MOST_ROUNDS}")
        return ()
    found = []
    for number_of_line, line in lines:
        try:
            found.append(_round(line))
        except ValueError as problem:
            table.complain("rounds", str(problem), line=number_of_line)
    return tuple(reversed(found))


def _round(line: str) -> Round:
    if not line.strip():
        raise ValueError("an empty line; a round with nothing in it does not exist")
    if len(line) > LONGEST_TEXT:
        raise ValueError(f"the line has {len(line)} characters, more than {LONGEST_TEXT}")
    return round_from_text(line)
