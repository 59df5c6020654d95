"""`longpoint invite`, and the first owner's address."""

from longpoint.settings import public_address
from longpoint.shop import people
from longpoint.shop.database import Database
from longpoint.shop.signed_in import OWNER

from . import NotDone
from .keep import opened


def invite_first_owner(shop: Database, address: str) -> None:
    """Print the address that makes the owner, where the shop has none."""
    with shop.session() as session:
        token = people.invite_first_owner(session)
    if token:
        print("This shop's server has no owner yet. Become the owner, once, at", flush=True)
        print(f"  {public_address() or address}/join/{token}", flush=True)


def invite(name: str) -> None:
    """Print the address of a new password for a person, or without a name of a new owner."""
    with opened() as shop, shop.session() as session:
        person = people.named(session, name) if name else None
        if name and person is None:
            raise NotDone(f"Nobody here is called {name}.")
        role = person.role if person else OWNER
        token = people.invite(session, role, person_id=person.id if person else None)
    print("For a new password:" if person else "For a new owner:")
    print(f"  {public_address() or 'http://127.0.0.1:8000'}/join/{token}")
