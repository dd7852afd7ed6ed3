import { liftLimitKg, type Lift } from '@sim/estimate/lifting.ts';
import type { UnitSystem } from '@sim/units/format.ts';
import { inches } from '@sim/units/length.ts';

const POUND_KG = 0.45359237; // exact: international avoirdupois pound, 1959

/** The lifts a bag of mortar makes on most jobs, the bag held against the body. */
export const BAG_LIFTS = {
  best: { reachMm: inches(10), fromMm: inches(30), travelMm: inches(10), turnDeg: 0 },
  floor: { reachMm: inches(10), fromMm: 0, travelMm: inches(10), turnDeg: 0 },
  bench: { reachMm: inches(10), fromMm: 0, travelMm: inches(30), turnDeg: 0 },
  turned: { reachMm: inches(10), fromMm: 0, travelMm: inches(30), turnDeg: 45 },
} as const satisfies Record<string, Lift>;

export type BagLift = keyof typeof BAG_LIFTS;

/** A limit as it is shown, kg: the whole pound or kilogram below it, for a limit rounded up is none. */
export function wholeBelow(limitKg: number, units: UnitSystem): number {
  const unit = units === 'imperial' ? POUND_KG : 1;
  return Math.floor(limitKg / unit + 0.01) * unit;
}

/** Each usual lift with the most the lifting equation allows, kg, and whether the bag is over it. */
export function bagLifts(bagKg: number): { lift: BagLift; limitKg: number; over: boolean }[] {
  return (Object.keys(BAG_LIFTS) as BagLift[]).map((lift) => {
    const limitKg = liftLimitKg(BAG_LIFTS[lift]);
    return { lift, limitKg, over: bagKg > limitKg };
  });
}
