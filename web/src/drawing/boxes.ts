/** Rectangles in pixels, y downwards, and how labels keep clear of each other. */

export interface Box {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

export type Spot = [x: number, y: number];

/** Returns the box of the given size whose middle is `spot`. */
export function around(spot: Spot, width: number, height: number): Box {
  const [x, y] = spot;
  return { left: x - width / 2, top: y - height / 2, right: x + width / 2, bottom: y + height / 2 };
}

/** Returns the smallest box that holds all the spots. */
export function spanning(spots: Spot[]): Box {
  const xs = spots.map((spot) => spot[0]);
  const ys = spots.map((spot) => spot[1]);
  return {
    left: Math.min(...xs),
    top: Math.min(...ys),
    right: Math.max(...xs),
    bottom: Math.max(...ys),
  };
}

/** Returns the smallest box that holds both. */
export function union(one: Box, other: Box): Box {
  return {
    left: Math.min(one.left, other.left),
    top: Math.min(one.top, other.top),
    right: Math.max(one.right, other.right),
    bottom: Math.max(one.bottom, other.bottom),
  };
}

function overlap(one: Box, other: Box): number {
  const wide = Math.min(one.right, other.right) - Math.max(one.left, other.left);
  const high = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
  return wide > 0 && high > 0 ? wide * high : 0;
}

/** Returns the first spot whose box is clear of all `taken`, else the one that covers least. */
export function clearest(spots: Spot[], width: number, height: number, taken: Box[]): Spot {
  let best = spots[0] ?? [0, 0];
  let least = Infinity;
  for (const spot of spots) {
    const box = around(spot, width, height);
    const covered = taken.reduce((sum, other) => sum + overlap(box, other), 0);
    if (covered < least) [best, least] = [spot, covered];
    if (covered === 0) break;
  }
  return best;
}
