"""Every visible text goes through the translator, and what a translator is given is up to date."""

import importlib.util
import re
from pathlib import Path

import pytest
from PySide6.QtCore import QLocale, QTranslator
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QLabel,
    QLineEdit,
    QTableWidget,
    QToolButton,
    QWidget,
)

from chartmaker.app import told as told_module
from chartmaker.app.keys_dialog import KeysDialog
from chartmaker.app.main import install_translations
from chartmaker.app.steps_dialog import StepsDialog
from chartmaker.app.taking_dialog import TakingDialog
from chartmaker.app.told import pattern_of, told
from chartmaker.app.typed_dialog import TypedDialog
from chartmaker.app.window import PAGES
from chartmaker.model.measured import Measured
from chartmaker.model.palette import Palette
from chartmaker.model.settings import Viewing
from tests.app.test_pages import SHORT
from tests.builders import lot

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture(scope="module")
def maker():
    """Give the script that gathers the texts."""
    spec = importlib.util.spec_from_file_location("make_translations", ROOT / "assets" / "make_translations.py")
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def test_the_template_has_every_text_of_the_program(maker):
    advice = "run `python assets/make_translations.py`"
    assert maker.TEMPLATE.read_text(encoding="utf-8") == maker.template(), advice
    written = "".join(f"{text!r}\n" for text in maker.sentences())
    assert maker.SENTENCES.read_text(encoding="utf-8") == written, advice


def test_every_text_that_is_no_literal_comes_from_a_table_that_the_template_has(maker):
    assert set(maker.not_literal()) == set(maker.tables()), "add it to `tables()` in assets/make_translations.py"


def test_texts_of_edits_refusals_and_findings_are_among_the_sentences(maker):
    known = maker.sentences()
    for text in (
        "Draw ground",
        "Shade with {0}",
        "Insert {0} rounds",
        "Move round up",
        "Change head",
        "a band keeps at least one round; delete the band itself instead",
        "the top of band {0} is reached; rounds move within their band",
        "three letters are worked in one round: {0}",
    ):
        assert text in known


def test_what_a_sentence_takes_in_is_put_back_as_it_was(maker):
    for source in maker.sentences():
        values = [f"<{number}|x>" for number in range(len(re.findall(r"\{\d+\}", source)))]
        text = source.format(*values)
        assert pattern_of(source).fullmatch(text).groups() == tuple(values)


class Longer(QTranslator):
    """Wraps every text in brackets and makes it a third longer, as other languages are."""

    def translate(self, context, source, _disambiguation=None, _count=-1):
        if context != "chartmaker":
            return None
        return f"⟦{source}{'·' * round(0.35 * len(source))}⟧"

    def isEmpty(self):  # noqa: N802 - Qt's own name
        return False


@pytest.fixture
def longer(qapp):
    """Let every text be wrapped and longer."""
    translator = Longer()
    qapp.installTranslator(translator)
    yield translator
    qapp.removeTranslator(translator)


@pytest.mark.usefixtures("longer")
def test_a_sentence_from_below_is_translated_with_what_it_takes_in():
    assert told("Shade with C").startswith("⟦Shade with C·")
    assert told("the top of band 'rib' is reached; rounds move within their band").startswith(
        "⟦the top of band 'rib' is"
    )
    assert told("nothing that the program says") == "nothing that the program says"


def test_without_a_translation_a_sentence_is_not_even_looked_for(monkeypatch):
    monkeypatch.setattr(told_module, "_known", lambda: pytest.fail("looked for"))
    assert told("Shade with C") == "Shade with C"


QTS_OWN = ("&OK", "&Cancel", "&Close", "OK", "Cancel", "Close")
"""Words of buttons that Qt translates."""
USERS_OWN = {"band", "walnut", "weld", "june", "alum", "first", "knit", "all"}
"""Words of the design that is shown, which no translator is given."""
UNITS = {"cm", "mm", "nm", "CIE", "Ctrl", "Shift", "Alt", "Del", "Tab", "px", "PgUp", "PgDown", "Up", "Down", "Left"}
UNITS |= {"Right", "Backspace", "Return", "Space", "Chartmaker", "the", "D65", "Home", "End"}


def bare_words(text):
    """Give the words of a text that did not pass through the translator."""
    text = re.sub(r"<[^<>]*>", " ", text.replace("&&", "+").replace("&", ""))
    while "⟦" in text:
        shorter = re.sub(r"⟦[^⟦⟧]*⟧", " ", text)
        if shorter == text:
            break
        text = shorter
    return [word for word in re.findall(r"[A-Za-z]{2,}", text) if word not in USERS_OWN | UNITS]


