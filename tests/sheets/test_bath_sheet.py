import math

import pytest

from chartmaker.appraisal import appraise
from chartmaker.dye.cautions import UNKNOWN
from chartmaker.model.bath_record import BathRecord, LoadRecord
from chartmaker.model.palette import Assist, Bath, Mordant, Planned
from chartmaker.planning import plan_for
from chartmaker.sheets.bath_card import lines_of
from chartmaker.sheets.boxes import Text
from chartmaker.sheets.cautions import DEFERS, GENERAL, PARTICULAR, cautions_for
from chartmaker.sheets.job import PrintJob
from chartmaker.sheets.paper import PAPERS
from chartmaker.sheets.plan import plan_pages
from tests.builders import chart, lot
from tests.sheets.recorder import record


def told(appraisal) -> str:
    return " ".join(record(appraisal, sheets=("baths",)).texts())


def short_of(**bath_fields):
    bath = Bath(**{"id": "pot", "dyestuff": "weld", "ratio": 1.0} | bath_fields)
    lots = {"A": lot("w", (90, 0, 0), on_hand_g=500.0), "B": lot("weld-2", (70, 0, 60), bath="pot", load=2)}
    return appraise(chart("A B | x.", times=72, lots=lots, baths=[bath]))


def test_a_hat_with_enough_yarn_says_that_nothing_is_short():
    lots = {letter: lot(letter, (value, 0, 0), on_hand_g=500.0) for letter, value in (("A", 90), ("B", 20))}
    text = told(appraise(chart("A B | x.", times=72, lots=lots)))
    assert "Nothing is short" in text
    assert "Set the yarn of this hat aside together" in text


def test_an_exhaust_leads_through_the_loads_before_it():
    text = told(short_of())
    assert "load 1" in text
    assert "goes to stock" in text
    assert "load 2" in text


def test_a_stove_card_is_one_page_and_its_figures_are_read_from_two_metres():
    # Snellen: normal sight reads letters of five minutes of arc; figures are 0.67 em high in the house face.
    appraisal = short_of(
        mordants=(Mordant("alum", 12.0), Mordant("cream of tartar", 6.0)), assists=(Assist("washing soda", 2.0),),
        hottest_c=80, minutes=60, ph_start=8.5,
    )  # fmt: skip
    (card,) = plan_for([appraisal]).cards
    for paper in ("a4", "letter"):
        for is_landscape in (False, True):
            first = record(appraisal, sheets=("baths",), paper=paper, is_landscape=is_landscape).pages[0]
            texts = {box.text: box for box in first if isinstance(box, Text)}
            for line in lines_of(card, plan_for([appraisal])):
                size_pt = texts[line.figure].style.size_pt
                assert size_pt >= 24
                assert math.degrees(math.atan(0.67 * size_pt * 25.4 / 72 / 2000)) * 60 > 5
            assert "Labels, safety data sheets and the rules of the place come first." in " ".join(texts)


def test_what_holds_at_every_pot_is_on_the_first_page_of_every_card():
    appraisal = short_of(
        mordants=tuple(Mordant(f"{name} of alum", 12.0) for name in ("first", "second", "third", "fourth", "fifth")),
        assists=tuple(Assist(f"{name} of washing soda", 2.0) for name in ("first", "second", "third", "fourth")),
        dyestuff="a dyestuff with a very long name that no page is wide enough for", hottest_c=80, minutes=60,
    )  # fmt: skip
    for paper in PAPERS:
        for is_landscape in (False, True):
            first, *others = record(appraisal, sheets=("baths",), paper=paper, is_landscape=is_landscape).pages
            words = " ".join(box.text for box in first if isinstance(box, Text))
            assert "Never a kitchen pot. Gloves, eye shield, dust mask." in words
            assert "Labels, safety data sheets and the rules of the place come first." in words
            assert others


def test_cautions_stand_where_the_hand_meets_the_hazard():
    appraisal = short_of(mordants=(Mordant("alum", 12.0),), assists=(Assist("washing soda", 2.0),))
    (card,) = plan_for([appraisal]).cards
    lines = {line.name: line.cautions for line in lines_of(card, plan_for([appraisal]))}
    assert lines["alum"] == ("Eye damage (H318): eye shield.",)
    assert lines["washing soda"] == ("Burns eyes and skin: into the water, never water onto it.",)
    assert lines["water"] == ()
    words = told(appraisal)
    for step in card.timetable:
        for caution in step.cautions:
            assert f"{step.source}) " in words
            assert caution in words[words.index("times and record") :]


