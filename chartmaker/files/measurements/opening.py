"""A measurement file of any of the grammars, told apart by what stands in it rather than by its name."""

from pathlib import Path

from chartmaker.files.measurements.cgats import cgats_contents, is_cgats
from chartmaker.files.measurements.contents import Contents, Findings
from chartmaker.files.measurements.csv_table import csv_contents
from chartmaker.files.measurements.cxf import cxf_contents, is_cxf
from chartmaker.files.measurements.text import decoded
from chartmaker.files.toml_text import MOST_BYTES, bytes_of_file, too_large


def read_measurements(path: Path) -> Contents:
    """Read a measurement file. Raises FileRefused, with everything that is wrong, where it cannot be taken."""
    return measurements_from(bytes_of_file(path), str(path))


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
