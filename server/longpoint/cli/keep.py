"""`longpoint backup` and `longpoint restore`."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from longpoint.settings import database_address
from longpoint.shop import backup
from longpoint.shop.database import Database, NotOpened

from . import NotDone


def database() -> Database:
    """Return the shop's database."""
    try:
        return Database(database_address())
    except NotOpened as refused:
        raise NotDone(str(refused)) from refused


@contextmanager
def opened() -> Iterator[Database]:
    """Give the shop's database, and close it in the end."""
    shop = database()
    try:
        yield shop
    except backup.NotDone as refused:
        raise NotDone(str(refused)) from refused
    finally:
        shop.close()


def keep(file: Path) -> None:
    """Write all that the shop's server keeps to a file."""
    with opened() as shop:
        held = backup.back_up(shop, file)
    print(f"Wrote {file}: {held}. Keep it on another machine.")


def put_back(file: Path, is_replacing: bool) -> None:
    """Put a backup in the place of what is kept."""
    with opened() as shop:
        held = backup.restore(shop, file, is_replacing)
    print(f"The shop's server keeps what {file} held: {held}.")
    print("If it runs now, start it again.")
