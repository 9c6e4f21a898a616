"""What a photo's readings are told as: how well the target fits, how it lies, and what is doubtful about a skein."""

from __future__ import annotations

from typing import TYPE_CHECKING

from chartmaker.app.told import told
from chartmaker.app.words import number, tr

if TYPE_CHECKING:
    from chartmaker.app.photo_reading import PhotoRead
    from chartmaker.pictures.target_photo import SkeinReading, TargetReading

MOST_CLIPPED = 0.02
"""Share of a skein's pixels beyond the camera's range from which it is told."""
MOST_DARK = 0.05
"""Share in shadow from which it is told."""
MOST_SPREAD = 3.0
"""Mean CIEDE2000 among a skein's tiles from which it counts as uneven: common practice, no source."""


def fit_words(read: PhotoRead) -> str:
    """Tell how the target fits, a line for each thing."""
    target = read.target
    if target is None:
        return _sentence(told(read.problem))
    worst = told(target.worst_place.words)
    lines = [
        tr("Patches off by {0} in the mean, {1} at most ({2}); left out of the fit, by {3} (CIEDE2000).").format(
            number(target.mean, 1), number(target.worst, 1), worst, number(target.left_out, 1)
        )
    ]
    if read.problem:
        return _sentence(told(read.problem))
    lines += _position_words(target)
    if target.likely_edition != target.edition:
        lines.append(
            tr("! The other edition fits clearly better: {0} in the mean.").format(number(target.other_mean, 1))
        )
    if not target.fall.is_even:
        lines.append(
            tr("Light falls off by {0} % across the target, which is evened out.").format(number(target.fall.percent))
        )
    if target.unused:
        names = ", ".join(told(place.words) for place in target.unused)
        lines.append(tr("! Clipped or in shadow, so left out: {0}.").format(names))
    return "\n".join(lines)


def skein_words(skein: SkeinReading | None) -> str:
    """Tell what is doubtful about a skein; empty where nothing is."""
    if skein is None:
        return tr("cannot be read")
    doubts = []
    if skein.clipped > MOST_CLIPPED:
        doubts.append(tr("{0} % beyond the camera's range").format(number(100 * skein.clipped)))
    if skein.dark > MOST_DARK:
        doubts.append(tr("{0} % in shadow").format(number(100 * skein.dark)))
    if skein.spread > MOST_SPREAD:
        doubts.append(tr("uneven"))
    return ", ".join(doubts)


def _position_words(target: TargetReading) -> list[str]:
    lines = []
    turns = ("", tr("a quarter turn clockwise"), tr("half a turn"), tr("a quarter turn anticlockwise"))
    if target.position.turns:
        lines.append(tr("The target lies turned by {0}, which is allowed for.").format(turns[target.position.turns]))
    if target.position.is_mirrored:
        lines.append(tr("! The photo is mirrored; shades are not changed by it."))
    return lines


def _sentence(text: str) -> str:
    return f"! {text[:1].upper()}{text[1:]}."
