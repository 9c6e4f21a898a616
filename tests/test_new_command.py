import re
from pathlib import Path

import pytest

from chartmaker.cli import main
from chartmaker.files.design_reading import read_design
from chartmaker.files.palette_reading import read_palette_beside
from chartmaker.knit.answers import sources_for
from chartmaker.knit.sizes import sizes
from chartmaker.model.gauge import Gauge

PALETTE = Path(__file__).parents[1] / "palettes" / "allotment.palette.toml"


@pytest.fixture
def out(tmp_path):
    return tmp_path / "one.hat.toml"


def new(out, *words):
    return main(["new", str(out), *words])


def test_a_hat_is_begun_from_head_and_gauge_and_told_in_sentences(out, capsys):
    assert new(out, "--head", "56", "--gauge", "30x34") == 0
    told = capsys.readouterr().out
    design = read_design(out)
    assert f"{design.bands[0].stitches(0)} stitches are cast on" in told
    assert design.gauge == Gauge(stitches_per_10cm=30, rounds_per_10cm=34)
    assert "A and B have no lot yet" in told
    assert "a head of 56 cm (22.0 in, US size 7)" in told


def test_everything_that_was_not_said_is_told_with_its_source_and_what_was_said_is_not(out, capsys):
    assert new(out, "--shape", "tam", "--head", "56", "--gauge", "30x34", "--ease", "-8") == 0
    told = capsys.readouterr().out
    for one in sources_for("tam"):
        assert (one.source in told) == (one.field != "ease_percent")
    assert read_design(out).hat.ease_percent == -8


@pytest.mark.parametrize(
    ("name", "title"), [("lockside-cap.hat.toml", "Lockside cap"), ("Moss.hat.toml", "Moss"), ("--.hat.toml", "")]
)
def test_a_hat_is_called_what_its_file_is_called(tmp_path, name, title):
    assert new(tmp_path / name, "--head", "56", "--gauge", "30x34") == 0
    assert read_design(tmp_path / name).title == title


def test_every_answer_can_be_said(out):
    words = "--shape stocking --head 52 --gauge 26x30 --brim turned-up --brim-depth 3 --ease -7 --depth 60 --taper 3"
    words += " --repeat 8 --letters CD --pompom 6 --yarn 300 --title Lock"
    assert new(out, *words.split()) == 0
    design = read_design(out)
    assert (design.title, design.metres_per_100g, design.hat.shape, design.hat.depth_cm) == (
        "Lock",
        300,
        "stocking",
        60,
    )
    assert design.hat.fold.rounds == round(3 * 3.0) - 4
    assert [(trim.kind, trim.letter, trim.size_cm) for trim in design.hat.trims] == [("pompom", "D", 6)]
    assert design.bands[-1].times == 3
    assert design.bands[3].stitches(0) % 8 == 0
    assert design.hat.cast_on.letter == "C"


def test_a_crown_can_be_chosen(out):
    words = "--head 56 --gauge 30x34 --crown pointed --sections 5 --decrease centred"
    assert new(out, *words.split()) == 0
    crown = read_design(out).bands[-1]
    assert crown.times == 5


@pytest.mark.parametrize(("repeat", "is_held"), [("17", False), ("16", True)])
def test_a_repeat_that_closes_up_round_no_near_count_is_told(out, capsys, repeat, is_held):
    # 56 cm less 9 % at 22 to 10 cm are 112 stitches, 7 × 16; 102 and 119 are over 3 cm off.
    assert new(out, "--head", "56", "--gauge", "22x26", "--repeat", repeat) == 0
    assert ("A repeat of 17 closes up round no count" in capsys.readouterr().out) != is_held


def test_lots_of_a_palette_are_chosen_and_the_design_finds_the_palette_again(out, capsys):
    assert new(out, "--head", "56", "--gauge", "30x34", "--palette", str(PALETTE)) == 0
    design = read_design(out)
    assert {letter for letter, _ in design.colourway.lots} == {"A", "B"}
    assert read_palette_beside(design, out) is not None
    assert "A is White fleece, undyed (white)" in capsys.readouterr().out


def test_a_size_can_stand_for_the_head(out):
    assert new(out, "--size", "Woman, mean", "--gauge", "30x34") == 0
    assert read_design(out).hat.head_cm == pytest.approx(56.11)


