"""The commands that work without a display and without Qt."""

import argparse
import datetime as dt
import json
import math
import os
import sys
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from chartmaker import __version__
from chartmaker.appraisal import Appraisal, appraise
from chartmaker.files.design_reading import read_design
from chartmaker.files.palette_reading import read_palette, read_palette_beside
from chartmaker.files.problems import UserProblem, printable_lines, suggestion
from chartmaker.files.saving import write_safely
from chartmaker.model.design import Design
from chartmaker.model.palette import Lot, Palette
from chartmaker.model.settings import Viewing
from chartmaker.model.units import units_named
from chartmaker.new_command import add_new, add_units
from chartmaker.report.as_json import lots_as_json, report_as_json
from chartmaker.report.as_text import lots_as_text, report_as_text
from chartmaker.report.yarn_as_csv import yarn_as_csv

if TYPE_CHECKING:
    from chartmaker.pictures.picture import HatSight
    from chartmaker.pictures.turning import Surface

DONE, STOPPED = 0, 1
VIEWS = ("shade", "value", "knit", "hat")
SIDES = ("side", "back", "above", "below")
TINTS = ("shade", "value", "lamplight", "led", "tube", "protan", "deutan", "tritan", "tightness")
SHEETS = ("cover", "key", "chart", "chart-bw", "chart-large", "rounds", "yarn", "contrast", "baths", "shopping")
USUAL_SHEETS = ("cover", "key", "chart", "rounds", "yarn", "contrast", "baths", "shopping")
PAPERS = ("a4", "letter", "a5")
HEAVY_LINES = {"5": 5, "10": 10, "none": 0}


def run(words: Sequence[str]) -> int:
    """Run one command and give its exit status; raises UserProblem for what the user can put right."""
    chosen = _parser().parse_args(words)
    status: int = chosen.run(chosen)
    return status


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="chartmaker",
        usage="chartmaker [DESIGN]\n       chartmaker COMMAND …",
        description="From measured dye lots and a chart to a stranded hat that reads, fits and has yarn enough. "
        "Without a command, the window opens.",
    )
    parser.add_argument("--version", action="version", version=f"chartmaker {__version__}")
    commands = parser.add_subparsers(required=True, metavar="COMMAND", prog="chartmaker")
    for name, add in _COMMANDS.items():
        add(commands.add_parser(name, help=add.__doc__, description=add.__doc__))
    return parser


def _add_report(parser: argparse.ArgumentParser) -> None:
    """Tell whether the hat reads, fits and has yarn enough."""
    _add_design(parser)
    forms = parser.add_mutually_exclusive_group()
    forms.add_argument("--json", action="store_true", help="for scripts; the names are kept stable")
    forms.add_argument("--csv", action="store_true", help="only the yarn table, for spreadsheets")
    add_units(parser)
    parser.set_defaults(run=_report)


def _add_print(parser: argparse.ArgumentParser) -> None:
    """Print cover, key, chart, written rounds, yarn and contrast sheets, bath cards and shopping list to a PDF."""
    _add_design(parser)
    kinds = "a PDF; ending in .svg or .png, pictures of the chart's pages (or those of --sheets), one file a page"
    parser.add_argument("-o", "--output", type=Path, required=True, metavar="OUT.pdf", help=kinds)
    parser.add_argument("--dpi", type=_dpi, default=200, metavar="N", help="pixels to the inch in .png; 200 by default")
    parser.add_argument("--paper", choices=PAPERS, default="a4")
    parser.add_argument("--landscape", action="store_true", help="turn the paper on its side")
    usual = "all but chart-bw and chart-large by default"
    parser.add_argument("--sheets", type=_sheet_names, help=f"of {','.join(SHEETS)}; {usual}")
    add_units(parser)
    parser.add_argument(
        "--lines", choices=HEAVY_LINES, default="5", help="heavier lines in the chart every 5 and 10, every 10, or none"
    )
    parser.set_defaults(run=_print)


