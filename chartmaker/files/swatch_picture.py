"""The picture of a lot's swatch: its file and its name; nothing outside the palette's folder is opened."""

from pathlib import Path, PurePosixPath, PureWindowsPath

PICTURE_ENDINGS = (".png", ".jpg", ".jpeg")


def picture_file(palette_path: Path | None, picture: str) -> Path | None:
    """Give the file of a picture that a lot names; None where it is missing, or named so that it is not looked for.

    An absolute path, one that climbs out of the palette's folder, itself or by a link, and one that is no picture's
    are as if missing: a palette may come from anybody.
    """
    if palette_path is None or not picture or "\\" in picture or "\x00" in picture:
        return None
    named = PurePosixPath(picture)
    if named.is_absolute() or ".." in named.parts or PureWindowsPath(picture).drive or ":" in picture:
        return None
    if named.suffix.lower() not in PICTURE_ENDINGS:
        return None
    try:
        folder = palette_path.absolute().parent.resolve()
        found = (folder / named).resolve()
        return found if found.is_relative_to(folder) and found.is_file() else None
    except (OSError, RuntimeError, ValueError):  # out of reach, links that lead round in a circle, no possible path
        return None


def picture_name(palette_path: Path, file: Path) -> str:
    """Give how a palette names a picture that stands in its folder or below.

    Raises ValueError, with a sentence, where it stands elsewhere or is of another kind.
    """
    if file.suffix.lower() not in PICTURE_ENDINGS:
        raise ValueError(f"{file.name} is no PNG or JPEG picture")
    folder, whole = palette_path.absolute().parent.resolve(), file.absolute().resolve()
    if not whole.is_relative_to(folder):
        raise ValueError("a picture must be in the folder of its palette, or below it, so that the two move together")
    name = whole.relative_to(folder).as_posix()
    if picture_file(palette_path, name) is None:
        raise ValueError(f"{file.name} cannot be named in a palette; give it a plainer name")
    return name
