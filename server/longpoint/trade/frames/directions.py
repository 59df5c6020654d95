"""Which way the saw goes, in the words that several tools share."""

FRAME_ENDS = (
    "Outer edge against the fence: handle to the right for left ends, to the left for right "
    "ends. The fence side keeps the long point."
)
