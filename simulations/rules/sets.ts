import type { Mm } from '../units/length.ts';
import { inches } from '../units/length.ts';
import type { UnitSystem } from '../units/format.ts';
import { type StandardSet, standardSets } from './rule.ts';
import { ruleById, type RuleId, valueOf } from './rulebook.ts';

/** What comes with a set of standards besides the rules that name it. */
export interface SetHabits {
  /** Another set whose rules decide here too, all but those in `without`. */
  basedOn: StandardSet | null;
  without: readonly RuleId[];
  /** How its readers measure. */
  units: UnitSystem;
  /** Whose `mass` is the bag sold there. */
  bag: 'bag.north-america' | 'bag.elsewhere';
  /** Whose `least` and `most` bound the air and the floor while mortar is spread. */
  climate: 'time.temperature' | 'time.temperature-en';
  /** Length of the straightedge that floors are read over there, mm. */
  straightedgeMm: () => Mm;
  /** How far an edge may be bowed, by how its tile is made: each with a `share` and a `most`. */
  warp: { rectified: WarpRule; porcelain: WarpRule; other: WarpRule };
  /** What is done to the back of a tile outdoors. */
  outdoorBack: { how: 'flat' | 'combed'; rule: RuleId };
  /** The row of notches sold there. */
  notches: 'inch' | 'metric';
  /** What a form begins with, where nothing was said (common practice, no published source). */
  usual: { jointMm: Mm; thicknessMm: Mm };
}
type WarpRule = 'warp.rectified' | 'warp.calibrated' | 'warp.porcelain' | 'iso.flatness' | 'iso.flatness-rectified';

export const setHabits: Readonly<Record<StandardSet, SetHabits>> = {
  'north-america': {
    basedOn: null,
    without: [],
    units: 'imperial',
    bag: 'bag.north-america',
    climate: 'time.temperature',
    straightedgeMm: () => valueOf('flatness.large', 'longOver'),
    warp: { rectified: 'warp.rectified', porcelain: 'warp.porcelain', other: 'warp.calibrated' },
    outdoorBack: { how: 'flat', rule: 'butter.for-95' },
    notches: 'inch',
    usual: { jointMm: inches(1 / 8), thicknessMm: inches(3 / 8) },
  },
  'iso-en': {
    basedOn: null,
    without: [],
    units: 'metric',
    bag: 'bag.elsewhere',
    climate: 'time.temperature-en',
    straightedgeMm: () => valueOf('flatness.uk', 'over'),
    warp: { rectified: 'iso.flatness-rectified', porcelain: 'iso.flatness', other: 'iso.flatness' },
    outdoorBack: { how: 'combed', rule: 'exterior.both-faces' },
    notches: 'metric',
    usual: { jointMm: 3, thicknessMm: 9 },
  },
};

/** Whether a rule decides by a set of standards: it names the set, or the set takes it from the one it is based on. */
export function decidesIn(rule: RuleId, standards: StandardSet): boolean {
  if ((ruleById(rule).standards as readonly StandardSet[]).includes(standards)) return true;
  const { basedOn, without } = setHabits[standards];
  return basedOn !== null && !without.includes(rule) && decidesIn(rule, basedOn);
}

/** The set that someone who measures so most likely works by: the first of those units. */
export const setForUnits = (units: UnitSystem): StandardSet =>
  standardSets.find((one) => setHabits[one].units === units) ?? standardSets[0];
