/** Sand and pores: chance that is the same at every draw, so a picture never flickers between frames. */

/** A number 0…1 from two whole numbers, without a pattern the eye can find. */
export function grain(x: number, y: number): number {
  let bits = Math.imul(x | 0, 0x27d4eb2d) ^ Math.imul(y | 0, 0x165667b1);
  bits = Math.imul(bits ^ (bits >>> 15), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return ((bits ^ (bits >>> 16)) >>> 0) / 4294967296;
}

/** The same, smoothed between whole numbers: soft blotches one unit across. */
export function softGrain(x: number, y: number): number {
  const column = Math.floor(x);
  const row = Math.floor(y);
  const u = x - column;
  const v = y - row;
  const across = u * u * (3 - 2 * u);
  const up = v * v * (3 - 2 * v);
  const low = grain(column, row) * (1 - across) + grain(column + 1, row) * across;
  const high = grain(column, row + 1) * (1 - across) + grain(column + 1, row + 1) * across;
  return low * (1 - up) + high * up;
}