def _add_picture(parser: argparse.ArgumentParser) -> None:
    """Draw the fabric, or the hat, to a PNG."""
    _add_design(parser)
    parser.add_argument("-o", "--output", type=Path, required=True, metavar="OUT.png")
    parser.add_argument("--view", choices=VIEWS, default="shade")
    parser.add_argument("--width", type=_pixels, default=1200, metavar="PX")
    hat = parser.add_argument_group("of the hat alone (--view hat)")
    hat.add_argument("--from", choices=SIDES, dest="side", help="a usual side; the side from a little above by default")
    hat.add_argument("--turn", type=_degrees, metavar="DEG", help="turned about its axis, its front to the right")
    hat.add_argument("--tilt", type=_degrees, metavar="DEG", help="-90 is from below, 0 the side, 90 from above")
    hat.add_argument("--laid", action="store_true", help="a tam flat, as on its plate")
    hat.add_argument(
        "--tint", choices=TINTS, help="as dyed, in grey, by another light, to other eyes, or how tight it is"
    )
    hat.add_argument("--severity", type=_share, metavar="0-1", help="of another colour vision; 1 by default")
    hat.add_argument("--flat", action="store_true", help="stitches as even cells instead of knitting")
    parser.set_defaults(run=_picture)


def _add_lots(parser: argparse.ArgumentParser) -> None:
    """List each lot of a palette with its shade, spread and weight."""
    parser.add_argument("palette", type=Path, metavar="PALETTE")
    parser.add_argument("--json", action="store_true", help="for scripts; the names are kept stable")
    add_units(parser)
    parser.set_defaults(run=_lots)


def _add_take(parser: argparse.ArgumentParser) -> None:
    """Add the readings of a measurement file (CGATS, CxF or CSV) to a palette, which is made where it is not there."""
    parser.add_argument("measurements", type=Path, metavar="MEASUREMENTS")
    parser.add_argument("--into", type=Path, required=True, metavar="PALETTE", dest="palette")
    parser.add_argument("--dry-run", action="store_true", help="only show what would be added to which lot")
    parser.set_defaults(run=_take)


def _add_compare(parser: argparse.ArgumentParser) -> None:
    """Tell strength and shift of two lots, and why they may differ."""
    parser.add_argument("palette", type=Path, metavar="PALETTE")
    parser.add_argument("reference", metavar="REFERENCE", help="id of the lot that the other is compared with")
    parser.add_argument("sample", metavar="SAMPLE", help="id of the other lot")
    parser.add_argument("--json", action="store_true", help="for scripts; the names are kept stable")
    parser.set_defaults(run=_compare)


def _add_fit(parser: argparse.ArgumentParser) -> None:
    """Tell the stitch counts that the bands allow, the nearest first."""
    parser.add_argument("design", type=Path, metavar="DESIGN")
    parser.add_argument("--json", action="store_true", help="for scripts; the names are kept stable")
    add_units(parser)
    parser.set_defaults(run=_fit)


def _add_baths(parser: argparse.ArgumentParser) -> None:
    """Plan what must be dyed for one design, or for several together."""
    parser.add_argument("designs", type=Path, metavar="DESIGN", nargs="+")
    parser.add_argument("--json", action="store_true", help="for scripts; the names are kept stable")
    parser.set_defaults(run=_baths)


