import { defaultActions } from '@sim/bed/defaults.ts';
import type { BedSetup } from '@sim/bed/types.ts';
import { valueOfMix } from '../stiffness.ts';

import { flatSurface, isWarped, meanRelief } from '../flat.ts';
import { acrossRidges } from '../ridges.ts';

/** A reason why a back came out bare, by what is changed to test it. */
export type CauseId =
  'mortar' | 'collapse' | 'air' | 'bow' | 'floor' | 'skin' | 'edge' | 'pattern' | 'relief' | 'stiff' | 'worn';

/** A bed with one thing changed. */
export interface Cause {
  id: CauseId;
  setup: BedSetup;
}

/** How much more mortar the test of too little mortar gives. */
export const MORE_MORTAR = 1.5;
/** The work that would collapse any ridge that a hand can: long strokes across, there and back. */
const MORE_STROKES = 6;
const LONG_STROKE_MM = 8;
const DEEPEST_NOTCH_MM = 40;

const workedOn = (setup: BedSetup): BedSetup => {
  const force = setup.actions.reduce((most, act) => ('forceN' in act ? Math.max(most, act.forceN) : most), 0);
  return {
    ...setup,
    actions: [
      ...setup.actions,
      {
        ...defaultActions.slide,
        forceN: force || defaultActions.slide.forceN,
        strokes: MORE_STROKES,
        strokeMm: LONG_STROKE_MM,
        directionDeg: acrossRidges(setup),
      },
    ],
  };
};

/** The short side's direction: ridges along it let the air out soonest. */
const shortSide = (setup: BedSetup): number => (setup.tile.lengthMm >= setup.tile.widthMm ? 90 : 0);

/**
 * The beds to compute beside the one at hand, each with one thing changed that could have cost coverage; a thing that
 * is already at its best is left out.
 */
export function causesOf(setup: BedSetup): Cause[] {
  const { tile, floor, trowel, comb, mortar } = setup;
  const causes: Cause[] = [
    {
      id: 'mortar',
      setup: { ...setup, trowel: { ...trowel, depthMm: Math.min(DEEPEST_NOTCH_MM, trowel.depthMm * MORE_MORTAR) } },
    },
    { id: 'collapse', setup: workedOn(setup) },
    { id: 'air', setup: { ...setup, physics: { ...setup.physics, air: false } } },
  ];
  if (isWarped(tile)) causes.push({ id: 'bow', setup: { ...setup, tile: flatSurface(tile) } });
  if (isWarped(floor)) causes.push({ id: 'floor', setup: { ...setup, floor: flatSurface(floor) } });
  if (mortar.ageMin > 0) causes.push({ id: 'skin', setup: { ...setup, mortar: { ...mortar, ageMin: 0 } } });
  if (comb.edgeBareMm > 0) causes.push({ id: 'edge', setup: { ...setup, comb: { ...comb, edgeBareMm: 0 } } });
  if (comb.pattern !== 'straight' && comb.pattern !== 'flat')
    causes.push({
      id: 'pattern',
      setup: { ...setup, comb: { ...comb, pattern: 'straight', directionDeg: shortSide(setup) } },
    });
  if (tile.reliefMm > 0 || tile.relief) causes.push({ id: 'relief', setup: { ...setup, tile: meanRelief(tile, 0) } });
  if (mortar.yieldPa > valueOfMix('holds'))
    causes.push({ id: 'stiff', setup: { ...setup, mortar: { ...mortar, yieldPa: valueOfMix('holds') } } });
  if (trowel.wearMm > 0) causes.push({ id: 'worn', setup: { ...setup, trowel: { ...trowel, wearMm: 0 } } });
  return causes;
}

/** What a change would have gained, share of the back. */
export interface Gain {
  id: CauseId;
  coverage: number;
  gain: number;
}

/** Most gained first. */
export const ranked = (gains: readonly Gain[]): Gain[] => [...gains].sort((a, b) => b.gain - a.gain);

/** A gain in whole points of coverage, with its sign. */
export function points(gain: number): string {
  const rounded = Math.round(gain * 100);
  return `${rounded > 0 ? '+' : rounded < 0 ? '−' : ''}${Math.abs(rounded)}`;
}
