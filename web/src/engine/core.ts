import type {
  AnswerReply, Declared, FormReply, GivenFigure, JobSaid, LabelSaid, Laid, Laying, RawInputs, Refused, Scale,
  SearchReply, SizesSaid, Units,
} from "../contract/contract";
import type { JsonObject } from "../store/json";
import { Engine } from "./engine";
import { BROKE, CoreFault } from "./fault";
import { isInParts, JobParts } from "./job-parts";
import { takePrestarted } from "./prestart-worker";
import { isKept } from "./site-url";
import { afterStart } from "./start";

export { CoreFault };

/** A form as it is kept and shown. */
export interface AskedForm {
  tool: string;
  inputs: RawInputs;
  /** Units that bare numbers were typed in. */
  typed_in: Units;
  /** Version of the form that kept the inputs. */
  version: number;
  /** Path of the field in hand. */
  active: string;
  /** What other questions of a job give, by input. */
  carried: { [input: string]: { value: unknown; from: string } };
}

/** A document as this phone and the shop's server have it; null where it is not, or deleted. */
export interface Meeting {
  kind: string;
  base: object | null;
  mine: object | null;
  theirs: object | null;
  /** Whether the server stands at a version that this phone had before. */
  is_behind: boolean;
  /** Who says mine, who says theirs. */
  names: [string, string];
}

export interface Met {
  ok: true;
  document: { units: Units; schema: number; body: JsonObject } | null;
  is_mine: boolean;
  is_theirs: boolean;
  collisions: { path: string }[];
}

export interface Settled {
  ok: true;
  document: JsonObject;
}

/** Half of a character: it cannot be written as UTF-8, so it must not reach the core. */
const HALF = /\p{Surrogate}/gu;

function wellFormed(_: string, value: unknown): unknown {
  return typeof value === "string" ? value.replace(HALF, "\uFFFD") : value;
}

/**
 * The trade core, running in a worker that is restarted when it breaks or hangs.
 *
 * Requests are answered one after the other, in the order they were made. One that fails rejects
 * with a CoreFault; those behind it go to the next worker.
 */
export class Core {
  #engine: Promise<Engine>;
  #last: Promise<unknown> = Promise.resolve();
  readonly #parts = new JobParts();
  /** Whether the core has started once. */
  isUp = false;

  /** Boot a module Worker with MicroPython; the page fetches its files and posts them. */
  constructor() {
    this.#engine = takePrestarted() ?? Promise.resolve(new Engine());
    void this.started.then(
      () => (this.isUp = true),
      () => undefined,
    );
  }

  /** Resolves when the worker of this moment can answer, rejects with a CoreFault. */
  get started(): Promise<void> {
    return this.#engine.then((engine) => engine.started);
  }

