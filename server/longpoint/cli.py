"""The command `longpoint`: serve the app, write it out for another host, keep what a shop has."""

import argparse
import sys
from collections.abc import Sequence
from pathlib import Path

from . import front
from .app import create_app
from .export import NotExported, export
from .server import make_server
from .shop import people
from .shop.backup import NotDone, back_up, restore
from .shop.database import Database, NotOpened, default_address
from .shop.settings import public_address
from .shop.signed_in import OWNER

NEEDS_HTTPS = (
    "On this machine it works without a network too. A phone or any other device needs it over\n"
    "HTTPS for that: see 'On your phone' in README.md."
)


def main(arguments: Sequence[str] | None = None) -> int:
    """Run `longpoint` and return its exit status: 0, or 1 with a sentence on stderr."""
    chosen = _parser().parse_args(arguments)
    try:
        if chosen.command == "export":
            return _export(chosen.folder)
        if chosen.command in ("backup", "restore"):
            return _keep(chosen)
        if chosen.command == "invite":
            return _invite(chosen.name)
        return _serve(chosen.host, chosen.port, chosen.alone)
    except (NotDone, NotExported, NotOpened) as refused:
        return _fail(str(refused))


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(prog="longpoint", description=__doc__)
    commands = parser.add_subparsers(dest="command", required=True)
    serve = commands.add_parser("serve", help="serve the app and its API")
    serve.add_argument("--host", default="127.0.0.1", help="address to listen on")
    serve.add_argument("--port", default=8000, type=_port, help="port to listen on; 0 picks one")
    serve.add_argument(
        "--alone", action="store_true", help="keep nothing here: each phone is for itself"
    )
    writing = commands.add_parser("export", help="write the static site for an HTTPS host")
    writing.add_argument("folder", type=Path, metavar="DIR", help="a new or empty folder")
    keeping = commands.add_parser("backup", help="write all that the shop's server keeps to a file")
    keeping.add_argument("file", type=Path, metavar="FILE", help="a new file")
    back = commands.add_parser("restore", help="put a backup in the place of what is kept")
    back.add_argument("file", type=Path, metavar="FILE", help="what backup wrote")
    back.add_argument("--replace", action="store_true", help="of a shop that is kept here now")
    inviting = commands.add_parser("invite", help="let an owner in who forgot the password")
    inviting.add_argument("name", nargs="?", default="", help="whose; without, someone new")
    return parser


def _port(text: str) -> int:
    if not (text.isascii() and text.isdigit() and int(text[:6]) <= 65535):
        raise argparse.ArgumentTypeError(f"{text!r} is not a port: use a number from 0 to 65535")
    return int(text)


def _serve(host: str, port: int, alone: bool) -> int:
    if not front.is_built():
        return _fail("The front end is not built: install Longpoint again with pip.")
    shop = None if alone else Database(default_address())
    try:
        server = make_server(create_app({"SHOP": shop} if shop else {}), host, port)
    except OSError as fault:
        return _fail(f"Can't listen on {host} port {port} ({fault.strerror}): try another port.")
    except ValueError:
        return _fail(f"Can't listen on {host!r}: HOST is a name or an address of this machine.")
    address = f"http://{_shown(host)}:{_listening(server)}"
    print(f"Longpoint is at {address}/", flush=True)
    print(NEEDS_HTTPS, flush=True)
    if shop:
        _invite_first_owner(shop, address)
    server.run()
    return 0


def _invite_first_owner(shop: Database, address: str) -> None:
    with shop.session() as session:
        token = people.invite_first_owner(session)
    if token:
        print("This shop's server has no owner yet. Become the owner, once, at", flush=True)
        print(f"  {public_address() or address}/join/{token}", flush=True)


def _invite(name: str) -> int:
    shop = Database(default_address())
    try:
        with shop.session() as session:
            person = people.named(session, name) if name else None
            if name and person is None:
                return _fail(f"Nobody here is called {name}.")
            role = person.role if person else OWNER
            token = people.invite(session, role, person_id=person.id if person else None)
    finally:
        shop.close()
    print("For a new password:" if person else "For a new owner:")
    print(f"  {public_address() or 'http://127.0.0.1:8000'}/join/{token}")
    return 0


def _shown(host: str) -> str:
    if host in ("", "0.0.0.0", "::"):
        return "localhost"
    return f"[{host}]" if ":" in host else host


def _listening(server: object) -> int:
    # A name like localhost can stand for several sockets, which waitress then serves as one.
    listen = getattr(server, "effective_listen", None)
    return int(listen[0][1] if listen else server.effective_port)  # type: ignore[attr-defined]


def _export(folder: Path) -> int:
    names = export(folder)
    print(f"Wrote {len(names)} files to {folder}: serve that folder over HTTPS.")
    return 0


def _keep(chosen: argparse.Namespace) -> int:
    shop = Database(default_address())
    try:
        if chosen.command == "backup":
            back_up(shop, chosen.file)
            print(f"Wrote {chosen.file}: keep it on another machine.")
        else:
            restore(shop, chosen.file, chosen.replace)
            print(f"The shop's server keeps what {chosen.file} held.")
    finally:
        shop.close()
    return 0


def _fail(sentence: str) -> int:
    print(sentence, file=sys.stderr)
    return 1


if __name__ == "__main__":
    sys.exit(main())
