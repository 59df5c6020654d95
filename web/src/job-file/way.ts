/** How an address says that it holds a whole job. */
export const WAY = "#/take/";

export function holdsJob(hash: string): boolean {
  return hash.startsWith(WAY);
}
