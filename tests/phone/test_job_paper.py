"""A job on paper, measured in the PDF that the browser prints. A point is 1/72 inch.

The job is that of the sheets' tests: four pieces, eight marks. Sheets of labels are of usual sizes;
where their labels lie is worked out by hand from the measures beside each.
"""

import io
from collections.abc import Iterator
from typing import Any

import numpy as np
import pdfplumber
import pytest
from playwright.sync_api import Browser, expect

from tests.phone.app import App, choose
from tests.phone.conftest import page_of
from tests.phone.test_job_sheets import begin, job
from tests.phone.test_print import PAPERS, POINTS, text_of

HALF_MILLIMETER = 0.5 / 25.4 * POINTS
MM = POINTS / 25.4

# 2 5/8 x 1, 3/16 from the left, 1/2 from the top, 1/8 between two across.
LETTER = [(0.1875 + at % 3 * 2.75, 0.5 + at // 3, 2.625, 1.0) for at in range(30)]
# 70 x 37 mm, 0.5 mm from the top, none between.
A4 = [(at % 3 * 70.0, 0.5 + at // 3 * 37.0, 70.0, 37.0) for at in range(24)]


@pytest.fixture
def app(browser: Browser, address: str) -> Iterator[App]:
    """A phone in its dark look, whose print dialog stays open for the test."""
    page = page_of(browser, color_scheme="dark")
    page.add_init_script("window.print = () => {}")
    yield App(page, address)
    page.context.close()


def printed(app: App, paper: str, **options: Any) -> Any:
    pdf = app.page.pdf(format=paper, print_background=True, **options)
    return pdfplumber.open(io.BytesIO(pdf))


def share_of_ink(page: Any) -> float:
    picture = np.asarray(page.to_image(resolution=36).original.convert("L"))
    assert np.median(picture) == 255
    return float((picture < 128).mean())


def choose_papers(app: App, *names: str) -> None:
    for name in names:
        choose(app.page.get_by_label(name))


def back(app: App) -> None:
    """A touch brings the page back."""
    app.page.get_by_role("heading", name="Labels for pieces").tap()
    expect(app.page.locator(".papers")).to_have_count(0)


def test_lists_print_on_both_papers_without_a_blank_page(app: App) -> None:
    begin(app, job(customer={"name": "Ada Fern"}))
    app.page.get_by_role("button", name="On paper").tap()
    # The last mark lies 80 - 10 - 3 1/2 down: in pages of 8 1/2 inches it takes 8 of them.
    choose_papers(app, "Job sheet", "Buy list", "Mark list", "Door, hung, Hinge layout: 9 pages")
    app.page.get_by_role("button", name="Print", exact=True).tap()
    expect(app.page.locator(".paper")).to_have_count(4)
    for paper, size in PAPERS.items():
        pdf = printed(app, paper)
        texts = [text_of(page) for page in pdf.pages]
        for page in pdf.pages:
            assert (page.width, page.height) == pytest.approx(size, abs=1)
            assert share_of_ink(page) > 0.001
        begun = [text.split("\n")[1] for text in texts if text.startswith("Boot room\n")]
        lists = ("Job sheet", "Buy list", "Cut list", "Mark list")
        assert begun == [f"{name} · Ada Fern" for name in lists]
        assert len([text for text in texts if "story stick" in text]) == 9
        whole = "\n".join(texts)
        for words in ("2 sticks", "$18.80", "A4", "Top hinge, top line", "Touched up, swept"):
            assert words in whole
        for words in ("Hand it on", "Print labels", "Yard"):
            assert words not in whole
    back(app)


def outlines(page: Any) -> list[tuple[float, float, float, float]]:
    """Labels' outlines in points, but for the paper's own white."""
    found = [(each["x0"], each["top"], each["width"], each["height"]) for each in page.rects]
    return [each for each in found if each[2] < page.width / 2]


def expect_at(page: Any, spots: list[tuple[float, float, float, float]], unit: float) -> None:
    found = outlines(page)
    assert len(found) == len(spots)
    for outline, spot in zip(found, spots, strict=True):
        assert outline == pytest.approx([side * unit for side in spot], abs=HALF_MILLIMETER)


def test_labels_lie_within_half_a_millimeter(app: App) -> None:
    """Four pieces, begun at the 29th label: two on the first sheet, two on the next."""
    begin(app, job())
    app.page.get_by_role("button", name="On paper").tap()
    choose_papers(app, "Outlines, for a trial on plain paper")
    app.page.get_by_label("Labels across").fill("4")
    app.page.get_by_role("button", name="Print labels").tap()
    expect(app.page.get_by_role("alert")).to_contain_text("4 labels end 11 1/16")
    app.page.get_by_label("Labels across").fill("3")
    app.page.get_by_label("Begin at label").fill("29")
    app.page.get_by_role("button", name="Print labels").tap()
    expect(app.page.locator(".labelsheet")).to_have_count(2)
    first, second = printed(app, "Letter", prefer_css_page_size=True).pages
    expect_at(first, LETTER[28:], POINTS)
    expect_at(second, LETTER[:2], POINTS)
    assert "A2" in text_of(first)
    back(app)

    choose(app.page.get_by_label("A4 sheet"))
    choose_papers(app, "Outlines, for a trial on plain paper")
    app.page.get_by_label("Begin at label").fill("21")
    app.page.get_by_role("button", name="Print labels").tap()
    expect(app.page.locator(".labelsheet")).to_have_count(1)
    (page,) = printed(app, "A4", prefer_css_page_size=True).pages
    assert (page.width, page.height) == pytest.approx((210 * MM, 297 * MM), abs=1)
    expect_at(page, A4[20:], MM)

    # What was measured of the sheet is there again for the next job.
    app.open("#/job/boot")
    app.page.get_by_role("button", name="On paper").tap()
    expect(app.page.get_by_label("Label width")).to_have_value("70 mm")
    expect(app.page.get_by_label("Begin at label")).to_have_value("21")
