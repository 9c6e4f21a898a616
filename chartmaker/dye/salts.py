"""One name, two salts: how much of the other form gives as much of what works.

Molar masses are sums of the standard atomic weights (IUPAC 2021, abridged): H 1.008, C 12.011, O 15.999, Na 22.990,
Al 26.982, S 32.06, K 39.098.
"""

from dataclasses import dataclass

_H, _C, _O, _NA, _AL, _S, _K = 1.008, 12.011, 15.999, 22.990, 26.982, 32.06, 39.098
_WATER = 2 * _H + _O
_SULPHATE = _S + 4 * _O
POTASSIUM_ALUM = _K + _AL + 2 * _SULPHATE + 12 * _WATER
"""g/mol of KAl(SO₄)₂·12H₂O."""
ALUMINIUM_SULPHATE = 2 * _AL + 3 * _SULPHATE + 14 * _WATER
"""g/mol of Al₂(SO₄)₃·14H₂O."""
SODA_ASH = 2 * _NA + _C + 3 * _O
"""g/mol of Na₂CO₃."""
SODA_CRYSTALS = SODA_ASH + 10 * _WATER
"""g/mol of Na₂CO₃·10H₂O, washing soda."""
ALUMINIUM_IN_ALUM_PERCENT = 100 * _AL / POTASSIUM_ALUM
ALUMINIUM_IN_SULPHATE_PERCENT = 100 * 2 * _AL / ALUMINIUM_SULPHATE
CRYSTALS_TO_ASH = SODA_CRYSTALS / SODA_ASH


@dataclass(frozen=True, slots=True)
class OtherForm:
    """The same in another form."""

    taken_as: str
    """The form that the recipe's grams are taken to be of."""
    other: str
    grams: float

    @property
    def text(self) -> str:
        """Tell it in a sentence, without the full stop."""
        return f"taken as {self.taken_as}; {self.grams:.1f} g of {self.other} do the same: see which the label names"


def other_form(name: str, grams: float) -> OtherForm | None:
    """Give the other form of alum or of washing soda, or None for what has one form only, or is not known here.

    Names that say neither are taken as potassium alum, and as soda crystals.
    """
    known = name.casefold()
    if "alum" in known and "acetate" not in known:
        if "sulph" in known or "sulf" in known:
            less = ALUMINIUM_IN_SULPHATE_PERCENT / ALUMINIUM_IN_ALUM_PERCENT
            return OtherForm("aluminium sulphate", "potassium alum", grams * less)
        less = ALUMINIUM_IN_ALUM_PERCENT / ALUMINIUM_IN_SULPHATE_PERCENT
        return OtherForm("potassium alum", "aluminium sulphate", grams * less)
    if "soda ash" in known or "anhydrous" in known:
        return OtherForm("anhydrous soda ash", "soda crystals", grams * CRYSTALS_TO_ASH)
    if "washing soda" in known or "soda crystals" in known or "sodium carbonate" in known:
        return OtherForm("soda crystals", "anhydrous soda ash", grams / CRYSTALS_TO_ASH)
    return None
