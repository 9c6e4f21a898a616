"""A plain hat made from a knitter's answers: brim, widening, body and crown as bands whose counts meet.

The body is divided into bands that motifs can be stamped into; what the depth leaves beside brim and crown is the
body's. Everything is an ordinary band that can be edited by hand afterwards.
"""

import math
from dataclasses import dataclass, replace

from chartmaker.knit.answers import STRAIGHT_SHARE, Answers, usual_depth_cm
from chartmaker.knit.body_plan import FEWEST_BODY_ROUNDS, REST, body_plan
from chartmaker.knit.brims import KnittedBrim, knitted_brim
from chartmaker.knit.changing_band import changing_band
from chartmaker.knit.crown import crown_bands
from chartmaker.knit.depth import depth_of
from chartmaker.knit.depth_rules import Plate, tam_depth
from chartmaker.knit.starting_counts import Asked, StartingCounts, repeat_for, starting_counts
from chartmaker.knit.taper import taper_bands
from chartmaker.knit.widening import widening_bands
from chartmaker.model.band import Band
from chartmaker.model.bounds import MOST_ROUNDS
from chartmaker.model.design import Colourway, Design
from chartmaker.model.hat import CastOn, Finish, Hat
from chartmaker.model.palette import Palette
from chartmaker.model.round import Round
from chartmaker.model.settings import Allowances, Limits, Viewing
from chartmaker.model.units import Measured
from chartmaker.shade.first_lots import first_colourway

ROOM_ROUNDS = 9
"""Rounds of the body of a hat that no depth was asked for, where brim and crown leave less: a peerie has room."""


@dataclass(frozen=True, slots=True)
class _Parts:
    """The hat without its body."""

    brim: KnittedBrim
    widening: tuple[Band, ...]
    top: tuple[Band, ...]
    """The crown, or a stocking cap's taper."""

    @property
    def worn_rounds(self) -> int:
        """Rounds that lie between the worn edge and the middle of the top."""
        return self.brim.worn_rounds + sum(len(band.rounds) for band in (*self.widening, *self.top))


def started(answers: Answers, palette: Palette | None = None, *, palette_file: str = "") -> Design:
    """Make the plain hat that was answered for; lots are chosen for its letters where there is a palette.

    Raises ValueError, with a sentence, where there is no such hat.
    """
    counts = counts_for(answers)
    parts = _parts(answers, counts)
    body = _body(answers, counts, rounds=_body_rounds(answers, counts, parts))
    colourway = _colourway(answers, palette)
    design = Design(
        title=answers.title,
        palette_file=palette_file,
        hat=_hat(answers, parts),
        gauge=answers.gauge,
        metres_per_100g=answers.metres_per_100g,
        swatches=answers.swatches,
        allowances=Allowances(reserve_percent=answers.reserve_percent),
        colourways=(colourway,) if colourway else (),
        bands=(*parts.brim.bands, *parts.widening, *body, *parts.top),
        palette=_copies(palette, colourway),
    )
    return _saying_depth(design, answers)


def counts_for(answers: Answers) -> StartingCounts:
    """Choose the counts of brim and body.

    Raises ValueError, with a sentence, where no count will do.
    """
    return starting_counts(
        Asked(
            head_cm=answers.head_cm,
            wanted_cm=answers.wanted_cm,
            gauge=answers.gauge,
            brim_repeat=answers.brim.repeat,
            sections=answers.taper_decreases if answers.shape == "stocking" else answers.crown.sections,
            motif_repeat=answers.motif_repeat,
            widen_percent=answers.widen_percent if answers.shape == "tam" else None,
        )
    )


def _parts(answers: Answers, counts: StartingCounts) -> _Parts:
    return _Parts(
        brim=knitted_brim(answers.brim, stitches=counts.brim, gauge=answers.gauge, letters=answers.letters),
        widening=_widening(answers, counts),
        top=_taper(answers, counts.body) if answers.shape == "stocking" else _crown(answers, counts.body),
    )


def _widening(answers: Answers, counts: StartingCounts) -> tuple[Band, ...]:
    """Bring the brim's count to the body's: a tam's by its widening, others by the few stitches between."""
    if counts.brim == counts.body:
        return ()
    if answers.shape == "tam":
        return widening_bands(
            counts.brim, counts.body, gauge=answers.gauge, letter=answers.ground, rounds=answers.widen_rounds
        )
    return (changing_band(below=counts.brim, above=counts.body, letter=answers.ground),)


def _crown(answers: Answers, stitches: int) -> tuple[Band, ...]:
    return crown_bands(answers.crown, stitches=stitches, gauge=answers.gauge, letters=answers.ground, prepare=True)


