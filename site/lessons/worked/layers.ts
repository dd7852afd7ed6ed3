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

/** One mortar layer of a build-up, as a bed in mm; `film` says that something without a bed lies under it. */
export interface MortarLayer {
  name: 'under-board' | 'under-mat' | 'cavities' | 'under-sheet' | 'tile';
  governs: 'boardMaker' | 'matMaker' | 'sheetMaker' | 'tileMaker';
  bedMm: number;
}
export interface BuildUp {
  id: 'slab' | 'board' | 'mat' | 'sheet' | 'liquid';
  layers: MortarLayer[];
}

const boardMm = bedAt(notchById('1-4-1-4-in-square'), angleDeg);
const tileLayer: MortarLayer = { name: 'tile', governs: 'tileMaker', bedMm: overMm };

/** Build-ups from the floor up, each layer of mortar counted. */
export const buildUps: BuildUp[] = [
  { id: 'slab', layers: [tileLayer] },
  { id: 'board', layers: [{ name: 'under-board', governs: 'boardMaker', bedMm: boardMm }, tileLayer] },
  {
    id: 'mat',
    layers: [
      { name: 'under-mat', governs: 'matMaker', bedMm: underMm },
      { name: 'cavities', governs: 'matMaker', bedMm: cavityMm },
      tileLayer,
    ],
  },
  { id: 'sheet', layers: [{ name: 'under-sheet', governs: 'sheetMaker', bedMm: underMm }, tileLayer] },
  { id: 'liquid', layers: [tileLayer] },
];

/** A hall with an uncoupling mat: every layer of mortar as a thickness, mm (a litre to a square metre each). */
export const layersWorked = {
  areaM2: { imperial: squareFeet(150), metric: Math.round(squareFeet(150)) },
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
