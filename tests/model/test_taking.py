import pytest
from hypothesis import given
from hypothesis import strategies as st

from chartmaker.model.bounds import MOST_LOTS, MOST_READINGS
from chartmaker.model.measured import Measured
from chartmaker.model.palette import Bath, Lot, Palette, Planned
from chartmaker.model.reading import LabReading
from chartmaker.model.taking import LEFT_OUT, NEW_LOT, taking
from tests.builders import lot
from tests.strategies import palettes, readings


def sample(name, *values):
    return Measured(name, tuple(LabReading(lab=(value, 0, 0)) for value in values))


SHED = Palette(lots=(lot("madder-1", (40, 0, 0), name="Madder, first bath"), lot("weld-1", (80, 0, 0), name="Weld")))


@pytest.mark.parametrize("name", ["madder-1", "Madder, first bath", "MADDER,FIRST BATH", "Madder-1 "])
def test_a_sample_goes_to_the_lot_of_its_id_or_its_name_capitals_and_spaces_aside(name):
    taken = taking(SHED, [sample(name, 41)])
    assert taken.lines[0].choice == "madder-1"
    assert not taken.lines[0].is_new
    assert [reading.lab[0] for reading in taken.palette.lot("madder-1").readings] == [40, 41]
    assert taken.palette.lot("weld-1") == SHED.lot("weld-1")


def test_an_id_wins_over_the_name_of_another_lot():
    palette = Palette(lots=(lot("a", name="b"), lot("b", name="c")))
    assert taking(palette, [sample("b", 1)]).lines[0].choice == "b"


def test_a_name_that_two_lots_have_means_the_first_and_says_so():
    palette = Palette(lots=(lot("a", name="Weld"), lot("b", name="weld")))
    line = taking(palette, [sample("WELD", 1)]).lines[0]
    assert line.choice == "a"
    assert line.notes == ("2 lots have this name; the first is meant",)


def test_an_unknown_name_becomes_a_new_lot_with_an_id_made_of_it():
    taken = taking(SHED, [sample("Walnut, 2nd bath!", 30), sample("Walnut 2nd bath", 31), sample("!", 32)])
    assert [line.lot.id for line in taken.lines] == ["walnut-2nd-bath", "walnut-2nd-bath-2", "lot"]
    assert all(line.is_new for line in taken.lines)
    assert [each.name for each in taken.palette.lots[2:]] == ["Walnut, 2nd bath!", "Walnut 2nd bath", "!"]
    assert taken.added == 3


def test_taking_the_same_file_twice_adds_nothing_the_second_time():
    samples = [sample("weld", 81, 81, 82), sample("woad", 30)]
    once = taking(SHED, samples)
    assert once.added == 4
    twice = taking(once.palette, samples)
    assert twice.added == 0
    assert [line.known for line in twice.lines] == [3, 1]
    assert twice.palette == once.palette


def test_equal_readings_of_one_file_all_count_since_repeats_may_agree():
    assert taking(SHED, [sample("weld", 81, 81)]).lines[0].added == 2


def test_a_planned_lot_that_gets_a_reading_is_dyed_and_came_from_its_bath():
    bath = Bath(id="pot", dyestuff="madder", ratio=1)
    palette = Palette(baths=(bath,), lots=(Lot(id="m3", name="Third", planned=Planned("pot", 3)),))
    line = taking(palette, [sample("third", 60)]).lines[0]
    assert (line.lot.planned, line.lot.bath, line.lot.load) == (None, "pot", 3)
    assert "it was planned and counts as dyed now" in line.notes


def test_a_choice_wins_over_the_name_and_can_leave_a_sample_out():
    samples = [sample("weld", 1), sample("weld 2", 2), sample("weld 3", 3)]
    taken = taking(SHED, samples, {0: NEW_LOT, 1: "weld-1", 2: LEFT_OUT})
    assert taken.lines[0].lot.id == "weld"
    assert [reading.lab[0] for reading in taken.palette.lot("weld-1").readings] == [80, 2]
    assert taken.lines[2].lot is None
    assert taken.added == 2


def test_two_samples_may_go_to_one_lot():
    taken = taking(SHED, [sample("a", 1), sample("b", 2)], {0: "weld-1", 1: "weld-1"})
    assert [reading.lab[0] for reading in taken.palette.lot("weld-1").readings] == [80, 1, 2]


def test_readings_past_the_most_of_a_lot_are_left_out_and_told():
    taken = taking(SHED, [sample("weld", *range(MOST_READINGS))])
    assert len(taken.palette.lot("weld-1").readings) == MOST_READINGS
    assert taken.lines[0].notes == (f"readings left out: 1, since a lot holds {MOST_READINGS} at most",)


def test_lots_past_the_most_of_a_palette_are_left_out_and_told():
    full = Palette(lots=tuple(Lot(id=f"l{n}", name=f"l{n}") for n in range(MOST_LOTS)))
    line = taking(full, [sample("one more", 1)]).lines[0]
    assert line.lot is None
    assert line.notes == (f"it is left out: a palette holds {MOST_LOTS} lots at most",)


def measured():
    names = st.text(min_size=1, max_size=8).filter(str.strip)
    return st.builds(Measured, names, st.lists(readings(), min_size=1, max_size=3).map(tuple))


@given(palettes(), st.lists(measured(), max_size=4))
def test_taking_loses_no_reading_and_touches_nothing_but_lots(palette, samples):
    taken = taking(palette, samples)
    assert (taken.palette.yarns, taken.palette.baths, taken.palette.name) == (
        palette.yarns,
        palette.baths,
        palette.name,
    )
    for before in palette.lots:
        after = taken.palette.lot(before.id)
        assert after.readings[: len(before.readings)] == before.readings
        assert (after.name, after.source, after.on_hand_g) == (before.name, before.source, before.on_hand_g)
    grown = sum(len(each.readings) for each in taken.palette.lots) - sum(len(each.readings) for each in palette.lots)
    assert grown == taken.added
    assert taken.added + sum(line.known for line in taken.lines) == sum(len(each.readings) for each in samples)
