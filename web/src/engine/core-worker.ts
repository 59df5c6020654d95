import { frame, wasm, worker } from "longpoint:core";
import type { CoreAssets, FromWorker, Message } from "../worker/messages";
import { address, fetched } from "./site-url";

/** Fetch the interpreter and the frame, what every core starts with. */
export async function fetchAssets(): Promise<CoreAssets> {
  const bytes = async (path: string) => (await fetched(path)).arrayBuffer();
  const [interpreter, part] = await Promise.all([bytes(wasm), bytes(frame)]);
  return { wasm: interpreter, parts: [part] };
}

interface Waiting {
  resolve: (text: string) => void;
  reject: (fault: unknown) => void;
}

/** A worker that is started with an interpreter, and the replies that are awaited from it. */
export class CoreWorker {
  readonly #worker = new Worker(address(worker), { type: "module", name: "trade core" });
  readonly #waiting = new Map<number, Waiting>();
  #id = 0;
  #fault: unknown;
  /** Resolves when the core has answered once. */
  readonly booted: Promise<string>;

  /**
   * Start the worker; `assets` are posted to it first of all, when they are there.
   *
   * What is posted before its script listens waits for it there: a page that is busy reading its
   * screens would hear late that it listens. Throws where the browser has no workers.
   */
  constructor(readonly assets: Promise<CoreAssets>) {
    this.#worker.onmessage = ({ data }: MessageEvent<FromWorker>) => this.#heard(data);
    this.#worker.onerror = (event) => this.#broke(event);
    this.booted = assets.then((boot) => this.ask({ boot }));
    this.booted.catch(() => undefined); // whoever awaits it hears
  }

  /** Post a message, after `assets`; no reply is awaited. */
  tell(message: Message): number {
    const id = ++this.#id;
    this.#worker.postMessage({ id, ...message });
    return id;
  }

  /** Post a message, after `assets`, and return the text of its reply. */
  ask(message: Message): Promise<string> {
    return new Promise((resolve, reject) => {
      if (this.#fault) reject(this.#fault);
      else this.#waiting.set(this.tell(message), { resolve, reject });
    });
  }

  end(): void {
    this.#worker.terminate();
  }

  #heard(reply: FromWorker): void {
    const waiting = this.#waiting.get(reply.id);
    this.#waiting.delete(reply.id);
    if ("text" in reply) waiting?.resolve(reply.text);
    else waiting?.reject(reply.fault);
  }

  /** A script that did not load, or is none. */
  #broke(fault: unknown): void {
    this.#fault = fault;
    for (const { reject } of this.#waiting.values()) reject(fault);
    this.#waiting.clear();
  }
}