def _taper(answers: Answers, stitches: int) -> tuple[Band, ...]:
    """Taper to a point, after a round that brings the count to a multiple of the decreases where it is none."""
    lines = answers.taper_decreases
    spare = stitches % lines
    before = (changing_band(below=stitches, above=stitches - spare, letter=answers.ground),) if spare else ()
    return before + taper_bands(stitches - spare, gauge=answers.gauge, letter=answers.ground, lines=lines)


def _body_rounds(answers: Answers, counts: StartingCounts, parts: _Parts) -> int:
    """Give what the depth leaves for the body; the usual depth gives way where brim and crown take too much of it.

    Raises ValueError, with a sentence, where another leaves nothing, or the hat has too many rounds.
    """
    height = answers.gauge.round_height_cm
    if _is_usual(answers):
        rounds = max(ROOM_ROUNDS, round(_usual_cm(answers, counts, parts) / height) - parts.worn_rounds)
    else:
        rounds = round(answers.depth_cm / height) - parts.worn_rounds
    if rounds < FEWEST_BODY_ROUNDS:
        needed = (parts.worn_rounds + FEWEST_BODY_ROUNDS) * height
        raise ValueError(
            Measured(
                lambda units: (
                    f"brim and {'taper' if answers.shape == 'stocking' else 'crown'} alone take "
                    f"{units.length.told(parts.worn_rounds * height)}, so a depth of "
                    f"{units.length.brief(answers.depth_cm)} leaves no body: ask for {units.length.told(needed)} or "
                    "more, or a shallower brim"
                )
            )
        )
    all_rounds = rounds + parts.worn_rounds + (parts.brim.fold.rounds if parts.brim.fold else 0)
    if all_rounds > MOST_ROUNDS:
        raise ValueError(
            Measured(
                lambda units: (
                    f"a depth of {units.length.rough(all_rounds * height)} takes {all_rounds} rounds, "
                    f"more than {MOST_ROUNDS}"
                )
            )
        )
    return rounds


def _usual_cm(answers: Answers, counts: StartingCounts, parts: _Parts) -> float:
    """Give the depth of a hat that no other was asked for: a tam's by its plate, a stocking cap's by its taper."""
    gauge = answers.gauge
    if answers.shape == "stocking":
        return STRAIGHT_SHARE * answers.head_cm + sum(len(band.rounds) for band in parts.top) * gauge.round_height_cm
    if answers.shape == "tam":
        brim, rim = (count * gauge.stitch_width_cm / (2 * math.pi) for count in (counts.brim, counts.body))
        brim_cm = parts.brim.worn_rounds * gauge.round_height_cm
        return tam_depth(answers.head_cm, Plate(brim_cm=brim_cm, inner_radius_cm=brim, radius_cm=rim)).lowest_cm
    return answers.depth_cm


def _is_usual(answers: Answers) -> bool:
    """Whether no other depth was asked for."""
    return answers.depth_cm == usual_depth_cm(answers.shape, answers.head_cm, answers.gauge)


def _body(answers: Answers, counts: StartingCounts, *, rounds: int) -> tuple[Band, ...]:
    """Lay plain bands; those that a motif is meant for have the letter of its figure already."""
    repeat = repeat_for(counts.body, answers.motif_repeat)
    ground, both = (Round(letters, bytes(repeat)) for letters in (answers.ground, answers.letters[:2]))
    return tuple(
        Band(
            name=stretch.name,
            times=counts.body // repeat,
            rounds=(ground if stretch.name == REST else both,) * stretch.rounds,
        )
        for stretch in body_plan(rounds)
    )


def _hat(answers: Answers, parts: _Parts) -> Hat:
    return Hat(
        shape=answers.shape,
        head_cm=answers.head_cm,
        ease_percent=answers.ease_percent,
        cast_on=CastOn(answers.ground),
        finish=Finish(answers.ground),
        trims=answers.trims,
        fold=parts.brim.fold,
        depth_cm=None if _is_usual(answers) else answers.depth_cm,
    )


def _saying_depth(design: Design, answers: Answers) -> Design:
    """Let a hat say its depth, where that is the usual one and is not what its head and shape ask for."""
    depth = depth_of(design)
    if not _is_usual(answers) or not depth.off_cm:
        return design
    return replace(design, hat=replace(design.hat, depth_cm=round(depth.cm, 1)))


def _colourway(answers: Answers, palette: Palette | None) -> Colourway | None:
    if palette is None:
        return None
    return first_colourway(palette, answers.letters, viewing=Viewing(), limits=Limits())


def _copies(palette: Palette | None, colourway: Colourway | None) -> Palette:
    """Give copies of the lots that a colourway uses, and of what they name."""
    copies = Palette()
    if palette and colourway:
        for _, lot in colourway.lots:
            copies = copies.with_lot_from(palette, lot)
    return copies
