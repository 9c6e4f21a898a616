"""The pairs in other lights, from across a room, and to eyes that lack a cone: a table of the contrast sheet."""

from collections.abc import Iterator

from chartmaker.appraisal import Appraisal, PairAppraisal
from chartmaker.knit.from_afar import ACROSS_ROOM_CM, contrasts_from_afar
from chartmaker.model.units import Units
from chartmaker.sheets.chart_cells import Look
from chartmaker.sheets.flow import SMALL, Block, heading, kept, paragraph, space
from chartmaker.sheets.legend import CHIP_MM, chip
from chartmaker.sheets.numbers import one_place, or_dash
from chartmaker.sheets.tables import CELL_STRONG, CLOSE_PAD_MM, Cell, Column, Drawn, scaled, table

LIGHT_WORDS = {"D65": "daylight", "A": "lamp", "LED-B3": "white", "FL11": "tube"}
"""What an illuminant stands for; its own name is printed with it."""
GRADE_SIGNS = {"soft": " ~", "lost": " !"}
"""After a figure whose lower bound is not clear, told below the table."""


def elsewhere_blocks(appraisal: Appraisal, look: Look, units: Units, width: float) -> Iterator[Block]:
    """Give how far apart in value the pairs are elsewhere; nothing where no pair has a shade."""
    pairs = [pair for pair in appraisal.pairs if pair.to_eyes]
    if not pairs:
        return
    lights = list(dict.fromkeys(light.illuminant for pair in pairs for light in pair.in_lights))
    eyes = [one.kind for one in pairs[0].to_eyes]
    shades = {item.letter: item.shade for item in appraisal.letters if item.shade}
    afar = {letters: one.value_difference for letters, one in contrasts_from_afar(appraisal.design, shades).items()}
    columns = scaled(
        (
            Column("pair", 15, style=CELL_STRONG),
            Column("", 18),
            *(Column(f"{LIGHT_WORDS.get(name, '')} {name}".strip(), 20, "right") for name in lights),
            Column(f"from {units.room.brief(ACROSS_ROOM_CM / 100)} away", 20, "right"),
            *(Column(f"{kind} eyes", 20, "right") for kind in eyes),
        ),
        width,
    )
    yield heading("The same pairs elsewhere, value apart", width=width)
    *rows, last = table(columns, [_row(appraisal, pair, look, lights, afar) for pair in pairs], pad=CLOSE_PAD_MM)
    words = (
        "Lights are known of measured spectra alone; from afar, of bands without shaping. ~ is soft there, ! is lost."
    )
    yield from (*rows, *kept([last, space(2.0), *paragraph(words, width=width, style=SMALL)]))


def _row(
    appraisal: Appraisal, pair: PairAppraisal, look: Look, lights: list[str], afar: dict[str, float]
) -> list[Cell]:
    first, second = (appraisal.letter(letter) for letter in pair.letters)
    found = {light.illuminant: light for light in pair.in_lights}
    told = [
        f"{one_place(found[name].value_difference)}{GRADE_SIGNS.get(found[name].grade, '')}" if name in found else "–"
        for name in lights
    ]
    return [
        " ".join(pair.letters),
        Drawn(CHIP_MM, (*chip(0, 0, first, look), *chip(CHIP_MM, 0, second, look))),
        *told,
        or_dash(afar.get(pair.letters)),
        *(one_place(one.value_difference) for one in pair.to_eyes),
    ]
