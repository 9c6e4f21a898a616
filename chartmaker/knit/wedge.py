"""One section of a crown: which of its stitches a decreasing round takes together, and how wide it gets thereby."""

from chartmaker.model.stitches import Shaping

SINGLE, CENTRED, PAIRED = "single", "centred", "paired"
DECREASES = (SINGLE, CENTRED, PAIRED)
"""One k2tog at the section's left edge; a centred double on its middle; ssk at its right edge and k2tog at its left."""


def takes(decrease: str) -> int:
    """Give the stitches that a decreasing round takes of a section, as long as there are enough."""
    return 1 if decrease == SINGLE else 2


def narrowed(width: int, decrease: str) -> bytes:
    """Give the shaping of the round that makes a section of `width` stitches narrower.

    With one decrease, the stitches stand above each other from the section's right edge. A centred double stands on
    the middle of an odd section, and half a stitch to the right of it in an even one; the stitches between two such
    spines have a middle then. Leaning pairs stand at the edges of an odd section; in an even one a spoke of one
    stitch, the first, stands between the sections, so that here too a stitch is in the middle of the pair, and those
    between the pair stand above each other. Three stitches become one by a centred double, and two by a lone k2tog:
    that is where an even section leaves its odd decrease.
    Raises ValueError for a section of one stitch.
    """
    if width < 2:
        raise ValueError("a section of one stitch cannot be made narrower")
    if width == 2 or decrease == SINGLE:
        return _plain(width - 2) + bytes([Shaping.K2TOG])
    if decrease == CENTRED:
        return _centred(width)
    spoke = _plain(1 - width % 2)
    panel = width - len(spoke)
    if panel == 3:
        return spoke + _centred(panel)
    return spoke + bytes([Shaping.SSK]) + _plain(panel - 4) + bytes([Shaping.K2TOG])


def widths(width: int, decrease: str) -> list[int]:
    """Give the widths that a section goes through, from `width` down to one stitch."""
    found = [width]
    while found[-1] > 1:
        found.append(max(1, found[-1] - takes(decrease)))
    return found


def _centred(width: int) -> bytes:
    right = (width - 3) // 2
    return _plain(right) + bytes([Shaping.CENTRED]) + _plain(width - 3 - right)


def _plain(count: int) -> bytes:
    return bytes([Shaping.PLAIN]) * count
