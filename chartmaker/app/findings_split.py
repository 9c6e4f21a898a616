"""What divides the window between the page at hand and the findings below it."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QSplitter, QWidget

from chartmaker.app.findings_strip import FindingsStrip
from chartmaker.app.words import tr

UNBOUNDED = 16_777_215
"""The most that Qt lets a widget grow to."""


class FindingsSplit(QSplitter):
    """Gives findings the room they want, or one line while they are folded; the rest is the page's."""

    def __init__(self, upper: QWidget, findings: FindingsStrip) -> None:
        super().__init__(Qt.Orientation.Vertical)
        self._findings = findings
        self.setAccessibleName(tr("Page and findings"))
        self.setChildrenCollapsible(False)
        self.addWidget(upper)
        self.addWidget(findings)
        self.setStretchFactor(0, 1)
        findings.folded.connect(self.divide)

    def divide(self, is_folded: bool) -> None:  # noqa: FBT001 - the signal's own signature
        """Divide the room anew."""
        line = self._findings.minimumSizeHint().height()
        total = sum(self.sizes())
        lower = line if is_folded else self._findings.wanted_height
        self._findings.setMaximumHeight(line if is_folded else UNBOUNDED)
        self.setSizes([total - lower, lower])
