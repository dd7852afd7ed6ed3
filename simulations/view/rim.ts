import { CELL_STATE, type BedFrame } from '../bed/types.ts';
import { isLaid } from './laid.ts';

/** Squeeze-up comes out as a tongue about this many gaps thick, and reaches no farther than this from the edge, mm. */
const TONGUE_GAPS = 1.7;
const FARTHEST_MM = 42;
const NARROWEST_MM = 3;

/** Takes what stands over `cap` along a strip to the nearest room on both sides. The sum is kept. */
function evenOut(strip: Float64Array, cap: number): void {
  for (let n = 0; n < strip.length; n++) {
    let surplus = strip[n]! - cap;
    if (surplus <= 0) continue;
    strip[n] = cap;
    for (let off = 1; surplus > 0 && off < strip.length; off++) {
      for (const place of [n - off, n + off]) {
        if (place < 0 || place >= strip.length) continue;
        const put = Math.min(surplus, Math.max(0, cap - strip[place]!));
        strip[place]! += put;
        surplus -= put;
      }
    }
    // No room anywhere: it lies evenly on the whole strip.
    if (surplus > 0) for (let place = 0; place < strip.length; place++) strip[place]! += surplus / strip.length;
  }
}

/** One side of the tile: where its cells lie in the old frame and in the padded one, counted outwards from the edge. */
interface Side {
  count: number;
  from: (along: number, outwards: number) => number;
  to: (along: number, outwards: number) => number;
}

/** Mortar beyond each place of an edge as a cross-section, mm². */
function areasOf(frame: BedFrame, rim: number, side: Side): Float64Array {
  const areas = new Float64Array(side.count);
  for (let n = 0; n < side.count; n++)
    for (let k = 0; k < rim; k++) areas[n]! += frame.mortarMm[side.from(n, k)]! * frame.cellMm;
  return areas;
}

/** Lays a cross-section down as a rounded bead: steep at its front, as paste that holds its shape lies. */
function layBead(
  area: number,
  high: number,
  cellMm: number,
  cells: number,
  put: (k: number, height: number) => void,
): void {
  const wide = Math.max(NARROWEST_MM, (1.5 * area) / high);
  const top = (1.5 * area) / wide;
  const room = cells * cellMm;
  const reach = Math.min(wide, room);
  const left = (x: number): number =>
    x >= reach ? 0 : ((2 / 3) * reach * top * (1 - x / reach) ** 1.5 * wide) / reach;
  for (let k = 0; k < cells; k++) put(k, (left(k * cellMm) - left((k + 1) * cellMm)) / cellMm);
}

/**
 * A frame whose squeeze-up lies as a bead beside the tile: the solver keeps it in the cell by the edge where it left,
 * and paste does not stand in a needle. Its volume is the solver's; how it lies is drawn. The frame grows by the room
 * the bead needs.
 */
export function levelRim(frame: BedFrame): BedFrame {
  if (!isLaid(frame)) return frame;
  const { columns, rows, cellMm, gapMm } = frame;
  const covered = (column: number, row: number): boolean => !Number.isNaN(gapMm[row * columns + column]!);
  let rim = 0;
  while (rim < columns / 2 && rim < rows / 2 && !covered(rim, rows >> 1)) rim++;
  if (rim === 0 || rim >= columns / 2) return frame;
  const pad = Math.max(0, Math.round(FARTHEST_MM / cellMm) - rim);
  const wide = columns + 2 * pad;
  const high = rows + 2 * pad;
  const old = (column: number, row: number): number => row * columns + column;
  const now = (column: number, row: number): number => (row + pad) * wide + column + pad;
  const inside = (rowsOrColumns: number): number => rowsOrColumns - 2 * rim;
  const sides: Side[] = [
    { count: inside(rows), from: (n, k) => old(rim - 1 - k, n + rim), to: (n, k) => now(rim - 1 - k, n + rim) },
    {
      count: inside(rows),
      from: (n, k) => old(columns - rim + k, n + rim),
      to: (n, k) => now(columns - rim + k, n + rim),
    },
    { count: inside(columns), from: (n, k) => old(n + rim, rim - 1 - k), to: (n, k) => now(n + rim, rim - 1 - k) },
    {
      count: inside(columns),
      from: (n, k) => old(n + rim, rows - rim + k),
      to: (n, k) => now(n + rim, rows - rim + k),
    },
  ];
  const grown = padded(frame, pad, wide, high);
  const tongue = frame.tileHeightMm * TONGUE_GAPS;
  const cells = rim + pad;
  for (const side of sides) {
    const areas = areasOf(frame, rim, side);
    const mean = areas.reduce((sum, area) => sum + area, 0) / Math.max(1, side.count);
    evenOut(areas, Math.max((tongue * FARTHEST_MM) / 1.5, mean * 1.02));
    for (let n = 0; n < side.count; n++)
      layBead(areas[n]!, tongue, cellMm, cells, (k, height) => {
        grown.mortarMm[side.to(n, k)] = height;
      });
  }
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
    for (let column = 0; column < wide; column++) {
      const oldColumn = Math.min(columns - 1, Math.max(0, column - pad));
      const from = oldRow * columns + oldColumn;
      const to = row * wide + column;
      grown.floorMm[to] = frame.floorMm[from]!;
      if (oldRow !== row - pad || oldColumn !== column - pad) continue;
      grown.mortarMm[to] = frame.mortarMm[from]!;
      grown.gapMm[to] = frame.gapMm[from]!;
      grown.state[to] = frame.state[from]!;
    }
  }
  return grown;
}
