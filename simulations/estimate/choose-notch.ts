import { valueOf, type RuleId } from '../rules/rulebook.ts';
import type { StandardSet } from '../rules/rule.ts';
import { riseInJoints } from '../mortar/squeeze-up.ts';
import { pitchMm } from '../trowel/notch.ts';
import type { BedNeed } from './bed-need.ts';
import type { Area } from './job-types.ts';
import { bedAt } from './notches.ts';
import type { NamedNotch } from './plan-types.ts';
import { isMosaic, isOver, isPanel, longestEdge, pieceEdge } from './tile-facts.ts';

/** Why a notch won't do; the lengths (mm) go into the sentence. */
export interface Refusal {
  rule: RuleId;
  why:
    | 'too-thin-upright'
    | 'too-thin-for-95'
    | 'too-little'
    | 'too-thick'
    | 'joint-fills'
    | 'must-collapse'
    | 'not-needed';
  foundMm: number;
  limitMm: number;
}

export interface Judged {
  notch: NamedNotch;
  refusal: Refusal | null;
  /** The ridges must be levelled with the flat side before the tile goes on. */
  flatten: boolean;
  /** Blade angle from which the least bed is reached, °; the usual angle or more. */
  angleDeg: number;
}

/** What the choice looks at. */
export interface NotchQuestion {
  area: Area;
  standards: StandardSet;
  need: BedNeed;
  minCoverage: number;
  /** Greatest bed the mortar may have, mm. */
  mostMm: number;
}

/** Sines run from 0 to 1; an upright blade leaves the whole depth. */
const UPRIGHT = 90;
/** Notches are entered to a hundredth of a millimetre; a bed at the limit within that passes. mm */
const TINY = 0.005;

/** Blade angle at which a notch just leaves a bed, °, in whole steps of 5 upwards; null when even upright it doesn't. */
function angleForBed(notch: NamedNotch, bedMm: number): number | null {
  const sine = bedMm / bedAt(notch, UPRIGHT);
  if (sine > 1 + TINY / bedMm) return null;
  const exact = (Math.asin(Math.min(1, sine)) * 180) / Math.PI;
  return Math.max(valueOf('trowel.angle', 'usual'), Math.ceil(exact / 5 - 1e-6) * 5);
}

/** Under a piece that bridges few ridges, standing ridges come up in the joint by what they stand above the bed. */
function mustFlatten({ area, minCoverage }: NotchQuestion, notch: NamedNotch): boolean {
  const { tile } = area;
  if (tile.material === 'glass') return true;
  if (!isMosaic(tile)) return false;
  if (minCoverage >= valueOf('butter.for-95', 'share')) return true;
  const bridged = (pieceEdge(tile) + 0.5) / pitchMm(notch);
  if (bridged >= valueOf('mosaic.flatten', 'ridges')) return false;
  const crest = notch.depthMm - valueOf('bed.least', 'bed');
  return bridged < 2 || crest > tile.thicknessMm * valueOf('mosaic.rise', 'share');
}

const refuse = (rule: RuleId, why: Refusal['why'], foundMm: number, limitMm: number): Refusal => ({
  rule,
  why,
  foundMm,
  limitMm,
});

