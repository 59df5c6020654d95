import { worker as workerPath } from "longpoint:assets";
import { LISTENING, type FromWorker, type Message } from "../worker/messages";
import { BROKE, CoreFault, NO_WORKER, NOT_STARTED, TOO_LONG } from "./fault";
import { address } from "./site-url";
import { loadCoreAssets, loadParts, loadRest, partsOf } from "./core-assets";
import { watchdog } from "./watchdog";

const CALL_SECONDS = 3;
/** In this time a slow phone loads the worker's script, compiles the interpreter, imports the core. */
const BOOT_SECONDS = 20;

/** Some browsers have no workers, or refuse this one: that is said when an answer is wanted. */
function startWorker(): Worker | null {
  try {
    return new Worker(address(workerPath), { type: "module", name: "trade core" });
  } catch (error) {
    console.error(error);
    return null;
  }
}

/** One worker with one interpreter, from its start to its end. One request at a time. */
export class Engine {
  #worker = startWorker();
  #id = LISTENING;
  /** The parts of the core that the worker has, or has been posted. */
  #parts: Set<string>;
  #booting: Promise<number>;
  /** Resolves when the core has answered once, rejects with a CoreFault. */
  readonly started: Promise<void>;

  /** Start a worker with what the core needs for requests about `tools`. */
  constructor(tools: readonly string[] = []) {
    const parts = partsOf(tools);
    this.#parts = new Set(parts);
    // Posted before the script listens, the assets wait for it in the worker: a page that is busy
    // reading its screens would hear late that it listens.
    this.#booting = loadCoreAssets(parts).then((boot) => this.#post({ boot }));
    this.started = this.#start();
    // Whoever awaits it or asks hears of a failed start; alone it is no stray error.
    this.started.catch(() => undefined);
  }

  async #start(): Promise<void> {
    try {
      if (!this.#worker) throw new CoreFault(NO_WORKER);
      const booted = this.#booting.then((id) => this.#reply(id, BOOT_SECONDS));
      await Promise.all([this.#reply(LISTENING), booted]);
    } catch (error) {
      this.end();
      console.error(error);
      throw error instanceof CoreFault ? error : new CoreFault(NOT_STARTED, { cause: error });
    }
  }

  /**
   * Hand JSON text to the core and return its JSON text.
   *
   * A core that still starts answers as soon as it has: the text waits in its worker, not here for
   * a page that is busy drawing its first screen. The parts of the core that `tools`, those that
   * the text is about, still need go before it.
   */
  async call(text: string, tools: readonly string[]): Promise<string> {
    await Promise.race([this.#booting, this.started]);
    await this.#bring(tools);
    const reply = this.#reply(this.#post({ text }), CALL_SECONDS, this.started);
    const [answer] = await Promise.all([reply, this.started]);
    loadRest(); // now that no answer waits for files
    return answer;
  }

  async #bring(tools: readonly string[]): Promise<void> {
    const missing = partsOf(tools).filter((part) => !this.#parts.has(part));
    if (missing.length === 0) return;
    const parts = await loadParts(missing).catch((cause: unknown) => {
      throw new CoreFault(NOT_STARTED, { cause });
    });
    this.#post({ parts });
    for (const part of missing) this.#parts.add(part);
  }

  end(): void {
    this.#worker?.terminate();
  }

  #post(what: Message): number {
    const id = ++this.#id;
    this.#worker?.postMessage({ id, ...what });
    return id;
  }

  /** Wait for the words under `id`, `seconds` from `since`; else as long as the script loads. */
  #reply(id: number, seconds?: number, since = Promise.resolve()): Promise<string> {
    const listening = new AbortController();
    const { signal } = listening;
    return new Promise<string>((resolve, reject) => {
      this.#worker?.addEventListener(
        "message",
        (event: MessageEvent<FromWorker>) => {
          const reply = event.data;
          if (reply.id !== id) return;
          if ("text" in reply) resolve(reply.text);
          else reject(new CoreFault(BROKE, { cause: reply.fault }));
        },
        { signal },
      );
      this.#worker?.addEventListener("error", (event) => reject(event), { signal });
      if (seconds === undefined) return;
      const watch = (): void => {
        const off = watchdog(seconds, () => reject(new CoreFault(TOO_LONG)));
        signal.addEventListener("abort", off);
      };
      since.then(() => signal.aborted || watch(), reject);
    }).finally(() => listening.abort());
  }
}
