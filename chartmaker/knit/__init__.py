"""What the needles do: rounds laid out through shaping, boundaries, floats, profile, and yarn used.

Pure functions of the model; nothing here knows of colour or of the pot.
"""
