import { Engine } from "./engine";

/**
 * The first worker, started as soon as this module runs: as a script of its own it runs while the
 * screens' much larger one is still being read, and both cores of a phone have work.
 */
let first: Engine | undefined = new Engine(addressed());

/** Return the tool that the page's address names, `#/<place>/<tool>?…`, if any. */
function addressed(): string[] {
  return location.hash.split(/[/?]/).slice(2, 3);
}

/** Hand the first worker over, once. */
export function takePrestarted(): Engine | undefined {
  const taken = first;
  first = undefined;
  return taken;
}
