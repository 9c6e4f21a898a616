"""From a picture or words to a pattern in the window: made, shown, stamped, laid in and kept, by real events."""

import time
from pathlib import Path

import numpy as np
import pytest
from PIL import Image
from PySide6.QtCore import QMimeData, QPointF, QRect, Qt, QUrl
from PySide6.QtGui import QDropEvent, QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel, QWidget

from chartmaker.app import pattern_dialog
from chartmaker.files.motif_reading import read_motif
from chartmaker.model.notation import rounds_to_text
from tests.app.hand_at import LEFT, NONE, drag_over, drawn, point
from tests.builders import chart

BARE = ["........"] * 8


def press(widget, key: str):
    pressed = QKeySequence(key)[0]
    QTest.keyClick(widget, pressed.key(), pressed.keyboardModifiers())


def click(button: QAbstractButton):
    QTest.mouseClick(button, LEFT)


@pytest.fixture
def disc(tmp_path: Path) -> Path:
    """Give a picture of 60 × 40 px: white, with a black block of 20 × 20 px in the middle."""
    pixels = np.full((40, 60, 3), 255, dtype=np.uint8)
    pixels[10:30, 20:40] = 0
    path = tmp_path / "block.png"
    Image.fromarray(pixels).save(path)
    return path


@pytest.fixture
def square_gauge():
    """Give a design of square stitches: 8 rounds of 12, worked 10 times."""
    return chart(
        "\n".join(["A B | ............"] * 8),
        times=10,
        gauge=(30.0, 30.0),
        lots={"A": (30, 8, 12), "B": (80, 0, 20)},
    )


class Desk:
    """The dialog as a user meets it."""

    def __init__(self, window, qtbot, key: str):
        self.window, self.qtbot = window, qtbot
        press(window.chart.canvas, key)
        self.dialog = window.chart.patterns.dialog

    def wait(self):
        """Wait until the pattern is worked out."""
        self.qtbot.waitUntil(lambda: self.dialog.pattern is not None)
        return self.dialog

    def read(self, path: Path):
        """Wait until a picture is there and its pattern is worked out."""
        self.qtbot.waitUntil(lambda: path.name in self.dialog.picture.name.text())
        return self.wait()

    def back(self):
        """Wait until the window has the keys again."""
        assert not self.dialog.isVisible()
        self.window.activateWindow()
        self.qtbot.waitUntil(lambda: QApplication.activeWindow() is self.window)
        return self.window.chart.canvas

    def cells(self, row: int) -> str:
        """Give a row of the pattern as it is seen, the last round first."""
        return self.text()[row].split("|")[1].strip()

    def text(self) -> list[str]:
        """Give the pattern as it is seen."""
        return rounds_to_text(self.wait().pattern.rounds).splitlines()


@pytest.fixture
def words(window, qtbot):
    """Give the dialog opened on words."""
    return Desk(window, qtbot, "Ctrl+Shift+T")


@pytest.fixture
def picture(open_on, square_gauge, qtbot, answers, disc):
    """Give the dialog opened on the picture, whose file was asked for."""
    desk = Desk(open_on(square_gauge), qtbot, "Ctrl+Shift+P")
    answers.path = disc
    click(desk.dialog.picture.open)
    desk.dialog.picture.repeat.spin.setValue(12)
    desk.read(disc)
    return desk


def test_words_that_are_typed_become_a_stamp_that_a_click_sets_down_as_one_step(words, window):
    dialog, canvas = words.dialog, window.chart.canvas
    assert dialog.isVisible()
    assert dialog.focusWidget() is dialog.words.text
    QTest.keyClicks(dialog.words.text, "t-")
    assert [line.split("|")[1].strip() for line in words.text()] == [
        "xxxxx.....",
        "..x.......",
        "..x.......",
        "..x...xxx.",
        "..x.......",
        "..x.......",
        "..x.......",
    ]
    QTest.keyClicks(dialog.words.text, "\b")
    words.wait()
    click(dialog.stamp)
    words.back()
    assert canvas.hand.holds_stamp
    assert drawn(window.document.design) == BARE
    QTest.mouseClick(canvas.viewport(), LEFT, NONE, point(canvas, (1, 0)))
    assert drawn(window.document.design) == ["..xxxxx.", *["....x..."] * 6, "........"]
    assert window.document.stack.count() == 1
    press(canvas, "Ctrl+Z")
    assert drawn(window.document.design) == BARE
    press(canvas, "Ctrl+Y")
    assert drawn(window.document.design)[0] == "..xxxxx."


