/**
 * Walls of ridges along a line of cells. A cell that a wall runs through holds the part of the ridge on its side of the
 * wall, as the solver takes its fronts. So what the cells about a wall hold together tells where it stands: for a
 * straight wall exactly, square to the line or aslant.
 */

/** Two levels of mortar that differ by more than this share of the higher have a wall between them, else a slope. */
export const WALL = 0.25;
/** Cells to each side of a border over which a wall that crosses the line at 45° can reach. */
const REACH = 2;

/** A wall on a line, counted in cells from the middle of the first, and the levels it goes between. */
export interface Wall {
  at: number;
  /** Whether the ridge lies beyond it. */
  up: boolean;
  lowMm: number;
  highMm: number;
}

/** The lowest and highest of those cells from one to another that can be read. */
function levels(heights: ArrayLike<number>, from: number, to: number): [low: number, high: number] {
  let [low, high] = [Infinity, -Infinity];
  for (let n = Math.max(0, from); n <= Math.min(heights.length - 1, to); n++) {
    const height = heights[n]!;
    if (height < low) low = height;
    if (height > high) high = height;
  }
  return [low, high];
}

/** How much of a wall's height each of the cells inwards of a border lacks, summed as long as it lacks less and less. */
function summed(shareAt: (n: number) => number): number {
  let sum = 0;
  let last = Infinity;
  for (let n = 0; n < REACH; n++) {
    const share = shareAt(n);
    if (!(share <= last)) break;
    sum += share;
    last = share;
  }
  return sum;
}

/**
 * Where walls stand on a line of cells, in order.
 * @param heights mortar in each cell; NaN where there is none to read
 */
export function wallsOn(heights: ArrayLike<number>): Wall[] {
  const found: Wall[] = [];
  for (let n = 0; n + 1 < heights.length; n++) {
    const [low, high] = levels(heights, n - REACH, n + 1 + REACH);
    if (!(high - low > WALL * high)) continue;
    const part = (cell: number): number => (heights[cell]! - low) / (high - low);
    const [here, next] = [part(n) >= 0.5, part(n + 1) >= 0.5];
    if (here === next || Number.isNaN(part(n)) || Number.isNaN(part(n + 1))) continue;
    // From the border between the two: the full side's lack draws the wall inwards, the other's mortar pushes it out.
    const outward = here ? 1 : -1;
    const [full, bare] = here ? [n, n + 1] : [n + 1, n];
    const lacks = summed((k) => 1 - part(full - outward * k));
    const holds = summed((k) => part(bare + outward * k));
    found.push({ at: n + 0.5 + outward * (holds - lacks), up: !here, lowMm: low, highMm: high });
  }
  return found;
}

/**
 * How far a place on a line lies inside the ridge about it at a height, in cells; negative in a lane.
 * @param none what is said where no wall that goes through this height is nearer than that
 */
export function insideWalls(walls: readonly Wall[], place: number, heightMm: number, none: number): number {
  let best = none;
  for (const { at, up, lowMm, highMm } of walls) {
    if (lowMm >= heightMm || highMm < (1 - WALL) * heightMm) continue;
    const inside = up ? place - at : at - place;
    if (Math.abs(inside) < Math.abs(best)) best = inside;
  }
  return best;
}
