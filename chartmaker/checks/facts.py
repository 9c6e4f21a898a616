"""What the checks judge: everything computed of a design, before anything is said about it."""

from dataclasses import dataclass

from chartmaker.dye.plan import BathPlan
from chartmaker.knit.depth import Depth
from chartmaker.knit.floats import Floats, LongFloat
from chartmaker.knit.layout import Fabric
from chartmaker.knit.loop import LoopLength
from chartmaker.knit.profile import Profile
from chartmaker.knit.yarn import Requirement
from chartmaker.model.design import Design
from chartmaker.model.palette import Lot, Palette
from chartmaker.shade.elsewhere import EyesContrast, LightContrast
from chartmaker.shade.lot_shade import LotShade


@dataclass(frozen=True, slots=True, kw_only=True)
class RoundAppraisal:
    """One round of the whole hat."""

    number: int
    """1 is the first knitted."""
    band: int
    """Index of its band."""
    band_name: str
    index_in_band: int
    stitches: int
    letters: str
    """In use, ground first."""
    value_difference: float | None
    """|ΔL*| of its worst pair; 0 for a plain round, None while a shade is missing."""
    value_difference_low: float | None
    """The lower bound of it, which is judged."""
    grade: str
    """Either clear, soft, lost or plain; empty while a shade is missing."""
    rests_on: str = "nothing"
    """The weakest of what its letters' shades rest on: `predicted` where a lot is still to be dyed."""
    longest_float_stitches: int
    longest_float_cm: float
    meets: bool
    """Whether it eats exactly what lies below it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PairAppraisal:
    """Two letters that touch somewhere in the hat."""

    letters: str
    """Both, in alphabetical order."""
    boundary_cm: float
    """The edge that they share in the whole hat."""
    drawn_cm: float
    """The share of it where they play different parts, so that the pattern depends on it."""
    value_difference: float | None
    value_difference_low: float | None
    ciede2000: float | None
    grade: str
    """Either clear, soft or lost; empty while a shade is missing."""
    in_lights: tuple[LightContrast, ...] = ()
    """In the lights beside the design's own; empty unless both lots have spectra."""
    to_eyes: tuple[EyesContrast, ...] = ()
    """To eyes that lack a cone; empty while a shade is missing."""
    rests_on: str = "nothing"
    """The weaker of what the two shades rest on."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LetterAppraisal:
    """One letter, what it is, and what it takes."""

    letter: str
    lot: Lot | None
    shade: LotShade | None
    requirement: Requirement


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Facts:
    """Everything computed of one design in the colourway in use."""

    design: Design
    palette: Palette
    """The design's lots and, where its palette is at hand, that palette's too: what a remedy may choose from."""
    fabric: Fabric
    profile: Profile
    depth: Depth
    floats: Floats
    long_floats: tuple[LongFloat, ...]
    loop: LoopLength
    rounds: tuple[RoundAppraisal, ...]
    pairs: tuple[PairAppraisal, ...]
    letters: tuple[LetterAppraisal, ...]
    baths: tuple[BathPlan, ...]

    @property
    def cast_on_stitches(self) -> int:
        """Stitches cast on: as many as round 1 has."""
        return self.fabric.counts[0]

    @property
    def circumference_cm(self) -> float:
        """Round the cast-on edge, which is what the head meets."""
        return self.cast_on_stitches * self.design.gauge.stitch_width_cm

    @property
    def height_cm(self) -> float:
        """From the cast-on edge to the top, as the worn hat rises."""
        return self.profile.height_cm

    @property
    def worn_height_cm(self) -> float:
        """From the worn edge to the top: the rounds of a fold lie double and add nothing."""
        return self.profile.height_above(self.depth.folded_rounds)

    def letter(self, name: str) -> LetterAppraisal:
        """Give what is known of a letter in use; raises KeyError for one that is not."""
        for letter in self.letters:
            if letter.letter == name:
                return letter
        raise KeyError(name)

    def shade_of(self, name: str) -> LotShade | None:
        """Give the shade of a letter; None where it has none, or is not in use."""
        return next((letter.shade for letter in self.letters if letter.letter == name), None)

    def round_place(self, index: int) -> str:
        """Tell a round as a person would: its number and its band."""
        line = self.rounds[index]
        return f"round {line.number}, {line.band_name}" if line.band_name else f"round {line.number}"

    def predicted_words(self, letters: str) -> str:
        """Tell which of some letters' shades are predicted, to put after a judgement; empty where none is."""
        shades = {name: self.shade_of(name) for name in letters}
        foretold = [name for name, shade in shades.items() if shade is not None and shade.rests_on == "predicted"]
        if not foretold:
            return ""
        return f" (predicted: {' and '.join(foretold)} {'is' if len(foretold) == 1 else 'are'} not dyed yet)"

    def name_of(self, name: str) -> str:
        """Tell a letter with the name of its lot: "A (Walnut, first bath)"."""
        lot = self.letter(name).lot
        return f"{name} ({lot.name})" if lot else name
