import { causesOf } from '@sim/judge/causes.ts';
import type { Cause, PullSigns } from '@sim/judge/pull-types.ts';
import { wholePull } from '@sim/judge/whole-pull.ts';

/** What the reader has seen; coverage 0…1, null where no tile was looked at. */
export interface SeenFloor {
  signs: PullSigns;
  coverage: number | null;
}

/** Likely causes of what was seen on a dry floor, likeliest first, by the path that judges pulled tiles. */
export function likelyCauses({ signs, coverage }: SeenFloor, required: number): Cause[] {
  const pull = wholePull({ signs, pulls: coverage === null ? [] : [{ coverage }] });
  // Without a lifted tile nothing can be said about too little mortar or a full bed.
  return causesOf(pull, coverage ?? 1, required).filter((one) => coverage !== null || one.name !== 'other-causes');
}

export const sawNothing = (signs: PullSigns): boolean => Object.values(signs).every((sign) => sign === null);

/** Two faces of the failed bed, 100 wide each: stripes of mortar where the ridges stood. */
export interface FacePicture {
  tile: string;
  floor: string;
}

const STRIPES = 6;
const stripes = (width: number): string => {
  const pitch = 100 / STRIPES;
  return Array.from(
    { length: STRIPES },
    (_, i) => `M${(i * pitch + (pitch - width) / 2).toFixed(1)} 0h${width.toFixed(1)}v100h${(-width).toFixed(1)}z`,
  ).join('');
};
const discs = (): string =>
  [
    [22, 22],
    [78, 22],
    [50, 50],
    [22, 78],
    [78, 78],
  ]
    .map(([x, y]) => `M${(x ?? 0) - 13} ${y}a13 13 0 1 0 26 0a13 13 0 1 0 -26 0z`)
    .join('');
const sweeps = (): string =>
  [20, 38, 56, 74, 92]
    .map((r) => `M0 ${100 - r}A${r} ${r} 0 0 1 ${r} 100H${r - 9}A${r - 9} ${r - 9} 0 0 0 0 ${109 - r}z`)
    .join('');

const shapes = {
  standing: () => stripes(7),
  crushed: () => stripes(11),
  flat: () => 'M0 0H100V100H0z',
  swirled: sweeps,
  dabs: discs,
};

/** A sketch of what the two faces show; empty where nothing was said. */
export function facesOf({ mortarOn, ridges }: PullSigns): FacePicture {
  const shape = shapes[ridges ?? 'crushed']();
  if (mortarOn === null) return { tile: '', floor: '' };
  return {
    tile: mortarOn === 'floor' || mortarOn === 'neither' ? '' : shape,
    floor: mortarOn === 'tile' || mortarOn === 'neither' ? '' : shape,
  };
}
