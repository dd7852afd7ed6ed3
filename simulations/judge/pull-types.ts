import type { RuleSource } from '../rules/rule.ts';
import type { RuleId } from '../rules/rulebook.ts';
import type { StandardSet } from '../rules/rule.ts';
import type { Assumed } from '../estimate/job-types.ts';
import type { Finding } from '../estimate/plan-types.ts';
import type { UnitSystem } from '../units/format.ts';

export const pullKinds = ['tile', 'stone', 'glass', 'panel'] as const;
export const pullMaterials = ['porcelain', 'ceramic', 'stone', 'glass', 'mosaic'] as const;
/** Where the mortar stayed when the tile came up. */
export const mortarSides = ['tile', 'floor', 'both', 'neither', 'within'] as const;
export const ridgeStates = ['standing', 'crushed', 'flat', 'swirled', 'dabs'] as const;

/** A hole in the contact. Areas mm², lengths mm. */
export interface PulledVoid {
  areaMm2: number;
  toCornerMm: number;
  toEdgeMm: number;
}

/** One lifted tile. */
export interface PulledTile {
  coverage: number;
  /** Mortar on the back shows no print of the bed: it never met it. */
  backCoatOnly: boolean;
  voids: PulledVoid[];
}

/** What else was seen; null where nobody looked. */
export interface PullSigns {
  mortarOn: (typeof mortarSides)[number] | null;
  ridges: (typeof ridgeStates)[number] | null;
  /** Only cut tiles come up clean. */
  cutTilesOnly: boolean | null;
  /** Powder on the back. */
  powder: boolean | null;
  /** The bed has a skin: dull, and a finger comes away clean. */
  skin: boolean | null;
  /** A crack runs straight along a seam of the board. */
  crackOverSeam: boolean | null;
  /** Water drops stand on the bare slab. */
  dropsStand: boolean | null;
}

export interface Pull {
  standards: StandardSet;
  exposure: 'interior-dry' | 'interior-wet' | 'exterior' | 'submerged';
  surface: 'floor' | 'wall';
  kind: (typeof pullKinds)[number];
  material: (typeof pullMaterials)[number];
  thicknessMm: number;
  pulls: PulledTile[];
  /** The floor sounds hollow; null when nobody tapped it. */
  hollowSound: boolean | null;
  /** A membrane, board or mat lies under the tile. */
  overMembrane: boolean;
  /** Measured bed, mm; null when nobody measured. */
  bedMm: number | null;
  signs: PullSigns;
}

/** One limit held against what was found. */
export interface JudgedLimit {
  name:
    | 'coverage'
    | 'largest-void'
    | 'edge-support'
    | 'void-near-corner'
    | 'void-near-edge'
    | 'tiles-lifted'
    | 'bed-least'
    | 'bed-most';
  says: string;
  required: number;
  /** Null where nothing of the kind was seen: no void at all. */
  found: number | null;
  holds: boolean;
  /** A limit of good practice only: failing it is a warning and no fail. */
  advice: boolean;
  rule: RuleId;
  source: RuleSource;
}

export type CauseName =
  | 'wet-back'
  | 'powder'
  | 'skinned'
  | 'not-embedded'
  | 'sealed-base'
  | 'thirsty-base'
  | 'dabs'
  | 'swirls'
  | 'too-little-mortar'
  | 'unbedded-board'
  | 'other-causes';

/** A likely cause, likeliest first. */
export interface Cause {
  name: CauseName;
  rule: RuleId;
  says: string;
  /** What to do about it. */
  action: string;
  /** Weight of the evidence; only its order means anything. */
  weight: number;
}

export interface Judgement {
  verdict: 'pass' | 'fail' | 'not-enough';
  says: string;
  limits: JudgedLimit[];
  causes: Cause[];
  findings: Finding[];
  /** Share of bad tiles that a clean sample of this size still leaves likely, of an endless floor; null unless it passed. */
  stillBad: number | null;
  assumed: Assumed;
}

export interface JudgeOptions {
  units?: UnitSystem;
}
