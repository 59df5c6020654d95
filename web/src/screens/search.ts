/** Finding a question by any word that its tool says, or that the trade says for it. */
import type { ReactiveControllerHost } from "lit";
import type { Declaration, Input, Listing } from "../contract/contract";
import { allTools, bringPictures } from "../engine/catalog";

/** Milliseconds in which all words are waited for: past that a search goes by titles and names alone. */
const PATIENCE = 3000;

/** Looks through all that tools say, which is loaded when a search begins. */
export class Search {
  /** All that the tools say, by tool; null until all words are known. */
  private said: Map<string, string> | null = null;
  private isBegun = false;

  constructor(private readonly host: ReactiveControllerHost) {}

  /** Loads what is looked through: once, when the field is taken in hand. */
  begin(): void {
    if (this.isBegun) return;
    this.isBegun = true;
    void this.bring();
  }

  /**
   * Whether a list shows what is found for these words. Until all is known it stays whole: what is
   * found must not change place under the thumb.
   */
  finds(asked: string): boolean {
    if (!asked.trim()) return false;
    this.begin();
    return this.said !== null;
  }

  /** Returns the tools that hold every word asked for, best match first: in its title, its names, its form. */
  matching(tools: Listing[], asked: string): Listing[] {
    const words = asked.toLowerCase().split(/\s+/).filter(Boolean);
    const isIn = (text: string): boolean => words.every((word) => forms(word).some((form) => text.includes(form)));
    const rank = (tool: Listing): number =>
      [titled(tool), named(tool), `${named(tool)} ${this.said?.get(tool.slug) ?? ""}`].findIndex(isIn);
    const ranked = tools.map((tool) => ({ tool, at: rank(tool) })).filter(({ at }) => at >= 0);
    return ranked.sort((one, other) => one.at - other.at).map(({ tool }) => tool);
  }

  /** Words that come late count from the next letter on. */
  private async bring(): Promise<void> {
    const brought = Promise.all([allTools(), bringPictures()]).then(([tools]) => {
      this.said = new Map(tools.map(({ declaration }) => [declaration.slug, saidIn(declaration)]));
    });
    await Promise.race([brought, new Promise((late) => setTimeout(late, PATIENCE))]);
    this.said ??= new Map();
    this.host.requestUpdate();
  }
}

/** A word asked for in the plural is found in the singular too: "boxes", "boards", "balusters". */
function forms(word: string): string[] {
  if (!/[a-z]{3}s$/.test(word) || word.endsWith("ss")) return [word];
  const shorter = [word.slice(0, -1)];
  if (/(?:s|x|z|ch|sh)es$/.test(word)) shorter.push(word.slice(0, -2));
  if (word.endsWith("ies")) shorter.push(`${word.slice(0, -3)}y`);
  return [word, ...shorter];
}

function titled({ slug, title }: Listing): string {
  return [title, slug].join(" ").toLowerCase();
}

function named({ question, title, slug, finds }: Listing): string {
  return [question, title, slug, ...finds].join(" ").toLowerCase();
}

function saidIn({ inputs, cautions }: Declaration): string {
  return [...inputs.flatMap(saidBy), ...cautions].join(" ").toLowerCase();
}

function saidBy(input: Input): string[] {
  return [
    input.label, input.help, input.row ?? "",
    ...(input.choices ?? []).map((choice) => choice.label),
    ...(input.columns ?? []).flatMap(saidBy),
  ];
}
