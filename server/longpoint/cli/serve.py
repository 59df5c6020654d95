"""`longpoint serve`."""

from longpoint import front
from longpoint.app import create_app
from longpoint.log import begin_log, log_requests
from longpoint.server import make_server, run_until_told
from longpoint.settings import workers as number_of_workers
from longpoint.shop.database import Database
from longpoint.workers.pool import Workers

from . import NEEDS_HTTPS, NotDone
from .invite import invite_first_owner
from .keep import database


def serve(host: str, port: int, is_alone: bool) -> None:
    """Serve the app and its API; not alone, also what the shop keeps."""
    if not front.is_built():
        raise NotDone("The front end is not built: install Longpoint again with pip.")
    begin_log()
    shop = None if is_alone else database()
    workers = Workers(number_of_workers())
    try:
        _run(shop, workers, host, port)
    finally:
        workers.close()
        if shop:
            shop.close()


def _run(shop: Database | None, workers: Workers, host: str, port: int) -> None:
    server = _server(shop, workers, host, port)
    address = f"http://{_shown(host)}:{_listening(server)}"
    print(f"Longpoint is at {address}/", flush=True)
    print(NEEDS_HTTPS, flush=True)
    if shop:
        invite_first_owner(shop, address)
    run_until_told(server)


def _server(shop: Database | None, workers: Workers, host: str, port: int) -> object:
    app = create_app({"WORKERS": workers} | ({"SHOP": shop} if shop else {}))
    log_requests(app)
    try:
        return make_server(app, host, port, waiting=workers.places)
    except OSError as fault:
        words = f"Can't listen on {host} port {port} ({fault.strerror}): try another port."
    except ValueError:
        words = f"Can't listen on {host!r}: HOST is a name or an address of this machine."
    raise NotDone(words)


def _shown(host: str) -> str:
    if host in ("", "0.0.0.0", "::"):
        return "localhost"
    return f"[{host}]" if ":" in host else host


def _listening(server: object) -> int:
    # A name like localhost can stand for several sockets, which waitress then serves as one.
    listen = getattr(server, "effective_listen", None)
    return int(listen[0][1] if listen else server.effective_port)  # type: ignore[attr-defined]
