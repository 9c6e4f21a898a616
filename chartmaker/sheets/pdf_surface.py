"""The sheets' surface on ReportLab: one PDF, the same bytes for the same boxes."""

from io import BytesIO

from PIL import Image
from reportlab import rl_config
from reportlab.lib.utils import ImageReader
from reportlab.pdfgen.canvas import Canvas

from chartmaker.sheets.boxes import Bookmark, Fills, Lines, Marks, Page, Picture, Style, Text
from chartmaker.sheets.faces import Outline, house_face
from chartmaker.sheets.ink import Ink
from chartmaker.sheets.lines import MM_PER_PT
from chartmaker.sheets.paper import Paper
from chartmaker.sheets.pdf_marks import drawn_at, mark_code
from chartmaker.sheets.pdf_path import PlainPath
from chartmaker.sheets.text import CODE_PADDING_EM, CODE_SCALE, Run

PT = 1 / MM_PER_PT
"""Points in a millimetre."""
rl_config.useA85 = 0
"""Streams stay binary: writing them as text costs a quarter of their size and of the time. ReportLab has no narrower
switch, and nothing else here uses it."""
PICTURE_QUALITY = 85
"""Of JPEG: a picture of the hat takes a tenth of its pixels' bytes."""
LONGEST_METADATA = 400
"""Characters of a title that the file's own data carry."""


