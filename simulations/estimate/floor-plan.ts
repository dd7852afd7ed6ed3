import type { StandardSet } from '../rules/rule.ts';
import type { Decision } from '../rules/decide.ts';
import { valueOf } from '../rules/rulebook.ts';
import { decidesIn } from '../rules/sets.ts';
import type { Area } from './job-types.ts';
import { dipAllowed, flatnessToReach } from './flatness.ts';
import type { Finding, Flatness } from './plan-types.ts';
import { finding, lengthValue, ruleFinding, type Speaker } from './say-finding.ts';
import type { UnitSystem } from '../units/format.ts';
import { isLarge, isOutdoor } from './tile-facts.ts';
import { words } from './words/en.ts';

/** A reading on a straightedge is no finer than this, mm. */
const READING_MM = 0.1;

/** Flatness first: what the floor must be, whether it is, and what to do about it. */
export function planFlatness(
  area: Area,
  standards: StandardSet,
  bed: { meanMm: number; mostMm: number },
  say: Speaker,
  units: UnitSystem,
): { flatness: Flatness; decision: Decision; findings: Finding[] } {
  const { decision, limit } = flatnessToReach(area, standards);
  const allowed = dipAllowed(limit, area.flatnessOverMm);
  const found = area.flatnessMm;
  const met = found === null ? null : found <= allowed + READING_MM;
  const short =
    limit.shortDipMm === null || limit.shortOverMm === null
      ? ''
      : say(words.flatnessShort, { dip: lengthValue(limit.shortDipMm), over: lengthValue(limit.shortOverMm, 'bar') });
  const says = say(met === null ? words.flatnessUnknown : met ? words.flatnessOk : words.flatnessNot, {
    dip: lengthValue(limit.dipMm),
    over: lengthValue(limit.overMm, 'span'),
    short,
    found: lengthValue(found ?? 0),
    foundOver: lengthValue(area.flatnessOverMm, 'span'),
    allowed: lengthValue(allowed),
    patch: lengthValue(found ?? 0),
  });
  const findings: Finding[] = [];
  if (met === null) findings.push(finding(decision.rule, 'note', says));
  if (met === false) {
    findings.push(finding('bed.no-leveller', 'stop', says), ruleFinding('flatness.first', 'note', units));
    // Filling the whole dip with mortar would add it to the bed at its deepest place.
    const deepest = bed.meanMm + (found ?? 0);
    if (deepest > bed.mostMm)
      findings.push(
        finding(
          'bed.shrinks',
          'warn',
          say(words.flatnessShrink, { bed: lengthValue(deepest), most: lengthValue(bed.mostMm) }),
        ),
      );
  }
  if (decidesIn('flatness.din-large', standards) && isLarge(area.tile))
    findings.push(ruleFinding('flatness.din-large', 'note', units));
  if (isOutdoor(area) && area.surface === 'floor' && area.exposure === 'exterior') {
    const run = area.fallRunMm;
    findings.push(
      run === null
        ? ruleFinding('substrate.slope', 'note', units)
        : finding(
            'substrate.slope',
            'note',
            say(words.slope, { run: lengthValue(run, 'span'), fall: lengthValue(leastFall(run)) }),
          ),
    );
  }
  return {
    flatness: {
      rule: decision.rule,
      dipMm: limit.dipMm,
      overMm: limit.overMm,
      shortDipMm: limit.shortDipMm,
      shortOverMm: limit.shortOverMm,
      met,
      patchMm: met === false ? (found ?? 0) : 0,
      says,
    },
    decision,
    findings,
  };
}

/** Least fall of an outdoor floor over a run, mm. */
export const leastFall = (runMm: number): number =>
  (runMm * valueOf('substrate.slope', 'fall')) / valueOf('substrate.slope', 'over');
