"""Passwords: what will do for one, and keeping them by Argon2id.

The rules are those of NIST SP 800-63B as read from memory: length, nothing about its letters, none
of the commonest, and the same letters typed on two machines are the same. OWASP's least parameters
for Argon2id (from memory: 19 MiB, 2 passes) are below the library's own.
"""

import unicodedata

from argon2 import PasswordHasher
from argon2.exceptions import InvalidHashError, VerificationError

from .names import key_of

LEAST = 10
MOST = 200
"""Bytes; more would only be work for the server."""
COMMONEST = frozenset(
    """
    1234567890 0123456789 12345678910 1234567891 0987654321 9876543210 password12 password123
    password1234 passw0rd123 qwertyuiop qwerty1234 qwerty12345 1q2w3e4r5t iloveyou12 iloveyou123
    letmein123 welcome123 carpenter1 abcdefghij abc1234567 basketball football12 sunshine12
    """.split()  # noqa: SIM905 words stand as words
)

_hasher = PasswordHasher()
_NOBODY = (
    f"$argon2id$v=19$m={_hasher.memory_cost},t={_hasher.time_cost},p={_hasher.parallelism}"
    f"${'A' * 22}${'A' * 43}"
)
"""Written, not worked out: no password comes to it, and to find that out is the usual work."""


def fault_of(password: str, name: str) -> str:
    """Return why a password won't do, in words; empty where it will."""
    if len(password) < LEAST:
        return f"Use at least {LEAST} characters: a few words are easy to keep in mind."
    if len(password.encode()) > MOST:
        return f"This is too long: use at most {MOST} letters, fewer with accents."
    folded = password.casefold()
    if folded in COMMONEST or len(set(folded)) < 4:
        return "Many people use this one: take another."
    if key_of(password) == key_of(name):
        return "This is your name: take another."
    return ""


def kept(password: str) -> str:
    """Return what is kept of a password."""
    return _hasher.hash(_typed(password))


def is_right(password: str, known: str | None) -> bool:
    """Tell whether a password is the one that was kept; for nobody's the work is the same."""
    try:
        return _hasher.verify(known or _NOBODY, _typed(password)) and known is not None
    except (VerificationError, InvalidHashError):
        return False


def is_outdated(known: str) -> bool:
    """Tell whether a password was kept by weaker rules than today's."""
    return _hasher.check_needs_rehash(known)


def _typed(password: str) -> str:
    return unicodedata.normalize("NFKC", password)
