"""Draw every motif of the shelf on one sheet, three repeats each, to be looked at before one is added or changed.

Run it from the repository's root: `python assets/draw_motifs.py OUT.png`.
"""

import sys
from pathlib import Path

from PIL import Image, ImageDraw

from chartmaker.files.motif_reading import read_shelf
from chartmaker.knit.outline import chart_offsets, chart_width
from chartmaker.model.motif import Motif

STITCH_PX, ROUND_PX = 8, 7
"""The usual gauge's proportion, 28 stitches and 32 rounds to 10 cm."""
INKS = ("#ece4d0", "#263c5c", "#a0522d")
"""Ground, figure, third."""
REPEATS, WIDTH_PX, GAP_PX, TITLE_PX = 3, 1500, 12, 14


def tile(motif: Motif) -> Image.Image:
    """Draw a motif under its name; a crown's wedges stand apart as in a chart, a flat one has plain rounds about it."""
    margin = 0 if motif.is_shaped else 2
    columns, offsets = chart_width(motif.rounds), chart_offsets(motif.rounds)
    height = (len(motif.rounds) + 2 * margin) * ROUND_PX
    image = Image.new("RGB", (max(REPEATS * columns * STITCH_PX, 110), TITLE_PX + height), "white")
    draw = ImageDraw.Draw(image)
    draw.text((0, 0), f"{motif.name} {motif.repeat} by {len(motif.rounds)}", fill="black")
    if margin:
        draw.rectangle((0, TITLE_PX, REPEATS * columns * STITCH_PX - 1, TITLE_PX + height), fill=INKS[0])
    for up, (line, offset) in enumerate(zip(motif.rounds, offsets, strict=True)):
        bottom = TITLE_PX + height - (up + margin) * ROUND_PX
        for copy in range(REPEATS):
            for across, part in enumerate(line.cells):
                right = (REPEATS * columns - copy * columns - offset - across) * STITCH_PX
                draw.rectangle((right - STITCH_PX, bottom - ROUND_PX, right - 1, bottom - 1), fill=INKS[part])
    return image


def sheet(motifs: tuple[Motif, ...]) -> Image.Image:
    """Set the motifs in lines, as words are set."""
    x = y = deepest = 0
    placed = []
    for image in map(tile, motifs):
        if x + image.width > WIDTH_PX:
            x, y, deepest = 0, y + deepest + GAP_PX, 0
        placed.append((image, (x, y)))
        x, deepest = x + image.width + GAP_PX, max(deepest, image.height)
    whole = Image.new("RGB", (WIDTH_PX, y + deepest), "white")
    for image, place in placed:
        whole.paste(image, place)
    return whole


if __name__ == "__main__":
    sheet(read_shelf().motifs).save(Path(sys.argv[1]))
