/**
 * Answer requests in the phone's interpreter: `node build/ask.mjs [--core DIR]`.
 *
 * A JSON object on each line of standard input, its reply on a line of standard output.
 */
import { createInterface } from "node:readline";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { startCore } from "./core.mjs";
import { coreSources } from "./sources.mjs";

const web = fileURLToPath(new URL("..", import.meta.url));
const { values: options } = parseArgs({
  options: { core: { type: "string", default: join(web, "../server/longpoint") } },
});

const ask = await startCore(await coreSources(resolve(options.core)));
for await (const line of createInterface({ input: process.stdin })) {
  process.stdout.write(`${JSON.stringify(ask(JSON.parse(line)))}\n`);
}
