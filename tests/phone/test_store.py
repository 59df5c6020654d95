"""The store itself, called without a screen: what screens to come rely on.

Times and numbers are made up; what must hold is said in each test's name.
"""

from collections.abc import Iterator
from typing import Any

import pytest
from playwright.sync_api import Browser, Page

from tests.phone.conftest import page_of
from tests.phone.storage import history, kept_documents, run_store

DAY = 24 * 3600 * 1000


@pytest.fixture
def page(browser: Browser, address: str) -> Iterator[Page]:
    page = page_of(browser)
    run_store(page, address)
    yield page
    page.context.close()


@pytest.fixture
def other(page: Page, address: str) -> Page:
    other = page.context.new_page()
    run_store(other, address)
    return other


def do(page: Page, work: str, **given: Any) -> Any:
    """Run the body of an async function with ``store`` and what is given at hand."""
    names = ", ".join(given)
    return page.evaluate(f"async ({{ {names} }}) => {{ {work} }}", given)


JOB = """
  const job = await store.openDocument("job", "one");
  job.change(body, "in", words);
  await store.flushed();
  job.close();
"""


def write(page: Page, body: Any, words: str = "") -> None:
    do(page, JOB, body=body, words=words)


def test_a_deleted_document_can_be_had_back(page: Page) -> None:
    write(page, {"title": "Boot room"})
    do(page, "await store.deleteDocument('job', 'one')")
    assert do(page, "return store.listDocuments('job')") == []
    [kept, (gone,)] = do(page, "return store.listAll('job')")
    assert kept == []
    assert gone["body"] == {"title": "Boot room"}
    do(page, "await store.undeleteDocument('job', 'one')")
    (back,) = do(page, "return store.listDocuments('job')")
    assert back["body"] == {"title": "Boot room"}


def test_after_thirty_days_it_is_gone_with_its_history(page: Page) -> None:
    write(page, {"title": "Boot room"})
    do(page, "await store.deleteDocument('job', 'one')")
    deleted = kept_documents(page)["job", "one"]["deleted"]
    do(page, "await store.purgeDeleted(now)", now=deleted + 30 * DAY - 1)
    assert ("job", "one") in kept_documents(page)
    do(page, "await store.purgeDeleted(now)", now=deleted + 30 * DAY)
    assert ("job", "one") not in kept_documents(page)
    assert history(page) == []


def test_what_is_opened_after_deleting_begins_blank_and_can_be_undone(page: Page) -> None:
    write(page, {"title": "Boot room"})
    do(page, "await store.deleteDocument('job', 'one')")
    opened = "const job = await store.openDocument('job', 'one'); return job.body"
    assert do(page, opened) == {}
    write(page, {"title": "Pantry"}, "Title")
    undone = """
      const job = await store.openDocument("job", "one");
      await job.undo();
      return job.body;
    """
    assert do(page, undone) == {"title": "Boot room"}


def test_one_deleted_there_and_typed_on_here_stays(page: Page, other: Page) -> None:
    write(page, {"title": "Boot room"})
    do(page, "globalThis.job = await store.openDocument('job', 'one')")
    do(other, "await store.deleteDocument('job', 'one')")
    work = "job.change({ ...job.body, note: 'oak' }, 'in'); await store.flushed()"
    do(page, work)
    kept = kept_documents(page)["job", "one"]
    assert "deleted" not in kept
    assert kept["body"]["note"] == "oak"


def test_words_of_a_change_come_back_with_its_undo(page: Page) -> None:
    write(page, {"title": "Boot room"}, "Title")
    work = """
      const job = await store.openDocument("job", "one");
      return [await job.undo(), await job.undo(), await job.redo(), await job.redo()];
    """
    assert do(page, work) == ["Title", None, "Title", None]


def test_items_put_in_by_two_windows_at_once_are_both_there(page: Page, other: Page) -> None:
    write(page, {"items": [{"id": "a", "count": 1}]})
    for each in (page, other):
        do(each, "globalThis.job = await store.openDocument('job', 'one')")
    put = """
      const items = [...job.body.items, { id, count: 1 }];
      job.change({ ...job.body, items }, "in");
      await store.flushed();
    """
    # Neither hears of the other before it writes: both changes are put before either runs on.
    do(other, "BroadcastChannel.prototype.postMessage = () => undefined")
    do(other, put, id="b")
    do(page, put, id="c")
    items = kept_documents(page)["job", "one"]["body"]["items"]
    assert {item["id"] for item in items} == {"a", "b", "c"}


def test_what_is_typed_while_it_is_written_is_not_lost(page: Page) -> None:
    work = """
      const job = await store.openDocument("job", "one");
      for (let count = 0; count < 50; count += 1) {
        job.change({ ...job.body, [`line ${count % 7}`]: count }, "in");
        if (count % 3 === 0) await new Promise((resolve) => setTimeout(resolve));
      }
      const said = job.body;
      await store.flushed();
      return [said, job.body];
    """
    before, after = do(page, work)
    assert before == after == kept_documents(page)["job", "one"]["body"]


@pytest.mark.parametrize(
    ("body", "words"),
    [
        ("{ note: 'x'.repeat(40_000_000) }", "A text of 40,000,000 characters is too long to keep"),
        ("{ list: Array(200_000).fill('abcd') }", "too much to keep in one piece"),
        ("{ at: Infinity }", "a number without end"),
        ("{ when: undefined }", "no text and no number"),
        ("JSON.parse('{\"__proto__\": 1}')", "a name that can't be used"),
        ("JSON.parse('['.repeat(50) + ']'.repeat(50))", "too deep"),
    ],
    ids=["text", "size", "number", "kind", "name", "depth"],
)
def test_what_can_not_be_kept_is_refused_in_words(page: Page, body: str, words: str) -> None:
    work = f"""
      let said = "";
      store.onStorageFault((words) => (said = words));
      const job = await store.openDocument("job", "one");
      const isKept = job.change({body}, "in");
      return [isKept, said, job.body];
    """
    is_kept, said, left = do(page, work)
    assert not is_kept
    assert words in said
    assert left == {}


