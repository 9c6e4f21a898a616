"""What the pot does: from yarn that is short to fibre, dyestuff, mordant and water for each bath.

Nothing here knows of charts.
"""
