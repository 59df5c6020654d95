"""Which way the saw goes, in the words that several tools share."""

FRAME_ENDS = (
    "Outer edge against the fence: for a left end swing the saw's handle to the right, for a "
    "right end to the left. The fence side keeps the long point."
)
