import { bankTerm } from '../../simulations/bed/fronts.ts';
import { type BedGrid, EMPTY, FULL } from '../../simulations/bed/grid.ts';
import type { MarchTerms } from '../../simulations/bed/march.ts';

/**
 * The textbook way to the same field, to hold the solver's march against: fast marching with a binary heap, one cell
 * at a time in exact order of pressure. Works on copies; returns the pressures (−1 where there is no mortar).
 */
export function heapMarch(grid: BedGrid, terms: MarchTerms): Float64Array {
  const { columns, gap, state, label, pressure: seen } = grid;
  const climb = 2 * terms.yieldPa * grid.cellMm;
  const p = new Float64Array(state.length);
  const done = new Uint8Array(state.length);
  const heap: number[] = [];
  const keys: number[] = [];
  const place = new Int32Array(state.length).fill(-1);

  const put = (k: number, n: number, key: number): void => {
    heap[k] = n;
    keys[k] = key;
    place[n] = k;
  };
  const rise = (from: number, n: number, key: number): void => {
    let k = from;
    while (k > 0) {
      const up = (k - 1) >> 1;
      if (keys[up]! <= key) break;
      put(k, heap[up]!, keys[up]!);
      k = up;
    }
    put(k, n, key);
  };
  const take = (): number => {
    const first = heap[0]!;
    const n = heap.pop()!;
    const key = keys.pop()!;
    if (heap.length > 0) {
      let k = 0;
      for (;;) {
        let child = 2 * k + 1;
        if (child >= heap.length) break;
        if (child + 1 < heap.length && keys[child + 1]! < keys[child]!) child += 1;
        if (keys[child]! >= key) break;
        put(k, heap[child]!, keys[child]!);
        k = child;
      }
      put(k, n, key);
    }
    return first;
  };

  /** What a neighbour offers: its level and its distance in cells. */
  const offer = (n: number, next: number, beyond: number): [number, number] => {
    if (state[next]! >= FULL) return done[next] === 1 ? [p[next]!, 1] : [Infinity, 1];
    const base = terms.endPa + terms.gaugePa[label[next]!]!;
    if (state[next] !== EMPTY) return [base + (terms.endPa > 0 ? terms.yieldPa * bankTerm(grid, n, next) : 0), 0.5];
    const part = -1 - seen[next]!;
    return [base, state[beyond]! >= FULL ? 0.5 + 0.5 * part : 0.5 + part];
  };
  const solve = (n: number): number => {
    const s = climb / gap[n]!;
    const better = (a: [number, number], b: [number, number]): [number, number] =>
      a[0] + a[1] * s <= b[0] + b[1] * s ? a : b;
    const [a, da] = better(offer(n, n - 1, n - 2), offer(n, n + 1, n + 2));
    const [b, db] = better(offer(n, n - columns, n - 2 * columns), offer(n, n + columns, n + 2 * columns));
    const pa = a + da * s;
    const pb = b + db * s;
    if (pb <= a) return pb;
    if (pa <= b) return pa;
    const wa = 1 / (da * da);
    const wb = 1 / (db * db);
    return (wa * a + wb * b + Math.sqrt((wa + wb) * s * s - wa * wb * (a - b) * (a - b))) / (wa + wb);
  };

  p.fill(Infinity);
  for (let n = 2 * columns; n < state.length - 2 * columns; n += 1) {
    if (state[n]! < FULL) {
      p[n] = -1;
      continue;
    }
    const key = solve(n);
    if (key === Infinity) continue;
    p[n] = key;
    heap.push(n);
    keys.push(key);
    rise(heap.length - 1, n, key);
  }
  while (heap.length > 0) {
    const n = take();
    done[n] = 1;
    for (const next of [n - 1, n + 1, n - columns, n + columns]) {
      if (state[next]! < FULL || done[next] === 1) continue;
      const key = solve(next);
      if (key >= p[next]!) continue;
      p[next] = key;
      if (place[next]! < 0) {
        heap.push(next);
        keys.push(key);
        rise(heap.length - 1, next, key);
      } else rise(place[next]!, next, key);
    }
  }
  return p;
}
