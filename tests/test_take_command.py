"""`chartmaker take`, run as its user runs it."""

import subprocess
import sys
from pathlib import Path

import pytest

from chartmaker.cli import main
from chartmaker.files.palette_reading import read_palette
from chartmaker.files.palette_writing import save_palette
from chartmaker.model.palette import Palette
from tests.builders import lot
from tests.files.measurements.builders import SAMPLES

GERMAN = SAMPLES / "lab-german.csv"


@pytest.fixture
def shed(tmp_path: Path) -> Path:
    path = tmp_path / "shed.palette.toml"
    save_palette(Palette(name="Shed", lots=(lot("wau", (78.1, -2.4, 61.0)), lot("woad-1", (30, -5, -22)))), path)
    return path


def test_readings_are_added_and_each_lot_is_told(shed, capsys):
    assert main(["take", str(GERMAN), "--into", str(shed)]) == 0
    told = capsys.readouterr().out
    assert "Krapp, erstes Bad → new lot krapp-erstes-bad: 2 readings added, L* a* b* 38.4 40.9 27.3, lab" in told
    assert "Wau → lot wau: 0 readings added, 1 known already" in told
    assert "Note: names are taken from column 1" in told
    assert told.endswith("Added 2 readings to 1 lot from CSV.\n")
    assert len(read_palette(shed).lot("krapp-erstes-bad").readings) == 2
    assert shed.with_name(shed.name + ".before").is_file()


def test_taking_it_again_changes_nothing(shed, capsys):
    main(["take", str(GERMAN), "--into", str(shed)])
    once = shed.read_bytes()
    assert main(["take", str(GERMAN), "--into", str(shed)]) == 0
    assert capsys.readouterr().out.endswith("Added 0 readings to 0 lots from CSV.\n")
    assert shed.read_bytes() == once


def test_a_dry_run_only_shows(shed, capsys):
    before = shed.read_bytes()
    assert main(["take", str(GERMAN), "--into", str(shed), "--dry-run"]) == 0
    assert capsys.readouterr().out.endswith("Would add 2 readings to 1 lot from CSV.\n")
    assert shed.read_bytes() == before


def test_a_palette_that_is_not_there_is_made_and_told(tmp_path, capsys):
    path = tmp_path / "new.palette.toml"
    assert main(["take", str(SAMPLES / "objects.cxf"), "--into", str(path)]) == 0
    assert "was not there; it is a new palette now." in capsys.readouterr().out
    palette = read_palette(path)
    assert palette.name == "new"
    assert [each.id for each in palette.lots] == ["madder-chalk", "weld"]


@pytest.mark.parametrize("name", sorted(path.name for path in SAMPLES.iterdir()))
def test_every_sample_is_taken_into_a_palette_that_lists(name, tmp_path, capsys):
    path = tmp_path / "p.palette.toml"
    assert main(["take", str(SAMPLES / name), "--into", str(path)]) == 0
    assert main(["lots", str(path)]) == 0
    assert read_palette(path).lots[-1].id in capsys.readouterr().out


@pytest.mark.parametrize("broken", ["measurements", "palette"])
def test_a_broken_file_of_either_kind_gets_its_sentence_and_nothing_is_written(broken, shed, tmp_path, capsys):
    bad = tmp_path / "bad.txt"
    bad.write_text("name,L,a,b\nx,5o,1,2\n" if broken == "measurements" else "format = ", encoding="utf-8")
    words = (bad, shed) if broken == "measurements" else (GERMAN, bad)
    before = {path: path.read_bytes() for path in tmp_path.iterdir()}
    assert main(["take", str(words[0]), "--into", str(words[1])]) == 2
    told = capsys.readouterr()
    assert told.out == ""
    assert told.err.startswith(f"chartmaker: {bad}: ")
    assert {path: path.read_bytes() for path in tmp_path.iterdir()} == before


def test_without_a_palette_the_call_is_wrong(capsys):
    with pytest.raises(SystemExit) as end:
        main(["take", str(GERMAN)])
    assert end.value.code == 2
    assert "--into" in capsys.readouterr().err


def test_it_works_without_qt_and_loads_no_science_library_for_the_usual_bands(tmp_path):
    words = ["take", str(SAMPLES / "spaces-percent.txt"), "--into", str(tmp_path / "a.palette.toml")]
    script = (
        "import sys; sys.modules.update(dict.fromkeys(['PySide6', 'shiboken6']))\n"
        "from chartmaker.cli import main\n"
        f"code = main({words!r})\n"
        "print(code, sorted({'colour', 'scipy', 'reportlab', 'PIL'} & set(sys.modules)))\n"
    )
    run = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, check=True)
    assert run.stdout.splitlines()[-1] == "0 []"
