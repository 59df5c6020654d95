/** What two people said differently on a job: both stand here until one of them says which. */
import { html, nothing, type TemplateResult } from "lit";
import type { Job } from "../job/job";
import type { Json } from "../store/json";
import { toast } from "../parts/toast";
import { typeset } from "../text/typeset";
import { syncStatus } from "./status";

interface Side {
  by: string;
  value: Json;
}

interface Question {
  id: string;
  /** Names, ids and places of rows; absent where it is settled. */
  path?: (string | number)[];
  sides?: [Side, Side];
}

export function questions(job: Job): TemplateResult | typeof nothing {
  const asked = ((job.body as { questions?: Question[] }).questions ?? []).filter(({ path, sides }) => path && sides);
  if (asked.length === 0) return nothing;
  return html`<section class="card item" aria-label="Said differently">
    <h2>Said differently</h2>
    <p class="quiet">Two people changed the same at once. Say which is right; it then stands for both.</p>
    ${asked.map((question) => one(job, question))}
  </section>`;
}

function one(job: Job, { id, path = [], sides }: Question): TemplateResult {
  const settle = (side: number | null): void => void settled(job, id, side);
  return html`<div class="signer" role="group" aria-label=${placeOf(job, path)}>
    <p>${typeset(placeOf(job, path))}</p>
    <div class="actions">
      ${sides?.map(({ by, value }, side) => html`<button type="button" @click=${() => settle(side)}>
        ${typeset(valueWords(value))} <span class="quiet">${by || "one"}</span>
      </button>`)}
      <button type="button" @click=${() => settle(null)}>As it stands</button>
    </div>
  </div>`;
}

async function settled(job: Job, question: string, side: number | null): Promise<void> {
  const said = await job.core.settle(job.body, question, side, syncStatus().person);
  if (said.ok) job.change(() => said.document as never, "Which is right");
  else toast(said.errors[0]?.message ?? "");
}

/** Says where it stands: the titles of what the path leads through, then the field's own name. */
function placeOf(job: Job, path: (string | number)[]): string {
  let at: unknown = job.body;
  const titles: string[] = [];
  for (const step of path) {
    at = Array.isArray(at) ? (at.find((each: { id?: unknown }) => each?.id === step) ?? at[Number(step)]) : (at as { [name: string]: unknown } | undefined)?.[step];
    const title = (at as { title?: unknown } | undefined)?.title;
    if (typeof title === "string" && title) titles.push(title);
  }
  const field = [...path].reverse().find((step) => typeof step === "string" && /^[a-z_]+$/.test(step)) ?? "";
  const words = field === "title" ? "its name" : String(field).replaceAll("_", " ");
  return [...titles, words].filter(Boolean).join(", ");
}

const MOST = 60;

function valueWords(value: Json): string {
  if (value === null) return "nothing";
  if (typeof value === "object") {
    const text = "text" in value && typeof value["text"] === "string" ? value["text"] : JSON.stringify(value);
    return text.length > MOST ? `${text.slice(0, MOST - 1)}…` : text;
  }
  return String(value);
}
