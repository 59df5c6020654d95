"""What two people said differently is asked in a carpenter's words, wherever it is typed.

Documents that ask are made by the core itself, which two phones' worth of changes are given to.
"""

from typing import Any

from playwright.sync_api import Locator, expect

from longpoint.trade.job.meeting import meet
from tests.phone.app import App
from tests.phone.job_screens import expect_sound
from tests.phone.shops import UP, Shop, all_up, both, expect_up, look, open_job
from tests.phone.storage import kept_documents, put_documents, wait_until

DOOR = {"id": "e", "letter": "A", "tool": "door-set", "version": 1, "typed_in": "in", "inputs": {}}
JOB = {
    "longpoint": "job", "schema": 1, "id": "job-1", "title": "Porch", "units": "in", "step": 16,
    "items": [{"id": "i", "title": "Cupboard doors, inset", "entries": [DOOR]}], "letters": 1,
}  # fmt: skip
RATES = {"rate": 40, "overhead_percent": 30, "profit_percent": 20}
OFFCUT = {"title": "1x3 poplar", "sold": "stick", "length": '31"', "count": 1, "where": "rack"}


def record(kind: str, own: str, body: Any) -> dict[str, Any]:
    kept = {"kind": kind, "id": own, "units": "in", "revision": 1, "schema": 1, "step": 0}
    return kept | {"body": body} | ({"listed": ["job", 1, body["title"]]} if kind == "job" else {})


def said_differently(kind: str, own: str, base: Any, mine: Any, theirs: Any) -> dict[str, Any]:
    """Return what a phone keeps once Ada's document has met Ben's."""
    states = [{"units": "in", "schema": 1, "body": body} for body in (base, mine, theirs)]
    named = dict(zip(("base", "mine", "theirs"), states, strict=True))
    met = meet({"kind": kind, "is_behind": False, "names": ["Ada", "Ben"], **named})
    assert met["document"]["body"]["questions"], "they collide"
    return record(kind, own, met["document"]["body"])


def card(app: App) -> Locator:
    return app.page.get_by_role("region", name="Said differently")


def answered(app: App, place: str, words: str) -> None:
    """See a question on the screen and take what one said; the card is then gone."""
    asked = card(app).get_by_role("group", name=place, exact=True)
    expect(asked).to_be_visible()
    asked.get_by_role("button", name=words, exact=True).tap()
    expect(asked).to_have_count(0)


def test_a_question_says_where_it_is_and_what_each_said(shop: Shop) -> None:
    ada, ben = shop.phone("Ada", "owner"), shop.phone("Ben")
    job = JOB | {"quote": {"rates": RATES}}
    put_documents(ada.page, ada.address, record("job", "job-1", job))
    open_job(ada, "Porch")
    expect_up(ada)
    ben.open("#/job")
    look(ben)
    expect(ben.page.get_by_role("link", name="Porch")).to_be_visible()
    for app, height in ((ada, "80"), (ben, "80 1/2")):
        app.open("#/job/job-1/e")
        expect(app.field("Opening height")).to_be_visible()
        app.page.context.set_offline(True)
        app.enter("Opening height", height)
        app.page.keyboard.press("Escape")
        app.page.get_by_role("link", name="Back to the job").tap()
        expect(app.page.get_by_text("waiting for a network").first).to_be_visible()
    for app in (ada, ben):
        app.page.context.set_offline(False)
    both(ada, ben)
    asked = card(ben)
    expect(asked).to_contain_text("Opening height")
    expect(asked).to_contain_text("Cupboard doors, inset › A Door set")
    expect_sound(ben.page, "said differently")
    expect(card(ada)).to_be_visible()
    answered(ben, "Opening height, Cupboard doors, inset › A Door set", "80 in Ada")
    both(ben, ada)
    expect(card(ada)).to_have_count(0)
    kept = kept_documents(ada.page)["job", "job-1"]["body"]["items"][0]["entries"][0]["inputs"]
    assert kept == {"opening_height": "80"}
    lists_and_settings(ada, ben)


def lists_and_settings(ada: App, ben: App) -> None:
    """A list or the shop's settings ask where they are shown, and are settled for both."""
    yard, offcuts = {"label": "1x6", "thickness": "3/4"}, {"rows": [OFFCUT], "typed_in": "in"}
    asking = [
        said_differently("list", "yard-sizes", *[
            {"rows": [yard | {"width": width}], "typed_in": "in"}
            for width in ("5 1/2", "5 3/8", "5 7/16")
        ]),
        said_differently("list", "offcuts", *[
            offcuts | {"rows": [OFFCUT | {"count": count}]} for count in (1, 2, 3)
        ]),
        said_differently("settings", "shop", *[
            {"rates": RATES | {"rate": rate}} for rate in (40, 45, 50)
        ]),
        said_differently("settings", "labels", *[
            {"width": width} for width in ('2"', '2 1/2"', '3"')
        ]),
    ]  # fmt: skip
    put_documents(ada.page, ada.address, *asking)
    ada.open("#/job")
    expect(ada.page.get_by_role("link", name="Porch")).to_contain_text(UP)
    all_up(ada)
    ben.open("#/yard/stock-sizes")
    look(ben)
    answered(ben, "Width, Size 1, 1x6", "5 and 7/16 in Ben")
    ben.open("#/job/job-1/stock")
    answered(ben, "How many, Offcut 1, 1x3 poplar", "3 Ben")
    ben.open("#/job/job-1/quote")
    answered(ben, "What an hour costs you, $, Rates", "$50 Ben")
    ben.page.get_by_role("button", name="On paper", exact=True).tap()
    answered(ben, "Label width", '3" Ben')
    expect(ben.field("Label width")).to_have_value('3"')
    ben.page.keyboard.press("Escape")
    all_up(ben)
    look(ada)
    wait_until(ada.page, lambda: what_stands(ada) == ["5 7/16", 3, 50], "Ben's answers for Ada too")


def what_stands(app: App) -> list[Any]:
    bodies = {key: each["body"] for key, each in kept_documents(app.page).items()}
    return [
        bodies["list", "yard-sizes"]["rows"][0]["width"],
        bodies["list", "offcuts"]["rows"][0]["count"],
        bodies["settings", "shop"]["rates"]["rate"],
    ]
