import { worker as workerPath } from "longpoint:assets";
import { LISTENING, type FromWorker, type Supplies } from "../worker/messages";
import { BROKE, CoreFault, NOT_STARTED, TOO_LONG } from "./fault";
import { address } from "./place";
import { supplies } from "./supplies";
import { watchdog } from "./watchdog";

const CALL_SECONDS = 3;
/** In this time a slow phone loads the worker's script, compiles the interpreter, imports the core. */
const BOOT_SECONDS = 20;

/** One worker with one interpreter, from its start to its end. One request at a time. */
export class Engine {
  #worker = new Worker(address(workerPath), { type: "module", name: "trade core" });
  #id = LISTENING;

  /** Start a worker and wait until its core has answered once. */
  static async start(): Promise<Engine> {
    const engine = new Engine();
    try {
      // Posted before the script listens, the supplies wait for it in the worker: a page that is
      // busy reading its screens would hear late that it listens.
      const booted = supplies().then((boot) => engine.#request({ boot }, BOOT_SECONDS));
      await Promise.all([engine.#reply(LISTENING), booted]);
      return engine;
    } catch (error) {
      engine.end();
      console.error(error);
      throw error instanceof CoreFault ? error : new CoreFault(NOT_STARTED, { cause: error });
    }
  }

  /** Hand JSON text to the core and return its JSON text. */
  call(text: string): Promise<string> {
    return this.#request({ text }, CALL_SECONDS);
  }

  end(): void {
    this.#worker.terminate();
  }

  async #request(what: { boot: Supplies } | { text: string }, seconds: number): Promise<string> {
    const id = ++this.#id;
    const reply = this.#reply(id, seconds);
    this.#worker.postMessage({ id, ...what });
    return reply;
  }

  /** Wait for the words under `id`; without `seconds` as long as the script takes to load. */
  #reply(id: number, seconds?: number): Promise<string> {
    const listening = new AbortController();
    const { signal } = listening;
    return new Promise<string>((resolve, reject) => {
      this.#worker.addEventListener(
        "message",
        (event: MessageEvent<FromWorker>) => {
          const reply = event.data;
          if (reply.id !== id) return;
          if ("text" in reply) resolve(reply.text);
          else reject(new CoreFault(BROKE, { cause: reply.fault }));
        },
        { signal },
      );
      this.#worker.addEventListener("error", (event) => reject(event), { signal });
      if (seconds === undefined) return;
      const off = watchdog(seconds, () => reject(new CoreFault(TOO_LONG)));
      signal.addEventListener("abort", off);
    }).finally(() => listening.abort());
  }
}
