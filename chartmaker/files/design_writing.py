"""Designs to their files: keys in the order of the format, so that two versions of a file can be compared by eye."""

from dataclasses import asdict, replace
from functools import lru_cache
from pathlib import Path

from chartmaker.files.design_reading import TRIM_SIZE_KEYS, design_from_text
from chartmaker.files.fingerprint import Fingerprint
from chartmaker.files.palette_writing import contents_data, viewing_data
from chartmaker.files.saving import save_checked
from chartmaker.files.toml_writing import toml_from
from chartmaker.files.versions import NEWEST
from chartmaker.model.band import Band
from chartmaker.model.design import Colourway, Design
from chartmaker.model.gauge import Gauge, Swatch
from chartmaker.model.hat import Hat, Trim
from chartmaker.model.notation import rounds_to_text
from chartmaker.model.palette import Palette
from chartmaker.model.settings import Allowances, Limits

Plain = dict[str, object]


def save_design(design: Design, path: Path, *, expected: Fingerprint | None = None) -> Fingerprint:
    """Write a design to its file, which keeps its last good copy beside it; give the file's new fingerprint.

    Raises UserProblem where that cannot be done, and ChangedMeanwhile where something else has changed or removed the
    file since its fingerprint was `expected` (None overwrites whatever is there); both leave the file as it was.
    """
    return save_checked(_as_filed(design), path, write=design_to_text, read=design_from_text, expected=expected)


def design_to_text(design: Design) -> str:
    """Write a design as the text of its file; the copies of its lots carry no palette's name there."""
    opening: Plain = {"format": "chartmaker-design", "version": NEWEST, "title": design.title, "notes": design.notes}
    if design.palette_file:
        opening["palette"] = design.palette_file
    sections: Plain = {
        "hat": _hat(design.hat),
        "gauge": _gauge(design.gauge),
        "yarn": {"metres_per_100g": float(design.metres_per_100g)},
        **_swatches(design.swatches),
        "allowances": _allowances(design.allowances),
        "limits": _limits(design.limits),
        "viewing": viewing_data(design.viewing),
        **({"colourways": [_colourway(each) for each in design.colourways]} if design.colourways else {}),
        "bands": [_band(band) for band in design.bands],
    }
    contents = _contents_text(design.palette)
    return "\n".join(filter(None, (toml_from(opening | sections), contents)))


@lru_cache(maxsize=2)
def _contents_text(palette: Palette) -> str:
    """Write the copies of yarns, baths and lots: most of a file, and the same from one edit to the next as a rule."""
    return toml_from(contents_data(palette))


def _as_filed(design: Design) -> Design:
    return replace(design, palette=replace(design.palette, name="")) if design.palette.name else design


def _hat(hat: Hat) -> Plain:
    return {
        "shape": hat.shape,
        "head_cm": float(hat.head_cm),
        "ease_percent": float(hat.ease_percent),
        **({"depth_cm": float(hat.depth_cm)} if hat.depth_cm is not None else {}),
        "cast_on": asdict(hat.cast_on),
        "finish": asdict(hat.finish),
        **({"fold": asdict(hat.fold)} if hat.fold else {}),
        "trims": [_trim(trim) for trim in hat.trims],
    }


def _trim(trim: Trim) -> Plain:
    return {"kind": trim.kind, "letter": trim.letter, TRIM_SIZE_KEYS[trim.kind]: float(trim.size_cm)}


def _gauge(gauge: Gauge) -> Plain:
    return {"stitches_per_10cm": float(gauge.stitches_per_10cm), "rounds_per_10cm": float(gauge.rounds_per_10cm)}


def _swatches(swatches: tuple[Swatch, ...]) -> Plain:
    """Write one as a table by itself, as the format began, and several as an array."""
    if len(swatches) == 1:
        return {"swatch": _swatch(swatches[0])}
    return {"swatches": [_swatch(each) for each in swatches]} if swatches else {}


def _swatch(swatch: Swatch) -> Plain:
    numbers = {name: getattr(swatch, name) for name in ("metres", "grams", "ball_before_g", "ball_after_g")}
    passed = {"passed": swatch.passed} if swatch.passed else {}
    grist = {"metres_per_100g": float(swatch.metres_per_100g)} if swatch.metres_per_100g is not None else {}
    told = {name: float(value) for name, value in numbers.items() if value is not None}
    return {"stitches": swatch.stitches, **told, **passed, **grist}


def _allowances(allowances: Allowances) -> Plain:
    return {
        "tail_cm": float(allowances.tail_cm),
        "float_slack_percent": float(allowances.float_slack_percent),
        "carry_up_rounds": allowances.carry_up_rounds,
        "reserve_percent": float(allowances.reserve_percent),
    }


def _limits(limits: Limits) -> Plain:
    return {
        "float_cm": float(limits.float_cm),
        "value_clear": float(limits.value_clear),
        "value_soft": float(limits.value_soft),
    }


def _colourway(colourway: Colourway) -> Plain:
    return {"name": colourway.name, "lots": dict(colourway.lots)}


def _band(band: Band) -> Plain:
    texture = {"texture": band.texture} if band.texture else {}
    return {"name": band.name, "times": band.times, **texture, "rounds": rounds_to_text(band.rounds)}
