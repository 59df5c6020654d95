/** Styles that only some screens wear, loaded with them. */
import { styles } from "longpoint:assets";
import { address } from "../engine/site-url";

const worn = new Map<string, Promise<void>>();

/** Resolves when the style is worn; a failed load is forgotten, the next asks again. */
export function withStyle(name: string): Promise<void> {
  const known = worn.get(name);
  if (known) return known;
  const wearing = wear(styles[name] ?? "");
  worn.set(name, wearing);
  wearing.catch(() => worn.delete(name));
  return wearing;
}

function wear(path: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const link = document.createElement("link");
    Object.assign(link, { rel: "stylesheet", href: address(path) });
    link.onload = () => resolve();
    link.onerror = () => {
      link.remove();
      reject(new Error(`${path} was not loaded`));
    };
    document.head.append(link);
  });
}
