"""The settings of the pattern dialog from one start of the program to the next."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QAbstractButton, QComboBox, QSlider, QSpinBox

if TYPE_CHECKING:
    from PySide6.QtCore import QSettings

    from chartmaker.app.pattern_dialog import PatternDialog

GROUP = "pattern"
Control = QAbstractButton | QComboBox | QSlider | QSpinBox


def _kept(dialog: PatternDialog) -> dict[str, Control]:
    """Name the controls whose state is remembered, in the order in which it is set again.

    A repeat that is set no longer follows the words, nor a level what is found: what follows is set after it.
    """
    picture, words, method = dialog.picture, dialog.words, dialog.method
    return {
        "stitches": picture.repeat.spin,
        "rounds": picture.rounds,
        "follows": picture.follows,
        "fills": picture.fills,
        "stitched": words.stitched,
        "typeset": words.typeset,
        "scale": words.scale,
        "height": words.rounds,
        "words_stitches": words.repeat.spin,
        "as_wide": words.follows,
        "by_value": method.by_value,
        "by_shade": method.by_shade,
        "level": method.level,
        "finds": method.finds,
        "inverts": method.inverts,
        "dithers": method.dithers,
        "floats": dialog.floats,
    }


def keep_settings(dialog: PatternDialog, settings: QSettings) -> None:
    """Write the state of every control that is remembered."""
    for name, control in _kept(dialog).items():
        settings.setValue(f"{GROUP}/{name}", _state(control))


def recall_settings(dialog: PatternDialog, settings: QSettings) -> None:
    """Bring every control to its state of the last time; what is not there, or is no number, is left as it is."""
    for name, control in _kept(dialog).items():
        try:
            value = int(str(settings.value(f"{GROUP}/{name}")))
        except ValueError:
            continue
        if isinstance(control, QAbstractButton):
            control.setChecked(bool(value))
        elif isinstance(control, QComboBox):
            if 0 <= value < control.count():
                control.setCurrentIndex(value)
        else:
            control.setValue(value)


def _state(control: Control) -> int:
    if isinstance(control, QAbstractButton):
        return int(control.isChecked())
    return control.currentIndex() if isinstance(control, QComboBox) else control.value()
