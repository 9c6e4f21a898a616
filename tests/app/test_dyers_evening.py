"""From nothing to a planned lot in a hat: a palette by a measurement file and a photo, causes told, a load foretold."""

import pytest
from PIL import Image
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from chartmaker.app.bath_form import BathForm, YarnForm
from chartmaker.app.lot_form import LotForm
from chartmaker.app.taking_dialog import TakingDialog
from chartmaker.files.palette_reading import read_palette
from chartmaker.model.settings import Viewing
from tests.app.hand_at import LEFT
from tests.app.test_lots_desk import fill_in, form, key, press_ok
from tests.app.test_lots_page import click
from tests.app.test_photo_dialog import Desk, rendered
from tests.builders import chart
from tests.dye.invented_dyes import NM, WOOL_R, grey, k_over_s, red_dye, reflected
from tests.files.measurements.builders import cgats
from tests.shade.second_library import xyz_by_colour_science

DYES = {
    "Undyed": 0 * red_dye(),
    "Madder, first": red_dye(),
    "Half the madder": 0.5 * red_dye(),
    "Madder, second exhaust": 0.45**2 * red_dye(),
    "Madder with soda": red_dye(moved_nm=14),
    "Madder in the iron pot": red_dye() + grey(1.2),
}
"""Synthesised spectra, measured nowhere; three readings of each differ by a hair."""
BATHS = ({"ratio": "1.0", "ph_start": "6.8"}, {"ratio": "0.5"}, {"ratio": "1.0", "ph_start": "9.2"}, {"ratio": "1.0"})
"""Of the first bath and its exhausts, of half the dyestuff, of the alkaline bath, and of the iron pot."""
CAME_FROM = {
    "Madder, first": (0, 1),
    "Half the madder": (1, 1),
    "Madder, second exhaust": (0, 3),
    "Madder with soda": (2, 1),
    "Madder in the iron pot": (3, 1),
}
"""Which of the baths, and which load of it."""
CTRL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def file(tmp_path):
    """Give a measurement file of the synthesised spectra."""
    fields = "SAMPLE_NAME " + " ".join(f"SPECTRAL_NM{nm}" for nm in range(400, 701, 10))
    rows = [
        f'"{name}" ' + " ".join(f"{100 * level:.4f}" for level in reflected(k_over_s(WOOL_R) + dye * (1 + hair)))
        for name, dye in DYES.items()
        for hair in (-0.005, 0.0, 0.006)
    ]
    path = tmp_path / "synthesised.txt"
    path.write_text(cgats(fields, *rows, head=f"NUMBER_OF_SETS {len(rows)}"))
    return path


@pytest.fixture
def photo(tmp_path):
    """Give the file of a rendered photo."""
    path = tmp_path / "skeins.png"
    Image.fromarray(rendered().pixels).save(path)
    return path


def take_file(window, answers, qtbot, path):
    answers.path = path
    window.actions_made["lots.take"].trigger()
    qtbot.waitUntil(lambda: window.findChild(TakingDialog) is not None)
    dialog = window.findChild(TakingDialog)
    qtbot.waitUntil(dialog.isVisible)
    assert dialog.table.rowCount() == len(DYES)
    QTest.mouseClick(dialog.take, LEFT)


def take_photo(window, qtbot, path):
    desk = Desk(window, qtbot)
    desk.open(path)
    desk.drag_corners()
    desk.draw_box(1)
    desk.type_lot(0, "Dahlia")
    QTest.mouseClick(desk.dialog.take, LEFT)


