"""Designs, palettes and measurement files on disk: reading, writing, and saving that cannot lose the last good copy.

The only place that knows TOML; what things mean is the model's.
"""