function refusalOf(question: NotchQuestion, notch: NamedNotch): Refusal | null {
  const { area, need, minCoverage, mostMm } = question;
  const { tile } = area;
  const usual = valueOf('bed.need', 'angle');
  const least = valueOf('bed.least', 'bed');
  const mosaic = isMosaic(tile);
  const upright = bedAt(notch, UPRIGHT);
  const steep = bedAt(notch, valueOf('trowel.angle', 'steep'));
  if (upright < least - TINY) return refuse('bed.least', 'too-thin-upright', upright, least);
  // Only a small dry mosaic is planned on an upright blade: nobody keeps that up over a floor.
  if (steep < least - TINY && (!mosaic || minCoverage >= valueOf('butter.for-95', 'share')))
    return refuse('bed.least', 'too-thin-for-95', steep, least);
  const left = bedAt(notch, usual);
  if (left < need.total - TINY) return refuse('bed.need', 'too-little', left, need.total);
  const long = isOver(longestEdge(tile), valueOf('set.long-edge', 'edge')) || isPanel(tile);
  if (long && notch.shape !== 'slanted')
    return refuse(isPanel(tile) ? 'panel.trowel' : 'set.long-edge', 'must-collapse', notch.widthMm, 0);
  if (left > mostMm + TINY) return refuse('bed.most-thin-set', 'too-thick', left, mostMm);
  if (mosaic) {
    const piece = tile.pieceMm === null ? tile : { lengthMm: tile.pieceMm, widthMm: tile.pieceMm };
    const rise = riseInJoints({
      combedMm: left,
      bedMm: least,
      pieceLengthMm: piece.lengthMm,
      pieceWidthMm: piece.widthMm,
      jointMm: area.jointMm,
    });
    const room = tile.thicknessMm * valueOf('mosaic.rise', 'share');
    if (rise > room) return refuse('mosaic.rise', 'joint-fills', rise, room);
  }
  // Far more mortar than the tile needs only comes up in the joints and costs money.
  if (left > need.total * valueOf('bed.too-much', 'times') && left > bedAt(SMALLEST_SQUARE, usual))
    return refuse('bed.too-much', 'not-needed', left, need.total);
  return null;
}
/** A quarter-inch square is never too much: nothing smaller reaches the least bed at a blade one can keep. */
const SMALLEST_SQUARE: NamedNotch = { shape: 'square', widthMm: 6.35, depthMm: 6.35, toothMm: 6.35, label: '' };

/** Judges one notch for an area. */
export function judgeNotch(question: NotchQuestion, notch: NamedNotch): Judged {
  return {
    notch,
    refusal: refusalOf(question, notch),
    flatten: mustFlatten(question, notch),
    angleDeg: angleForBed(notch, valueOf('bed.least', 'bed')) ?? UPRIGHT,
  };
}

const shapeRank = { square: 0, slanted: 1, u: 2, v: 3 } as const;

/** The pick comes first: a blade one can keep, square before the rest, then the least bed, then the narrowest notch. */
function compare(a: Judged, b: Judged): number {
  const steep = valueOf('trowel.angle', 'steep');
  const usual = valueOf('trowel.angle', 'usual');
  return (
    Number(a.angleDeg > steep) - Number(b.angleDeg > steep) ||
    shapeRank[a.notch.shape] - shapeRank[b.notch.shape] ||
    Math.round((bedAt(a.notch, usual) - bedAt(b.notch, usual)) * 1000) ||
    a.notch.widthMm - b.notch.widthMm
  );
}

export interface NotchChoice {
  /** Null when none of the notches will do. */
  pick: Judged | null;
  alternatives: Judged[];
  rejected: Judged[];
  /** The notch that fails by least, when none will do. */
  nearest: Judged;
}

/** Chooses among notches by what the bed must do, not by a table of tile sizes. */
export function chooseNotch(question: NotchQuestion, notches: readonly NamedNotch[]): NotchChoice {
  const judged = notches.map((notch) => judgeNotch(question, notch));
  const good = judged.filter((one) => one.refusal === null).toSorted(compare);
  // Too much mortar is a fault one can live with where nothing better is at hand.
  const ample = judged.filter((one) => one.refusal?.why === 'not-needed').toSorted(compare);
  const pick = good[0] ?? ample[0] ?? null;
  const rejected = judged.filter((one) => one.refusal !== null && one !== pick);
  const nearest = judged.toSorted(
    (a, b) => distance(a, question.need.total) - distance(b, question.need.total) || compare(a, b),
  )[0] as Judged;
  return { pick, alternatives: good.slice(1), rejected, nearest };
}

const distance = (one: Judged, need: number): number => {
  const short = need - bedAt(one.notch, valueOf('trowel.angle', 'usual'));
  return one.refusal === null ? -1 : Math.abs(short);
};
