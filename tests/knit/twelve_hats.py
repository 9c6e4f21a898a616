"""Twelve hats from the starter, three shapes for four heads, with motifs of the shelf stamped into their bands."""

from dataclasses import replace
from functools import lru_cache
from pathlib import Path

from chartmaker.files.motif_reading import read_shelf
from chartmaker.files.palette_reading import read_palette
from chartmaker.knit.answers import defaults_for
from chartmaker.knit.body_plan import HEIGHTS
from chartmaker.knit.outline import chart_offsets
from chartmaker.knit.sizes import size_named
from chartmaker.knit.starter import started
from chartmaker.model.design import Design
from chartmaker.model.edits import paint
from chartmaker.model.gauge import Gauge
from chartmaker.model.hat import SHAPES
from chartmaker.model.motif import Motif, longest_float
from chartmaker.model.round import Round
from chartmaker.model.stamping import stamped

PALETTE = Path(__file__).parents[2] / "palettes" / "allotment.palette.toml"
SIZES = ("6 months, girl", "5 years, boy", "woman, mean", "man, 95th percentile")
GAUGES = ((30, 34), (22, 26), (36, 40))
SEED_ROUNDS = 4
HATS = [(shape, size) for shape in SHAPES for size in SIZES]


def hat(shape: str, size: str, counted: tuple[int, int] = GAUGES[0]) -> Design:
    """Start a hat from its defaults and stamp a motif into each band that is meant for one."""
    gauge = Gauge(stitches_per_10cm=counted[0], rounds_per_10cm=counted[1])
    design = started(defaults_for(shape=shape, head_cm=size_named(size).head_cm, gauge=gauge), _palette())
    wish = HATS.index((shape, size))
    for place, band in enumerate(design.bands):
        if band.name in HEIGHTS:
            design = _with_motif(design, place, wish)
        elif band.name in ("crown", "taper"):
            design = _seeded(design, place)
    return design


def _seeded(design: Design, place: int) -> Design:
    """Sow single stitches over a shaped band, in columns that run true, a few apart each way."""
    band = design.bands[place]
    offsets = chart_offsets(band.rounds)
    middle = offsets[0] + len(band.rounds[0]) // 2
    most = design.limits.float_cm / design.gauge.stitch_width_cm
    plain = [index for index, line in enumerate(band.rounds) if not line.is_shaped]
    cells = {}
    for row, index in enumerate(plain[SEED_ROUNDS // 2 : -1 : SEED_ROUNDS]):
        places = range(offsets[index] - middle, offsets[index] - middle + len(band.rounds[index]))
        seeds = bytes((place + 2 * (row % 2)) % 4 == 0 for place in places)
        if longest_float(Round("AB", seeds)) <= most:
            cells |= {(index, stitch): 1 for stitch, is_seed in enumerate(seeds) if is_seed}
    bare = replace(band, rounds=tuple(replace(line, letters="AB") for line in band.rounds))
    ready = replace(design, bands=(*design.bands[:place], bare, *design.bands[place + 1 :]))
    return paint(ready, band=place, cells=cells, text="Sow seeds").applied_to(ready)


def _with_motif(design: Design, place: int, wish: int) -> Design:
    """Stamp a motif that fits a band, in its middle; `wish` says which of those that fit as well."""
    band = design.bands[place]
    most = design.limits.float_cm / design.gauge.stitch_width_cm
    fitting = [
        motif
        for motif in _motifs()
        if len(band.rounds[0]) % motif.repeat == 0
        and len(motif.rounds) <= len(band.rounds)
        and motif.longest_float <= most
    ]
    tallest = max(len(motif.rounds) for motif in fitting)
    choice = [motif for motif in fitting if len(motif.rounds) == tallest]
    motif = choice[wish % len(choice)]
    first = (len(band.rounds) - tallest) // 2
    return stamped(design, motif, band=place, at=(first, 0)).applied_to(design)


@lru_cache
def _motifs() -> tuple[Motif, ...]:
    return tuple(motif for motif in read_shelf().motifs if not motif.is_shaped and motif.parts == 2)


@lru_cache
def _palette():
    return read_palette(PALETTE)
