"""Names that people sign in with: how they are compared, and which will do."""

import unicodedata

MOST = 80
MOST_COMPARED = 160
"""One letter may be many once it is compared."""


def key_of(name: str) -> str:
    """Return a name as it is compared: letters that look alike are alike."""
    return " ".join(unicodedata.normalize("NFKC", name).casefold().split())


def fault_of(name: str) -> str:
    """Return why a name won't do, in words; empty where it will."""
    plain = " ".join(name.split())
    if not plain:
        return "Type your name."
    if len(plain) > MOST or len(key_of(name)) > MOST_COMPARED:
        return f"Use at most {MOST} characters."
    # Databases don't take them all, and nobody would see them.
    if not plain.isprintable():
        return "Use letters only: something here can't be seen."
    return ""
