/**
 * Smooth curves and surfaces through readings at even places: cubic pieces whose slope at a reading is that of the
 * parabola through it and its two neighbours. What is a parabola comes out exactly; two readings make a straight line.
 */

/** Slopes at the readings, per step between them. */
function slopesOf(heights: readonly number[]): number[] {
  const last = heights.length - 1;
  if (last === 1) return [heights[1]! - heights[0]!, heights[1]! - heights[0]!];
  return heights.map((_, n) => {
    if (n === 0) return 2 * heights[1]! - 1.5 * heights[0]! - 0.5 * heights[2]!;
    if (n === last) return 1.5 * heights[last]! - 2 * heights[last - 1]! + 0.5 * heights[last - 2]!;
    return 0.5 * (heights[n + 1]! - heights[n - 1]!);
  });
}

/** Which piece a place lies on, and its four weights: two heights, two slopes. Beyond the ends it goes on straight. */
interface Piece {
  first: number;
  weights: [number, number, number, number];
}

function pieceAt(place: number, count: number): Piece {
  const at = 0.5 * (place + 1) * (count - 1);
  const first = Math.min(count - 2, Math.max(0, Math.floor(at)));
  const t = at - first;
  if (t < 0) return { first, weights: [1, 0, t, 0] };
  if (t > 1) return { first, weights: [0, 1, 0, t - 1] };
  const s = 1 - t;
  return { first, weights: [s * s * (1 + 2 * t), t * t * (1 + 2 * s), s * s * t, -s * t * t] };
}

/**
 * A curve through readings.
 * @param heights at least two, at even places from −1 to 1
 * @returns the height at a place; beyond −1 and 1 straight on
 */
export function smoothCurve(heights: readonly number[]): (place: number) => number {
  const slopes = slopesOf(heights);
  return (place) => {
    const { first, weights } = pieceAt(place, heights.length);
    return (
      weights[0] * heights[first]! +
      weights[1] * heights[first + 1]! +
      weights[2] * slopes[first]! +
      weights[3] * slopes[first + 1]!
    );
  };
}

const turned = (rows: readonly (readonly number[])[]): number[][] => rows[0]!.map((_, n) => rows.map((row) => row[n]!));

/**
 * A surface through a grid of readings: the same curves along both axes.
 * @param rows at least two by two, equal in length; the first row lies at v = −1, its first reading at u = −1
 */
export function smoothSurface(rows: readonly (readonly number[])[]): (u: number, v: number) => number {
  const alongU = rows.map(slopesOf);
  const alongV = turned(turned(rows).map(slopesOf));
  const both = turned(turned(alongU).map(slopesOf));
  /** What a row's four weights along u bring, of heights and their slopes along u. */
  const across = (
    heights: readonly (readonly number[])[],
    slopes: readonly (readonly number[])[],
    row: number,
    u: Piece,
  ) =>
    u.weights[0] * heights[row]![u.first]! +
    u.weights[1] * heights[row]![u.first + 1]! +
    u.weights[2] * slopes[row]![u.first]! +
    u.weights[3] * slopes[row]![u.first + 1]!;
  return (u, v) => {
    const onU = pieceAt(u, rows[0]!.length);
    const { first, weights } = pieceAt(v, rows.length);
    return (
      weights[0] * across(rows, alongU, first, onU) +
      weights[1] * across(rows, alongU, first + 1, onU) +
      weights[2] * across(alongV, both, first, onU) +
      weights[3] * across(alongV, both, first + 1, onU)
    );
  };
}
