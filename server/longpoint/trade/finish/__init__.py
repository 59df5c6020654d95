"""Finishing in numbers: surfaces that are coated, what covers them."""
