from collections import Counter

from chartmaker.app.action import MENUS
from chartmaker.app.actions import ACTIONS


def mnemonics(texts):
    return [text.replace("&&", "").partition("&")[2][:1].upper() for text in texts if "&" in text.replace("&&", "")]


def twice(letters):
    return [letter for letter, count in Counter(letters).items() if count > 1]


def test_every_menu_has_a_key_of_its_own_in_the_bar(window):
    texts = [entry.text() for entry in window.menuBar().actions()]
    assert len(mnemonics(texts)) == len(texts)
    assert twice(mnemonics(texts)) == []


def test_no_menu_gives_a_key_twice(window):
    for entry in window.menuBar().actions():
        assert twice(mnemonics([action.text() for action in entry.menu().actions()])) == [], entry.text()


def test_the_bar_has_the_menus_of_the_table_in_its_order(window):
    used = {action.menu for action in ACTIONS}
    assert [entry.text() for entry in window.menuBar().actions()] == [
        text for menu, text in MENUS.items() if menu in used
    ]
