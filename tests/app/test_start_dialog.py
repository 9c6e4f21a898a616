"""A hat from a knitter's answers: by mouse and by keys alone, from the program's start to a file that is read again."""

from dataclasses import replace

import pytest
from hypothesis import given as drawn_from
from hypothesis import settings as hypothesis_settings
from hypothesis import strategies as st
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from chartmaker.app.main import open_window
from chartmaker.app.start_dialog import StartDialog
from chartmaker.app.start_given import Given, outcome_of
from chartmaker.app.start_memory import KEY, recall
from chartmaker.app.units_setting import KEY as UNITS_KEY
from chartmaker.appraisal import appraise
from chartmaker.files.design_reading import read_design
from chartmaker.knit.brims import BRIM_KINDS
from chartmaker.knit.depth import depth_of
from chartmaker.knit.starter import started
from chartmaker.model.counts import rounds_not_meeting
from chartmaker.model.hat import SHAPES
from chartmaker.model.palette import Palette, Yarn
from chartmaker.model.units import IMPERIAL
from tests.app.hand_at import LEFT, NONE, point, type_at
from tests.app.test_accessible_names import unnamed
from tests.app.test_menus import mnemonics, twice
from tests.app.test_translation import QTS_OWN, longer, unwrapped  # noqa: F401 - a fixture
from tests.builders import lot

CTRL, SHIFT, ALT = (
    Qt.KeyboardModifier.ControlModifier,
    Qt.KeyboardModifier.ShiftModifier,
    Qt.KeyboardModifier.AltModifier,
)
FIRST = Given(title="New cap")
"""What is asked with when nothing was answered yet."""


@pytest.fixture
def dialog(window, qtbot):
    """Give the dialog over a window, as Ctrl+N opens it."""
    return asked(window, qtbot)


def asked(window, qtbot):
    window.activateWindow()  # which a window manager does when a dialog goes
    qtbot.waitUntil(lambda: QApplication.activeWindow() is window)
    QTest.keyClick(window, Qt.Key.Key_N, CTRL)
    qtbot.waitUntil(lambda: isinstance(QApplication.activeWindow(), StartDialog))
    return QApplication.activeWindow()


def click(widget):
    QTest.mouseClick(widget, LEFT, NONE, widget.rect().center())


def retype(box, text):
    """Type over what stands in a box, as a knitter would."""
    box.setFocus()
    box.selectAll()
    QTest.keyClicks(box, text)


def bad(design, palette=None):
    return [
        found.message
        for found in appraise(design, palette).findings
        if found.severity != "note" and found.check != "letter-without-lot"
    ]


# --- the whole way


@pytest.mark.parametrize("shape", SHAPES)
def test_from_nothing_to_a_hat_with_a_motif_that_is_saved_and_read_again(shape, settings, answers, tmp_path, qtbot):
    window = open_window(settings)
    window.filing.questions = answers
    qtbot.addWidget(window, before_close_func=lambda _window: setattr(answers, "unsaved", "discard"))
    window.resize(1280, 800)
    window.activateWindow()
    qtbot.waitUntil(lambda: window.has_chart and bool(window.chart.findChildren(type(window.chart.canvas))))
    offer = QApplication.focusWidget()
    QTest.keyClick(offer, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: isinstance(QApplication.activeWindow(), StartDialog))
    dialog = QApplication.activeWindow()
    questions = dialog.questions
    click(questions.shapes.tiles[shape])
    retype(questions.head.girth, "54")
    retype(questions.stitches.count, "22")
    retype(questions.rounds.count, "26")
    QTest.keyClick(questions.rounds.count, Qt.Key.Key_Return)
    window.activateWindow()
    qtbot.waitUntil(lambda: QApplication.focusWidget() is window.chart.canvas)
    design = window.document.design
    assert (design.hat.shape, design.hat.head_cm) == (shape, 54)
    assert window.chart.canvas.current[0] == window.chart.canvas.grid.row_of(tallest(design), 0)
    assert (design.gauge.stitches_per_10cm, design.gauge.rounds_per_10cm) == (22, 26)
    assert bad(design) == []
    assert not window.document.stack.canUndo()
    stamp(window)
    drawn = window.document.design
    assert drawn != design
    assert bad(drawn) == []
    answers.path = tmp_path / "own.hat.toml"
    QTest.keyClick(window, Qt.Key.Key_S, CTRL)
    assert read_design(answers.path) == drawn


