"""The window.

Qt is used here alone; everything that it shows comes from the appraisal.
"""
