/** Files of this site, each fetched once for the life of the page. */
import { fetched } from "./site-url";

/** Returns what gives a file as `read` makes it; a failed fetch is forgotten, the next asks again. */
function held<Content>(read: (response: Response) => Promise<Content>): (path: string) => Promise<Content> {
  const files = new Map<string, Promise<Content>>();
  return (path) => {
    const known = files.get(path);
    if (known) return known;
    const file = fetched(path).then(read);
    files.set(path, file);
    file.catch(() => files.delete(path));
    return file;
  };
}

export const bytesOf = held((response) => response.arrayBuffer());

const jsonAt = held<unknown>((response) => response.json());

/** Returns what the JSON in a file says: one object for all who ask. */
export function jsonOf<Content>(path: string): Promise<Content> {
  return jsonAt(path) as Promise<Content>;
}
