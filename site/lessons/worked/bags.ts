import { countBags } from '@site/islands/figures/bags.ts';
import { valueOf } from '@sim/rules/rulebook.ts';
import { formatArea, formatGap } from '@sim/units/format.ts';
import { squareFeet } from '@sim/units/length.ts';

import { bagRules } from './bag-rules.ts';
import { notchById } from './notch.ts';

const rules = bagRules();
const areaM2 = squareFeet(400);
const notch = '1-4-3-8-in-square';
const wasteShare = valueOf('waste.mortar', 'usual');
const count = countBags({ areaM2, notch: notchById(notch), angleDeg: rules.lowDeg, buttered: true, wasteShare }, rules);
const whole = (litres: number): string => String(Math.round(litres));

/** A basement by hand: litres of bed, backs and waste, then bags; and what the headline would have sold. */
export const bagsWorked = {
  areaM2,
  notch,
  angleDeg: rules.lowDeg,
  bagKg: rules.bagKg,
  bedMm: count.bedMm,
  /** The sum is done in metric whatever the reader's units: a millimetre of bed is a litre to a square metre. */
  metricArea: formatArea(areaM2, 'metric'),
  metricBed: formatGap(count.bedMm, 'metric'),
  backShare: (rules.back.least + rules.back.most) / 2,
  wasteShare,
  bagLitres: rules.yields.usual.toFixed(1),
  bedLitres: whole(count.bedL),
  backLitres: whole(count.backL),
  wasteLitres: whole(count.wasteL),
  totalLitres: whole(count.totalL),
  bagsRaw: count.exact.toFixed(1),
  bags: count.bags,
  labelBags: count.headline,
  labelShare: count.headline / count.bags,
  low: count.low,
  high: count.high,
};
