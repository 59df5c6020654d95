"""The demo job quoted, changed, paid and signed off on a phone with no network.

Hand work: its stock, hours and price are in `fixtures/job/demo.json`. A delivery of 40 more is 50
with a quarter of overhead and 62.50 at a fifth kept: 3775.21875 + 62.50 = 3837.71875, which rounds
up to 3840; 10 % tax is 384: 4224, in halves 2112. With the tax in it it is 4221.49, up to 4230: of
that 384.55 is tax. A change of 30.50 is agreed and 2112 came in:
2142.50 is left. Kept: 3840 less 3020.175 + 50 = 3070.175, shown as 3070.18: 769.82, 20 %.
"""

import io
import json
import re
from pathlib import Path

import pdfplumber
import pytest
from playwright.sync_api import BrowserContext, FilePayload, Locator, Page, expect

from tests.phone.app import FRAMES, App, choose
from tests.phone.job_screens import add_item, begin, expect_sound, picture
from tests.phone.storage import kept_documents
from tests.phone.test_access import AXE, violations
from tests.phone.test_print import PAPERS, text_of

FIXTURE = Path(__file__).parents[2] / "fixtures" / "job" / "demo.json"
HAND = json.loads(FIXTURE.read_text(encoding="utf-8"))["by_hand"]["quote"]
ITEMS = {
    "doors": "Cupboard doors", "frames": "Frames around the window", "base": "Base",
    "door": "Door to the hall", "finish": "Finish of the cupboard doors",
}  # fmt: skip
FINGER = [[(10, 80), (25, 15), (40, 80), (55, 40), (90, 60)], [(15, 55), (35, 50)]]
"""Two strokes of a finger over the area to sign on, in percents of it."""
GREEN = (0, 1, 0)
SVG = b"""<svg xmlns="http://www.w3.org/2000/svg" width="120" height="40" onload="parent.ran = 1">
<script>parent.ran = 1</script><rect id="of-the-logo" width="120" height="40" fill="#0f0"/></svg>"""


@pytest.fixture
def app(page: Page, address: str) -> App:
    """A phone that keeps the app, and whose print dialog stays open for the test."""
    page.add_init_script("window.print = () => {}")
    return App(page, address)


def part(app: App, name: str) -> Locator:
    return app.page.get_by_role("region", name=name, exact=True)


def fill(app: App, **fields: str) -> None:
    """Fill the open sheet's fields, by the beginnings of their labels, and close it."""
    dialog = app.page.get_by_role("dialog")
    for name, text in fields.items():
        dialog.get_by_label(re.compile("^" + name.replace("_", " "))).fill(text)
    dialog.get_by_role("button", name="Done").tap()
    expect(dialog).to_have_count(0)


def press(app: App, name: str) -> None:
    app.page.get_by_role("button", name=name).tap()


def signed_by_hand(
    app: App, where: Locator, strokes: list[list[tuple[int, int]]], by: str = "Ada Fern"
) -> None:
    """Sign with a finger, as the screen hears it; points are percents of the area."""
    where.get_by_role("button", name=re.compile("^Sign ")).tap()
    area = where.get_by_role("img", name="Area to sign on")
    # What the core still says of the quote would move it.
    app.page.locator("lp-quote").evaluate("(screen) => screen.job.settled")
    app.page.evaluate(FRAMES)
    # To the middle: what stays at the screen's foot would lie over it.
    area.evaluate("area => area.scrollIntoView({ block: 'center' })")
    box = area.bounding_box()
    assert box
    screen = app.page.context.new_cdp_session(app.page)

    def touch(kind: str, *points: tuple[int, int]) -> None:
        spots = [{"x": box["x"] + box["width"] * x / 100, "y": box["y"] + box["height"] * y / 100}
                 for x, y in points]  # fmt: skip
        screen.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": spots})

    for first, *rest in strokes:
        touch("touchStart", first)
        for point in rest:
            touch("touchMove", point)
        touch("touchEnd")
    where.get_by_role("button", name="Keep the signature").tap()
    expect(where.get_by_role("img", name="Signature of " + by)).to_be_visible()


def expect_signature(where: Locator, strokes: int, by: str = "Ada Fern") -> None:
    """As many lines as strokes stand there: each begins with a move."""
    path = where.get_by_role("img", name="Signature of " + by).locator("path")
    expect(path).to_have_attribute("d", re.compile(f"^(M[^M]+){{{strokes}}}$"))


