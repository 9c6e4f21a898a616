"""Motifs on disk: the shelf that comes with the program, a user's own, and what is refused."""

from itertools import pairwise, product
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.appraisal import appraise
from chartmaker.files.assets import assets_folder
from chartmaker.files.motif_reading import ENDING, motif_from_text, read_motif, read_shelf
from chartmaker.files.motif_writing import motif_to_text, save_motif
from chartmaker.files.problems import FileRefused, UserProblem
from chartmaker.model.bounds import MOST_STITCHES
from chartmaker.model.design import Design
from chartmaker.model.motif import FAMILIES, Motif
from chartmaker.model.notation import rounds_from_text
from chartmaker.model.round import Round
from chartmaker.model.stamping import as_band, motif_id
from tests.strategies import names

SHELF = read_shelf()
BUILT_IN = {motif.id: motif for motif in SHELF.motifs}
SECTIONS = {"six-sections": 6, "eight-sections": 8}
LONGEST, LONGEST_IN_LARGE_STARS = 5, 7
"""Stitches of a float: what craft pages advise at most, and what a large star may have where it is tagged."""
ROUNDS = {
    "peerie": range(1, 8),
    "border": range(9, 14),
    "cross-and-lozenge": range(13, 18),
    "star": range(9, 22),
    "lattice": range(4, 14),
    "crown": range(15, 45),
}
"""Heights of the families: the trade's classes, reference-facts; those of stars, lattices and crowns are ours."""


def test_the_shelf_is_full_and_nothing_on_it_is_refused():
    assert SHELF.refused == ()
    assert len(SHELF.motifs) >= 44
    counts = {family: sum(motif.family == family for motif in SHELF.motifs) for family in ROUNDS}
    assert min(counts.values()) >= 4, counts


@pytest.mark.parametrize("motif", SHELF.motifs, ids=list(BUILT_IN))
def test_a_motif_that_comes_with_the_program_is_fit_to_knit(motif):
    assert motif.longest_float <= (LONGEST_IN_LARGE_STARS if "long-floats" in motif.tags else LONGEST)
    assert motif.parts == 2
    assert any(1 in line.cells for line in motif.rounds)
    assert len(motif.rounds) in ROUNDS[motif.family]
    assert motif.is_shaped == (motif.family == "crown")
    assert motif.id == motif_id(motif.name)


def _look(motif: Motif, *, turn: int, flip: bool, upside_down: bool) -> tuple[bytes, ...]:
    """A drawing turned round the hat, mirrored and stood on its head: it is the same motif to the eye."""
    rows = [line.cells[turn % len(line) :] + line.cells[: turn % len(line)] for line in motif.rounds]
    rows = [row[::-1] for row in rows] if flip else rows
    return tuple(reversed(rows)) if upside_down else tuple(rows)


def test_no_two_motifs_are_alike_however_they_are_turned():
    looks = {
        motif.id: min(
            _look(motif, turn=turn, flip=flip, upside_down=down)
            for turn, flip, down in product(range(motif.repeat), (False, True), (False, True))
        )
        for motif in SHELF.motifs
    }
    assert len(set(looks.values())) == len(looks)


