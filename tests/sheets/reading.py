"""A reader of printed charts that knows nothing of the program: it reads the PDF's drawing commands and its text."""

import io
from collections import defaultdict
from dataclasses import dataclass

import pypdf
import pypdfium2

Point = tuple[float, float]


@dataclass(frozen=True)
class Contour:
    """One contour of a path, as the file draws it."""

    points: tuple[Point, ...]
    is_filled: bool
    is_closed: bool
    ink: tuple[float, ...]

    @property
    def middle(self) -> Point:
        xs, ys = zip(*self.points, strict=True)
        return (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2

    @property
    def is_level(self) -> bool:
        return len(self.points) == 2 and self.points[0][1] == self.points[1][1]

    @property
    def is_upright(self) -> bool:
        return len(self.points) == 2 and self.points[0][0] == self.points[1][0]

    @property
    def length(self) -> float:
        (x1, y1), (x2, y2) = self.points[0], self.points[-1]
        return abs(x2 - x1) + abs(y2 - y1)


def contours(page: pypdf.PageObject) -> list[Contour]:
    """Read every path of a page by the operators of ISO 32000-1, 8.5, moved as by those of 8.4.4; nothing is turned."""
    found: list[Contour] = []
    path: list[tuple[list[Point], bool]] = []
    ink = {"rg": (0.0,), "RG": (0.0,)}
    origin, kept = (0.0, 0.0), []
    for operands, operator in page.get_contents().operations:
        name, numbers = operator.decode(), operands
        if name in ("rg", "RG"):
            ink[name] = tuple(float(part) for part in numbers)
        elif name == "q":
            kept.append((origin, dict(ink)))
        elif name == "Q":
            origin, ink = kept.pop()
        elif name == "cm":
            *_, dx, dy = map(float, numbers)
            origin = origin[0] + dx, origin[1] + dy
        elif name == "m":
            path.append((_moved(numbers, origin), False))
        elif name in ("l", "c"):
            path[-1][0].extend(_moved(numbers, origin))
        elif name == "re":
            [(x, y)], (width, height) = _moved(numbers[:2], origin), map(float, numbers[2:])
            path.append(([(x, y), (x + width, y), (x + width, y + height), (x, y + height)], True))
        elif name == "h":
            path[-1] = (path[-1][0], True)
        elif name in ("f", "f*", "S", "n", "s"):
            if name != "n":
                kind = "rg" if name.startswith("f") else "RG"
                found.extend(Contour(tuple(points), kind == "rg", closed, ink[kind]) for points, closed in path)
            path = []
    return found


def _moved(numbers, origin: Point) -> list[Point]:
    values = list(map(float, numbers))
    return [(x + origin[0], y + origin[1]) for x, y in zip(values[::2], values[1::2], strict=True)]


def letters_at(pdf: bytes, index: int) -> list[tuple[str, Point]]:
    """Read single letters that stand alone, with where they stand, by PDFium's text extraction."""
    document = pypdfium2.PdfDocument(pdf)
    text = document[index].get_textpage()
    whole = text.get_text_range()
    found = []
    for place, letter in enumerate(whole):
        before, after = whole[max(0, place - 1) : place], whole[place + 1 : place + 2]
        if letter.isalpha() and letter.isupper() and not before.strip() and not after.strip():
            left, bottom, right, top = text.get_charbox(place)
            found.append((letter, ((left + right) / 2, (bottom + top) / 2)))
    document.close()
    return found


def decoded_chart(pdf: bytes, index: int = 0) -> list[str]:
    """Read a chart without colour back into its letters, the top round first, by the marks of the strip above it."""
    page = pypdf.PdfReader(io.BytesIO(pdf)).pages[index]
    paths = contours(page)
    xs, ys = _grid(paths)
    width, height = xs[1] - xs[0], ys[1] - ys[0]
    key = _key(paths, letters_at(pdf, index), above=ys[-1])
    cells = defaultdict(list)
    for contour in paths:
        x, y = contour.middle
        if xs[0] < x < xs[-1] and ys[0] < y < ys[-1] and not _is_line_of(contour, xs, ys):
            cells[int((y - ys[0]) / height), int((x - xs[0]) / width)].append(contour)
    rows = []
    for row in reversed(range(len(ys) - 1)):
        signs = (_sign(cells[row, column]) for column in range(len(xs) - 1))
        rows.append("".join(key[sign] for sign in signs))
    return rows


def _grid(paths: list[Contour]) -> tuple[list[float], list[float]]:
    """Find the grid by its uprights, the longest of the page, and the level lines that they cross."""
    longest = max(path.length for path in paths if path.is_upright)
    uprights = [path for path in paths if path.is_upright and path.length > 0.99 * longest]
    low = min(y for path in uprights for _, y in path.points)
    high = max(y for path in uprights for _, y in path.points)
    xs = sorted({round(path.points[0][0], 1) for path in uprights})
    levels = (path for path in paths if path.is_level and abs(path.length - (xs[-1] - xs[0])) < 1)
    ys = sorted({round(path.points[0][1], 1) for path in levels if low - 0.2 < path.points[0][1] < high + 0.2})
    return xs, ys


def _is_line_of(contour: Contour, xs: list[float], ys: list[float]) -> bool:
    x, y = contour.middle
    return (contour.is_upright and min(abs(x - at) for at in xs) < 0.2 and contour.length > (ys[1] - ys[0]) * 0.9) or (
        contour.is_level and min(abs(y - at) for at in ys) < 0.2 and contour.length > (xs[1] - xs[0]) * 0.9
    )


def _key(paths: list[Contour], letters: list[tuple[str, Point]], *, above: float) -> dict[tuple, str]:
    """Pair the sign in each chip of the strip with the letter at its right."""
    frames = [path for path in paths if path.is_upright and path.points[0][1] > above and 10 < path.length < 30]
    found = {}
    for letter, (x, y) in letters:
        sides = sorted(
            path.points[0][0]
            for path in frames
            if path.points[0][0] < x and abs(path.middle[1] - y) < 4 and x - path.points[0][0] < 30
        )
        if len(sides) < 2:
            continue
        left, right = sides[-2], sides[-1]
        inside = [
            path
            for path in paths
            if left < path.middle[0] < right and abs(path.middle[1] - y) < 6 and not _is_frame(path, right - left)
        ]
        found[_sign(inside)] = letter
    return found


def _is_frame(path: Contour, side: float) -> bool:
    return len(path.points) == 2 and (path.is_level or path.is_upright) and path.length > 0.95 * side


def _sign(drawn: list[Contour]) -> tuple:
    """Give what a cell shows, whatever its size: its contours against the box around all of them."""
    drawn = [path for path in drawn if path.ink not in ((1.0,), (1.0, 1.0, 1.0))]
    if not drawn:
        return ()
    xs = [x for path in drawn for x, _ in path.points]
    ys = [y for path in drawn for _, y in path.points]
    size = max(max(xs) - min(xs), max(ys) - min(ys))
    middle = (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2
    return tuple(
        sorted(
            (
                path.is_filled,
                path.is_closed,
                tuple(
                    (round((x - middle[0]) / size, 1) + 0.0, round((y - middle[1]) / size, 1) + 0.0)
                    for x, y in path.points
                ),
            )
            for path in drawn
        )
    )
