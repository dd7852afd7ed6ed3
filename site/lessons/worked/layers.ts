import { valueOf } from '@sim/rules/rulebook.ts';
import { squareFeet } from '@sim/units/length.ts';

import { bedAt, notchById } from './notch.ts';

const angleDeg = valueOf('trowel.angle', 'usual');
const under = '3-16-5-32-in-v';
const over = '1-4-3-8-in-square';
const underMm = bedAt(notchById(under), angleDeg);
const overMm = bedAt(notchById(over), angleDeg);
const matMm = valueOf('mat.volume', 'depth');
const hollow = (valueOf('mat.volume', 'least') + valueOf('mat.volume', 'most')) / 2;
const cavityMm = matMm * hollow;
const totalMm = underMm + cavityMm + overMm;

/** A hall with an uncoupling mat: every layer of mortar as a thickness, mm (a litre to a square metre each). */
export const layersWorked = {
  areaM2: squareFeet(150),
  angleDeg,
  under,
  over,
  underMm,
  overMm,
  matMm,
  hollow,
  cavityMm,
  totalMm,
  times: totalMm / overMm,
  tileShare: overMm / totalMm,
};
