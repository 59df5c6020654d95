import { boot } from "./boot";
import { LISTENING, type FromWorker, type ToWorker } from "./messages";

let call: ((text: string) => string) | undefined;

async function answer(message: ToWorker): Promise<string> {
  if ("boot" in message) {
    call = await boot(message.boot);
    return call('{"do":"shelf"}');
  }
  if (!call) throw new Error("asked before the core was started");
  return call(message.text);
}

async function reply(message: ToWorker): Promise<FromWorker> {
  try {
    return { id: message.id, text: await answer(message) };
  } catch (error) {
    return { id: message.id, fault: String(error) };
  }
}

let last: Promise<void> = Promise.resolve();

self.addEventListener("message", (event: MessageEvent<ToWorker>) => {
  // In turn: what is asked while the core still starts is answered as soon as it has.
  last = last.then(async () => self.postMessage(await reply(event.data)));
});
self.postMessage({ id: LISTENING, text: "" } satisfies FromWorker);
