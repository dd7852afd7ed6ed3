/**
 * Plastic load of one ridge between two rough plates, found apart from the solver: a limit analysis by finite elements.
 * Of all ways in which the mortar can give way (velocities that keep its volume, given on crossed triangles) it finds the
 * one that costs the least work at yield, by least squares weighted anew until they stand. Sides are free; the upper plate
 * comes down at unit speed and goes aside as it likes, or is held.
 */
export interface Ridge {
  /** Width over the gap. */
  width: number;
  /** How far the top lies beside the foot, over the width. */
  lean: number;
  /** The plate above is held: it comes down and goes nowhere else. */
  held?: boolean;
}

export interface Limit {
  /** Load over yield stress and gap, for a unit length of ridge. */
  load: number;
  /** How far the plate goes aside for each unit it comes down. */
  aside: number;
}

const ROWS = 12;
/** Volume is kept by a penalty; yield is rounded below this rate. */
const STIFF = 3e3;
const LEAST_RATE = 1e-3;
const MOST_ROUNDS = 60;
const SAME = 1e-5;

/** A system in a band: half the matrix, and what stands on the right for the fall of the plate and for its way aside. */
class Band {
  private readonly reach: number;
  private readonly size: number;
  private readonly rows: Float64Array;

  constructor(size: number, reach: number) {
    this.size = size;
    this.reach = reach;
    this.rows = new Float64Array(size * (reach + 1));
  }

  add(row: number, column: number, value: number): void {
    if (column > row) return;
    if (row - column > this.reach) throw new RangeError('outside the band');
    const at = row * (this.reach + 1) + column - row + this.reach;
    this.rows[at] = this.rows[at]! + value;
  }

  /** Cholesky's factor, in place. */
  factor(): void {
    const { reach, rows, size } = this;
    const wide = reach + 1;
    for (let i = 0; i < size; i += 1)
      for (let j = Math.max(0, i - reach); j <= i; j += 1) {
        let sum = rows[i * wide + j - i + reach]!;
        for (let k = Math.max(0, i - reach); k < j; k += 1)
          sum -= rows[i * wide + k - i + reach]! * rows[j * wide + k - j + reach]!;
        rows[i * wide + j - i + reach] = i === j ? Math.sqrt(sum) : sum / rows[j * wide + reach]!;
      }
  }

  solve(right: Float64Array): Float64Array {
    const { reach, rows, size } = this;
    const wide = reach + 1;
    const x = Float64Array.from(right);
    for (let i = 0; i < size; i += 1) {
      for (let k = Math.max(0, i - reach); k < i; k += 1) x[i] = x[i]! - rows[i * wide + k - i + reach]! * x[k]!;
      x[i] = x[i]! / rows[i * wide + reach]!;
    }
    for (let i = size - 1; i >= 0; i -= 1) {
      x[i] = x[i]! / rows[i * wide + reach]!;
      for (let k = Math.max(0, i - reach); k < i; k += 1) x[k] = x[k]! - rows[i * wide + k - i + reach]! * x[i]!;
    }
    return x;
  }
}

/** Degrees of freedom that are no unknowns of the band. */
const FIXED = -1;
const ASIDE = -2;
const FALLS = -3;

interface Element {
  /** Degrees of freedom of its five nodes, x and y in turn. */
  dofs: number[];
  /** Four triangles: area, and how the two rates of shear follow from the ten velocities. */
  triangles: { area: number; stretch: Float64Array; shear: Float64Array }[];
  area: number;
  /** How the mean growth of volume follows from them. */
  growth: Float64Array;
}

