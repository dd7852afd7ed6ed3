import { defaultActions, defaultRelief } from '@sim/bed/defaults.ts';
import type { BedAction, BedSetup, ReliefSetup } from '@sim/bed/types.ts';
import { formatLength, type UnitSystem } from '@sim/units/format.ts';
import { inches } from '@sim/units/length.ts';

import { startSetup, withCells } from '../start-setup.ts';
import { tileSizes } from '../tile-sizes.ts';

/** A pair of beds that differ in one thing, made to be shown to a class. */
export type DemonstrationId = 'swirl' | 'along' | 'bow' | 'skin' | 'mosaic' | 'butter';

export interface Demonstration {
  id: DemonstrationId;
  first: BedSetup;
  second: BedSetup;
}

const press: BedAction = { ...defaultActions.press };

const bed = (change: (start: BedSetup) => Partial<BedSetup>): BedSetup => {
  const start = startSetup();
  const flat = { ...start, tile: { ...start.tile, bowLengthMm: 0 }, actions: [press] };
  return withCells({ ...flat, ...change(flat) });
};

const notch = (widthIn: number, depthIn: number): Partial<BedSetup['trowel']> => ({
  widthMm: inches(widthIn),
  depthMm: inches(depthIn),
  toothMm: inches(widthIn),
});

const mosaic = tileSizes.find(({ id }) => id === 'mosaic')?.tile;

/** Ribs as on the back of much pressed tile, deep enough to be felt (common practice, no published source). */
const ribs: ReliefSetup = { ...defaultRelief(), pitchMm: 30, depthMm: 1.2, raisedShare: 0.4 };

/** The prepared demonstrations, in the order of a lesson. */
export const demonstrations: readonly Demonstration[] = [
  {
    id: 'swirl',
    first: bed(() => ({})),
    second: bed((start) => ({ comb: { ...start.comb, pattern: 'swirl' } })),
  },
  {
    id: 'along',
    first: bed(() => ({
      actions: [
        { ...press, forceN: 60 },
        { ...defaultActions.slide, forceN: 60, directionDeg: 0 },
      ],
    })),
    second: bed(() => ({
      actions: [
        { ...press, forceN: 60 },
        { ...defaultActions.slide, forceN: 60, directionDeg: 90 },
      ],
    })),
  },
  {
    id: 'bow',
    first: bed((start) => ({
      tile: { ...start.tile, bowLengthMm: 2 },
      trowel: { ...start.trowel, ...notch(1 / 2, 1 / 2) },
    })),
    second: bed((start) => ({
      tile: { ...start.tile, bowLengthMm: 2 },
      trowel: { ...start.trowel, ...notch(1 / 4, 1 / 4) },
    })),
  },
  {
    id: 'skin',
    first: bed(() => ({})),
    second: bed((start) => ({ mortar: { ...start.mortar, ageMin: 40 } })),
  },
  {
    id: 'mosaic',
    first: bed((start) => ({
      tile: { ...start.tile, ...mosaic },
      trowel: { ...start.trowel, ...notch(1 / 4, 1 / 4) },
    })),
    second: bed((start) => ({
      tile: { ...start.tile, ...mosaic },
      trowel: { ...start.trowel, ...notch(1 / 4, 1 / 4) },
      comb: { ...start.comb, flattened: true },
    })),
  },
  {
    id: 'butter',
    first: bed((start) => ({ tile: { ...start.tile, relief: ribs }, butterMm: 1.5 })),
    second: bed((start) => ({ tile: { ...start.tile, relief: ribs } })),
  },
];

/** What the words of a pair tell of its beds, in the reader's units. */
export interface PairFacts {
  /** How high the tile is bowed. */
  bow: string;
  /** The notch of either bed, width × depth. */
  notches: readonly [string, string];
  /** How deep the hollows of the back are. */
  relief: string;
  /** The age of the second bed, minutes. */
  minutes: string;
}

/** A length of a few millimetres, where a sixty-fourth of an inch counts. */
const small = (mm: number, units: UnitSystem): string => formatLength(mm, units, 64);
const notchSays = ({ trowel }: BedSetup, units: UnitSystem): string =>
  `${small(trowel.widthMm, units).replace(/ (in|mm)$/, '')} × ${small(trowel.depthMm, units)}`;

/** The facts of a pair, from its set-ups. */
export const pairFacts = ({ first, second }: Demonstration, units: UnitSystem): PairFacts => ({
  bow: small(first.tile.bowLengthMm, units),
  notches: [notchSays(first, units), notchSays(second, units)],
  relief: small(first.tile.relief?.depthMm ?? first.tile.reliefMm, units),
  minutes: String(second.mortar.ageMin),
});