def tallest(design):
    """Give the tallest band of the body."""
    body = [place for place, band in enumerate(design.bands) if not band.is_shaped and set(band.texture) <= {"k"}]
    return max(body, key=lambda place: len(design.bands[place].rounds))


def stamp(window):
    """Hold the first small motif that the shelf offers for the band at the cursor, and click it in there."""
    canvas = window.chart.canvas
    at = tallest(window.document.design)
    QTest.keyClick(canvas, Qt.Key.Key_F7)
    shelf = window.chart.motifs.shelf
    QTest.keyClicks(shelf.search, "peerie")
    QTest.keyClick(shelf.search, Qt.Key.Key_Down)
    QTest.keyClick(shelf.list, Qt.Key.Key_Return)
    assert canvas.hand.holds_stamp
    canvas.fit()
    QTest.mouseClick(canvas.viewport(), LEFT, NONE, point(canvas, (canvas.grid.row_of(at, 2), 0)))
    QTest.keyClick(canvas, Qt.Key.Key_Escape)


def test_by_keys_alone_each_question_is_reached_and_enter_begins(window, qtbot):
    dialog = asked(window, qtbot)
    questions = dialog.questions
    assert QApplication.focusWidget() is questions.shapes.tiles["cap"]
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Right)
    assert questions.shapes.shape == "tam"
    reached = []
    for _ in range(13):
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
        reached.append(QApplication.focusWidget())
    assert reached[:8] == [
        questions.head.size_box,
        questions.head.girth,
        questions.stitches.count,
        questions.stitches.over,
        questions.rounds.count,
        questions.rounds.over,
        questions.yarn.grist,
        questions.brim,
    ]
    assert reached[8] is questions.name
    assert reached[9] is questions.more_button
    assert reached[10].accessibleName() == "What comes of the answers"
    assert reached[11:] == [dialog.defaults, dialog.begin_bare]
    QTest.keyClick(dialog, Qt.Key.Key_R, ALT)
    assert QApplication.focusWidget() is questions.rounds.count
    questions.rounds.count.selectAll()
    QTest.keyClicks(questions.rounds.count, "40")
    QTest.keyClick(questions.rounds.count, Qt.Key.Key_Return)
    assert window.document.design.hat.shape == "tam"
    assert window.document.design.gauge.rounds_per_10cm == 40


def test_escape_changes_nothing(window, two_shades, settings, qtbot):
    dialog = asked(window, qtbot)
    retype(dialog.questions.head.girth, "60")
    QTest.keyClick(dialog, Qt.Key.Key_Escape)
    assert not dialog.isVisible()
    assert window.document.design == two_shades
    assert settings.value(KEY) is None


def test_enter_on_a_button_that_has_the_keys_presses_that_button(window, two_shades, qtbot):
    dialog = asked(window, qtbot)
    dialog.cancel.setFocus()
    QTest.keyClick(dialog.cancel, Qt.Key.Key_Return)
    assert not dialog.isVisible()
    assert window.document.design == two_shades


def test_unsaved_work_is_asked_about_before_the_dialog_and_kept_with_cancel(window, answers):
    type_at(window, Qt.Key.Key_Space)
    QTest.keyClick(window, Qt.Key.Key_N, CTRL)
    assert len(answers.asked) == 1
    assert window.findChildren(StartDialog) == []


