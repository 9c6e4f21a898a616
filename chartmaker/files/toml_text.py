"""From a file's bytes to plain data: what is no readable TOML text of a fair size is refused here with one sentence."""

import re
import stat
import tomllib
from pathlib import Path

from chartmaker.files.problems import FileRefused, refusal

MOST_BYTES = 8 * 1024 * 1024
"""8 MB; a file past it is refused before it is read whole."""
MOST_KEY_PARTS = 8
"""Parts of a dotted key. The formats need three; tomllib's time grows with the square of them, to hours within 8 MB."""

_MARKS = {b"\xef\xbb\xbf": "UTF-8 with a byte order mark", b"\xff\xfe": "UTF-16", b"\xfe\xff": "UTF-16"}
_OPENING = re.compile(r"""["]{3}|[']{3}|["']|\#""")
# Walked match by match: before Python 3.11.5 a possessive repeat of a group could match too little, and a greedy one
# keeps a way back for every sign of a long text.
_ENDS = {
    '"""': re.compile(r'\\.|("{3,5})', re.DOTALL),
    "'''": re.compile(r"('{3,5})"),
    '"': re.compile(r'\\[^\n]|("|(?=\n))'),
    "'": re.compile(r"('|(?=\n))"),
    "#": re.compile(r"((?=\n))"),
}
"""What may close a text or a comment, by what opened it: the first match whose group is set does."""
_LONG_KEY = re.compile(rf"(?<![\w-])(?:[\w-]++[ \t]*+\.[ \t]*+){{{MOST_KEY_PARTS}}}")
_PLACE = re.compile(r" \(at (?:line (\d+), column (\d+)|end of document)\)$")


def text_of_file(path: Path) -> str:
    """Read a text file of at most `MOST_BYTES`.

    Raises FileRefused where it is absent, no file, unreadable, empty, too large, or not UTF-8 without a mark.
    """
    return _decoded(bytes_of_file(path), str(path))


def bytes_of_file(path: Path) -> bytes:
    """Read an ordinary file, of no more than a byte past `MOST_BYTES`.

    Raises FileRefused where it is absent, no file, or unreadable.
    """
    where = str(path)
    try:
        return _bytes_of(path)
    except FileNotFoundError:
        raise refusal("there is no such file", where=where) from None
    except ValueError as problem:  # a path with a zero byte in it
        raise refusal(f"cannot be opened: {problem}", where=where) from None
    except OSError as problem:
        raise refusal(f"cannot be read: {problem.strerror or problem}", where=where) from None


def plain_data(text: str, name: str) -> dict[str, object]:
    """Parse TOML into dictionaries, lists and values; `name` is what messages call the file.

    Raises FileRefused with line and column where the text is not TOML, and where it is too large or nested too deep.
    """
    if len(text) > MOST_BYTES:
        raise too_large(name)
    _refuse_long_keys(text, name)
    try:
        return tomllib.loads(text)
    except RecursionError:
        raise refusal("its arrays or tables are nested too deep", where=name) from None
    except tomllib.TOMLDecodeError as problem:
        raise _syntax_refusal(str(problem), text, name) from None
    except ValueError as problem:  # a whole number of thousands of digits; Python says how many
        raise refusal(f"it holds a number that cannot be read: {problem}", where=name) from None


def _bytes_of(path: Path) -> bytes:
    kind = path.stat().st_mode
    if stat.S_ISDIR(kind):
        raise refusal("this is a folder, not a file", where=str(path))
    if not stat.S_ISREG(kind):  # a pipe or a device could keep us waiting for ever
        raise refusal("this is not an ordinary file", where=str(path))
    with path.open("rb") as file:
        return file.read(MOST_BYTES + 1)


def _decoded(data: bytes, where: str) -> str:
    if len(data) > MOST_BYTES:
        raise too_large(where)
    if not data.strip():
        raise refusal("the file is empty", where=where)
    for mark, encoding in _MARKS.items():
        if data.startswith(mark):
            raise refusal(f"this is {encoding}", where=where, now="save it as plain UTF-8")
    try:
        return data.decode("utf-8")
    except UnicodeDecodeError as problem:
        line = data.count(b"\n", 0, problem.start) + 1
        raise refusal(f"line {line} is not UTF-8 text", where=where, now="save it as plain UTF-8") from None


def too_large(where: str) -> FileRefused:
    """Make the refusal of a file past the limit."""
    return refusal(f"the file is larger than {MOST_BYTES // 1024**2} MB", where=where)


def _refuse_long_keys(text: str, name: str) -> None:
    structure = _without_texts(text)
    found = _LONG_KEY.search(structure)
    if found:
        line = structure.count("\n", 0, found.start()) + 1
        raise refusal(f"line {line}: a key has more than {MOST_KEY_PARTS} parts", where=name)


def _without_texts(text: str) -> str:
    """Give the text with a letter for each quoted text and nothing for each comment; lines stay lines."""
    kept = []
    position = 0
    while opened := _OPENING.search(text, position):
        end = _end_of(text, opened)
        kept.append(text[position : opened.start()])
        kept.append("" if opened.group() == "#" else "q")
        kept.append("\n" * text.count("\n", opened.start(), end))
        position = end
    return "".join([*kept, text[position:]])


def _end_of(text: str, opened: re.Match[str]) -> int:
    """Find where what was opened is closed; at the text's end where nothing closes it."""
    for found in _ENDS[opened.group()].finditer(text, opened.end()):
        if found.group(1) is not None:
            return found.end()
    return len(text)


def _syntax_refusal(problem: str, text: str, name: str) -> FileRefused:
    place = _PLACE.search(problem)
    what = _PLACE.sub("", problem)
    if place and place.group(1):
        line, column = int(place.group(1)), int(place.group(2))
    else:
        line, column = text.count("\n") + 1, len(text) - text.rfind("\n")
    now = "mend it and open the file again"
    return refusal(f"line {line}, column {column} is not valid TOML: {what[:1].lower()}{what[1:]}", where=name, now=now)
