"""The written form of a round, `letters | cells | shaping`, that designs, motifs and tests share.

The text looks like the chart: the last line is the first round knitted, the right-most sign is stitch 1.
"""

from functools import lru_cache

from chartmaker.model.round import Round
from chartmaker.model.stitches import PART_SIGNS, SHAPING_SIGNS


def round_from_text(line: str) -> Round:
    """Read one line.

    Raises ValueError, with a sentence, for anything that is not a round.
    """
    fields = [field.strip() for field in line.split("|")]
    if len(fields) not in (2, 3):
        raise ValueError(f"{line.strip()!r} is not 'letters | cells' or 'letters | cells | shaping'")
    letters = "".join(fields[0].split())
    cells = _codes(fields[1], signs=PART_SIGNS, what="cell")
    shaping = _codes(fields[2], signs=SHAPING_SIGNS, what="shaping sign") if len(fields) == 3 else b""
    if len(fields) == 3 and not shaping:
        raise ValueError("the shaping after the second '|' is empty")
    return Round(letters, cells, shaping)


def rounds_from_text(text: str) -> tuple[Round, ...]:
    """Read the lines of a band, first line the top round, into rounds in knitting order."""
    return tuple(round_from_text(line) for line in reversed(text.strip().splitlines()))


def round_to_text(line: Round, *, letter_width: int = 0) -> str:
    """Write one round; `letter_width` pads its letters so that the cells of a band stand in line."""
    letters = " ".join(line.letters).ljust(letter_width)
    text = f"{letters} | {_signs(line.cells, PART_SIGNS)}"
    return f"{text} | {_signs(line.shaping, SHAPING_SIGNS)}" if line.is_shaped else text


def rounds_to_text(rounds: tuple[Round, ...]) -> str:
    """Write the rounds of a band as lines, the last knitted first, their cells beginning in one column."""
    letter_width = max(2 * len(line.letters) - 1 for line in rounds)
    return "".join(round_to_text(line, letter_width=letter_width) + "\n" for line in reversed(rounds))


def _codes(text: str, *, signs: str, what: str) -> bytes:
    stray = text.translate(dict.fromkeys(map(ord, signs)))
    if stray:
        sign = stray[0]
        raise ValueError(f"{sign!r} at place {text.index(sign) + 1} is no {what}; the signs are {' '.join(signs)}")
    return text[::-1].encode("ascii").translate(_codes_of(signs))


@lru_cache(maxsize=4)
def _codes_of(signs: str) -> bytes:
    """Give the table that turns signs into codes, as `bytes.translate` takes it."""
    return bytes.maketrans(signs.encode(), bytes(range(len(signs))))


def _signs(codes: bytes, signs: str) -> str:
    table = signs.encode().ljust(256)
    return codes[::-1].translate(table).decode()
