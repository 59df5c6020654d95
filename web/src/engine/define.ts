/**
 * Runs the app's scripts: each calls `define` with the names of those that it needs (AMD).
 *
 * A browser keeps a classic script compiled from the moment the service worker keeps it; a module is
 * read and compiled anew at each start. This stands at the top of the page's one script and asks for
 * those that the page preloads, so that nothing seen waits for any of them.
 */
export {}; // a module to the compiler, which declares `define` for all

type Exports = object;
type Require = (names: [string], found: (exports: Exports) => void, failed: (error: unknown) => void) => void;

declare global {
  var define: ((needs: string[], run: (...needed: unknown[]) => void) => void) | undefined;
}

/** A script that runs, or that another waits for. */
class Script {
  isDefined = false;
  readonly exports: Promise<Exports>;
  resolve: (exports: Exports | Promise<Exports>) => void = () => undefined;
  reject: (error: Error) => void = () => undefined;

  constructor() {
    this.exports = new Promise((resolve, reject) => Object.assign(this, { resolve, reject }));
  }
}

const scripts = new Map<string, Script>();

function scriptAt(address: string): Script {
  const script = scripts.get(address) ?? new Script();
  scripts.set(address, script);
  return script;
}

function load(address: string): Promise<Exports> {
  const known = scripts.get(address);
  if (known) return known.exports;
  const script = scriptAt(address);
  ask(address, script);
  return script.exports;
}

/** One that does not come, or is none, is asked for again by who wants it next. */
function ask(address: string, script: Script): void {
  const element = document.createElement("script");
  element.onload = element.onerror = () => {
    element.remove();
    if (script.isDefined) return;
    scripts.delete(address);
    script.reject(new Error(`no script came from ${address}`));
  };
  element.src = address;
  document.head.append(element);
}

globalThis.define = (needs, run) => {
  const { src } = document.currentScript as HTMLScriptElement;
  const script = scriptAt(src);
  script.isDefined = true;
  const find = (name: string) => load(new URL(name, src).href);
  const require: Require = ([name], found, failed) => void find(name).then(found, failed);
  const exports: Exports = {};
  const given = needs.map((name) => (name === "exports" ? exports : name === "require" ? require : find(name)));
  const finish = (needed: unknown[]): Exports => {
    run(...needed);
    return exports;
  };
  // What needs no other runs at once: the core starts with it.
  const needsOthers = given.some((each) => each instanceof Promise);
  script.resolve(needsOthers ? Promise.all(given).then(finish) : finish(given));
};

for (const { href } of document.querySelectorAll<HTMLLinkElement>("link[as=script]")) load(href).catch(console.error);
