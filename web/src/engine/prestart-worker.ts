import { pictures, tools } from "longpoint:assets";
import { bringRooms } from "../job/bring";
import { Engine } from "./engine";
import { jsonOf } from "./files";
import { isKept } from "./site-url";

/** The page's address, `#/<place>/<tool>?<inputs>` or `#/job/<job>/<part>`. */
const [path = "", inputs = ""] = location.hash.split("?");
const [, place = "", tool = "", part = ""] = path.split("/");

/** Milliseconds after which the core starts whatever the screen does. */
const PATIENCE = 2_000;

/** Milliseconds in which a frame that is drawn comes onto the screen. */
const ON_SCREEN = 50;

/** What stands is on the screen; a page that nobody sees draws nothing. */
const drawn = () =>
  new Promise<void>((resolve) => {
    requestAnimationFrame(() => setTimeout(resolve, ON_SCREEN));
    setTimeout(resolve, PATIENCE);
  });

let stands: () => void = () => undefined;
const screenStands = new Promise<void>((resolve) => {
  stands = resolve;
  setTimeout(resolve, PATIENCE);
});

/**
 * The first engine. Where the app is kept its worker has started already (`at-once.ts`) and gets what
 * the tool needs; this script runs while the screens' much larger one is still being read. On a first
 * visit the interpreter would take the line from what is to be seen, unless that is an answer.
 */
let first: Promise<Engine> | undefined = isKept() || inputs
  ? Promise.resolve(new Engine([tool]))
  : screenStands.then(drawn).then(() => new Engine([tool]));

/** Says that the first screen stands. */
export function firstScreenStands(): void {
  stands();
}

/**
 * What the page shows is asked for here too: the screens would know its name only when they run.
 * Whoever needs it asks again, and hears of a fault.
 */
const own = Object.hasOwn(tools, tool) ? tools[tool] : undefined;
if (own) Promise.all([jsonOf(own), import("../screens/tool")]).catch(() => undefined);
if (place === "job") bringRooms(part).catch(() => undefined);
const list = !tool && Object.hasOwn(pictures, place) ? pictures[place] : undefined;
if (list) jsonOf(list).catch(() => undefined);

/** Hand the first worker over, once. */
export function takePrestarted(): Promise<Engine> | undefined {
  const taken = first;
  first = undefined;
  return taken;
}
