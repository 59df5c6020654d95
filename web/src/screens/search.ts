/** Finding a question by any word that its tool says, or that the trade says for it. */
import type { CatalogTool, Input } from "../contract";

/** Returns the tools that hold every word asked for; those that hold them in their names come first. */
export function matching(tools: CatalogTool[], asked: string): CatalogTool[] {
  const words = asked.toLowerCase().split(/\s+/).filter(Boolean);
  const isIn = (text: string): boolean => words.every((word) => forms(word).some((form) => text.includes(form)));
  const near = tools.filter((tool) => isIn(named(tool)));
  const far = tools.filter((tool) => !near.includes(tool) && isIn(`${named(tool)} ${said(tool)}`));
  return [...near, ...far];
}

/** A word asked for in the plural is found in the singular too: "boxes", "boards", "balusters". */
function forms(word: string): string[] {
  if (!/[a-z]{3}s$/.test(word) || word.endsWith("ss")) return [word];
  const shorter = [word.slice(0, -1)];
  if (/(?:s|x|z|ch|sh)es$/.test(word)) shorter.push(word.slice(0, -2));
  if (word.endsWith("ies")) shorter.push(`${word.slice(0, -3)}y`);
  return [word, ...shorter];
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
