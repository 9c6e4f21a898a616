"""Cautions tied to what they are about, for the page, the paper and the report; they defer to labels and local rules.

Hazard statements are those of the makers' safety data sheets (H numbers of Regulation (EC) No 1272/2008); the rest is
what handbooks of natural dyeing and codes of conduct for gathering agree on (Dean 1999 among them).
"""

from collections.abc import Iterable
from dataclasses import dataclass

DEFERS = (
    "These are reminders, not instructions for safety. The label and the safety data sheet of what you use, and the "
    "rules of the place where you work, come first."
)
"""Stands above every list of cautions."""
PLACES = ("gathering", "powder", "mordant", "alkali", "acid", "hot pot", "metal", "spent liquor", "every bath")
"""Where the hand meets a hazard."""
METALS = {"iron": ("iron", "ferrous", "copperas"), "copper": ("copper", "cupric", "verdigris")}
"""Metals that sadden a shade, by the words in a mordant's name; each wants a pot of its own."""


@dataclass(frozen=True, slots=True)
class Caution:
    """One caution."""

    text: str
    concerns: tuple[str, ...] = ()
    """Words that name it in a mordant's or an assist's name; empty for what concerns every bath."""
    place: str = "every bath"
    """One of `PLACES`."""
    short: str = ""
    """A few words for the line itself, on a card that is read through steam."""


GENERAL = (
    Caution(
        "Pots, spoons, scales and thermometers that dye never touch food again.",
        short="Never a kitchen pot.",
    ),
    Caution(
        "Wear gloves and an eye shield; a dust mask too while any powder is open.",
        place="powder",
        short="Gloves, eye shield, dust mask.",
    ),
    Caution(
        "Work in moving air, and keep the bath below a boil, with a lid.",
        place="hot pot",
        short="Moving air, a lid, below a boil.",
    ),
    Caution(
        "Keep children and pets away until everything is rinsed, labelled and put away.",
        short="Children and pets away.",
    ),
    Caution(
        "Never mix bleach or ammonia into a bath, and never mix baths that hold iron or copper.",
        short="Never bleach, never ammonia.",
    ),
    Caution(
        "Gather only what a person qualified to know it has identified, with the owner's leave and within local law; "
        "some dye plants and fungi are poisonous, some are protected.",
        place="gathering",
        short="Only what a qualified person identified, with leave, within the law.",
    ),
    Caution(
        "Ask your local authority how spent liquor is disposed of; none goes into a pond, a ditch or a canal.",
        place="spent liquor",
        short="Spent liquor as your local rules say; never into water.",
    ),
)
"""For every bath."""

PARTICULAR = (
    Caution(
        "Aluminium salts: aluminium sulphate causes serious eye damage (H318).",
        ("alum", "aluminium", "aluminum"),
        place="mordant",
        short="Eye damage (H318): eye shield.",
    ),
    Caution(
        "Iron: ferrous sulphate is harmful if swallowed and irritates the skin (H302, H315); small children are in "
        "the greatest danger. Keep a pot for iron alone.",
        METALS["iron"],
        place="metal",
        short="Harmful if swallowed (H302), irritates (H315). Iron's own pot.",
    ),
    Caution(
        "Copper: its salts are very toxic to water life, with lasting effects (H410). Let none reach a drain.",
        METALS["copper"],
        place="metal",
        short="Toxic to water life (H410): none to a drain. Copper's own pot.",
    ),
    Caution(
        "Washing soda, lye and lime irritate or burn the eyes and the skin. Add them to the water, never the water to "
        "them.",
        ("soda", "lye", "lime", "potash", "hydroxide", "carbonate"),
        place="alkali",
        short="Burns eyes and skin: into the water, never water onto it.",
    ),
    Caution(
        "Acids irritate the eyes. Add the acid to the water, never the water to it.",
        ("acid", "vinegar"),
        place="acid",
        short="Irritates eyes: acid into the water.",
    ),
    Caution(
        "Bleach and ammonia give off gases that harm: neither belongs in a bath, nor near one. Take another alkali.",
        ("ammonia", "bleach", "hypochlorite"),
        place="alkali",
        short="Never in a bath, nor near bleach: take another alkali.",
    ),
)
"""For baths that hold what they name."""

UNKNOWN = Caution(
    "What is not known here is no safer for it: read its label and its safety data sheet before it is opened.",
    place="powder",
    short="Not known here: first its label and safety data sheet.",
)
"""For the line of a substance that nothing here names."""
MILD = ("tartar", "chalk", "tannin", "bran", "sugar", "fructose", "honey", "common salt", "table salt", "sea salt")
"""Words in the names of what needs no caution beyond those of every bath."""


def cautions_for(ingredients: Iterable[str]) -> tuple[Caution, ...]:
    """Give the cautions for a set of mordants and assists: the general ones, then those that they call for.

    Where nothing is named that is known here, all are given: better one too many.
    """
    names = tuple(ingredients)
    called = _called(" ".join(names))
    unknown = any(UNKNOWN in cautions_of(name) for name in names)
    return (*GENERAL, *(called or PARTICULAR), *((UNKNOWN,) if unknown else ()))


def cautions_of(name: str) -> tuple[Caution, ...]:
    """Give the cautions of one substance, for the very line that names it; none where it is known to be mild."""
    if called := _called(name):
        return called
    return () if any(word in name.lower() for word in MILD) else (UNKNOWN,)


def cautions_at(place: str) -> tuple[Caution, ...]:
    """Give the general cautions of one place of `PLACES`. Raises ValueError for another."""
    if place not in PLACES:
        raise ValueError(f"{place!r} is no place of a caution; there are {', '.join(PLACES)}")
    return tuple(caution for caution in GENERAL if caution.place == place)


def _called(names: str) -> tuple[Caution, ...]:
    known = names.lower()
    return tuple(caution for caution in PARTICULAR if any(word in known for word in caution.concerns))


def metal_in(name: str) -> str:
    """Give the metal that a mordant's name tells of, iron or copper; empty where it is neither."""
    known = name.lower()
    return next((metal for metal, words in METALS.items() if any(word in known for word in words)), "")
