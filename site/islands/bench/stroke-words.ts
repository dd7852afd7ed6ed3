import type { CombSetup } from '@sim/bed/types.ts';
import { formatLength, type UnitSystem } from '@sim/units/format.ts';
import { bench as words } from '@site/messages/en/bench.ts';

import { readStroke } from './stroke.ts';

interface StrokeTold {
  long: string;
  shape: string;
  direction: string;
}

function told(comb: CombSetup, units: UnitSystem): StrokeTold | null {
  const stroke = comb.pattern === 'drawn' ? readStroke(comb.path ?? []) : null;
  if (!stroke) return null;
  const turn = Math.round(stroke.turnDeg / 5) * 5;
  const rounds = Math.round((10 * stroke.turnDeg) / 360) / 10;
  return {
    long: formatLength(stroke.longMm, units, 1),
    shape: words.stroke.shapes[stroke.shape](`${turn}${words.controls.degrees}`, String(rounds)),
    direction: `${stroke.directionDeg}${words.controls.degrees}`,
  };
}

/** What the bench took from a hand's stroke, in sentences; empty for a comb that was not drawn by hand. */
export function strokeSays(comb: CombSetup, units: UnitSystem): string {
  const stroke = told(comb, units);
  return stroke ? words.stroke.says(stroke.long, stroke.shape, stroke.direction) : '';
}

/** The same in a few words, for a table. */
export function strokeShort(comb: CombSetup, units: UnitSystem): string {
  const stroke = told(comb, units);
  return stroke ? `${words.patterns.drawn}: ${stroke.long}, ${stroke.shape}` : words.patterns.drawn;
}