def test_words_wider_than_any_repeat_are_told_and_the_dialog_stays(words, window):
    QTest.keyClicks(words.dialog.words.text, "hat")
    words.wait()
    click(words.dialog.stamp)
    assert words.dialog.isVisible()
    assert words.dialog.message.text() == "! Hat is 18 stitches wide, the band's repeat only 8."
    assert not window.chart.canvas.hand.holds_stamp


def test_a_repeat_that_is_chosen_for_words_puts_ground_beside_them(words):
    dialog = words.dialog
    QTest.keyClicks(dialog.words.text, "i")
    assert words.cells(0) == "xxx."
    assert dialog.words.repeat.spin.value() == 4
    dialog.words.repeat.times.setFocus()
    QTest.keyClick(dialog.words.repeat.times, Qt.Key.Key_Down)
    assert not dialog.words.follows.isChecked()
    assert dialog.words.repeat.times.currentText() == "6 × 24 times"
    assert words.cells(0) == ".xxx.."


def test_a_repeat_too_narrow_for_the_words_and_signs_without_a_face_are_told_in_a_sentence(words, qtbot):
    dialog = words.dialog
    QTest.keyClicks(dialog.words.text, "moss")
    words.wait()
    dialog.words.repeat.spin.setFocus()
    QTest.keyClick(dialog.words.repeat.spin, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
    QTest.keyClicks(dialog.words.repeat.spin, "9\t")
    qtbot.waitUntil(lambda: "24 stitches wide, more than the repeat of 9" in dialog.message.text())
    assert not dialog.stamp.isEnabled()
    click(dialog.words.follows)
    words.wait()
    assert dialog.message.text() == ""
    QTest.keyClicks(dialog.words.text, "{")
    qtbot.waitUntil(lambda: "the stitch alphabet does not have {" in dialog.message.text().lower())
    assert dialog.words.text.text() == "moss{"


def test_a_typeface_is_as_high_as_is_asked_for(words):
    dialog = words.dialog
    QTest.keyClicks(dialog.words.text, "woad")
    click(dialog.words.typeset)
    dialog.words.rounds.setFocus()
    QTest.keyClick(dialog.words.rounds, Qt.Key.Key_Up)
    assert len(words.text()) == 12
    click(dialog.words.stitched)
    dialog.words.scale.setFocus()
    QTest.keyClick(dialog.words.scale, Qt.Key.Key_Up)
    assert len(words.text()) == 14


def test_a_picture_becomes_a_band_above_in_its_own_letters_as_one_step(picture):
    window, dialog = picture.window, picture.dialog
    assert picture.text() == ["A   | ............"] * 2 + ["A B | ....xxxx...."] * 4 + ["A   | ............"] * 2
    dialog.method.ground.setCurrentIndex(dialog.method.ground.findData("C"))
    picture.wait()
    click(dialog.lay_in)
    picture.back()
    band = window.document.design.bands[1]
    assert (band.name, band.times) == ("block", 10)
    assert rounds_to_text(band.rounds).splitlines()[2] == "C B | ....xxxx...."
    assert window.chart.canvas.current[0] == 8
    assert window.document.stack.count() == 1
    press(window.chart.canvas, "Ctrl+Z")
    assert len(window.document.design.bands) == 1
    press(window.chart.canvas, "Ctrl+Y")
    assert len(window.document.design.bands) == 2


def test_a_repeat_that_does_not_divide_the_round_is_no_band_and_says_so(picture):
    picture.dialog.picture.repeat.spin.setValue(13)
    assert picture.dialog.picture.repeat.times.currentIndex() == -1
    picture.wait()
    click(picture.dialog.lay_in)
    assert picture.dialog.message.text() == "! Block repeats every 13 stitches, which does not divide 120."
    assert picture.window.document.stack.count() == 0
    assert picture.dialog.isVisible()


def test_the_level_is_found_and_the_slider_moves_the_preview(picture, tmp_path):
    dialog = picture.dialog
    grey = np.repeat(np.linspace(0, 255, 60, dtype=np.uint8)[None, :], 40, axis=0)
    Image.fromarray(np.dstack([grey] * 3)).save(tmp_path / "ramp.jpg", quality=95)
    dialog.read(tmp_path / "ramp.jpg")
    picture.read(tmp_path / "ramp.jpg")
    found = picture.text()[0].count("x")
    assert 3 < found < 9
    assert abs(dialog.method.level.value() - 50) < 15
    shown = dialog.preview.grab().toImage()
    dialog.method.level.setFocus()
    QTest.keyClick(dialog.method.level, Qt.Key.Key_Home)
    assert dialog.pattern is None
    assert not dialog.method.finds.isChecked()
    assert "x" not in picture.text()[0]
    assert dialog.preview.grab().toImage() != shown
    QTest.keyClick(dialog.method.level, Qt.Key.Key_End)
    assert picture.text()[0].count("x") >= 11
    click(dialog.method.finds)
    assert picture.text()[0].count("x") == found


def test_light_is_figure_when_it_is_asked_for(picture):
    click(picture.dialog.method.inverts)
    assert picture.text()[3] == "A B | xxxx....xxxx"


def test_the_preview_shows_the_repeat_in_its_shades_at_the_gauges_proportion(open_on, qtbot, answers, disc):
    design = chart("A B | ............", times=10, gauge=(20.0, 40.0), lots={"A": (30, 8, 12), "B": (80, 0, 20)})
    desk = Desk(open_on(design), qtbot, "Ctrl+Shift+P")
    answers.path = disc
    click(desk.dialog.picture.open)
    desk.read(disc)
    desk.dialog.picture.repeat.spin.setValue(12)
    assert len(desk.text()) == 16
    preview = desk.dialog.preview
    stitch = preview.stitch_box(0, 0)
    assert stitch.width() == pytest.approx(2 * stitch.height())
    image = preview.grab().toImage()
    assert image.pixelColor(preview.stitch_box(8, 6).center().toPoint()) != image.pixelColor(
        preview.stitch_box(1, 6).center().toPoint()
    )


def test_letters_are_taken_by_their_shades_and_those_unticked_take_no_part(open_on, qtbot, tmp_path):
    design = chart(
        "A B | ....\nC A | ....\nD A | ....",
        times=10,
        gauge=(30.0, 30.0),
        lots={"A": (100, 0, 0), "B": (53, 80, 67), "C": (32, 79, -108)},
    )
    path = tmp_path / "flag.png"
    pixels = np.zeros((40, 40, 3), dtype=np.uint8)
    pixels[:20, :20], pixels[:20, 20:] = (255, 255, 255), (255, 0, 0)
    pixels[20:, :20], pixels[20:, 20:] = (0, 0, 255), (255, 255, 255)
    Image.fromarray(pixels).save(path)
    desk = Desk(open_on(design), qtbot, "Ctrl+Shift+P")
    dialog = desk.dialog
    dialog.read(path)
    desk.read(path)
    dialog.picture.repeat.spin.setValue(4)
    click(dialog.method.by_shade)
    assert desk.text() == ["A B | ..xx"] * 2 + ["A C | xx.."] * 2
    listed = [dialog.method.taking_part.item(row).text() for row in range(dialog.method.taking_part.count())]
    assert [text[0] for text in listed] == ["A", "B", "C"]
    dialog.method.taking_part.setFocus()
    QTest.keyClick(dialog.method.taking_part, Qt.Key.Key_Down)
    QTest.keyClick(dialog.method.taking_part, Qt.Key.Key_Space)
    assert "B" not in desk.text()[0]
    for key in (Qt.Key.Key_Down, Qt.Key.Key_Space, Qt.Key.Key_Home, Qt.Key.Key_Space):
        QTest.keyClick(dialog.method.taking_part, key)
    qtbot.waitUntil(lambda: dialog.message.text().startswith("! No letter takes part"))


def test_without_any_shade_letters_are_told_apart_by_greys_and_none_takes_part(open_on, qtbot, disc):
    desk = Desk(open_on(chart("A B | ............", times=10, gauge=(30.0, 30.0))), qtbot, "Ctrl+Shift+P")
    dialog = desk.dialog
    dialog.read(disc)
    desk.read(disc)
    dialog.picture.repeat.spin.setValue(12)
    desk.wait()
    QTest.keyClick(dialog.floats, Qt.Key.Key_End)
    image = dialog.preview.grab().toImage()
    ground, figure = (image.pixelColor(dialog.preview.stitch_box(3, stitch).center().toPoint()) for stitch in (1, 6))
    assert ground != figure
    click(dialog.method.by_shade)
    qtbot.waitUntil(lambda: "No letter takes part" in dialog.message.text())
    assert dialog.method.taking_part.item(0).text() == "No letter has a shade yet"
    click(dialog.method.by_value)
    assert desk.text()[3] == "A B | ....xxxx...."


def test_floats_are_told_in_stitches_and_cm_against_the_limit(picture):
    dialog = picture.dialog
    assert dialog.readout.text().split("\n") == [
        "12 stitches × 8 rounds  ·  two letters a round at most",
        "! longest float 8 stitches, 2.7 cm",
        "! over the limit of 2.5 cm in 4 of 8 rounds",
    ]
    assert dialog.preview.accessibleDescription() == dialog.readout.text()


def test_long_floats_are_drawn_across_the_stitches_they_pass_and_can_be_left_out(picture):
    preview = picture.dialog.preview
    picture.wait()
    passed = preview.stitch_box(3, 1).center().toPoint()
    with_floats = preview.grab().toImage().pixelColor(passed)
    picture.dialog.floats.setFocus()
    QTest.keyClick(picture.dialog.floats, Qt.Key.Key_End)
    without = preview.grab().toImage().pixelColor(passed)
    assert with_floats != without
    assert without == preview.grab().toImage().pixelColor(preview.stitch_box(0, 1).center().toPoint())


def test_the_frame_is_dragged_by_a_corner_and_as_a_whole_and_numbers_follow(picture):
    side = picture.dialog.picture
    box = side.view.shown(QRect(0, 0, 60, 40))
    scale = box.width() / 60
    drag_over(side.view, box.topLeft(), box.topLeft() + QPointF(20 * scale, 10 * scale))
    assert [side.edges[name].value() for name in ("left", "top", "width", "height")] == [20, 10, 40, 30]
    assert picture.text()[0] == "A B | xxxxxx......"
    drag_over(side.view, box.center() + QPointF(12, 12), box.center() + QPointF(-500, -500))
    assert [side.edges[name].value() for name in ("left", "top", "width", "height")] == [0, 0, 40, 30]
    click(side.whole)
    assert side.view.frame == QRect(0, 0, 60, 40)


def test_the_frame_is_set_by_numbers_too(picture):
    side = picture.dialog.picture
    for name, value in (("left", 20), ("top", 10), ("width", 20), ("height", 20)):
        side.edges[name].setFocus()
        QTest.keyClick(side.edges[name], Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
        QTest.keyClicks(side.edges[name], f"{value}\t")
    assert side.view.frame == QRect(20, 10, 20, 20)
    assert set(picture.text()) == {"A B | xxxxxxxxxxxx"}


def test_escape_during_a_drag_puts_the_frame_back_and_the_dialog_stays(picture):
    side = picture.dialog.picture
    box = side.view.shown(QRect(0, 0, 60, 40))
    QTest.mousePress(side.view, LEFT, NONE, box.topLeft().toPoint())
    QTest.mouseMove(side.view, (box.topLeft() + QPointF(50, 40)).toPoint())
    assert side.view.frame != QRect(0, 0, 60, 40)
    press(picture.dialog, "Escape")
    assert picture.dialog.isVisible()
    assert side.view.frame == QRect(0, 0, 60, 40)
    assert side.edges["left"].value() == 0


def test_rounds_follow_the_proportion_until_they_are_unlinked(picture):
    side = picture.dialog.picture
    assert (side.rounds.value(), side.rounds.isEnabled()) == (8, False)
    click(side.follows)
    side.rounds.setValue(4)
    assert len(picture.text()) == 4
    assert picture.text()[1] == "A B | .....xx....."
    click(side.fills)
    assert picture.text()[1] == "A B | ....xxxx...."


def test_escape_closes_and_changes_nothing(picture):
    window = picture.window
    press(picture.dialog, "Escape")
    picture.back()
    assert window.document.stack.count() == 0
    assert window.chart.canvas.hand.tool.name == "draw"
    assert window.focusWidget() is window.chart.canvas


@pytest.mark.parametrize(
    ("broken", "told"),
    [
        (b"not a picture", "this is neither a PNG nor a JPEG picture"),
        (b"\x89PNG\r\n\x1a\nrubbish", "the picture is broken"),
        (None, "there is no such file"),
    ],
)
def test_a_file_that_is_no_picture_is_told_and_the_one_before_stays(picture, tmp_path, qtbot, broken, told):
    if broken is not None:
        (tmp_path / "broken.png").write_bytes(broken)
    before = picture.text()
    picture.dialog.read(tmp_path / "broken.png")
    qtbot.waitUntil(lambda: told in picture.dialog.message.text())
    assert picture.dialog.message.text().startswith("! ")
    assert picture.text() == before
    assert "block.png" in picture.dialog.picture.name.text()
    assert picture.dialog.stamp.isEnabled()


def test_a_pattern_is_kept_on_the_shelf_under_its_name(picture, motifs_folder):
    dialog = picture.dialog
    dialog.name.setFocus()
    QTest.keyClick(dialog.name, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
    QTest.keyClicks(dialog.name, "Sluice gate")
    click(dialog.keep)
    assert dialog.isVisible()
    assert dialog.message.text() == "Sluice gate is on the shelf now, among your own."
    assert rounds_to_text(read_motif(motifs_folder / "sluice-gate.motif.toml").rounds).splitlines() == picture.text()
    assert picture.window.document.stack.count() == 0
    click(dialog.keep)
    assert (motifs_folder / "sluice-gate-2.motif.toml").exists()


def test_a_folder_that_cannot_be_written_to_is_told_in_the_dialog(picture, monkeypatch, tmp_path):
    (tmp_path / "a file").write_text("")
    monkeypatch.setenv("CHARTMAKER_MOTIFS", str(tmp_path / "a file" / "motifs"))
    click(picture.dialog.keep)
    assert "cannot be" in picture.dialog.message.text()
    assert picture.dialog.pattern is not None


def test_a_picture_that_is_dropped_on_the_dialog_is_read(words, disc):
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(disc))])
    event = QDropEvent(
        QPointF(20, 20), Qt.DropAction.CopyAction, data, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
    )
    words.dialog.dropEvent(event)
    words.read(disc)
    assert words.dialog.sides.currentWidget() is words.dialog.picture


