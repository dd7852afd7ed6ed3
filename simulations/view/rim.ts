import { CELL_STATE, type BedFrame } from '../bed/types.ts';
import { beadHigh, cornerVolume, evenOut, layBead, layCorner, spreadOut } from './bead.ts';
import { levelJoints } from './joints.ts';
import { isLaid } from './laid.ts';
import { tileWindow } from './map/tile-window.ts';

/** Squeeze-up reaches no farther than this from the edge, mm. */
const FARTHEST_MM = 42;
/** The bead at a corner is as thick as beside it along this much of both edges, mm. */
const BESIDE_CORNER_MM = 12;

/** One side of the tile: where its cells lie in the old frame and in the padded one, counted outwards from the edge. */
interface Side {
  count: number;
  from: (along: number, outwards: number) => number;
  to: (along: number, outwards: number) => number;
}

/** The tile's corners: the ends of two sides that meet there (the side's number, and whether at its last cell). */
const CORNERS: readonly { ends: readonly [side: number, last: boolean][]; right: boolean; far: boolean }[] = [
  { ends: [[0, false], [1, false]], right: false, far: false }, // prettier-ignore
  { ends: [[1, true], [2, false]], right: true, far: false }, // prettier-ignore
  { ends: [[2, true], [3, true]], right: true, far: true }, // prettier-ignore
  { ends: [[3, false], [0, true]], right: false, far: true }, // prettier-ignore
];

/** Mortar beyond each place of an edge as a cross-section, mm². */
function areasOf(frame: BedFrame, rim: number, side: Side): Float64Array {
  const areas = new Float64Array(side.count);
  for (let n = 0; n < side.count; n++)
    for (let k = 0; k < rim; k++) areas[n]! += frame.mortarMm[side.from(n, k)]! * frame.cellMm;
  return areas;
}

const meanOf = (areas: ArrayLike<number>): number => {
  let sum = 0;
  for (let n = 0; n < areas.length; n++) sum += areas[n]!;
  return sum / Math.max(1, areas.length);
};

/** Mean of a strip's first cells, or of its last. */
function endMean(areas: Float64Array, cells: number, last: boolean): number {
  return meanOf(last ? areas.slice(-cells) : areas.slice(0, cells));
}

/** Takes so much from a strip, from each part in proportion to what it holds. @returns what there was to take */
function take(areas: Float64Array, wanted: number): number {
  const all = areas.reduce((sum, area) => sum + area, 0);
  const taken = Math.min(wanted, all);
  if (taken > 0) for (let n = 0; n < areas.length; n++) areas[n]! *= 1 - taken / all;
  return taken;
}

/**
 * A frame whose squeeze-up lies as a bead beside the tile and round its corners, and level in the joints of a sheet:
 * the solver keeps it in the cell where it left, and paste does not stand in a needle. Its volume is the solver's; how
 * it lies is drawn. The frame grows by the room the bead needs.
 */
