/** A floor in section as heights at even steps. Lengths mm; heights over the floor's true plane, dips below nought. */
export interface FloorLine {
  stepMm: number;
  heights: readonly number[];
}

/** A floor with one broad dip, one hump, and a trowel mark, as a mason leaves it. Depths in mm. */
export interface FloorShape {
  lengthMm: number;
  dipMm: number;
  humpMm: number;
  markMm: number;
}

const STEPS = 600;
/** Where the dip, the hump and the mark lie and how broad they are, as shares of the floor (invented). */
const DIP = { at: 0.42, half: 0.3 };
const HUMP = { at: 0.86, half: 0.1 };
const MARK = { at: 0.68, half: 0.035 };

/** A smooth bump of height 1 at its middle, nothing outside its half width. */
function bump(share: number, { at, half }: { at: number; half: number }): number {
  const part = (share - at) / half;
  return Math.abs(part) >= 1 ? 0 : (1 + Math.cos(Math.PI * part)) / 2;
}

export function floorLine({ lengthMm, dipMm, humpMm, markMm }: FloorShape): FloorLine {
  const heights = Array.from({ length: STEPS + 1 }, (_, i) => {
    const share = i / STEPS;
    return humpMm * bump(share, HUMP) - dipMm * bump(share, DIP) - markMm * bump(share, MARK);
  });
  return { stepMm: lengthMm / STEPS, heights };
}

export interface StraightedgeReading {
  /** The two places it rests on, as indices of the floor. */
  rests: [number, number];
  /** Height of its underside at those places. */
  restHeights: [number, number];
  deepestMm: number;
  deepestAt: number;
}

/**
 * A straightedge laid on a floor: it rests on the two high points of the upper hull that hold its middle between them,
 * as a real bar does under its own weight, and the gap is read from it down.
 * @param from,to indices of its ends, from < to
 */
export function layStraightedge({ heights }: FloorLine, from: number, to: number): StraightedgeReading {
  const hull: number[] = [];
  const height = (i: number): number => heights[i] ?? 0;
  for (let i = from; i <= to; i += 1) {
    while (hull.length > 1) {
      const a = hull[hull.length - 2] ?? from;
      const b = hull[hull.length - 1] ?? from;
      const below = (height(b) - height(a)) * (i - a) <= (height(i) - height(a)) * (b - a);
      if (!below) break;
      hull.pop();
    }
    hull.push(i);
  }
  const middle = (from + to) / 2;
  const next = Math.max(
    1,
    hull.findIndex((i) => i >= middle),
  );
  const a = hull[next - 1] ?? from;
  const b = hull[next] ?? to;
  const slope = (height(b) - height(a)) / (b - a);
  let deepestMm = 0;
  let deepestAt = a;
  for (let i = from; i <= to; i += 1) {
    const gap = height(a) + slope * (i - a) - height(i);
    if (gap > deepestMm) [deepestMm, deepestAt] = [gap, i];
  }
  return { rests: [a, b], restHeights: [height(a), height(b)], deepestMm, deepestAt };
}

/** A limit: at most so much under a bar so long. mm */
export interface DipLimit {
  dipMm: number;
  overMm: number;
}

/** Worst gap anywhere under a bar of that length, and where the bar then begins. */
export function worstUnder(line: FloorLine, barMm: number): { gapMm: number; from: number } {
  const span = Math.min(line.heights.length - 1, Math.max(2, Math.round(barMm / line.stepMm)));
  let worst = { gapMm: 0, from: 0 };
  for (let from = 0; from + span < line.heights.length; from += 4) {
    const { deepestMm } = layStraightedge(line, from, from + span);
    if (deepestMm > worst.gapMm) worst = { gapMm: deepestMm, from };
  }
  return worst;
}
