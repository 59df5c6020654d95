"""The command `longpoint`: serve the app, write it out for another host, keep what a shop has.

A command's module is imported when it is chosen: the processes that compute import this too.
"""

import argparse
import signal
import sys
from collections.abc import Sequence
from pathlib import Path

from longpoint.settings import BadSetting

NEEDS_HTTPS = (
    "On this machine it works without a network too. A phone or any other device needs it over\n"
    "HTTPS for that: see 'On your phone' in README.md."
)


class NotDone(Exception):
    """A command can't be done; the message is for the person."""


def main(arguments: Sequence[str] | None = None) -> int:
    """Run `longpoint` and return its exit status: 0, or 1 with a sentence on stderr."""
    chosen = _parser().parse_args(arguments)
    try:
        chosen.run(chosen)
    except (NotDone, BadSetting) as refused:
        print(refused, file=sys.stderr)
        return 1
    return 0


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(prog="longpoint", description=__doc__)
    commands = parser.add_subparsers(dest="command", required=True)
    serve = commands.add_parser("serve", help="serve the app and its API")
    serve.add_argument("--host", default="127.0.0.1", help="address to listen on")
    serve.add_argument("--port", default=8000, type=_port, help="port to listen on; 0 picks one")
    serve.add_argument(
        "--alone", action="store_true", help="keep nothing here: each phone is for itself"
    )
    serve.set_defaults(run=_serve)
    writing = commands.add_parser("export", help="write the static site for an HTTPS host")
    writing.add_argument("folder", type=Path, metavar="DIR", help="a new or empty folder")
    writing.set_defaults(run=_export)
    keeping = commands.add_parser("backup", help="write all that the shop's server keeps to a file")
    keeping.add_argument("file", type=Path, metavar="FILE", help="a new file")
    keeping.set_defaults(run=_back_up)
    back = commands.add_parser("restore", help="put a backup in the place of what is kept")
    back.add_argument("file", type=Path, metavar="FILE", help="what backup wrote")
    back.add_argument("--replace", action="store_true", help="of a shop that is kept here now")
    back.set_defaults(run=_restore)
    inviting = commands.add_parser("invite", help="let an owner in who forgot the password")
    inviting.add_argument("name", nargs="?", default="", help="whose; without, someone new")
    inviting.set_defaults(run=_invite)
    return parser


def _port(text: str) -> int:
    if not (text.isascii() and text.isdigit() and int(text[:6]) <= 65535):
        raise argparse.ArgumentTypeError(f"{text!r} is not a port: use a number from 0 to 65535")
    return int(text)


def _serve(chosen: argparse.Namespace) -> None:
    # Until the server runs; a container's first process would not hear of it at all.
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(0))
    from .serve import serve

    serve(chosen.host, chosen.port, chosen.alone)


def _export(chosen: argparse.Namespace) -> None:
    from .write import write

    write(chosen.folder)


def _back_up(chosen: argparse.Namespace) -> None:
    from .keep import keep

    keep(chosen.file)


def _restore(chosen: argparse.Namespace) -> None:
    from .keep import put_back

    put_back(chosen.file, chosen.replace)


def _invite(chosen: argparse.Namespace) -> None:
    from .invite import invite

    invite(chosen.name)
