"""Any design with any block in it, and pieces as text pictures."""

from hypothesis import strategies as st
from hypothesis.strategies import DrawFn, composite

from chartmaker.knit.outline import chart_offsets
from chartmaker.model.block import Block, drawing_of
from chartmaker.model.clip import Clip, clip_to_text
from chartmaker.model.design import Design
from tests.strategies import designs


def written(clip: Clip) -> list[str]:
    """Give the cells of a piece as text, the top round first."""
    return [line.split("|")[1].strip() for line in clip_to_text(clip).splitlines()]


@composite
def blocks(draw: DrawFn, design: Design) -> Block:
    """Any block of a design."""
    band = draw(st.integers(0, len(design.bands) - 1))
    rounds = design.bands[band].rounds
    first = draw(st.integers(0, len(rounds) - 1))
    width = drawing_of(design.bands[band], chart_offsets).width
    return Block(
        band=band,
        first=first,
        last=draw(st.integers(first, len(rounds) - 1)),
        column=draw(st.integers(0, width - 1)),
        width=draw(st.integers(1, width)),
    )


@composite
def designs_with_block(draw: DrawFn, *, shaped: bool = True, even: bool = False) -> tuple[Design, Block]:
    """A small design and a block of it."""
    design = draw(designs(shaped=shaped, even=even))
    return design, draw(blocks(design))
