"""Paths for ReportLab, written with few figures and without its per-number care: a chart holds very many."""

from math import sqrt

from reportlab.pdfgen.pathobject import PDFPathObject

KAPPA = 4 / 3 * (sqrt(2) - 1)
"""How far the handles of a quarter circle reach, for a radius of 1: the usual cubic approximation, off by 0.03 %."""


class PlainPath(PDFPathObject):
    """A path in points to two decimals (0.0035 mm), or in em to four."""

    def __init__(self, *, decimals: int = 2) -> None:
        super().__init__()
        self._steps: list[str] = []
        number = f"{{:.{decimals}f}}"
        self._pair = f"{number} {number}"
        self._four = f"{self._pair} {self._pair} re"
        self._six = f"{self._pair} {self._pair} {self._pair} c"

    def getCode(self) -> str:  # noqa: N802 - ReportLab's name
        """Give the operators of the path."""
        return "n " + " ".join(self._steps) if self._steps else "n"

    def painted(self, operator: str) -> str:
        """Give the operators of the path with the one that paints it; nothing where there is no path."""
        return f"{' '.join(self._steps)} {operator}" if self._steps else ""

    def moveTo(self, x: float, y: float) -> None:  # noqa: N802 - ReportLab's name
        """Begin a contour."""
        self._steps.append(self._pair.format(x, y) + " m")

    def lineTo(self, x: float, y: float) -> None:  # noqa: N802 - ReportLab's name
        """Go straight."""
        self._steps.append(self._pair.format(x, y) + " l")

    def curveTo(  # noqa: N802, PLR0913, PLR0917 - ReportLab's name and arguments
        self, x1: float, y1: float, x2: float, y2: float, x3: float, y3: float
    ) -> None:
        """Go along a cubic curve."""
        self._steps.append(self._six.format(x1, y1, x2, y2, x3, y3))

    def rect(self, x: float, y: float, width: float, height: float) -> None:
        """Add a rectangle."""
        self._steps.append(self._four.format(x, y, width, height))

    def circle(self, x_cen: float, y_cen: float, r: float) -> None:
        """Add a circle."""
        k = KAPPA * r
        left, right, low, high = x_cen - r, x_cen + r, y_cen - r, y_cen + r
        self.moveTo(right, y_cen)
        self.curveTo(right, y_cen + k, x_cen + k, high, x_cen, high)
        self.curveTo(x_cen - k, high, left, y_cen + k, left, y_cen)
        self.curveTo(left, y_cen - k, x_cen - k, low, x_cen, low)
        self.curveTo(x_cen + k, low, right, y_cen - k, right, y_cen)
        self.close()

    def close(self) -> None:
        """End a contour."""
        self._steps.append("h")
