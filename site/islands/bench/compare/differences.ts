import { defaultSetup } from '@sim/bed/defaults.ts';
import type { BedSetup, SurfaceSetup } from '@sim/bed/types.ts';
import { SKIN_MIN } from '@sim/mortar/skin.ts';
import { notchLabel } from '@sim/trowel/notch.ts';
import { formatGap, formatLength, formatShare, type UnitSystem } from '@sim/units/format.ts';
import { bench as words } from '@site/messages/en/bench.ts';

import { actSays } from '../act-words.ts';
import { stiffnessOf } from '../stiffness.ts';
import { strokeShort } from '../stroke-words.ts';
import { LINE_NAMES, lineOf, lineText } from '../surface-lines.ts';

/** One thing in which two beds differ, in words for each. */
export interface Difference {
  name: string;
  first: string;
  second: string;
}

type Telling = (setup: BedSetup, units: UnitSystem) => string;

const { controls, work } = words;

/** What a bed is told by even where it is as usual. */
const ALWAYS: ReadonlySet<string> = new Set([
  controls.size,
  words.size.thickness,
  controls.notch,
  controls.angle,
  controls.pattern,
  controls.direction,
  controls.stiffness,
  controls.age,
  work.title,
]);
const gap =
  (read: (setup: BedSetup) => number): Telling =>
  (setup, units) =>
    formatGap(read(setup), units);
const length =
  (read: (setup: BedSetup) => number): Telling =>
  (setup, units) =>
    formatLength(read(setup), units, 64);

/** Readings of a surface, each line by its name. */
const readings =
  (read: (setup: BedSetup) => SurfaceSetup): Telling =>
  (setup, units) => {
    const { readings: told } = read(setup);
    if (!told) return words.compare.no;
    const rows = told.gridMm ?? [];
    return [
      ...rows.map((row) => lineText(row, units)),
      ...LINE_NAMES.flatMap((name) => {
        const line = lineOf(told, name);
        return line ? [`${words.surface.lines[name]}: ${lineText(line, units)}`] : [];
      }),
    ].join('; ');
  };
const degrees =
  (read: (setup: BedSetup) => number): Telling =>
  (setup) =>
    `${read(setup)}${controls.degrees}`;

/** Everything a set-up can differ in, by the name its control has. */
const tellings: readonly [name: string, tell: Telling][] = [
  [
    controls.size,
    ({ tile }, units) => {
      const { along, across } = tile.pieces;
      const joint = formatLength(tile.pieces.jointMm, units, 32);
      const pieces = along * across > 1 ? ` (${along} × ${across}, ${joint})` : '';
      return `${formatLength(tile.widthMm, units, 4)} × ${formatLength(tile.lengthMm, units, 4)}${pieces}`;
    },
  ],
  [controls.bow, gap(({ tile }) => tile.bowLengthMm)],
  [controls.cup, gap(({ tile }) => tile.bowWidthMm)],
  [controls.twist, gap(({ tile }) => tile.twistMm)],
  [words.size.thickness, length(({ tile }) => tile.thicknessMm)],
  [words.surface.tileFold, readings(({ tile }) => tile)],
  [
    words.back.fold,
    ({ tile: { relief, reliefMm } }, units) =>
      relief
        ? `${words.back.kinds[relief.shape]}: ${formatGap(relief.depthMm, units)}, ${formatLength(relief.pitchMm, units, 16)}, ${formatShare(relief.raisedShare)}, ${relief.directionDeg}${controls.degrees}`
        : formatGap(reliefMm, units),
  ],
  [controls.floorBow, gap(({ floor }) => floor.bowLengthMm)],
  [words.floor.across, gap(({ floor }) => floor.bowWidthMm)],
  [words.floor.twist, gap(({ floor }) => floor.twistMm ?? 0)],
  [words.surface.floorFold, readings(({ floor }) => floor)],
  [controls.notch, ({ trowel }) => notchLabel(trowel)],
  [controls.angle, degrees(({ trowel }) => trowel.angleDeg)],
  [words.blade.yaw, degrees(({ trowel }) => trowel.yawDeg ?? 0)],
  [controls.worn, length(({ trowel }) => trowel.wearMm)],
  [
    controls.pattern,
    ({ comb }, units) => (comb.pattern === 'drawn' ? strokeShort(comb, units) : words.patterns[comb.pattern]),
  ],
  [controls.direction, degrees(({ comb }) => comb.directionDeg)],
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
  [words.weather.fold, ({ mortar }) => words.weather.skin(String(Math.round(mortar.skinMin ?? SKIN_MIN)))],
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

/** Names that are plain only under the heading of their controls, and what they are called without it. */
const GROUPED: ReadonlyMap<string, string> = new Map([
  [controls.size, controls.tile],
  [controls.notch, controls.trowel],
  [controls.pattern, controls.comb],
  [controls.stiffness, controls.mortar],
  [work.title, work.list],
]);

/** A set-up in words: what every bed has, then whatever is out of the ordinary, in the order of the controls. */
export function setupSays(setup: BedSetup, units: UnitSystem): { name: string; says: string }[] {
  const plain = defaultSetup();
  return tellings
    .filter(([name, tell]) => ALWAYS.has(name) || tell(setup, units) !== tell(plain, units))
    .map(([name, tell]) => ({ name: GROUPED.get(name) ?? name, says: tell(setup, units) }));
}
