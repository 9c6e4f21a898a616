"""Words to patterns: in letters drawn stitch by stitch, or in a typeface brought to the gauge's proportion."""

import unicodedata
from importlib import resources

import numpy as np
import uharfbuzz as hb  # type: ignore[import-untyped]  # ships no types
from numpy.typing import NDArray
from PIL import Image, ImageDraw, ImageFont, features

from chartmaker.files.problems import UserProblem
from chartmaker.model.bounds import MOST_ROUNDS, MOST_STITCHES
from chartmaker.pictures.alphabet import HEIGHT, glyphs
from chartmaker.pictures.pattern import Pattern, pattern_of
from chartmaker.pictures.scaling import Block, stitch_light

LONGEST_WORDS = 200
"""Characters of a text: more would not go round a hat."""
HOUSE = ("fontpkg_atkinson_hyperlegible", "files/AtkinsonHyperlegible-Bold.ttf")
"""Bold, because a thin stroke falls between two stitches."""
NOTO, CJK = "manimgx_fonts", ("noto_cjk_sans_otc", "NotoSansCJK-Regular.ttc")
"""Where the Noto faces are: asked after the house face, that for Chinese, Japanese and Korean last, being large."""
VARIABLE, BOLD_WEIGHT = "[wght]", 700
"""What a file's name says where its weight can be chosen, and the weight chosen."""
DRAWN_PX = 160
"""Height of the type from which stitches are averaged."""
COVERED = 0.5
"""A stitch is figure where ink covers at least this share of it."""
RIGHT_TO_LEFT = frozenset(("R", "AL", "AN"))


def stitched_words(text: str, *, letters: str = "AB", scale: int = 1) -> Pattern:
    """Write words in the alphabet drawn for stitches, seven rounds high times `scale`, one gap between letters.

    Small letters become capitals. A gap follows the last letter too, so that words close up round the hat.
    Raises UserProblem for a character that the alphabet lacks, for no text, and for one that is too long.
    """
    wanted = _checked(text).upper()
    drawn = glyphs()
    _refuse_missing([character for character in wanted if character not in drawn], "the stitch alphabet")
    gap = np.zeros((HEIGHT, 1), dtype=np.bool_)
    picture = np.hstack([part for character in wanted for part in (drawn[character], gap)])
    return _as_pattern(np.kron(picture, np.ones((scale, scale), dtype=np.bool_)), letters)


def typeset_words(text: str, *, rounds: int, height_per_width: float, letters: str = "AB", gap: int = 2) -> Pattern:
    """Write words in a typeface, their ink `rounds` high and in proportion; `gap` stitches of ground follow them.

    Any script that a bundled face has is shaped and ordered as it should be.
    Raises UserProblem for characters that no face has together, for no text, and for one that is too long.
    """
    if not 1 <= rounds <= MOST_ROUNDS:
        raise UserProblem(f"letters {rounds} rounds high cannot be made; 1 to {MOST_ROUNDS} can")
    ink = _ink(_checked(text))
    height, width = ink.shape
    stitches = max(round(width / height * rounds * height_per_width), 1)
    if stitches + gap > MOST_STITCHES:
        raise _too_wide(stitches + gap)
    pixels = np.repeat(np.where(ink, 0, 255).astype(np.uint8)[:, :, None], 3, axis=2)
    proportion = stitches * height / (rounds * width)  # the nearest whole count stretches the words by a hair
    light = stitch_light(pixels, Block(stitches=stitches, rounds=rounds, height_per_width=proportion))
    figure = (light[..., 0] <= 1 - COVERED).astype(np.uint8)
    if not figure.any():
        raise UserProblem(f"at {rounds} rounds nothing of the words is left", now="make them higher")
    return pattern_of(np.pad(figure, ((0, 0), (gap, 0))), letters)


def _checked(text: str) -> str:
    words = unicodedata.normalize("NFC", " ".join(text.split()))
    if not words:
        raise UserProblem("there are no words to write")
    if len(words) > LONGEST_WORDS:
        raise UserProblem(f"the words have {len(words)} characters, more than {LONGEST_WORDS}")
    return words


def _as_pattern(picture: NDArray[np.bool_], letters: str) -> Pattern:
    """Turn a drawing as it is seen (rows from the top, columns from the left) into rounds."""
    height, width = picture.shape
    if width > MOST_STITCHES:
        raise _too_wide(width)
    if height > MOST_ROUNDS:
        raise UserProblem(f"the words would be {height} rounds high, more than {MOST_ROUNDS}", now="make them smaller")
    return pattern_of(picture[::-1, ::-1].astype(np.uint8), letters)


def _too_wide(stitches: int) -> UserProblem:
    what = f"the words would be {stitches} stitches wide, more than {MOST_STITCHES}"
    return UserProblem(what, now="make them fewer or smaller")


def _ink(words: str) -> NDArray[np.bool_]:
    """Draw words in the first face that has all of them; shape (height, width) of their ink alone."""
    package, file = _face_for(words)
    engine = ImageFont.Layout.RAQM if features.check("raqm") else ImageFont.Layout.BASIC
    if engine is ImageFont.Layout.BASIC and _needs_shaping(words):
        raise UserProblem("this installation of Pillow lacks Raqm, without which this script comes out wrong")
    with resources.as_file(resources.files(package) / file) as path:
        font = ImageFont.truetype(str(path), DRAWN_PX, layout_engine=engine)
        if VARIABLE in file:
            font.set_variation_by_axes([BOLD_WEIGHT])
        left, top, right, bottom = font.getbbox(words)
        size = (max(int(right - left), 1), max(int(bottom - top), 1))
        canvas = Image.new("L", size, 0)
        ImageDraw.Draw(canvas).text((-left, -top), words, fill=255, font=font)
    ink = np.asarray(canvas) >= 128
    rows, columns = np.flatnonzero(ink.any(axis=1)), np.flatnonzero(ink.any(axis=0))
    if not len(rows):
        raise UserProblem("the words have no ink to knit")
    return ink[rows[0] : rows[-1] + 1, columns[0] : columns[-1] + 1]


def _face_for(words: str) -> tuple[str, str]:
    faces = [HOUSE, *_further_faces()]
    missing = [_missing(words, face) for face in faces]
    chosen = next((face for face, lacking in zip(faces, missing, strict=True) if not lacking), None)
    if chosen is None:
        _refuse_missing(min(missing, key=len), "a single one of the typefaces")
    return chosen or HOUSE


def _further_faces() -> list[tuple[str, str]]:
    names = sorted(item.name for item in resources.files(NOTO).iterdir() if item.name.endswith(".ttf"))
    upright = [name for name in names if "Italic" not in name]
    general_first = sorted(upright, key=lambda name: not name.startswith("NotoSans["))
    return [*((NOTO, name) for name in general_first), CJK]


def _missing(words: str, face: tuple[str, str]) -> list[str]:
    package, file = face
    font = hb.Font(hb.Face(hb.Blob.from_file_path(str(resources.files(package) / file)), 0))
    return [character for character in words if not font.get_nominal_glyph(ord(character))]


def _needs_shaping(words: str) -> bool:
    return any(unicodedata.bidirectional(character) in RIGHT_TO_LEFT or ord(character) >= 0x900 for character in words)


def _refuse_missing(missing: list[str], what: str) -> None:
    if missing:
        shown = " ".join(dict.fromkeys(sign if sign.isprintable() else ascii(sign)[1:-1] for sign in missing))
        raise UserProblem(f"{what} does not have {shown}", now="leave it out or choose the other lettering")
