"""A design or a palette from its file together with that file's fingerprint, both of the same bytes."""

from dataclasses import dataclass
from pathlib import Path

from chartmaker.files.design_reading import design_from_text
from chartmaker.files.fingerprint import Fingerprint, digest_of, fingerprint_of
from chartmaker.files.palette_reading import palette_from_text
from chartmaker.files.problems import UserProblem
from chartmaker.files.toml_text import text_of_file
from chartmaker.model.design import Design
from chartmaker.model.palette import Palette

_TRIES = 3


@dataclass(frozen=True, slots=True)
class Opened:
    """A design, and what its file was like when it was read."""

    design: Design
    fingerprint: Fingerprint


@dataclass(frozen=True, slots=True)
class OpenedPalette:
    """A palette, and what its file was like when it was read."""

    palette: Palette
    fingerprint: Fingerprint


def open_design(path: Path) -> Opened:
    """Read a design and take its file's fingerprint.

    Raises FileRefused, with everything that is wrong, where it cannot be taken, and UserProblem where something keeps
    writing the file.
    """
    source, fingerprint = _text_of(path)
    return Opened(design_from_text(source, str(path)), fingerprint)


def open_palette(path: Path) -> OpenedPalette:
    """Read a palette and take its file's fingerprint.

    Raises FileRefused, with everything that is wrong, where it cannot be taken, and UserProblem where something keeps
    writing the file.
    """
    source, fingerprint = _text_of(path)
    return OpenedPalette(palette_from_text(source, str(path)), fingerprint)


def _text_of(path: Path) -> tuple[str, Fingerprint]:
    for _ in range(_TRIES):
        source = text_of_file(path)
        fingerprint = fingerprint_of(path)
        if digest_of(source.encode()) == fingerprint.digest:
            return source, fingerprint
    raise UserProblem("something is writing the file just now", where=str(path), now="open it again in a moment")
