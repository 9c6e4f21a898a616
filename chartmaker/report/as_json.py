"""The report and the list of lots as JSON.

The names are the format's (`chartmaker-report` and `chartmaker-lots`, version 1): keys may be added, none may change
its meaning. A figure that cannot be had, for want of a shade, is null.
"""

from typing import Any

from chartmaker.appraisal import Appraisal, LetterAppraisal, PairAppraisal, RoundAppraisal
from chartmaker.checks.finding import Finding
from chartmaker.dye.plan import BathPlan, Load, Portion
from chartmaker.knit.from_afar import ACROSS_ROOM_CM, FarContrast, contrasts_from_afar
from chartmaker.knit.interval import Interval
from chartmaker.knit.yarn_by_band import PieceYarn, yarn_by_band
from chartmaker.model.palette import Palette
from chartmaker.model.settings import Viewing
from chartmaker.report.depth import depth_as_json
from chartmaker.report.lots import ListedLot, listed
from chartmaker.shade.lights import MetamericPair, metameric_pairs
from chartmaker.shade.trust import Outlier

Json = dict[str, Any]


def report_as_json(appraisal: Appraisal) -> Json:
    """Give the report as plain dicts and lists; lengths in cm or m as named, weights in g."""
    shades = {letter.letter: letter.shade for letter in appraisal.letters if letter.shade}
    afar = contrasts_from_afar(appraisal.design, shades)
    return {
        "format": "chartmaker-report",
        "version": 1,
        "hat": {
            "title": appraisal.design.title,
            "cast_on_stitches": appraisal.cast_on_stitches,
            "rounds": len(appraisal.rounds),
            "circumference_cm": _figure(appraisal.circumference_cm),
            "height_cm": _figure(appraisal.height_cm),
            "worn_height_cm": _figure(appraisal.worn_height_cm),
            "depth_cm": _figure(appraisal.depth.cm),
            "depth": depth_as_json(appraisal.depth),
            "loop_length_cm": _figure(appraisal.loop.cm.likely),
            "loop_source": appraisal.loop.source,
        },
        "rounds": [_round(line) for line in appraisal.rounds],
        "pairs": [_pair(pair, afar.get(pair.letters)) for pair in appraisal.pairs],
        "letters": [_letter(letter) for letter in appraisal.letters],
        "yarn_by_band": [_piece(appraisal, piece) for piece in band_yarn(appraisal)],
        "baths": [bath_as_json(plan) for plan in appraisal.baths],
        "findings": [_finding(finding) for finding in appraisal.findings],
    }


def lots_as_json(palette: Palette, viewing: Viewing) -> Json:
    """Give each lot of a palette with its shade, spread and weight, and the pairs that other lights part."""
    return {
        "format": "chartmaker-lots",
        "version": 1,
        "lots": [_lot(item) for item in listed(palette, viewing)],
        "metameric_pairs": [_metameric(pair) for pair in metameric_pairs(palette.lots, viewing)],
    }


def band_yarn(appraisal: Appraisal) -> tuple[PieceYarn, ...]:
    """Share the yarn of an appraised hat out over its bands."""
    return yarn_by_band(appraisal.design, appraisal.fabric, appraisal.floats, appraisal.loop)


def _piece(appraisal: Appraisal, piece: PieceYarn) -> Json:
    return {
        "band": appraisal.design.bands[piece.piece].name,
        "band_number": piece.piece + 1,
        "letter": piece.letter,
        "stitches": piece.stitches,
        "stitch_metres": _figure(piece.stitch_m.likely),
        "float_metres": _figure(piece.float_m.likely),
        "metres": _interval(piece.metres),
        "grams": _interval(piece.grams),
    }


def _round(line: RoundAppraisal) -> Json:
    return {
        "round": line.number,
        "band": line.band_name,
        "stitches": line.stitches,
        "letters": list(line.letters),
        "value_difference": _figure(line.value_difference),
        "value_difference_low": _figure(line.value_difference_low),
        "grade": line.grade or None,
        "rests_on": line.rests_on,
        "longest_float_stitches": line.longest_float_stitches,
        "longest_float_cm": _figure(line.longest_float_cm),
    }


def _pair(pair: PairAppraisal, afar: FarContrast | None) -> Json:
    return {
        "letters": list(pair.letters),
        "boundary_cm": _figure(pair.boundary_cm),
        "drawn_boundary_cm": _figure(pair.drawn_cm),
        "value_difference": _figure(pair.value_difference),
        "value_difference_low": _figure(pair.value_difference_low),
        "ciede2000": _figure(pair.ciede2000),
        "grade": pair.grade or None,
        "in_lights": [
            {
                "illuminant": there.illuminant,
                "value_difference": _figure(there.value_difference),
                "value_difference_low": _figure(there.value_difference_low),
                "ciede2000": _figure(there.ciede2000),
                "grade": there.grade,
            }
            for there in pair.in_lights
        ],
        "to_eyes": [
            {
                "kind": eyes.kind,
                "value_difference": _figure(eyes.value_difference),
                "ciede2000": _figure(eyes.ciede2000),
            }
            for eyes in pair.to_eyes
        ],
        "rests_on": pair.rests_on,
        "from_afar": _afar(afar) if afar else None,
    }


