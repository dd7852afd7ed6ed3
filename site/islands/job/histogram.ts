export interface Bin {
  readonly from: number;
  readonly to: number;
  readonly count: number;
}

/** Shares 0…1 counted in equal bins; the last bin holds its upper end. */
export function scaleBins(shares: readonly number[], bins: number): Bin[] {
  const counts = new Array<number>(bins).fill(0);
  for (const share of shares) {
    const at = Math.min(bins - 1, Math.max(0, Math.floor(share * bins + 1e-9)));
    counts[at] = (counts[at] ?? 0) + 1;
  }
  return counts.map((count, at) => ({ from: at / bins, to: (at + 1) / bins, count }));
}