def test_undo_goes_back_past_an_update_of_the_form(page: Page) -> None:
    """What stood there says by which rules it is written; the core brings it up to date again."""
    work = """
      const old = await store.openDocument("form", "frame");
      old.change({ width: "27" }, "in", "typed then");
      await store.flushed();
      old.close();
      const form = await store.openDocument("form", "frame", { schema: 2 });
      const said = [form.bodySchema];
      form.change({ opening_width: "31" }, "in", "typed now");
      await store.flushed();
      for (const way of ["undo", "redo", "undo", "undo"]) {
        said.push([await form[way](), form.bodySchema, form.body]);
      }
      return said;
    """
    then, now = [1, {"width": "27"}], [2, {"opening_width": "31"}]
    assert do(page, work) == [
        1,
        ["typed now", *then],
        ["typed now", *now],
        ["typed now", *then],
        ["typed then", 1, {}],
    ]


def test_answers_from_a_file_join_those_here(page: Page) -> None:
    def answer(at: int) -> dict[str, Any]:
        scale = {"units": "in", "step": 16}
        return {"at": at, "inputs": {"width": str(at)}, "scale": scale, "lead": "", "says": ""}

    for at in range(1, 16):
        do(page, "await store.keepAnswer('frame', answer)", answer=answer(2 * at))
    record = {"kind": "answers", "id": "frame", "units": "in", "schema": 1, "revision": 9}
    others = [answer(2 * at + 1) | {"id": f"there {at}"} for at in range(1, 16)]
    copy = {"longpoint": "copy", "schema": 2, "documents": [record | {"body": {"answers": others}}]}
    for _ in range(2):
        do(page, "await store.importAll(JSON.stringify(copy))", copy=copy)
    kept = do(page, "return store.keptAnswers('frame')")
    assert [each["at"] for each in kept] == list(range(31, 11, -1))


def leave(page: Page, base: Any, body: Any, revision: int) -> None:
    """Put what a page left that was killed with this body typed on top of that one."""
    state = {"units": "in", "schema": 1}
    before = {"revision": revision, "state": state | {"body": base}}
    how = {"words": "", "by": "killed", "count": 1, "at": 1.7e12}
    change = how | {"state": state | {"body": body}}
    left = [{"key": ["job", "one"], "schema": 1, "base": before, "changes": [change]}]
    work = "localStorage.setItem('longpoint unwritten killed', JSON.stringify(left))"
    do(page, work, left=left)


def test_what_a_killed_page_left_is_joined_with_what_came_after(page: Page, address: str) -> None:
    write(page, {"title": "Boot room"})
    write(page, {"title": "Boot room", "note": "oak"})
    leave(page, {"title": "Boot room"}, {"title": "Boot room", "count": 2}, 1)
    for _ in range(2):
        run_store(page, address)
        do(page, "await store.flushed()")
        assert kept_documents(page)["job", "one"]["body"] == {
            "title": "Boot room",
            "note": "oak",
            "count": 2,
        }


def test_what_a_killed_page_had_written_without_hearing_of_it(page: Page, address: str) -> None:
    """Typed: 27, then 27 13/16; the first was written, and the page went before it knew."""
    write(page, {"title": "27"})
    (step,) = history(page)
    leave(page, {}, {"title": "27 13/16"}, 0)
    work = """
      const name = "longpoint unwritten killed";
      const [left] = JSON.parse(localStorage.getItem(name));
      const [last] = left.changes;
      const state = { ...last.state, body: { title: "27" } };
      left.changes = [{ ...last, by, count, state }, { ...last, by, count: count + 1 }];
      localStorage.setItem(name, JSON.stringify([left]));
    """
    do(page, work, by=step["by"], count=step["count"])
    run_store(page, address)
    do(page, "await store.flushed()")
    assert kept_documents(page)["job", "one"]["body"] == {"title": "27 13/16"}


def test_what_a_killed_page_left_gives_way_to_what_was_typed_since(
    page: Page, address: str
) -> None:
    write(page, {"title": "Boot room"})
    write(page, {"title": "Pantry"}, "Title")
    leave(page, {"title": "Boot room"}, {"title": "Porch"}, 1)
    run_store(page, address)
    work = """
      const job = await store.openDocument("job", "one");
      const said = [job.body.title];
      for (const way of ["undo", "undo", "undo"]) {
        await job[way]();
        said.push(job.body.title);
      }
      return said;
    """
    assert do(page, work) == ["Pantry", "Porch", "Pantry", "Boot room"]


def test_jobs_are_listed_by_their_titles_the_last_written_first(page: Page) -> None:
    work = """
      let now = 1.7e12;
      Date.now = () => (now += 1);
      for (const title of ["Boot room", "Pantry", "Porch"]) {
        const job = await store.openDocument("job", title);
        job.change({ title, items: [] }, "in");
        await store.flushed();
      }
      const pantry = await store.openDocument("job", "Pantry");
      pantry.change({ title: "Larder", items: [] }, "in");
      await store.deleteDocument("job", "Boot room");
      return (await store.listTitles("job")).map(({ id, title }) => [id, title]);
    """
    assert do(page, work) == [["Pantry", "Larder"], ["Porch", "Porch"]]
    do(page, "await store.undeleteDocument('job', 'Boot room')")
    titles = do(page, "return store.listTitles('job')")
    assert [each["title"] for each in titles] == ["Boot room", "Larder", "Porch"]
