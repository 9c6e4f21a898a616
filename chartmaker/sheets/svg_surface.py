"""The sheets' surface as SVG: a file a page, in millimetres, its text as outlines with the words kept for readers."""

import base64
from collections.abc import Iterator, Sequence
from io import BytesIO
from xml.sax.saxutils import escape, quoteattr

from PIL import Image

from chartmaker.sheets.boxes import Fills, Lines, Marks, Page, Picture, Text
from chartmaker.sheets.faces import Outline, house_outline
from chartmaker.sheets.ink import Ink
from chartmaker.sheets.lines import MM_PER_PT
from chartmaker.sheets.marks import Disc, Mark, Ring, Solid
from chartmaker.sheets.paper import Paper
from chartmaker.sheets.surface import draw_page
from chartmaker.sheets.text import CODE_PADDING_EM, CODE_SCALE, Run

VERBS = {"move": "M", "line": "L", "curve": "C", "close": "Z"}


def svg_pages(pages: Sequence[Page], paper: Paper, *, title: str) -> Iterator[bytes]:
    """Draw pages, each as one SVG file."""
    for number, page in enumerate(pages, start=1):
        surface = SvgSurface(title=f"{title}, page {number} of {len(pages)}")
        draw_page(page, paper, surface)
        yield surface.finished()


class SvgSurface:
    """Draws one page; `finished` gives the file."""

    def __init__(self, *, title: str) -> None:
        self._title = title
        self._parts: list[str] = []
        self._glyphs: dict[str, str] = {}
        """Names of outlines by their path, each kept once."""

    def begin_page(self, page: Page, paper: Paper) -> None:
        """Start the page, white paper under it."""
        wide, high = f"{paper.width_mm:g}", f"{paper.height_mm:g}"
        size = f'width="{wide}mm" height="{high}mm" viewBox="0 0 {wide} {high}"'
        self._parts = [
            f'<svg xmlns="http://www.w3.org/2000/svg" {size} lang="en">',
            f"<title>{escape(_storable(self._title))}</title>",
            f"<desc>{escape(page.sheet)}</desc>",
            f'<rect width="{wide}" height="{high}" fill="#fff"/>',
        ]

    def end_page(self) -> None:
        """Finish the page."""
        glyphs = "".join(f'<path id="{name}" d="{path}"/>' for path, name in self._glyphs.items())
        self._parts.insert(1, f"<defs>{glyphs}</defs>")
        self._parts.append("</svg>")

    def finished(self) -> bytes:
        """Give the file."""
        return "\n".join(self._parts).encode()

    def text(self, box: Text) -> None:
        """Write a line as outlines, labelled with what they say."""
        uses = "".join(self._runs(box))
        if uses:
            label = quoteattr(_storable(box.text))
            self._parts.append(f'<g role="img" aria-label={label} fill="{_hex(box.style.ink)}">{uses}</g>')

    def fills(self, box: Fills) -> None:
        """Fill rectangles as one path."""
        steps = (f"M{_n(x)} {_n(y)}h{_n(width)}v{_n(height)}h{_n(-width)}z" for x, y, width, height in box.rectangles)
        self._parts.append(f'<path fill="{_hex(box.ink)}" d="{"".join(steps)}"/>')

    def lines(self, box: Lines) -> None:
        """Draw lines as one path."""
        steps = (f"M{_n(x1)} {_n(y1)}L{_n(x2)} {_n(y2)}" for x1, y1, x2, y2 in box.segments)
        self._stroke("".join(steps), box.ink, box.width)

    def marks(self, box: Marks) -> None:
        """Draw the filled parts of all marks as one path, and their lines as another."""
        for is_filled in (True, False):
            path = "".join(_mark(box.mark, centre, box.size, is_filled=is_filled) for centre in box.centres)
            if path and is_filled:
                self._parts.append(f'<path fill="{_hex(box.ink)}" d="{path}"/>')
            elif path:
                self._stroke(path, box.ink, box.mark.stroke * box.size)

    def picture(self, box: Picture) -> None:
        """Draw pixels, packed without loss."""
        packed = BytesIO()
        pixels = box.pixels
        Image.frombytes("RGB", (pixels.width, pixels.height), pixels.rgb).save(packed, "PNG")
        data = base64.b64encode(packed.getvalue()).decode()
        x, y, width, height = map(_n, box.rectangle)
        place = f'x="{x}" y="{y}" width="{width}" height="{height}"'
        self._parts.append(f'<image {place} href="data:image/png;base64,{data}"/>')

    def _stroke(self, path: str, ink: Ink, width: float) -> None:
        look = f'fill="none" stroke="{_hex(ink)}" stroke-width="{_n(width)}" stroke-linecap="round"'
        self._parts.append(f'<path {look} stroke-linejoin="round" d="{path}"/>')

    def _runs(self, box: Text) -> Iterator[str]:
        x, size = box.x, box.style.size_pt * MM_PER_PT
        for run in box.runs:
            if run.kind == "code":
                yield from self._code(run, x, box)
            else:
                outline = run.outline or house_outline(run.text, bold=box.style.bold)
                yield from self._outline(outline, x, box.baseline, size)
            x += run.advance_em * size

    def _code(self, run: Run, x: float, box: Text) -> Iterator[str]:
        size = box.style.size_pt * MM_PER_PT
        pad = CODE_PADDING_EM * size
        outline = house_outline(run.text, bold=box.style.bold)
        yield from self._outline(outline, x + 2 * pad, box.baseline - 0.06 * size, CODE_SCALE * size)
        wide, high = run.advance_em * size - 2 * pad, 0.72 * size
        place = f'x="{_n(x + pad)}" y="{_n(box.baseline - 0.62 * size)}" width="{_n(wide)}" height="{_n(high)}"'
        yield f'<rect {place} fill="none" stroke="{_hex(box.style.ink)}" stroke-width="{_n(0.04 * size)}"/>'

    def _outline(self, outline: Outline, x: float, baseline: float, size: float) -> Iterator[str]:
        for glyph in outline.glyphs:
            path = "".join(
                VERBS[verb] + " ".join(f"{number:.4g}" for number in numbers) for verb, numbers in glyph.commands
            )
            if path:
                name = self._glyphs.setdefault(path, f"g{len(self._glyphs)}")
                left, up = x + glyph.x_em * size, baseline - glyph.y_em * size
                yield f'<use href="#{name}" transform="matrix({_n(size)} 0 0 {_n(-size)} {_n(left)} {_n(up)})"/>'


