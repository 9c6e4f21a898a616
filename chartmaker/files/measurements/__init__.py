"""Measurement files, one module a grammar: CGATS.17 / ISO 28178 text, CxF3 / ISO 17972 XML, CSV, and typed lines.

They become `Measured` samples and notes on what was assumed; which lot a sample belongs to is `model.taking`'s to say.
"""
