import { CELL_STATE, type BedFrame } from '../../bed/types.ts';
import { leansIn } from '../leaning.ts';
import { insideWalls, WALL, wallsOn, type Wall } from './walls.ts';

/** A coat thinner than this between ridges is none, mm. */
const BARE_MM = 0.02;
/** A height off a level counts as so many times the distance from a wall: corners stay sharp where the two meet. */
const LEVEL_FIRST = 40;
/** Rounding, mm. */
const NOTHING_MM = 1e-6;
/** Walls farther off than this are not asked for, cells. */
const FAR = 4;

/** Upright columns as a section sees them: by step along it and by line of cells beside it. */
export interface Columns {
  cellMm: number;
  steps: number;
  /** The cell at a step of a line; −1 where no ridge stands. */
  cellAt: (step: number, line: number) => number;
  /** What a cell held before the mortar parted, mm; NaN where no ridge stands. */
  heightAt: (step: number, line: number) => number;
}

/** A height no higher than the tile's back where there is one. */
const belowBack = (heightMm: number, gapMm: number): number => (heightMm > gapMm ? gapMm : heightMm);

/** The columns of a frame along a section of its length or its width. */
export function columnsOf(frame: BedFrame, lengthwise: boolean): Columns {
  const { columns, rows, cellMm, gapMm } = frame;
  const [steps, lines] = lengthwise ? [columns, rows] : [rows, columns];
  const leans = leansIn(frame);
  const heights = frame.mortarMm.map((height, cell) => (leans(cell) ? belowBack(height, gapMm[cell]!) : NaN));
  const cellAt = (step: number, line: number): number => {
    if (step < 0 || line < 0 || step >= steps || line >= lines) return -1;
    const cell = lengthwise ? line * columns + step : step * columns + line;
    return Number.isNaN(heights[cell]!) ? -1 : cell;
  };
  const heightAt = (step: number, line: number): number => {
    const cell = cellAt(step, line);
    return cell < 0 ? NaN : heights[cell]!;
  };
  return { cellMm, steps, cellAt, heightAt };
}

/** A value between two lines of cells: one of them where the other has none. */
function between(line: number, valueAt: (line: number) => number): number {
  const low = Math.floor(line);
  const [a, b] = [valueAt(low), valueAt(low + 1)];
  if (Number.isNaN(a)) return b;
  return Number.isNaN(b) ? a : a + (b - a) * (line - low);
}

/** How far a place lies inside the ridge about it, cells. */
type InsideRidge = (step: number, line: number, heightMm: number) => number;

/** Walls read along the section, for ridges that run more across it than along it; between two lines they run evenly. */
function wallsAlong({ heightAt, steps }: Columns): InsideRidge {
  const known = new Map<number, Wall[]>();
  const wallsOf = (line: number): Wall[] => {
    const held = known.get(line);
    if (held) return held;
    const walls = wallsOn(Array.from({ length: steps }, (_, step) => heightAt(step, line)));
    known.set(line, walls);
    return walls;
  };
  return (step, line, heightMm) =>
    between(line, (at) => {
      const top = heightAt(step, at);
      return Number.isNaN(top) ? top : insideWalls(wallsOf(at), step, heightMm, top > heightMm ? FAR : -FAR);
    });
}

/** Walls read across the section at each of its steps, for ridges that run more along it. */
function wallsAcross({ heightAt }: Columns, [from, to]: readonly [number, number]): InsideRidge {
  const known = new Map<number, Wall[]>();
  const wallsOf = (step: number): Wall[] => {
    const held = known.get(step);
    if (held) return held;
    const walls = wallsOn(Array.from({ length: to - from + 1 }, (_, n) => heightAt(step, from + n)));
    known.set(step, walls);
    return walls;
  };
  return (step, line, heightMm) => {
    const none = heightAt(step, Math.round(line)) > heightMm ? FAR : -FAR;
    return insideWalls(wallsOf(step), line - from, heightMm, none);
  };
}

/** How ridges run to a section. */
interface RidgeRun {
  /** More along it than across it. */
  along: boolean;
  /** The section's own line of cells. */
  line: number;
  /** How many lines to each side of it are read. */
  reach: number;
}

/** One reading at a place among the upright columns. */
export interface Reading {
  /** How far inside the mortar, mm; negative outside. */
  inside: number;
  /** Whether the voids near by are shut in. */
  shut: boolean;
}

/** What the cells about a place hold: the levels of mortar, and whether more of their voids are shut in than open. */
interface About {
  step: number;
  line: number;
  least: number;
  most: number;
  shut: boolean;
}

function aboutOf({ cellAt, heightAt }: Columns, state: Uint8Array, step: number, line: number): About {
  let [least, most, shut] = [Infinity, 0, 0];
  for (let off = -1; off <= 2; off++)
    for (let aside = -2; aside <= 2; aside++) {
      const cell = cellAt(step + aside, line + off);
      if (cell < 0) continue;
      const height = heightAt(step + aside, line + off);
      if (height < least) least = height;
      if (height > most) most = height;
      if (state[cell] === CELL_STATE.trapped) shut += 1;
      if (state[cell] === CELL_STATE.open) shut -= 1;
    }
  return { step, line, least, most, shut: shut > 0 };
}

/**
 * Reads upright columns at a step of a section, on a line beside it, so far over the floor.
 * @param standsMm what is left of each column, where the mortar has parted
 */
export function readerOf(
  { state, mortarMm, gapMm }: BedFrame,
  columns: Columns,
  standsMm: Float32Array,
  runs: RidgeRun,
): (step: number, line: number, heightMm: number) => Reading {
  const { cellMm, cellAt, heightAt } = columns;
  const reach = Math.ceil(runs.reach) + FAR;
  const insideRidge = runs.along ? wallsAcross(columns, [runs.line - reach, runs.line + reach]) : wallsAlong(columns);
  const torn = standsMm !== mortarMm;
  const standsAt = (step: number, line: number): number => {
    const cell = cellAt(step, line);
    return cell < 0 ? NaN : belowBack(standsMm[cell]!, gapMm[cell]!);
  };
  // A step is read at all its heights in turn, and most of these lie between the same two lines.
  let about: About | null = null;
  return (step, line, atMm) => {
    const nearest = cellAt(step, Math.round(line));
    if (nearest < 0) return { inside: -cellMm, shut: false };
    const low = Math.floor(line);
    if (about?.step !== step || about.line !== low) about = aboutOf(columns, state, step, low);
    const { least, most, shut } = about;
    const heightMm = Math.max(atMm, BARE_MM);
    let inside: number;
    if (most - least > WALL * most) {
      inside = cellMm * insideRidge(step, line, heightMm);
      // What touches the back ends there with the section.
      if (!(most >= gapMm[nearest]! - BARE_MM)) inside = Math.min(inside, LEVEL_FIRST * (most - heightMm));
      if (least > BARE_MM) inside = Math.max(inside, LEVEL_FIRST * (least - heightMm));
    } else inside = LEVEL_FIRST * (between(line, (at) => heightAt(step, at)) - heightMm);
    if (torn) inside = Math.min(inside, LEVEL_FIRST * (between(line, (at) => standsAt(step, at)) - heightMm));
    return { inside: inside + NOTHING_MM, shut };
  };
}
