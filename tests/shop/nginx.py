"""Debian's nginx as `server/deploy/nginx.conf` sets it up, on ports of the tests' own."""

import os
import shutil
import socket
import subprocess
from collections.abc import Iterator, Sequence
from contextlib import ExitStack, contextmanager
from pathlib import Path

CONF = Path(__file__).parents[2] / "server" / "deploy" / "nginx.conf"
NAME = "localhost"

# What Debian's own nginx.conf is to the site, with every folder in the tests' own.
AROUND = """
{user}pid {folder}/pid;
error_log {folder}/error.log;
events {{ }}
http {{
    include /etc/nginx/mime.types;
    gzip on;
    client_body_temp_path {folder}/body;
    proxy_temp_path {folder}/proxy;
    fastcgi_temp_path {folder}/fastcgi;
    uwsgi_temp_path {folder}/uwsgi;
    scgi_temp_path {folder}/scgi;
    include {folder}/site;
}}
"""


def program() -> str | None:
    """Return nginx, which Debian keeps where only root looks; None where there is none."""
    return shutil.which("nginx", path=f"{os.environ['PATH']}:/usr/sbin:/sbin")


@contextmanager
def in_front_of(addresses: Sequence[str], folder: Path) -> Iterator[tuple[int, int]]:
    """Run nginx before servers; give its ports for HTTPS and HTTP. `certificate` is its own."""
    nginx = program()
    assert nginx, "no nginx here"
    secure, plain = free_ports()
    make_certificate(folder)
    (folder / "site").write_text(site(addresses, folder, secure, plain))
    user = "user root;\n" if os.geteuid() == 0 else ""
    (folder / "conf").write_text(AROUND.format(user=user, folder=folder))
    command = [nginx, "-p", str(folder), "-c", str(folder / "conf")]
    # It goes into the background once it listens.
    subprocess.run(command, check=True, capture_output=True)
    try:
        yield secure, plain
    finally:
        subprocess.run([*command, "-s", "stop"], check=True, capture_output=True)


def site(addresses: Sequence[str], folder: Path, secure: int, plain: int) -> str:
    """Return the file that is deployed, with names and ports of the tests in their places."""
    servers = "\n".join(f"server {each.removeprefix('http://')};" for each in addresses)
    text = CONF.read_text(encoding="utf-8")
    for written, meant in (
        ("https://shop.example.com", f"https://{NAME}:{secure}"),
        ("shop.example.com", NAME),
        ("server 127.0.0.1:8000;", servers),
        ("listen 80;", f"listen 127.0.0.1:{plain};"),
        ("listen 443 ", f"listen 127.0.0.1:{secure} "),
        ("/etc/ssl/longpoint/fullchain.pem", str(certificate(folder))),
        ("/etc/ssl/longpoint/privkey.pem", str(folder / "key.pem")),
    ):
        assert written in text, written
        text = text.replace(written, meant)
    return text


def free_ports() -> tuple[int, int]:
    """Return two ports that nobody uses."""
    with ExitStack() as opened:
        sockets = [opened.enter_context(socket.socket()) for _ in range(2)]
        for each in sockets:
            each.bind(("127.0.0.1", 0))
        one, other = [each.getsockname()[1] for each in sockets]
    return one, other


def certificate(folder: Path) -> Path:
    """Return where the certificate lies, which is its own authority."""
    return folder / "certificate.pem"


def make_certificate(folder: Path) -> None:
    """Make a certificate for this machine."""
    subprocess.run(
        ["openssl", "req", "-x509", "-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:P-256",
         "-nodes", "-days", "2", "-subj", f"/CN={NAME}", "-addext", f"subjectAltName=DNS:{NAME}",
         "-keyout", folder / "key.pem", "-out", certificate(folder)],
        check=True, capture_output=True,
    )  # fmt: skip
