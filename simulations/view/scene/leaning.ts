import type { BedFrame } from '../../bed/types.ts';
import { isLaid } from '../laid.ts';

/** Ridges that lean: run over rise along both axes, and how much of each column leans, mm. */
export interface Leaning {
  slope: [number, number];
  highMm: Float32Array;
}

/**
 * How ridges lean in a frame; null where none do. What was squeezed out beside a laid tile stands upright.
 * @param heights top of each column over the floor's mean plane, mm
 */
export function leaningOf(frame: BedFrame, heights: Float32Array): Leaning | null {
  const { leanSlope, gapMm, floorMm } = frame;
  if (!leanSlope) return null;
  const laid = isLaid(frame);
  const high = (height: number, cell: number): number =>
    laid && Number.isNaN(gapMm[cell]!) ? 0 : Math.max(0, height - floorMm[cell]!);
  return { slope: leanSlope, highMm: heights.map(high) };
}

/** Cells with mortar and those beside them: the flank of a leaning ridge is drawn whole, down to its foot. */
export function widened(present: Uint8Array, columns: number): Uint8Array {
  const wider = Uint8Array.from(present);
  for (let cell = 0; cell < present.length; cell++)
    if (present[cell] === 1) for (const beside of [-columns, -1, 1, columns]) wider[cell + beside] = 1;
  return wider;
}
