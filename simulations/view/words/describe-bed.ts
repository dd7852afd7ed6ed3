import { CELL_STATE, type BedFrame, type BedResult } from '../../bed/types.ts';
import { lengthOf } from '../../numbers/plain.ts';
import { formatGap, formatShare, type UnitSystem } from '../../units/format.ts';
import { formatForce, formatPressure, formatSmallArea, formatSmallVolume } from '../../units/mechanics.ts';
import { isLaid } from '../laid.ts';
import { EN_BED_WORDS, type BedWords } from './bed-words.ts';
import type { Profile } from '../section/profile.ts';
import { figuresOf } from '../section/profile.ts';

/** A drift smaller than this is not told, nor a lean across a cut. */
const SEEN_MM = 0.25;

/** Shares of the tile's back by what lies under it, counted from a frame's cells. */
export interface StateShares {
  bonded: number;
  open: number;
  trapped: number;
  skinned: number;
}

/** Counts the cells under the tile; all zero before it is laid. */
export function stateShares(frame: BedFrame): StateShares {
  const counts = [0, 0, 0, 0, 0, 0];
  for (const state of frame.state) counts[state] = (counts[state] ?? 0) + 1;
  const of = (state: number): number => counts[state] ?? 0;
  const all = of(CELL_STATE.bonded) + of(CELL_STATE.open) + of(CELL_STATE.trapped) + of(CELL_STATE.skinned);
  const share = (state: number): number => (all === 0 ? 0 : of(state) / all);
  return {
    bonded: share(CELL_STATE.bonded),
    open: share(CELL_STATE.open),
    trapped: share(CELL_STATE.trapped),
    skinned: share(CELL_STATE.skinned),
  };
}

function tallest(frame: BedFrame): number {
  let most = 0;
  for (const height of frame.mortarMm) if (height > most) most = height;
  return most;
}

/**
 * What a picture of the bed shows, in sentences, the most important first.
 * @param result the finished run, or null while it is under way (then only what the frame tells is said)
 */
export function describeBed(
  result: BedResult | null,
  frame: BedFrame,
  units: UnitSystem,
  words: BedWords = EN_BED_WORDS,
): string[] {
  const gap = (mm: number): string => formatGap(mm, units);
  if (!isLaid(frame)) return [words.notLaid(gap(tallest(frame)))];
  const shares = stateShares(frame);
  const said = [words.coverage(formatShare(result ? result.coverage : frame.coverage))];
  if (!result) {
    said.push(words.load(formatForce(frame.loadN, units)));
    return said;
  }
  said.push(
    words.coverageParts(
      formatShare(shares.bonded),
      formatShare(shares.open),
      formatShare(shares.trapped),
      formatShare(shares.skinned),
    ),
    result.largestVoidMm2 > 0 ? words.largestVoid(formatSmallArea(result.largestVoidMm2, units)) : words.noVoid,
  );
  if (result.largestVoidMm2 > 0) said.push(words.voidsNearEdge(result.voidsNearEdge));
  const highest = result.pockets.reduce((most, pocket) => Math.max(most, pocket.gaugePa), 0);
  said.push(
    result.pockets.length > 0
      ? words.trapped(result.pockets.length, formatShare(result.trapped), formatPressure(highest, units))
      : words.noPockets,
  );
  const weakest = Math.min(...result.corners);
  const corner = words.corners[result.corners.indexOf(weakest) as 0 | 1 | 2 | 3];
  said.push(
    weakest < result.coverage - 0.02
      ? words.weakCorner(corner, formatShare(weakest))
      : words.cornersEven(formatShare(weakest)),
    words.bed(gap(result.bedMm.mean), gap(result.bedMm.min), gap(result.bedMm.max)),
    result.riseInJoint > 1
      ? words.squeezedOver(formatSmallVolume(result.squeezedMm3, units))
      : words.squeezed(formatSmallVolume(result.squeezedMm3, units), formatShare(result.riseInJoint)),
    words.load(formatForce(result.loadN, units)),
  );
  const drift = result.driftMm ? lengthOf(...result.driftMm) : 0;
  if (drift >= SEEN_MM) said.push(words.drift(gap(drift)));
  return said;
}

/** What a cut shows, in sentences: the gap, the ridges, the air. */
export function describeSection(profile: Profile, units: UnitSystem, words: BedWords = EN_BED_WORDS): string[] {
  const figures = figuresOf(profile);
  const gap = (mm: number): string => formatGap(mm, units);
  const said: string[] = [];
  if (!Number.isNaN(figures.gap.mean)) {
    said.push(words.section.gap(gap(figures.gap.mean), gap(figures.gap.min), gap(figures.gap.max)));
    said.push(words.section.bonded(formatShare(figures.bondedShare)));
  }
  said.push(words.section.ridges(figures.ridges, gap(figures.tallestMm)));
  if (!Number.isNaN(figures.gap.mean)) {
    said.push(
      figures.openRuns + figures.trappedRuns > 0
        ? words.section.air(figures.openRuns, figures.trappedRuns, gap(figures.widestAirMm))
        : words.section.noAir,
    );
  }
  if (profile.leaning && profile.leaning.acrossMm >= SEEN_MM && figures.tallestMm > 0)
    said.push(Number.isNaN(figures.gap.mean) ? words.section.leans : words.section.leansUnderTile);
  return said;
}
