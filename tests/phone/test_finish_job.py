"""A job finished on the phone: surfaces of its door, cans to buy, coats ticked, the calendar file.

Hand work. A leaf 32 x 80 x 1 3/8 with one opening 23 x 66 and edges 1/2 deep: 38.9306 sq ft. One
coat 5 mil wet, brushed: 38.9306 x 5 / (1604.167 x 0.95) = 0.128 gal, 16 fl oz, one quart. Primer
begun at 8 takes an hour and is coated over from 4 h on: enamel from 1 pm; done at 10:20 instead,
from 2:20.
"""

import io
import re
from typing import Any

import icalendar
import pdfplumber
from playwright.sync_api import expect

from tests.phone.app import App, choose
from tests.phone.test_job_sheets import begin, box, expect_ticked, row, sheet

DOOR = {
    "kind": "passage", "opening_width": "32 1/4", "opening_height": "80 5/8", "stile": "4 1/2",
    "panel_thickness": "3/8", "bottom_rail": "9 1/2", "panel_of": "solid", "leaves": "1",
}  # fmt: skip
PRIMER = {"coats": "1", "film_by": "wet", "wet_coat": "5", "method": "brush", "can": "quart"}
PLAN = {
    "air_temperature": "70", "humidity": "50", "faces": "1", "start_day": "mon", "day_from": "8 am",
    "day_to": "5 pm", "working_days": "5", "hang_after": "24",
    "coats": [{"name": "Primer", "minutes": "60", "recoat_from": "4"},
              {"name": "Enamel", "minutes": "60", "recoat_from": "16"}],
}  # fmt: skip


def job() -> dict[str, Any]:
    ties = {"things": {"pieces": "job"}}
    questions = [
        ("area", "finish-area", {}, ties), ("primer", "finish-amount", PRIMER, {}),
        ("plan", "finish-plan", PLAN, {}),
    ]  # fmt: skip
    finish = [
        {"id": own, "letter": letter, "tool": tool, "inputs": inputs, "ties": tied}
        for letter, (own, tool, inputs, tied) in zip("BCD", questions, strict=True)
    ]
    door = {"id": "door", "letter": "A", "tool": "door-set", "inputs": DOOR}
    items = [
        {"id": "i1", "title": "Door", "entries": [door]},
        {"id": "i2", "title": "Finish", "entries": finish},
    ]
    said = {"longpoint": "job", "schema": 1, "id": "boot", "title": "Boot room", "units": "in"}
    can = {"id": "can", "title": "Primer", "from": {"entry": "primer", "figure": "cans"}}
    return said | {"items": items, "things": [can]}


def test_a_door_is_finished(app: App) -> None:
    page = app.page
    # The print dialog stays open for the test.
    page.add_init_script("window.print = () => {}")
    begin(app, job())
    finish = page.get_by_role("region", name="Finish", exact=True)
    expect(finish).to_contain_text("38.9 sq ft")
    # The area's rows are the job's own, and follow it.
    finish.get_by_role("link", name=re.compile("^B Finish area")).tap()
    taken = page.get_by_label("What is coated, from this job")
    expect(taken).to_have_value("job")
    expect(page.locator(".takenrows")).to_contain_text("frame and panel")
    expect(page.locator("lp-take-pieces")).to_contain_text("panels taken flat, edges around them")

    # At the yard the cans stand with what they are for.
    sheet(app, "yard")
    expect(row(app, "Primer")).to_contain_text("Buy 1 quart can: 16 fl oz for 1 coat")
    expect(row(app, "Primer")).to_contain_text("1 can")

    # On site the plan knows its weekdays, then its day, then what was done.
    sheet(app, "site")
    expect(row(app, "Enamel")).to_contain_text("Mon 1:00 pm")
    expect(page.get_by_role("button", name="Put it in the calendar")).to_have_count(0)
    page.get_by_label("Begins on").fill("2026-11-30")
    expect(row(app, "Enamel")).to_contain_text("Mon Nov 30, 1:00 pm")
    with page.expect_download() as saved:
        page.get_by_role("button", name="Put it in the calendar").tap()
    assert saved.value.suggested_filename == "boot-room-finish.ics"
    events = icalendar.Calendar.from_ical(saved.value.path().read_bytes()).walk("VEVENT")
    said = [(str(each["SUMMARY"]), each["DTSTART"].dt.isoformat()) for each in events]
    assert said == [
        ("Boot room, Finish: Primer", "2026-11-30T08:00:00"),
        ("Boot room, Finish: Enamel", "2026-11-30T13:00:00"),
        ("Boot room, Finish: Hang it", "2026-12-01T14:00:00"),
    ]

    box(app, "Primer").tap()
    expect_ticked(app, "Primer")
    page.get_by_label("When it was done: Primer").fill("2026-11-30T10:20")
    expect(row(app, "Enamel")).to_contain_text("Mon Nov 30, 2:20 pm")
    expect(page.locator(".jobband")).to_contain_text("next: Enamel, Mon Nov 30, 2:20 pm")
    page.evaluate("scrollTo(0, 0)")
    page.get_by_role("button", name=re.compile("next: Enamel")).tap()
    expect(row(app, "Enamel")).to_be_in_viewport()
    box(app, "Enamel").tap()
    page.get_by_label("When it was done: Enamel").fill("2026-11-30T14:00")
    expect(row(app, "Enamel")).to_contain_text("Begun 1 h 20 min before the label lets it")
    page.get_by_label("When it was done: Enamel").fill("2026-11-30T15:20")
    expect(page.get_by_role("note").filter(has_text="Begun")).to_have_count(0)
    expect(row(app, "Hang it")).to_contain_text("Tue Dec 1, 3:20 pm")
    page.reload()
    expect(page.get_by_label("When it was done: Enamel")).to_have_value("2026-11-30T15:20")
    expect(row(app, "Hang it")).to_contain_text("Tue Dec 1, 3:20 pm")
    box(app, "Enamel").tap()
    expect_ticked(app, "Enamel", False)

    # On paper each step has its box, what is open a line for its time; the cut list isn't wanted.
    app.open("#/job/boot")
    page.get_by_role("button", name="On paper").tap()
    choose(page.get_by_role("checkbox", name="Finish plan"))
    choose(page.get_by_role("checkbox", name="Cut list"), False)
    page.get_by_role("button", name="Print", exact=True).tap()
    expect(page.locator(".paper")).to_contain_text("Finish: Finish plan")
    for size in ("Letter", "A4"):
        (sheet_of,) = pdfplumber.open(io.BytesIO(page.pdf(format=size))).pages
        text = sheet_of.extract_text()
        for words in ("Mon Nov 30, 10:20 am", "Primer", "Hang it", "from Mon Nov 30, 2:20 pm"):
            assert words in text
