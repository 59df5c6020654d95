/**
 * Let two people's job meet in the phone's interpreter: `node tests/bench/meeting.mjs ROUNDS`.
 *
 * Standard input is a JSON object of requests by name. A line of JSON goes out: of each the least
 * processor milliseconds of all rounds.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { startCore } from "../../web/build/core.mjs";
import { coreSources } from "../../web/build/sources.mjs";

const core = fileURLToPath(new URL("../../server/longpoint", import.meta.url));
const requests = JSON.parse(readFileSync(0, "utf8"));
const ask = await startCore(await coreSources(core));
const least = {};
for (let round = 0; round < Number(process.argv[2] ?? 5); round += 1) {
  for (const [name, request] of Object.entries(requests)) {
    const begun = process.cpuUsage();
    const reply = ask(request);
    const { user, system } = process.cpuUsage(begun);
    if (!reply.ok) throw new Error(JSON.stringify(reply.errors));
    least[name] = Math.min(least[name] ?? Infinity, (user + system) / 1000);
  }
}
process.stdout.write(`${JSON.stringify(least)}\n`);
