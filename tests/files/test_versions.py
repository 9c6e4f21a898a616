"""The steps from an old version to the newest, tried with formats that do not exist."""

import pytest

from chartmaker.files.problems import FileRefused
from chartmaker.files.versions import NEWEST, STEPS, brought_up


def _with_beads(data):
    return {**data, "beads": data["pearls"] * 2}


def _without_pearls(data):
    return {key: value for key, value in data.items() if key != "pearls"}


FAKE_STEPS = {1: _with_beads, 2: _without_pearls}
OLD = {"format": "chartmaker-design", "version": 1, "pearls": 4}


def test_an_old_file_takes_every_step_in_its_order():
    data = brought_up(OLD, "old", kind="chartmaker-design", newest=3, steps=FAKE_STEPS)
    assert data == {"format": "chartmaker-design", "version": 3, "beads": 8}


def test_a_file_of_a_later_version_takes_only_the_steps_that_remain():
    data = brought_up({**OLD, "version": 2}, "old", kind="chartmaker-design", newest=3, steps=FAKE_STEPS)
    assert data == {"format": "chartmaker-design", "version": 3}


def test_the_data_given_stays_as_it_was():
    brought_up(OLD, "old", kind="chartmaker-design", newest=3, steps=FAKE_STEPS)
    assert OLD == {"format": "chartmaker-design", "version": 1, "pearls": 4}


def test_there_is_a_step_from_every_old_version():
    assert sorted(STEPS) == list(range(1, NEWEST))


@pytest.mark.parametrize(
    ("version", "sentence"),
    [
        (4, "it was written by a newer Chartmaker, in version 4; this one reads up to 3; it is left as it is"),
        (
            10**4000,
            "it was written by a newer Chartmaker, in version far ahead; this one reads up to 3; it is left as it is",
        ),
        (0, "version: the first is 1"),
        (-1, "version: the first is 1"),
        (True, "version: must be a whole number, not true or false"),
        (1.0, "version: must be a whole number, not the number 1.0"),
        ([1], "version: must be a whole number, not an array"),
    ],
)
def test_a_version_that_cannot_be_read_is_refused(version, sentence):
    with pytest.raises(FileRefused) as caught:
        brought_up({**OLD, "version": version}, "cap", kind="chartmaker-design", newest=3, steps=FAKE_STEPS)
    assert str(caught.value) == f"cap: {sentence}"


@pytest.mark.parametrize("word", [7, ["chartmaker-design"], {"a": 1}, "Chartmaker-design", ""])
def test_a_format_that_is_another_word_or_none_is_refused(word):
    with pytest.raises(FileRefused, match="a design says 'chartmaker-design'"):
        brought_up({"format": word, "version": 1}, "cap", kind="chartmaker-design")
