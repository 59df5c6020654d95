"""Cutting stock: which length out of which stick, in whole numbers throughout.

`problem` says what is asked, `plans` what is answered, `search` finds it step by step;
the others are its means, one subject each.
"""
