"""The wheel, built and installed as pip would anywhere else."""

import json
import os
import subprocess
import sys
import urllib.request
import venv
from pathlib import Path

from tests.serving import served

ROOT = Path(__file__).parent.parent.parent


def pip(*arguments: str, **environment: str) -> None:
    command = [sys.executable, "-m", "pip", "-q", "--disable-pip-version-check", *arguments]
    subprocess.run(command, check=True, cwd=ROOT, env=os.environ | environment)


def test_an_installed_wheel_serves_the_app(tmp_path: Path) -> None:
    """A wheel without its front end would start and stay blank."""
    # The front end was built just now by what made this environment; the wheel takes that one.
    wheels = tmp_path / "wheels"
    pip("wheel", "--no-deps", "-w", str(wheels), ".", LONGPOINT_WEB="keep")
    (wheel,) = wheels.glob("longpoint-*.whl")
    venv.create(tmp_path / "venv")
    pip("--python", str(tmp_path / "venv"), "install", "--no-compile", str(wheel))
    command = [str(tmp_path / "venv" / "bin" / "longpoint"), "serve", "--port", "0"]
    with served(command) as address:
        with urllib.request.urlopen(address + "/") as page:
            assert "<title>Longpoint</title>" in page.read().decode()
        with urllib.request.urlopen(address + "/api/tools") as shelf:
            assert json.load(shelf)["places"]
