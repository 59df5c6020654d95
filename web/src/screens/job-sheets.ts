/** The sheets of a job's screen: the job itself, an item, a question, what to add. */
import { html, nothing, type TemplateResult } from "lit";
import { live } from "lit/directives/live.js";
import { unsafeHTML } from "lit/directives/unsafe-html.js";
import { jobHash } from "../address/address";
import type { Pattern } from "../contract/contract";
import { calledAs, catalog, listed, pictureOf } from "../engine/catalog";
import type { Customer, Entry, Item } from "../job/document";
import {
  addQuestion, beginItem, changeItem, copyItem, deleteEntry, deleteItem, moveEntry, moveItem, rename,
  renameEntry, setCustomer,
} from "../job/edits";
import type { Job } from "../job/job";
import { icon } from "../parts/icons";
import { sheet } from "../parts/sheet";
import { counter, textField } from "../parts/text-field";
import { typeset } from "../text/typeset";
import "./photos";
import type { Search } from "./search";

type Close = () => void;
type Seen = (id: string) => void;

/** As many as the core takes. */
const ALIKE: [number, number] = [1, 200];
const NOTE = 4000;

/** Returns the sheet of the job's name and customer. */
export function jobSheet(job: Job, close: Close): TemplateResult {
  const { title, customer = {} } = job.body;
  const line = (label: string, name: keyof Customer, most = 120, isLong = false): TemplateResult =>
    textField({
      label, most, isLong, value: customer[name] ?? "",
      inputmode: name === "phone" ? "tel" : "text",
      put: (value) => setCustomer(job, { [name]: value }),
    });
  return sheet(
    "Job and customer",
    html`${textField({ label: "Name of the job", value: title, put: (value) => rename(job, value) })}
    ${line("Customer", "name")} ${line("Address", "address", 200)} ${line("Phone", "phone", 40)}
    ${line("Note", "note", NOTE, true)} ${done()}`,
    close,
  );
}

function done(): TemplateResult {
  const end = (event: Event): void => (event.currentTarget as HTMLElement).closest("dialog")?.close();
  return html`<button type="button" class="primary" @click=${end}>Done</button>`;
}

function act(label: string, run: () => void, isOff = false, picture = ""): TemplateResult {
  return html`<button type="button" ?disabled=${isOff} @click=${run}>
    ${picture ? icon(picture) : nothing} ${label}
  </button>`;
}

/** Returns the sheet of an item. */
export function itemSheet(job: Job, item: Item, seen: Seen, close: Close): TemplateResult {
  const { id, title, count = 1, note = "" } = item;
  const at = job.body.items.indexOf(item);
  const remove = (): void => {
    close();
    deleteItem(job, id, title);
  };
  const again = async (): Promise<void> => {
    const copy = await copyItem(job, item);
    if (copy) seen(copy);
  };
  return sheet(
    "Item",
    html`${textField({ label: "Name of the item", value: title, put: (value) => changeItem(job, id, { title: value }) })}
      ${counter("How many alike", count, ALIKE, (value) => changeItem(job, id, { count: value }))}
      ${textField({
        label: "Note", value: note, most: NOTE, isLong: true, put: (value) => changeItem(job, id, { note: value }),
      })}
      <lp-photos .job=${job} .item=${item}></lp-photos>
      <div class="actions">
        ${act("The same again", () => void again())}
        ${act("Move up", () => moveItem(job, id, -1), at <= 0, "up")}
        ${act("Move down", () => moveItem(job, id, 1), at >= job.body.items.length - 1, "down")}
        ${act("Delete this item", remove)}
      </div>
      ${done()}`,
    close,
  );
}

/** Returns the sheet of a question. */
export function entrySheet(job: Job, item: Item, entry: Entry, name: string, close: Close): TemplateResult {
  const { id, title = "" } = entry;
  const at = item.entries.indexOf(entry);
  const remove = (): void => {
    close();
    deleteEntry(job, item.id, id, name);
  };
  return sheet(
    name,
    html`<p class="quiet">
        ${listed(entry.tool)?.question ?? "This version has no such question: update, then open it again."}
      </p>
      ${textField({ label: "Its own name on this job", value: title, put: (value) => renameEntry(job, id, value) })}
      <div class="actions">
        ${act("Move up", () => moveEntry(job, item.id, id, -1), at <= 0, "up")}
        ${act("Move down", () => moveEntry(job, item.id, id, 1), at >= item.entries.length - 1, "down")}
        ${act("Delete this question", remove)}
      </div>
      ${done()}`,
    close,
  );
}

/** Returns the sheet of what an item can begin with. */
export function addItemSheet(job: Job, patterns: Pattern[], seen: Seen, close: Close): TemplateResult {
  const begin = async (pattern: string, title = ""): Promise<void> => {
    const id = await beginItem(job, pattern, title);
    if (id) seen(id);
  };
  return sheet(
    "Begin an item with",
    html`<ul class="patterns">
        ${patterns.map((each) => html`<li>${patternButton(each, () => void begin(each.slug, each.title))}</li>`)}
      </ul>
      ${act("An empty item", () => void begin(""))}`,
    close,
  );
}

function patternButton({ title, questions, drawing }: Pattern, begin: () => void): TemplateResult {
  const asks = questions.map(calledAs);
  const picture = pictureOf(drawing);
  return html`<button type="button" class="card pattern" @click=${begin}>
    ${picture ? unsafeHTML(picture) : nothing}
    <span class="named"
      ><span class="asks">${typeset(title)}</span> <span class="under-name">${typeset(asks.join(", "))}</span></span
    >
  </button>`;
}

interface AddingQuestion {
  job: Job;
  /** Id of the item. */
  item: string;
  asked: string;
  search: Search;
  ask(asked: string): void;
  close: Close;
}

/** Returns the sheet of the shelf, to ask one more question for an item. */
export function addQuestionSheet({ job, item, asked, search, ask, close }: AddingQuestion): TemplateResult {
  const add = async (tool: string): Promise<void> => {
    const id = await addQuestion(job, item, tool);
    if (id) location.hash = jobHash(job.id, id);
  };
  const shelves = catalog.places
    .map((shelf) => ({ ...shelf, tools: search.finds(asked) ? search.matching(shelf.tools, asked) : shelf.tools }))
    .filter(({ tools }) => tools.length > 0);
  return sheet(
    "Ask a question",
    html`<label class="find"
        ><span class="unseen">Find a question</span>
        <input
          type="search"
          placeholder="Find a question…"
          autocomplete="off"
          .value=${live(asked)}
          @focus=${() => search.begin()}
          @input=${(event: Event) => ask((event.target as HTMLInputElement).value)}
        />
      </label>
      ${shelves.length === 0 ? html`<p class="quiet" role="status">No question holds “${asked.trim()}”.</p>` : nothing}
      ${shelves.map(
        ({ title, tools }) => html`<section class="block" aria-label=${title}>
          <h2>${title}</h2>
          <ul class="lines">
            ${tools.map(
              (tool) => html`<li>
                <button type="button" class="plain line" @click=${() => void add(tool.slug)}>
                  <span class="named"
                    ><span class="name">${typeset(tool.title)}</span>
                    <span class="under-name">${typeset(tool.question)}</span></span
                  >
                </button>
              </li>`,
            )}
          </ul>
        </section>`,
      )}`,
    close,
  );
}
