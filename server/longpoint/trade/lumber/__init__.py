"""Lumber in numbers, for every tool that buys, rips or glues it.

`strips` is the rule by which parts wider or thicker than the stock are glued up; `board_feet`
how the yard counts. Both take inches and know no form.
"""
