import { type BedGrid, EMPTY, OPEN } from './grid.ts';

/** Labels: 0 none, 1 open to the tile's edge, from FIRST_POCKET on closed pockets. */
const AIR_OPEN = 1;
export const FIRST_POCKET = 2;
/** Names left for pockets; more than these share the last. */
const MOST = 65_534;

/** Runs of empty cells along the rows: start, end (past the last), and the run each is joined to. Grown when short. */
let starts = new Int32Array(1024);
let ends = new Int32Array(1024);
let joined = new Int32Array(1024);

function grow(): void {
  const longer = (old: Int32Array<ArrayBuffer>): Int32Array<ArrayBuffer> => {
    const list = new Int32Array(2 * old.length);
    list.set(old);
    return list;
  };
  starts = longer(starts);
  ends = longer(ends);
  joined = longer(joined);
}

function rootOf(run: number): number {
  let root = run;
  while (joined[root] !== root) {
    joined[root] = joined[joined[root]!]!;
    root = joined[root]!;
  }
  return root;
}

/** Joins two runs; the lower number leads, and run 0 stands for the open air. */
function join(a: number, b: number): void {
  const first = rootOf(a);
  const second = rootOf(b);
  if (first < second) joined[second] = first;
  else joined[first] = second;
}

/**
 * Names the voids: each run of empty cells in a row is joined to those it meets in the row before and to the open air.
 * Mortar is joined by sides, so air is joined by corners too: an oblique valley is one valley down to its last cell.
 * @returns labels in use
 */
export function labelVoids(grid: BedGrid): number {
  const { label, state, columns, rim, tileColumns, tileRows } = grid;
  let runs = 1;
  joined[0] = 0;
  let before = 1;
  for (let row = rim; row < rim + tileRows; row += 1) {
    const first = runs;
    let above = before;
    const end = row * columns + rim + tileColumns;
    for (let n = row * columns + rim; n < end; n += 1) {
      label[n] = 0;
      if (state[n] !== EMPTY) continue;
      const start = n;
      let isOpen = state[n - 1] === OPEN;
      while (n < end && state[n] === EMPTY) {
        if (state[n - columns] === OPEN || state[n + columns] === OPEN) isOpen = true;
        label[n] = 0;
        n += 1;
      }
      if (state[n] === OPEN) isOpen = true;
      if (n < end) label[n] = 0;
      if (runs === starts.length) grow();
      starts[runs] = start;
      ends[runs] = n;
      joined[runs] = isOpen ? 0 : runs;
      // Runs of the row before that touch this one, corners counted; the last may reach over the next run as well.
      while (above < first && ends[above]! + columns < start) above += 1;
      for (let k = above; k < first && starts[k]! + columns <= n; k += 1) join(k, runs);
      runs += 1;
    }
    before = first;
  }
  let names = FIRST_POCKET;
  for (let run = 1; run < runs; run += 1) {
    const root = rootOf(run);
    // A leading run is met before any it leads, so its own name is there already.
    const name = root === 0 ? AIR_OPEN : root === run ? names : label[starts[root]!]!;
    if (root === run && names < MOST) names += 1;
    label.fill(name, starts[run]!, ends[run]!);
  }
  return names === MOST ? MOST + 1 : names;
}
