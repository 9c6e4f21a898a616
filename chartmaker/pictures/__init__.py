"""Arrays of pixels made from an appraisal: the fabric flat, in grey, knitted, and worn.

No Qt and no paper here.
"""
