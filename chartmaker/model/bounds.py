"""The sizes past which a file is refused, and the one way in which a number out of range is told."""

import math

from chartmaker.model.units import Measured

MOST_STITCHES = 600
"""Stitches in a round."""
MOST_ROUNDS = 600
"""Rounds in a hat."""
MOST_LETTERS = 26
"""Letters in a design: A to Z."""
MOST_LOTS = 400
"""Lots in a palette."""
MOST_READINGS = 64
"""Readings of one lot."""
MOST_SWATCHES = 64
"""Swatches of one design."""
LONGEST_TEXT = 20_000
"""Characters in a title, a name or a note."""


class OutOfRange(ValueError):  # noqa: N818 - the base class says that it is an error
    """A number outside its range, with the three numbers, for who tells them in other units."""

    def __init__(self, sentence: str, *numbers: float) -> None:
        """Take the sentence, and the number with its range."""
        super().__init__(sentence)
        self.numbers = numbers


def require_within(name: str, value: float, lowest: float, highest: float) -> None:
    """Refuse a number that is not finite or lies outside `lowest` to `highest`, ends included.

    Raises ValueError with a sentence that names the quantity, the value and the range: `OutOfRange` if it is finite.
    """
    if not math.isfinite(value):
        raise ValueError(f"{name} must be a finite number, not {value}")
    if not lowest <= value <= highest:
        raise OutOfRange(f"{name} is {value:g}, outside {lowest:g} to {highest:g}", value, lowest, highest)


def require_cm_within(name: str, length_cm: float, lowest_cm: float, highest_cm: float) -> None:
    """Refuse a length as `require_within` does, in a sentence that can be told in inches too."""
    if not math.isfinite(length_cm):
        raise ValueError(f"{name} must be a finite number, not {length_cm}")
    if not lowest_cm <= length_cm <= highest_cm:
        raise OutOfRange(
            Measured(
                lambda units: (
                    f"{name} is {units.length.brief(length_cm)}, outside {units.length.brief_figure(lowest_cm)} to "
                    f"{units.length.brief(highest_cm)}"
                )
            ),
            *(length_cm, lowest_cm, highest_cm),
        )


def require_text(name: str, value: str) -> None:
    """Refuse an empty text, or one longer than `LONGEST_TEXT`, where a name is needed."""
    if not value.strip():
        raise ValueError(f"{name} is empty")
    require_short(name, value)


def require_short(name: str, value: str) -> None:
    """Refuse a text longer than `LONGEST_TEXT`."""
    if len(value) > LONGEST_TEXT:
        raise ValueError(f"{name} has {len(value)} characters, more than {LONGEST_TEXT}")


def require_one_of(name: str, value: str, allowed: tuple[str, ...]) -> None:
    """Refuse a word that is not among `allowed`."""
    if value not in allowed:
        raise ValueError(f"{name} is {value!r}; it can be {', '.join(allowed)}")


def require_letter(name: str, value: str) -> None:
    """Refuse anything but one capital letter A to Z."""
    if len(value) != 1 or not "A" <= value <= "Z":
        raise ValueError(f"{name} is {value!r}; a letter is one capital, A to Z")
