from chartmaker.model.palette import Bath, Palette
from chartmaker.model.settings import Limits, Viewing
from chartmaker.shade.first_lots import first_colourway
from tests.builders import lot


def chosen(*lots, letters="AB"):
    palette = Palette(baths=(Bath(id="pot", dyestuff="madder", ratio=1),), lots=lots)
    return dict(first_colourway(palette, letters, viewing=Viewing(), limits=Limits()).lots)


WHITE, GREY, BLACK = (lot(name, (value, 0, 0)) for name, value in (("white", 90), ("grey", 50), ("black", 15)))
RED, PINK = (lot(name, (value, 40, 20), bath="pot") for name, value in (("red", 40), ("pink", 75)))


def test_the_ground_is_the_lightest_lot_and_the_figure_the_darkest():
    assert chosen(GREY, BLACK, WHITE) == {"A": "white", "B": "black"}


def test_a_dyed_lot_that_is_clear_of_the_ground_goes_before_undyed_fleece():
    assert chosen(WHITE, BLACK, RED) == {"A": "white", "B": "red"}
    assert chosen(WHITE, BLACK, PINK) == {"A": "white", "B": "black"}


def test_each_further_letter_lies_as_far_in_value_from_the_others_as_can_be():
    assert chosen(WHITE, GREY, BLACK, letters="ABC") == {"A": "white", "B": "black", "C": "grey"}


def test_lots_without_a_reading_are_not_chosen_and_letters_beyond_the_lots_go_without():
    assert chosen(lot("unread"), WHITE, letters="ABC") == {"A": "white"}
    assert chosen() == {}
