"""What may go wrong: one rule a module, each a function from facts to findings.

Checks compute no fact of their own, never raise on a bad design and never print.
"""
