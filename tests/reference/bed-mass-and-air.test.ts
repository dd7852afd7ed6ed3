/** Mortar is neither made nor lost, air in a closed pocket keeps its amount, and a swirl traps what straight lines let out. */
import { describe, expect, it } from 'vitest';

import { pressAir, findVoids } from '@sim/bed/air.ts';
import { sinkBy, startBed } from '@sim/bed/bed.ts';
import { defaultSetup } from '@sim/bed/defaults.ts';
import { EMPTY } from '@sim/bed/grid.ts';
import { FIRST_POCKET } from '@sim/bed/label-voids.ts';
import { runBed } from '@sim/bed/run.ts';
import type { BedSetup, CombPattern } from '@sim/bed/types.ts';

/** A hand-sized tile on half-inch ridges, pressed and slid. */
function setup(pattern: CombPattern): BedSetup {
  const base = defaultSetup();
  Object.assign(base.tile, { lengthMm: 254, widthMm: 203, bowLengthMm: 0.5 });
  base.comb.pattern = pattern;
  base.cellMm = 2;
  base.actions = [
    { do: 'press', forceN: 120, atX: 20, atY: -10 },
    { do: 'slide', forceN: 120, strokeMm: 6, strokes: 2, directionDeg: 0, speedMmS: 20 },
    { do: 'tap', energyJ: 0.5, blows: 2, atX: 0, atY: 0 },
  ];
  return base;
}

describe('mass', () => {
  it.each(['straight', 'crossed', 'wobble', 'fan', 'swirl', 'flat'] as const)(
    '%s: no more than 1e-9 of the mortar is made or lost',
    (pattern) => {
      expect(runBed(setup(pattern)).result.massError).toBeLessThan(1e-9);
    },
  );
});

describe('a closed pocket', () => {
  // Boyle: V = V₀p₀/(p₀ + Δp); 2 kPa over 101 325 Pa takes 1.936 % of the room.
  it('bears 2 kPa when shrunk by 1.936 %, within 1 %', () => {
    const crossed = setup('crossed');
    crossed.actions = [];
    const bed = startBed(crossed);
    sinkBy(bed, 0.2 * bed.load.meanGap, 0, 0);
    const { grid } = bed;
    bed.air = findVoids(grid, bed.air);
    pressAir(grid, bed.air);
    expect(bed.air.count).toBeGreaterThan(FIRST_POCKET);
    const name = FIRST_POCKET;
    const amount = bed.air.amount[name] ?? NaN;
    const room = bed.air.room[name] ?? NaN;
    // Give the same air 1.936 % less room than it has at the atmosphere's pressure, the reference case's figure.
    const share = ((amount / 101_325) * (1 - 0.01936)) / room;
    for (let n = 0; n < grid.state.length; n += 1)
      if (grid.state[n] === EMPTY && grid.label[n] === name) {
        const mortar = grid.mortar[n] ?? 0;
        grid.gap[n] = mortar + ((grid.gap[n] ?? 0) - mortar) * share;
      }
    pressAir(grid, bed.air);
    expect(Math.abs((bed.air.gaugePa[name] ?? NaN) / 2000 - 1)).toBeLessThan(0.01);
  });
});

describe('a swirl in place of straight ridges', () => {
  it('covers less and shuts air in, all else equal', () => {
    const straight = runBed(setup('straight')).result;
    const swirl = runBed(setup('swirl')).result;
    expect(swirl.coverage).toBeLessThan(straight.coverage);
    expect(swirl.pockets.length).toBeGreaterThanOrEqual(1);
  });
});
