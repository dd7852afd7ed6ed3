/** A bed knows no left or right: mirrored, turned by a quarter or end for end, it covers the same to half a point. */
import fc from 'fast-check';
import { expect, it } from 'vitest';

import { coverage } from '@sim/bed/contact.ts';

import { DRAWS, draws, seed, setupOf } from './bed-draws.ts';
import { TURNINGS, workedBed, workedTwin } from './bed-twins.ts';

it(
  'mirrored, turned by 90° and reversed, each of 300 beds covers the same within half a point',
  { timeout: 300_000 },
  () => {
    fc.assert(
      fc.property(draws, (draw) => {
        const setup = setupOf(draw);
        const covered = coverage(workedBed(setup));
        for (const turning of TURNINGS)
          expect(Math.abs(coverage(workedTwin(setup, turning)) - covered), turning).toBeLessThan(0.005);
      }),
      { seed, numRuns: DRAWS },
    );
  },
);
