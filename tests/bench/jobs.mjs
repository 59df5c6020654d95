/**
 * Work a job out in the phone's interpreter, change one number, and work it out again:
 * `node tests/bench/jobs.mjs ROUNDS`.
 *
 * Standard input is a JSON object: `job`, `changed`, and `form`, the request of the changed question's
 * own screen. A line of JSON goes out: of each step the least processor milliseconds of all rounds.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { startCore } from "../../web/build/core.mjs";
import { coreSources } from "../../web/build/sources.mjs";

const core = fileURLToPath(new URL("../../server/longpoint", import.meta.url));
const sources = await coreSources(core);

/** Processor time: that of a busy machine's other programs is not in it. */
function timed(ask, request) {
  const begun = process.cpuUsage();
  const reply = ask(request);
  const { user, system } = process.cpuUsage(begun);
  if (!reply.ok) throw new Error(JSON.stringify(reply.errors));
  return { ms: (user + system) / 1000, reply };
}

/** Work a job out as a page does that has `have` parts of the reply before. */
function walk(ask, job, have) {
  const steps = [];
  let kilobytes = 0;
  const items = job.items.map((item) => JSON.stringify(item));
  let request = { do: "job", job: { ...job, items }, have };
  for (;;) {
    const { ms, reply } = timed(ask, request);
    have = Math.max(have, ...Object.keys(reply.parts ?? {}).map(Number));
    steps.push({ ms, whole: "yard" in reply.job });
    if (!steps.slice(0, -1).some(({ whole }) => whole)) kilobytes += JSON.stringify(reply).length / 1000;
    if (reply.work === null) return { steps, kilobytes, have };
    request = { do: "continue job", work: reply.work };
  }
}

function least(best, walked) {
  if (!best) return walked;
  best.steps.forEach((step, at) => {
    step.ms = Math.min(step.ms, walked.steps[at].ms);
  });
  return best;
}

const { job, changed, form } = JSON.parse(readFileSync(0, "utf8"));
let first, again, own;
for (let round = 0; round < Number(process.argv[2] ?? 5); round += 1) {
  const ask = await startCore(sources);
  const opened = walk(ask, job, 0);
  first = least(first, opened);
  ask(form);
  again = least(again, walk(ask, changed, opened.have));
  const { ms } = timed(ask, { ...form, inputs: { ...form.inputs, stile: "2 3/8" } });
  own = Math.min(own ?? Infinity, ms);
}
process.stdout.write(`${JSON.stringify({ first, again, own })}\n`);