class PdfSurface:
    """Draws on a ReportLab canvas; `finished` gives the bytes."""

    def __init__(self, *, title: str, paper: Paper) -> None:
        self._buffer = BytesIO()
        house = house_face(bold=False)
        self._canvas = Canvas(
            self._buffer,
            pagesize=(paper.width_mm * PT, paper.height_mm * PT),
            invariant=1,
            pageCompression=1,
            initialFontName=house.fontName,  # type: ignore[arg-type]  # the stubs are wrong here: it is a name
            lang="en",
        )
        self._canvas.setTitle(_storable(title))
        self._canvas.setAuthor("")
        self._canvas.setSubject("")
        self._canvas.setCreator("Chartmaker")
        self._height = 0.0
        self._bookmarks = 0
        self._forms: dict[tuple[str, bool, float], str] = {}
        self._font: tuple[str, float] | None = None
        self._fill: Ink | None = None
        self._stroke: tuple[Ink, float] | None = None

    def begin_page(self, page: Page, paper: Paper) -> None:
        """Start a page, with its bookmarks."""
        self._height = paper.height_mm * PT
        self._font = self._fill = self._stroke = None
        self._canvas.setLineCap(1)
        self._canvas.setLineJoin(1)
        for bookmark in page.bookmarks:
            self._mark(bookmark)

    def end_page(self) -> None:
        """Finish the page."""
        self._canvas.showPage()

    def finished(self) -> bytes:
        """Finish the file and give its bytes."""
        self._canvas.save()
        return self._buffer.getvalue()

    def text(self, box: Text) -> None:
        """Write a line run by run."""
        x, y = box.x * PT, self._height - box.baseline * PT
        size = box.style.size_pt
        self._fill_with(box.style.ink)
        for run in box.runs:
            if run.kind == "house":
                self._write(run.text, x, y, size=size, bold=box.style.bold)
            elif run.kind == "code":
                self._frame_code(run, x, y, box)
            elif run.outline:
                self._fill_outline(run, run.outline, x, y, box.style)
            x += run.advance_em * size

    def fills(self, box: Fills) -> None:
        """Fill rectangles as one path."""
        self._fill_with(box.ink)
        path = PlainPath()
        for left, top, width, height in box.rectangles:
            path.rect(left * PT, self._height - (top + height) * PT, width * PT, height * PT)
        self._canvas.drawPath(path, stroke=0, fill=1)

    def lines(self, box: Lines) -> None:
        """Draw lines as one path."""
        self._stroke_with(box.ink, box.width * PT)
        path = PlainPath()
        for x1, y1, x2, y2 in box.segments:
            path.moveTo(x1 * PT, self._height - y1 * PT)
            path.lineTo(x2 * PT, self._height - y2 * PT)
        self._canvas.drawPath(path, stroke=1, fill=0)

    def marks(self, box: Marks) -> None:
        """Draw the filled parts of all marks, then their lines."""
        size = box.size * PT
        centres = [(x * PT, self._height - y * PT) for x, y in box.centres]
        filled, stroked = mark_code(box.mark, size)
        if filled:
            self._fill_with(box.ink)
            self._canvas._code.append(drawn_at(centres, filled))  # type: ignore[attr-defined]  # noqa: SLF001
        if stroked:
            self._stroke_with(box.ink, box.mark.stroke * size)
            self._canvas._code.append(drawn_at(centres, stroked))  # type: ignore[attr-defined]  # noqa: SLF001

    def picture(self, box: Picture) -> None:
        """Draw pixels, packed as a photograph is: a hat has no edge that would show it."""
        left, top, width, height = (part * PT for part in box.rectangle)
        pixels = box.pixels
        packed = BytesIO()
        image = Image.frombytes("RGB", (pixels.width, pixels.height), pixels.rgb)
        image.save(packed, "JPEG", quality=PICTURE_QUALITY)
        packed.seek(0)
        self._canvas.drawImage(ImageReader(packed), left, self._height - top - height, width, height)

    def _mark(self, bookmark: Bookmark) -> None:
        key = f"mark{self._bookmarks}"
        self._bookmarks += 1
        self._canvas.bookmarkPage(key, fit="XYZ", left=0, top=self._height - bookmark.top * PT, zoom=0)
        self._canvas.addOutlineEntry(_storable(bookmark.title), key, level=bookmark.level)

    def _write(self, text: str, x: float, y: float, *, size: float, bold: bool) -> None:
        font = house_face(bold=bold).fontName, size
        if font != self._font:
            self._canvas.setFont(*font)
            self._font = font
        self._canvas.drawString(x, y, text)

    def _frame_code(self, run: Run, x: float, y: float, box: Text) -> None:
        size = box.style.size_pt
        pad = CODE_PADDING_EM * size
        self._write(run.text, x + 2 * pad, y + 0.06 * size, size=CODE_SCALE * size, bold=box.style.bold)
        self._stroke_with(box.style.ink, 0.04 * size)
        self._canvas.rect(x + pad, y - 0.1 * size, run.advance_em * size - 2 * pad, 0.72 * size, stroke=1, fill=0)

    def _fill_outline(self, run: Run, outline: Outline, x: float, y: float, style: Style) -> None:
        """Draw a run of outlines, kept as a form so that a title costs its outlines once, with its text for readers."""
        name = self._form_of(run, outline, bold=style.bold)
        canvas = self._canvas
        # ReportLab has no call for marked content; the operators are those of ISO 32000-1, 14.9.4.
        canvas._code.append(f"/Span << /ActualText <{_hex(run.text)}> >> BDC")  # type: ignore[attr-defined]  # noqa: SLF001
        canvas.saveState()
        canvas.translate(x, y)
        canvas.scale(style.size_pt, style.size_pt)
        canvas.doForm(name)
        canvas.restoreState()
        canvas._code.append("EMC")  # type: ignore[attr-defined]  # noqa: SLF001

    def _form_of(self, run: Run, outline: Outline, *, bold: bool) -> str:
        key = run.text, bold, outline.advance_em
        if key not in self._forms:
            self._forms[key] = f"outline{len(self._forms)}"
            self._canvas.beginForm(self._forms[key], -1, -2, outline.advance_em + 1, 3)
            for glyph in outline.glyphs:
                _add_glyph(self._canvas, glyph.commands, glyph.x_em, glyph.y_em)
            self._canvas.endForm()
            self._font = self._fill = self._stroke = None
        return self._forms[key]

    def _fill_with(self, ink: Ink) -> None:
        if ink != self._fill:
            self._canvas.setFillColorRGB(*ink)
            self._fill = ink

    def _stroke_with(self, ink: Ink, width: float) -> None:
        if (ink, width) != self._stroke:
            self._canvas.setStrokeColorRGB(*ink)
            self._canvas.setLineWidth(width)
            self._stroke = (ink, width)


def _storable(title: str) -> str:
    """Give a title as the file's own data can carry it: one line, without halves of surrogate pairs."""
    line = " ".join(title[:LONGEST_METADATA].split())
    return line.encode("utf-16", "replace").decode("utf-16")


def _hex(text: str) -> str:
    return ("\ufeff" + text).encode("utf-16-be", "replace").hex().upper()


def _add_glyph(canvas: Canvas, commands: tuple[tuple[str, tuple[float, ...]], ...], dx: float, dy: float) -> None:
    """Fill one glyph."""
    path = PlainPath(decimals=4)
    for verb, numbers in commands:
        placed = [number + (dy if place % 2 else dx) for place, number in enumerate(numbers)]
        if verb == "move":
            path.moveTo(placed[0], placed[1])
        elif verb == "line":
            path.lineTo(placed[0], placed[1])
        elif verb == "curve":
            path.curveTo(placed[0], placed[1], placed[2], placed[3], placed[4], placed[5])
        else:
            path.close()
    canvas.drawPath(path, stroke=0, fill=1, fillMode=1)
