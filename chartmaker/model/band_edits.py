"""Edits that change which bands a hat has, and what a band is besides its rounds: its name, times and texture.

Bands count from the cast-on edge up. Each raises ValueError, with a sentence, for what cannot be.
"""

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from chartmaker.model.band import Band
from chartmaker.model.design import Design
from chartmaker.model.edits import ReplaceBands, with_bands
from chartmaker.model.round import Round

NEW_ROUNDS = 8
"""Rounds of a band that is added: a small border's height, and easily more or less."""


def add_band(design: Design, *, band: int, above: bool) -> ReplaceBands | None:
    """Make the edit that adds a plain band above or below another, which it takes its times, repeat and letters from.

    Above, it has the stitches of the neighbour's last round; below, what the neighbour's first round eats.
    """
    neighbour = design.bands[band]
    line = neighbour.rounds[-1] if above else neighbour.rounds[0]
    stitches = len(line) if above else line.eaten or len(line)
    plain = Round(line.letters, bytes(stitches))
    new = Band(name=_numbered(design.bands, "band"), times=neighbour.times, rounds=(plain,) * NEW_ROUNDS)
    return _inserted(design, band + above, new, "Add a band")


def lay_in_rounds(design: Design, *, band: int, rounds: tuple[Round, ...], name: str) -> ReplaceBands | None:
    """Make the edit that works plain rounds of one repeat, with their own letters, as a new band above another.

    It goes round as often as its repeat divides the stitches of the round below.
    """
    below = design.bands[band]
    stitches, repeat = below.stitches(len(below.rounds) - 1), len(rounds[0])
    if stitches % repeat:
        raise ValueError(f"{name or 'the pattern'} repeats every {repeat} stitches, which does not divide {stitches}")
    return _inserted(design, band + 1, Band(name=name, times=stitches // repeat, rounds=rounds), f"Lay in {name}")


def duplicate_band(design: Design, *, band: int) -> ReplaceBands | None:
    """Make the edit that works a band a second time, above itself, its name numbered."""
    original = design.bands[band]
    stem = original.name.rstrip("0123456789").rstrip() or "band"
    return _inserted(design, band + 1, replace(original, name=_numbered(design.bands, stem)), "Duplicate band")


def delete_band(design: Design, *, band: int) -> ReplaceBands | None:
    """Make the edit that takes a band out; a hat keeps at least one."""
    if len(design.bands) == 1:
        raise ValueError("a hat keeps at least one band")
    return with_bands(design, (*design.bands[:band], *design.bands[band + 1 :]), "Delete band")


def move_band(design: Design, *, band: int, up: bool) -> ReplaceBands | None:
    """Make the edit that lets a band change places with the one above or below it."""
    other = band + 1 if up else band - 1
    if not 0 <= other < len(design.bands):
        raise ValueError(f"band {design.bands[band].name!r} is the {'top' if up else 'lowest'} one already")
    bands = list(design.bands)
    bands[band], bands[other] = bands[other], bands[band]
    return with_bands(design, bands, f"Move band {'up' if up else 'down'}")


def rename_band(design: Design, *, band: int, name: str) -> ReplaceBands | None:
    """Make the edit that gives a band another name."""
    return _with(design, band, "Rename band", name=name)


def set_times(design: Design, *, band: int, times: int) -> ReplaceBands | None:
    """Make the edit that lets a band's repeat go round another number of times."""
    return _with(design, band, "Change how often the repeat goes round", times=times)


def set_texture(design: Design, *, band: int, texture: str) -> ReplaceBands | None:
    """Make the edit that works a band in knit and purl, told as "k" and "p" from stitch 1; empty is all knit."""
    pattern = "".join(texture.lower().split())
    for line in design.bands[band].rounds:
        if pattern and len(line) % len(pattern) and not set(pattern) - {"k", "p"}:
            raise ValueError(
                f"a texture of {len(pattern)} stitches does not divide the repeat, which has {len(line)} in some round"
            )
    return _with(design, band, "Change texture", texture=pattern)


def join_band(design: Design, *, band: int) -> ReplaceBands | None:
    """Make the edit that makes a band and the one above it one, of the lower one's name.

    Both must go round equally often, be worked in one texture, and meet where they are joined.
    """
    if band + 1 == len(design.bands):
        raise ValueError(f"band {design.bands[band].name!r} has none above it to join with")
    lower, upper = design.bands[band], design.bands[band + 1]
    if lower.times != upper.times or len(lower.rounds[-1]) != upper.rounds[0].eaten:
        raise ValueError(
            f"only bands of one repeat join; here it is {len(lower.rounds[-1])} × {lower.times}, "
            f"and the band above eats {upper.rounds[0].eaten} × {upper.times}"
        )
    if lower.texture != upper.texture:
        raise ValueError(
            f"bands of two textures, {_worked(lower)} and {_worked(upper)}, cannot be one; give them one texture first"
        )
    joined = replace(lower, rounds=lower.rounds + upper.rounds)
    return with_bands(design, (*design.bands[:band], joined, *design.bands[band + 2 :]), "Join bands")


def split_band(design: Design, *, band: int, index: int) -> ReplaceBands | None:
    """Make the edit that lets a new band begin with the round at this index of a band."""
    whole = design.bands[band]
    if not index:
        raise ValueError(f"band {whole.name!r} begins with this round already")
    lower = replace(whole, rounds=whole.rounds[:index])
    upper = replace(whole, rounds=whole.rounds[index:], name=_numbered(design.bands, "band"))
    return with_bands(design, (*design.bands[:band], lower, upper, *design.bands[band + 1 :]), "Split band")


def _with(design: Design, band: int, text: str, **changes: Any) -> ReplaceBands | None:
    changed = replace(design.bands[band], **changes)
    return with_bands(design, (*design.bands[:band], changed, *design.bands[band + 1 :]), text)


def _inserted(design: Design, at: int, new: Band, text: str) -> ReplaceBands | None:
    return with_bands(design, (*design.bands[:at], new, *design.bands[at:]), text)


def _numbered(bands: Sequence[Band], stem: str) -> str:
    """Give a name with the next number that no band has; there is one among one more than there are bands."""
    taken = {band.name for band in bands}
    start = len(bands) + 1 if stem == "band" else 2
    return next(name for number in range(start, start + len(bands) + 1) if (name := f"{stem} {number}") not in taken)


def _worked(band: Band) -> str:
    return band.texture or "all knit"