def customer(where: Locator) -> Locator:
    return where.get_by_role("group", name="The customer signs")


def shop(where: Locator) -> Locator:
    return where.get_by_role("group", name="The shop signs")


def signed_by_shop(app: App, where: Locator) -> None:
    shop(where).get_by_label("Signed for the shop by").fill("Nils Fern")
    signed_by_hand(app, shop(where), FINGER, "Nils Fern")
    expect_signature(where, 2, "Nils Fern")


def priced(app: App) -> None:
    """From nothing to a price: rates, hours, a line of its own."""
    app.page.get_by_role("link", name="Quote").tap()
    press(app, "Begin the quote")
    dialog = app.page.get_by_role("dialog")
    choose(dialog.get_by_label("up to $10"))
    fill(app, What_an_hour="$50", Overhead="25%", Profit="20 %")
    # Rates alone are no price: each item's hours are asked for.
    price = part(app, "Price")
    expect(price).to_contain_text("Cupboard doors: how many hours?")
    expect(price.get_by_role("status")).to_have_text("No price yet")
    expect(app.page.get_by_role("button", name=re.compile("The customer agreed"))).to_have_count(0)
    for item, title in ITEMS.items():
        part(app, "What it is for").get_by_role("button", name=re.compile("^" + title)).tap()
        fill(app, **{"Hours,_all_of_it": str(HAND["hours"][item])})
    press(app, "Delivery, measuring, other")
    fill(app, What_it_is_for="Delivery", Cost_beside="40")
    expect(part(app, "Price").get_by_role("status")).to_have_text("$3,840.00")
    expect(part(app, "Price")).to_contain_text("You keep $769.82, 20 % of the price.")


def refused(app: App) -> None:
    """What won't do stays as typed, with its sentence; no older number makes a price."""
    price, dialog = part(app, "Price"), app.page.get_by_role("dialog")
    press(app, "Rates: hour, overhead, profit")
    expect(dialog.get_by_text("These are the shop's rates.")).to_be_visible()
    profit = dialog.get_by_label(re.compile("^Profit, %"))
    profit.fill("99.9")
    expect(dialog).to_contain_text("Profit of the price must be at most 95: 99.9 can't be.")
    done = dialog.get_by_role("button", name="Done")
    expect(done).to_be_in_viewport(ratio=1)
    profit.press("Enter")
    expect(dialog).to_have_count(0)
    expect(price.get_by_role("status")).to_have_text("No price yet")
    press(app, "Rates: hour, overhead, profit")
    expect(profit).to_have_value("99.9")
    fill(app, Profit="20")
    doors = part(app, "What it is for").get_by_role("button", name=re.compile("^Cupboard doors"))
    doors.tap()
    hours = dialog.get_by_label("Hours, all of it")
    hours.fill("140000")
    expect(dialog).to_contain_text("Hours must be at most 10000")
    expect(price.get_by_role("status")).to_have_text("No price yet")
    fill(app, **{"Hours,_all_of_it": "14 1/2 + 1.5"})
    expect(price.get_by_role("status")).to_have_text("$3,840.00")


def staged(app: App) -> None:
    press(app, "Tax and stages")
    dialog = app.page.get_by_role("dialog")
    # In the price it makes the price larger: the share that is kept stays.
    choose(dialog.get_by_label("the price holds it"))
    dialog.get_by_label("Tax, %").fill("10")
    dialog.get_by_role("button", name="Done", exact=True).tap()
    expect(part(app, "Price").get_by_role("status")).to_have_text("$4,230.00")
    expect(part(app, "How it is paid")).to_contain_text("Tax of $384.55 included, 10 %")
    press(app, "Tax and stages")
    choose(dialog.get_by_label("on the price", exact=True))
    for at, name in enumerate(("Deposit", "Done")):
        dialog.get_by_role("button", name="A stage").tap()
        stage = dialog.get_by_role("group", name=f"Stage {at + 1}")
        stage.get_by_label("Paid when").fill(name)
        stage.get_by_label("Of the total").fill("50")
    dialog.get_by_role("button", name="Done", exact=True).tap()
    expect(part(app, "How it is paid")).to_contain_text("Deposit, 50 %")
    expect(part(app, "How it is paid")).to_contain_text("$2,112.00")


