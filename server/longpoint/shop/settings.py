"""What the machine that runs a shop's server may set, as environment variables."""

import os

ROOM = 2 * 1024**3


def limits_address() -> str:
    """Where tries that fail are counted: several processes share one by its address."""
    return os.environ.get("LONGPOINT_LIMITS") or "memory://"


def public_address() -> str:
    """Where people reach the server, without a slash at its end; empty if it is not set."""
    return os.environ.get("LONGPOINT_ADDRESS", "").rstrip("/")


def proxies() -> int:
    """How many web servers stand before this one and say for whom they ask."""
    number = os.environ.get("LONGPOINT_PROXIES", "")
    return int(number) if number.isascii() and number.isdigit() else 0


def room() -> int:
    """How many bytes the documents begun by one person may take."""
    number = os.environ.get("LONGPOINT_ROOM", "")
    return int(number) if number.isascii() and number.isdigit() else ROOM