def test_the_bare_way_is_still_there(dialog, window):
    click(dialog.begin_bare)
    assert [band.name for band in window.document.design.bands] == ["pattern"]


# --- what is told


def test_what_comes_of_the_answers_follows_while_they_are_typed(dialog, qtbot):
    words = dialog.preview.words
    before = words.text()
    retype(dialog.questions.head.girth, "48")
    qtbot.waitUntil(lambda: words.text() != before, timeout=1000)
    design = dialog.preview.document.design
    assert words.text().startswith(f"{design.bands[0].stitches(0)} stitches cast on")
    assert design.hat.head_cm == 48


@pytest.mark.parametrize(
    ("box", "text", "told"),
    [
        ("head.girth", "12", ("head_cm", "! Head is 12 cm, outside 20 cm to 90 cm")),
        ("stitches.count", "3", ("stitches", "! A gauge of 3 in 10 cm is outside 5 to 100")),
        ("rounds.over", "0", ("rounds", "outside 0.5")),
        ("yarn.grist", "1", ("metres_per_100g", "outside 10 m in 100 g to 5000 m in 100 g")),
    ],
)
def test_what_cannot_be_is_told_at_its_field_and_nothing_is_begun_or_lost(dialog, window, box, text, told):
    before = window.document.design
    target = dialog.questions
    for name in box.split("."):
        target = getattr(target, name)
    retype(target, text)
    QTest.keyClick(target, Qt.Key.Key_Return)
    row, sentence = told
    assert sentence in dialog.questions.rows[row].trouble.text()
    assert [name for name, each in dialog.questions.rows.items() if each.trouble.text()] == [row]
    assert sentence.removeprefix("! ") in QApplication.focusWidget().accessibleDescription()
    assert dialog.isVisible()
    assert window.document.design is before
    assert target.text().startswith(text)


def test_a_depth_that_leaves_no_body_opens_more_and_says_so_there(dialog):
    questions = dialog.questions
    questions.unfold(is_open=True)
    retype(questions.more.boxes["depth_cm"], "9")
    questions.unfold(is_open=False)
    QTest.keyClick(dialog, Qt.Key.Key_Return)
    assert questions.more.isVisible()
    assert "leaves no body" in questions.rows["depth_cm"].trouble.text()
    assert dialog.outcome.design is None


def test_a_default_follows_until_the_knitter_answers_and_tells_what_it_rests_on(dialog):
    questions = dialog.questions
    questions.unfold(is_open=True)
    depth, row = questions.more.boxes["depth_cm"], questions.rows["depth_cm"]
    first = depth.exact
    retype(questions.head.girth, "60")
    dialog.refresh()
    assert depth.exact > first
    assert "girth" in row.source.text()
    retype(depth, "25")
    dialog.refresh()
    retype(questions.head.girth, "52")
    dialog.refresh()
    assert depth.exact == 25
    assert row.source.text().startswith("Your own; usual here: 20")
    assert dialog.outcome.design.hat.depth_cm == 25
    click(questions.shapes.tiles["stocking"])
    dialog.refresh()
    assert depth.exact > 40
    click(questions.shapes.tiles["cap"])
    dialog.refresh()
    assert depth.exact == 25


def test_an_answer_that_is_what_is_usual_anyway_follows_again(dialog):
    questions = dialog.questions
    questions.unfold(is_open=True)
    depth, usual = questions.more.boxes["depth_cm"], questions.more.boxes["depth_cm"].text()
    retype(depth, "30")
    dialog.refresh()
    assert questions.given.own == {"cap/depth_cm": 30}
    retype(depth, usual.removesuffix(" cm"))
    dialog.refresh()
    assert questions.given.own == {}
    assert "girth" in questions.rows["depth_cm"].source.text()


