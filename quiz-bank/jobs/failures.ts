import type { RuleId } from '../../simulations/rules/rulebook.ts';

/** A way a floor fails: its name (words stand under it) and the rule that speaks of it. */
export interface Failure {
  name: string;
  rule: RuleId;
}

/** Causes a lifted tile can tell apart by where the mortar stayed and what the ridges look like. */
export const failures: readonly Failure[] = [
  { name: 'skinned', rule: 'time.no-skin' },
  { name: 'not-moved', rule: 'set.across' },
  { name: 'sealed-slab', rule: 'substrate.curing-compound' },
  { name: 'wet-back', rule: 'set.wet-back' },
  { name: 'powder', rule: 'set.powder' },
  { name: 'thirsty-slab', rule: 'substrate.dampen' },
  { name: 'dabs', rule: 'set.no-dabs' },
  { name: 'board-seam', rule: 'board.bed' },
  { name: 'thick-patch', rule: 'bed.shrinks' },
  { name: 'notch-too-small', rule: 'bed.need' },
];
