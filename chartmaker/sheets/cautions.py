"""Cautions for the dye pot, for the bath sheet and for whoever quotes them; they defer to labels and to local rules.

Hazard statements are those of the makers' safety data sheets (H numbers of Regulation (EC) No 1272/2008); the rest is
what handbooks of natural dyeing and codes of conduct for gathering agree on (Dean 1999 among them).
"""

from dataclasses import dataclass

DEFERS = (
    "These are reminders, not instructions for safety. The label and the safety data sheet of what you use, and the "
    "rules of the place where you work, come first."
)
"""Stands above every list of cautions."""


@dataclass(frozen=True, slots=True)
class Caution:
    """One caution."""

    text: str
    concerns: tuple[str, ...] = ()
    """Words that name it in a mordant's or an assist's name; empty for what concerns every bath."""


GENERAL = (
    Caution("Pots, spoons, scales and thermometers that dye never touch food again."),
    Caution("Wear gloves and an eye shield; a dust mask too while any powder is open."),
    Caution("Work in moving air, and keep the bath below a boil, with a lid."),
    Caution("Keep children and pets away until everything is rinsed, labelled and put away."),
    Caution("Never mix bleach or ammonia into a bath, and never mix baths that hold iron or copper."),
    Caution(
        "Gather only what a person qualified to know it has identified, with the owner's leave and within local law; "
        "some dye plants and fungi are poisonous, some are protected."
    ),
    Caution("Ask your local authority how spent liquor is disposed of; none goes into a pond, a ditch or a canal."),
)
"""For every bath."""

PARTICULAR = (
    Caution("Aluminium salts: aluminium sulphate causes serious eye damage (H318).", ("alum", "aluminium", "aluminum")),
    Caution(
        "Iron: ferrous sulphate is harmful if swallowed and irritates the skin (H302, H315); small children are in "
        "the greatest danger. Keep a pot for iron alone.",
        ("iron", "ferrous", "copperas"),
    ),
    Caution(
        "Copper: its salts are very toxic to water life, with lasting effects (H410). Let none reach a drain.",
        ("copper", "cupric", "verdigris"),
    ),
    Caution(
        "Washing soda, lye and lime irritate or burn the eyes and the skin. Add them to the water, never the water to "
        "them.",
        ("soda", "lye", "lime", "potash", "hydroxide", "carbonate"),
    ),
    Caution("Acids irritate the eyes. Add the acid to the water, never the water to it.", ("acid", "vinegar")),
)
"""For baths that hold what they name."""


def cautions_for(ingredients: tuple[str, ...]) -> tuple[Caution, ...]:
    """Give the cautions for a set of mordants and assists: the general ones, then those that they call for.

    Where nothing is named that is known here, all are given: better one too many.
    """
    names = " ".join(ingredients).lower()
    called = tuple(caution for caution in PARTICULAR if any(word in names for word in caution.concerns))
    return (*GENERAL, *(called or PARTICULAR))