def test_each_shape_is_asked_for_what_it_has(dialog):
    questions = dialog.questions
    questions.unfold(is_open=True)
    shown = {}
    for shape in SHAPES:
        questions.shapes.choose(shape)
        dialog.refresh()
        shown[shape] = {name for name, row in questions.more.rows.items() if row.control.isVisible()}
    common = {"ease_percent", "depth_cm", "brim_depth_cm", "reserve_percent"}
    crown = {"profile", "sections", "decrease"}
    assert shown["cap"] == common | crown
    assert shown["tam"] == common | crown | {"widen_percent", "widen_rounds"}
    assert shown["stocking"] == common | {"taper_decreases", "has_tassel"}


def test_every_answer_reaches_the_hat(dialog):
    given = Given(
        shape="tam",
        head_cm=55,
        stitches=48,
        stitches_over_cm=15,
        rounds=17,
        rounds_over_cm=5,
        metres_per_100g=380,
        brim="turned-up",
        title="Weir tam",
        own={"ease_percent": -5.0, "tam/widen_percent": 40.0, "tam/decrease": "centred", "reserve_percent": 15.0},
    )
    dialog.questions.show_given(given)
    dialog.questions.name.setText(given.title)
    assert dialog.questions.given == given
    hat = dialog.refresh().design
    assert (hat.title, hat.metres_per_100g, hat.allowances.reserve_percent) == ("Weir tam", 380, 15)
    assert hat.gauge.stitches_per_10cm == pytest.approx(32)
    assert hat.gauge.rounds_per_10cm == pytest.approx(34)
    assert (hat.hat.shape, hat.hat.ease_percent, hat.hat.fold.way) == ("tam", -5, "up")
    counts = [band.stitches(0) for band in hat.bands]
    assert max(counts) / counts[0] == pytest.approx(1.4, rel=0.04)


# --- sizes, swatches, units, yarns


def test_a_size_gives_its_girth_and_its_source_and_a_typed_girth_is_measured(dialog):
    head = dialog.questions.head
    place = next(
        place for place in range(head.size_box.count()) if head.size_box.itemText(place).startswith("2 years, girl")
    )
    head.size_box.setCurrentIndex(place)
    dialog.refresh()
    # WHO Child Growth Standards 2007: median of girls at 24 months
    assert head.head_cm == 47.18
    assert dialog.questions.rows["head_cm"].source.text().startswith("WHO Child Growth Standards 2007")
    retype(head.girth, "50")
    dialog.refresh()
    assert head.size_name == ""
    assert head.size_box.currentText() == "measured"


def test_a_swatch_counted_over_another_length_says_the_gauge_that_it_gives(dialog):
    questions = dialog.questions
    retype(questions.stitches.count, "36")
    retype(questions.stitches.over, "12")
    dialog.refresh()
    assert questions.rows["stitches"].source.text() == "30.0 in 10 cm"
    assert dialog.outcome.design.gauge.stitches_per_10cm == pytest.approx(30)


def test_inches_can_be_typed_where_centimetres_are_shown(dialog):
    girth = dialog.questions.head.girth
    retype(girth, "22 in")
    QTest.keyClick(girth, Qt.Key.Key_Tab)
    # the inch is 2.54 cm
    assert girth.exact == pytest.approx(55.88)
    assert girth.text() == "55.88 cm"


def test_a_window_in_inches_asks_in_inches_and_what_was_not_typed_stays_exact(open_on, two_shades, settings, qtbot):
    settings.setValue(UNITS_KEY, IMPERIAL.name)
    dialog = asked(open_on(two_shades), qtbot)
    questions = dialog.questions
    assert questions.head.girth.text() == "22.05 in"
    assert questions.given.head_cm == 56
    assert (questions.stitches.count.text(), questions.stitches.over.text()) == ("30", "4 in")
    assert dialog.outcome.design.gauge.stitches_per_10cm == pytest.approx(30 / 10.16 * 10)
    retype(questions.head.girth, "22")
    assert questions.given.head_cm == pytest.approx(55.88)
    questions.unfold(is_open=True)
    retype(questions.more.boxes["depth_cm"], "4")
    dialog.refresh()
    assert "so a depth of 4 in leaves no body" in questions.rows["depth_cm"].trouble.text()
    assert "cm" not in questions.rows["depth_cm"].trouble.text()


