/** Fewer learners than this tell nothing about an item, and none is judged. */
export const LEAST_FOR_VERDICT = 10;

/** How an item did in a class. */
export interface ItemStatistics {
  learners: number;
  /** Mean share of the points, 0…1: the higher, the easier. */
  difficulty: number | null;
  /** Correlation of the item with the rest of the round, −1…1; null where either did not vary. */
  discrimination: number | null;
  /** What the figures say; null under ten learners. */
  verdict: 'separates' | 'weak' | 'backwards' | 'all-alike' | null;
}

export interface ClassStatistics {
  learners: number;
  mean: number | null;
  /** Sample standard deviation of the shares. */
  spread: number | null;
  median: number | null;
  /**
   * Cronbach's alpha over the items, which for marks of right or wrong is Kuder and Richardson's formula 20; null
   * under ten learners, for fewer than two items, or where the totals do not vary.
   */
  reliability: number | null;
  items: ItemStatistics[];
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Sample variance (n − 1). */
function variance(values: readonly number[]): number {
  const middle = mean(values);
  return values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (values.length - 1);
}

/** Pearson's correlation; null where either side does not vary. */
export function correlation(one: readonly number[], other: readonly number[]): number | null {
  const [a, b] = [mean(one), mean(other)];
  let across = 0;
  let along = 0;
  let up = 0;
  one.forEach((value, at) => {
    const difference = (other[at] ?? b) - b;
    across += (value - a) * difference;
    along += (value - a) ** 2;
    up += difference ** 2;
  });
  return along < 1e-12 || up < 1e-12 ? null : across / Math.sqrt(along * up);
}

/**
 * Cronbach's alpha: `k/(k−1) · (1 − Σ var(item) / var(total))`.
 * @param points a row a learner, a column an item, each 0…1
 */
export function alpha(points: readonly (readonly number[])[]): number | null {
  const items = points[0]?.length ?? 0;
  if (items < 2 || points.length < 2) return null;
  const totals = variance(points.map((row) => row.reduce((sum, value) => sum + value, 0)));
  if (totals < 1e-12) return null;
  const apart = Array.from({ length: items }, (_, item) => variance(points.map((row) => row[item] ?? 0)));
  return (items / (items - 1)) * (1 - apart.reduce((sum, value) => sum + value, 0) / totals);
}

/** Below this an item hardly tells strong from weak (common practice for classroom tests, no published source). */
const WEAK = 0.15;

function itemStatistics(points: readonly (readonly number[])[], item: number): ItemStatistics {
  const learners = points.length;
  if (learners === 0) return { learners, difficulty: null, discrimination: null, verdict: null };
  const own = points.map((row) => row[item] ?? 0);
  // Against the rest, not the total: an item always agrees with a total that holds it.
  const rest = points.map((row, at) => row.reduce((sum, value) => sum + value, 0) - (own[at] ?? 0));
  const discrimination = correlation(own, rest);
  const judged = learners >= LEAST_FOR_VERDICT;
  const verdict = !judged
    ? null
    : discrimination === null
      ? 'all-alike'
      : discrimination < 0
        ? 'backwards'
        : discrimination < WEAK
          ? 'weak'
          : 'separates';
  return { learners, difficulty: mean(own), discrimination, verdict };
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? (sorted[middle] ?? 0) : ((sorted[middle - 1] ?? 0) + (sorted[middle] ?? 0)) / 2;
}

/**
 * The figures of a class.
 * @param points a row a learner, a column an item, each 0…1
 */
export function classStatistics(points: readonly (readonly number[])[]): ClassStatistics {
  const items = points[0]?.length ?? 0;
  const shares = points.map((row) => (items === 0 ? 0 : row.reduce((sum, value) => sum + value, 0) / items));
  return {
    learners: points.length,
    mean: points.length === 0 ? null : mean(shares),
    spread: points.length < 2 ? null : Math.sqrt(variance(shares)),
    median: points.length === 0 ? null : median(shares),
    reliability: points.length < LEAST_FOR_VERDICT ? null : alpha(points),
    items: Array.from({ length: items }, (_, item) => itemStatistics(points, item)),
  };
}
