"""The command line, run as its user runs it: what it prints, what it writes, and how it ends."""

import csv
import io
import json
import os
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import pytest
from PIL import Image
from pypdf import PdfReader

from chartmaker import cli, commands
from chartmaker.cli import COMMANDS, main
from chartmaker.files.design_writing import save_design
from chartmaker.files.palette_writing import save_palette
from chartmaker.model.design import Design
from chartmaker.model.palette import Palette
from chartmaker.pictures import picture, tints, viewpoint
from chartmaker.sheets import job, paper
from tests.builders import chart, lot

GOOD = chart(
    "\n".join(["A B | .x.x"] * 4),
    times=37,
    lots={
        "A": lot("pale", labs=[(80, 0, 10), (81, 0, 10)], on_hand_g=90),
        "B": lot("dark", labs=[(30, 0, 9), (31, 0, 9)]),
    },
)
BROKEN_SAMPLES = Path(__file__).parent / "files" / "samples" / "broken"


@pytest.fixture
def good(tmp_path: Path) -> Path:
    return saved(GOOD, tmp_path / "good.hat.toml")


def saved(design: Design, path: Path) -> Path:
    save_design(design, path)
    return path


def test_a_report_without_a_stop_ends_with_0(good: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["report", str(good)]) == 0
    shown = capsys.readouterr().out
    assert "Cast on 148" in shown
    assert "clear" in shown


