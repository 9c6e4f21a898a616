"""A shade in words beside its figures: "dark, dull blue", "very dark, greyish brown", "light grey".

The words for hue, and *greyish*, *strong* and *vivid*, are those of the ISCC-NBS system (Kelly and Judd 1976, NBS
Special Publication 440), as are the bounds of value: it parts black, dark, medium and light grey and white at Munsell
values 2.5, 4.5, 6.5 and 8.5, and L* is close to ten times the value (ASTM D1535). Hues end at hues of the Munsell
renotation (Newhall, Nickerson and Judd 1943), whose angles stand in `HUES`. The system itself bounds its names by
blocks of Munsell hue, value and chroma; the few bounds here are coarser. At which hue each name ends, and the bounds
of chroma, of the browns, olives and pinks and of tinted greys, are common practice, no source.
"""

from bisect import bisect_right
from dataclasses import dataclass

from numpy.typing import ArrayLike

from chartmaker.shade.lab import lch_of_lab

VALUES = ("very dark", "dark", "medium", "light", "very light")
VALUE_BOUNDS = (25.0, 45.0, 65.0, 85.0)
"""L* from which the next word of `VALUES` holds."""
CHROMAS = ("neutral", "greyish", "dull", "moderate", "strong", "vivid")
CHROMA_BOUNDS = (5.0, 15.0, 30.0, 45.0, 65.0)
"""C*ab from which the next word of `CHROMAS` holds."""
UNSPOKEN = ("medium", "moderate")
"""What the text leaves out, since it is neither this nor that."""
TINTED_CHROMA, TINTED_WHITE_CHROMA = 9.0, 15.0
"""Below this C*ab a shade is still a grey or a black, or, from 85 in L* on, a white, with a tint."""


@dataclass(frozen=True, slots=True)
class ShadeWords:
    """A shade as a person would tell it."""

    value: str
    """One of `VALUES`."""
    chroma: str
    """One of `CHROMAS`."""
    hue: str
    """The colour's name: "reddish brown", "blue", "yellowish white", "grey"."""
    text: str
    """All of it, without what goes without saying."""


HUES: tuple[tuple[float, str, str], ...] = (
    (18.5, "purplish red", "purplish"),  # to 2.5R
    (33.5, "red", "reddish"),  # to 7.5R
    (50.8, "reddish orange", "brownish"),  # to 2.5YR
    (67.1, "orange", "brownish"),  # to 7.5YR
    (83.1, "orange yellow", "brownish"),  # to 2.5Y
    (96.1, "yellow", "yellowish"),  # to 7.5Y
    (109.1, "greenish yellow", "yellowish"),  # to 2.5GY
    (129.4, "yellow green", "greenish"),  # to 7.5GY
    (153.3, "yellowish green", "greenish"),  # to 2.5G
    (174.0, "green", "greenish"),  # to 10G
    (197.1, "bluish green", "greenish"),  # to 7.5BG
    (237.2, "greenish blue", "bluish"),  # to 7.5B
    (271.6, "blue", "bluish"),  # to 5PB
    (285.7, "purplish blue", "bluish"),  # to 7.5PB
    (305.9, "violet", "purplish"),  # to 2.5P
    (333.6, "purple", "purplish"),  # to 10P
    (354.7, "reddish purple", "purplish"),  # to 5RP
)
"""Where each hue ends in degrees of h_ab, its name, and what a grey is called that leans to it.

After the last comes the first again. The angles are those of the Munsell renotation at value 5 and chroma 6, brought
from illuminant C to D65/10° by CAT16.
"""


@dataclass(frozen=True, slots=True)
class _Named:
    """A colour with a name of its own: which hues become it, and within which value and chroma."""

    name: str
    hues: tuple[str, ...]
    below_value: float = 101.0
    from_value: float = 0.0
    below_chroma: float = 200.0


NAMED = (
    _Named("reddish brown", ("reddish orange",), below_value=55, below_chroma=42),
    _Named("brown", ("orange",), below_value=58, below_chroma=48),
    _Named("yellowish brown", ("orange yellow",), below_value=68, below_chroma=48),
    _Named("olive brown", ("yellow",), below_value=56, below_chroma=30),
    _Named("olive", ("yellow", "greenish yellow"), below_value=56, below_chroma=55),
    _Named("olive green", ("yellow green",), below_value=50, below_chroma=45),
    _Named("purplish pink", ("reddish purple", "purplish red"), from_value=60, below_chroma=60),
    _Named("pink", ("red",), from_value=60, below_chroma=60),
    _Named("yellowish pink", ("reddish orange",), from_value=60, below_chroma=60),
)
"""The first that fits holds."""


def words_of(lab: ArrayLike) -> ShadeWords:
    """Give L*, a*, b* (3), under the light that it is judged in, as words."""
    lightness, chroma, hue = lch_of_lab(lab).tolist()
    value = VALUES[bisect_right(VALUE_BOUNDS, lightness)]
    strength = CHROMAS[bisect_right(CHROMA_BOUNDS, chroma)]
    name, tint = _hue(hue)
    if chroma < (TINTED_WHITE_CHROMA if value == VALUES[-1] else TINTED_CHROMA):
        grey = {VALUES[0]: "black", VALUES[-1]: "white"}.get(value, "grey")
        called = grey if strength == CHROMAS[0] else f"{tint} {grey}"
        return ShadeWords(value, strength, called, called if grey != "grey" else f"{value} {called}")
    called = next((one.name for one in NAMED if _fits(one, name, lightness, chroma)), name)
    spoken = ", ".join(word for word in (value, strength) if word not in UNSPOKEN)
    return ShadeWords(value, strength, called, f"{spoken} {called}".strip())


def every_hue() -> tuple[str, ...]:
    """Give every name that `ShadeWords.hue` may be, each once."""
    greys = ("grey", "black", "white")
    tints = dict.fromkeys(tint for _, _, tint in HUES)
    tinted = (f"{tint} {grey}" for tint in tints for grey in greys)
    return tuple(dict.fromkeys((*(name for _, name, _ in HUES), *(one.name for one in NAMED), *greys, *tinted)))


def _hue(degrees: float) -> tuple[str, str]:
    """Give the name of a hue and of a grey's tint."""
    for end, name, tint in HUES:
        if degrees < end:
            return name, tint
    return HUES[0][1], HUES[0][2]


def _fits(named: _Named, hue: str, lightness: float, chroma: float) -> bool:
    return hue in named.hues and named.from_value <= lightness < named.below_value and chroma < named.below_chroma
