"""What is at hand for dyeing in a file, written by hand as a dyer would, and what is wrong with it at its place."""

import datetime as dt

import pytest

from chartmaker.files.design_reading import design_from_text
from chartmaker.files.palette_reading import palette_from_text
from chartmaker.files.palette_writing import palette_to_text
from chartmaker.files.problems import FileRefused
from chartmaker.model.bath_record import BathRecord, LoadRecord
from chartmaker.model.dyeing import DyeingHabits, Dyestuff, Pot, Undyed

STOCK = """\
[dyeing]
skein_g = 50
scouring_loss_percent = 4.5

[[pots]]
name = "stock pot"
litres = 9

[[pots]]
name = "small pot"
litres = 3
kept_for = "iron"

[[dyestuffs]]
name = "weld"
part = "whole flowering plant"
state = "fresh"
on_hand_g = 1200
dries_to_percent = 22
identified_by = "the county recorder"

[[yarns]]
id = "wool"
name = "wool"

[[undyed]]
yarn = "wool"
on_hand_g = 400
"""
PALETTE = f"""\
format = "chartmaker-palette"
version = 1
name = "shed"

{STOCK}
[[baths]]
id = "weld-july"
dyestuff = "weld"
ratio = 0.8

[baths.record]
dyed_on = 2026-07-18
loads = [{{ load = 1, fibre_g = 50, dry_g = 47.5, lot = "weld-1" }}, {{ load = 2, fibre_g = 50 }}]
dyestuff_g = 41
ph_start = 7.2
notes = "windy"
"""


def test_a_store_and_a_record_written_by_hand_open_with_everything_that_they_say():
    palette = palette_from_text(PALETTE, "shed")
    assert palette.dyeing == DyeingHabits(skein_g=50.0, scouring_loss_percent=4.5)
    assert palette.pots == (Pot(name="stock pot", litres=9.0), Pot(name="small pot", litres=3.0, kept_for="iron"))
    assert palette.dyestuffs == (
        Dyestuff(
            name="weld",
            part="whole flowering plant",
            state="fresh",
            on_hand_g=1200.0,
            dries_to_percent=22.0,
            identified_by="the county recorder",
        ),
    )
    assert palette.undyed == (Undyed(yarn="wool", on_hand_g=400.0),)
    assert palette.baths[0].record == BathRecord(
        dyed_on=dt.date(2026, 7, 18),
        loads=(LoadRecord(load=1, fibre_g=50.0, dry_g=47.5, lot="weld-1"), LoadRecord(load=2, fibre_g=50.0)),
        dyestuff_g=41.0,
        ph_start=7.2,
        notes="windy",
    )
    assert palette_from_text(palette_to_text(palette), "again") == palette


def test_a_design_may_carry_its_store():
    text = f'format = "chartmaker-design"\nversion = 1\n{STOCK}\n[[bands]]\nname = "b"\ntimes = 4\nrounds = "A B | x."'
    assert design_from_text(text, "alone").palette.pots[0].litres == 9.0


@pytest.mark.parametrize(
    ("written", "instead", "told"),
    [
        ("skein_g = 50", "skein_g = -50", "dyeing.skein_g: skein_g is -50, outside 0 to 1000"),
        ("skein_g = 50", "skien_g = 50", "dyeing.skien_g: unknown key; did you mean 'skein_g'?"),
        ('state = "fresh"', 'state = "wet"', "dyestuffs[1].state"),
        ("litres = 9\n", 'litres = "nine"\n', "pots[1].litres: must be a number, not a text"),
        ('name = "small pot"', 'name = "stock pot"', "pots[2]: another of the same name stands above"),
        ('yarn = "wool"', 'yarn = "woll"', "undyed[1].yarn: there is no yarn 'woll' here; did you mean 'wool'?"),
        ("load = 2", "load = 13", "baths[1].record.loads[2].load: load is 13, outside 1 to 12"),
        ("load = 2", "load = 1", "baths[1].record.loads: load 1 is recorded twice"),
        ("dyed_on = 2026-07-18", 'dyed_on = "July"', "baths[1].record.dyed_on: must be a date like"),
    ],
)
def test_what_is_wrong_with_a_store_or_a_record_is_told_at_its_place(written, instead, told):
    assert written in PALETTE
    with pytest.raises(FileRefused) as refused:
        palette_from_text(PALETTE.replace(written, instead), "shed")
    assert told in str(refused.value)
