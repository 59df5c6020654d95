"""Lumber by its numbers, for every tool that buys, rips or glues it. No module knows a form.

`strips` is the rule by which parts wider or thicker than the stock are glued up; `board_feet`
how the yard counts; `labels` reads what a yard writes on its stock, `listed` says what the
published tables have under a label, and `common` which labels yards carry.
"""