def worded(app: App) -> None:
    """Short texts stand beside each other: with them, too, the quote is one page."""
    press(app, "Words on paper")
    fill(app, Not_in_it="Painting walls", Terms="The room is empty, heated and dry.\n" * 6,
         What_is_done="Doors, frames, base, finish.\n" * 4)  # fmt: skip


def changed(app: App) -> None:
    press(app, "The customer agreed to $4,224.00 with its tax")
    agreed = part(app, "Agreed")
    agreed.get_by_label("Signed by").fill("Ada Fern")
    signed_by_hand(app, customer(agreed), FINGER)
    expect_signature(agreed, 2)
    # Signed again and cleared: no line is left, and another one can be drawn.
    agreed.get_by_role("button", name="Sign again").tap()
    agreed.get_by_role("button", name="Clear it").tap()
    agreed.get_by_role("button", name="Keep the signature").tap()
    expect(agreed.get_by_role("img")).to_have_count(0)
    signed_by_hand(app, customer(agreed), FINGER)
    signed_by_shop(app, agreed)
    # What stands on the signed paper isn't changed under the signatures.
    for title in ("Tax and stages", "Words on paper"):
        press(app, title)
        dialog = app.page.get_by_role("dialog", name=title)
        expect(dialog).to_contain_text("to change it, open the price again")
        expect(dialog.locator("input, textarea, select")).to_have_count(0)
        fill(app)
    press(app, "A change")
    order = app.page.get_by_role("dialog")
    order.get_by_label("What changes").fill("Wider casing")
    order.get_by_label(re.compile("^By how much")).fill("20.50")
    # Who signed before is named with a tap.
    customer(order).get_by_role("button", name="Ada Fern").tap()
    expect(order.get_by_label("Signed by")).to_have_value("Ada Fern")
    signed_by_hand(app, customer(order), FINGER[:1])
    signed_by_shop(app, order)
    expect(order.get_by_label("agreed", exact=True)).to_be_checked()
    # It was signed for 20.50: for another sum it is offered and signed anew.
    order.get_by_label(re.compile("^By how much")).fill("30.50")
    expect(order.get_by_role("img")).to_have_count(0)
    expect(order.get_by_label("offered", exact=True)).to_be_checked()
    signed_by_hand(app, customer(order), FINGER[:1])
    expect_signature(order, 1)
    fill(app)
    press(app, "A payment came in")
    fill(app, Amount="2112")
    expect(part(app, "How it is paid")).to_contain_text("$2,142.50")


def signed(app: App) -> None:
    press(app, "Something to put right")
    punch = part(app, "Punch list and sign-off")
    punch.get_by_label("To put right").fill("Touch up the head")
    expect(punch).to_contain_text("1 thing to put right before the sign-off.")
    punch.get_by_role("checkbox").check()
    punch.get_by_label("Signed off by").fill("Ada Fern")
    # Something comes up after the sign-off: it is signed again when that is put right.
    punch.get_by_role("checkbox").uncheck()
    expect(punch).to_contain_text("Signed off by Ada Fern")
    expect(punch).to_contain_text("after that something came up")
    punch.get_by_role("checkbox").check()
    punch.get_by_role("button", name="Sign it off again").tap()
    expect(punch.get_by_text("after that something came up")).to_have_count(0)
    expect(punch.get_by_label("Signed off by")).to_have_value("Ada Fern")
    signed_by_hand(app, customer(punch), FINGER)


def logos(app: App) -> None:
    """A PNG, then an SVG in its stead; one that is too large, or is none, is said and not kept."""
    choose = app.page.get_by_role("dialog").locator("input[type=file]")
    shown = app.page.get_by_role("img", name="The shop's logo")
    choose.set_input_files(
        FilePayload(name="logo.png", mimeType="image/png", buffer=picture(300, 100))
    )
    expect(shown).to_have_js_property("naturalWidth", 300)

    def svg(name: str, buffer: bytes) -> None:
        choose.set_input_files(FilePayload(name=name, mimeType="image/svg+xml", buffer=buffer))

    svg("large.svg", SVG + b" " * 200_000)
    expect(app.page.get_by_role("status").filter(has_text="at most 200 kB")).to_be_visible()
    svg("torn.svg", b"<svg")
    expect(app.page.get_by_role("status").filter(has_text="torn.svg")).to_be_visible()
    expect(shown).to_have_js_property("naturalWidth", 300)
    svg("logo.svg", SVG)
    expect(shown).to_have_js_property("naturalWidth", 120)
    # What it took the place of does not stay in the storage.
    kept = [each for (kind, _), each in kept_documents(app.page).items() if kind == "photo"]
    assert [each["body"].get("type", "") for each in kept if not each.get("deleted")] == [
        "image/svg+xml"
    ]
    # It is a picture: no part of it is a part of the page, and nothing in it runs.
    expect(app.page.locator("#of-the-logo")).to_have_count(0)
    assert app.page.evaluate("'ran' in window") is False


