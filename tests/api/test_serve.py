"""`longpoint serve`, as a person starts it."""

import json
import os
import re
import socket
import subprocess
import sys
import urllib.error
import urllib.request

import pytest

from longpoint import cli, front


def test_it_answers_over_http(address: str) -> None:
    with urllib.request.urlopen(address + "/api/tools") as response:
        assert response.headers.get_content_type() == "application/json"
        assert json.load(response)["places"]


def test_a_megabyte_over_http(address: str) -> None:
    """RFC 9110, 15.5.14, and in JSON: the server in front must not answer in its own words."""
    request = urllib.request.Request(
        address + "/api/tools/mitered-frame",
        data=b'{"width": "' + b"9" * 1_000_000 + b'"}',
        headers={"Content-Type": "application/json"},
    )
    with pytest.raises(urllib.error.HTTPError) as refused:
        urllib.request.urlopen(request)
    assert refused.value.code == 413
    assert refused.value.headers.get_content_type() == "application/json"
    refused.value.close()


def run(*arguments: str) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "longpoint.cli", *arguments]
    return subprocess.run(command, capture_output=True, text=True, check=False, timeout=60)


def test_a_port_that_is_taken() -> None:
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        taken.listen()
        port = str(taken.getsockname()[1])
        told = run("serve", "--port", port)
    assert told.returncode == 1
    assert port in told.stderr
    assert "Traceback" not in told.stderr


@pytest.mark.parametrize("port", ["abc", "-1", "70000", "٣", ""])
def test_a_port_that_is_none(port: str) -> None:
    """TCP ports are 0 to 65535: RFC 9293, 3.1."""
    told = run("serve", f"--port={port}")
    assert told.returncode == 2
    assert "65535" in told.stderr
    assert "Traceback" not in told.stderr


@pytest.mark.parametrize("level", ["error", "info"])
def test_the_log_tells_nothing_below_its_level_nor_of_each_request_that_waits(level: str) -> None:
    script = (
        "import logging; from longpoint.log import begin_log; begin_log()\n"
        "for name in ('waitress', 'waitress.queue'): logging.getLogger(name).warning(name)"
    )
    environment = os.environ | {"LONGPOINT_LOG": level}
    told = subprocess.run(
        [sys.executable, "-c", script], env=environment, capture_output=True, text=True, check=True
    )
    names = [json.loads(line)["from"] for line in told.stderr.splitlines()]
    assert names == {"error": [], "info": ["waitress"]}[level]


def test_it_says_that_other_devices_need_https() -> None:
    """Service workers exist in secure contexts only: W3C Secure Contexts, 3.1."""
    assert re.search(r"\bHTTPS\b", cli.NEEDS_HTTPS)


def test_without_a_front_end(
    monkeypatch: pytest.MonkeyPatch, tmp_path: object, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(front, "STATIC", tmp_path)
    assert cli.main(["serve", "--port", "0"]) == 1
    assert "not built" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("name", "said"),
    [
        ("LONGPOINT_PROXIES", "one"),
        ("LONGPOINT_ROOM", "2 GB"),
        ("LONGPOINT_WORKERS", "-1"),
        ("LONGPOINT_LOG", "loud"),
        ("LONGPOINT_LIMITS", "nowhere"),
        ("LONGPOINT_LIMITS", "redis://[:::1"),
        ("LONGPOINT_DATABASE", "nowhere"),
    ],
)
def test_a_setting_that_is_none(
    name: str, said: str, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """It is not passed over: without its word for the proxies everybody would be one address."""
    monkeypatch.setenv(name, said)
    assert cli.main(["serve", "--port", "0"]) == 1
    assert capsys.readouterr().err.startswith(name)
