"""Chartmaker: from measured dye lots and a chart to a stranded hat that reads, fits and has yarn enough.

The layers and the words are described in `DEVELOPERS.md`; imports point down that list and never up.
"""

__version__ = "0.1.0"
