/** Finding a question by any word that its tool says, or that the trade says for it. */
import type { CatalogTool, Input } from "../contract/contract";

/** Returns the tools that hold every word asked for, best match first: in its title, its names, its form. */
export function matching(tools: CatalogTool[], asked: string): CatalogTool[] {
  const words = asked.toLowerCase().split(/\s+/).filter(Boolean);
  const isIn = (text: string): boolean => words.every((word) => forms(word).some((form) => text.includes(form)));
  const rank = (tool: CatalogTool): number =>
    [titled(tool), named(tool), `${named(tool)} ${said(tool)}`].findIndex(isIn);
  const ranked = tools.map((tool) => ({ tool, at: rank(tool) })).filter(({ at }) => at >= 0);
  return ranked.sort((one, other) => one.at - other.at).map(({ tool }) => tool);
}

/** A word asked for in the plural is found in the singular too: "boxes", "boards", "balusters". */
function forms(word: string): string[] {
  if (!/[a-z]{3}s$/.test(word) || word.endsWith("ss")) return [word];
  const shorter = [word.slice(0, -1)];
  if (/(?:s|x|z|ch|sh)es$/.test(word)) shorter.push(word.slice(0, -2));
  if (word.endsWith("ies")) shorter.push(`${word.slice(0, -3)}y`);
  return [word, ...shorter];
}

function titled({ declaration }: CatalogTool): string {
  return [declaration.title, declaration.slug].join(" ").toLowerCase();
}

function named({ declaration }: CatalogTool): string {
  const { question, title, slug, finds } = declaration;
  return [question, title, slug, ...finds].join(" ").toLowerCase();
}

function said({ declaration }: CatalogTool): string {
  const { inputs, cautions } = declaration;
  return [...inputs.flatMap(saidBy), ...cautions].join(" ").toLowerCase();
}

function saidBy(input: Input): string[] {
  return [
    input.label, input.help, input.row ?? "",
    ...(input.choices ?? []).map((choice) => choice.label),
    ...(input.columns ?? []).flatMap(saidBy),
  ];
}