def test_a_report_with_a_stop_ends_with_1(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = saved(chart("A B | .x.x", times=37), tmp_path / "unfinished.hat.toml")
    assert main(["report", str(path), "--json"]) == 1
    report = json.loads(capsys.readouterr().out)
    assert {finding["severity"] for finding in report["findings"]} >= {"stop"}


def test_the_json_is_all_that_stands_on_standard_output(good: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["report", "--json", str(good)]) == 0
    assert json.loads(capsys.readouterr().out)["format"] == "chartmaker-report"


def test_another_colourway_can_be_chosen_and_a_wrong_one_is_told(
    good: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["report", str(good), "--colourway", "first"]) == 0
    assert main(["report", str(good), "--colourway", "frist"]) == 2
    assert "'first'" in capsys.readouterr().err


@pytest.mark.parametrize(
    "words",
    [
        ["report"],
        ["fit"],
        ["fit", "x.hat.toml", "--ease", "3"],
        ["report", "x.hat.toml", "--colour"],
        ["print", "x.hat.toml"],
        ["print", "x.hat.toml", "-o", "x.pdf", "--paper", "b5"],
        ["print", "x.hat.toml", "-o", "x.pdf", "--sheets", "chart,words"],
        ["picture", "x.hat.toml", "-o", "x.png", "--width", "9"],
        ["picture", "x.hat.toml", "-o", "x.png", "--width", "1e9"],
        ["picture", "x.hat.toml", "-o", "x.png", "--view", "back"],
    ],
)
def test_a_wrong_call_ends_with_2(words: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as end:
        main(words)
    assert end.value.code == 2
    assert "usage" in capsys.readouterr().err


def test_a_word_that_is_no_command_gets_the_commands(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["knit", "a", "b"]) == 2
    told = capsys.readouterr().err
    assert "is no command" in told
    assert ", ".join(COMMANDS) in told


def test_fit_gives_the_counts_nearest_first_and_names_no_band_twice(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """The figures are 56 cm less 6 % at 30 to 10 cm, by hand: 157.92 stitches; 144 are 48 cm, 14.3 % under the head."""
    design = chart("A | ....", "A | ........", "A | ....", times=[36, 18, 36], gauge=(30, 32))
    bands = [replace(band, name=name) for band, name in zip(design.bands, ("rib", "waves", "rib"), strict=True)]
    path = saved(replace(design, bands=tuple(bands)), tmp_path / "a.hat.toml")
    assert main(["fit", str(path), "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert (told["format"], told["version"]) == ("chartmaker-fit", 1)
    assert told["target_stitches"] == pytest.approx(157.92)
    assert [one["stitches"] for one in told["candidates"]] == [160, 152, 168, 144, 176, 136, 184]
    (now,) = [one for one in told["candidates"] if one["is_current"]]
    assert (now["circumference_cm"], round(now["ease_percent"], 1)) == (48.0, -14.3)
    assert now["times"] == {"rib": 36, "waves": 18, "rib 2": 36}
    assert main(["fit", str(path)]) == 0
    assert "as the design is now" in capsys.readouterr().out


def test_fit_tells_what_would_help_where_no_count_is_near(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = saved(chart("A | .", "A B | " + "x" * 39 + ".", times=[160, 4]), tmp_path / "a.hat.toml")
    assert main(["fit", str(path), "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert not told["is_near_enough"]
    assert {one["kind"] for one in told["helps"]} >= {"repeat", "plain-round"}
    assert main(["fit", str(path)]) == 0
    assert told["helps"][0]["text"] in capsys.readouterr().out


@pytest.mark.parametrize("path", sorted(BROKEN_SAMPLES.iterdir()), ids=lambda path: path.name)
def test_a_broken_file_of_every_kind_gets_its_sentence_and_status_2(
    path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    command = "lots" if path.name.endswith(".palette.toml") else "report"
    assert main([command, str(path)]) == 2
    told = capsys.readouterr()
    assert told.out == ""
    assert told.err.startswith("chartmaker: ")
    assert path.name in told.err
    assert "Traceback" not in told.err


def test_fit_tells_what_fitting_anew_would_do_where_no_count_is_near(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "cap.hat.toml"
    assert main(["new", "--head", "56", "--gauge", "30x34", str(path)]) == 0
    text = path.read_text(encoding="utf-8")
    path.write_text(text.replace("per_10cm = 30.0", "per_10cm = 22.0"), encoding="utf-8")
    capsys.readouterr()
    assert main(["fit", str(path)]) == 0
    told = capsys.readouterr().out
    # 56 cm less 9 % at 22 to 10 cm are 112.1 stitches.
    assert "What fitting anew would do" in told
    assert "cast on 112 instead of 156, 50.9 cm round" in told
    assert "change the gauge or the ease" not in told


@pytest.mark.parametrize("command", ["report", "lots", "fit"])
@pytest.mark.parametrize("what", ["absent.toml", "."])
def test_a_file_that_is_not_there_gets_one_sentence(
    command: str, what: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main([command, str(tmp_path / what)]) == 2
    assert len(capsys.readouterr().err.splitlines()) == 1


def test_printing_gives_a_pdf_on_the_paper_asked_for(good: Path, tmp_path: Path) -> None:
    for name, upright_pt, lying_pt in (("a4", 595.3, 841.9), ("letter", 612.0, 792.0), ("a5", 419.5, 595.3)):
        for turn, width_pt in ([], upright_pt), (["--landscape"], lying_pt):
            out = tmp_path / "out.pdf"
            assert main(["print", str(good), "-o", str(out), "--paper", name, *turn]) == 0
            assert float(PdfReader(out).pages[0].mediabox.width) == pytest.approx(width_pt, abs=0.1)


def test_the_chart_is_printed_as_svg_and_png_by_the_ending(good: Path, tmp_path: Path, capsys) -> None:
    for ending, start in (("svg", b"<svg"), ("png", b"\x89PNG")):
        assert main(["print", str(good), "-o", str(tmp_path / f"alone.{ending}"), "--dpi", "60"]) == 0
        assert capsys.readouterr().out.splitlines() == [str(tmp_path / f"alone.{ending}")]
        more = ["--sheets", "key,chart", "--dpi", "60"]
        assert main(["print", str(good), "-o", str(tmp_path / f"chart.{ending}"), *more]) == 0
        files = sorted(tmp_path.glob(f"chart*.{ending}"))
        assert [line.rsplit("/")[-1] for line in capsys.readouterr().out.splitlines()] == [path.name for path in files]
        assert len(files) >= 2
        assert all(path.read_bytes().startswith(start) for path in files)


def test_the_yarn_table_as_csv_has_the_figures_of_the_report(good: Path, capsys) -> None:
    main(["report", str(good), "--json"])
    letters = json.loads(capsys.readouterr().out)["letters"]
    assert main(["report", str(good), "--csv"]) in {0, 1}
    rows = list(csv.DictReader(io.StringIO(capsys.readouterr().out)))
    assert [row["letter"] for row in rows] == [entry["letter"] for entry in letters]
    for row, entry in zip(rows, letters, strict=True):
        assert int(row["stitches"]) == entry["stitches"]
        assert float(row["grams_likely"]) == pytest.approx(entry["grams"]["likely"], abs=0.01)
        assert float(row["metres_high"]) == pytest.approx(entry["metres"]["high"], abs=0.01)
        assert float(row["short_g"]) == pytest.approx(entry["short_g"], abs=0.01)


def test_fewer_sheets_are_fewer_pages(good: Path, tmp_path: Path) -> None:
    pages = {}
    for sheets in ("chart", "chart,yarn,contrast,baths"):
        out = tmp_path / "out.pdf"
        assert main(["print", str(good), "-o", str(out), "--sheets", sheets]) == 0
        pages[sheets] = len(PdfReader(out).pages)
    assert pages["chart"] < pages["chart,yarn,contrast,baths"]


@pytest.mark.parametrize("view", ["shade", "value", "knit", "hat"])
def test_a_picture_is_as_wide_as_asked(view: str, good: Path, tmp_path: Path) -> None:
    out = tmp_path / "out.png"
    assert main(["picture", str(good), "-o", str(out), "--view", view, "--width", "200"]) == 0
    with Image.open(out) as image:
        assert image.width == 200


def test_output_that_cannot_be_written_gets_one_sentence(
    good: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["picture", str(good), "-o", str(tmp_path / "no" / "such" / "folder.png")]) == 2
    assert len(capsys.readouterr().err.splitlines()) == 1


def test_lots_lists_a_palette(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "shed.palette.toml"
    save_palette(Palette(name="Shed", lots=(lot("woad-1", (30, -5, -22)),)), path)
    assert main(["lots", str(path)]) == 0
    assert "woad-1" in capsys.readouterr().out
    assert main(["lots", str(path), "--json"]) == 0
    assert json.loads(capsys.readouterr().out)["lots"][0]["lab"] == [30.0, -5.0, -22.0]


def test_compare_tells_strength_and_an_unknown_lot_gets_a_near_name(capsys: pytest.CaptureFixture[str]) -> None:
    path = str(Path(__file__).parents[1] / "palettes" / "allotment.palette.toml")
    assert main(["compare", path, "madder-1", "madder-2", "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert told["format"] == "chartmaker-comparison"
    assert told["recipe_differences"] == [
        {"key": "load", "reference": 1, "sample": 2},
        {"key": "dyed_on", "reference": "2026-09-12", "sample": "2026-09-13"},
    ]
    assert told["strength_interval"][0] < told["strength"] < told["strength_interval"][1] < 0.6
    assert main(["compare", path, "madder-1", "madder-2"]) == 0
    assert "more exhausted" in capsys.readouterr().out
    assert main(["compare", path, "madder-1", "madder-22"]) == 2
    assert "did you mean 'madder-2'?" in capsys.readouterr().err


def test_a_broken_palette_beside_a_design_is_told_and_the_report_goes_on(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "shed.palette.toml").write_text("format = ", encoding="utf-8")
    path = saved(chart("A | ....", times=37, palette_file="shed.palette.toml"), tmp_path / "a.hat.toml")
    assert main(["report", str(path)]) == 1
    told = capsys.readouterr()
    assert "going on without the palette" in told.err
    assert "Cast on 148" in told.out


def test_control_characters_of_a_name_do_not_reach_the_terminal(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = saved(chart("A | ....", title="red \x1b[31m hat"), tmp_path / "a.hat.toml")
    main(["report", str(path)])
    assert "\x1b" not in capsys.readouterr().out


def test_the_commands_work_without_qt_and_load_no_science_library(good: Path, tmp_path: Path) -> None:
    """Qt is hidden from the import system; what a common report needs is checked by what it loaded."""
    script = (
        "import sys; sys.modules.update(dict.fromkeys(['PySide6', 'shiboken6']))\n"
        "from chartmaker.cli import main\n"
        f"codes = [main(['report', {str(good)!r}])]\n"
        "loaded = {'colour', 'scipy', 'reportlab', 'PIL'} & set(sys.modules)\n"
        f"codes.append(main(['print', {str(good)!r}, '-o', {str(tmp_path / 'a.pdf')!r}]))\n"
        f"codes.append(main(['picture', {str(good)!r}, '-o', {str(tmp_path / 'a.png')!r}, '--view', 'hat']))\n"
        "print(codes, sorted(loaded))\n"
    )
    run = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, check=True)
    assert run.stdout.splitlines()[-1] == "[0, 0, 0] []"


def test_the_window_without_a_display_says_so() -> None:
    bare = {name: value for name, value in os.environ.items() if name not in cli.DISPLAYS}
    script = "import sys\nfrom chartmaker.cli import main\nsys.exit(main([]))\n"
    run = subprocess.run(
        [sys.executable, "-c", script], capture_output=True, text=True, check=False, timeout=60, env=bare
    )
    assert run.returncode == 2
    assert run.stderr == "chartmaker: there is no display to open the window on; all the commands work without one\n"


def test_the_window_without_qt_says_what_to_do() -> None:
    script = (
        "import sys; sys.modules.update(dict.fromkeys(['PySide6', 'shiboken6']))\n"
        "from chartmaker.cli import main\n"
        "sys.exit(main([]))\n"
    )
    run = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, check=False, timeout=60)
    assert run.returncode == 2
    assert "system libraries" in run.stderr


def test_the_command_line_names_what_sheets_and_pictures_have() -> None:
    """The names stand twice, so that `--help` need not load ReportLab and Pillow."""
    assert commands.SHEETS == job.SHEETS
    assert commands.USUAL_SHEETS == job.USUAL_SHEETS
    assert set(commands.HEAVY_LINES.values()) == set(job.HEAVY_LINES)
    assert tuple(paper.PAPERS) == commands.PAPERS
    assert set(commands.VIEWS) == set(picture.VIEWS)
    assert commands.TINTS == tints.TINTS
    assert set(commands.SIDES) == set(viewpoint.VIEWPOINTS)


@pytest.mark.parametrize(
    "asked",
    [
        ["--turn", "90"],
        ["--from", "above"],
        ["--tilt", "-40", "--flat"],
        ["--tint", "value"],
        ["--tint", "protan", "--severity", "0.5"],
    ],
)
def test_the_hat_is_seen_as_asked(asked: list[str], good: Path, tmp_path: Path) -> None:
    usual, other = tmp_path / "usual.png", tmp_path / "other.png"
    common = ["picture", str(good), "--view", "hat", "--width", "120", "-o"]
    assert main([*common, str(usual)]) == 0
    assert main([*common, str(other), *asked]) == 0
    assert usual.read_bytes() != other.read_bytes()


def test_tightness_is_told_in_words_beside_its_picture(
    good: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "a.png"
    assert main(["picture", str(good), "--view", "hat", "--tint", "tightness", "--width", "120", "-o", str(out)]) == 0
    assert "the head in round" in capsys.readouterr().out


@pytest.mark.parametrize("asked", [["--turn", "5"], ["--laid", "--view", "hat"], ["--tilt", "91", "--view", "hat"]])
def test_a_sight_that_there_is_not_is_told_in_a_sentence(
    asked: list[str], good: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["picture", str(good), "-o", str(tmp_path / "a.png"), *asked]) == 2
    assert "program itself" not in capsys.readouterr().err
