import type { BedFrame } from '../../bed/types.ts';
import { leaningOf } from '../leaning.ts';
import { columnsOf, readerOf } from './columns.ts';
import { regionOf, type Point, type Region } from './region.ts';
import { runsOf } from './runs.ts';

/** The line of cells a section reads where columns stand at their place. */
export interface SectionLine {
  lengthwise: boolean;
  /** Row or column of cells. */
  line: number;
}

/** What a plane through leaning ridges shows. Heights mm over the floor. */
export interface LeaningCut {
  mortar: Region;
  /** Shut-in air. */
  air: Region;
  /** How far beside the line on the tile's back the plane meets the floor, among columns as they stood upright, mm. */
  acrossMm: number;
  tallestMm: number;
  /** Bodies of mortar that the plane meets. */
  ridges: number;
}

/** Heights at which the plane is read, between floor and back or crests. */
const ROWS = 16;
/** A comb is read this far under and over its crests, mm. */
const ABOUT_CRESTS_MM = 0.03;

/** A net over a run of cells and what was read at its points: how far inside the mortar they lie, and inside shut-in air, mm. */
interface RunRead {
  net: Point[][];
  mortar: Float64Array[];
  air: Float64Array[];
  /** Top of the mortar over the floor in each column of the net, mm. */
  topMm: number[];
}

/** Heights over the floor at which a column of the net is read, mm: up to the tile's back, or over the crests of a comb. */
function heightsTo(gapMm: number, crestMm: number): number[] {
  const comb = Number.isNaN(gapMm);
  const top = comb ? crestMm - ABOUT_CRESTS_MM : gapMm;
  const heights = Array.from({ length: ROWS + 1 }, (_, row) => (top * row) / ROWS);
  return comb ? [...heights, crestMm + ABOUT_CRESTS_MM] : heights;
}

/** The top of the mortar in a column: where the last row inside passes into the next one. */
function topOf(inside: Float64Array, heightsMm: readonly number[]): number {
  const last = inside.findLastIndex((value) => value >= 0);
  if (last < 0) return 0;
  const [here, next] = [heightsMm[last]!, heightsMm[last + 1]];
  return next === undefined ? here : here + ((next - here) * inside[last]!) / (inside[last]! - inside[last + 1]!);
}

/**
 * How many bodies of mortar a cut meets: as many as it meets over a quarter of the heights at least, so that the teeth of
 * a ragged edge are none, and one where it meets any.
 */
function bodiesIn(runs: readonly RunRead[]): number {
  const bodies = new Int32Array(ROWS - 1);
  for (const { mortar } of runs)
    for (let row = 1; row < ROWS; row++)
      for (let n = 0; n < mortar.length; n++)
        if (mortar[n]![row]! >= 0 && (n === 0 || mortar[n - 1]![row]! < 0)) bodies[row - 1]! += 1;
  const most = bodies.sort().reverse();
  return Math.max(Math.min(1, most[0]!), most[Math.ceil(ROWS / 4) - 1]!);
}

/** The regions of several runs as one. */
function joined(regions: readonly Region[]): Region {
  return { pieces: regions.flatMap(({ pieces }) => pieces), edges: regions.flatMap(({ edges }) => edges) };
}

/**
 * The section of leaning ridges; null where none lean. To lean is to be slid aside with height, so an upright plane meets
 * at each height another line of the columns: the one as far back as these have come forward. Along the section the net
 * leans with the columns, across it the line is moved.
 * @param standsMm what is left of each column, where the mortar has parted
 */
export function leaningCut(
  frame: BedFrame,
  { lengthwise, line }: SectionLine,
  standsMm: Float32Array = frame.mortarMm,
): LeaningCut | null {
  const leaning = leaningOf(frame);
  if (!leaning) return null;
  const { columns, rows, cellMm, originMm, floorMm, gapMm } = frame;
  const { slope, atMm } = leaning;
  const [along, across] = lengthwise ? slope : [slope[1], slope[0]];
  const [steps, startMm] = lengthwise ? [columns, originMm[0]] : [rows, originMm[1]];
  const cellOf = (step: number): number => (lengthwise ? line * columns + step : step * columns + line);
  const upright = columnsOf(frame, lengthwise);
  const acrossMm = Math.abs(across) * atMm;
  const read = readerOf(frame, upright, standsMm, {
    // Ridges run square to the way they lean.
    along: Math.abs(across) > Math.abs(along),
    line,
    reach: acrossMm / cellMm,
  });
  const readRun = ([first, last]: [number, number]): RunRead => {
    const run: RunRead = { net: [], mortar: [], air: [], topMm: [] };
    const addColumn = (step: number, offCells: number): void => {
      const floor = floorMm[cellOf(step)]!;
      const gap = gapMm[cellOf(step)]!;
      const heights = heightsTo(gap, atMm);
      const points: Point[] = [];
      const mortar = new Float64Array(heights.length);
      const air = new Float64Array(heights.length);
      for (const [row, height] of heights.entries()) {
        const forward = floor + height - atMm;
        const { inside, shut } = read(step, line - (across * forward) / cellMm, height);
        points.push([startMm + (step + offCells) * cellMm + along * forward, floor + height]);
        mortar[row] = inside;
        air[row] = shut ? -inside : -cellMm;
      }
      run.net.push(points);
      run.mortar.push(mortar);
      run.air.push(air);
      run.topMm.push(topOf(mortar, heights));
    };
    // From the side of the first cell to that of the last, through the middles.
    addColumn(first, -0.5);
    for (let step = first; step <= last; step++) addColumn(step, 0);
    addColumn(last, 0.5);
    return run;
  };
  const runs = runsOf(steps, (step) => upright.cellAt(step, line) >= 0).map(readRun);
  return {
    mortar: joined(runs.map(({ net, mortar }) => regionOf(net, mortar))),
    air: joined(runs.map(({ net, air }) => regionOf(net, air))),
    acrossMm,
    tallestMm: Math.max(0, ...runs.flatMap(({ topMm }) => topMm)),
    ridges: bodiesIn(runs),
  };
}
