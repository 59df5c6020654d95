"""What the core last made of a job stands before the core has started, and for nothing else.

The job is that of the sheets' tests: a frame cut of pieces 40, 40, 30 and 30 long, by hand.
"""

import json
from typing import Any

from playwright.sync_api import expect

from tests.phone.app import FRAMES, App
from tests.phone.storage import kept_documents, made, put_documents, put_made, wait_until_made
from tests.phone.test_faults import said
from tests.phone.test_job_sheets import FRAME, begin, box, expect_ticked, job, record, row, sheet

CORE = "**/*.wasm"


def hold_core(app: App) -> None:
    """The interpreter never comes: nothing is worked out."""
    app.page.route(CORE, lambda _: None)


def expect_lengths(app: App, *lengths: str) -> None:
    expect(app.page.locator(".cutlength .unseen")).to_have_text(lengths)


def expect_nothing_recalled(app: App) -> None:
    """The job is open, and no sheet stands."""
    app.open("#/saw")
    expect(app.page.locator(".jobband")).to_contain_text("working it out…")
    made(app.page)  # read after the app has read it
    app.page.evaluate(FRAMES)
    expect(app.page.locator(".tickrow")).to_have_count(0)
    expect(app.page.locator(".jobband")).to_contain_text("working it out…")


def settings(**changed: Any) -> dict[str, Any]:
    kept = {"kind": "settings", "id": "settings", "units": "in", "schema": 1, "step": 0}
    body = {"units": "in", "step": 16, "place": "saw", "job": "boot"}
    return kept | {"revision": 99, "body": body | changed}


def test_the_last_reply_stands_while_the_core_starts_and_for_nothing_else(app: App) -> None:
    page = app.page
    begin(app, job())
    sheet(app, "Saw")
    expect_lengths(app, "40", "40", "30", "30")
    kept = wait_until_made(page, "boot")
    # It is none of the person's documents: those are what a saved file holds.
    assert {kind for kind, _ in kept_documents(page)} <= {"job", "settings", "list"}

    hold_core(app)
    app.open("#/saw")
    expect_lengths(app, "40", "40", "30", "30")
    expect(page.locator(".jobband")).to_contain_text("0 of 4 cut")
    # A tick is the document's: it needs no core, and stands when the page is opened anew.
    box(app, "A2").tap()
    said(app, "A2 cut")
    app.open("#/saw")
    expect_lengths(app, "40", "40", "30", "30")
    expect_ticked(app, "A2")
    expect(page.locator(".jobband")).to_contain_text("1 of 4 cut")
    sheet(app, "Yard")
    expect(row(app, "primed pine")).to_contain_text("2 sticks")

    # Another core, another scale, another document: it stands for none of them.
    ticked = kept_documents(page)[("job", "boot")]["body"]
    put_made(page, kept | {"of": json.dumps(["another", *json.loads(kept["of"])[1:]])})
    expect_nothing_recalled(app)
    put_made(page, kept)
    put_documents(page, app.address, settings(step=32))
    expect_nothing_recalled(app)
    put_documents(page, app.address, settings())
    app.open("#/saw")
    expect_lengths(app, "40", "40", "30", "30")
    changed = job(ticks=ticked["ticks"])
    changed["items"][0]["entries"][0]["inputs"] = FRAME | {"opening_height": "50"}
    put_documents(page, app.address, record(changed))
    expect_nothing_recalled(app)

    # The core comes: what it says takes the place, and is what is kept.
    page.unroute(CORE)
    app.open("#/saw")
    expect_lengths(app, "50", "50", "30", "30")
    expect_ticked(app, "A2")
    expect(row(app, "A2")).to_contain_text("short: cut another")

    # It goes with its job.
    app.open("#/job")
    page.get_by_role("button", name="Delete Boot room").tap()
    said(app, "Boot room deleted")
    assert made(page) == {}
