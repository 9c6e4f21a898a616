"""Makes lockside-cap.hat.toml and towpath-tam.hat.toml from geometry and the invented palette beside them.

The files are what counts; this tells how their motifs and their shaping came about. Run it from anywhere, after
`palettes/make_allotment.py`: `python examples/make_examples.py`.
"""

from pathlib import Path

from motifs import (
    SMALL_LOZENGES,
    WAVES,
    Wedge,
    cap_crown,
    drawn,
    lattice,
    lozenges_and_crosses,
    repeated,
    tam_wheel,
)

from chartmaker.files.design_writing import save_design
from chartmaker.files.palette_reading import read_palette
from chartmaker.model.band import Band
from chartmaker.model.design import Colourway, Design
from chartmaker.model.gauge import Gauge, Swatch
from chartmaker.model.hat import CastOn, Finish, Hat, Trim
from chartmaker.model.notation import rounds_from_text
from chartmaker.model.palette import Palette

HERE = Path(__file__).parent
PALETTE = "../palettes/allotment.palette.toml"


def cap() -> Design:
    """Make the cap: 144 stitches, six sections, a crown that begins to close slowly and ends flat."""
    border = ["CA", "CA", "CA", "CE", "BE", "BE", "BD", "BD", "BD", "BD", "BD", "BE", "BE", "CE", "CA", "CA", "CA"]
    bands = (
        _plain("edge", "B", times=36),
        _ridge("ridge", "B", times=36),
        _rib("rib", "BA BA BA BE BE BE BE BA BA BA", times=36),
        _plain("turn", "BC", times=36),
        Band(name="small lozenges", times=24, rounds=drawn(SMALL_LOZENGES, ["CE", "CA", "CA", "CA", "CE"])),
        _plain("rest", "CC", times=36),
        Band(name="lozenges and crosses", times=6, rounds=repeated(lozenges_and_crosses(8), width=24, letters=border)),
        _plain("rest", "CB", times=36),
        Band(name="waves", times=24, rounds=drawn(WAVES, ["BE"] * 5)),
        _plain("rest", "BC", times=36),
        Band(name="crown", times=6, rounds=_cap_crown().worked()),
    )
    colourways = (
        _colourway("woad and onion", "white woad-1 woad-2 onion-1 weld-1"),
        _colourway("madder on walnut", "white walnut-1 madder-1 woad-3 weld-1"),
        _colourway("red on blue", "white woad-1 woad-2 onion-1 madder-1"),
    )
    return Design(
        title="Lockside cap",
        notes="Invented for demonstration: a cap for cold mornings at the lock, in two loads of one woad vat and the "
        "yellows of the allotment. 'Red on blue' is there to be looked at in grey: its reds sink into the blues.",
        palette_file=PALETTE,
        hat=Hat(
            head_cm=56,
            ease_percent=-8,
            depth_cm=25,
            cast_on=CastOn("B"),
            finish=Finish("C"),
            trims=(Trim(kind="pompom", letter="A", size_cm=5),),
        ),
        gauge=Gauge(stitches_per_10cm=28, rounds_per_10cm=30),
        colourways=colourways,
        bands=bands,
        palette=_copies(colourways),
    )