def visible_texts(top):
    """Give what labels, buttons, headings, boxes and tool tips show, each with the class that shows it."""
    for widget in [top, *top.findChildren(QWidget)]:
        if not widget.isVisible() or widget.objectName().startswith("qt_"):
            continue
        kind = type(widget).__name__
        yield kind, widget.toolTip()
        if isinstance(widget, QLabel | QAbstractButton):
            yield kind, widget.text()
        if isinstance(widget, QLineEdit):
            yield kind, widget.placeholderText()
        if isinstance(widget, QComboBox):
            yield from ((kind, widget.itemText(index)) for index in range(widget.count()))
        if isinstance(widget, QTableWidget):
            headings = [widget.horizontalHeaderItem(column) for column in range(widget.columnCount())]
            yield from ((kind, heading.text()) for heading in headings if heading)
            lines, columns = range(widget.rowCount()), range(widget.columnCount())
            cells = (widget.item(line, column) for line in lines for column in columns)
            yield from ((kind, cell.text()) for cell in cells if cell)
        if isinstance(widget, QToolButton) and widget.defaultAction():
            yield kind, widget.defaultAction().toolTip()
    for bar in top.findChildren(QWidget):
        yield "headings", " ".join(text for text, *_ in getattr(bar, "headings", ()))


def unwrapped(top):
    return sorted({(kind, text) for kind, text in visible_texts(top) if bare_words(text)})


@pytest.mark.usefixtures("longer")
def test_every_visible_text_of_the_pages_passes_through_the_translator(open_on):
    window = open_on(SHORT)
    for page in PAGES:
        window.show_page(page)
        assert unwrapped(window) == [], page
    window.show_page("chart")
    window.chart.show_shelf(is_shown=True)
    assert [entry for entry in unwrapped(window) if entry[0] != "MotifList"] == []


@pytest.mark.usefixtures("longer")
def test_every_menu_entry_passes_through_the_translator(open_on):
    window = open_on(SHORT)
    for entry in window.menuBar().actions():
        assert bare_words(entry.text()) == []
        for action in entry.menu().actions():
            assert bare_words(action.text()) == []
            assert bare_words(action.toolTip()) == []


@pytest.mark.usefixtures("longer")
def test_every_visible_text_of_the_dialogs_passes_through_the_translator(open_on, qtbot):
    window = open_on(SHORT)
    walnut = lot("walnut", (30, 8, 12))
    taken = TakingDialog([Measured("june", walnut.readings)], source="", palette=Palette(), viewing=Viewing())
    for dialog in (
        KeysDialog(window),
        StepsDialog(window.chart.canvas, 1, window),
        TypedDialog(walnut, Viewing(), window),
        taken,
    ):
        qtbot.addWidget(dialog)
        dialog.show()
        assert [entry for entry in unwrapped(dialog) if entry[1] not in QTS_OWN] == []
        dialog.close()


@pytest.mark.usefixtures("longer")
def test_undo_tells_what_it_would_take_back_in_the_language_of_the_window(open_on):
    window = open_on(SHORT)
    window.chart.shading.set_letter("C")
    assert window.document.stack.undoText().startswith("⟦Shade with C")


def test_a_translation_is_loaded_by_the_systems_language(qapp, tmp_path, monkeypatch):
    import subprocess
    import sys

    folder = tmp_path / "translations"
    folder.mkdir()
    source = (
        '<?xml version="1.0" encoding="utf-8"?><!DOCTYPE TS><TS version="2.1" language="eo"><context>'
        "<name>chartmaker</name><message><source>Chart</source><translation>Diagramo</translation></message>"
        "</context></TS>"
    )
    (folder / "chartmaker_eo.ts").write_text(source, encoding="utf-8")
    release = Path(sys.executable).with_name("pyside6-lrelease")
    subprocess.run([release, folder / "chartmaker_eo.ts", "-qm", folder / "chartmaker_eo.qm"], check=True)
    monkeypatch.setattr("chartmaker.app.main.assets_folder", lambda: tmp_path)
    before = QLocale()
    QLocale.setDefault(QLocale("eo"))
    try:
        install_translations(qapp)
        assert QApplication.translate("chartmaker", "Chart") == "Diagramo"
    finally:
        QLocale.setDefault(before)
        for translator in qapp.findChildren(QTranslator):
            qapp.removeTranslator(translator)
            translator.deleteLater()
