"""Paper: what is printed, where it stands, and the drawing of it.

ReportLab is used here alone; every number comes from the appraisal.
"""
