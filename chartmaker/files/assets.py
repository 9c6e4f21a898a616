"""Where the files lie that come with the program: icons, motifs and example designs."""

from functools import lru_cache
from pathlib import Path


@lru_cache
def assets_folder() -> Path:
    """Give the folder of assets: beside the package's modules in a wheel, at the repository's root otherwise."""
    package = Path(__file__).resolve().parent.parent
    inside = package / "assets"
    return inside if inside.is_dir() else package.parent / "assets"


def examples() -> tuple[Path, ...]:
    """Give the designs that come with the program, in the order of their names; they are to be looked at as copies."""
    assets = assets_folder()
    inside = assets / "examples"
    folder = inside if inside.is_dir() else assets.parent / "examples"
    return tuple(sorted(folder.glob("*.hat.toml")))
