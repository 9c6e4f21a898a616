import threading

import pytest

from chartmaker.app.background import Background


@pytest.fixture
def background(qtbot):
    made = Background()
    qtbot.addWidget(made)
    yield made
    made.finish()


def test_work_runs_in_another_thread_and_its_result_comes_back_to_this_one(background, qtbot):
    seen = []
    with qtbot.waitSignal(background.ended):
        background.start(
            "", lambda _step: threading.get_ident(), lambda result: seen.append((result, threading.get_ident()))
        )
    ((worker, receiver),) = seen
    assert worker != threading.get_ident()
    assert receiver == threading.get_ident()


def test_short_work_shows_nothing_and_long_work_shows_how_far_it_is(background, qtbot):
    go_on = threading.Event()

    def work(step):
        step(3, 10)
        go_on.wait(5)

    background.start("Printing", work, lambda _result: None)
    assert not background.isVisible()
    qtbot.waitUntil(background.isVisible)
    assert (background._bar.value(), background._bar.maximum()) == (3, 10)
    with qtbot.waitSignal(background.ended):
        go_on.set()
    assert not background.isVisible()


def test_stopped_work_ends_at_its_next_step_and_its_result_is_dropped(background, qtbot):
    begun, go_on, past_the_step, received = threading.Event(), threading.Event(), [], []

    def work(step):
        begun.set()
        go_on.wait(5)
        step(1, 2)
        past_the_step.append(True)

    background.start("Printing", work, received.append)
    assert begun.wait(5)
    background.stop()
    assert not background.is_busy
    go_on.set()
    background.finish()
    qtbot.wait(20)
    assert past_the_step == []
    assert received == []


def test_work_may_begin_while_stopped_work_still_ends(background, qtbot):
    go_on, received = threading.Event(), []
    background.start("first", lambda _step: go_on.wait(5), lambda _result: received.append("first"))
    background.stop()
    with qtbot.waitSignal(background.ended):
        background.start("second", lambda _step: None, lambda _result: received.append("second"))
        go_on.set()
    assert received == ["second"]


def test_an_error_inside_comes_out_as_itself(background, qtbot):
    def work(_step):
        raise OSError("no room")

    with qtbot.waitSignal(background.failed) as caught:
        background.start("", work, lambda _result: None)
    assert isinstance(caught.args[0], OSError)


def test_two_pieces_of_work_at_a_time_are_refused(background):
    go_on = threading.Event()
    background.start("first", lambda _step: go_on.wait(5), lambda _result: None)
    with pytest.raises(ValueError, match="one piece of work"):
        background.start("second", lambda _step: None, lambda _result: None)
    go_on.set()
