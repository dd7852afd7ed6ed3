import { valueOf } from '@sim/rules/rulebook.ts';
import { formatArea, formatGap } from '@sim/units/format.ts';
import { inches, squareFeet } from '@sim/units/length.ts';

/** Density of water at 0 °C over that of ice, less one (physical tables: 999.8 and 916.7 kg/m³). */
export const ICE_GROWTH = 999.8 / 916.7 - 1;
const BUCKET_L = 10;

/** Water that voids can hold, L: a litre to a square metre for each millimetre of bed. */
export const litresInVoids = (areaM2: number, bedMm: number, coverage: number): number =>
  areaM2 * bedMm * (1 - coverage);

const areaM2 = squareFeet(120);
const bedMm = inches(1 / 8);
const coverage = valueOf('coverage.dry', 'share');
const litres = litresInVoids(areaM2, bedMm, coverage);
const atWet = valueOf('coverage.wet', 'share');
const oneDigit = (value: number): string => value.toFixed(1);
const toTenth = (value: number): number => Math.round(value * 10) / 10;

/** A terrace bonded as if it were a kitchen: what its voids hold. */
export const terraceWorked = {
  areaM2,
  bedMm,
  /** The sum is done in metric whatever the reader's units. */
  metricArea: formatArea(areaM2, 'metric'),
  metricBed: formatGap(bedMm, 'metric'),
  coverage,
  voidShare: 1 - coverage,
  litres: oneDigit(litres),
  iceL: toTenth(litres * ICE_GROWTH),
  growthPercent: Math.round(ICE_GROWTH * 100),
  litresAtWet: toTenth(litresInVoids(areaM2, bedMm, atWet)),
  bucketL: BUCKET_L,
  bucketShare: litres / BUCKET_L,
};
