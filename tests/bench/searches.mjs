/**
 * Carry searches to their end in the phone's interpreter, and time every call:
 * `node tests/bench/searches.mjs ROUNDS`.
 *
 * Requests come as a JSON list on standard input; a line of JSON goes out for each. A search walks
 * the same way each time, so of each call the quickest of all rounds is what it takes.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { startCore } from "../../web/build/core.mjs";
import { coreSources } from "../../web/build/sources.mjs";

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

const core = fileURLToPath(new URL("../../server/longpoint", import.meta.url));
const sources = await coreSources(core);

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
  while (reply.search) {
    ({ ms, reply } = timed(ask, { do: "continue", search: reply.search }));
    calls.push({ ms, said: reply.answer !== null });
    answer = reply.answer ?? answer;
  }
  const megabytes = memory.buffer.byteLength / 1e6;
  const kilobytes = JSON.stringify(answer ?? reply).length / 1000;
  return { calls, megabytes, kilobytes, answer, errors: reply.errors ?? [] };
}

const rounds = Number(process.argv[2] ?? 3);
for (const { warm, request } of JSON.parse(readFileSync(0, "utf8"))) {
  let best;
  for (let round = 0; round < rounds; round += 1) {
    const ask = await startCore(sources);
    // The import of the tool is measured elsewhere.
    ask(warm);
    const walked = walk(ask, request);
    if (best) {
      best.calls.forEach((call, at) => {
        call.ms = Math.min(call.ms, walked.calls[at].ms);
      });
    } else best = walked;
  }
  process.stdout.write(`${JSON.stringify(best)}\n`);
}
