import { coreAssets, loadParts, loadRest, partsOf } from "./core-assets";
import { CoreWorker } from "./core-worker";
import { CoreFault, NO_WORKER, NOT_STARTED, TOO_LONG } from "./fault";
import { watchdog } from "./watchdog";

const CALL_SECONDS = 3;
/** In this time a slow phone loads the worker's script, compiles the interpreter, imports the core. */
const BOOT_SECONDS = 20;

/** The worker that the page has started at once, the first time; then a new one. */
async function takeWorker(): Promise<CoreWorker> {
  const started = globalThis.coreAtOnce;
  globalThis.coreAtOnce = undefined;
  try {
    return started ?? new CoreWorker(coreAssets());
  } catch (cause) {
    throw new CoreFault(NO_WORKER, { cause }); // some browsers have none, or refuse this one
  }
}

/** Wait for a reply at most `seconds` from now. */
function within<Reply>(seconds: number, reply: Promise<Reply>): Promise<Reply> {
  return new Promise<Reply>((resolve, reject) => {
    const off = watchdog(seconds, () => reject(new CoreFault(TOO_LONG)));
    reply.then(resolve, reject).finally(off);
  });
}

/** One worker with one interpreter, from its start to its end. One request at a time. */
export class Engine {
  #worker = takeWorker();
  /** What each core starts with has been posted to the worker. */
  #isPosted = this.#worker.then((worker) => worker.assets);
  /** The parts of the core that the worker has, or has been posted. */
  #parts = new Set<string>();
  #brought: Promise<void>;
  /** Resolves when the core has answered once, rejects with a CoreFault. */
  readonly started: Promise<void>;

  /** Start a worker with what the core needs for requests about `tools`. */
  constructor(tools: readonly string[] = []) {
    this.#brought = this.#bring(tools);
    this.started = this.#start();
    // Whoever awaits them or asks hears of a failed start; alone it is no stray error.
    for (const each of [this.#brought, this.started]) each.catch(() => undefined);
  }

  async #start(): Promise<void> {
    try {
      const [worker] = await Promise.all([this.#worker, this.#isPosted]);
      await Promise.all([within(BOOT_SECONDS, worker.booted), this.#brought]);
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
    await Promise.race([this.#brought, this.started]);
    await this.#bring(tools);
    const reply = (await this.#worker).ask({ text });
    reply.catch(() => undefined); // a start that failed is what is said
    await this.started;
    const answer = await within(CALL_SECONDS, reply);
    loadRest();
    return answer;
  }

  async #bring(tools: readonly string[]): Promise<void> {
    const missing = partsOf(tools).filter((part) => !this.#parts.has(part));
    if (missing.length === 0) return;
    const loading = loadParts(missing).catch((cause: unknown) => {
      throw new CoreFault(NOT_STARTED, { cause });
    });
    const [worker, parts] = await Promise.all([this.#worker, loading, this.#isPosted]);
    worker.tell({ parts });
    for (const part of missing) this.#parts.add(part);
  }

  end(): void {
    this.#worker.then((worker) => worker.end(), () => undefined);
  }
}
