import { pictures, tools } from "longpoint:assets";
import { Engine } from "./engine";
import { jsonOf } from "./files";

/** The page's address, `#/<place>/<tool>?…`, as far as it goes. */
const [place = "", tool = ""] = location.hash.split(/[/?]/).slice(1);

/**
 * The first worker, started as soon as this module runs: as a script of its own it runs while the
 * screens' much larger one is still being read, and both cores of a phone have work.
 */
let first: Engine | undefined = new Engine([tool]);

/**
 * What the page shows is asked for here too: the screens would know its name only when they run.
 * Whoever needs it asks again, and hears of a fault.
 */
const own = Object.hasOwn(tools, tool) ? tools[tool] : undefined;
if (own) Promise.all([jsonOf(own), import("../screens/tool")]).catch(() => undefined);
const list = !tool && Object.hasOwn(pictures, place) ? pictures[place] : undefined;
if (list) jsonOf(list).catch(() => undefined);

/** Hand the first worker over, once. */
export function takePrestarted(): Engine | undefined {
  const taken = first;
  first = undefined;
  return taken;
}
