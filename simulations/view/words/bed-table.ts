import type { BedFrame, BedResult } from '../../bed/types.ts';
import { formatGap, formatShare, type UnitSystem } from '../../units/format.ts';
import { formatForce, formatPressure, formatSmallArea, formatSmallVolume } from '../../units/mechanics.ts';
import { signed } from '../../units/signed.ts';
import { EN_BED_WORDS, type BedWords } from './bed-words.ts';
import { stateShares } from './describe-bed.ts';

/** One line of the table behind a picture. */
export interface BedRow {
  id: keyof BedWords['rows'];
  name: string;
  value: string;
}

const degrees = (value: number): string => `${signed(value, (size) => (Math.round(size * 100) / 100).toFixed(2))}°`;

/** The table behind a picture of the bed: every figure of the run, printed in the reader's units. */
export function bedTable(
  result: BedResult,
  frame: BedFrame,
  units: UnitSystem,
  words: BedWords = EN_BED_WORDS,
): BedRow[] {
  const shares = stateShares(frame);
  const gap = (mm: number): string => formatGap(mm, units);
  const highest = result.pockets.reduce((most, pocket) => Math.max(most, pocket.gaugePa), 0);
  const values: Record<keyof BedWords['rows'], string> = {
    coverage: formatShare(result.coverage),
    open: formatShare(shares.open),
    trapped: formatShare(shares.trapped),
    skinned: formatShare(shares.skinned),
    wetted: formatShare(result.wetted),
    corners: result.corners.map(formatShare).join(', '),
    edgeStrip: formatShare(result.edgeStrip),
    largestVoid: formatSmallArea(result.largestVoidMm2, units),
    voidsNearEdge: String(result.voidsNearEdge),
    pockets: String(result.pockets.length),
    pressure: formatPressure(highest, units),
    bedMean: gap(result.bedMm.mean),
    bedMin: gap(result.bedMm.min),
    bedMax: gap(result.bedMm.max),
    tileHeight: gap(result.tileHeightMm),
    tilt: result.tiltDeg.map(degrees).join(', '),
    load: formatForce(result.loadN, units),
    squeezed: formatSmallVolume(result.squeezedMm3, units),
    rise: formatShare(result.riseInJoint),
  };
  return (Object.keys(values) as (keyof BedWords['rows'])[]).map((id) => ({
    id,
    name: words.rows[id],
    value: values[id],
  }));
}
