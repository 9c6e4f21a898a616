"""Small designs and lots for tests, written as the text pictures that a knitter would draw."""

from collections.abc import Mapping, Sequence
from typing import Any

from chartmaker.model.band import Band
from chartmaker.model.design import Colourway, Design
from chartmaker.model.gauge import Gauge
from chartmaker.model.notation import rounds_from_text
from chartmaker.model.palette import Bath, Lot, Palette, Yarn
from chartmaker.model.reading import LabReading, Spectrum

Lab = tuple[float, float, float]


def chart(
    *band_texts: str,
    times: int | Sequence[int] = 1,
    gauge: tuple[float, float] | Gauge = (28.0, 32.0),
    lots: Mapping[str, Lot | Lab] | None = None,
    yarns: Sequence[Yarn] = (),
    baths: Sequence[Bath] = (),
    **settings: Any,
) -> Design:
    """Give a design of the bands drawn, from the cast-on edge up; each text's last line is its first round.

    `times` is one number for all bands or one for each; `gauge` is stitches and rounds per 10 cm; `lots` says which
    lot, or which lot of this CIELAB, each letter is. Further keywords are fields of `Design`.
    """
    counts = [times] * len(band_texts) if isinstance(times, int) else list(times)
    bands = tuple(
        Band(name=f"band {number}", times=count, rounds=rounds_from_text(text))
        for number, (text, count) in enumerate(zip(band_texts, counts, strict=True), start=1)
    )
    by_letter = {
        letter: given if isinstance(given, Lot) else lot(f"lot-{letter.lower()}", lab=given)
        for letter, given in (lots or {}).items()
    }
    colourways = (Colourway("first", tuple((letter, one.id) for letter, one in by_letter.items())),) if lots else ()
    copies = tuple({one.id: one for one in by_letter.values()}.values())
    return Design(
        bands=bands,
        gauge=gauge if isinstance(gauge, Gauge) else Gauge(stitches_per_10cm=gauge[0], rounds_per_10cm=gauge[1]),
        colourways=colourways,
        palette=Palette(yarns=tuple(yarns), baths=tuple(baths), lots=copies),
        **settings,
    )


def lot(lot_id: str, lab: Lab | None = None, *, labs: Sequence[Lab] = (), **fields: Any) -> Lot:
    """Give a lot with one CIELAB reading, or with several; further keywords are fields of `Lot`."""
    readings = tuple(LabReading(lab=one) for one in ([lab] if lab else labs))
    return Lot(**{"id": lot_id, "name": lot_id.replace("-", " "), "readings": readings} | fields)


def flat_spectrum(factor: float = 0.5) -> Spectrum:
    """Give a spectrum that reflects the same share from 400 to 700 nm."""
    return Spectrum(start_nm=400, step_nm=10, reflectance=(factor,) * 31)
