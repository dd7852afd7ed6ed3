import { CELL_STATE, type BedFrame } from '../../bed/types.ts';
import { leaningCut, type LeaningCut } from './leaning-cut.ts';

/** Where the bed is cut: a plane across the given axis, through the frame. */
export interface Cut {
  /** The axis the section runs along: the tile's length (x) or its width (y). */
  along: 'length' | 'width';
  /** Where the plane stands on the other axis, mm from the tile's centre. */
  atMm: number;
}

/** The stretch of a section that a close-up shows, mm from the tile's centre. */
export const CLOSE_UP = { fromMm: -80, toMm: 80 } as const;

/** One section through the bed, a sample a cell. Heights mm over the floor's mean plane. */
export interface Profile {
  /** Place along the section, mm from the tile's centre. */
  placeMm: Float64Array;
  floorMm: Float64Array;
  /** Top of the mortar. */
  mortarMm: Float64Array;
  /** The tile's underside; NaN where there is no tile. */
  undersideMm: Float64Array;
  state: Uint8Array;
  cellMm: number;
  /** What the plane meets of ridges that lean, in place of the columns under the tile; null where none lean. */
  leaning: LeaningCut | null;
}

/** Whether a tile lies over any part of a section. */
const isUnderTile = ({ undersideMm }: Profile): boolean => undersideMm.some((height) => !Number.isNaN(height));

/** Which steps of a section are drawn as upright columns: all, or beside leaning ridges what was squeezed out beside the tile. */
export function uprightIn(profile: Profile): (step: number) => boolean {
  const { leaning, undersideMm } = profile;
  if (!leaning) return () => true;
  return isUnderTile(profile) ? (step) => Number.isNaN(undersideMm[step]!) : () => false;
}

/** Height beyond which a cell is no wall's but a slope's, as a share of the ridge behind it. */
const LEVEL_WITH = 0.05;

/** Where a ridge ends inside its last cell: mm from the cell's middle, and the height of the wall there. */
export interface Wall {
  offMm: number;
  topMm: number;
}

/**
 * The wall of a level ridge in its last cell. A cell that holds a part of the ridge's height is crossed by the ridge to
 * that part, as the solver takes its fronts; null where the ridge runs out in a slope.
 * @param outward −1 where the ridge ends towards the section's beginning, 1 towards its end
 */
export function wallIn({ mortarMm, floorMm, cellMm }: Profile): (step: number, outward: -1 | 1) => Wall | null {
  const height = (step: number): number => (mortarMm[step] ?? Number.NaN) - (floorMm[step] ?? Number.NaN);
  return (step, outward) => {
    const ridge = height(step - outward);
    const beyond = height(step - 2 * outward);
    const here = height(step);
    if (!(here < ridge) || !(Math.abs(beyond - ridge) <= LEVEL_WITH * ridge)) return null;
    return { offMm: outward * cellMm * (here / ridge - 0.5), topMm: floorMm[step]! + ridge };
  };
}

/** What fills the space between tile and floor over a stretch of the section. */
export interface Stretch {
  state: number;
  fromMm: number;
  toMm: number;
}

/**
 * Reads the section out of a frame; a plane outside the frame is taken at its nearest row of cells.
 * @param standsMm what is left of each column, where the mortar has parted
 */
export function profileOf(frame: BedFrame, cut: Cut, standsMm: Float32Array = frame.mortarMm): Profile {
  const lengthwise = cut.along === 'length';
  const count = lengthwise ? frame.columns : frame.rows;
  const lines = lengthwise ? frame.rows : frame.columns;
  const [originX, originY] = frame.originMm;
  const start = lengthwise ? originX : originY;
  const line = Math.round((cut.atMm - (lengthwise ? originY : originX)) / frame.cellMm);
  const held = Math.min(lines - 1, Math.max(0, line));
  const profile: Profile = {
    placeMm: new Float64Array(count),
    floorMm: new Float64Array(count),
    mortarMm: new Float64Array(count),
    undersideMm: new Float64Array(count),
    state: new Uint8Array(count),
    cellMm: frame.cellMm,
    leaning: leaningCut(frame, { lengthwise, line: held }, standsMm),
  };
  for (let step = 0; step < count; step++) {
    const cell = lengthwise ? held * frame.columns + step : step * frame.columns + held;
    const floor = frame.floorMm[cell]!;
    const gap = frame.gapMm[cell]!;
    profile.placeMm[step] = start + step * frame.cellMm;
    profile.floorMm[step] = floor;
    profile.mortarMm[step] = floor + Math.min(standsMm[cell]!, Number.isNaN(gap) ? Infinity : gap);
    profile.undersideMm[step] = floor + gap;
    profile.state[step] = frame.state[cell]!;
  }
  return profile;
}

