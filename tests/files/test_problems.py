"""How problems are told: place, sentence, and what now, with nothing in them that a terminal would obey."""

import pytest

from chartmaker.files.problems import MOST_SHOWN, FileRefused, Problem, ProblemList, UserProblem, printable, refusal


def test_a_problem_says_where_what_and_what_now():
    assert str(UserProblem("the folder is full", where="cap", now="make room")) == "cap: the folder is full; make room"


def test_a_problem_may_have_no_place_and_no_way_out():
    assert str(UserProblem("there is no screen")) == "there is no screen"


def test_one_problem_makes_one_line():
    problems = ProblemList()
    problems.add("hat.shape", "must be a text")
    with pytest.raises(FileRefused) as caught:
        problems.refuse_any("cap.hat.toml")
    assert str(caught.value) == "cap.hat.toml: hat.shape: must be a text; mend it and open the file again"
    assert caught.value.problems == (Problem("hat.shape", "must be a text"),)


def test_no_problem_refuses_nothing():
    ProblemList().refuse_any("cap.hat.toml")


def test_past_the_most_that_are_shown_problems_are_counted():
    problems = ProblemList()
    for number in range(MOST_SHOWN + 1234):
        problems.add(f"bands[{number}]", "is wrong")
    with pytest.raises(FileRefused) as caught:
        problems.refuse_any("cap")
    lines = str(caught.value).splitlines()
    assert lines[0] == f"cap: {MOST_SHOWN + 1234} problems; mend them and open the file again"
    assert lines[-2:] == [f"  bands[{MOST_SHOWN - 1}]: is wrong", "  and 1234 more"]
    assert len(lines) == MOST_SHOWN + 2


def test_a_near_name_is_suggested_and_a_far_one_is_not():
    problems = ProblemList()
    problems.add("haed", "unknown key", word="haed", known=("head", "shape"))
    problems.add("colour", "unknown key", word="colour", known=("head", "shape"))
    with pytest.raises(FileRefused) as caught:
        problems.refuse_any("cap")
    assert [problem.text for problem in caught.value.problems] == ["unknown key; did you mean 'head'?", "unknown key"]


def test_signs_that_a_terminal_obeys_are_written_out():
    refused = refusal("title \x1b[31m is \u202e wrong\n", where="a\x07b")
    assert str(refused) == "a\\x07b: title \\x1b[31m is \\u202e wrong\\n"


def test_what_is_very_long_loses_its_middle():
    assert printable("begin" + "x" * 10_000 + "end") == "begin" + "x" * 144 + " … " + "x" * 146 + "end"
