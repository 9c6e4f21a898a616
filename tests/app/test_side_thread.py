"""Work beside the window: what comes of it is told in the window's thread, and nothing of Qt's goes in the other."""

import gc
import threading
import weakref

import pytest

from chartmaker.app.side_thread import SideThread


@pytest.fixture
def side(qapp):
    made = SideThread(qapp)
    yield made
    made.wait()
    made.deleteLater()


def test_a_result_is_told_in_the_thread_that_asked(side, qtbot):
    told = []
    side.done.connect(lambda result: told.append((result, threading.get_ident())))
    side.start(threading.get_ident)
    qtbot.waitUntil(lambda: bool(told))
    ((worker, receiver),) = told
    assert worker != receiver == threading.get_ident()
    assert not side.is_running


def test_what_ended_the_work_is_told_as_it_was_raised(side, qtbot):
    fault = ZeroDivisionError("by nothing")

    def fail():
        raise fault

    with qtbot.waitSignal(side.failed) as signal:
        side.start(fail)
    assert signal.args[0] is fault


def test_one_at_a_time_and_after_a_wait_nothing_is_told(side, qtbot):
    leave, told = threading.Event(), []
    side.done.connect(told.append)
    side.start(lambda: leave.wait(5))
    with pytest.raises(ValueError, match="one piece of work"):
        side.start(lambda: None)
    leave.set()
    side.wait()
    assert not side.is_running
    qtbot.wait(20)
    assert told == []


def test_rubbish_waits_until_every_thread_has_ended(side, qapp, qtbot):
    qtbot.waitUntil(gc.isenabled)  # what another test gave up may still be running
    other, leave, seen = SideThread(qapp), threading.Event(), []
    side.start(lambda: seen.append(gc.isenabled()))
    other.start(lambda: leave.wait(5))
    side.wait()
    assert not gc.isenabled()
    leave.set()
    other.wait()
    other.deleteLater()
    assert seen == [False]
    assert gc.isenabled()


class Held:
    """Something whose end is noted with the thread it ends in."""


def test_what_the_work_holds_is_given_up_in_the_windows_thread(side, qtbot):
    held, ends = Held(), []
    watch = weakref.finalize(held, lambda: ends.append(threading.get_ident()))

    def work(held=held):
        return held is not None

    with qtbot.waitSignal(side.done):
        side.start(work)
    del held, work
    assert not watch.alive
    assert ends == [threading.get_ident()]
