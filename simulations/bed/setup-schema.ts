import * as z from 'zod/mini';

import { listOf, numberFrom, oneOf, wholeFrom, yesOrNo } from '../input/fields.ts';
import { action } from './schema-actions.ts';
import { mortar } from './schema-mortar.ts';
import { maybe, part } from './schema-part.ts';
import { floor, tile } from './schema-tile.ts';

const trowel = part({
  shape: maybe(oneOf(['square', 'v', 'u', 'slanted'])),
  widthMm: maybe(numberFrom(1, 40, 'mm')),
  depthMm: maybe(numberFrom(0.5, 40, 'mm')),
  toothMm: maybe(numberFrom(0, 40, 'mm')),
  angleDeg: maybe(numberFrom(15, 90, 'degrees')),
  wearMm: maybe(numberFrom(0, 10, 'mm')),
  yawDeg: maybe(numberFrom(-75, 75, 'degrees')),
});

const spot = z.tuple([numberFrom(-1650, 1650, 'mm'), numberFrom(-1650, 1650, 'mm')], {
  error: 'give two numbers, x and y in mm from the middle of the tile',
});

const comb = part({
  pattern: maybe(oneOf(['straight', 'crossed', 'wobble', 'fan', 'swirl', 'flat', 'drawn'])),
  directionDeg: maybe(numberFrom(-360, 360, 'degrees')),
  keyCoatMm: maybe(numberFrom(0, 5, 'mm')),
  flattened: maybe(yesOrNo()),
  edgeBareMm: maybe(numberFrom(0, 200, 'mm')),
  seed: maybe(wholeFrom(0, 4294967295)),
  path: maybe(listOf(spot, 2, 48)),
});

/** A set-up as a person may write it. */
export const setupSchema = part({
  tile: maybe(tile),
  floor: maybe(floor),
  trowel: maybe(trowel),
  comb: maybe(comb),
  mortar: maybe(mortar),
  butterMm: maybe(numberFrom(0, 10, 'mm')),
  actions: maybe(listOf(action, 0, 40)),
  cellMm: maybe(numberFrom(0.1, 10, 'mm')),
  physics: maybe(
    part({ endTerm: maybe(yesOrNo()), weight: maybe(yesOrNo()), air: maybe(yesOrNo()), viscosity: maybe(yesOrNo()) }),
  ),
});
