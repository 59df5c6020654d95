import type {
  AnswerReply, InputKind, RawInputs, ReadReply, Scale, SearchReply,
} from "../contract";
import { Engine } from "./engine";
import { BROKE, CoreFault } from "./fault";
import { takePrestarted } from "./prestart-worker";
import { brokenFields, isBroken, REFUSED } from "./surrogates";

export { CoreFault };

/**
 * The trade core, running in a worker that is restarted when it breaks or hangs.
 *
 * Requests are answered one after the other, in the order they were made. One that fails rejects
 * with a CoreFault; those behind it go to the next worker.
 */
export class Core {
  #engine: Engine;
  #last: Promise<unknown> = Promise.resolve();

  /** Boot a module Worker with MicroPython; the page fetches wasm and sources and posts them. */
  constructor() {
    this.#engine = takePrestarted() ?? new Engine();
  }

  /** Resolves when the worker of this moment can answer, rejects with a CoreFault. */
  get started(): Promise<void> {
    return this.#engine.started;
  }

  /** Ask `tool` for its answer to `inputs` as typed. */
  async answer(tool: string, inputs: RawInputs, scale: Scale): Promise<AnswerReply> {
    const errors = brokenFields(inputs);
    if (errors.length > 0) return { ok: false, errors };
    return this.#ask({ do: "answer", tool, inputs, ...scale });
  }

  /** Ask for a better answer than the last one, which left its search open. */
  async goOn(search: number): Promise<SearchReply> {
    return this.#ask({ do: "continue", search });
  }

  /** Read one value as typed, for a form's own needs (the pad's second line). */
  async read(kind: InputKind, text: string, scale: Scale): Promise<ReadReply> {
    if (isBroken(text)) {
      return { ok: false, errors: [{ field: "", message: REFUSED, missing: false }] };
    }
    return this.#ask({ do: "read", kind, text, ...scale });
  }

  #ask<Reply>(request: object): Promise<Reply> {
    const turn = this.#last.then(() => this.#call<Reply>(JSON.stringify(request)));
    this.#last = turn.catch(() => undefined);
    return turn;
  }

  async #call<Reply>(text: string): Promise<Reply> {
    const engine = this.#engine;
    try {
      return JSON.parse(await engine.call(text)) as Reply;
    } catch (error) {
      engine.end();
      this.#engine = new Engine();
      console.error(error);
      throw error instanceof CoreFault ? error : new CoreFault(BROKE, { cause: error });
    }
  }
}
