"""The browser's storage as a test reads and writes it, past the app."""

import json
import subprocess
from collections.abc import Callable
from functools import cache
from typing import Any

from playwright.sync_api import Page

from tests.cases import KEPT
from tests.store.modules import WEB

_READ = """async () => {
  const done = (request) => new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const database = await done(indexedDB.open("longpoint"));
  const stores = {};
  for (const name of database.objectStoreNames) {
    stores[name] = await done(database.transaction(name).objectStore(name).getAll());
  }
  database.close();
  return { version: database.version, stores };
}"""

_CREATE = """async ({ version, stores, left }) => {
  const opening = indexedDB.open("longpoint", version);
  opening.onupgradeneeded = () => {
    for (const [name, kept] of Object.entries(stores)) {
      const { keyPath, autoIncrement, indexes, keys, values } = kept;
      const store = opening.result.createObjectStore(name, { keyPath, autoIncrement });
      for (const index of indexes) store.createIndex(index.name, index.keyPath);
      values.forEach((value, at) => (keyPath ? store.add(value) : store.add(value, keys[at])));
    }
  };
  await new Promise((resolve, reject) => {
    opening.onsuccess = resolve;
    opening.onerror = () => reject(opening.error);
  });
  opening.result.close();
  if (left) localStorage.setItem(left.key, left.value);
}"""

_PUT = """async (records) => {
  const opening = indexedDB.open("longpoint");
  const database = await new Promise((resolve, reject) => {
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(opening.error);
  });
  const tx = database.transaction("documents", "readwrite");
  for (const record of records) tx.objectStore("documents").put(record);
  await new Promise((resolve, reject) => {
    tx.oncomplete = resolve;
    tx.onabort = () => reject(tx.error);
  });
  database.close();
}"""

# A page that goes leaves what it has not written yet; what is written since it takes away.
_WRITTEN = """() => {
  dispatchEvent(new Event("pagehide"));
  return !Object.keys(localStorage).some((name) => name.startsWith("longpoint unwritten"));
}"""

_MADE = """async () => {
  const found = await indexedDB.databases();
  if (!found.some(({ name }) => name === "longpoint made")) return {};
  const done = (request) => new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const database = await done(indexedDB.open("longpoint made"));
  const made = await done(database.transaction("made").objectStore("made").getAll());
  database.close();
  return Object.fromEntries(made.map((each) => [each.id, each]));
}"""

_PUT_MADE = """async (record) => {
  const opening = indexedDB.open("longpoint made");
  await new Promise((resolve) => (opening.onsuccess = resolve));
  const tx = opening.result.transaction("made", "readwrite");
  tx.objectStore("made").put(record);
  await new Promise((resolve) => (tx.oncomplete = resolve));
  opening.result.close();
}"""


def frozen(name: str) -> Any:
    """Return what an older version kept, as it was frozen."""
    return json.loads((KEPT / name).read_text(encoding="utf-8"))


def beside_the_app(page: Page, address: str) -> None:
    """Open a page of the app's origin on which the app does not run."""
    page.goto(f"{address}/manifest.webmanifest")


def create_database(page: Page, address: str, dump: dict[str, Any]) -> None:
    """Make the database as an older version left it, before the app ever runs here."""
    beside_the_app(page, address)
    page.evaluate(_CREATE, dump)


def put_documents(page: Page, address: str, *records: dict[str, Any]) -> None:
    """Put records into the app's database as they are; the page then shows no app."""
    beside_the_app(page, address)
    page.evaluate(_PUT, list(records))


def stores(page: Page) -> dict[str, list[dict[str, Any]]]:
    """Return all that is in the database, by store."""
    found: dict[str, Any] = page.evaluate(_READ)
    kept: dict[str, list[dict[str, Any]]] = found["stores"]
    return kept


def by_key(records: list[dict[str, Any]]) -> dict[tuple[str, str], dict[str, Any]]:
    return {(each["kind"], each["id"]): each for each in records}


def kept_documents(page: Page) -> dict[tuple[str, str], dict[str, Any]]:
    """Return every document in the database by kind and id."""
    return by_key(stores(page)["documents"])


def is_written(page: Page) -> bool:
    """Tell whether all that was changed on the page is in the database."""
    found: bool = page.evaluate(_WRITTEN)
    return found


def made(page: Page) -> dict[str, dict[str, Any]]:
    """Return what is kept of what was made of documents, by their id."""
    found: dict[str, dict[str, Any]] = page.evaluate(_MADE)
    return found


def put_made(page: Page, record: dict[str, Any]) -> None:
    """Put a record into what is kept of what was made."""
    page.evaluate(_PUT_MADE, record)


def wait_until_made(page: Page, of: str) -> dict[str, Any]:
    """Wait until something made of a document is kept, and return it."""
    with page.expect_event("console", lambda said: said.text == f"made {of}"):
        page.evaluate(
            f"""(of) => void (async () => {{
              const look = {_MADE};
              while (!(of in (await look()))) await new Promise(requestAnimationFrame);
              console.log(`made ${{of}}`);
            }})()""",
            of,
        )
    return made(page)[of]


def history(page: Page) -> list[dict[str, Any]]:
    """Return every change in the history."""
    return stores(page)["history"]


_BUNDLE = """
import { bundle } from "./build/bundles.mjs";
console.log(await bundle("../tests/store/probe.ts", { format: "iife" }));
"""


@cache
def _store() -> str:
    command = ["node", "--input-type=module", "-e", _BUNDLE]
    return subprocess.run(command, cwd=WEB, check=True, capture_output=True, text=True).stdout


def run_store(page: Page, address: str) -> None:
    """Load the store alone, as ``store``, in a page of the app's origin."""
    beside_the_app(page, address)
    page.evaluate(_store())


def wait_until(page: Page, is_so: Callable[[], bool], what: str) -> None:
    """Wait for what no screen shows, as long as `expect` waits for what one does."""
    for _ in range(600):
        if is_so():
            return
        page.wait_for_timeout(50)
    raise AssertionError(f"not within 30 s: {what}")