def test_what_is_being_worked_out_is_dropped_when_a_setting_changes(words, monkeypatch, qtbot):
    asked, given = [], []
    made = pattern_dialog.of_words

    def slowly(wish):
        asked.append(wish.text)
        time.sleep(0.3 if wish.text == "i" else 0)
        return made(wish)

    monkeypatch.setattr(pattern_dialog, "of_words", slowly)
    show = words.dialog._show
    monkeypatch.setattr(words.dialog, "_show", lambda result: (given.append(result), show(result)))
    QTest.keyClicks(words.dialog.words.text, "i")
    qtbot.waitUntil(lambda: asked == ["i"])
    QTest.keyClicks(words.dialog.words.text, "j")
    words.wait()
    qtbot.wait(400)
    assert asked == ["i", "ij"]
    assert [len(each.pattern.rounds[0]) for each in given] == [9]


def test_long_work_shows_that_it_runs_and_can_be_stopped(words, monkeypatch, qtbot):
    made = pattern_dialog.of_words

    def slowly(wish):
        time.sleep(0.5)
        return made(wish)

    monkeypatch.setattr(pattern_dialog, "of_words", slowly)
    QTest.keyClicks(words.dialog.words.text, "i")
    qtbot.waitUntil(words.dialog.working.isVisible)
    click(words.dialog.working._stop)
    assert not words.dialog.working.isVisible()
    qtbot.wait(600)
    assert words.dialog.pattern is None
    assert not words.dialog.stamp.isEnabled()


