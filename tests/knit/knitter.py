"""A knitter who has the written rounds alone: reads them with a parser of her own, and works them stitch by stitch.

She knows what the abbreviations eat and leave, and nothing of the program. Whatever does not work out on her needles
she objects to: too few stitches, stitches left over, another count than is said, a round out of its turn, a word that
she does not know.
"""

import re
from dataclasses import dataclass

EATS = {"k": 1, "p": 1, "k2tog": 2, "p2tog": 2, "ssk": 2, "ssp": 2, "s2kp2": 3, "s2pp2": 3, "M1": 0, "M1P": 0}
"""Stitches of the round below that each takes; each leaves one."""
ROUND = re.compile(r"Rnds? (\d+)(?:-(\d+))?: (.*) \((\d+) sts?\)")
REPEATED = re.compile(r"\*(.*); rep from \* (once|\d+ times) more")
BRACKET = re.compile(r"\[([^\[\]]*)\] (twice|\d+ times)")
ALL = re.compile(r"([kp]) all sts in ([A-Z])")
WORKED = re.compile(r"([kp])(\d+) ([A-Z])|(k2tog|p2tog|ssk|ssp|s2kp2|s2pp2|M1P|M1) ([A-Z])")
CAST_ON = re.compile(r"CO (\d+) sts? in ([A-Z]),")
DRAWN = re.compile(r"draw ([A-Z]) twice through the rem (\d+) sts?,")

Stitch = tuple[str, str]
"""What was worked, and the letter that it was worked in."""


class Objection(Exception):  # noqa: N818 - what a knitter has
    """What is written cannot be knitted as it is written."""


@dataclass(frozen=True)
class Knitted:
    """What is on the table in the end."""

    cast_on: tuple[int, str]
    rounds: list[list[Stitch]]
    closed_with: str


def knit(text: str) -> Knitted:
    """Work everything that is written, from the cast-on to the last stitch."""
    begun = CAST_ON.search(text)
    if not begun:
        raise Objection("how many stitches do I cast on?")
    needles = int(begun[1])
    rounds: list[list[Stitch]] = []
    for line in text.splitlines():
        if line.startswith("Rnd"):
            needles = work(line, rounds, needles)
    closed = DRAWN.search(text)
    if not closed or int(closed[2]) != needles:
        raise Objection(f"{needles} stitches remain in the end")
    return Knitted((int(begun[1]), begun[2]), rounds, closed[1])


def work(line: str, rounds: list[list[Stitch]], needles: int) -> int:
    """Work one line of writing onto the rounds; give the stitches then on the needles."""
    read = ROUND.fullmatch(line)
    if not read:
        raise Objection(f"I cannot read {line!r}")
    first, last = int(read[1]), int(read[2] or read[1])
    if first != len(rounds) + 1 or last < first:
        raise Objection(f"round {first} after round {len(rounds)}")
    for _ in range(first, last + 1):
        stitches = stitches_of(read[3], needles)
        eaten = sum(EATS[name] for name, _ in stitches)
        if eaten != needles:
            raise Objection(f"round {len(rounds) + 1} takes {eaten} stitches, I have {needles}")
        needles = len(stitches)
        if needles != int(read[4]):
            raise Objection(f"round {len(rounds) + 1} leaves {needles} stitches, not {read[4]}")
        rounds.append(stitches)
    return needles


def stitches_of(instruction: str, needles: int) -> list[Stitch]:
    """Read an instruction out, one stitch after the other."""
    if whole := ALL.fullmatch(instruction):
        return [(whole[1], whole[2])] * needles
    if repeated := REPEATED.fullmatch(instruction):
        return in_full(repeated[1]) * (1 + number_of(repeated[2]))
    return in_full(instruction)


def in_full(text: str) -> list[Stitch]:
    """Read a list of stitches and brackets, which are not within one another."""
    stitches: list[Stitch] = []
    rest = text
    while rest:
        if bracket := BRACKET.match(rest):
            stitches += in_full(bracket[1]) * number_of(bracket[2])
            rest = rest[bracket.end() :]
        elif worked := WORKED.match(rest):
            stitches += [(worked[1], worked[3])] * int(worked[2]) if worked[1] else [(worked[4], worked[5])]
            rest = rest[worked.end() :]
        else:
            raise Objection(f"I cannot work {rest!r}")
        if rest and not rest.startswith(", "):
            raise Objection(f"I cannot work {rest!r}")
        rest = rest[2:]
    return stitches


def number_of(words: str) -> int:
    """Read how often: once, twice, 3 times."""
    return {"once": 1, "twice": 2}[words] if words in ("once", "twice") else int(words.split(maxsplit=1)[0])
