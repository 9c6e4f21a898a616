"""From the bytes of a measurement file to text: marks, UTF-8, UTF-16 and the Windows form of Latin-1; any line ends."""

from dataclasses import dataclass

from chartmaker.files.problems import refusal
from chartmaker.files.toml_text import MOST_BYTES, too_large

LONGEST_LINE = 200_000
"""Characters of a line; no instrument writes as many."""
_MARKS = ((b"\xef\xbb\xbf", "utf-8-sig"), (b"\xff\xfe", "utf-16"), (b"\xfe\xff", "utf-16"))


@dataclass(frozen=True, slots=True)
class Decoded:
    """A file's text with its line ends made alike."""

    text: str
    note: str = ""
    """Set where the letters were guessed at."""


def decoded(data: bytes, where: str) -> Decoded:
    """Give a file's text.

    What is no UTF-8 is taken for Windows' form of Latin-1, as instruments' programs write it. Raises FileRefused where
    the file is empty, too large, or no text.
    """
    if len(data) > MOST_BYTES:
        raise too_large(where)
    if not data.strip():
        raise refusal("the file is empty", where=where)
    note = ""
    encoding = next((name for mark, name in _MARKS if data.startswith(mark)), "utf-8")
    try:
        text = data.decode(encoding)
    except UnicodeDecodeError:
        if encoding != "utf-8":
            raise refusal("this is no text that can be read", where=where) from None
        text = data.decode("cp1252", errors="replace")
        note = "the letters are taken for Windows Latin-1, since they are no UTF-8"
    if "\0" in text:
        raise refusal("this is no text: it holds a zero byte", where=where)
    text = text.replace("\r\n", "\n").replace("\r", "\n")
    if max(map(len, text.split("\n"))) > LONGEST_LINE:
        raise refusal(f"a line has more than {LONGEST_LINE} characters", where=where)
    return Decoded(text, note)