def tam() -> Design:
    """Make the tam: 144 stitches at the brim, 216 at the rim, and a wheel of six spokes that closes as a flat disc."""
    border = ["CA", "CA", "CA", "BA", "BA", "BD", "BD", "BD", "BA", "BA", "CA", "CA", "CA"]
    bands = (
        _plain("edge", "B", times=36),
        _ridge("ridge", "B", times=36),
        _rib("rib", "CA CA CA CA CA CA CA", times=36),
        _plain("turn", "C", times=36),
        Band(name="underside", times=6, rounds=_tam_underside().worked()),
        _plain("rim", "CB", times=54),
        Band(name="border", times=12, rounds=repeated(lozenges_and_crosses(6), width=18, letters=border)),
        _plain("rim", "BC", times=54),
        Band(name="wheel", times=6, rounds=_tam_wheel().worked()),
    )
    colourways = (
        _colourway("madder and woad", "oatmeal walnut-1 madder-1 woad-3"),
        _colourway("weld and alder", "white alder-1 weld-iron-1 onion-2"),
    )
    return Design(
        title="Towpath tam",
        notes="Invented for demonstration: a tam for the walk along the water. Stretch it over a plate while it dries.",
        palette_file=PALETTE,
        hat=Hat(shape="tam", head_cm=53, ease_percent=-9, depth_cm=24.5, cast_on=CastOn("B"), finish=Finish("B")),
        gauge=Gauge(stitches_per_10cm=30, rounds_per_10cm=32),
        swatches=(Swatch(stitches=1200, metres=17.9),),
        colourways=colourways,
        bands=bands,
        palette=_copies(colourways),
    )


def _cap_crown() -> Wedge:
    def letters(up: int) -> str:
        level = abs(up - 7)
        if up < 14:
            return "BD" if level < 3 else "BE" if level < 4 else "CE" if level < 5 else "CA"
        return "CA"

    return Wedge(
        panel=23,
        rounds=29,
        shaped=frozenset({3, 7, 10, 13, 16, 18, 20, 22, 24, 26, 28}),
        widens=False,
        motif=cap_crown,
        letters=letters,
        rim_until=28,
        spoke_until=28,
    )


def _tam_underside() -> Wedge:
    return Wedge(
        panel=23,
        rounds=18,
        shaped=frozenset(range(2, 18, 3)),
        widens=True,
        motif=lattice,
        letters=lambda _: "CA",
        rim_until=0,
        spoke_until=18,
    )


def _tam_wheel() -> Wedge:
    def letters(up: int) -> str:
        level = abs(up - 9)
        if up < 18:
            return "BD" if level < 4 else "BA" if level < 6 else "CA"
        return "CA" if up < 27 else "BA"

    return Wedge(
        panel=35,
        rounds=34,
        shaped=frozenset(range(1, 34, 2)),
        widens=False,
        motif=tam_wheel,
        letters=letters,
        rim_until=32,
        spoke_until=32,
    )


def _plain(name: str, letters: str, *, times: int) -> Band:
    """Make plain rounds, first letter first knitted, on a repeat of four."""
    return Band(name=name, times=times, rounds=tuple(rounds_from_text(f"{letter} | ....")[0] for letter in letters))


def _ridge(name: str, letter: str, *, times: int) -> Band:
    """Make one purled round, which keeps the edge from rolling."""
    return Band(name=name, times=times, rounds=rounds_from_text(f"{letter} | ...."), texture="p")


def _rib(name: str, letters: str, *, times: int) -> Band:
    """Make two-colour ribbing: two knit in the ground, two purled in the figure."""
    rows = letters.split()
    return Band(name=name, times=times, rounds=drawn(["xx.."] * len(rows), rows[::-1]), texture="kkpp")


def _colourway(name: str, lots: str) -> Colourway:
    """Give the letters A, B, C … to lots in turn."""
    return Colourway(name, tuple(zip("ABCDEF", lots.split(), strict=False)))


def _copies(colourways: tuple[Colourway, ...]) -> Palette:
    """Copy the lots that the colourways use, with their yarns and baths."""
    allotment = read_palette((HERE / PALETTE).resolve())
    used = {lot for colourway in colourways for _, lot in colourway.lots}
    copies = Palette()
    for lot in allotment.lots:
        if lot.id in used:
            copies = copies.with_lot_from(allotment, lot.id)
    return copies


if __name__ == "__main__":
    for design, name in ((cap(), "lockside-cap.hat.toml"), (tam(), "towpath-tam.hat.toml")):
        save_design(design, HERE / name)
        print(f"wrote {name}")
