import pytest
from PySide6.QtGui import QColor, QPalette

from chartmaker.app import icons
from chartmaker.app.actions import ACTIONS
from chartmaker.app.blank import blank_design
from chartmaker.appraisal import appraise

ICONS = [action.icon for action in ACTIONS if action.icon]


@pytest.fixture(autouse=True)
def application(qapp):
    """Pixmaps need one."""
    return qapp


@pytest.mark.parametrize("name", [*ICONS, "chartmaker"])
def test_every_icon_named_is_there_and_draws_something(name):
    image = icons.drawing(name, 40).toImage()
    assert any(image.pixelColor(x, y).alpha() for x in range(40) for y in range(40))


@pytest.mark.parametrize("name", ICONS)
def test_an_icon_takes_the_windows_ink(name):
    image = icons.inked(icons.drawing(name, 40), QColor("#ffeedd")).toImage()
    inks = {
        image.pixelColor(x, y).name() for x in range(40) for y in range(40) if image.pixelColor(x, y).alpha() == 255
    }
    assert inks == {"#ffeedd"}


def test_an_icon_is_paler_where_it_is_disabled():
    made = icons.icon("draw", QPalette())
    normal = made.pixmap(20, 20, icons.QIcon.Mode.Normal).toImage()
    assert made.pixmap(20, 20, icons.QIcon.Mode.Disabled).toImage() != normal


def test_a_missing_icon_is_empty_and_no_error():
    assert icons.drawing("no-such-icon", 20).isNull()


def test_a_new_design_fits_an_ordinary_head_and_only_lacks_a_lot():
    appraisal = appraise(blank_design())
    wanted = blank_design().hat.wanted_cm
    assert abs(appraisal.circumference_cm - wanted) < 0.03 * wanted
    assert {finding.check for finding in appraisal.findings if finding.severity == "stop"} == {"letter-without-lot"}


def test_icons_follow_the_window_from_light_to_dark(window, qapp, qtbot):
    def ink():
        image = window.actions_made["tool.draw"].icon().pixmap(20, 20).toImage()
        return max((image.pixelColor(x, y) for x in range(20) for y in range(20)), key=QColor.alpha).lightness()

    light = qapp.palette()
    try:
        assert ink() < 90
        qapp.setPalette(QPalette(QColor(40, 40, 42)))
        qtbot.waitUntil(lambda: ink() > 160, timeout=2000)
    finally:
        qapp.setPalette(light)
    qtbot.waitUntil(lambda: ink() < 90, timeout=2000)