def note_recipes(window, qtbot):
    """Write the yarn with its undyed shade, the bath, and which load of it each red lot was."""
    key(window, Qt.Key.Key_W)
    yarn = form(qtbot, YarnForm)
    undyed = yarn.control("reading")
    undyed.setFocus()
    QTest.keyClicks(undyed, "as the lot Undyed")
    fill_in(yarn, name="Fine two-ply", metres_per_100g="460")
    for bath in BATHS:
        key(window, Qt.Key.Key_B)
        fill_in(form(qtbot, BathForm), dyestuff="madder", part="root", **bath)
    page = window._pages["lots"]
    ids = {lot.name: lot.id for lot in window.lots.open_palette.palette.lots}
    for name, (bath, load) in CAME_FROM.items():
        click(page, ids[name])
        window.actions_made["lots.edit"].trigger()
        made = form(qtbot, LotForm)
        QTest.keyClick(made.yarn, Qt.Key.Key_Down)
        for _ in range(bath + 1):
            QTest.keyClick(made.source.bath, Qt.Key.Key_Down)
        for _ in range(load - 1):
            QTest.keyClick(made.source.load, Qt.Key.Key_Up)
        press_ok(made)


@pytest.fixture
def evening(open_on, answers, qtbot, file, photo):
    window = open_on(chart("\n".join(["A B | x..x.."] * 8), times=24), size=(1440, 900))
    window.show_page("lots")
    key(window, Qt.Key.Key_N)
    take_file(window, answers, qtbot, file)
    take_photo(window, qtbot, photo)
    note_recipes(window, qtbot)
    return window, window._pages["lots"]


def ids_of(page):
    return {line.lot.name: line.lot.id for line in page.flow.lots.lines}


def foretold(share):
    """Give the value that the wool has with this share of the red dye, from its Y by colour-science."""
    viewing = Viewing()
    of_wool = xyz_by_colour_science(reflected(k_over_s(WOOL_R) + share * red_dye()), NM, viewing)
    return 116 * (of_wool[1] / 100) ** (1 / 3) - 16


def cause_of(page, name):
    ids = ids_of(page)
    click(page, ids["Madder, first"])
    click(page, ids[name], keys=CTRL)
    QApplication.processEvents()
    assert page.side.pair.isVisible()
    return page.side.pair.reading.text()


def test_an_evening_from_nothing_to_a_planned_lot_in_the_hat(evening, answers, tmp_path):
    window, page = evening
    palette = window.lots.open_palette.palette
    assert [lot.name for lot in palette.lots] == [*DYES, "Dahlia"]
    assert [len(lot.readings) for lot in palette.lots] == [3] * len(DYES) + [1]
    assert "weaker" in cause_of(page, "Half the madder")
    assert "more exhausted, load 3 against 1" in cause_of(page, "Madder, second exhaust")
    soda, suspects = cause_of(page, "Madder with soda"), page.side.pair.suspects.text()
    assert "towards blue" in soda
    assert suspects.startswith("• an alkaline bath: your records speak for it")
    iron, suspects = cause_of(page, "Madder in the iron pot"), page.side.pair.suspects.text()
    assert "duller" in iron
    assert suspects.startswith("• iron in the bath")

    click(page, ids_of(page)["Madder, first"])
    ladder = page.side.card.ladder
    QTest.mouseClick(ladder.rungs.viewport(), LEFT, pos=ladder.rungs.visualItemRect(ladder.rungs.item(1)).center())
    QTest.mouseClick(ladder.plan, LEFT)
    planned = window.lots.open_palette.palette.lots[-1]
    assert (planned.planned.bath, planned.planned.load) == ("madder", 2)
    assert page.picked == (planned.id,)
    moves = [patch.figure for patch in page.side.card.lights.patches]
    assert moves[0] == "judged in"
    assert all(float(moved.removeprefix("moves ")) > 0.3 for moved in moves[1:])
    page.assign("A", ids_of(page)["Madder, first"])
    page.assign("B", planned.id)
    (pair,) = window.document.appraisal.pairs
    assert pair.rests_on == "predicted"
    assert window.document.appraisal.letter("B").shade.value == pytest.approx(foretold(0.45), abs=0.5)

    answers.path = tmp_path / "evening.palette.toml"
    key(window, Qt.Key.Key_S)
    assert not window.lots.open_palette.is_modified
    assert read_palette(answers.path) == window.lots.open_palette.palette
