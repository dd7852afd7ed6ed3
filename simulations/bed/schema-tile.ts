import { listOf, numberFrom, oneOf, wholeFrom } from '../input/fields.ts';
import { maybe, part } from './schema-part.ts';

/** Readings of a surface, departures in mm. */
const line = listOf(numberFrom(-25, 25, 'mm'), 2, 41);
const readings = part({
  alongMm: maybe(line),
  acrossMm: maybe(line),
  diagonalsMm: maybe(listOf(line, 2, 2)),
  gridMm: maybe(listOf(line, 2, 41)),
});

export const tile = part({
  lengthMm: maybe(numberFrom(10, 3300, 'mm')),
  widthMm: maybe(numberFrom(10, 3300, 'mm')),
  thicknessMm: maybe(numberFrom(1, 60, 'mm')),
  densityKgM3: maybe(numberFrom(500, 4000, 'kg/m³')),
  bowLengthMm: maybe(numberFrom(-10, 10, 'mm')),
  bowWidthMm: maybe(numberFrom(-10, 10, 'mm')),
  twistMm: maybe(numberFrom(-10, 10, 'mm')),
  readings: maybe(readings),
  reliefMm: maybe(numberFrom(0, 5, 'mm')),
  relief: maybe(
    part({
      shape: maybe(oneOf(['ribs', 'grid', 'dots'])),
      pitchMm: maybe(numberFrom(2, 200, 'mm')),
      depthMm: maybe(numberFrom(0.1, 10, 'mm')),
      directionDeg: maybe(numberFrom(-360, 360, 'degrees')),
      raisedShare: maybe(numberFrom(0.05, 0.95)),
    }),
  ),
  pieces: maybe(
    part({
      along: maybe(wholeFrom(1, 60)),
      across: maybe(wholeFrom(1, 60)),
      jointMm: maybe(numberFrom(0, 20, 'mm')),
    }),
  ),
});

export const floor = part({
  bowLengthMm: maybe(numberFrom(-15, 15, 'mm')),
  bowWidthMm: maybe(numberFrom(-15, 15, 'mm')),
  twistMm: maybe(numberFrom(-15, 15, 'mm')),
  readings: maybe(readings),
});
