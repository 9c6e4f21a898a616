"""Motifs to their files, one a file, named after the motif's id."""

from pathlib import Path

from chartmaker.files.motif_reading import ENDING, motif_from_text
from chartmaker.files.problems import UserProblem
from chartmaker.files.saving import save_checked
from chartmaker.files.toml_writing import toml_from
from chartmaker.files.versions import NEWEST
from chartmaker.model.motif import Motif
from chartmaker.model.notation import rounds_to_text


def save_motif(motif: Motif, folder: Path) -> Path:
    """Write a motif into a folder, which is made where it is not there, and give the path of its file.

    Raises UserProblem where that cannot be done; an older motif of the same id is then as it was.
    """
    path = folder / f"{motif.id}{ENDING}"
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as problem:
        what = f"the folder for motifs cannot be made: {problem.strerror or problem}"
        raise UserProblem(what, where=str(folder)) from problem
    save_checked(motif, path, write=motif_to_text, read=motif_from_text)
    return path


def motif_to_text(motif: Motif) -> str:
    """Write a motif as the text of its file."""
    return toml_from(
        {
            "format": "chartmaker-motif",
            "version": NEWEST,
            "id": motif.id,
            "name": motif.name,
            "family": motif.family,
            "tags": list(motif.tags),
            "rounds": rounds_to_text(motif.rounds),
        }
    )