  /** Resolves when the core has started, or can't; where the app is kept, once its first answer is drawn. */
  async settled(): Promise<void> {
    await this.started.then(() => (isKept() ? this.#last.then(afterStart) : undefined), () => undefined);
  }

  /** Tell whether the core answers: now, or anew from what has meanwhile been kept. */
  async answers(): Promise<boolean> {
    const ask = () => this.#ask({ do: "shelf" }).then(() => true);
    return ask().catch(() => ask().catch(() => false));
  }

  /**
   * Ask what each field of a form comes to, and for its answer.
   *
   * Of a long list a brief answer comes alone; its fields come with the next one of its search.
   */
  async form(asked: AskedForm, scale: Scale): Promise<FormReply | SearchReply> {
    return this.#ask({ do: "form", ...asked, answer: true, ...scale }, [asked.tool]);
  }

  /** Ask what each field of a form comes to, and for no answer. */
  async fields(asked: AskedForm, scale: Scale): Promise<FormReply | Refused> {
    return this.#ask({ do: "form", ...asked, answer: false, ...scale }, [asked.tool]);
  }

  /** Ask `tool` for its answer to whole inputs, such as its own example. */
  async answer(tool: string, inputs: RawInputs, scale: Scale): Promise<AnswerReply> {
    return this.#ask({ do: "answer", tool, inputs, ...scale }, [tool]);
  }

  /** Ask what a tool gives: its figures, and which size each is. */
  async gives(tool: string): Promise<GivenFigure[]> {
    const said = await this.#ask<Declared>({ do: "declare", tool }, [tool]);
    return said.ok ? said.tool.gives : [];
  }

  /** Ask for a better answer than the last one, which left its search open. */
  async goOn(search: number): Promise<FormReply | SearchReply> {
    return this.#ask({ do: "continue", search });
  }

  /**
   * Ask what a job comes to; it is worked out a step at each call. `offcuts` are the rows of the
   * shop's own list.
   * Each item is a text: the core reads again only those that have changed.
   */
  async job(job: { items: object[] }, scale: Scale, offcuts: object[]): Promise<JobSaid> {
    const items = job.items.map((item) => JSON.stringify(item, wellFormed));
    const ask = () => ({ do: "job", job: { ...job, items }, offcuts, have: this.#parts.have, ...scale });
    return this.#ask(ask, ["job"]);
  }

  /** Ask whether a document is a job; each fault has its place. */
  async checkJob(job: unknown): Promise<{ ok: true } | Refused> {
    return this.#ask({ do: "check job", job }, ["job"]);
  }

  /** Ask what a document says once this phone and the shop's server have met. */
  async meet(request: Meeting): Promise<Met | Refused> {
    return this.#ask({ do: "meet", ...request }, ["job"]);
  }

  /** Settle a question to two people; a side of null leaves it as it is. */
  async settle(document: object, question: string, side: number | null, by: string): Promise<Settled | Refused> {
    return this.#ask({ do: "answer question", document, question, side, by }, ["job"]);
  }

  /** Lay an item or a question into a job. */
  async lay(request: Laying, job: object): Promise<Laid | Refused> {
    return this.#ask({ ...request, job }, ["job"]);
  }

  /** Ask where labels lie on a sheet of paper; `asked` holds their sizes as typed. */
  async labels(asked: { [name: string]: string }, scale: Scale): Promise<LabelSaid | Refused> {
    return this.#ask({ do: "labels", ...asked, ...scale }, ["job"]);
  }

  /** Ask for events as a calendar file; `stamp` is the moment of asking. */
  async calendar(title: string, events: object[], stamp: string): Promise<{ ok: true; file: string } | Refused> {
    return this.#ask({ do: "calendar", title, events, stamp }, ["job"]);
  }

  /** Ask of each size of a stock, by name, what it reads as or why it can't be one. */
  async readSizes(texts: { [name: string]: string }, units: Units, scale: Scale): Promise<SizesSaid> {
    return this.#ask({ do: "read sizes", texts, typed_in: units, ...scale });
  }

  /** Ask for the next step of the job that is being worked out. */
  async goOnJob(work: number): Promise<JobSaid> {
    return this.#ask({ do: "continue job", work }, ["job"]);
  }

  /** `tools` are those that the request is about; one that is a function is made in its turn. */
  #ask<Reply>(request: object | (() => object), tools: string[] = []): Promise<Reply> {
    const text = () => JSON.stringify(typeof request === "function" ? request() : request, wellFormed);
    const turn = this.#last.then(() => this.#call<Reply>(text(), tools));
    this.#last = turn.catch(() => undefined);
    return turn;
  }

  async #call<Reply>(text: string, tools: string[]): Promise<Reply> {
    const engine = await this.#engine;
    try {
      const reply = JSON.parse(await engine.call(text, tools)) as object;
      return (isInParts(reply) ? { ...reply, job: this.#parts.whole(reply) } : reply) as Reply;
    } catch (error) {
      engine.end();
      this.#engine = Promise.resolve(new Engine());
      console.error(error);
      throw error instanceof CoreFault ? error : new CoreFault(BROKE, { cause: error });
    }
  }
}
