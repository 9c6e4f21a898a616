"""What the eye sees: readings to CIELAB, differences between shades, spread, and colours for screens.

Pure functions on arrays and frozen results; nothing here knows of charts, yarn or baths.
"""
