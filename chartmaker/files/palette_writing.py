"""Palettes to their files: keys in the order of the format, so that two versions of a file can be compared by eye."""

from pathlib import Path

from chartmaker.files.dyeing_tables import record_data, stock_data
from chartmaker.files.fingerprint import Fingerprint
from chartmaker.files.palette_reading import palette_from_text
from chartmaker.files.saving import save_checked
from chartmaker.files.toml_writing import toml_from
from chartmaker.files.versions import NEWEST
from chartmaker.model.palette import Bath, Lot, Palette, Yarn
from chartmaker.model.reading import LabReading, Reading, ScreenReading, Spectrum
from chartmaker.model.settings import Viewing

Plain = dict[str, object]


def save_palette(palette: Palette, path: Path, *, expected: Fingerprint | None = None) -> Fingerprint:
    """Write a palette to its file, which keeps its last good copy beside it; give the file's new fingerprint.

    Raises UserProblem where that cannot be done, and ChangedMeanwhile where something else has changed or removed the
    file since its fingerprint was `expected` (None overwrites whatever is there); both leave the file as it was.
    """
    return save_checked(palette, path, write=palette_to_text, read=palette_from_text, expected=expected)


def palette_to_text(palette: Palette) -> str:
    """Write a palette as the text of its file."""
    return toml_from(
        {"format": "chartmaker-palette", "version": NEWEST, "name": palette.name} | contents_data(palette),
    )


def contents_data(palette: Palette) -> Plain:
    """Give what a palette holds as plain data; a kind of which there are none is left out."""
    sections = {
        "yarns": [_yarn(yarn) for yarn in palette.yarns],
        **stock_data(palette),
        "baths": [_bath(bath) for bath in palette.baths],
        "lots": [_lot(lot) for lot in palette.lots],
    }
    return {key: things for key, things in sections.items() if things}


def viewing_data(viewing: Viewing) -> Plain:
    """Give the viewing conditions as plain data."""
    return {"illuminant": viewing.illuminant, "observer": viewing.observer}


def _yarn(yarn: Yarn) -> Plain:
    return _given(
        {
            "id": yarn.id,
            "name": yarn.name,
            "metres_per_100g": _measured(yarn.metres_per_100g),
            "reading": _reading(yarn.reading) if yarn.reading else None,
        }
    )


def _bath(bath: Bath) -> Plain:
    return _given(
        {
            "id": bath.id,
            "dyestuff": bath.dyestuff,
            "part": bath.part or None,
            "state": bath.state,
            "ratio": float(bath.ratio),
            "mordants": [{"name": each.name, "percent_wof": float(each.percent_wof)} for each in bath.mordants],
            "assists": [{"name": each.name, "grams": float(each.grams)} for each in bath.assists],
            "liquor_l_per_100g": float(bath.liquor_l_per_100g),
            "ph_start": _measured(bath.ph_start),
            "ph_end": _measured(bath.ph_end),
            "hottest_c": _measured(bath.hottest_c),
            "minutes": None if bath.minutes is None else _counted(bath.minutes),
            "notes": bath.notes or None,
            "record": record_data(bath.record) if bath.record else None,
        }
    )


def _lot(lot: Lot) -> Plain:
    return _given(
        {
            "id": lot.id,
            "name": lot.name,
            "yarn": lot.yarn,
            "bath": lot.bath,
            "load": lot.load if lot.bath is not None or lot.load != 1 else None,
            "dyed_on": lot.dyed_on,
            "on_hand_g": float(lot.on_hand_g),
            "metres_per_100g": None if lot.metres_per_100g is None else float(lot.metres_per_100g),
            "planned": {"bath": lot.planned.bath, "load": lot.planned.load} if lot.planned else None,
            "notes": lot.notes or None,
            "picture": lot.picture or None,
            "readings": [_reading(reading) for reading in lot.readings] or None,
        }
    )


def _reading(reading: Reading) -> Plain:
    kind: Plain = {"kind": reading.kind}
    if isinstance(reading, Spectrum):
        grid = {"start_nm": _counted(reading.start_nm), "step_nm": _counted(reading.step_nm)}
        return kind | grid | {"reflectance": [float(factor) for factor in reading.reflectance]}
    if isinstance(reading, ScreenReading):
        return kind | {"hex": reading.hex}
    if isinstance(reading, LabReading):
        source: Plain = {"source": reading.source} if reading.source != "instrument" else {}
        return kind | {"lab": [float(value) for value in reading.lab]} | viewing_data(reading.viewing) | source
    return kind | {"xyz": [float(value) for value in reading.xyz]} | viewing_data(reading.viewing)


def _given(data: Plain) -> Plain:
    return {key: value for key, value in data.items() if value is not None}


def _measured(value: float | None) -> float | None:
    return None if value is None else float(value)


def _counted(value: float) -> float:
    """Write a number that is whole as a rule, as nanometres and minutes are, without a decimal point."""
    return int(value) if value == int(value) else float(value)
