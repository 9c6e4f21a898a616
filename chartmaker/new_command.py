"""The command that begins a hat: what is said on the command line becomes answers, and the answers a design."""

import argparse
import os
import re
from dataclasses import replace
from pathlib import Path
from typing import Any

from chartmaker.files.design_writing import save_design
from chartmaker.files.palette_reading import read_palette
from chartmaker.files.problems import UserProblem, printable_lines, suggestion
from chartmaker.knit.answers import Answers, defaults_for
from chartmaker.knit.brims import BRIM_KINDS
from chartmaker.knit.crown import PROFILES
from chartmaker.knit.sizes import size_named, sizes
from chartmaker.knit.starter import started
from chartmaker.knit.wedge import DECREASES
from chartmaker.model.gauge import Gauge, gauge_counted
from chartmaker.model.hat import SHAPES, Trim
from chartmaker.model.units import CM_PER_INCH, METRIC, SYSTEMS, in_units, reason, units_named
from chartmaker.report.new_hat import new_hat_as_text, sizes_as_text

ENDING = ".hat.toml"
OF_SHAPES = {
    "--crown": ("profile", ("cap", "tam")),
    "--sections": ("sections", ("cap", "tam")),
    "--decrease": ("decrease", ("cap", "tam")),
    "--widen": ("widen_percent", ("tam",)),
    "--widen-rounds": ("widen_rounds", ("tam",)),
    "--taper": ("taper_decreases", ("stocking",)),
}
"""Options that only some shapes have, with what they answer and which shapes those are."""
_LENGTH = r"([\d.]+)\s*(cm|in|)"
_COUNTED = re.compile(rf"([\d.]+)(?:/{_LENGTH})?\s*[x×]\s*([\d.]+)(?:/{_LENGTH})?")


def add_new(parser: argparse.ArgumentParser) -> None:
    """Begin a plain hat that fits, in bands ready for motifs."""
    parser.add_argument("design", type=Path, nargs="?", metavar="OUT.hat.toml")
    parser.add_argument("--sizes", action="store_true", help="list the named sizes with their sources, and do no more")
    parser.add_argument("--shape", choices=SHAPES, default="cap")
    head = parser.add_mutually_exclusive_group()
    head.add_argument("--head", type=_length, metavar="CM", help="round the head; 22in is in inches, here and below")
    head.add_argument("--size", metavar="NAME", help="a named size in place of the head")
    parser.add_argument(
        "--gauge",
        type=_gauge,
        metavar="30x34",
        help="stitches and rounds to 10 cm; 45/15x17/5 are 45 stitches over 15 cm, 17 rounds over 5 cm",
    )
    parser.add_argument("--brim", choices=tuple(BRIM_KINDS), dest="brim_kind")
    parser.add_argument("--brim-depth", type=_length, metavar="CM", dest="brim_depth_cm")
    parser.add_argument("--ease", type=float, metavar="PERCENT", dest="ease_percent", help="-9 is 9 %% smaller")
    parser.add_argument("--depth", type=_length, metavar="CM", dest="depth_cm", help="from the worn edge to the top")
    parser.add_argument("--crown", choices=PROFILES, dest="profile")
    parser.add_argument("--sections", type=int, metavar="4-12", help="of the crown")
    parser.add_argument("--decrease", choices=DECREASES, help="of each section")
    parser.add_argument("--widen", type=float, metavar="PERCENT", dest="widen_percent", help="a tam after its brim")
    parser.add_argument("--widen-rounds", type=int, metavar="N", help="rounds that a tam widens over")
    parser.add_argument("--taper", type=int, metavar="N", dest="taper_decreases", help="every second round, stocking")
    parser.add_argument("--repeat", type=int, metavar="N", dest="motif_repeat", help="of the motif that it is for")
    parser.add_argument("--letters", metavar="AB", help="ground and figure")
    parser.add_argument("--pompom", type=_length, metavar="CM", help="across")
    parser.add_argument("--yarn", type=float, metavar="M", dest="metres_per_100g", help="metres in 100 g")
    parser.add_argument("--title")
    parser.add_argument("--palette", type=Path, metavar="PALETTE", help="lots for its letters are chosen from it")
    add_units(parser)
    parser.set_defaults(run=_new)


def add_units(parser: argparse.ArgumentParser) -> None:
    """Let a command tell its measures in inches, yards and ounces; what goes to files and scripts stays metric."""
    systems = tuple(units.name for units in SYSTEMS)
    text = "that lengths and weights are told in; files, JSON and dye recipes stay metric"
    parser.add_argument("--units", choices=systems, default=METRIC.name, help=text)


def _new(chosen: argparse.Namespace) -> int:
    units = units_named(chosen.units)
    if chosen.sizes:
        print(sizes_as_text(units))
        return 0
    path = _free_place(chosen.design)
    palette = read_palette(chosen.palette) if chosen.palette else None
    try:
        answers = _answers(chosen, path)
        design = started(answers, palette, palette_file=_beside(chosen.palette, path) if chosen.palette else "")
    except ValueError as problem:
        raise UserProblem(what=in_units(reason(problem), units)) from problem
    save_design(design, path)
    print(printable_lines(f"{path}:\n{new_hat_as_text(design, answers, given=_given(chosen), units=units)}"))
    return 0


