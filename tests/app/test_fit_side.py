"""The fit beside the hat, by mouse and keys: counts, helps, rounds, and fitting anew, one step each."""

from collections.abc import Callable, Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QSettings, Qt
from PySide6.QtWidgets import QPushButton
from pytestqt.qtbot import QtBot

from chartmaker.app.fit_side import FitSide
from chartmaker.app.open_design import OpenDesign
from chartmaker.app.units_setting import UnitsSetting
from chartmaker.files.design_reading import read_design
from chartmaker.knit.answers import defaults_for
from chartmaker.knit.starter import started
from chartmaker.model.design import Design
from chartmaker.model.edits import ReplaceSetting
from chartmaker.model.gauge import Gauge

GAUGE = Gauge(stitches_per_10cm=30, rounds_per_10cm=34)
LOOSER = Gauge(stitches_per_10cm=26, rounds_per_10cm=30)
CAP = read_design(Path(__file__).parents[2] / "examples" / "lockside-cap.hat.toml")
NEW = started(defaults_for(shape="cap", head_cm=56, gauge=GAUGE))
Shower = Callable[[Design], FitSide]


@pytest.fixture
def show(qtbot: QtBot, settings: QSettings) -> Iterator[Shower]:
    """Give a function that shows the column on a design, and waits until all is found."""
    shown = []

    def show_side(design: Design) -> FitSide:
        side = FitSide(OpenDesign(design), UnitsSetting(settings))
        shown.append(side)
        side.resize(300, 1100)
        side.show()
        settle(qtbot, side)
        return side

    yield show_side
    for side in shown:
        side.finish()
        side.document.finish()
        side.close()
        side.deleteLater()


def settle(qtbot: QtBot, side: FitSide) -> None:
    qtbot.waitUntil(lambda: side.is_settled and all(button.isVisible() for button in side.helps))


def click(qtbot: QtBot, button: QPushButton) -> None:
    assert button.isVisible()
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def row_middle(side: FitSide, row: int) -> QPoint:
    return side.counts.visualRect(side.counts.model().index(row, 0)).center()


def counts(side: FitSide) -> list[int]:
    return [candidate.stitches for candidate in side.counts.candidates]


def cast_on(side: FitSide) -> int:
    return side.document.design.bands[0].stitches(0)


def change(qtbot: QtBot, side: FitSide, gauge: Gauge) -> None:
    side.document.do(ReplaceSetting("gauge", side.document.design.gauge, gauge, "Change the gauge"))
    settle(qtbot, side)


def test_the_counts_are_shown_nearest_first_with_the_present_one_marked(show: Shower) -> None:
    side = show(CAP)
    assert counts(side) == [144, 168, 120]
    assert [side.counts.item(0, column).text() for column in range(4)] == ["▸ 144", "51.4", "−8", "fits"]
    assert side.counts.item(1, 0).text() == "168"
    assert "24 times small lozenges, waves" in side.times.text()


def test_a_click_on_a_count_casts_it_on_as_one_step(qtbot: QtBot, show: Shower) -> None:
    side = show(CAP)
    qtbot.mouseClick(side.counts.viewport(), Qt.MouseButton.LeftButton, pos=row_middle(side, 1))
    settle(qtbot, side)
    assert cast_on(side) == 168
    assert side.document.stack.count() == 1
    assert side.document.stack.undoText() == "Cast on 168 stitches"
    assert [text for text in (side.counts.item(row, 0).text() for row in range(3)) if "▸" in text] == ["▸ 168"]
    side.document.stack.undo()
    assert side.document.design == CAP


def test_the_arrow_keys_look_at_a_count_and_enter_casts_it_on(qtbot: QtBot, show: Shower) -> None:
    side = show(CAP)
    side.counts.setFocus()
    qtbot.keyClick(side.counts, Qt.Key.Key_Down)
    assert "At 168: 42 times edge" in side.times.text()
    assert not side.document.stack.count()
    qtbot.keyClick(side.counts, Qt.Key.Key_Return)
    settle(qtbot, side)
    assert cast_on(side) == 168


def test_a_click_on_the_present_count_is_no_step(qtbot: QtBot, show: Shower) -> None:
    side = show(CAP)
    qtbot.mouseClick(side.counts.viewport(), Qt.MouseButton.LeftButton, pos=row_middle(side, 0))
    assert not side.document.stack.count()


def test_a_help_is_done_by_its_button_as_one_step(qtbot: QtBot, show: Shower) -> None:
    side = show(replace(CAP, hat=replace(CAP.hat, ease_percent=0)))
    assert side.reading
    assert len(side.helps) == len(side.reading.helps) > 1
    wanted = side.reading.helps[0].candidate.stitches
    click(qtbot, side.helps[0])
    settle(qtbot, side)
    assert cast_on(side) == wanted
    assert side.document.stack.count() == 1
    assert side.helps == []


def test_rounds_are_taken_out_by_one_button(qtbot: QtBot, show: Shower) -> None:
    side = show(replace(NEW, hat=replace(NEW.hat, depth_cm=19)))
    assert side.add_or_take.text() == "Take out 8 rounds"
    rounds = sum(len(band.rounds) for band in side.document.design.bands)
    click(qtbot, side.add_or_take)
    settle(qtbot, side)
    assert sum(len(band.rounds) for band in side.document.design.bands) == rounds - 8
    assert side.document.stack.count() == 1
    assert not side.add_or_take.isVisible()
    assert "fits" in side.depth_words.text()


