import type { BedSetup } from '@sim/bed/types.ts';
import { notchLabel } from '@sim/trowel/notch.ts';
import { formatGap, formatLength, type UnitSystem } from '@sim/units/format.ts';
import { bench as words } from '@site/messages/en/bench.ts';

import { actSays } from '../act-words.ts';
import { stiffnessOf } from '../stiffness.ts';
import { strokeShort } from '../stroke-words.ts';

/** One thing in which two beds differ, in words for each. */
export interface Difference {
  name: string;
  first: string;
  second: string;
}

type Telling = (setup: BedSetup, units: UnitSystem) => string;

const { controls, work } = words;
const gap =
  (read: (setup: BedSetup) => number): Telling =>
  (setup, units) =>
    formatGap(read(setup), units);
const length =
  (read: (setup: BedSetup) => number): Telling =>
  (setup, units) =>
    formatLength(read(setup), units, 64);

/** Everything a set-up can differ in, by the name its control has. */
const tellings: readonly [name: string, tell: Telling][] = [
  [
    controls.size,
    ({ tile }, units) => {
      const { along, across } = tile.pieces;
      const pieces = along * across > 1 ? ` (${along} × ${across})` : '';
      return `${formatLength(tile.widthMm, units, 4)} × ${formatLength(tile.lengthMm, units, 4)}${pieces}`;
    },
  ],
  [controls.bow, gap(({ tile }) => tile.bowLengthMm)],
  [controls.cup, gap(({ tile }) => tile.bowWidthMm)],
  [controls.twist, gap(({ tile }) => tile.twistMm)],
  [controls.relief, gap(({ tile }) => tile.reliefMm)],
  [controls.floorBow, gap(({ floor }) => floor.bowLengthMm)],
  [controls.notch, ({ trowel }) => notchLabel(trowel)],
  [controls.angle, ({ trowel }) => `${trowel.angleDeg}${controls.degrees}`],
  [controls.worn, length(({ trowel }) => trowel.wearMm)],
  [
    controls.pattern,
    ({ comb }, units) => (comb.pattern === 'drawn' ? strokeShort(comb, units) : words.patterns[comb.pattern]),
  ],
  [controls.direction, ({ comb }) => `${comb.directionDeg}${controls.degrees}`],
  [controls.key, length(({ comb }) => comb.keyCoatMm)],
  [controls.flattened, ({ comb }) => (comb.flattened ? words.compare.yes : words.compare.no)],
  [controls.bare, length(({ comb }) => comb.edgeBareMm)],
  [controls.seed, ({ comb }) => String(comb.seed)],
  [
    controls.stiffness,
    ({ mortar }) => {
      const kind = stiffnessOf(mortar.yieldPa);
      return kind ? controls[kind] : `${Math.round(mortar.yieldPa)} Pa`;
    },
  ],
  [controls.age, ({ mortar }) => `${mortar.ageMin} ${controls.minutes}`],
  [controls.butter, length(({ butterMm }) => butterMm)],
  [
    work.title,
    (setup, units) =>
      setup.actions.length === 0 ? work.none : setup.actions.map((act) => actSays(act, setup, units)).join('; '),
  ],
];

/** In what two beds differ, in the order of the controls; empty for the same bed. */
export const differencesOf = (first: BedSetup, second: BedSetup, units: UnitSystem): Difference[] =>
  tellings
    .map(([name, tell]) => ({ name, first: tell(first, units), second: tell(second, units) }))
    .filter((difference) => difference.first !== difference.second);
