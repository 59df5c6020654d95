import { createHash } from "node:crypto";
import { mkdir, rename, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";

/** @typedef {Uint8Array | string} Content */

const sha256 = (/** @type {Content} */ content) =>
  createHash("sha256").update(content).digest("hex");

/** Enough of a hash to tell every version apart. */
const short = (/** @type {Content} */ content) => sha256(content).slice(0, 12);

/** The files of one build, held in memory until all of them are there. */
export class Site {
  /** @type {Map<string, Content>} */
  #files = new Map();

  /**
   * Add a file under a name that stays the same from build to build.
   * @param {string} path
   * @param {Content} content
   */
  add(path, content) {
    this.#files.set(path, content);
    return path;
  }

  /**
   * Add a file under a name that carries its content's hash; return that path.
   * @param {string} name
   * @param {string} extension
   * @param {Content} content
   */
  addHashed(name, extension, content) {
    return this.add(`assets/${name}-${short(content)}.${extension}`, content);
  }

  /** @returns {[path: string, content: Content][]} every file, in order of path */
  files() {
    return [...this.#files].sort(([a], [b]) => (a < b ? -1 : 1));
  }

  /** @returns {[path: string, sha256: string][]} */
  digests() {
    return this.files().map(([path, content]) => [path, sha256(content)]);
  }

  /**
   * Name the version made of what is there so far, and of a note beside it.
   * @param {string} note
   */
  version(note) {
    return short(JSON.stringify([note, this.digests()]));
  }

  /**
   * Put the site in the place of `folder`: all of it, or on any failure none of it.
   * @param {string} folder
   */
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
}
