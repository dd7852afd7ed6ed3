import { withMaker, type Decision } from '../rules/decide.ts';
import type { Area, Job } from './job-types.ts';
import { coverageToReach } from './coverage-to-reach.ts';
import type { Finding } from './plan-types.ts';
import { finding, type Speaker, valueIn } from './say-finding.ts';
import { isPanel } from './tile-facts.ts';
import { words } from './words/en.ts';

/** The coverage to reach for an area, held against a maker's written figure. */
export function planCoverage(area: Area, job: Job, say: Speaker): { decision: Decision; findings: Finding[] } {
  const { tile } = area;
  const decision = coverageToReach({
    standards: job.standards,
    exposure: area.exposure,
    surface: area.surface,
    kind: isPanel(tile) ? 'panel' : tile.material === 'stone' || tile.material === 'glass' ? tile.material : 'tile',
    thicknessMm: tile.thicknessMm,
  });
  const asked = job.instructions.minCoverage;
  if (asked === null) return { decision, findings: [] };
  const outcome = withMaker(decision, 'coverage.maker', asked);
  const values = { maker: valueIn(asked, 'share'), ours: valueIn(decision.value, 'share') };
  const findings =
    outcome.effect === 'raised'
      ? [finding('coverage.maker', 'note', say(words.makerCoverageRaised, values))]
      : outcome.effect === 'refused'
        ? [finding(decision.rule, 'warn', say(words.makerCoverageRefused, values))]
        : [];
  return { decision: outcome.decision, findings };
}
