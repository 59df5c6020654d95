import { createHash } from "node:crypto";
import { mkdir, rename, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";

const sha256 = (content) => createHash("sha256").update(content).digest("hex");

/** The files of one build, held in memory until all of them are there. */
export class Site {
  /** @type {Map<string, Uint8Array | string>} */
  #files = new Map();

  /** Add a file under a name that stays the same from build to build. */
  add(path, content) {
    this.#files.set(path, content);
    return path;
  }

  /** Add a file under a name that carries its content's hash; return that path. */
  addHashed(name, extension, content) {
    return this.add(`assets/${name}-${sha256(content).slice(0, 12)}.${extension}`, content);
  }

  /** @returns {[path: string, sha256: string][]} every file, in order of path */
  digests() {
    const paths = [...this.#files.keys()].sort();
    return paths.map((path) => [path, sha256(this.#files.get(path))]);
  }

  /** Hash what is there so far, and a note beside it. */
  version(note) {
    return sha256(JSON.stringify([note, this.digests()])).slice(0, 12);
  }

  /** Put the site in the place of `folder`: all of it, or on any failure none of it. */
  async write(folder) {
    const fresh = `${folder}.${process.pid}`;
    try {
      for (const [path, content] of this.#files) {
        await mkdir(dirname(join(fresh, path)), { recursive: true });
        await writeFile(join(fresh, path), content);
      }
      await rm(folder, { recursive: true, force: true });
      await rename(fresh, folder);
    } finally {
      await rm(fresh, { recursive: true, force: true });
    }
  }

  /** @returns {{path: string, content: Uint8Array | string}[]} */
  list() {
    return [...this.#files].map(([path, content]) => ({ path, content }));
  }
}
