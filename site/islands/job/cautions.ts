import type { Job } from '@sim/estimate/job.ts';
import type { Plan } from '@sim/estimate/plan-types.ts';
import { isRuleId, type RuleId, valueOf } from '@sim/rules/rulebook.ts';
import { decidesIn } from '@sim/rules/sets.ts';

/**
 * The cautions a job brings: dust and wet mortar on every job with cement, cutting where tile is cut, electrical heat
 * and panels where they are; with whatever the plan itself raised. In the order in which the work meets them.
 */
export function cautionRules(job: Job, plan: Plan): RuleId[] {
  const raised = new Set(
    [...plan.findings, ...plan.areas.flatMap((area) => area.findings)].map((finding) => String(finding.rule)),
  );
  const cement = plan.areas.some((area) => area.mortarKind !== 'epoxy');
  const brings: Record<string, boolean> = {
    'safety.mixing-dust': cement,
    'safety.silica': true,
    'safety.cement': cement,
    'safety.chromium': cement && decidesIn('safety.chromium', job.standards),
    'safety.saw': true,
    'safety.saw-table': decidesIn('safety.saw-table', job.standards),
    'safety.heat': job.areas.some((area) => area.heated || area.membrane === 'heated-mat'),
    'safety.panels': job.areas.some(
      (area) => area.tile.lengthMm * area.tile.widthMm >= valueOf('panel.size', 'area') * 1e6,
    ),
    'safety.knees': job.areas.some((area) => area.surface === 'floor'),
  };
  const also = [...raised].filter(
    (rule) => rule.startsWith('safety.') && !(rule in brings) && rule !== 'safety.lifting',
  );
  return [...Object.keys(brings).filter((rule) => brings[rule] || raised.has(rule)), ...also].filter(isRuleId);
}
