"""From what really happened in the pot to the bath's record, and to the lots that came out of it."""

from dataclasses import dataclass, field, replace

from chartmaker.dye.plan import BathPlan, Load
from chartmaker.dye.supply import taken_from
from chartmaker.model.bath_record import BathRecord, LoadRecord
from chartmaker.model.palette import Bath, Lot, Palette, Planned
from chartmaker.model.palette_edits import ReplacePalette, free_id


@dataclass(frozen=True, slots=True)
class Recorded:
    """What comes of a record."""

    edit: ReplacePalette
    """The one step that takes it into the palette."""
    bath: str
    """Id of the bath that has the record."""
    lots: tuple[str, ...]
    """Ids of the lots that were made of it, planned ones that became real among them."""


def record_plan(palette: Palette, at_hand: Palette, plan: BathPlan, record: BathRecord) -> Recorded:
    """Write down a planned bath as it was run; each load that was weighed when dry becomes a lot.

    A recipe that was run before stays as it was: the new run is a bath of its own. A lot that was planned from a load
    becomes real under its own id; a load of which nothing was planned makes a new lot.

    Args:
        palette: what is changed.
        at_hand: where recipe, lots and yarns are found that the palette does not have.
        plan: the bath that was run.
        record: what happened; its loads name no lots yet.
    """
    recipe = plan.bath
    before = _with_plan(palette, at_hand, plan)
    goes_on = recipe.record is not None and plan.is_going_on
    is_run_anew = not goes_on and (recipe.record is not None or any(lot.bath == recipe.id for lot in before.lots))
    run = _Run(recipe, _new_id(before, recipe, record) if is_run_anew else recipe.id, record, plan)
    drawn = _Drawn({lot.id: lot for lot in before.lots})
    for load in record.loads:
        drawn.take(load, run, _planned_from(before, plan, load.load))
    for number in {load.load for load in plan.loads} - {load.load for load in record.loads}:
        drawn.leave(number, run, _planned_from(before, plan, number))
    whole = _joined(recipe.record if goes_on else None, replace(record, loads=tuple(drawn.loads)))
    bath = replace(recipe, id=run.bath_id, record=whole)
    baths = (*before.baths, bath) if is_run_anew else _with_bath(before, bath)
    after = replace(before, baths=baths, lots=tuple(drawn.lots.values()))
    edit = ReplacePalette(palette, after, f"Record bath {run.bath_id}")
    return Recorded(edit, run.bath_id, tuple(drawn.made))


def complete_record(palette: Palette, bath_id: str, record: BathRecord) -> Recorded:
    """Change the record of a bath that was run; loads that were weighed since make their lots.

    A weight that is put right is put right on hand too, by as much as it changed. Raises ValueError where there is no
    such bath.
    """
    bath = palette.bath(bath_id)
    if bath is None:
        raise ValueError(f"there is no bath {bath_id!r} in the palette")
    run = _Run(bath, bath_id, record, None)
    drawn = _Drawn({lot.id: lot for lot in palette.lots})
    for load in record.loads:
        was = bath.record.of_load(load.load) if bath.record else None
        if was is not None and was.lot:
            drawn.put_right(load, was)
        else:
            drawn.take(load, run, [lot for lot in palette.lots if lot.planned == Planned(bath_id, load.load)])
    noted = replace(bath, record=replace(record, loads=tuple(drawn.loads)))
    after = replace(palette, baths=_with_bath(palette, noted), lots=tuple(drawn.lots.values()))
    return Recorded(ReplacePalette(palette, after, f"Change the record of bath {bath_id}"), bath_id, tuple(drawn.made))


@dataclass(frozen=True, slots=True)
class _Run:
    """A recipe as it is written down."""

    recipe: Bath
    bath_id: str
    record: BathRecord
    plan: BathPlan | None
    """None where a record is only changed."""

    def load(self, number: int) -> Load | None:
        """Give what was planned of a load."""
        return next((one for one in self.plan.loads if one.load == number), None) if self.plan else None


@dataclass(slots=True)
class _Drawn:
    """What is lifted out of the pot, load by load."""

    lots: dict[str, Lot]
    """All lots of the palette as they become."""
    loads: list[LoadRecord] = field(default_factory=list)
    made: list[str] = field(default_factory=list)

    def take(self, load: LoadRecord, run: _Run, planned: list[Lot]) -> None:
        """Make the lots of a load that was weighed when dry; one that was not stays planned."""
        if load.dry_g is None:
            self.loads.append(load)
            self.leave(load.load, run, planned)
            return
        dyed = _realised(load, run, planned) if planned else [_new_lot(load, run, set(self.lots))]
        self.lots |= {lot.id: lot for lot in dyed}
        self.made += [lot.id for lot in dyed]
        self.loads.append(replace(load, lot=dyed[0].id))

    def leave(self, number: int, run: _Run, planned: list[Lot]) -> None:
        """Let the lots that are planned from a load wait for it in this very liquor."""
        self.lots |= {lot.id: replace(lot, planned=Planned(run.bath_id, number)) for lot in planned}

    def put_right(self, load: LoadRecord, was: LoadRecord) -> None:
        """Change the lot that a load became by as much as its weight was wrong; one that was deleted stays so."""
        lot = self.lots.get(was.lot)
        self.loads.append(replace(load, lot=was.lot))
        if lot is None:
            return
        change = (load.dry_g or 0.0) - (was.dry_g or 0.0)
        weight = round(max(0.0, lot.on_hand_g + change), 3) if change else lot.on_hand_g
        self.lots[lot.id] = replace(lot, on_hand_g=weight, dyed_on=load.dyed_on or lot.dyed_on)


