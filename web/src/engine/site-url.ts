/** Make a path of this site complete; every path is relative to the page. */
export function address(path: string): string {
  return new URL(path, document.baseURI).href;
}