def _free_place(path: Path | None) -> Path:
    """Give the place of the new design; raises UserProblem where none is named, or something is there."""
    if path is None:
        raise UserProblem(what="the new design needs a file", now=f"name one that ends in {ENDING}")
    if os.path.lexists(path):
        raise UserProblem(what="there is something already", where=str(path), now="choose another name")
    return path


def _answers(chosen: argparse.Namespace, path: Path) -> Answers:
    """Take what was said, and the defaults for the rest; raises ValueError for what is out of range."""
    _require_said(chosen)
    _refuse_idle(chosen)
    usual = defaults_for(shape=chosen.shape, head_cm=_head_cm(chosen), gauge=chosen.gauge)
    said = _said(chosen, "ease_percent", "depth_cm", "widen_percent", "widen_rounds", "taper_decreases", "motif_repeat")
    said |= _said(chosen, "letters", "metres_per_100g", "title")
    crown = replace(usual.crown, **_said(chosen, "profile", "sections", "decrease"))
    brim = replace(
        usual.brim,
        **{name.removeprefix("brim_"): value for name, value in _said(chosen, "brim_kind", "brim_depth_cm").items()},
    )
    answers = replace(usual, brim=brim, crown=crown, **{"title": _title(path)} | said)
    trims = [replace(trim, letter=answers.figure) for trim in usual.trims]
    if chosen.pompom is not None:
        trims = [Trim(kind="pompom", letter=answers.figure, size_cm=chosen.pompom)]
    return replace(answers, trims=tuple(trims))


def _title(path: Path) -> str:
    """Make a title of the file's name: "lockside-cap.hat.toml" is "Lockside cap"."""
    words = " ".join(re.split(r"[-_ ]+", path.name.removesuffix(ENDING))).strip()
    return words[:1].upper() + words[1:]


def _said(chosen: argparse.Namespace, *names: str) -> dict[str, Any]:
    return {name: getattr(chosen, name) for name in names if getattr(chosen, name) is not None}


def _given(chosen: argparse.Namespace) -> set[str]:
    """Tell which answers were given wholly, so that they rest on nothing else."""
    given = set(_said(chosen, "ease_percent", "depth_cm", "widen_percent", "widen_rounds", "taper_decreases"))
    given |= set(_said(chosen, "metres_per_100g"))
    given |= {"brim"} if chosen.brim_depth_cm is not None else set()
    given |= {"crown"} if chosen.sections is not None else set()
    return given | ({"trims"} if chosen.pompom is not None else set())


def _head_cm(chosen: argparse.Namespace) -> float:
    if chosen.size is not None:
        try:
            return size_named(chosen.size).head_cm
        except ValueError as problem:
            near = suggestion(chosen.size, [size.name for size in sizes()])
            raise UserProblem(what=f"{problem}{near}", now="chartmaker new --sizes lists them") from problem
    return float(chosen.head)


def _require_said(chosen: argparse.Namespace) -> None:
    """Refuse, all at once, to guess what a hat cannot be made without."""
    missing = {}
    if chosen.head is None and chosen.size is None:
        missing["the head"] = "give --head CM, or a size by its name: --size 'woman, mean'"
    if chosen.gauge is None:
        missing["the gauge"] = "count a swatch: --gauge 30x34 is stitches x rounds to 10 cm"
    if missing:
        is_or_are = "are" if len(missing) > 1 else "is"
        raise UserProblem(what=f"{' and '.join(missing)} {is_or_are} not said", now="; ".join(missing.values()))


def _refuse_idle(chosen: argparse.Namespace) -> None:
    """Refuse an option that would do nothing to a hat of this shape."""
    for option, (name, shapes) in OF_SHAPES.items():
        if getattr(chosen, name) is not None and chosen.shape not in shapes:
            raise UserProblem(
                what=f"{option} is of {' and '.join(shapes)} alone",
                where=f"--shape {chosen.shape}",
                now="leave it out, or choose another shape",
            )


def _length(text: str) -> float:
    """Read a length as cm."""
    found = re.fullmatch(_LENGTH, text.strip())
    if not found:
        raise argparse.ArgumentTypeError(f"{text!r} is no length; 56 and 56cm are centimetres, 22in are inches")
    return _cm(found[1], found[2])


def _gauge(text: str) -> Gauge:
    found = _COUNTED.fullmatch(text.strip())
    if not found:
        raise argparse.ArgumentTypeError(f"{text!r} is no gauge; 30x34 are 30 stitches and 34 rounds to 10 cm")
    stitches, width, width_unit, rounds, height, height_unit = found.groups()
    try:
        return gauge_counted(
            stitches=float(stitches),
            width_cm=_cm(width or "10", width_unit),
            rounds=float(rounds),
            height_cm=_cm(height or "10", height_unit),
        )
    except ValueError as problem:
        raise argparse.ArgumentTypeError(str(problem)) from problem


def _cm(number: str, unit: str | None) -> float:
    try:
        return float(number) * (CM_PER_INCH if unit == "in" else 1)
    except ValueError as problem:
        raise argparse.ArgumentTypeError(f"{number!r} is no number") from problem


def _beside(palette: Path, design: Path) -> str:
    """Name the palette as seen from the design's folder, or in full where that is on another disk."""
    whole = palette.resolve()
    try:
        return Path(os.path.relpath(whole, design.parent.resolve())).as_posix()
    except ValueError:
        return whole.as_posix()
