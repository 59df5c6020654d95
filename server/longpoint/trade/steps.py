"""The steps that a length can be shown to, and which of them a person chooses from."""

FINEST = 1000
STEPS = (8, 16, 32, 64, FINEST)
"""Steps a length can be shown to: parts of an inch, the finest one as a decimal."""

OFFERED = (
    (
        "in",
        "Inches, to",
        (
            ((8,), "1/8", "1/8"),
            ((16,), "1/16", "1/16"),
            ((32,), "1/32", "1/32"),
            ((64,), "1/64", "1/64"),
            ((FINEST,), "thousandths", "0.001"),
        ),
    ),
    (
        "mm",
        "Millimeters, to",
        (
            ((16, 8), "1", "1"),
            ((32,), "1/2", "1/2"),
            ((64,), "1/10", "0.1"),
            ((FINEST,), "1/100", "0.01"),
        ),
    ),
)
"""What a person can choose in each system: the steps a choice stands for, the first of which it
sets, its words and its short form."""
