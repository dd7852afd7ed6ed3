import { lengthOf } from '../numbers/plain.ts';
import { BLADE_LONG_MM } from './blade.ts';

/** A place on the floor, mm from the tile's middle. */
export type StrokeSpot = readonly [x: number, y: number];

/** A straight bit of a stroke: where it starts, its unit direction, how long it is. */
interface Bit {
  x: number;
  y: number;
  c: number;
  s: number;
  long: number;
}

/** Cuts the corners of a line twice, each cut at a quarter of the way: a wrist draws no corners. The ends stay. */
function rounded(path: readonly StrokeSpot[]): StrokeSpot[] {
  let line = [...path];
  for (let round = 0; round < 2 && line.length > 2; round += 1) {
    const cut: StrokeSpot[] = [line[0]!];
    for (let n = 0; n + 1 < line.length; n += 1) {
      const [ax, ay] = line[n]!;
      const [bx, by] = line[n + 1]!;
      if (n > 0) cut.push([ax + (bx - ax) / 4, ay + (by - ay) / 4]);
      if (n + 2 < line.length) cut.push([bx - (bx - ax) / 4, by - (by - ay) / 4]);
    }
    cut.push(line.at(-1)!);
    line = cut;
  }
  return line;
}

function bitsOf(path: readonly StrokeSpot[]): Bit[] {
  const line = rounded(path);
  const bits: Bit[] = [];
  for (let n = 1; n < line.length; n += 1) {
    const [x, y] = line[n - 1]!;
    const dx = line[n]![0] - x;
    const dy = line[n]![1] - y;
    const long = lengthOf(dx, dy);
    if (long > 0) bits.push({ x, y, c: dx / long, s: dy / long, long });
  }
  return bits;
}

/** How far a stroke goes in all, mm. */
export const strokeLong = (path: readonly StrokeSpot[]): number =>
  path.reduce((sum, [x, y], n) => (n === 0 ? 0 : sum + lengthOf(x - path[n - 1]![0], y - path[n - 1]![1])), 0);

/**
 * The blade drawn along a hand's own stroke, square to it, its middle on the line. The latest pass over a place is what
 * stays there. Where the stroke did not reach, it goes on: straight ahead past its ends, and in passes beside it.
 * @param path at least two places; a stroke of no length leaves ridges along x
 * @returns for a place, its distance across the blade from the stroke, mm, left of the hand's way counted positive
 */
export function acrossStroke(path: readonly StrokeSpot[]): (x: number, y: number) => number {
  const bits = bitsOf(path);
  const last = bits.length - 1;
  const half = BLADE_LONG_MM / 2;
  if (last < 0) return (_x, y) => y;
  return (x, y) => {
    let nearest = Infinity;
    let beside = 0;
    let nextAlong = 0;
    for (let n = last; n >= 0; n -= 1) {
      const { x: fromX, y: fromY, c, s, long } = bits[n]!;
      const along = (x - fromX) * c + (y - fromY) * s;
      const across = (y - fromY) * c - (x - fromX) * s;
      const side = across < 0 ? -1 : 1;
      const onBit = along >= 0 && along <= long;
      if (onBit && across * side <= half) return across;
      const past = along > long ? along - long : along < 0 ? -along : 0;
      const far = lengthOf(past, across);
      // Outside a bend the blade swings about the corner between two bits.
      if (along > long && n < last && nextAlong < 0 && far <= half) return side * far;
      const ahead = (n === last && along > long) || (n === 0 && along < 0);
      const distance = ahead ? across * side : far;
      if (distance < nearest) {
        nearest = distance;
        beside = side * distance;
      }
      nextAlong = along;
    }
    return beside;
  };
}
