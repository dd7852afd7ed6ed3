import * as z from 'zod/mini';

import { listOf, numberFrom, oneOf, wholeFrom, yesOrNo } from '../input/fields.ts';

/** Every field may be left out; what is there must be known and in range. */
const part = <T extends z.core.$ZodLooseShape>(shape: T) =>
  z.strictObject(shape, { error: 'give an object with the fields described' });
const maybe = z.optional;

const tile = part({
  lengthMm: maybe(numberFrom(10, 3300, 'mm')),
  widthMm: maybe(numberFrom(10, 3300, 'mm')),
  thicknessMm: maybe(numberFrom(1, 60, 'mm')),
  densityKgM3: maybe(numberFrom(500, 4000, 'kg/m³')),
  bowLengthMm: maybe(numberFrom(-10, 10, 'mm')),
  bowWidthMm: maybe(numberFrom(-10, 10, 'mm')),
  twistMm: maybe(numberFrom(-10, 10, 'mm')),
  reliefMm: maybe(numberFrom(0, 5, 'mm')),
  pieces: maybe(
    part({
      along: maybe(wholeFrom(1, 60)),
      across: maybe(wholeFrom(1, 60)),
      jointMm: maybe(numberFrom(0, 20, 'mm')),
    }),
  ),
});

const floor = part({
  bowLengthMm: maybe(numberFrom(-15, 15, 'mm')),
  bowWidthMm: maybe(numberFrom(-15, 15, 'mm')),
});

const trowel = part({
  shape: maybe(oneOf(['square', 'v', 'u', 'slanted'])),
  widthMm: maybe(numberFrom(1, 40, 'mm')),
  depthMm: maybe(numberFrom(0.5, 40, 'mm')),
  toothMm: maybe(numberFrom(0, 40, 'mm')),
  angleDeg: maybe(numberFrom(15, 90, 'degrees')),
  wearMm: maybe(numberFrom(0, 10, 'mm')),
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

const mortar = part({
  yieldPa: maybe(numberFrom(10, 10_000, 'Pa')),
  viscosityPaS: maybe(numberFrom(0, 200, 'Pa·s')),
  ageMin: maybe(numberFrom(0, 240, 'min')),
  skinMin: maybe(numberFrom(1, 240, 'min')),
});

const force = maybe(numberFrom(0, 5000, 'N'));
const place = maybe(numberFrom(-1650, 1650, 'mm'));
const strokes = maybe(wholeFrom(1, 100));
const speed = maybe(numberFrom(0.1, 500, 'mm/s'));

const actions = {
  press: part({ do: oneOf(['press']), forceN: force, atX: place, atY: place }),
  slide: part({
    do: oneOf(['slide']),
    forceN: force,
    strokeMm: maybe(numberFrom(0.1, 100, 'mm')),
    strokes,
    directionDeg: maybe(numberFrom(-360, 360, 'degrees')),
    speedMmS: speed,
  }),
  twist: part({
    do: oneOf(['twist']),
    forceN: force,
    angleDeg: maybe(numberFrom(0.05, 30, 'degrees')),
    strokes,
    speedMmS: speed,
  }),
  tap: part({
    do: oneOf(['tap']),
    energyJ: maybe(numberFrom(0.01, 20, 'J')),
    blows: maybe(wholeFrom(1, 100)),
    atX: place,
    atY: place,
  }),
  vibrate: part({
    do: oneOf(['vibrate']),
    forceN: force,
    amplitudeMm: maybe(numberFrom(0.01, 5, 'mm')),
    frequencyHz: maybe(numberFrom(1, 400, 'Hz')),
    seconds: maybe(numberFrom(0.1, 60, 's')),
  }),
};

const action = z.discriminatedUnion('do', [actions.press, actions.slide, actions.twist, actions.tap, actions.vibrate], {
  error: 'give an object whose "do" is press, slide, twist, tap or vibrate',
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