def _afar(afar: FarContrast) -> Json:
    """Tell what is left of a pair's difference across a room, in the band where both have most stitches."""
    return {
        "distance_cm": ACROSS_ROOM_CM,
        "value_difference": _figure(afar.value_difference),
        "ciede2000": _figure(afar.ciede2000),
    }


def _letter(letter: LetterAppraisal) -> Json:
    need = letter.requirement
    return {
        "letter": letter.letter,
        "lot": need.lot,
        "lab": [_figure(value) for value in letter.shade.lab] if letter.shade else None,
        "rests_on": letter.shade.rests_on if letter.shade else "nothing",
        "stitches": need.stitches,
        "stitch_metres": _figure(need.stitch_m.likely),
        "float_metres": _figure(need.float_m.likely),
        "other_metres": _figure(need.other_m.likely),
        "metres": _interval(need.metres),
        "grams": _interval(need.grams),
        "planned_grams": _figure(need.planned_g),
        "on_hand_g": _figure(need.on_hand_g),
        "short_g": _figure(need.short_g),
    }


def bath_as_json(plan: BathPlan) -> Json:
    """Give a bath to run; `fibre_g` is all that is weighed out for it, over all its loads."""
    return {
        "bath": plan.bath.id,
        "dyestuff": plan.bath.dyestuff,
        "loads": [_load(load) for load in plan.loads],
        "fibre_g": _figure(plan.fibre_g),
        "dyestuff_g": _figure(plan.dyestuff_g),
        "mordants": [_portion(item) for item in plan.mordants],
        "assists": [_portion(item) for item in plan.assists],
        "water_l": _figure(plan.water_l),
    }


def _load(load: Load) -> Json:
    """Tell a load; `fibre_g` is weighed out: what is short, the sample, the losses, and the rest of whole skeins."""
    return {
        "load": load.load,
        "lot": load.lot,
        "fibre_g": _figure(load.fibre_g),
        "short_g": _figure(load.short_g),
        "lots": [lot for lot, _ in load.lots],
        "skeins": load.skeins,
        "sample_g": _figure(load.habits.sample_g),
        "losses_g": _figure(load.losses_g),
        "to_stock_g": _figure(load.to_stock_g),
    }


def _finding(finding: Finding) -> Json:
    return {
        "check": finding.check,
        "severity": finding.severity,
        "where": finding.place.text,
        "message": finding.message,
        "remedy": finding.remedy,
    }


def _lot(item: ListedLot) -> Json:
    lot, shade, trust = item.lot, item.shade, item.trust
    source = lot.source
    return {
        "id": lot.id,
        "name": lot.name,
        "lab": [_figure(value) for value in shade.lab] if shade else None,
        "readings": len(lot.readings),
        "deviation_lab": [_figure(value) for value in shade.deviation] if shade else None,
        "mcdm": _figure(shade.mcdm) if shade else None,
        "rests_on": shade.rests_on if shade else "nothing",
        "on_hand_g": _figure(lot.on_hand_g),
        "bath": source[0] if source else None,
        "load": source[1] if source else None,
        "words": item.words.text if item.words else None,
        "distances_ciede2000": [_figure(distance) for distance in trust.distances] if trust else [],
        "outlier": _outlier(trust.outlier) if trust and trust.outlier else None,
        "inconstancy_ciede2000": {there.illuminant: _figure(there.ciede2000) for there in item.inconstancies},
    }


def _outlier(outlier: Outlier) -> Json:
    """Tell a reading that does not belong; the first is 1."""
    return {
        "reading": outlier.index + 1,
        "coordinate": outlier.coordinate,
        "off": _figure(outlier.off),
        "ciede2000": _figure(outlier.distance),
        "confidence": _figure(outlier.confidence),
    }


def _metameric(pair: MetamericPair) -> Json:
    return {
        "lots": list(pair.lots),
        "matching": {"illuminant": pair.matching.illuminant, "ciede2000": _figure(pair.matching.ciede2000)},
        "parted": {"illuminant": pair.parted.illuminant, "ciede2000": _figure(pair.parted.ciede2000)},
    }


def _portion(item: Portion) -> Json:
    return {"name": item.name, "grams": _figure(item.grams)}


def _interval(interval: Interval) -> Json:
    return {"low": _figure(interval.low), "likely": _figure(interval.likely), "high": _figure(interval.high)}


def _figure(value: float | None) -> float | None:
    """Drop the digits that floating point adds beyond the sixth decimal."""
    return None if value is None else round(float(value), 6)
