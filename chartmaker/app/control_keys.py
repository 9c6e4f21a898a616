"""Keys that belong to a control rather than to an action: one table for the list of keys and the controls' own help."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class ControlKey:
    """What some keys, or a gesture of the pointer, do in one control."""

    where: str
    """The control, as the list of keys names it."""
    what: str
    keys: str


CONTROL_KEYS = (
    ControlKey("The chart", "Move the cursor by a stitch or a round", "Arrows"),
    ControlKey("The chart", "Move the cursor by ten rounds", "Page Up, Page Down"),
    ControlKey("The chart", "Go to the first or the last stitch of the repeat", "Home, End"),
    ControlKey("The chart", "Draw at the cursor; begin and end a line or a shape", "Space or Enter"),
    ControlKey("The chart", "Stamp the motif that is held; put it down", "Space or Enter; Escape or right button"),
    ControlKey("The chart", "Drop the gesture, or the choice of rounds", "Escape"),
    ControlKey("The chart", "Draw ground, or make a stitch plain, with the mouse", "Right button"),
    ControlKey("The chart", "Choose a run of rounds", "Shift and up or down, or drag over round numbers"),
    ControlKey("The chart", "What can be done with the rounds chosen", "Menu, or right button on a round number"),
    ControlKey("The chart", "Zoom at the pointer", "Ctrl and wheel"),
    ControlKey("A block selected", "Mark a block; drop it", "Drag, or Shift and arrows; Escape or a click beside it"),
    ControlKey("A block selected", "Move the block; copy it", "Drag it; Ctrl and drag it"),
    ControlKey(
        "A block selected", "Take the block up, move it, set it down; put it back", "Enter, arrows, Enter; Escape"
    ),
    ControlKey("A block selected", "Set down what was pasted; drop it", "Click or Enter; Escape or right button"),
    ControlKey("A block selected", "What can be done with the block", "Right button or Menu"),
    ControlKey("Across the room", "Go back to the chart", "Escape, or a double click"),
    ControlKey("Across the room", "Draw out the bar that tells the screen's scale", "Left and right"),
    ControlKey("The shading", "Move among the chips", "Arrows"),
    ControlKey("The shading", "Set the letter of a chip, in all rounds chosen", "A to Z"),
    ControlKey("The shading", "Carry the letter one round on", "Shift and up or down"),
    ControlKey("The shading", "Choose the letter from a menu", "Space or Enter"),
    ControlKey("The shading", "Drop a drag of a chip", "Escape"),
    ControlKey("The line of the band", "Take a field and go back to the chart; leave it as it was", "Enter; Escape"),
    ControlKey("The shelf of motifs", "Go from the words on to the motifs; hold the one there", "Down; Enter or Space"),
    ControlKey("The lots", "Go to another lot", "Arrows"),
    ControlKey("The lots", "Compare the lot with another", "Shift and arrows, or Ctrl or Shift and a click"),
    ControlKey("The lots", "Make a letter the lot", "Drag its skein onto the letter"),
    ControlKey("The turning hat", "Turn it; tilt it", "Drag sideways, or left and right; up and down"),
    ControlKey("The turning hat", "See its front, side, back, or top", "F, S, B, A; Home or a double click"),
    ControlKey("The turning hat", "Go nearer, or away", "+ and −, or Ctrl and wheel"),
    ControlKey("Shade in steps", "Tick a letter, or leave it out", "Space"),
    ControlKey("Shade in steps", "Move a letter in its row", "Alt and up or down"),
)


def keys_of(where: str) -> tuple[ControlKey, ...]:
    """Give what belongs to one control."""
    return tuple(entry for entry in CONTROL_KEYS if entry.where == where)
