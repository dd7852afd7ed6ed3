import { type BedGrid, EMPTY, FULL, LEADS, LISTED, MET } from './grid.ts';

/** A cell between two fronts counts as full only when its neighbours in the valley have no more room than this share. */
const LEVEL = 1e-6;
/** A front may run on over this many cells in a step. */
const MOST_CELLS = 4;
/** What is left then, over this many more round about. */
const MOST_RINGS = 64;

const roomOf = (grid: BedGrid, n: number): number => {
  const room = grid.gap[n]! * (1 - LEVEL) - grid.mortar[n]!;
  return grid.state[n] === EMPTY && room > 0 ? room : 0;
};

/** Two fronts meet in the cell: it has full cells on both sides of it. */
const isBetween = ({ state, columns }: BedGrid, n: number): boolean =>
  (state[n - 1]! >= FULL && state[n + 1]! >= FULL) || (state[n - columns]! >= FULL && state[n + columns]! >= FULL);

/** Visits the eight cells round one. */
function eachBeside({ columns }: BedGrid, n: number, visit: (next: number) => void): void {
  for (let row = -columns; row <= columns; row += columns)
    for (let next = n + row - 1; next <= n + row + 1; next += 1) if (next !== n) visit(next);
}

/** Calls `give` for each cell that a front cell too full hands to, with its weight. */
function eachTaker(grid: BedGrid, n: number, give: (to: number, weight: number) => void): void {
  const { state, columns } = grid;
  if (isBetween(grid, n)) {
    eachBeside(grid, n, (next) => {
      const room = roomOf(grid, next);
      if (room > 0) give(next, room);
    });
    return;
  }
  for (let side = 0; side < 4; side += 1) {
    const step = side === 0 ? -1 : side === 1 ? 1 : side === 2 ? -columns : columns;
    if (state[n - step]! >= FULL && state[n + step] === EMPTY) give(n + step, 1);
  }
}

/**
 * Passes on what front cells were handed beyond their room: the front goes on into the cell beyond; where two fronts
 * meet, the rest runs along the valley by the room there, so that they meet everywhere at once and not at a chance cell.
 * All give at once and by what was there before, so the order of cells does not matter.
 * @param from where in `list` such cells begin; they end with it
 */
export function spill(grid: BedGrid, from: number): void {
  const { mortar, gap, list, pressure, mark } = grid;
  let begin = from;
  let end = list.length;
  for (let n = 0; n < MOST_CELLS && begin < end; n += 1) {
    // What is given is gathered in `pressure`, which an empty cell does not need until the next march.
    for (let k = begin; k < end; k += 1)
      eachTaker(grid, list[k]!, (to) => {
        pressure[to] = 0;
      });
    for (let k = begin; k < end; k += 1) {
      const cell = list[k]!;
      let sum = 0;
      eachTaker(grid, cell, (_to, weight) => {
        sum += weight;
      });
      if (sum === 0) continue;
      const meet = isBetween(grid, cell);
      const keep = meet ? gap[cell]! * (1 - LEVEL) : gap[cell]!;
      const given = meet ? Math.min(sum, mortar[cell]! - keep) : mortar[cell]! - keep;
      eachTaker(grid, cell, (to, weight) => {
        pressure[to] = pressure[to]! + (given * weight) / sum;
      });
      // Its own room stays nothing, so those after it see what was there before.
      mortar[cell] = mortar[cell]! - given;
    }
    const last = begin;
    for (let k = last; k < end; k += 1) mark[list[k]!] = mark[list[k]!]! - LISTED;
    for (let k = last; k < end; k += 1)
      eachBeside(grid, list[k]!, (to) => {
        const given = pressure[to]!;
        if (grid.state[to] !== EMPTY || given <= 0) return;
        const before = mortar[to]!;
        mortar[to] = before + given;
        pressure[to] = 0;
        if (before + given <= gap[to]! || mark[to]! >= LISTED || begin === 0) return;
        mark[to] = mark[to]! + LISTED;
        begin -= 1;
        list[begin] = to;
      });
    end = last;
  }
  for (let k = begin; k < end; k += 1) mark[list[k]!] = mark[list[k]!]! - LISTED;
  runOn(grid, begin);
}

/** A cell that still holds too much, how much, and its rings of cells: the last one reached and the one before. */
interface Source {
  cell: number;
  surplus: number;
  ring: number[];
  inner: number[];
  /** Rings reached so far, and those within which there is no room. */
  reached: number;
  barren: number;
}

/** Which widening met a cell last, and how far a cell lies from room; by cell. Grown when short. */
let met = new Uint32Array(0);
let widenings = 0;
const MOST_WIDENINGS = 0xffffffff;
let away = new Uint8Array(0);

function ready(cells: number): void {
  if (met.length >= cells) return;
  met = new Uint32Array(cells);
  away = new Uint8Array(cells);
  widenings = 0;
}

