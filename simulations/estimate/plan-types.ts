import type { Decision, Outcome } from '../rules/decide.ts';
import type { RuleSource } from '../rules/rule.ts';
import type { RuleId } from '../rules/rulebook.ts';
import type { Notch } from '../trowel/notch.ts';
import type { UnitSystem } from '../units/format.ts';
import type { Assumed } from './job-types.ts';

/** One thing the sheet says, with the rule behind it. `stop`: don't begin before this is put right. */
export interface Finding {
  rule: RuleId;
  severity: 'stop' | 'warn' | 'note';
  says: string;
  source: RuleSource;
}

/** A notch with what is stamped on it. Lengths mm. */
export interface NamedNotch extends Notch {
  label: string;
}

export interface RejectedNotch {
  notch: NamedNotch;
  rule: RuleId;
  says: string;
}

/** How a matter was decided; the values are in the subject's unit. */
export interface ExplainedDecision extends Decision {
  trace: readonly { rule: RuleId; value: number; outcome: Outcome; says: string }[];
}

export interface CombPlan {
  /** The way the ridges run, from the tile's length. */
  directionDeg: number;
  along: 'short-side' | 'either-side' | 'cable';
  /** Hold the blade at this or steeper. */
  angleDeg: number;
  keyCoat: boolean;
  says: string;
}

export type SettingMethod = 'slide' | 'beat-in' | 'collapse' | 'walk-in' | 'vibrate';

export interface Flatness {
  rule: RuleId;
  dipMm: number;
  overMm: number;
  /** The second, short-range limit where the standard has one. */
  shortDipMm: number | null;
  shortOverMm: number | null;
  /** Null when nobody measured. */
  met: boolean | null;
  /** Deepest fill where it isn't met, mm. */
  patchMm: number;
  says: string;
}

export type LayerName = 'under-board' | 'under-sheet' | 'under-mat' | 'cavities' | 'over-cable' | 'bed' | 'back-coat';

export interface Layer {
  name: LayerName;
  /** The notch it is combed with; null where it is filled or coated with the flat side. */
  notch: NamedNotch | null;
  /** Mean thickness, mm. */
  thicknessMm: number;
  litres: number;
  rule: RuleId;
}

export interface Bags {
  low: number;
  plan: number;
  high: number;
  /** Bags the headline on the bag would have you buy. */
  labelWouldSay: number;
  /** Unrounded bags behind `low`, `plan`, `high`. */
  exact: { low: number; plan: number; high: number };
  whyDiffers: string;
}

export interface Batches {
  /** Powder for one batch, kg, and its water, L. */
  powderKg: number;
  waterL: number;
  count: number;
  potLifeMin: number;
  /** Batches of the last, part bag: powder kg and water L; zero when none. */
  partBag: { powderKg: number; waterL: number };
  says: string;
}

export interface PullPlan {
  tiles: number;
  of: number;
  /** Greatest share of bad tiles that a clean sample of that size leaves likely (95 % sure). */
  stillBad: number;
  method: 'hypergeometric' | 'binomial';
  says: string;
  /** What other sample sizes would tell. */
  table: { tiles: number; stillBad: number }[];
}

export interface Predicted {
  median: number;
  low: number;
  high: number;
  chanceOfPass: number;
  draws: number;
  /** The draws themselves, sorted, for a picture. */
  sorted: number[];
}

/** How the bed behind the prediction is combed and set. */
export interface AsDone {
  swirled: boolean;
  /** Pressed with a light hand. */
  light: boolean;
  /** Movement there and back across the ridges, mm. */
  travelMm: number;
  butterHow: 'none' | 'flat' | 'combed';
}

export interface AreaPlan {
  name: string;
  areaM2: number;
  tiles: number;
  notch: NamedNotch;
  notchSays: string;
  /** The bed that notch had to leave, mm at a 45° blade, and what it is made of. */
  bedNeedMm: { total: number; sand: number; warp: number; floor: number; relief: number };
  alternatives: NamedNotch[];
  rejected: RejectedNotch[];
  /** The notch we would have picked, where a maker's instruction took its place. */
  overridden: NamedNotch | null;
  comb: CombPlan;
  butterBack: boolean;
  butterHow: 'none' | 'flat' | 'combed';
  butterSays: string;
  flattenRidges: boolean;
  method: SettingMethod;
  methodSays: string;
  /** How far to move the tile across the ridges, mm; zero where it isn't slid. */
  travelMm: number;
  mortarKind: 'thin-set' | 'large-and-heavy' | 'epoxy';
  mortarColour: 'any' | 'white' | 'white-for-glass';
  mortarSays: string;
  bedLimitMm: { least: number; most: number };
  minCoverage: number;
  predicted: Predicted;
  /** What was predicted: the sheet's own way unless the job tells of another. */
  done: AsDone;
  meanBedMm: number;
  minJointMm: number;
  maxOffsetShare: number;
  maxLippageMm: number;
  /** From the bow the tile has or may have. */
  expectedLippageMm: number;
  flatnessRequired: Flatness;
  layers: Layer[];
  bags: Bags;
  batches: Batches;
  /** Tiles to spread for at once. */
  spreadAhead: number;
  openMin: number;
  spreadSays: string;
  movement: { leastMm: number; mostMm: number; rule: RuleId; says: string };
  wallKgM2: number | null;
  pull: PullPlan;
  decisions: ExplainedDecision[];
  findings: Finding[];
}

export interface Plan {
  standards: string;
  units: UnitSystem;
  areas: AreaPlan[];
  bags: { low: number; plan: number; high: number; labelWouldSay: number; cost: number | null; massKg: number };
  findings: Finding[];
  assumed: Assumed;
}

export interface PlanOptions {
  /** In which units sentences are written; by default those of the standards. */
  units?: UnitSystem;
  /** Seed of the predicted spread; the same job and seed give the same plan. */
  seed?: number;
  draws?: number;
  /** Called as the work goes on with the share done, 0…1; return true to stop (`SpreadStopped` is thrown). */
  onProgress?: (share: number) => boolean;
}
