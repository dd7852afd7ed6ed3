import { describe, test } from 'vitest';

import { bestValues } from './rules-checks/best-values.ts';
import { modelChecks } from './rules-checks/model.ts';
import { printedPlaces } from './rules-checks/printed-places.ts';
import { printedThings } from './rules-checks/printed-things.ts';

describe.each([
  ['places', printedPlaces],
  ['tools, tile, mortar, safety', printedThings],
  ['the thirty that matter most', bestValues],
  ['our own figures', modelChecks],
] as const)('%s', (_, checks) => {
  for (const one of checks) test(`${one.name} — ${one.source}`, one.holds);
});
