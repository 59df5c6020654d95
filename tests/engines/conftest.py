"""The engines' tests."""

# Another Python runs it, which has what it imports.
collect_ignore = ["webkit_window.py"]
