"""Cautions that several tools share, so that the same danger is told in the same words."""

SAW = (
    "Keep guards on and both hands clear of the blade's path; hold the piece to fence and table, "
    "never freehand. Let the blade stop before you reach for a small offcut."
)
TEST_CUT = (
    "Cut a test corner in scrap first: settings are arithmetic, walls and saw scales are not."
)