def _mark(mark: Mark, centre: tuple[float, float], size: float, *, is_filled: bool) -> str:
    """Give the filled or the stroked contours of a mark; its own y counts upwards."""
    steps = []
    for shape in mark.shapes:
        if isinstance(shape, Disc | Solid) is not is_filled:
            continue
        if isinstance(shape, Disc | Ring):
            radius = shape.radius * size
            x, y = centre[0] + shape.centre[0] * size, centre[1] - shape.centre[1] * size
            arc = f"a{_n(radius)} {_n(radius)} 0 1 0"
            steps.append(f"M{_n(x - radius)} {_n(y)}{arc} {_n(2 * radius)} 0{arc} {_n(-2 * radius)} 0z")
            continue
        points = [f"{_n(centre[0] + x * size)} {_n(centre[1] - y * size)}" for x, y in shape.points]
        is_closed = isinstance(shape, Solid) or shape.is_closed
        steps.append("M" + "L".join(points) + ("z" if is_closed else ""))
    return "".join(steps)


def _n(number: float) -> str:
    """Write a length to a thousandth of a millimetre."""
    return f"{number:.3f}".rstrip("0").rstrip(".") if "." in f"{number:.3f}" else f"{number:.0f}"


def _hex(ink: Ink) -> str:
    return "#" + "".join(f"{round(255 * min(max(part, 0.0), 1.0)):02x}" for part in ink)


def _storable(text: str) -> str:
    """Leave out what XML cannot hold: controls and halves of surrogate pairs."""
    return "".join(
        character for character in text if character.isprintable() and not 0xD800 <= ord(character) <= 0xDFFF
    )
