import { meanBedMm, type Notch } from '@sim/trowel/notch.ts';

/** What the rules say about bags. Litres, kg, degrees, shares. */
export interface BagRules {
  bagKg: number;
  yields: { least: number; usual: number; most: number };
  back: { least: number; most: number };
  lowDeg: number;
  highDeg: number;
  uprightDeg: number;
  /** Powder that a headline reckons with, kg/m² for a millimetre of the bed an upright blade leaves. */
  headlineRate: number;
  leastBedMm: number;
}

export interface BagJob {
  areaM2: number;
  notch: Notch;
  angleDeg: number;
  buttered: boolean;
  wasteShare: number;
}

export interface BagCount {
  bedMm: number;
  bedL: number;
  backL: number;
  wasteL: number;
  totalL: number;
  /** Bags before rounding. */
  exact: number;
  bags: number;
  low: number;
  high: number;
  headline: number;
  tooThin: boolean;
}

/** A hair's breadth, so that 4.0000001 bags are four. */
const up = (bags: number): number => Math.ceil(bags - 1e-6);
const bedAt = (notch: Notch, angleDeg: number): number => meanBedMm({ ...notch, angleDeg, wearMm: 0 });

/** Bags from the bed: a litre to a square metre for each millimetre, then backs, waste, and rounding up. */
export function countBags(job: BagJob, rules: BagRules): BagCount {
  const { areaM2, notch, buttered, wasteShare } = job;
  const bedMm = bedAt(notch, job.angleDeg);
  const backShare = (part: number): number =>
    buttered ? rules.back.least + (rules.back.most - rules.back.least) * part : 0;
  const bedL = areaM2 * bedMm;
  const backL = bedL * backShare(0.5);
  const wasteL = (bedL + backL) * wasteShare;
  const totalL = bedL + backL + wasteL;
  const exact = totalL / rules.yields.usual;
  return {
    bedMm,
    bedL,
    backL,
    wasteL,
    totalL,
    exact,
    bags: up(exact),
    low: up((areaM2 * bedAt(notch, rules.lowDeg) * (1 + backShare(0))) / rules.yields.most),
    high: up((areaM2 * bedAt(notch, rules.highDeg) * (1 + backShare(1)) * (1 + wasteShare)) / rules.yields.least),
    headline: up((areaM2 * bedAt(notch, rules.uprightDeg) * rules.headlineRate) / rules.bagKg),
    tooThin: bedMm < rules.leastBedMm - 1e-6,
  };
}

/** Where bed, backs and waste end, in bags. */
export const bagEnds = ({ bedL, backL, totalL }: BagCount, bagL: number): [number, number, number] => [
  bedL / bagL,
  (bedL + backL) / bagL,
  totalL / bagL,
];
