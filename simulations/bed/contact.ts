import { pressedTransfer, slidTransfer } from '../mortar/skin.ts';
import type { Bed } from './bed.ts';
import { EMPTY, FRESH, FULL, OPEN } from './grid.ts';
import { spanOf } from './layout.ts';

/** Part of a cell's area in contact, 0…1; valid after a measure. */
export function contactOf(bed: Bed, n: number): number {
  const { state, pressure } = bed.grid;
  const s = state[n]!;
  return s >= FULL ? 1 : s === EMPTY ? -1 - pressure[n]! : 0;
}

/** Share of contact that bonds, for contact made by pressing and by sliding. */
export function transferOf(bed: Bed): { pressed: number; fresh: number } {
  const { ageMin, skinMin } = bed.setup.mortar;
  return { pressed: slidTransfer(pressedTransfer(ageMin, skinMin), bed.slidMm), fresh: 1 };
}

/** Visits each cell under the tile with its place, its contact and the part of it that bonds. */
export function eachContact(
  bed: Bed,
  visit: (n: number, x: number, y: number, contact: number, bonded: number) => void,
): void {
  const { state, mark, columns, rim, tileColumns, tileRows, cellMm, originMm } = bed.grid;
  const { pressed, fresh } = transferOf(bed);
  for (let row = rim; row < rim + tileRows; row += 1) {
    const y = originMm[1] + row * cellMm;
    for (let column = rim; column < rim + tileColumns; column += 1) {
      const n = row * columns + column;
      if (state[n] === OPEN) continue;
      const contact = contactOf(bed, n);
      const share = (mark[n]! & FRESH) !== 0 ? fresh : pressed;
      visit(n, originMm[0] + column * cellMm, y, contact, contact * share);
    }
  }
}

/** Share of the back that is bonded, 0…1. */
export function coverage(bed: Bed): number {
  const { state, mark, pressure } = bed.grid;
  const [first, past] = spanOf(bed.grid);
  const { pressed, fresh } = transferOf(bed);
  let cells = 0;
  let sum = 0;
  for (let n = first; n < past; n += 1) {
    const s = state[n]!;
    if (s === OPEN) continue;
    cells += 1;
    const contact = s >= FULL ? 1 : -1 - pressure[n]!;
    sum += contact * ((mark[n]! & FRESH) !== 0 ? fresh : pressed);
  }
  return cells > 0 ? sum / cells : 0;
}
