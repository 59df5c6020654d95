"""Geometry that several tools share: it takes numbers and knows no form."""
