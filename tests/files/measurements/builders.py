"""Small measurement files written in a line or two; every number in them is invented."""

from pathlib import Path

from chartmaker.files.measurements.contents import Contents
from chartmaker.files.measurements.opening import measurements_from, read_measurements

SAMPLES = Path(__file__).parent / "samples"
"""Written by hand to the grammars, with the oddities that instruments make; every number is invented."""


def sample(name: str) -> Contents:
    """Read one of the kept samples."""
    return read_measurements(SAMPLES / name)


def read(text: str | bytes) -> Contents:
    """Read a file's text or bytes."""
    return measurements_from(text if isinstance(text, bytes) else text.encode(), "file")


def readings(contents: Contents) -> dict[str, int]:
    """Give how many readings each sample has."""
    return {each.name: len(each.readings) for each in contents.measured}


def cgats(fields: str, *rows: str, head: str = "") -> str:
    """Give a data set with these fields and rows, after keywords."""
    body = "\n".join(rows)
    return f"CGATS.17\n{head}\nBEGIN_DATA_FORMAT\n{fields}\nEND_DATA_FORMAT\nBEGIN_DATA\n{body}\nEND_DATA\n"


def cxf(objects: str, specifications: str = "") -> str:
    """Give CxF with these objects and colour specifications, in the standard's own namespace without a prefix."""
    return (
        '<?xml version="1.0"?><CxF xmlns="http://colorexchangeformat.com/CxF3-core"><Resources><ObjectCollection>'
        f"{objects}</ObjectCollection><ColorSpecificationCollection>{specifications}</ColorSpecificationCollection>"
        "</Resources></CxF>"
    )
