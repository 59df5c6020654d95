/** The pieces of the cut list in either order: by setting of the saw, or by stick as it is planned. */
import type { JobReply } from "../contract/contract";

export type Cut = JobReply["saw"]["groups"][number]["cuts"][number];

export interface Group {
  title: string;
  /** The stock. */
  of: string;
  cuts: Cut[];
}

const NO_STOCK = "no stock named yet";

/** Returns the pieces of each stock at each setting, so that the saw is set once. */
export function settingsOf({ saw }: JobReply): Group[] {
  return saw.groups.map(({ title, setting, cuts }) => ({ title: `Saw ${setting}`, of: title || NO_STOCK, cuts }));
}

/** Whether any stock is planned stick by stick. */
export function hasSticks(reply: JobReply): boolean {
  return plansOf(reply).length > 0;
}

interface Plan {
  title: string;
  of: string;
  stock: string;
  /** Tags in the order of the cuts. */
  tags: string[];
}

/** A table of a plan that names a piece on each line is a stick. */
function plansOf({ yard }: JobReply): Plan[] {
  return yard.lines
    .filter(({ sold }) => sold === "stick")
    .flatMap(({ title: of, stock, layout }) =>
      layout.flatMap(({ name, columns, rows }) => {
        const at = columns.indexOf("Piece");
        return at < 0 ? [] : [{ title: name, of, stock, tags: rows.map((row) => row[at] ?? "") }];
      }),
    );
}

/**
 * Returns the pieces of each stick in the order of its cuts, then what is in no plan by setting.
 *
 * Pieces of one tag are alike: each is taken once, in turn. A spoiled one is planned twice and stands
 * where it is cut first.
 */
export function sticksOf(reply: JobReply): Group[] {
  const left = new Set(reply.saw.groups.flatMap(({ stock, cuts }) => cuts.map((cut) => ({ stock, cut }))));
  const take = (stock: string, tag: string): Cut[] => {
    const found = [...left].find((each) => each.stock === stock && each.cut.tag === tag);
    return found && left.delete(found) ? [found.cut] : [];
  };
  const sticks = plansOf(reply)
    .map(({ title, of, stock, tags }) => ({ title, of, cuts: tags.flatMap((tag) => take(stock, tag)) }))
    .filter(({ cuts }) => cuts.length > 0);
  const others = new Set([...left].map(({ cut }) => cut));
  const rest = settingsOf(reply)
    .map((group) => ({ ...group, cuts: group.cuts.filter((cut) => others.has(cut)) }))
    .filter(({ cuts }) => cuts.length > 0);
  return [...sticks, ...rest];
}
