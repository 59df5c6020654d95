"""A new version: offered, never forced; nothing typed is lost; a broken one never takes over."""

import os
import shutil
import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.phone.app import App
from tests.phone.plain import Host, hosted

TOP = Path(__file__).parent.parent.parent
WEB = TOP / "web"
STATIC = TOP / "server" / "longpoint" / "static"


def built_anew(folder: Path) -> Path:
    """Build the front end as a version of its own."""
    command = ["node", "build/build.mjs", "--out", str(folder)]
    environment = os.environ | {"VERSION_NOTE": "another"}
    subprocess.run(command, cwd=WEB, check=True, capture_output=True, env=environment)
    return folder


@pytest.fixture(scope="module")
def versions(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, Path]:
    folder = tmp_path_factory.mktemp("versions")
    return STATIC, built_anew(folder / "another")


@pytest.fixture
def host(versions: tuple[Path, Path], tmp_path: Path) -> Iterator[Host]:
    """A host that starts with the first version."""
    folder = tmp_path / "site"
    shutil.copytree(versions[0], folder)
    with hosted(folder) as host:
        yield host


def put(folder: Path, host: Host) -> None:
    """Put another version in the host's folder, as an upload would."""
    shutil.rmtree(host.folder)
    shutil.copytree(folder, host.folder)


def version(page: Page) -> str:
    """Return the name of the cache that the page is served from: its version."""
    found = page.evaluate("caches.keys().then((names) => names.sort().join())")
    assert isinstance(found, str)
    return found


def test_a_new_version_waits_until_it_is_wanted(
    page: Page, host: Host, versions: tuple[Path, Path]
) -> None:
    app = App(page, host.address)
    app.install()
    app.open("#/saw/mitered-frame")
    app.enter("Opening width", "31 1/2")
    first = version(page)
    put(versions[1], host)
    page.reload()
    expect(page.get_by_text("New version ready")).to_be_visible()
    expect(app.field("Opening width")).to_have_value("31 1/2")
    app.enter("Opening height", "abc")
    with page.expect_event("load"):
        page.get_by_role("button", name="Reload").click()
    expect(app.field("Opening width")).to_have_value("31 1/2")
    expect(app.field("Opening height")).to_have_value("abc")
    assert version(page) != first
    assert page.evaluate("navigator.serviceWorker.ready.then((r) => r.waiting === null)")
    expect(page.get_by_text("New version ready")).to_be_hidden()
    host.stop()
    page.reload()
    expect(app.field("Opening height")).to_have_value("abc")
    host.start()


def test_a_broken_version_never_takes_over(
    page: Page, host: Host, versions: tuple[Path, Path]
) -> None:
    app = App(page, host.address)
    app.install()
    first = version(page)
    put(versions[1], host)
    host.refuse.add("/")
    app.open("#/saw/mitered-frame")
    page.evaluate(
        """async () => {
          const registration = await navigator.serviceWorker.ready;
          await registration.update().catch(() => undefined);
          const worker = registration.installing;
          if (worker) await new Promise((done) => (worker.onstatechange = done));
        }"""
    )
    assert page.evaluate("navigator.serviceWorker.ready.then((r) => r.waiting === null)")
    assert first in version(page)
    host.stop()
    page.reload()
    app.put("#field-fit", "inside")
    app.enter("Opening width", "30")
    app.enter("Opening height", "40")
    app.enter("Trim width", "2")
    app.expect_answer("30")
    host.start()
