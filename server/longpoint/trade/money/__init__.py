"""Money in exact numbers: cents and fractions of them, never floats that drift."""