def test_settings_and_folder_are_remembered_from_one_window_to_the_next(open_on, square_gauge, qtbot, settings, disc):
    desk = Desk(open_on(square_gauge), qtbot, "Ctrl+Shift+P")
    desk.dialog.read(disc)
    desk.read(disc)
    desk.dialog.picture.repeat.spin.setValue(40)
    click(desk.dialog.method.dithers)
    desk.dialog.sides.setCurrentIndex(1)
    click(desk.dialog.words.typeset)
    press(desk.dialog, "Escape")
    again = Desk(open_on(square_gauge), qtbot, "Ctrl+Shift+P").dialog
    assert again.picture.repeat.spin.value() == 40
    assert again.method.dithers.isChecked()
    assert again.words.typeset.isChecked()
    assert settings.value("pattern/folder") == str(disc.parent)


@pytest.mark.parametrize("follows", [True, False])
def test_whether_repeat_and_level_follow_is_remembered_with_their_numbers(open_on, square_gauge, qtbot, follows):
    dialog = Desk(open_on(square_gauge), qtbot, "Ctrl+Shift+T").dialog
    dialog.words.repeat.spin.setValue(33)
    dialog.method.level.setValue(71)
    dialog.words.follows.setChecked(follows)
    dialog.method.finds.setChecked(follows)
    press(dialog, "Escape")
    again = Desk(open_on(square_gauge), qtbot, "Ctrl+Shift+T").dialog
    assert (again.words.repeat.spin.value(), again.words.follows.isChecked()) == (33, follows)
    assert (again.method.level.value(), again.method.finds.isChecked()) == (71, follows)


