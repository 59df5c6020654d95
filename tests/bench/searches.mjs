/**
 * Carry searches to their end in the phone's interpreter, and time every call:
 * `node tests/bench/searches.mjs ROUNDS`.
 *
 * Requests come as a JSON list on standard input; a line of JSON goes out for each. A search walks
 * the same way each time, so of each call the quickest of all rounds is what it takes.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { load } from "../../web/build/bundles.mjs";
import { startCore } from "../../web/build/core.mjs";
import { readCore } from "../../web/build/parts.mjs";

let memory;
for (const name of ["instantiate", "instantiateStreaming"]) {
  const instantiate = WebAssembly[name];
  WebAssembly[name] = async (...given) => {
    const made = await instantiate(...given);
    const exported = Object.values((made.instance ?? made).exports);
    memory = exported.find((each) => each instanceof WebAssembly.Memory);
    return made;
  };
}

const web = fileURLToPath(new URL("../../web/", import.meta.url));
const { filesOf } = await load(`${web}src/worker/parts.ts`);
const { parts } = await readCore(`${web}generated/core`); // as it is built for the phone
const files = Object.values(parts).flatMap(filesOf);

/** Processor time: that of a busy machine's other programs is not in it. */
function timed(ask, request) {
  const begun = process.cpuUsage();
  const reply = ask(request);
  const { user, system } = process.cpuUsage(begun);
  return { ms: (user + system) / 1000, reply };
}

function walk(ask, request) {
  let { ms, reply } = timed(ask, request);
  const calls = [{ ms, said: true }];
  let answer = reply.answer ?? null;
  let briefly = answer?.is_brief ? 1 : 0;
  while (reply.search) {
    ({ ms, reply } = timed(ask, { do: "continue", search: reply.search }));
    calls.push({ ms, said: reply.answer !== null });
    answer = reply.answer ?? answer;
    if (answer.is_brief) briefly = calls.length;
  }
  const megabytes = memory.buffer.byteLength / 1e6;
  const kilobytes = JSON.stringify(answer ?? reply).length / 1000;
  return { calls, megabytes, kilobytes, answer, briefly };
}

const rounds = Number(process.argv[2] ?? 3);
for (const { warm, request } of JSON.parse(readFileSync(0, "utf8"))) {
  let best;
  for (let round = 0; round < rounds; round += 1) {
    const ask = await startCore(files);
    // The import of the tool is measured elsewhere.
    ask(warm);
    const walked = walk(ask, request);
    if (best) {
      best.calls.forEach((call, at) => {
        call.ms = Math.min(call.ms, walked.calls[at].ms);
      });
    } else best = walked;
  }
  const upToWhole = best.calls.slice(0, best.briefly + 1);
  best.whole = upToWhole.reduce((sum, { ms }) => sum + ms, 0);
  process.stdout.write(`${JSON.stringify(best)}\n`);
}
