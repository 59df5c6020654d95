/** Whether a part of an answer changed is seen by identity: what says the same stays the same. */

type Tree = Record<string, unknown>;

function isTree(value: unknown): value is Tree {
  return typeof value === "object" && value !== null;
}

/** Returns `now` with every part that equals the one in its place in `before` taken from there. */
export function shareStructure<T>(before: unknown, now: T): T {
  if (!isTree(before) || !isTree(now)) return now;
  const tree: Tree = now;
  const names = Object.keys(tree);
  for (const name of names) tree[name] = shareStructure(before[name], tree[name]);
  const isSame =
    names.length === Object.keys(before).length &&
    Array.isArray(now) === Array.isArray(before) &&
    names.every((name) => name in before && tree[name] === before[name]);
  return isSame ? (before as T) : now;
}
