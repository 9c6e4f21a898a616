"""Which units the window shows lengths, weights and gauges in; the settings remember it, and the files stay metric."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QLocale, QObject, Signal

from chartmaker.model.units import IMPERIAL, METRIC, Units, units_named

if TYPE_CHECKING:
    from PySide6.QtCore import QSettings

KEY = "units"


class UnitsSetting(QObject):
    """One choice for the whole window; where none was made, that of the system's country."""

    changed = Signal()

    def __init__(self, settings: QSettings, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._settings = settings
        kept = str(settings.value(KEY, ""))
        self._units = units_named(kept) if kept else usual_units()

    @property
    def units(self) -> Units:
        """The system in use."""
        return self._units

    @property
    def are_imperial(self) -> bool:
        """Whether inches, yards and ounces are shown."""
        return self._units is IMPERIAL

    def toggle(self) -> None:
        """Show the other system, and keep the choice."""
        self._units = METRIC if self.are_imperial else IMPERIAL
        self._settings.setValue(KEY, self._units.name)
        self.changed.emit()


def usual_units() -> Units:
    """Give what is usual where the system says that it stands."""
    is_imperial = QLocale.system().measurementSystem() == QLocale.MeasurementSystem.ImperialUSSystem
    return IMPERIAL if is_imperial else METRIC