export function levelRim(frame: BedFrame): BedFrame {
  if (!isLaid(frame)) return frame;
  const { columns, rows, cellMm } = frame;
  const window = tileWindow(frame);
  const rim = window.fromColumn;
  if (rim === 0 || window.fromRow !== rim || window.toColumn !== columns - rim || window.toRow !== rows - rim)
    return frame;
  const pad = Math.max(0, Math.round(FARTHEST_MM / cellMm) - rim);
  const wide = columns + 2 * pad;
  const high = rows + 2 * pad;
  const old = (column: number, row: number): number => row * columns + column;
  const now = (column: number, row: number): number => (row + pad) * wide + column + pad;
  const [acrossCount, alongCount] = [rows - 2 * rim, columns - 2 * rim];
  // Left, near, right, far; each from the least x or y to the greatest.
  const sides: [Side, Side, Side, Side] = [
    { count: acrossCount, from: (n, k) => old(rim - 1 - k, n + rim), to: (n, k) => now(rim - 1 - k, n + rim) },
    { count: alongCount, from: (n, k) => old(n + rim, rim - 1 - k), to: (n, k) => now(n + rim, rim - 1 - k) },
    {
      count: acrossCount,
      from: (n, k) => old(columns - rim + k, n + rim),
      to: (n, k) => now(columns - rim + k, n + rim),
    },
    { count: alongCount, from: (n, k) => old(n + rim, rows - rim + k), to: (n, k) => now(n + rim, rows - rim + k) },
  ];
  const grown = padded(frame, pad, wide, high);
  levelJoints(grown, {
    fromColumn: rim + pad,
    toColumn: columns - rim + pad,
    fromRow: rim + pad,
    toRow: rows - rim + pad,
  });
  const cells = rim + pad;
  const strips = sides.map((side) => areasOf(frame, rim, side));
  const tongue = beadHigh(meanOf(strips.flatMap((areas) => [...areas])), frame.tileHeightMm);
  for (const areas of strips) {
    spreadOut(areas, cellMm);
    evenOut(areas, Math.max(tongue * FARTHEST_MM * (2 / 3), meanOf(areas) * 1.02));
  }
  const beside = Math.max(1, Math.round(BESIDE_CORNER_MM / cellMm));
  for (const { ends, right, far } of CORNERS) {
    const place = (i: number, j: number): [number, number] => [
      right ? columns - rim + i : rim - 1 - i,
      far ? rows - rim + j : rim - 1 - j,
    ];
    const area = ends.reduce((sum, [side, last]) => sum + endMean(strips[side]!, beside, last) / ends.length, 0);
    let volume = 0;
    for (let j = 0; j < rim; j++)
      for (let i = 0; i < rim; i++) volume += frame.mortarMm[old(...place(i, j))]! * cellMm ** 2;
    // What the corner lacks of a bead that goes on round it is drawn from both edges.
    const lacking = Math.max(0, cornerVolume(area, tongue, cells * cellMm) - volume);
    for (const [side] of ends) volume += take(strips[side]!, lacking / ends.length / cellMm) * cellMm;
    layCorner(volume, { area, high: tongue, cellMm, cells }, (i, j, height) => {
      grown.mortarMm[now(...place(i, j))] = height;
    });
  }
  sides.forEach((side, n) => {
    for (let at = 0; at < side.count; at++)
      layBead(strips[n]![at]!, tongue, cellMm, cells, (k, height) => {
        grown.mortarMm[side.to(at, k)] = height;
      });
  });
  return grown;
}

/** The frame with a bare border; the floor goes on as at its nearest cell. */
function padded(frame: BedFrame, pad: number, wide: number, high: number): BedFrame {
  const { columns, rows, cellMm } = frame;
  const grown: BedFrame = {
    ...frame,
    columns: wide,
    rows: high,
    originMm: [frame.originMm[0] - pad * cellMm, frame.originMm[1] - pad * cellMm],
    mortarMm: new Float32Array(wide * high),
    floorMm: new Float32Array(wide * high),
    gapMm: new Float32Array(wide * high).fill(NaN),
    state: new Uint8Array(wide * high).fill(CELL_STATE.outside),
  };
  for (let row = 0; row < high; row++) {
    const oldRow = Math.min(rows - 1, Math.max(0, row - pad));
    const [from, to] = [oldRow * columns, row * wide];
    const until = from + columns;
    grown.floorMm.fill(frame.floorMm[from]!, to, to + pad);
    grown.floorMm.set(frame.floorMm.subarray(from, until), to + pad);
    grown.floorMm.fill(frame.floorMm[until - 1]!, to + pad + columns, to + wide);
    if (oldRow !== row - pad) continue;
    for (const field of ['mortarMm', 'gapMm', 'state'] as const)
      grown[field].set(frame[field].subarray(from, until), to + pad);
  }
  return grown;
}