/** The section under the tile as runs of one state each, in order. */
export function stretches(profile: Profile): Stretch[] {
  const found: Stretch[] = [];
  const half = profile.cellMm / 2;
  for (let step = 0; step < profile.placeMm.length; step++) {
    const state = profile.state[step]!;
    if (state === CELL_STATE.outside) continue;
    const place = profile.placeMm[step]!;
    const last = found.at(-1);
    if (last && last.state === state && place - half - last.toMm < half) last.toMm = place + half;
    else found.push({ state, fromMm: place - half, toMm: place + half });
  }
  return found;
}

/** Figures of a section for words and table. Lengths mm; NaN gaps where no tile is laid. */
export interface SectionFigures {
  gap: { mean: number; min: number; max: number };
  /** Crests of mortar that stand at least a quarter of the tallest above their valleys. */
  ridges: number;
  tallestMm: number;
  bondedShare: number;
  /** Runs of air, open to an edge or shut in. */
  openRuns: number;
  trappedRuns: number;
  widestAirMm: number;
}

function countRidges(profile: Profile, tallest: number, laid: boolean): number {
  const rise = tallest / 4;
  let ridges = 0;
  let low = 0;
  let high = 0;
  let climbing = true;
  for (let step = 0; step < profile.mortarMm.length; step++) {
    const height =
      laid && Number.isNaN(profile.undersideMm[step]!) ? 0 : profile.mortarMm[step]! - profile.floorMm[step]!;
    if (climbing) {
      high = Math.max(high, height);
      if (high - low >= rise && high - height >= rise) {
        ridges += 1;
        climbing = false;
        low = height;
      }
    } else {
      low = Math.min(low, height);
      if (height - low >= rise) {
        climbing = true;
        high = height;
      }
    }
  }
  return climbing && high - low >= rise ? ridges + 1 : ridges;
}

/** Measures a section. */
export function figuresOf(profile: Profile): SectionFigures {
  let sum = 0;
  let count = 0;
  let min = Infinity;
  let max = -Infinity;
  let bonded = 0;
  let tallest = 0;
  const laid = isUnderTile(profile);
  for (let step = 0; step < profile.placeMm.length; step++) {
    // Beside a laid tile stands squeeze-up, not a ridge.
    if (!laid || !Number.isNaN(profile.undersideMm[step]!))
      tallest = Math.max(tallest, profile.mortarMm[step]! - profile.floorMm[step]!);
    const gap = profile.undersideMm[step]! - profile.floorMm[step]!;
    if (Number.isNaN(gap)) continue;
    sum += gap;
    count += 1;
    min = Math.min(min, gap);
    max = Math.max(max, gap);
    if (profile.state[step] === CELL_STATE.bonded) bonded += 1;
  }
  const air = stretches(profile).filter(({ state }) => state === CELL_STATE.open || state === CELL_STATE.trapped);
  return {
    gap: count > 0 ? { mean: sum / count, min, max } : { mean: NaN, min: NaN, max: NaN },
    ridges: profile.leaning?.ridges ?? countRidges(profile, tallest, laid),
    tallestMm: profile.leaning?.tallestMm ?? tallest,
    bondedShare: count > 0 ? bonded / count : 0,
    openRuns: air.filter(({ state }) => state === CELL_STATE.open).length,
    trappedRuns: air.filter(({ state }) => state === CELL_STATE.trapped).length,
    widestAirMm: air.reduce((widest, run) => Math.max(widest, run.toMm - run.fromMm), 0),
  };
}