def test_a_part_of_one_round_is_told_as_one(show: Shower) -> None:
    tam = started(defaults_for(shape="tam", head_cm=56, gauge=GAUGE))
    assert "widening 1 round," in show(tam).bar.accessibleDescription()


def test_rounds_that_no_plain_round_can_give_are_refused_in_words(qtbot: QtBot, show: Shower) -> None:
    side = show(replace(CAP, hat=replace(CAP.hat, depth_cm=None)))
    with qtbot.waitSignal(side.refused) as refusal:
        click(qtbot, side.add_or_take)
    assert "11 rounds should go" in refusal.args[0]
    assert not side.document.stack.count()


def test_another_gauge_says_what_moves_and_one_button_fits_anew(qtbot: QtBot, show: Shower) -> None:
    side = show(NEW)
    assert not side.fit_anew.isVisible()
    change(qtbot, side, LOOSER)
    assert "Cast on 132 instead of 156, 50.8 cm round." in side.moved_words.text()
    click(qtbot, side.fit_anew)
    settle(qtbot, side)
    assert cast_on(side) == 132
    assert side.document.stack.count() == 2
    assert not side.fit_anew.isVisible()


def test_undoing_a_fit_brings_back_what_it_mended_and_undoing_the_change_takes_it_away(
    qtbot: QtBot, show: Shower
) -> None:
    side = show(NEW)
    change(qtbot, side, LOOSER)
    click(qtbot, side.fit_anew)
    settle(qtbot, side)
    side.document.stack.undo()
    settle(qtbot, side)
    assert side.fit_anew.isVisible()
    side.document.stack.undo()
    settle(qtbot, side)
    assert not side.fit_anew.isVisible()


def test_a_hat_that_was_opened_misfitting_is_fitted_anew_by_the_same_button(qtbot: QtBot, show: Shower) -> None:
    side = show(replace(NEW, gauge=Gauge(stitches_per_10cm=22, rounds_per_10cm=26)))
    assert side.fit_anew.isVisible()
    # 56 cm less 9 % are 51.0 cm.
    assert "Cast on 112 instead of 156, 50.9 cm round." in side.moved_words.text()
    click(qtbot, side.fit_anew)
    settle(qtbot, side)
    assert cast_on(side) == 112
    assert not side.fit_anew.isVisible()
    assert not side.helps


def test_another_design_is_compared_with_itself(qtbot: QtBot, show: Shower) -> None:
    side = show(NEW)
    change(qtbot, side, LOOSER)
    side.document.replace(CAP, path=None, palette=None)
    settle(qtbot, side)
    assert not side.moved_words.isVisible()
    assert counts(side)[0] == 144


def test_the_depth_bar_tells_its_parts_to_screen_readers_in_the_units_shown(show: Shower, settings: QSettings) -> None:
    side = show(NEW)
    assert side.bar.accessibleDescription() == (
        "brim 13 rounds, 3.8 cm; body 19 rounds, 5.6 cm; crown 41 rounds, 12.1 cm; 21.5 cm wanted"
    )
    settings.setValue("units", "imperial")
    inches = show(NEW)
    assert "8.48 in wanted" in inches.bar.accessibleDescription()


def test_the_bar_is_painted_to_scale_from_the_brim_up(show: Shower) -> None:
    bar = show(NEW).bar
    picture = bar.grab().toImage()
    ratio = picture.devicePixelRatio()
    column = [picture.pixelColor(round(14 * ratio), y).lightness() for y in range(picture.height())]
    inked = [y for y, value in enumerate(column) if value < column[-1] - 10]
    darkest = [y for y in inked if column[y] < 120]  # the brim, the darkest fill, and the lines between parts
    share = sum(1 for y in darkest if y > inked[-1] - 0.3 * len(inked)) / len(inked)
    assert share == pytest.approx(13 / 73, abs=0.03)


def test_helps_are_told_in_the_units_shown(show: Shower, settings: QSettings) -> None:
    settings.setValue("units", "imperial")
    side = show(replace(CAP, hat=replace(CAP.hat, ease_percent=0)))
    spoken = [button.accessibleDescription() for button in side.helps]
    assert "then 156 can be cast on, 21.93 in round." in spoken[0]  # 55.7 cm / 2.54
    assert not any(" cm" in text for text in spoken)


def test_a_stocking_cap_is_told_the_least_depth_that_will_do(show: Shower) -> None:
    side = show(started(defaults_for(shape="stocking", head_cm=56, gauge=GAUGE)))
    assert "at least 20.7 cm wanted: fits" in side.depth_words.text()  # 56 / 3 + 2


@pytest.mark.parametrize("width", [270, 300, 420])
def test_no_verdict_is_cut_off(show: Shower, width: int) -> None:
    side = show(replace(CAP, hat=replace(CAP.hat, ease_percent=0)))
    side.resize(width, 500)  # so low that it scrolls
    needed = side.counts.sizeHintForColumn(3)
    assert side.counts.columnWidth(3) >= needed
    assert sum(side.counts.columnWidth(column) for column in range(4)) <= side.counts.viewport().width()