/** Quarters of each four-sided cell about its middle. */
function elementsOf({ width, lean }: Ridge, columns: number): { elements: Element[]; size: number } {
  const a = width / columns;
  const b = 1 / ROWS;
  const slope = lean * width;
  const corner = (column: number, row: number): number => column * (2 * ROWS + 1) + row;
  const dofOf = (node: number, row: number, axis: number): number => {
    if (row === 0) return FIXED;
    if (row === ROWS) return axis === 0 ? ASIDE : FALLS;
    return 2 * node + axis;
  };
  const elements: Element[] = [];
  for (let column = 0; column < columns; column += 1)
    for (let row = 0; row < ROWS; row += 1) {
      const places = [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ] as const;
      const points = places.map(([i, j]) => [(column + i) * a + slope * (row + j) * b, (row + j) * b] as const);
      points.push([(column + 0.5) * a + slope * (row + 0.5) * b, (row + 0.5) * b]);
      const dofs = places.flatMap(([i, j]) => [0, 1].map((axis) => dofOf(corner(column + i, row + j), row + j, axis)));
      const middle = corner(column, ROWS + 1 + row);
      dofs.push(2 * middle, 2 * middle + 1);
      const growth = new Float64Array(10);
      const triangles = [0, 1, 2, 3].map((side) => {
        const nodes = [side, (side + 1) % 4, 4];
        const [p, q, r] = nodes.map((node) => points[node]!) as [
          (typeof points)[0],
          (typeof points)[0],
          (typeof points)[0],
        ];
        const twice = (q[0] - p[0]) * (r[1] - p[1]) - (r[0] - p[0]) * (q[1] - p[1]);
        const stretch = new Float64Array(10);
        const shear = new Float64Array(10);
        nodes.forEach((node, k) => {
          const next = [q, r, p][k]!;
          const last = [r, p, q][k]!;
          const dx = (next[1] - last[1]) / twice;
          const dy = (last[0] - next[0]) / twice;
          stretch[2 * node] = dx;
          stretch[2 * node + 1] = -dy;
          shear[2 * node] = dy;
          shear[2 * node + 1] = dx;
          growth[2 * node] = growth[2 * node]! + (dx * twice) / 2 / (a * b);
          growth[2 * node + 1] = growth[2 * node + 1]! + (dy * twice) / 2 / (a * b);
        });
        return { area: twice / 2, stretch, shear };
      });
      elements.push({ dofs, triangles, area: a * b, growth });
    }
  return { elements, size: 2 * ((columns + 1) * (2 * ROWS + 1) - ROWS) };
}

/** The least load under which a ridge gives way, and how far the plate goes aside as it does. */
export function limitOf(ridge: Ridge): Limit {
  const columns = Math.max(12, Math.round(10 * ridge.width));
  const { elements, size } = elementsOf(ridge, columns);
  let inner = new Float64Array(size);
  let aside = 0;
  const valueOf = (dof: number): number => (dof >= 0 ? inner[dof]! : dof === FALLS ? -1 : dof === ASIDE ? aside : 0);
  const rateOf = (dofs: number[], by: Float64Array): number =>
    dofs.reduce((sum, dof, k) => sum + by[k]! * valueOf(dof), 0);
  let load = Infinity;
  let rounding = 1;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const band = new Band(size, 4 * ROWS + 6);
    const used = new Uint8Array(size);
    const falls = new Float64Array(size);
    const sideways = new Float64Array(size);
    let asideAside = 0;
    let asideFalls = 0;
    for (const { dofs, triangles, area, growth } of elements) {
      const terms: [Float64Array, number][] = [[growth, STIFF * area]];
      for (const one of triangles) {
        const stretch = rateOf(dofs, one.stretch);
        const shear = rateOf(dofs, one.shear);
        const weight = round === 0 ? one.area : one.area / Math.sqrt(stretch ** 2 + shear ** 2 + rounding ** 2);
        terms.push([one.stretch, weight], [one.shear, weight]);
      }
      for (let i = 0; i < 10; i += 1)
        for (let j = 0; j < 10; j += 1) {
          const [row, column] = [dofs[i]!, dofs[j]!];
          let value = 0;
          for (const [by, weight] of terms) value += weight * by[i]! * by[j]!;
          if (row >= 0) {
            used[row] = 1;
            if (column >= 0) band.add(row, column, value);
            else if (column === FALLS) falls[row] = falls[row]! + value;
            else if (column === ASIDE) sideways[row] = sideways[row]! - value;
          } else if (row === ASIDE) {
            if (column === ASIDE) asideAside += value;
            else if (column === FALLS) asideFalls += value;
          }
        }
    }
    for (let n = 0; n < size; n += 1) if (used[n] === 0) band.add(n, n, 1);
    band.factor();
    const still = band.solve(falls);
    const moved = band.solve(sideways);
    const dot = (a: Float64Array, b: Float64Array): number => a.reduce((sum, value, n) => sum + value * b[n]!, 0);
    aside = ridge.held === true ? 0 : (asideFalls + dot(sideways, still)) / (asideAside - dot(sideways, moved));
    inner = still.map((value, n) => value + aside * moved[n]!);
    const work = elements.reduce(
      (sum, { dofs, triangles }) =>
        sum +
        triangles.reduce(
          (part, one) => part + one.area * Math.sqrt(rateOf(dofs, one.stretch) ** 2 + rateOf(dofs, one.shear) ** 2),
          0,
        ),
      0,
    );
    if (rounding === LEAST_RATE && Math.abs(work - load) < SAME * work) return { load: work, aside };
    load = work;
    rounding = Math.max(LEAST_RATE, rounding * 0.6);
  }
  return { load, aside };
}
