"""Motifs from their files, strictly, and the shelf of all that are there."""

from dataclasses import dataclass
from pathlib import Path
from typing import Any

from chartmaker.files.assets import assets_folder
from chartmaker.files.problems import ProblemList, UserProblem, refusal
from chartmaker.files.rounds_reading import rounds_of
from chartmaker.files.table import Table
from chartmaker.files.toml_text import plain_data, text_of_file
from chartmaker.files.values import WrongValue, kind_of, text
from chartmaker.files.versions import brought_up
from chartmaker.model.motif import FAMILIES, Motif
from chartmaker.model.round import Round

ENDING = ".motif.toml"
"""How the name of a motif's file ends."""
MOST_OWN = 2000
"""Files of one folder that are read for the shelf."""
_STAND_IN = Motif(id="motif", name="motif", family="own", rounds=(Round("A", b"\0"),))


@dataclass(frozen=True, slots=True)
class Shelf:
    """The motifs at hand, and what could not be put on the shelf."""

    motifs: tuple[Motif, ...]
    """Those that come with the program first, in order of family, rounds and repeat; then the user's, by name."""
    refused: tuple[UserProblem, ...] = ()
    """One for each file that is no motif; `str()` of it tells where and what."""


def read_shelf(own_folder: Path | None = None) -> Shelf:
    """Read the motifs that come with the program, and those in the user's folder, which need not be there.

    A file that is broken, or bears an id that is taken, is told in `refused` and keeps no other off the shelf.
    """
    refused: list[UserProblem] = []
    built_in = _read_all(assets_folder() / "motifs", refused, taken={})
    own = _read_all(own_folder, refused, taken={motif.id: motif for motif in built_in}) if own_folder else []
    built_in.sort(key=_place_on_shelf)
    own.sort(key=lambda motif: motif.name.casefold())
    return Shelf((*built_in, *own), tuple(refused))


def read_motif(path: Path) -> Motif:
    """Read a motif from its file.

    Raises FileRefused, with everything that is wrong, where it cannot be taken.
    """
    return motif_from_text(text_of_file(path), str(path))


def motif_from_text(source: str, name: str) -> Motif:
    """Read a motif from its text; `name` is what messages call it.

    Raises FileRefused, with everything that is wrong, where it cannot be taken.
    """
    data = brought_up(plain_data(source, name), name, kind="chartmaker-motif")
    problems = ProblemList()
    table = Table({key: value for key, value in data.items() if key not in {"format", "version"}}, problems)
    readers = {"id": text, "name": text, "family": text, "tags": _words, "rounds": text}
    fields: dict[str, Any] = table.fields(readers, required=("id", "name", "family", "rounds"))
    if "rounds" in fields:
        lines = rounds_of(table, fields.pop("rounds"), whose="a motif")
        if lines:
            fields["rounds"] = lines
    motif = table.build(_STAND_IN, fields)
    table.close()
    problems.refuse_any(name)
    return motif


def _read_all(folder: Path, refused: list[UserProblem], *, taken: dict[str, Motif]) -> list[Motif]:
    """Read the motifs of a folder in the order of their files' names."""
    try:
        paths = sorted(folder.glob(f"*{ENDING}")) if folder.is_dir() else []
    except OSError as problem:
        refused.append(refusal(f"the folder cannot be read: {problem.strerror or problem}", where=str(folder)))
        return []
    if len(paths) > MOST_OWN:
        refused.append(refusal(f"it holds {len(paths)} motifs; the first {MOST_OWN} are read", where=str(folder)))
    found = dict(taken)
    for path in paths[:MOST_OWN]:
        try:
            motif = read_motif(path)
        except UserProblem as problem:
            refused.append(problem)
            continue
        if motif.id in found:
            what = f"its id {motif.id!r} is that of {found[motif.id].name!r} already"
            refused.append(refusal(what, where=str(path), now="give it another id"))
        else:
            found[motif.id] = motif
    return [motif for key, motif in found.items() if key not in taken]


def _place_on_shelf(motif: Motif) -> tuple[int, int, int, str]:
    return FAMILIES.index(motif.family), len(motif.rounds), motif.repeat, motif.id


def _words(value: object) -> tuple[str, ...]:
    if not isinstance(value, list):
        raise WrongValue(f"must be an array of texts, not {kind_of(value)}")
    return tuple(map(text, value))
