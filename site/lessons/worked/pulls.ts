const squares = [91, 88, 64];
const shares = squares.map((count) => count / 100);

/** Three tiles lifted in a dry hall, a hundred dots counted on each (invented). */
export const pulls = {
  counts: `${squares.slice(0, -1).join(', ')} and ${squares.at(-1) ?? ''}`,
  mean: shares.reduce((sum, one) => sum + one, 0) / shares.length,
  worst: Math.min(...shares),
} as const;