/** Goes out to a ring round a source, over empty cells; a cell it has been at can only lie in its last ring or the one before. */
function widen({ pressure, state, columns }: BedGrid, source: Source, rings: number): void {
  if (widenings === MOST_WIDENINGS) {
    met.fill(0);
    widenings = 0;
  }
  widenings += 1;
  let { inner, ring } = source;
  for (let k = 0; k < inner.length; k += 1) met[inner[k]!] = widenings;
  for (let k = 0; k < ring.length; k += 1) met[ring[k]!] = widenings;
  for (let n = source.reached; n < rings; n += 1) {
    const outer: number[] = [];
    for (let k = 0; k < ring.length; k += 1)
      for (let row = ring[k]! - columns; row <= ring[k]! + columns; row += columns)
        for (let next = row - 1; next <= row + 1; next += 1) {
          if (state[next] !== EMPTY || met[next] === widenings) continue;
          met[next] = widenings;
          outer.push(next);
          pressure[next] = 0;
        }
    inner = ring;
    ring = outer;
  }
  source.inner = inner;
  source.ring = ring;
  source.reached = rings;
}

/**
 * Fills what the cells of a void lack while it counts as room still: such a void is closed, and what is left over must go
 * another way downhill. Those left over give of it alike.
 * @param cells of voids without room
 * @param sources what is left over in them
 */
function brim({ gap, mortar }: BedGrid, cells: readonly number[], sources: readonly Source[]): void {
  let lacks = 0;
  let left = 0;
  for (const cell of cells) lacks += Math.max(0, gap[cell]! - mortar[cell]!);
  for (const { surplus } of sources) left += surplus;
  if (lacks === 0 || lacks > left) return;
  for (const cell of cells) mortar[cell] = Math.max(gap[cell]!, mortar[cell]!);
  for (const { cell, surplus } of sources) mortar[cell] = mortar[cell]! - (lacks * surplus) / left;
}

/** The sources from which some room lies near enough. The voids of the others are closed, and they wait. */
function nearRoom(grid: BedGrid, sources: readonly Source[]): Source[] {
  const { mark, state } = grid;
  // Out from all at once over cells without room, then back from the room that was met.
  const seen: number[] = [];
  let roomy: number[] = [];
  const meet = (cell: number): void => {
    const room = roomOf(grid, cell) > 0;
    mark[cell] = mark[cell]! + MET + (room ? LEADS : 0);
    seen.push(cell);
    if (room) roomy.push(cell);
  };
  for (const { cell } of sources) meet(cell);
  let begin = 0;
  for (let n = 0; n < MOST_RINGS && begin < seen.length; n += 1) {
    const end = seen.length;
    for (; begin < end; begin += 1) {
      if (mark[seen[begin]!]! >= LEADS) continue;
      eachBeside(grid, seen[begin]!, (next) => {
        if (state[next] === EMPTY && mark[next]! < MET) meet(next);
      });
    }
  }
  for (let n = 0; n < MOST_RINGS && roomy.length > 0; n += 1) {
    const ring: number[] = [];
    for (const cell of roomy)
      eachBeside(grid, cell, (next) => {
        if (mark[next]! < MET || mark[next]! >= LEADS) return;
        mark[next] = mark[next]! + LEADS;
        away[next] = n + 1;
        ring.push(next);
      });
    roomy = ring;
  }
  const near = sources.filter(({ cell }) => mark[cell]! >= LEADS);
  for (const source of near) source.barren = away[source.cell]! - 1;
  const closed = sources.filter(({ cell }) => mark[cell]! < LEADS);
  if (closed.length > 0) {
    const roomless = seen.filter((cell) => mark[cell]! < LEADS);
    brim(grid, roomless, closed);
  }
  for (const cell of seen) mark[cell] = mark[cell]! % MET;
  return near;
}

/**
 * What front cells hold even then runs on through the void, ring by ring round each, until it has found its room: the
 * end of a lane gathers more than its next cells take. All give at once here too.
 * @param from where in `list` the cells that were too full at some time begin
 */
function runOn(grid: BedGrid, from: number): void {
  const { mortar, gap, list, pressure, state } = grid;
  const cells = new Set<number>();
  for (let k = from; k < list.length; k += 1) {
    const cell = list[k]!;
    if (state[cell] === EMPTY && mortar[cell]! > gap[cell]!) cells.add(cell);
  }
  let sources = Array.from(cells, (cell): Source => ({
    cell,
    surplus: mortar[cell]! - gap[cell]!,
    ring: [cell],
    inner: [],
    reached: 0,
    barren: 0,
  }));
  ready(state.length);
  let isNews = true;
  for (let n = 0; n < MOST_RINGS && sources.length > 0; n += 1) {
    // What was near may have been filled by others since: looked at again after 1, 2, 4 … rings.
    if (isNews && (n & (n - 1)) === 0) {
      sources = nearRoom(grid, sources);
      isNews = false;
    }
    const giving: Source[] = [];
    const reaching = sources.filter(({ barren }) => barren <= n);
    for (const source of reaching) widen(grid, source, n + 1);
    for (const source of reaching) {
      let room = 0;
      for (let k = 0; k < source.ring.length; k += 1) room += roomOf(grid, source.ring[k]!);
      if (room === 0) continue;
      giving.push(source);
      const given = Math.min(source.surplus, room);
      for (const cell of source.ring) pressure[cell] = pressure[cell]! + (given * roomOf(grid, cell)) / room;
      source.surplus -= given;
      mortar[source.cell] = mortar[source.cell]! - given;
    }
    if (giving.length > 0) isNews = true;
    for (const { ring } of giving)
      for (const cell of ring) {
        mortar[cell] = mortar[cell]! + pressure[cell]!;
        pressure[cell] = 0;
      }
    sources = sources.filter(({ surplus, ring }) => surplus > 0 && ring.length > 0);
  }
}
