"""Molding that runs along walls and round corners: its pieces and ends, seen from above.

It takes numbers: walls, the molding's reach into the room, how corners are joined.
"""
