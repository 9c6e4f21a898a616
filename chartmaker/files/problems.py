"""What the user can put right, told as where, what, and what now; the two edges of the program show it and go on."""

import difflib
from collections.abc import Iterable
from dataclasses import dataclass

MOST_SHOWN = 20
"""Problems of one file that are told in full; the rest are counted."""
LONGEST_SHOWN = 300
"""Characters of one problem that are told."""
LONGEST_GUESSED_AT = 60
"""Characters of a word for which a near one is looked for: a longer one is no slip of the finger, and slow."""


@dataclass(frozen=True, slots=True)
class Problem:
    """One thing that is wrong in a file."""

    path: str
    """Its place, as `bands[2].rounds, line 4`; bands and lines count from 1. Empty for the file as a whole."""
    text: str

    def __str__(self) -> str:
        """Give place and sentence in one line."""
        return f"{self.path}: {self.text}" if self.path else self.text


class UserProblem(Exception):  # noqa: N818 - it tells of the user's file or disk, not of an error in the program
    """Base of everything that the user can put right; `str()` of it is the whole message."""

    def __init__(self, what: str, *, where: str = "", now: str = "") -> None:
        """Take what is wrong, where (a file), and what the user can do now; the last two may be empty."""
        self.what = what
        self.where = printable(where)
        self.now = now
        super().__init__(what)

    def __str__(self) -> str:
        """Give where, what and what now as one sentence."""
        return (f"{self.where}: " if self.where else "") + self.what + (f"; {self.now}" if self.now else "")


class FileRefused(UserProblem):
    """A file that cannot be taken as it is, with all that is wrong in it."""

    def __init__(self, problems: tuple[Problem, ...], *, where: str, now: str = "", untold: int = 0) -> None:
        """Take the problems that are told, and how many more there are."""
        self.problems = problems
        self.untold = untold
        count = len(problems) + untold
        super().__init__(str(problems[0]) if count == 1 else f"{count} problems", where=where, now=now)

    def __str__(self) -> str:
        """Give one line for one problem; for several, a line that counts them and a line for each."""
        if len(self.problems) == 1 and not self.untold:
            return super().__str__()
        more = [f"and {self.untold} more"] if self.untold else []
        return "\n  ".join([super().__str__(), *map(str, self.problems), *more])


class ProblemList:
    """Gathers the problems of one file while it is read; past `MOST_SHOWN` it only counts, not to be flooded."""

    def __init__(self) -> None:
        """Begin with none."""
        self._told: list[Problem] = []
        self._untold = 0

    def add(self, path: str, text: str, *, word: str = "", known: Iterable[str] = ()) -> None:
        """Note a problem; where `word` resembles one of `known`, that one is suggested."""
        if len(self._told) >= MOST_SHOWN:
            self._untold += 1
            return
        self._told.append(Problem(printable(path), printable(text + suggestion(word, known))))

    def __len__(self) -> int:
        """Give how many there are, told or not."""
        return len(self._told) + self._untold

    def refuse_any(self, where: str) -> None:
        """Raise FileRefused with everything gathered, or do nothing where all is well."""
        if self._told:
            now = f"mend {'it' if len(self) == 1 else 'them'} and open the file again"
            raise FileRefused(tuple(self._told), where=where, now=now, untold=self._untold)


def refusal(what: str, *, where: str, now: str = "") -> FileRefused:
    """Make the refusal of a file as a whole."""
    return FileRefused((Problem("", printable(what)),), where=where, now=now)


def printable(text: str) -> str:
    """Write as an escape what a terminal could take for a command; leave out the middle of a very long text."""
    kept = LONGEST_SHOWN // 2 - 1
    shown = text if len(text) <= LONGEST_SHOWN else f"{text[:kept]} … {text[-kept:]}"
    return "".join(sign if sign.isprintable() else ascii(sign)[1:-1] for sign in shown)


def printable_lines(text: str) -> str:
    """Show control characters, which a lot's name may hold, rather than let a terminal obey them; lines stay lines."""
    return "".join(sign if sign == "\n" or sign.isprintable() else "\N{REPLACEMENT CHARACTER}" for sign in text)


def suggestion(word: str, known: Iterable[str]) -> str:
    """Ask whether the nearest of the words known was meant, as the tail of a sentence; empty where none is near."""
    if not word or len(word) > LONGEST_GUESSED_AT:
        return ""
    near = difflib.get_close_matches(word, list(known), n=1)
    return f"; did you mean {near[0]!r}?" if near else ""
