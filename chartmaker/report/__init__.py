"""An appraisal told for scripts, as JSON, and for people, as text in a terminal.

Nothing is computed here: every figure is the appraisal's.
"""