def test_settings_that_are_no_numbers_are_left_alone(open_on, square_gauge, qtbot, settings):
    settings.setValue("pattern/stitches", "many")
    settings.setValue("pattern/floats", 99)
    dialog = Desk(open_on(square_gauge), qtbot, "Ctrl+Shift+P").dialog
    assert dialog.picture.repeat.spin.value() == 24
    assert dialog.floats.currentData() == "long"


def test_the_picture_and_the_words_are_still_there_when_the_dialog_is_opened_again(picture):
    press(picture.dialog, "Escape")
    picture.back()
    again = Desk(picture.window, picture.qtbot, "Ctrl+Shift+P")
    assert again.dialog is picture.dialog
    assert len(again.text()) == 8


def test_every_control_has_a_name_and_the_keys_reach_it(picture):
    dialog = picture.dialog
    controls = [
        control
        for control in dialog.findChildren(QWidget)
        if control.focusPolicy() & Qt.FocusPolicy.TabFocus and control.isVisible() and control.focusProxy() is None
    ]
    assert len(controls) > 15
    for control in controls:
        name = control.accessibleName() or (control.text() if isinstance(control, QAbstractButton) else "")
        assert name or control.parent().accessibleName(), control
    for label in dialog.findChildren(QLabel):
        if "&" in label.text() and label.textFormat() != Qt.TextFormat.PlainText:
            assert label.buddy() is not None, label.text()


def test_mnemonics_of_one_side_do_not_clash(picture):
    dialog = picture.dialog
    for index in range(2):
        dialog.sides.setCurrentIndex(index)
        shown = [
            each.text()
            for each in dialog.findChildren(QAbstractButton) + dialog.findChildren(QLabel)
            if each.isVisible()
        ]
        keys = [text[text.index("&") + 1].lower() for text in shown if "&" in text]
        assert len(keys) == len(set(keys)), sorted(keys)


def test_a_large_picture_is_brought_to_a_working_copy_and_cropped_in_its_own_pixels(picture, tmp_path):
    pixels = np.full((3000, 4500, 3), 255, dtype=np.uint8)
    pixels[:, :2250] = 0
    Image.fromarray(pixels).save(tmp_path / "large.png", compress_level=1)
    picture.dialog.read(tmp_path / "large.png")
    picture.read(tmp_path / "large.png")
    side = picture.dialog.picture
    assert (side.edges["width"].value(), side.edges["height"].value()) == (4500, 3000)
    assert max(side._pixels.shape) <= 1600
    assert picture.text()[0] == "A B | xxxxxx......"
    side.edges["left"].setValue(2250)
    assert set(picture.text()) == {"A | ............"}
