import type { BedAction, BedSetup } from '@sim/bed/types.ts';
import { formatLength, type UnitSystem } from '@sim/units/format.ts';
import { formatForce } from '@sim/units/mechanics.ts';
import { bench as words } from '@site/messages/en/bench.ts';

import { touchPlace } from './touch-places.ts';

/** A slide within this of the ridges' direction, or of the square to it, is called along or across. */
const NEAR_DEG = 20;

/** How a slide lies to the ridges. */
export function wayOf(directionDeg: number, setup: BedSetup): keyof typeof words.work.ways {
  const off = ((((directionDeg - setup.comb.directionDeg) % 180) + 180) % 180) - 90;
  if (Math.abs(off) <= NEAR_DEG) return 'across';
  return Math.abs(off) >= 90 - NEAR_DEG ? 'along' : 'oblique';
}

/** Where a push or a blow landed; nothing to say of the middle. */
function whereSays(action: { atX: number; atY: number }, { tile }: BedSetup): string {
  const place = touchPlace(action, tile);
  if (place === 'middle') return '';
  return place ? words.work.does.at(words.work.places[place]) : words.work.does.off;
}

/** An act in a sentence. */
export function actSays(action: BedAction, setup: BedSetup, units: UnitSystem): string {
  const { does, ways } = words.work;
  switch (action.do) {
    case 'press':
      return does.press(formatForce(action.forceN, units), whereSays(action, setup));
    case 'slide':
      return does.slide(
        formatForce(action.forceN, units),
        formatLength(action.strokeMm, units),
        action.strokes,
        ways[wayOf(action.directionDeg, setup)],
      );
    case 'twist':
      return does.twist(formatForce(action.forceN, units), `${action.angleDeg}°`, action.strokes);
    case 'tap':
      return does.tap(action.blows, whereSays(action, setup));
    case 'vibrate':
      return does.vibrate(action.seconds);
    case 'lift':
      return does.lift;
  }
}

/** How the laid tile stands, in a sentence: by what was done to it. */
export function setSays(setup: BedSetup, units: UnitSystem): string {
  const last = setup.actions.at(-1);
  return words.steps.setSays(setup.actions.length, last ? actSays(last, setup, units) : '');
}