@pytest.mark.parametrize(
    ("text", "stitches", "rounds"),
    [
        ("30x34", 30, 34),
        ("30×34", 30, 34),
        ("45/15x17/5", 30, 34),
        ("22.5x26", 22.5, 26),
        ("28/4inx32/4in", 28 / 1.016, 32 / 1.016),
    ],
)
def test_a_gauge_is_understood_as_it_was_counted(out, text, stitches, rounds):
    assert new(out, "--head", "56", "--gauge", text) == 0
    gauge = read_design(out).gauge
    assert (gauge.stitches_per_10cm, gauge.rounds_per_10cm) == pytest.approx((stitches, rounds))


@pytest.mark.parametrize(("text", "head_cm"), [("56", 56), ("56cm", 56), ("22in", 55.88), ("22.5 in", 57.15)])
def test_a_head_may_be_measured_in_inches(out, text, head_cm):
    assert new(out, "--head", text, "--gauge", "30x34") == 0
    assert read_design(out).hat.head_cm == pytest.approx(head_cm)


@pytest.mark.parametrize("text", ["", "wide", "5.6.0", "-56", "56mm", "nan"])
def test_a_length_that_is_none_is_refused(out, text, capsys):
    with pytest.raises(SystemExit):
        new(out, f"--head={text}", "--gauge", "30x34")
    assert "is no" in capsys.readouterr().err


def test_what_is_there_already_is_left_alone(out, capsys):
    out.write_text("mine", encoding="utf-8")
    assert new(out, "--head", "56", "--gauge", "30x34") == 2
    assert out.read_text(encoding="utf-8") == "mine"
    assert "there is something already" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("words", "sentence"),
    [
        ("--head 20 --gauge 5x6", "a head of 20 cm at 5 stitches in 10 cm comes to 9 stitches"),
        ("--head 200 --gauge 30x34", "head_cm is 200, outside 20 to 90"),
        ("--head 0 --gauge 30x34", "head_cm is 0, outside 20 to 90"),
        ("--gauge 30x34", "the head is not said"),
        ("", "the head and the gauge are not said"),
        ("--head 56 --gauge 30x34 --shape stocking --crown flat", "--crown is of cap and tam alone"),
        ("--head 56 --gauge 30x34 --widen 40", "--widen is of tam alone"),
        ("--head 56 --gauge 30x34 --shape tam --taper 3", "--taper is of stocking alone"),
        ("--head 56 --gauge 30x34 --shape stocking --taper 24", "take 11 or fewer at once"),
        ("--head 56", "the gauge is not said"),
        ("--head 56 --gauge 100x20 --shape stocking", "the depth is 265.8 cm, outside 5 to 150 cm"),
        ("--size womann --gauge 30x34", "there is no size 'womann'"),
        ("--head 56 --gauge 30x34 --depth 10", "leaves no body: ask for"),
        ("--head 56 --gauge 30x34 --letters a", "a letter is one capital"),
        ("--head 56 --gauge 30x34 --palette nowhere.toml", "nowhere.toml"),
    ],
)
def test_what_cannot_be_made_is_told_in_one_sentence_and_writes_nothing(out, capsys, words, sentence):
    assert new(out, *words.split()) == 2
    told = capsys.readouterr().err
    assert sentence in told
    assert len(told.strip().splitlines()) == 1
    assert not out.exists()


@pytest.mark.parametrize(
    "text", ["30", "x34", "30x", "..x..", "0x34", "30x1000", "30/4inx", "30/0x34", "thirty by forty"]
)
def test_a_gauge_that_is_none_is_refused(out, text, capsys):
    with pytest.raises(SystemExit) as ended:
        new(out, "--head", "56", "--gauge", text)
    assert ended.value.code == 2
    assert "gauge" in capsys.readouterr().err


def test_without_a_file_to_write_it_says_so(capsys):
    assert main(["new", "--head", "56", "--gauge", "30x34"]) == 2
    assert "the new design needs a file" in capsys.readouterr().err


def test_the_sizes_are_listed_with_their_sources(capsys):
    assert main(["new", "--sizes"]) == 0
    told = capsys.readouterr().out
    for size in sizes():
        assert size.source in told
        assert re.search(rf"{re.escape(size.name)} +{size.head_cm:.1f} cm", told)
