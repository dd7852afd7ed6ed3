import * as z from 'zod/mini';

import { numberFrom, oneOf, wholeFrom } from '../input/fields.ts';
import { maybe, part } from './schema-part.ts';

const force = maybe(numberFrom(0, 5000, 'N'));
const place = maybe(numberFrom(-1650, 1650, 'mm'));
const strokes = maybe(wholeFrom(1, 100));
const speed = maybe(numberFrom(0.1, 500, 'mm/s'));

const actions = {
  flatten: part({ do: oneOf(['flatten']) }),
  lay: part({ do: oneOf(['lay']) }),
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
  lift: part({ do: oneOf(['lift']) }),
};

/** One thing done to the bed or the tile; what opens the list is told apart in `before-laying.ts`. */
export const action = z.discriminatedUnion(
  'do',
  [
    actions.flatten,
    actions.lay,
    actions.press,
    actions.slide,
    actions.twist,
    actions.tap,
    actions.vibrate,
    actions.lift,
  ],
  { error: 'give an object whose "do" is flatten, lay, press, slide, twist, tap, vibrate or lift' },
);