def taken_off(palette: Palette, plan: BathPlan, record: BathRecord) -> Palette:
    """Give the palette with fibre and dyestuff of a record taken off the store; nothing goes below 0."""
    fibre: dict[str, float] = {}
    for load in record.loads:
        yarn = _yarn_of(palette, plan, load.load)
        if yarn:
            fibre[yarn] = fibre.get(yarn, 0.0) + load.fibre_g
    undyed = tuple(
        replace(each, on_hand_g=round(max(0.0, each.on_hand_g - fibre.get(each.yarn, 0.0)), 3))
        for each in palette.undyed
    )
    shelf = taken_from(palette.dyestuffs, plan.bath, record.dyestuff_g or 0.0)
    return replace(palette, undyed=undyed, dyestuffs=shelf)


def _with_plan(palette: Palette, at_hand: Palette, plan: BathPlan) -> Palette:
    """Give the palette with the recipe and the planned lots of a plan, copied from what is at hand."""
    found = palette
    if found.bath(plan.bath.id) is None:
        found = replace(found, baths=(*found.baths, plan.bath))
    for lot_id in sorted({*plan.lots, *(load.lot for load in plan.loads if load.lot)}):
        lot = at_hand.lot(lot_id)
        if lot is not None and lot.planned is not None:
            found = found.with_lot_from(at_hand, lot_id)
        elif lot is not None and lot.yarn and found.yarn(lot.yarn) is None:
            found = replace(found, yarns=(*found.yarns, *filter(None, [at_hand.yarn(lot.yarn)])))
    return found


def _planned_from(palette: Palette, plan: BathPlan, load: int) -> list[Lot]:
    """Give the lots that are planned from a load, those of joined baths among them."""
    joined = {each.lot for each in plan.joined if each.load == load}
    return [
        lot
        for lot in palette.lots
        if lot.planned is not None and (lot.id in joined or lot.planned == Planned(plan.bath.id, load))
    ]


def _new_lot(load: LoadRecord, run: _Run, taken: set[str]) -> Lot:
    """Make a lot of a load from which none was planned."""
    day = load.dyed_on or run.record.dyed_on
    planned = run.load(load.load)
    return Lot(
        id=free_id(f"{run.bath_id}-{load.load}", taken),
        name=_name(run.recipe, load.load, day.isoformat() if day else ""),
        yarn=planned.yarn or None if planned else None,
        bath=run.bath_id,
        load=load.load,
        dyed_on=day,
        on_hand_g=load.dry_g or 0.0,
        notes=load.notes,
    )


def _realised(load: LoadRecord, run: _Run, lots: list[Lot]) -> list[Lot]:
    """Make planned lots real; they share the load's weight by what is short of each."""
    planned = run.load(load.load)
    short = dict(planned.lots) if planned else {}
    parts = [short.get(lot.id, 0.0) for lot in lots]
    whole = sum(parts)
    shares = [part / whole for part in parts] if whole else [1.0 / len(lots)] * len(lots)
    return [
        replace(
            lot,
            planned=None,
            bath=run.bath_id,
            load=load.load,
            dyed_on=load.dyed_on or run.record.dyed_on,
            on_hand_g=round(lot.on_hand_g + share * (load.dry_g or 0.0), 3),
            notes="\n".join(filter(None, (lot.notes, load.notes))),
        )
        for lot, share in zip(lots, shares, strict=True)
    ]


def _with_bath(palette: Palette, bath: Bath) -> tuple[Bath, ...]:
    return tuple(bath if each.id == bath.id else each for each in palette.baths)


def _joined(before: BathRecord | None, record: BathRecord) -> BathRecord:
    """Put further loads of one liquor to those that were recorded before."""
    if before is None:
        return record
    numbers = {load.load for load in record.loads}
    kept = tuple(load for load in before.loads if load.load not in numbers)
    return replace(
        before,
        loads=tuple(sorted((*kept, *record.loads), key=lambda load: load.load)),
        ph_end=before.ph_end if record.ph_end is None else record.ph_end,
        notes="\n".join(filter(None, (before.notes, record.notes))),
    )


def _new_id(palette: Palette, recipe: Bath, record: BathRecord) -> str:
    day = record.dyed_on.isoformat() if record.dyed_on else "again"
    return free_id(f"{recipe.dyestuff} {day}", [bath.id for bath in palette.baths])


def _name(recipe: Bath, load: int, day: str) -> str:
    which = {1: "first bath", 2: "first exhaust", 3: "second exhaust"}.get(load, f"exhaust {load - 1}")
    return ", ".join(filter(None, (f"{recipe.dyestuff[:1].upper()}{recipe.dyestuff[1:]}", which, day)))


def _yarn_of(palette: Palette, plan: BathPlan, load: int) -> str:
    found = next((one for one in plan.loads if one.load == load), None)
    return found.yarn if found and palette.yarn(found.yarn) else ""
