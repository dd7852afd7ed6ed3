import type { BedSetup } from '@sim/bed/types.ts';

import { withoutReadings } from '../flat.ts';
import { acrossRidges } from '../ridges.ts';

/** A control that can be swept, with everything else held. */
export type SweepId = 'bow' | 'depth' | 'angle' | 'force' | 'strokes' | 'age' | 'butter' | 'direction' | 'yield';

export interface Sweep {
  id: SweepId;
  from: number;
  to: number;
  /** What the value is: a length, a small gap, and so on; decides how it is printed. */
  kind: 'gap' | 'length' | 'angle' | 'force' | 'count' | 'minutes' | 'stress';
  now: (setup: BedSetup) => number;
  with: (setup: BedSetup, value: number) => BedSetup;
}

/** Runs in one sweep: enough for a curve, few enough to wait for. */
export const SWEEP_POINTS = 9;

const lastForce = (setup: BedSetup): number => {
  const act = setup.actions.findLast((one) => 'forceN' in one);
  return act && 'forceN' in act ? act.forceN : 0;
};

export const sweeps: readonly Sweep[] = [
  {
    id: 'bow',
    from: -2,
    to: 3,
    kind: 'gap',
    now: ({ tile }) => tile.bowLengthMm,
    // A swept bow takes the place of readings of the surface.
    with: (setup, bowLengthMm) => ({ ...setup, tile: { ...withoutReadings(setup.tile), bowLengthMm } }),
  },
  {
    id: 'depth',
    from: 3,
    to: 15,
    kind: 'length',
    now: ({ trowel }) => trowel.depthMm,
    with: (setup, depthMm) => ({ ...setup, trowel: { ...setup.trowel, depthMm } }),
  },
  {
    id: 'angle',
    from: 25,
    to: 90,
    kind: 'angle',
    now: ({ trowel }) => trowel.angleDeg,
    with: (setup, angleDeg) => ({ ...setup, trowel: { ...setup.trowel, angleDeg } }),
  },
  {
    id: 'force',
    from: 40,
    to: 600,
    kind: 'force',
    now: lastForce,
    with: (setup, forceN) => ({
      ...setup,
      actions: setup.actions.map((act) => ('forceN' in act ? { ...act, forceN } : act)),
    }),
  },
  {
    id: 'strokes',
    from: 0,
    to: 8,
    kind: 'count',
    now: ({ actions }) => actions.reduce((sum, act) => sum + (act.do === 'slide' ? act.strokes : 0), 0),
    with: (setup, strokes) => {
      const slide = setup.actions.find((act) => act.do === 'slide');
      const others = setup.actions.filter((act) => act.do !== 'slide');
      if (strokes === 0) return { ...setup, actions: others };
      const base = slide ?? {
        do: 'slide' as const,
        forceN: 200,
        strokeMm: 6,
        directionDeg: acrossRidges(setup),
        speedMmS: 20,
      };
      return { ...setup, actions: [...others, { ...base, strokes }] };
    },
  },
  {
    id: 'direction',
    from: 0,
    to: 180,
    kind: 'angle',
    now: ({ comb }) => comb.directionDeg,
    with: (setup, directionDeg) => ({ ...setup, comb: { ...setup.comb, directionDeg } }),
  },
  {
    id: 'age',
    from: 0,
    to: 60,
    kind: 'minutes',
    now: ({ mortar }) => mortar.ageMin,
    with: (setup, ageMin) => ({ ...setup, mortar: { ...setup.mortar, ageMin } }),
  },
  {
    id: 'butter',
    from: 0,
    to: 2,
    kind: 'gap',
    now: ({ butterMm }) => butterMm,
    with: (setup, butterMm) => ({ ...setup, butterMm }),
  },
  {
    id: 'yield',
    from: 150,
    to: 1350,
    kind: 'stress',
    now: ({ mortar }) => mortar.yieldPa,
    with: (setup, yieldPa) => ({ ...setup, mortar: { ...setup.mortar, yieldPa } }),
  },
];

/** Even values over a sweep's range; whole ones where the control counts. */
export const valuesOf = (sweep: Sweep): number[] =>
  Array.from({ length: SWEEP_POINTS }, (_, n) => {
    const value = sweep.from + ((sweep.to - sweep.from) * n) / (SWEEP_POINTS - 1);
    return sweep.kind === 'gap' || sweep.kind === 'length' ? Math.round(value * 100) / 100 : Math.round(value);
  });
