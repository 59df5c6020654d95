/** Prices as they are typed. */

/** The most that a job document holds as a price. */
const MOST = 10_000_000;

export type Price = { value: number | null } | { fault: string };

/** Reads a price such as `312`, `$312.50` or `1,200`; nothing typed is no price. */
export function priceIn(text: string): Price {
  const plain = text.trim().replace(/^\$\s*/, "");
  if (plain === "") return { value: null };
  if (!/^(\d+|\d{1,3}(,\d{3})+)?(\.\d*)?$/.test(plain) || !/\d/.test(plain)) {
    return { fault: `“${text.trim()}” is no price: 312 or 312.50 will do.` };
  }
  const value = Number(plain.replaceAll(",", ""));
  return value <= MOST ? { value } : { fault: "More than $10,000,000: check the price." };
}
