"""The usual suspects when a dyestuff's colour moves: data, a source beside each row.

A suspicion is no finding: `causes` names those that fit what the figures show, and the records raise or lower them.
"""

from dataclasses import dataclass

PRACTICE = "common practice, no source"
CRAFT = "craft pages: acid and alkali move shades, madder and cochineal go orange in acid"
MAIRET = "Mairet 1916 (Project Gutenberg 50079)"

REDS = ("madder", "cochineal", "kermes", "lac", "alkanet", "brazilwood", "sanderswood")
YELLOWS = ("weld", "birch", "onion", "tansy", "heather", "dyer's broom", "goldenrod", "marigold", "chamomile")
TANNINS = ("walnut", "alder", "oak", "gall", "sumac", "blackberry", "tea")
ANY: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Suspect:
    """One cause that moves the colour of some dyestuffs one way."""

    dyestuffs: tuple[str, ...]
    """Words of the dyestuff's name that it holds for; `ANY` for every one."""
    directions: tuple[str, ...]
    """Words of `causes.Direction` that it explains."""
    cause: str
    """What the sample's bath had: "an alkaline bath"."""
    keys: tuple[str, ...]
    """Beginnings of the recipe's keys in which a difference bears on it."""
    source: str
    sign: int = 0
    """Which way such a figure must differ, sample less reference: 1 up, -1 down, 0 either."""
    additions: tuple[str, ...] = ()
    """Words of a mordant's or an assist's name; more of it in the sample is what the cause means (less where `sign` is
    -1)."""


HUEWARDS = ("towards red", "towards orange", "towards yellow", "towards green", "towards blue")
EVERY_WAY = (*HUEWARDS, "duller", "brighter")
WARM = ("towards orange", "towards yellow")
ALKALI, ACID = ("soda", "chalk", "lime", "ash", "ammonia"), ("vinegar", "citric", "tartar")
IRON = ("iron", "ferrous", "copperas")
CHALK = "trade pages: chalk in soft water for madder"
ALKALI_ON_WELD = f"{MAIRET}: alkali strengthens weld, acid strips it; for other yellows {PRACTICE}"
HEAT_ON_MADDER = f"{MAIRET}: madder is kept under about 72 °C for red"

SUSPECTS: tuple[Suspect, ...] = (
    Suspect(ANY, ("duller",), "iron in the bath", (), PRACTICE, 1, IRON),
    Suspect(ANY, ("brighter",), "less iron in the bath", (), PRACTICE, -1, IRON),
    Suspect(REDS, ("towards blue",), "an alkaline bath", ("ph_",), CRAFT, 1, ALKALI),
    Suspect(REDS, WARM, "an acid bath", ("ph_",), CRAFT, -1),
    Suspect(REDS, WARM, "acid added to the bath", (), CRAFT, 1, ACID),
    Suspect(REDS, ("towards blue",), "hard water, or chalk in it", (), CHALK, 1, ("chalk",)),
    Suspect(REDS, WARM, "soft water, or less chalk", (), CHALK, -1, ("chalk",)),
    Suspect(("madder",), ("duller", *WARM), "too much heat", ("hottest_c",), HEAT_ON_MADDER, 1),
    Suspect(YELLOWS, ("brighter", "towards orange"), "an alkaline bath", ("ph_",), ALKALI_ON_WELD, 1, ALKALI),
    Suspect(YELLOWS, ("towards green",), "an acid bath", ("ph_",), PRACTICE, -1),
    Suspect(YELLOWS, ("towards green",), "copper or iron in the bath", (), PRACTICE, 1, ("copper", *IRON)),
    Suspect(YELLOWS, ("towards orange", "duller"), "too much heat", ("hottest_c",), PRACTICE, 1),
    Suspect(TANNINS, WARM, "less iron in the bath", (), PRACTICE, -1, IRON),
    Suspect(ANY, ("duller", "brighter"), "another amount of alum", ("mordant: alum",), PRACTICE),
    Suspect(ANY, EVERY_WAY, "another mordant", ("mordant: ",), PRACTICE),
    Suspect(ANY, EVERY_WAY, "another part of the plant", ("part",), PRACTICE),
    Suspect(ANY, EVERY_WAY, "fresh against dried dyestuff", ("state",), PRACTICE),
    Suspect(ANY, ("duller",), "a longer bath", ("minutes",), PRACTICE, 1),
    Suspect(ANY, HUEWARDS, "another acidity of the bath", ("ph_",), PRACTICE),
)
"""Those that hold for some dyestuffs alone before those that hold for all, as they are told."""
