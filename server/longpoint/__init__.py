"""Longpoint: the right number, where to mark it and which way the saw goes."""