def test_a_metal_is_not_taken_for_what_goes_before_the_dyeing():
    appraisal = short_of(mordants=(Mordant("alum", 12.0), Mordant("ferrous sulphate", 2.0)))
    (card,) = plan_for([appraisal]).cards
    details = {line.name: " ".join(line.details) for line in lines_of(card, plan_for([appraisal]))}
    assert "after the dyeing, load by load, in a pot kept for iron" in details["ferrous sulphate"]
    assert "after" not in details["alum"]


def test_every_bath_has_its_card_and_its_bookmark():
    baths = [Bath(id=name, dyestuff=name, ratio=1.0) for name in ("weld", "madder", "walnut")]
    lots = {
        letter: lot(f"{bath.id}-1", (30 * place + 20, 0, 0), bath=bath.id)
        for place, (letter, bath) in enumerate(zip("ABC", baths, strict=True))
    }
    pages = plan_pages(
        appraise(chart("A B | x.\nA C | .x", times=72, lots=lots, baths=baths)), PrintJob(sheets=["baths"])
    )
    marks = [mark for page in pages for mark in page.bookmarks]
    assert [mark.title for mark in marks if mark.level] == [f"{bath.id} (dry), bath {bath.id}" for bath in baths]


def test_a_load_that_goes_on_in_the_same_liquor_takes_no_dyestuff():
    record = BathRecord(loads=(LoadRecord(load=1, fibre_g=25.0, dry_g=24.0),))
    bath = Bath(id="pot", dyestuff="weld", ratio=1.0, record=record)
    lots = {"A": lot("w", (90, 0, 0), on_hand_g=500.0), "B": lot("coming", planned=Planned("pot", 2))}
    text = told(appraise(chart("A B | x.", times=72, lots=lots, baths=[bath])))
    assert "of the loads before, no more dyestuff" in text
    assert "fibre in 1 skein" in text


def test_what_no_bath_gives_is_named():
    lots = {"A": lot("w", (90, 0, 0), on_hand_g=500.0), "B": lot("found", (20, 0, 0), name="Found skein")}
    text = told(appraise(chart("A B | x.", times=72, lots=lots)))
    assert "Found skein: short by" in text
    assert "Nothing is short" not in text


def test_every_bath_sheet_defers_to_labels_and_rules_and_carries_the_cautions():
    text = told(short_of())
    for words in (
        "safety data sheet",
        "rules of the place",
        "never touch food again",
        "gloves",
        "dust mask",
        "below a boil",
    ):
        assert words in text
    assert DEFERS.split(". ")[0] in text


@pytest.mark.parametrize(
    ("name", "hazards"),
    [("alum", ["H318"]), ("ferrous sulphate", ["H302", "H315"]), ("Copper sulphate", ["H410"])],
)
def test_a_mordant_brings_the_hazard_of_its_data_sheet(name, hazards):
    # H statements of the makers' safety data sheets, as listed in the project's facts.
    assert all(hazard in told(short_of(mordants=(Mordant(name, 5.0),))) for hazard in hazards)


def test_a_mordant_that_is_not_in_the_bath_brings_none():
    text = told(short_of(mordants=(Mordant("alum", 12.0),)))
    assert "H410" not in text


def test_an_assist_brings_its_caution_too():
    assert "soda" in told(short_of(assists=(Assist("washing soda", 2.0),))).lower()


def test_where_nothing_is_known_all_cautions_are_given():
    assert cautions_for(("moon dust",)) == (*GENERAL, *PARTICULAR, UNKNOWN)


@pytest.mark.parametrize("paper", PAPERS)
def test_no_page_of_times_and_records_is_without_its_bath(paper):
    appraisal = short_of(
        mordants=(Mordant("alum", 12.0), Mordant("cream of tartar", 6.0)), assists=(Assist("washing soda", 2.0),),
        hottest_c=80, minutes=60, ph_start=8.5,
    )  # fmt: skip
    for is_landscape in (False, True):
        pages = record(appraisal, sheets=("baths",), paper=paper, is_landscape=is_landscape).pages
        words = [" ".join(box.text for box in page if isinstance(box, Text)) for page in pages]
        asked = [page for page in words if "dry weight after" in page or "Dry in the shade" in page]
        assert asked
        assert all("bath pot" in page for page in asked)
