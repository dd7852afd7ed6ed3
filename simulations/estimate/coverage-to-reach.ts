import { decide, type Decision, type Requirement } from '../rules/decide.ts';
import { type RuleId, valueOf } from '../rules/rulebook.ts';
import type { StandardSet } from '../rules/rule.ts';

/** What the coverage to reach hangs on, of a job's area or of a pull. */
export interface CoveragePlace {
  standards: StandardSet;
  exposure: 'interior-dry' | 'interior-wet' | 'exterior' | 'submerged';
  surface: 'floor' | 'wall';
  kind: 'tile' | 'stone' | 'glass' | 'panel';
  thicknessMm: number;
}

/** The rules that name a share and decide in one of the sets. */
type ShareRule = Extract<
  RuleId,
  | `coverage.${'dry' | 'wet' | 'submerged' | 'glass'}`
  | `coverage.uni-${'interior' | 'exterior'}`
  | `coverage.stone${'' | '-thick'}`
  | `coverage.panel-${'wall' | 'floor'}`
>;

/**
 * The share of the back to reach, with every rule that was considered.
 * @throws never: each set has a rule for every place
 */
export function coverageToReach(place: CoveragePlace): Decision {
  const { standards, exposure, surface, kind, thicknessMm } = place;
  const dry = exposure === 'interior-dry';
  const outdoor = exposure === 'exterior' || exposure === 'submerged';
  const thickStone = kind === 'stone' && dry && thicknessMm >= valueOf('coverage.stone-thick', 'thickness') - 0.1;
  const ask = (rule: ShareRule, applies: boolean): Requirement => ({
    rule,
    applies,
    value: valueOf(rule, 'share'),
  });
  const tile = kind === 'tile';
  const decision = decide('coverage', standards, [
    ask('coverage.dry', tile && dry),
    // Whatever the material, a wet or outdoor place is held to the wet share.
    ask('coverage.wet', !dry),
    ask('coverage.uni-interior', tile && !outdoor),
    ask('coverage.uni-exterior', outdoor),
    ask('coverage.submerged', exposure === 'submerged'),
    ask('coverage.stone', kind === 'stone' && !thickStone),
    ask('coverage.stone-thick', thickStone),
    ask('coverage.glass', kind === 'glass'),
    ask('coverage.panel-wall', kind === 'panel' && surface === 'wall'),
    ask('coverage.panel-floor', kind === 'panel' && surface === 'floor'),
  ]);
  if (!decision) throw new Error(`No coverage rule for ${standards} ${kind} ${exposure}.`);
  return decision;
}