def on_paper(app: App) -> None:
    press(app, "Your shop")
    logos(app)
    fill(app, Name_of_the_shop="Fern & Sons")
    app.page.get_by_role("button", name="On paper", exact=True).tap()
    for name in ("Change orders", "Statement", "Sign-off"):
        choose(app.page.get_by_role("checkbox", name=name))
    app.page.get_by_role("button", name="Print", exact=True).tap()
    expect(app.page.locator(".paper")).to_have_count(4)
    expect(app.page.locator(".paper .signhand path")).to_have_count(4)
    for paper, size in PAPERS.items():
        pdf = pdfplumber.open(io.BytesIO(app.page.pdf(format=paper, print_background=True)))
        texts = [text_of(page) for page in pdf.pages]
        assert (pdf.pages[0].width, pdf.pages[0].height) == pytest.approx(size, abs=1)
        assert len(texts) == 4, "each on one page"
        green = [[rect for rect in page.rects if rect["non_stroking_color"] == GREEN]
                 for page in pdf.pages]  # fmt: skip
        assert [len(rects) for rects in green] == [1, 1, 1, 1], "the logo on each"
        whole = "\n".join(texts)
        for words in ("Fern & Sons, Nils Fern", "$3,840.00", "$4,224.00", "Painting walls",
                      "Wider casing", "$2,142.50", "Touch up the head",
                      "Signed off by Ada Fern"):  # fmt: skip
            assert words in whole, words


def the_next_begins_with_the_shop_s_rates(app: App) -> None:
    """The rates were said once. An hour at 50 is 62.50 with overhead, 78.125 over 0.8: up to 80."""
    app.open("#/job")
    begin(app, "Porch")
    add_item(app, "An empty item")
    app.page.get_by_role("link", name="Quote").tap()
    press(app, "Begin the quote")
    press(app, "Delivery, measuring, other")
    fill(app, Hours="1")
    # An item whose hours nobody said has no price; 0 can be said.
    expect(part(app, "Price")).to_contain_text("Item: how many hours?")
    expect(part(app, "Price").get_by_role("status")).to_have_text("No price yet")
    expect(app.page.get_by_role("button", name=re.compile("The customer agreed"))).to_have_count(0)
    part(app, "What it is for").get_by_role("button").first.tap()
    fill(app, **{"Hours,_all_of_it": "0"})
    expect(part(app, "Price").get_by_role("status")).to_have_text("$80.00")


def test_the_demo_from_its_quote_to_the_sign_off(app: App, context: BrowserContext) -> None:
    app.install()
    app.open("#/job")
    context.set_offline(True)
    press(app, "Open the demo job")
    # The quote is reached without passing the items.
    expect(app.page.get_by_role("link", name="Quote")).to_be_in_viewport(ratio=1)
    priced(app)
    refused(app)
    staged(app)
    worded(app)
    changed(app)
    signed(app)
    expect_sound(app.page, "quote")
    app.page.evaluate(AXE.read_text())
    assert violations(app) == []
    # What was said is kept: it stands there when the app is opened anew.
    app.page.reload()
    expect(part(app, "How it is paid")).to_contain_text("$2,142.50")
    expect(part(app, "Agreed").get_by_label("Signed by")).to_have_value("Ada Fern")
    expect_signature(part(app, "Agreed"), 2)
    expect_signature(part(app, "Punch list and sign-off"), 2)
    on_paper(app)
    # A touch brings the page back.
    app.page.get_by_role("heading", name="Labels for pieces").tap()
    expect(app.page.locator(".papers")).to_have_count(0)
    app.page.get_by_role("dialog").get_by_role("button", name="Close").tap()
    the_next_begins_with_the_shop_s_rates(app)
