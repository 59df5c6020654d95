import { boot, type Core } from "./boot";
import type { FromWorker, ToWorker } from "./messages";

let core: Core | undefined;

async function answer(message: ToWorker): Promise<string> {
  if ("boot" in message) {
    core = await boot(message.boot);
    return core.call('{"do":"shelf"}');
  }
  if (!core) throw new Error("asked before the core was started");
  if ("text" in message) return core.call(message.text);
  core.add(message.parts);
  return "";
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
