"""Where the files lie that come with the program: icons and motifs."""

from functools import lru_cache
from pathlib import Path


@lru_cache
def assets_folder() -> Path:
    """Give the folder of assets: beside the package's modules in a wheel, at the repository's root otherwise."""
    package = Path(__file__).resolve().parent.parent
    inside = package / "assets"
    return inside if inside.is_dir() else package.parent / "assets"
