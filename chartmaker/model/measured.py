"""What a measurement file, a photo or a typed line gives, before it belongs to any lot."""

from dataclasses import dataclass

from chartmaker.model.bounds import require_text
from chartmaker.model.reading import Reading


@dataclass(frozen=True, slots=True)
class Measured:
    """One sample as it was called where it was measured, with its readings in their order; at least one."""

    name: str
    readings: tuple[Reading, ...]
    place: str = ""
    """Where it stands: "line 12". Empty where that has no meaning."""

    def __post_init__(self) -> None:
        require_text("a sample's name", self.name)
        if not self.readings:
            raise ValueError(f"{self.name!r} has no reading")


def name_key(name: str) -> str:
    """Give what two names have in common that are the same but for capitals and spaces."""
    return "".join(name.split()).casefold()
