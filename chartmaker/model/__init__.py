"""What things are: lots, readings, palettes, bands, hats and designs, as frozen values with their own rules.

No science, no files and no window here: whoever holds one of these values may rely on its rules, and on no more.
"""
