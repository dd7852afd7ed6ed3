/** Sand and pores: chance that is the same at every draw, so a picture never flickers between frames. */

/** A number 0…1 from two whole numbers, without a pattern the eye can find. */
export function grain(x: number, y: number): number {
  let bits = Math.imul(x | 0, 0x27d4eb2d) ^ Math.imul(y | 0, 0x165667b1);
  bits = Math.imul(bits ^ (bits >>> 15), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return ((bits ^ (bits >>> 16)) >>> 0) / 4294967296;
}

/** Between four corners, evenly and without a crease at them; u and v are 0…1 from the first to the second and third. */
function soft(u: number, v: number, first: number, second: number, third: number, fourth: number): number {
  const across = u * u * (3 - 2 * u);
  const up = v * v * (3 - 2 * v);
  const low = first * (1 - across) + second * across;
  const high = third * (1 - across) + fourth * across;
  return low * (1 - up) + high * up;
}

/** The same, smoothed between whole numbers: soft blotches one unit across. */
export function softGrain(x: number, y: number): number {
  const c = Math.floor(x);
  const r = Math.floor(y);
  return soft(x - c, y - r, grain(c, r), grain(c + 1, r), grain(c, r + 1), grain(c + 1, r + 1));
}

/**
 * Soft blotches for a picture of many points: the numbers under them are drawn once.
 * @param reach greatest distance from 0 at which it is asked for, along either axis
 */
export function softGrainWithin(reach: number): (x: number, y: number) => number {
  const from = -Math.ceil(reach) - 1;
  const side = 2 * -from + 2;
  const drawn = Float64Array.from({ length: side * side }, (_, n) =>
    grain(from + (n % side), from + Math.floor(n / side)),
  );
  return (x, y) => {
    const c = Math.floor(x);
    const r = Math.floor(y);
    const at = (r - from) * side + c - from;
    return soft(x - c, y - r, drawn[at]!, drawn[at + 1]!, drawn[at + side]!, drawn[at + side + 1]!);
  };
}
