from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from chartmaker.app.lot_choice import lot_entries
from chartmaker.files.design_reading import read_design
from chartmaker.model.palette import Palette
from tests.app.hand_at import LEFT, NONE, point
from tests.builders import chart, lot

NEAR = {"A": (40, 10, 10), "B": (44, 30, 5)}
FIGURED = "A B | x...x...\nA B | .x...x..\nA B | ..x...x.\nA   | ........"


def lost(times=18):
    """Give a design whose two letters are lost in each other, though their hues differ."""
    return chart(FIGURED, times=times, lots=NEAR)


def choose(box, lot_id):
    """Choose a lot by the keyboard, as a user of keys would."""
    box.setFocus()
    while box.currentData() != lot_id:
        before = box.currentIndex()
        QTest.keyClick(box, Qt.Key.Key_Down if box.findData(lot_id) > before else Qt.Key.Key_Up)
        assert box.currentIndex() != before


def test_a_lost_pair_becomes_clear_by_changing_one_lot_and_is_saved_reopened_and_printed(
    open_on, answers, tmp_path, qtbot
):
    window = open_on(lost())
    further = Palette(name="Towpath", lots=(lot("oat", (88, 1, 12)), lot("ash", (48, 0, 2))))
    window.document.take_palette(further)
    assert [pair.grade for pair in window.document.appraisal.pairs] == ["lost"]
    box = window.chart.letters.box("B")
    assert [box.itemData(line) for line in range(box.count())] == [None, "oat", "ash", "lot-b", "lot-a"]

    choose(box, "oat")

    assert [pair.grade for pair in window.document.appraisal.pairs] == ["clear"]
    assert window.document.design.palette.lot("oat") == further.lot("oat")
    answers.path = tmp_path / "towpath.hat.toml"
    QTest.keyClick(window, Qt.Key.Key_S, Qt.KeyboardModifier.ControlModifier)
    assert read_design(answers.path) == window.document.design
    assert window.document.stack.isClean()
    assert window.document.stack.canUndo()

    again = open_on(read_design(answers.path), answers.path)
    assert [pair.grade for pair in again.document.appraisal.pairs] == ["clear"]
    answers.path = tmp_path / "towpath"
    with qtbot.waitSignal(again.background.ended, timeout=20_000):
        QTest.keyClick(again, Qt.Key.Key_D, Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.AltModifier)
    assert (tmp_path / "towpath.pdf").read_bytes().startswith(b"%PDF-")
    assert answers.told == []


def test_choosing_a_lot_is_one_step_of_undo(open_on):
    window = open_on(lost())
    before = window.document.design
    choose(window.chart.letters.box("B"), None)
    assert window.document.design.colourway.lot_of("B") is None
    window.document.stack.setIndex(0)
    assert window.document.design == before
    assert window.chart.letters.box("B").currentData() == "lot-b"


def test_the_way_out_of_a_finding_is_one_button(open_on):
    window = open_on(lost())
    window.document.take_palette(Palette(lots=(lot("pale", (82, 12, 10)),)))
    findings = window.findings
    index = next(i for i, each in enumerate(window.document.appraisal.findings) if each.remedy_lot)
    findings.list.setCurrentItem(findings.list.topLevelItem(index))
    assert findings.mend.isVisible()
    assert "pale" in findings.mend.text()
    before = window.document.stack.count()
    QTest.mouseClick(findings.mend, LEFT)
    assert window.document.stack.count() == before + 1
    assert "pale" in [lot_id for _, lot_id in window.document.design.colourway.lots]
    assert all(pair.grade == "clear" for pair in window.document.appraisal.pairs)


def test_a_finding_without_a_lot_that_mends_it_offers_no_button(open_on):
    window = open_on(lost())
    index = next(i for i, each in enumerate(window.document.appraisal.findings) if not each.remedy_lot)
    window.findings.list.setCurrentItem(window.findings.list.topLevelItem(index))
    assert not window.findings.mend.isVisible()
    assert not window.actions_made["findings.mend"].isEnabled()


def test_a_click_on_a_finding_leads_to_its_round(open_on):
    design = chart(
        "\n".join(["A B | ............"] * 30 + ["A B | ...........x"] + ["A B | ............"] * 70), times=12
    )
    window = open_on(design)
    window.show_page("lots")
    findings = window.document.appraisal.findings
    index = next(i for i, each in enumerate(findings) if each.check == "float-length")
    item = window.findings.list.topLevelItem(index)
    window.findings.list.scrollToItem(item)
    QTest.mouseClick(window.findings.list.viewport(), LEFT, NONE, window.findings.list.visualItemRect(item).center())
    assert window.page == "chart"
    assert window.chart.canvas.current[0] == findings[index].place.round == 70
    assert 70 in window.chart.canvas.frame.rows_in_sight()
    assert window.chart.canvas.frame.area.contains(point(window.chart.canvas, window.chart.canvas.current))


def test_keys_go_from_finding_to_finding_and_round_again(open_on):
    window = open_on(lost())
    count = len(window.document.appraisal.findings)
    assert count > 1
    seen = []
    for _ in range(count + 1):
        QTest.keyClick(window, Qt.Key.Key_F8)
        seen.append(window.findings.chosen)
    assert seen[:-1] == list(window.document.appraisal.findings)
    assert seen[-1] == seen[0]
    QTest.keyClick(window, Qt.Key.Key_F8, Qt.KeyboardModifier.ShiftModifier)
    assert window.findings.chosen == seen[-2]


def test_findings_lead_to_the_page_that_shows_them(open_on):
    window = open_on(lost())
    for finding in window.document.appraisal.findings:
        window.lead_to(finding.place)
        assert window.page == finding.place.page


def test_findings_are_counted_by_severity_in_words(open_on):
    window = open_on(chart("A B | x.", times=72))
    text = window.findings.counts.text()
    stops = sum(each.severity == "stop" for each in window.document.appraisal.findings)
    assert stops == 2
    assert "2 stops" in text


def test_a_palettes_lots_are_offered_lightest_first_and_those_without_a_reading_last():
    design = chart("A B | x.", times=72, lots=NEAR)
    more = Palette(lots=(lot("dark", (10, 0, 0)), lot("unread"), lot("lot-a", (99, 0, 0)), lot("light", (90, 0, 0))))
    entries = lot_entries(design, more)
    assert [entry.lot.id for entry in entries] == ["light", "lot-b", "lot-a", "dark", "unread"]
    assert next(entry for entry in entries if entry.lot.id == "lot-a").shade.value == 40


def test_folding_the_findings_gives_the_room_to_the_page(window):
    tall = window.chart.height()
    QTest.keyClick(window, Qt.Key.Key_F9)
    assert window.chart.height() > tall
    QTest.keyClick(window, Qt.Key.Key_F9)
    assert window.chart.height() <= tall + 2
