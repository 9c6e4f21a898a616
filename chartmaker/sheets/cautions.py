"""The cautions as the sheets print them; they live beside the bath plan, so that page and paper have the same."""

from chartmaker.dye.cautions import DEFERS, GENERAL, PARTICULAR, Caution, cautions_for

__all__ = ["DEFERS", "GENERAL", "PARTICULAR", "Caution", "cautions_for"]
