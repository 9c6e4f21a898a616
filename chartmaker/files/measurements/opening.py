"""A measurement file of any of the grammars, told apart by what stands in it rather than by its name."""

import stat
from pathlib import Path

from chartmaker.files.measurements.cgats import cgats_contents, is_cgats
from chartmaker.files.measurements.contents import Contents, Findings
from chartmaker.files.measurements.csv_table import csv_contents
from chartmaker.files.measurements.cxf import cxf_contents, is_cxf
from chartmaker.files.measurements.text import decoded, too_large
from chartmaker.files.problems import refusal
from chartmaker.files.toml_text import MOST_BYTES


def read_measurements(path: Path) -> Contents:
    """Read a measurement file. Raises FileRefused, with everything that is wrong, where it cannot be taken."""
    where = str(path)
    try:
        kind = path.stat().st_mode
        if stat.S_ISDIR(kind):
            raise refusal("this is a folder, not a file", where=where)
        if not stat.S_ISREG(kind):  # a pipe or a device could keep us waiting for ever
            raise refusal("this is not an ordinary file", where=where)
        with path.open("rb") as file:
            data = file.read(MOST_BYTES + 1)
    except FileNotFoundError:
        raise refusal("there is no such file", where=where) from None
    except ValueError as problem:  # a path with a zero byte in it
        raise refusal(f"cannot be opened: {problem}", where=where) from None
    except OSError as problem:
        raise refusal(f"cannot be read: {problem.strerror or problem}", where=where) from None
    return measurements_from(data, where)


def measurements_from(data: bytes, where: str) -> Contents:
    """Read the bytes of a measurement file; `where` is what messages call it.

    Raises FileRefused, with everything that is wrong, where they cannot be taken.
    """
    if len(data) > MOST_BYTES:
        raise too_large(where)
    if is_cxf(data):
        return cxf_contents(data, where)
    read = decoded(data, where)
    found = Findings()
    if read.note:
        found.note(read.note)
    if is_cgats(read.text):
        return cgats_contents(read.text, where, found)
    return csv_contents(read.text, where, found)