@pytest.mark.parametrize("shape", SHAPES)
@pytest.mark.parametrize("brim", [0, 6])
def test_the_depth_that_is_shown_unasked_is_the_one_that_comes_out(dialog, shape, brim):
    dialog.questions.shapes.choose(shape)
    dialog.questions.brim.setCurrentIndex(brim)
    dialog.refresh()
    assert dialog.questions.more.boxes["depth_cm"].exact == pytest.approx(depth_of(dialog.outcome.design).cm, abs=0.05)


def test_yarns_of_the_palette_are_offered_and_its_lots_given_to_the_letters(open_on, two_shades, qtbot):
    window = open_on(two_shades)
    shades = {"oat": (86, 1, 12), "woad": (32, -4, -22), "weld": (78, -6, 50)}
    lots = tuple(replace(lot(name, lab), on_hand_g=200.0) for name, lab in shades.items())
    yarns = (
        Yarn(id="two-ply", name="2-ply", metres_per_100g=420.0),
        Yarn(id="thick", name="thick", metres_per_100g=220.0),
    )
    palette = Palette(name="Allotment", yarns=yarns, lots=lots)
    window.lots.open_palette.take(palette, None)
    dialog = asked(window, qtbot)
    box = dialog.questions.yarn
    assert [box.yarns.itemText(place) for place in range(box.yarns.count())] == ["another yarn", "2-ply", "thick"]
    assert (box.yarns.currentText(), box.metres_per_100g) == ("2-ply", 420)
    box.yarns.setCurrentIndex(2)
    dialog.refresh()
    assert any(f"\nB: {name}" in dialog.preview.words.text() for name in shades)
    QTest.keyClick(dialog, Qt.Key.Key_Return)
    design = window.document.design
    assert design.metres_per_100g == 220
    assert {letter for letter, _ in design.colourway.lots} >= {"A", "B"}
    assert window.lots.open_palette.palette is palette
    assert bad(design, palette) == []


# --- memory


def test_the_last_answers_are_asked_with_again_and_defaults_bring_back_the_first(window, qtbot):
    dialog = asked(window, qtbot)
    questions = dialog.questions
    click(questions.shapes.tiles["tam"])
    questions.brim.setCurrentIndex(4)
    questions.unfold(is_open=True)
    retype(questions.more.boxes["ease_percent"], "-6")
    questions.name.setText("Weir")
    QTest.keyClick(dialog, Qt.Key.Key_Return)
    assert dialog.outcome.troubles == {}
    again = asked(window, qtbot)
    given = again.questions.given
    assert (given.shape, given.brim, given.own, given.title) == ("tam", "hem", {"ease_percent": -6.0}, "New tam")
    assert again.questions.more.isVisible()
    click(again.defaults)
    assert again.questions.given == FIRST
    QTest.keyClick(again, Qt.Key.Key_Escape)
    third = asked(window, qtbot)
    assert third.questions.given == given
    click(third.defaults)
    click(third.begin)
    assert asked(window, qtbot).questions.given == FIRST


@pytest.mark.parametrize(
    "kept",
    ["", "[]", "{", '{"head_cm": NaN, "shape": 3}', '{"own": {"depth_cm": "deep", "cap/sections": "x", "nothing": 1}}'],
)
def test_settings_that_were_damaged_are_passed_over(settings, kept):
    settings.setValue(KEY, kept)
    assert recall(settings, Given()) == Given()


def test_a_shape_or_a_brim_that_there_is_not_any_more_is_passed_over(settings, window, qtbot):
    settings.setValue(KEY, '{"shape": "bonnet", "brim": "lace", "own": {"cap/profile": "square"}}')
    dialog = asked(window, qtbot)
    assert dialog.questions.given.shape == "cap"
    assert dialog.outcome.design is not None or dialog.questions.rows["profile"].trouble.text()