def test_no_motif_is_a_smaller_one_drawn_twice():
    for motif in SHELF.motifs:
        shorter = [part for part in range(1, motif.repeat) if motif.repeat % part == 0]
        same = [
            part
            for part in shorter
            if all(line.cells[:part] * (len(line) // part) == line.cells for line in motif.rounds)
        ]
        assert same == [], motif.id


@pytest.mark.parametrize(
    "motif", [motif for motif in SHELF.motifs if motif.family == "crown"], ids=lambda motif: motif.id
)
def test_a_crown_closes_at_the_usual_gauge_without_puckering(motif):
    sections = next(SECTIONS[tag] for tag in motif.tags if tag in SECTIONS)
    band = as_band(motif, stitches=sections * motif.repeat, letters="AB")
    appraisal = appraise(Design(bands=(band,)))
    assert band.times == sections
    assert not any(appraisal.profile.puckers)
    assert all(appraisal.fabric.meets)
    assert 6 <= appraisal.fabric.counts[-1] <= 16  # craft pages: 6 to 15 stitches are drawn up; 8 sections of 2 make 16


def test_the_shelf_goes_from_small_to_large():
    places = [(FAMILIES.index(motif.family), len(motif.rounds), motif.repeat) for motif in SHELF.motifs]
    assert all(one <= other for one, other in pairwise(places))


def _words():
    return st.from_regex(r"\A[a-z0-9]{1,9}(-[a-z0-9]{1,9}){0,2}\Z")


@st.composite
def motifs(draw) -> Motif:
    repeat, parts = draw(st.integers(1, 12)), draw(st.integers(1, 3))
    rows = draw(st.lists(st.binary(min_size=repeat, max_size=repeat), min_size=1, max_size=5))
    rounds = tuple(Round("ABC"[:parts], bytes(cell % parts for cell in row)) for row in rows)
    tags = tuple(draw(st.lists(_words(), max_size=3)))
    family = draw(st.sampled_from(FAMILIES))
    return Motif(id=draw(_words()), name=draw(names()), family=family, tags=tags, rounds=rounds)


@given(motifs())
def test_a_motif_reads_back_as_it_was_written(motif):
    assert motif_from_text(motif_to_text(motif), "m") == motif


@pytest.mark.parametrize("motif", SHELF.motifs, ids=list(BUILT_IN))
def test_the_files_that_come_with_the_program_are_written_as_the_program_writes_them(motif):
    path = assets_folder() / "motifs" / f"{motif.id}{ENDING}"
    assert path.read_text(encoding="utf-8") == motif_to_text(motif)


def _own(**fields) -> Motif:
    fields = {"id": "tide", "name": "Tide", "family": "own", "rounds": rounds_from_text("A B | x.")} | fields
    return Motif(**fields)


def test_a_users_motifs_come_after_those_of_the_program(tmp_path):
    path = save_motif(_own(name="zz"), tmp_path / "new" / "folder")
    save_motif(_own(id="b", name="Aa"), path.parent)
    assert path.name == "tide.motif.toml"
    assert read_motif(path) == _own(name="zz")
    shelf = read_shelf(path.parent)
    assert shelf.refused == ()
    assert shelf.motifs == (*SHELF.motifs, _own(id="b", name="Aa"), _own(name="zz"))


def test_no_folder_of_ones_own_is_no_problem(tmp_path):
    assert read_shelf(tmp_path / "nowhere") == SHELF


def test_a_broken_motif_is_told_and_keeps_no_other_off_the_shelf(tmp_path):
    save_motif(_own(), tmp_path)
    (tmp_path / "broken.motif.toml").write_text("format = ", encoding="utf-8")
    (tmp_path / "folder.motif.toml").mkdir()
    (tmp_path / "twice.motif.toml").write_text(motif_to_text(_own(name="Again")), encoding="utf-8")
    (tmp_path / "stipple.motif.toml").write_text(motif_to_text(_own(id="stipple")), encoding="utf-8")
    (tmp_path / "notes.txt").write_text("no motif", encoding="utf-8")
    shelf = read_shelf(tmp_path)
    assert shelf.motifs[len(SHELF.motifs) :] == (_own(),)
    told = [str(problem).removeprefix(str(tmp_path)) for problem in shelf.refused]
    assert told == [
        "/broken.motif.toml: line 1, column 10 is not valid TOML: invalid value; mend it and open the file again",
        "/folder.motif.toml: this is a folder, not a file",
        "/stipple.motif.toml: its id 'stipple' is that of 'Stipple' already; give it another id",
        "/twice.motif.toml: its id 'tide' is that of 'Tide' already; give it another id",
    ]


GOOD = motif_to_text(_own(tags=("dots",)))


@pytest.mark.parametrize(
    ("change", "sentence"),
    [
        (('"chartmaker-motif"', '"chartmaker-design"'), "this is a design, not a motif"),
        (("version = 1", "version = 2"), "it was written by a newer Chartmaker"),
        (('family = "own"', 'family = "mine"'), "family: family is 'mine'; it can be peerie, border"),
        (('id = "tide"', 'id = "../tide"'), "id: a motif's id is '../tide'"),
        (('id = "tide"\n', ""), "id: is missing"),
        (('tags = ["dots"]', 'tags = "dots"'), "tags: must be an array of texts, not a text"),
        (('tags = ["dots"]', "tags = [1]"), "tags: must be a text in quotes, not a whole number"),
        (('name = "Tide"', 'nmae = "Tide"'), "nmae: unknown key; did you mean 'name'?"),
        (("A B | x.", "A B | xo"), "rounds, line 1: 'o' at place 2 is no cell; the signs are . x +"),
        (("A B | x.", "A B | x.\nA | .\nB | ."), "round 1 has the letters B; a motif's are A"),
        (("A B | x.", ""), "rounds: a motif has no rounds"),
        (("A B | x.", f"A B | {'x' * (MOST_STITCHES + 1)}"), "a round has 601 cells, more than 600"),
        (("A B | x.", "A B | x." + "\nA B | x." * 700), "rounds: there are 701 rounds, more than 600"),
    ],
)
def test_a_motif_that_is_wrong_is_refused_at_its_place(change, sentence):
    assert change[0] in GOOD
    with pytest.raises(FileRefused) as caught:
        motif_from_text(GOOD.replace(*change), "tide")
    assert sentence in str(caught.value)


def test_a_motif_without_tags_has_none():
    assert motif_from_text(GOOD.replace('tags = ["dots"]\n', ""), "tide") == _own()


def test_saving_where_no_folder_can_be_made_is_told(tmp_path):
    (tmp_path / "file").write_text("", encoding="utf-8")
    with pytest.raises(UserProblem, match="the folder for motifs cannot be made"):
        save_motif(_own(), tmp_path / "file" / "motifs")


def test_saving_again_keeps_what_stood_there(tmp_path):
    path = save_motif(_own(), tmp_path)
    save_motif(_own(name="Ebb"), tmp_path)
    assert read_motif(path).name == "Ebb"
    assert read_motif(path.with_name(path.name + ".before")).name == "Tide"
    assert [motif.name for motif in read_shelf(tmp_path).motifs[len(SHELF.motifs) :]] == ["Ebb"]


def test_the_motif_of_version_1_opens_with_everything_that_it_says():
    """The sample was written by hand and is kept for good."""
    motif = read_motif(Path(__file__).parent / "samples" / "motif-1.motif.toml")
    wedge = (Round("AB", bytes([1, 0, 0, 0])), Round("AB", bytes([1, 0, 0]), bytes([0, 0, 1])), Round("A", bytes(3)))
    tags = ("eight-sections", "plant")
    assert motif == Motif(id="bud", name='A "bud"', family="crown", tags=tags, rounds=wedge)
