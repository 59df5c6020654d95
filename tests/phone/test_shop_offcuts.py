"""What a job leaves goes on the shop's own list, and the next job that can use it is offered it.

Of the demo's base, 120, 96, 96, 42 3/8 and 40, a stick of 60 holds one of the last two.
"""

import re

from playwright.sync_api import Locator, expect

from tests.phone.app import App


def base_of_the_demo(app: App) -> Locator:
    """Open the sheet of the demo's base, from the job's stock."""
    app.page.get_by_role("button", name=re.compile("^Base")).tap()
    dialog = app.page.get_by_role("dialog")
    expect(dialog.get_by_label("Name of the stock")).to_have_value("Base")
    return dialog


def test_an_offcut_goes_to_the_shop_and_back_on_a_job(app: App) -> None:
    app.open("#/job")
    app.page.get_by_role("button", name="Open the demo job").tap()
    app.page.get_by_role("link", name="Stock").tap()
    dialog = base_of_the_demo(app)
    dialog.get_by_role("button", name="Add what is on hand").tap()
    row = dialog.get_by_role("group", name="On hand 1")
    row.get_by_label("Length", exact=True).fill("60")
    row.get_by_label("Where it stands").fill("rack, left")
    row.get_by_role("button", name="Keep for the shop").tap()
    expect(row).to_have_count(0)

    # Taken back it lies on the job again, and on no other list.
    offer = dialog.get_by_role("button", name="Take 1 of 60")
    undo = dialog.get_by_role("button", name="Undo")
    expect(offer).to_have_count(1)
    undo.tap()
    expect(row.get_by_label("Where it stands")).to_have_value("rack, left")
    expect(offer).to_have_count(0)
    row.get_by_role("button", name="Keep for the shop").tap()
    expect(row).to_have_count(0)

    # It is on the list of the shop, after a restart too, and the job offers it.
    offer = dialog.get_by_role("button", name="Take 1 of 60")
    expect(offer).to_contain_text("rack, left")
    app.page.reload()
    fold = app.page.locator("details.fold").filter(has_text="Offcuts in the shop")
    fold.locator("summary").tap()
    fold.get_by_role("button", name="Gone").tap()
    expect(fold).to_have_count(0)
    app.page.get_by_role("status").get_by_role("button", name="Undo").tap()
    expect(fold).to_contain_text("rack, left")
    dialog = base_of_the_demo(app)
    dialog.get_by_role("button", name="Take 1 of 60").tap()
    expect(row.get_by_label("Where it stands")).to_have_value("rack, left")
    expect(dialog.get_by_role("button", name="Take 1 of 60")).to_have_count(0)
    expect(row.get_by_text("can't be read")).to_have_count(0)

    # What the plan leaves is proposed with its size.
    left = dialog.get_by_role("region", name="Left by the plan").get_by_role("button").first
    expect(left).to_contain_text("Keep 1 of")
    left.tap()
    expect(dialog.get_by_role("status")).to_contain_text("Kept for the shop")