# --- without the window


def test_the_answers_that_are_given_unasked_make_the_hat_of_the_starter():
    outcome = outcome_of(Given())
    assert outcome.design == started(replace(default_answers(), title=""))
    assert outcome.troubles == {}


def default_answers():
    from chartmaker.knit.answers import defaults_for
    from chartmaker.model.gauge import Gauge

    return defaults_for(shape="cap", head_cm=56, gauge=Gauge(stitches_per_10cm=30, rounds_per_10cm=34))


def test_two_answers_that_cannot_be_are_both_told():
    outcome = outcome_of(Given(head_cm=5, rounds=1, own={"ease_percent": 300.0}))
    assert set(outcome.troubles) == {"head_cm", "rounds", "ease_percent"}
    assert outcome.design is None


LENGTHS = st.floats(0, 300) | st.sampled_from([0.0, 20.0, 90.0])
OWN = st.fixed_dictionaries(
    {},
    optional={
        "ease_percent": st.floats(-50, 50),
        "cap/depth_cm": LENGTHS,
        "tam/depth_cm": LENGTHS,
        "stocking/depth_cm": LENGTHS,
        "cap/brim_depth_cm": st.floats(0, 25),
        "tam/widen_percent": st.floats(0, 130),
        "tam/widen_rounds": st.integers(-1, 40),
        "stocking/taper_decreases": st.integers(-1, 30),
        "cap/profile": st.sampled_from(["round", "flat", "pointed", "square"]),
        "cap/sections": st.integers(3, 13),
        "tam/decrease": st.sampled_from(["single", "centred", "paired", "none"]),
        "reserve_percent": st.floats(-10, 300),
    },
)


@hypothesis_settings(max_examples=120, deadline=None)
@drawn_from(
    shape=st.sampled_from(SHAPES),
    head_cm=LENGTHS,
    stitches=st.floats(0, 120),
    rounds=st.floats(0, 120),
    brim=st.sampled_from([*BRIM_KINDS, "lace"]),
    own=OWN,
)
def test_whatever_is_answered_gives_a_hat_whose_counts_meet_or_a_sentence(own, **answers):
    outcome = outcome_of(Given(own=own, **answers))
    if outcome.design is None:
        assert outcome.troubles
        assert all(sentence and "\n" not in sentence for sentence in outcome.troubles.values())
    else:
        assert outcome.troubles == {}
        assert not rounds_not_meeting(outcome.design)


# --- words and looks


def test_no_key_of_the_dialog_is_given_twice_and_every_control_has_a_name(dialog):
    questions = dialog.questions
    questions.unfold(is_open=True)
    for shape in SHAPES:
        questions.shapes.choose(shape)
        dialog.refresh()
        texts = [row.label.text() for row in questions.rows.values() if row.label.isVisible()]
        texts += [tile.text() for tile in questions.shapes.tiles.values()]
        texts += [button.text() for button in (questions.more_button, dialog.begin, dialog.begin_bare, dialog.defaults)]
        assert twice(mnemonics(texts)) == []
        assert unnamed(dialog) == []


@pytest.mark.usefixtures("longer")
def test_every_text_of_the_dialog_is_translated_and_none_is_wider_than_its_place(window, qtbot):
    dialog = asked(window, qtbot)
    questions = dialog.questions
    questions.unfold(is_open=True)
    for shape in SHAPES:
        questions.shapes.choose(shape)
        dialog.refresh()
        QApplication.processEvents()
        assert [entry for entry in unwrapped(dialog) if entry[1] not in QTS_OWN] == []
        assert questions.widget().width() <= questions.viewport().width()
        assert questions.widget().minimumSizeHint().width() <= questions.viewport().width()
    assert dialog.width() <= 1024
