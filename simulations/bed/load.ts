import { type BedGrid, EMPTY, FULL, OPEN } from './grid.ts';
import type { MarchTerms } from './march.ts';

/** What the bed can bear as it lies, N and mm, and where. */
export interface BedLoad {
  /** Force at yield, air included, N. */
  forceN: number;
  /** Its share borne by air in the voids themselves, N. */
  airN: number;
  /** Where the force acts, mm from the tile's centre. */
  atX: number;
  atY: number;
  /** Area in contact, mm², its centre and its second moments about that centre, mm⁴. */
  contactMm2: number;
  centreX: number;
  centreY: number;
  spreadX: number;
  spreadY: number;
  /** Room left in the voids, mm³. */
  roomMm3: number;
  /** Mortar that full cells hold over their gap and have yet to pass on, mm³. */
  overMm3: number;
  /** Area of all pieces, mm². */
  tileMm2: number;
  /** Mean and least gap where there is contact, mm. */
  meanGap: number;
  leastGap: number;
}

/** How far the mean over a cell lies under its middle where the pressure has its ridge in the cell. */
const crest = (a: number, b: number): number => {
  const small = a < b ? a : b;
  return small > 0 ? (small * small) / (4 * (a > b ? a : b)) : 0;
};

/** Sums pressure over the tile: full cells, the crossed part of front cells, the air in pockets. */
export function bedLoad(grid: BedGrid, terms: MarchTerms): BedLoad {
  const { pressure, state, gap, mortar, label, columns, rim, tileColumns, tileRows, cellMm, originMm } = grid;
  const { gaugePa, endPa } = terms;
  const climb = 2 * terms.yieldPa * cellMm;
  let force = 0;
  let air = 0;
  let momentX = 0;
  let momentY = 0;
  let contact = 0;
  let sumX = 0;
  let sumY = 0;
  let sumXX = 0;
  let sumYY = 0;
  let cells = 0;
  let room = 0;
  let over = 0;
  let sumGap = 0;
  let leastGap = Infinity;
  for (let row = rim; row < rim + tileRows; row += 1) {
    const y = originMm[1] + row * cellMm;
    const start = row * columns + rim;
    let x = originMm[0] + rim * cellMm;
    let rowForce = 0;
    let rowContact = 0;
    for (let n = start; n < start + tileColumns; n += 1, x += cellMm) {
      const s = state[n]!;
      if (s === OPEN) continue;
      cells += 1;
      const g = gap[n]!;
      if (g < leastGap) leastGap = g;
      let p: number;
      let part = 1;
      const value = pressure[n]!;
      if (s === EMPTY) {
        part = -1 - value;
        room += g - mortar[n]!;
        const held = gaugePa[label[n]!]!;
        p = held;
        if (held > 0) air += held * (1 - part);
        if (part > 0) p += part * (endPa + (0.5 * part * climb) / g);
      } else {
        p = value;
        if (mortar[n]! > g) over += mortar[n]! - g;
        const inside = s === FULL;
        const l = inside || state[n - 1]! >= FULL ? value - pressure[n - 1]! : -1;
        const r = inside || state[n + 1]! >= FULL ? value - pressure[n + 1]! : -1;
        const d = inside || state[n - columns]! >= FULL ? value - pressure[n - columns]! : -1;
        const u = inside || state[n + columns]! >= FULL ? value - pressure[n + columns]! : -1;
        if (l > 0 && r > 0) p -= crest(l, r);
        if (d > 0 && u > 0) p -= crest(d, u);
      }
      rowForce += p;
      momentX += p * x;
      if (part > 0) {
        rowContact += part;
        sumX += part * x;
        sumXX += part * x * x;
        sumGap += part * g;
      }
    }
    force += rowForce;
    momentY += rowForce * y;
    contact += rowContact;
    sumY += rowContact * y;
    sumYY += rowContact * y * y;
  }
  const area = cellMm * cellMm;
  const cx = contact > 0 ? sumX / contact : 0;
  const cy = contact > 0 ? sumY / contact : 0;
  return {
    forceN: force * area * 1e-6,
    airN: air * area * 1e-6,
    atX: force > 0 ? momentX / force : 0,
    atY: force > 0 ? momentY / force : 0,
    contactMm2: contact * area,
    centreX: cx,
    centreY: cy,
    spreadX: (sumXX - contact * cx * cx) * area,
    spreadY: (sumYY - contact * cy * cy) * area,
    roomMm3: room * area,
    overMm3: over * area,
    tileMm2: cells * area,
    meanGap: contact > 0 ? sumGap / contact : 0,
    leastGap,
  };
}