def _add_design(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("design", type=Path, metavar="DESIGN")
    parser.add_argument("--colourway", metavar="NAME", help="instead of the design's first")


_COMMANDS: dict[str, Callable[[argparse.ArgumentParser], None]] = {
    "new": add_new,
    "report": _add_report,
    "print": _add_print,
    "picture": _add_picture,
    "lots": _add_lots,
    "take": _add_take,
    "compare": _add_compare,
    "fit": _add_fit,
    "baths": _add_baths,
}


def _sheet_names(text: str) -> tuple[str, ...]:
    names = tuple(dict.fromkeys(name.strip() for name in text.split(",")))
    for name in names:
        if name not in SHEETS:
            raise argparse.ArgumentTypeError(f"there is no sheet {name!r}; there are {', '.join(SHEETS)}")
    return names


def _dpi(text: str) -> int:
    if not text.isdecimal() or not 30 <= int(text[:9]) <= 1200:
        raise argparse.ArgumentTypeError(f"{text!r} is no resolution from 30 to 1200 pixels to the inch")
    return int(text)


def _pixels(text: str) -> int:
    if not text.isdecimal() or not 16 <= int(text[:9]) <= 8000:
        raise argparse.ArgumentTypeError(f"{text!r} is no width from 16 to 8000 pixels")
    return int(text)


def _degrees(text: str) -> float:
    try:
        degrees = float(text)
    except ValueError:
        degrees = math.nan
    if not abs(degrees) <= 36_000:
        raise argparse.ArgumentTypeError(f"{text!r} is no angle in degrees")
    return degrees


def _share(text: str) -> float:
    try:
        share = float(text)
    except ValueError:
        share = math.nan
    if not 0 <= share <= 1:
        raise argparse.ArgumentTypeError(f"{text!r} is no number from 0 to 1")
    return share


def _report(chosen: argparse.Namespace) -> int:
    appraisal = _appraised(chosen)
    if chosen.csv:
        print(yarn_as_csv(appraisal), end="")
    elif chosen.json:
        print(json.dumps(report_as_json(appraisal), ensure_ascii=False, indent=2, allow_nan=False))
    else:
        print(printable_lines(report_as_text(appraisal, units_named(chosen.units))))
    return STOPPED if any(finding.severity == "stop" for finding in appraisal.findings) else DONE


def _print(chosen: argparse.Namespace) -> int:
    from chartmaker.printing import cover_picture
    from chartmaker.sheets.job import PrintJob
    from chartmaker.sheets.page_files import KINDS, page_files
    from chartmaker.sheets.print_sheets import print_sheets

    appraisal = _appraised(chosen)
    output: Path = chosen.output
    are_pictures = output.suffix.lower() in KINDS
    sheets = chosen.sheets or (("chart",) if are_pictures else USUAL_SHEETS)
    job = PrintJob(
        paper=chosen.paper,
        is_landscape=chosen.landscape,
        sheets=sheets,
        heavy_lines=HEAVY_LINES[chosen.lines],
        printed_on=dt.datetime.now(tz=dt.UTC).astimezone().date(),
        units=units_named(chosen.units),
        picture=cover_picture(appraisal) if "cover" in sheets else None,
    )
    files = (
        page_files(appraisal, job, output, dpi=chosen.dpi) if are_pictures else [(output, print_sheets(appraisal, job))]
    )
    for path, contents in files:
        write_safely(path, contents, keep_previous=False)
        if are_pictures:
            print(printable_lines(str(path)))
    return DONE


def _picture(chosen: argparse.Namespace) -> int:
    from chartmaker.pictures.picture import picture
    from chartmaker.pictures.png import png_bytes

    sight = _hat_sight(chosen)
    if sight is not None and chosen.view != "hat":
        raise UserProblem(what="turn, tilt, tint and the like are of the hat alone", now="add --view hat")
    appraisal = _appraised(chosen)
    try:
        drawn = picture(appraisal, chosen.view, chosen.width, sight=sight)
    except ValueError as error:
        raise UserProblem(what=str(error), where=str(chosen.design)) from error
    write_safely(chosen.output, png_bytes(drawn), keep_previous=False)
    if chosen.tint == "tightness":
        from chartmaker.knit.tightness import tightness, tightness_words

        words = tightness_words(tightness(appraisal.design, appraisal.fabric, appraisal.profile))
        print(printable_lines("\n".join(words)))
    return DONE


def _hat_sight(chosen: argparse.Namespace) -> "HatSight | None":
    """Gather what was asked of the hat; None where nothing was."""
    from chartmaker.pictures.picture import HatSight
    from chartmaker.pictures.turning import Dress
    from chartmaker.pictures.viewpoint import VIEWPOINTS, Viewpoint

    asked = (chosen.side, chosen.turn, chosen.tilt, chosen.tint, chosen.severity)
    if not (chosen.laid or chosen.flat or any(one is not None for one in asked)):
        return None
    side = VIEWPOINTS[chosen.side or "side"]
    try:
        seen_from = Viewpoint(
            turn_degrees=side.turn_degrees if chosen.turn is None else chosen.turn,
            tilt_degrees=side.tilt_degrees if chosen.tilt is None else chosen.tilt,
        )
    except ValueError as error:
        raise UserProblem(what=str(error)) from error
    severity = 1.0 if chosen.severity is None else chosen.severity
    surface: Surface = "flat" if chosen.flat else "knit"
    dress = Dress(tint=chosen.tint or "shade", severity=severity, surface=surface, laid=chosen.laid)
    return HatSight(dress, seen_from)


def _lots(chosen: argparse.Namespace) -> int:
    palette = read_palette(chosen.palette)
    if chosen.json:
        print(json.dumps(lots_as_json(palette, Viewing()), ensure_ascii=False, indent=2, allow_nan=False))
    else:
        print(printable_lines(lots_as_text(palette, Viewing(), units_named(chosen.units))))
    return DONE


def _take(chosen: argparse.Namespace) -> int:
    from chartmaker.files.measurements.opening import read_measurements
    from chartmaker.files.palette_writing import save_palette
    from chartmaker.model.taking import taking
    from chartmaker.report.taken_as_text import taken_as_text

    contents = read_measurements(chosen.measurements)
    path: Path = chosen.palette
    is_there = os.path.lexists(path)
    palette = read_palette(path) if is_there else Palette(name=path.name.removesuffix(".palette.toml"))
    taken = taking(palette, contents.measured)
    if taken.added and not chosen.dry_run:
        save_palette(taken.palette, path)
        if not is_there:
            print(printable_lines(f"{path} was not there; it is a new palette now."))
    print(printable_lines(taken_as_text(contents, taken, palette, is_done=not chosen.dry_run)))
    return DONE


def _compare(chosen: argparse.Namespace) -> int:
    from chartmaker.dye.comparison import compare
    from chartmaker.report.comparison import comparison_as_json, comparison_as_text

    palette = read_palette(chosen.palette)
    lots = [_lot_named(palette, name, chosen.palette) for name in (chosen.reference, chosen.sample)]
    comparison = compare(palette, lots[0], lots[1], Viewing())
    if chosen.json:
        print(json.dumps(comparison_as_json(comparison), ensure_ascii=False, indent=2, allow_nan=False))
    else:
        print(printable_lines(comparison_as_text(comparison)))
    return DONE


def _fit(chosen: argparse.Namespace) -> int:
    from chartmaker.report.fit import fit_as_json, fit_as_text

    design = read_design(chosen.design)
    if chosen.json:
        print(json.dumps(fit_as_json(design), ensure_ascii=False, indent=2, allow_nan=False))
    else:
        print(printable_lines(fit_as_text(design, units_named(chosen.units))))
    return DONE


def _baths(chosen: argparse.Namespace) -> int:
    from chartmaker.planning import plan_for
    from chartmaker.report.baths_as_json import baths_as_json
    from chartmaker.report.baths_as_text import baths_as_text

    designs = [(read_design(path), path) for path in chosen.designs]
    plan = plan_for([appraise(design, _palette_beside(design, path)) for design, path in designs])
    if chosen.json:
        print(json.dumps(baths_as_json(plan), ensure_ascii=False, indent=2, allow_nan=False))
    else:
        print(printable_lines(baths_as_text(plan)))
    return DONE


def _lot_named(palette: Palette, name: str, path: Path) -> Lot:
    """Give the lot of this id; raises UserProblem, with the nearest id, where there is none."""
    lot = palette.lot(name)
    if lot is None:
        near = suggestion(name, [one.id for one in palette.lots])
        raise UserProblem(what=f"there is no lot {name!r}{near}", where=str(path))
    return lot


def _appraised(chosen: argparse.Namespace) -> Appraisal:
    """Read the design that was named, with its palette where that is at hand, and appraise it."""
    design = read_design(chosen.design)
    if chosen.colourway is not None:
        try:
            design = design.using(chosen.colourway)
        except ValueError as error:
            raise UserProblem(what=str(error), where=str(chosen.design)) from error
    return appraise(design, _palette_beside(design, chosen.design))


def _palette_beside(design: Design, path: Path) -> Palette | None:
    """Read the palette that a design names; the design stands alone without it, so a broken one is only told."""
    try:
        return read_palette_beside(design, path)
    except UserProblem as problem:
        print(printable_lines(f"chartmaker: going on without the palette: {problem}"), file=sys.stderr)
        return None
