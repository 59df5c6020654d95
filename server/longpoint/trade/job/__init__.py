"""A customer's job: what was said, joined. Everything else is worked out again from it.

`document` reads and checks one, `carrying` takes numbers from question to question, `working`
answers its questions in order, and `buying`, `cutting_list` and `marking` make the three sheets.
"""
