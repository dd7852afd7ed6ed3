import { CELL_STATE } from '../../bed/types.ts';
import { grain } from '../grain.ts';
import { readColour, type Rgb, type ViewPalette } from '../palette.ts';

/** A palette ready for painting pixels. */
export interface StateTones {
  bonded: Rgb;
  open: Rgb;
  air: Rgb;
  dot: Rgb;
  skin: Rgb;
  hatch: Rgb;
}

export const stateTones = (palette: ViewPalette): StateTones => ({
  bonded: readColour(palette.mortar),
  open: readColour(palette.clay),
  air: readColour(palette.air),
  dot: readColour(palette.chalk),
  skin: readColour(palette.skin),
  hatch: readColour(palette.mortarDark),
});

/** Spacing of the dots that mean shut-in air, in CSS pixels. */
const DOT_STEP = 7;
const DOT_RADIUS = 1.9;
/** Spacing and half-thickness of the hatch that means a skinned bed, in CSS pixels. */
const HATCH_STEP = 6;
const HATCH_HALF = 0.9;

const covered = (distance: number, radius: number, scale: number): number =>
  Math.min(1, Math.max(0, (radius - distance) * scale + 0.5));

/** How much of the dot pattern a pixel holds: staggered rows, so it cannot be read as a grid of joints. */
function dotShare(x: number, y: number, scale: number): number {
  const row = Math.round(y / scale / DOT_STEP);
  const shift = row % 2 === 0 ? 0 : DOT_STEP / 2;
  const column = Math.round((x / scale - shift) / DOT_STEP);
  const distance = Math.hypot(x / scale - shift - column * DOT_STEP, y / scale - row * DOT_STEP);
  return covered(distance, DOT_RADIUS, scale);
}

function hatchShare(x: number, y: number, scale: number): number {
  const along = (x + y) / scale / Math.SQRT2;
  return covered(Math.abs(along - Math.round(along / HATCH_STEP) * HATCH_STEP), HATCH_HALF, scale);
}

/** How much of its state's pattern a pixel holds: dots in shut-in air, a hatch on a skinned bed, elsewhere nothing. */
export function patternShare(state: number, x: number, y: number, scale: number): number {
  if (state === CELL_STATE.trapped) return dotShare(x, y, scale);
  return state === CELL_STATE.skinned ? hatchShare(x, y, scale) : 0;
}

/** Which grain of sand a pixel lies on, along one side. */
export const grainAt = (pixel: number, scale: number): number => Math.floor(pixel / scale);

/**
 * The tone of a state: ground, pattern and grain. Bonded has the speckle of sand, a bare back is plain, shut-in air has
 * dots, a skinned bed has a hatch.
 * @param sand its grain, 0…1
 * @param share of the pattern, 0…1
 * @param into receives red, green, blue
 */
export function mixTone(
  state: number,
  sand: number,
  share: number,
  tones: StateTones,
  into: [number, number, number],
): void {
  let ground = tones.open;
  let mark = tones.dot;
  let lift = (sand - 0.5) * 5;
  if (state === CELL_STATE.bonded) {
    ground = tones.bonded;
    lift = (sand - 0.5) * 22;
  } else if (state === CELL_STATE.trapped) {
    ground = tones.air;
  } else if (state === CELL_STATE.skinned) {
    ground = tones.skin;
    mark = tones.hatch;
  }
  into[0] = ground[0] + (mark[0] - ground[0]) * share + lift;
  into[1] = ground[1] + (mark[1] - ground[1]) * share + lift;
  into[2] = ground[2] + (mark[2] - ground[2]) * share + lift;
}

/**
 * The tone of one pixel of a state.
 * @param x y device pixels
 * @param scale device pixels to a CSS pixel
 * @param into receives red, green, blue
 */
export function stateTone(
  state: number,
  x: number,
  y: number,
  scale: number,
  tones: StateTones,
  into: [number, number, number],
): void {
  mixTone(state, grain(grainAt(x, scale), grainAt(y, scale)), patternShare(state, x, y, scale), tones, into);
}
