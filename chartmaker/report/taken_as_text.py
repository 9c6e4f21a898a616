"""What taking a measurement file would do, or did, to a palette, as lines for a terminal."""

from collections.abc import Iterator

from chartmaker.files.measurements.contents import Contents
from chartmaker.model.palette import Palette
from chartmaker.model.settings import Viewing
from chartmaker.model.taking import TakenLine, Taking
from chartmaker.shade.lots import shade_of
from chartmaker.shade.stray import stray_note


def taken_as_text(contents: Contents, taking: Taking, before: Palette, *, is_done: bool) -> str:
    """Write what each sample brought to which lot, what was assumed, and the sum of it."""
    return "\n".join(_lines(contents, taking, before, is_done=is_done))


def _lines(contents: Contents, taking: Taking, before: Palette, *, is_done: bool) -> Iterator[str]:
    for line in taking.lines:
        yield f"{line.measured.name} → {_destination(line)}"
        earlier = before.lot(line.lot.id) if line.lot else None
        for note in filter(None, (*line.notes, stray_note(line.measured.readings, earlier, Viewing()))):
            yield f"  {note}"
    for note in contents.notes:
        yield f"Note: {note}."
    lots = len({line.lot.id for line in taking.lines if line.lot and line.added})
    verb = "Added" if is_done else "Would add"
    yield f"{verb} {_counted(taking.added, 'reading')} to {_counted(lots, 'lot')} from {contents.grammar}."


def _destination(line: TakenLine) -> str:
    if line.lot is None:
        return "left out"
    told = [f"{'new lot' if line.is_new else 'lot'} {line.lot.id}: {_counted(line.added, 'reading')} added"]
    if line.known:
        told.append(f"{line.known} known already")
    shade = shade_of(line.lot, Viewing())
    if shade is not None:
        told.append("L* a* b* {:.1f} {:.1f} {:.1f}".format(*shade.lab))
        told.append(shade.rests_on)
    return ", ".join(told)


def _counted(count: int, what: str) -> str:
    return f"{count} {what}" if count == 1 else f"{count} {what}s"
