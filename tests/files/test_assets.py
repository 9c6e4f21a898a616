"""The files that come with the program are found in a source tree and in a wheel."""

import tomllib
from pathlib import Path

from chartmaker.files import assets

PROJECT = Path(__file__).parents[2]


def test_assets_inside_the_package_come_before_those_of_the_repository(tmp_path, monkeypatch):
    package = tmp_path / "chartmaker"
    (package / "files").mkdir(parents=True)
    monkeypatch.setattr(assets, "__file__", str(package / "files" / "assets.py"))
    assets.assets_folder.cache_clear()
    try:
        assert assets.assets_folder() == tmp_path / "assets"
        (package / "assets").mkdir()
        assets.assets_folder.cache_clear()
        assert assets.assets_folder() == package / "assets"
    finally:
        assets.assets_folder.cache_clear()


def test_a_wheel_takes_in_every_folder_of_assets_and_the_examples_with_their_palette():
    project = tomllib.loads((PROJECT / "pyproject.toml").read_text(encoding="utf-8"))
    taken = project["tool"]["hatch"]["build"]["targets"]["wheel"]["force-include"]
    folders = [folder.name for folder in (PROJECT / "assets").iterdir() if folder.is_dir() and folder.name[0] != "_"]
    assert "motifs" in folders
    files = [*PROJECT.glob("examples/*.hat.toml"), *PROJECT.glob("palettes/*.palette.toml")]
    assert len(files) >= 3
    shown = {path.relative_to(PROJECT).as_posix(): f"chartmaker/assets/{path.relative_to(PROJECT)}" for path in files}
    assert taken == {f"assets/{name}": f"chartmaker/assets/{name}" for name in folders} | shown
