"""Salts in two forms, spoonfuls, assists, and the cautions tied to substances."""

import re

import pytest

from chartmaker.dye import salts
from chartmaker.dye.assists import AssistAdvice
from chartmaker.dye.cautions import GENERAL, PARTICULAR, PLACES, cautions_at, cautions_for, cautions_of, metal_in
from chartmaker.dye.plan import Portion
from chartmaker.dye.recipe_ranges import notes_on
from chartmaker.dye.spoons import LEVEL_SPOON_G, in_spoons
from chartmaker.model.palette import Bath, Mordant

ATOMIC_WEIGHT = {"H": 1.008, "C": 12.011, "O": 15.999, "Na": 22.990, "Al": 26.982, "S": 32.06, "K": 39.098}
"""IUPAC standard atomic weights 2021, abridged."""


def molar_mass(formula: str) -> float:
    """Add up a formula that is written out, `K1 Al1 S2 O20 H24`."""
    return sum(ATOMIC_WEIGHT[symbol] * int(count) for symbol, count in re.findall(r"([A-Z][a-z]?)(\d+)", formula))


def test_alum_is_two_salts_of_different_strength():
    # 5.69 and 9.08 % Al: derived from the molar masses of the dodecahydrate and the tetradecahydrate.
    alum, sulphate = molar_mass("K1 Al1 S2 O20 H24"), molar_mass("Al2 S3 O26 H28")
    assert round(100 * ATOMIC_WEIGHT["Al"] / alum, 2) == 5.69
    assert round(200 * ATOMIC_WEIGHT["Al"] / sulphate, 2) == 9.08
    other = salts.other_form("alum", 100.0)
    assert (other.taken_as, other.other) == ("potassium alum", "aluminium sulphate")
    assert other.grams * 200 * ATOMIC_WEIGHT["Al"] / sulphate == pytest.approx(100 * 100 * ATOMIC_WEIGHT["Al"] / alum)
    assert salts.other_form("Aluminium sulphate", other.grams).grams == pytest.approx(100.0)


def test_washing_soda_weighs_2_70_times_its_ash():
    crystals, ash = molar_mass("Na2 C1 O13 H20"), molar_mass("Na2 C1 O3")
    assert round(crystals / ash, 2) == 2.70
    assert salts.other_form("washing soda", 27.0).grams == pytest.approx(27.0 * ash / crystals)
    assert salts.other_form("soda ash", 10.0).grams == pytest.approx(10.0 * crystals / ash)


@pytest.mark.parametrize("name", ["chalk", "aluminium acetate", "cream of tartar", "baking soda"])
def test_what_has_one_form_has_no_other(name):
    assert salts.other_form(name, 5.0) is None


def test_spoonfuls_are_rounded_to_what_a_spoon_can_do():
    # Eisenman, The Home Winemaker's Manual, appendix B: 1 tsp potassium bitartrate 3.8 g, calcium carbonate 2.6 g.
    assert in_spoons("cream of tartar", 7.6).spoons == 2.0
    assert in_spoons("chalk", 1.3).text.startswith("about ½ level tsp (Eisenman")
    assert in_spoons("chalk", 1.0).spoons == 0.375
    assert in_spoons("chalk", 0.1) is None
    assert in_spoons("alum", 200.0) is None
    assert in_spoons("fructose", 5.0) is None


def test_every_spoonful_has_a_source_or_says_that_it_has_none():
    assert all(source.startswith("Eisenman") or "from memory" in source for _, source in LEVEL_SPOON_G.values())


def test_an_assist_goes_in_little_by_little_until_the_ph_is_reached():
    advice = AssistAdvice(Portion("chalk", 6.0), 7.4)
    assert (advice.direction, advice.first_g) == ("up", 2.0)
    assert "begin with 2.0 g of chalk, stir, wait, test, add as little again; stop at pH 7.4" in advice.text
    assert AssistAdvice(Portion("vinegar", 6.0), 5.0).direction == "down"
    assert "write the pH down" in AssistAdvice(Portion("chalk", 6.0), None).text
    assert AssistAdvice(Portion("fructose", 6.0), 9.0).text == "all of the fructose at once"


def test_each_caution_has_its_place_and_a_few_words_for_the_line():
    for caution in (*GENERAL, *PARTICULAR):
        assert caution.place in PLACES
        assert 0 < len(caution.short) <= 70
        assert len(caution.short) < len(caution.text)


@pytest.mark.parametrize(
    ("name", "hazard"),
    [("alum", "H318"), ("iron (ferrous sulphate)", "H302"), ("copper sulphate", "H410"), ("washing soda", "eyes")],
)
def test_the_line_of_a_substance_carries_its_own_hazard(name, hazard):
    # H statements of the makers' safety data sheets, as listed in the project's facts.
    (caution,) = cautions_of(name)
    assert hazard in caution.short
    assert hazard in caution.text
    assert cautions_of("fructose") == ()


def test_what_is_not_known_or_never_belongs_in_a_bath_says_so_at_its_own_line():
    (tin,) = cautions_of("tin chloride")
    assert "label and safety data sheet" in tin.short
    assert tin in cautions_for(["alum", "tin chloride"])
    assert tin not in cautions_for(["alum", "chalk"])
    (ammonia,) = cautions_of("household ammonia")
    assert ammonia.short.startswith("Never in a bath")
    assert "begin with 0.3 g" in AssistAdvice(Portion("ammonia", 1.0), None).text


def test_gathering_and_the_hot_pot_have_cautions_of_their_own():
    assert "qualified" in cautions_at("gathering")[0].text
    assert "below a boil" in cautions_at("hot pot")[0].text
    with pytest.raises(ValueError, match="'kitchen' is no place"):
        cautions_at("kitchen")


def test_iron_and_copper_are_known_by_their_names():
    assert [metal_in(name) for name in ("Ferrous sulphate", "copperas", "copper", "alum")] == [
        "iron", "iron", "copper", "",
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("bath", "told"),
    [
        (Bath(id="b", dyestuff="madder", ratio=1.5, liquor_l_per_100g=8), ["150 %"]),
        (Bath(id="b", dyestuff="madder", ratio=0.5, liquor_l_per_100g=8, hottest_c=85), ["red to brown"]),
        (Bath(id="b", dyestuff="weld", ratio=0.8, mordants=(Mordant("alum", 40),)), ["alum at 40 %"]),
        (Bath(id="b", dyestuff="weld", ratio=0.8, liquor_l_per_100g=8), ["8 L of liquor"]),
        # Mairet 1916: 100 oz wool with 8 alum, 2 tartar, 50 madder, and 1 lb with 4, 1 and 8 oz, lie within.
        (
            Bath(id="b", dyestuff="madder", ratio=0.5, mordants=(Mordant("alum", 8), Mordant("cream of tartar", 2))),
            [],
        ),
        (
            Bath(id="b", dyestuff="madder", ratio=0.5, mordants=(Mordant("alum", 25), Mordant("tartar", 6.25))),
            [],
        ),
    ],
)
def test_a_recipe_outside_what_books_and_trade_give_is_noted(bath, told):
    notes = notes_on(bath)
    assert len(notes) == len(told)
    for words, note in zip(told, notes, strict=True):
        assert words in note
