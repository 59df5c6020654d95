"""Rectangles out of sheets by cuts that run right through, in whole numbers throughout.

`problem` says what is asked, `tree` and `steps` what is answered, `search` finds it step by
step; `greedy`, `build_up` and `bounds` are its means.
"""
