/** How mortar that came out beside a tile is drawn: paste that holds its shape lies as a bead, not as a needle. */

/** A pile narrower than this along the edge does not stand by itself, mm to each side. */
const SPREAD_MM = 5;
const NARROWEST_MM = 3;
/** Area of a bead's section over its width and height: it is rounded at its top and steep at its front. */
const FULLNESS = 2 / 3;
/** The same for a bead turned round a corner: four fifteenths of the cylinder around it. */
const ROUND_FULLNESS = 4 / 15;

/** Squeeze-up comes out as a tongue about this many gaps thick; more of it curls up and lies no flatter than this. */
const TONGUE_GAPS = 1.7;
const WIDEST = 2.5;

/**
 * How thick what came out lies beside the tile, mm: as it comes out of the gap, or, out of a thin one, so thick that it
 * is no wider than a paste that stands would be.
 * @param area mean cross-section along the edges, mm²
 */
export const beadHigh = (area: number, gapMm: number): number =>
  Math.max(TONGUE_GAPS * gapMm, Math.sqrt(area / FULLNESS / WIDEST));

/** Takes what stands over `cap` along a strip to the nearest room on both sides. The sum is kept. */
export function evenOut(strip: Float64Array, cap: number): void {
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

/** Spreads each part of a strip over its neighbours within a thumb's width. The sum is kept. */
export function spreadOut(strip: Float64Array, cellMm: number): void {
  const reach = Math.max(1, Math.round(SPREAD_MM / cellMm));
  for (let turn = 0; turn < 2; turn++) {
    const given = strip.slice();
    strip.fill(0);
    for (let n = 0; n < given.length; n++) {
      const from = Math.max(0, n - reach);
      const to = Math.min(given.length - 1, n + reach);
      for (let place = from; place <= to; place++) strip[place]! += given[n]! / (to - from + 1);
    }
  }
}

/** A bead of a cross-section, mm², as thick as `high`, in the room there is: its width and the height at its foot, mm. */
export function beadOf(area: number, high: number, room: number): { wide: number; top: number } {
  const wide = Math.min(room, Math.max(NARROWEST_MM, area / FULLNESS / high));
  return { wide, top: area / FULLNESS / wide };
}

/** Lays a cross-section down as a rounded bead: steep at its front, as paste that holds its shape lies. */
export function layBead(
  area: number,
  high: number,
  cellMm: number,
  cells: number,
  put: (k: number, height: number) => void,
): void {
  const { wide, top } = beadOf(area, high, cells * cellMm);
  const left = (x: number): number => (x >= wide ? 0 : FULLNESS * wide * top * (1 - x / wide) ** 1.5);
  for (let k = 0; k < cells; k++) put(k, (left(k * cellMm) - left((k + 1) * cellMm)) / cellMm);
}

/** What a bead that goes on round a corner holds in that quarter, mm³. */
export function cornerVolume(area: number, high: number, room: number): number {
  const { wide, top } = beadOf(area, high, room);
  return (Math.PI / 2) * ROUND_FULLNESS * top * wide ** 2;
}

/** Lays a volume, mm³, round a corner, as the bead of this cross-section goes on there. */
export function layCorner(
  volume: number,
  { area, high, cellMm, cells }: { area: number; high: number; cellMm: number; cells: number },
  put: (i: number, j: number, height: number) => void,
): void {
  // A corner that holds more than the bead beside it is fuller: as wide as a bead no thicker than the tongue must be.
  const own = Math.sqrt(volume / ((Math.PI / 2) * ROUND_FULLNESS * high));
  const wide = Math.min(cells * cellMm, Math.max(own, beadOf(area, high, cells * cellMm).wide));
  const shape = new Float64Array(cells * cells);
  let sum = 0;
  for (let j = 0; j < cells; j++)
    for (let i = 0; i < cells; i++) {
      const off = Math.hypot(i + 0.5, j + 0.5) * cellMm;
      const height = off < wide ? Math.sqrt(1 - off / wide) : 0;
      shape[j * cells + i] = height;
      sum += height;
    }
  // Coarser cells than the bead is wide: the cell at the corner takes it.
  if (sum === 0) sum = shape[0] = 1;
  for (let j = 0; j < cells; j++)
    for (let i = 0; i < cells; i++) put(i, j, (volume * shape[j * cells + i]!) / sum / cellMm ** 2);
}
