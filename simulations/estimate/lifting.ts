import { valueOf } from '../rules/rulebook.ts';

/** A lift: how far the hands are from the ankles, how high they start, how far they go up, mm; turn of the body, °. */
export interface Lift {
  reachMm: number;
  fromMm: number;
  travelMm: number;
  turnDeg: number;
}

/**
 * Recommended weight limit of the revised lifting equation, kg (NIOSH 94-110), without its factors for how often one
 * lifts and how well the load is held: the best case. H is at least 10 in.
 */
export function liftLimitKg({ reachMm, fromMm, travelMm, turnDeg }: Lift): number {
  const inch = 25.4;
  const horizontal = Math.min(
    1,
    valueOf('safety.lifting', 'reach') / Math.max(reachMm, valueOf('safety.lifting', 'reach')),
  );
  const above = Math.abs(fromMm - valueOf('safety.lifting', 'bestHeight')) / inch;
  const vertical = Math.max(0, 1 - valueOf('safety.lifting', 'heightFactor') * above);
  const distance = Math.min(
    1,
    valueOf('safety.lifting', 'travelBase') + valueOf('safety.lifting', 'travelFactor') / Math.max(1, travelMm / inch),
  );
  const turn = Math.max(0, 1 - valueOf('safety.lifting', 'turnFactor') * turnDeg);
  return valueOf('safety.lifting', 'load') * horizontal * vertical * distance * turn;
}

/** A bag lifted from the floor close to the body, not turned, by no more than the height at which travel costs nothing. */
export const bagFromFloorKg = (): number => liftLimitKg({ reachMm: 0, fromMm: 0, travelMm: 254, turnDeg: 0 });
