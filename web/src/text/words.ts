/** Small joins of words for labels and messages. */

/** Returns a label as it stands inside a sentence: "Recess width" becomes "recess width". */
export function inSentence(label: string): string {
  const second = label.charAt(1);
  const isName = second !== second.toLowerCase() || second === "" || second === " ";
  return isName ? label : label.charAt(0).toLowerCase() + label.slice(1);
}

/** Returns "a", "a and b" or "a, b and c". */
export function listed(words: string[]): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} and ${words[words.length - 1]}`;
}

/** Returns the word with a capital first letter. */
export function capital(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}

/** Returns a noun with the article it takes: "a wall", "an obstacle". */
export function withArticle(noun: string): string {
  return `${/^[aeiou]/i.test(noun) ? "an" : "a"} ${noun}`;
}

/** Returns an amount in dollars and cents, as the core says it. */
export function dollars(amount: number): string {
  return amount.toLocaleString("en-US", { style: "currency", currency: "USD" });
}

/** Returns a price as it is typed, its cents in full. */
export function priceText(price: number): string {
  return String(price).replace(/\.\d$/, "$&0");
}
