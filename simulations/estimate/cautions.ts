import type { UnitSystem } from '../units/format.ts';
import { valueOf } from '../rules/rulebook.ts';
import { decidesIn } from '../rules/sets.ts';
import type { Area, Job } from './job-types.ts';
import { bagFromFloorKg } from './lifting.ts';
import type { AreaPlan, Finding } from './plan-types.ts';
import { finding, ruleFinding, type Speaker, valueIn } from './say-finding.ts';
import { isMosaic, isPanel, tileKgM2 } from './tile-facts.ts';
import { words } from './words/en.ts';

/** What can hurt on this job as a whole: powder, wet mortar, saw, bags. */
export function jobCautions(job: Job, say: Speaker, units: UnitSystem): Finding[] {
  const limit = bagFromFloorKg();
  const { bagKg } = job.mortar;
  const heavy = bagKg > limit;
  const cut = job.areas.some((area) => !isMosaic(area.tile));
  return [
    ruleFinding('safety.silica', 'warn', units),
    ruleFinding('safety.mixing-dust', 'note', units),
    ruleFinding('safety.cement', 'warn', units),
    ...(decidesIn('safety.chromium', job.standards) ? [ruleFinding('safety.chromium', 'note', units)] : []),
    finding(
      'safety.lifting',
      heavy ? 'warn' : 'note',
      say(heavy ? words.liftBag : words.liftBagFine, { bag: valueIn(bagKg, 'kg'), limit: valueIn(limit, 'kg') }),
    ),
    ...(cut ? [ruleFinding('safety.saw', 'warn', units), ruleFinding('set.wet-back', 'note', units)] : []),
    ...(job.areas.some((area) => area.surface === 'floor') ? [ruleFinding('safety.knees', 'note', units)] : []),
  ];
}

/** What can hurt in one area. */
export function areaCautions(area: Area, kind: AreaPlan['mortarKind'], say: Speaker, units: UnitSystem): Finding[] {
  const { tile } = area;
  const heated = area.heated || area.membrane === 'heated-mat';
  const tileKg = (tileKgM2(tile) * tile.lengthMm * tile.widthMm) / 1e6;
  return [
    ...(kind === 'epoxy' ? [ruleFinding('safety.epoxy', 'warn', units)] : []),
    ...(heated
      ? [
          ruleFinding('safety.heat', 'warn', units),
          ruleFinding('heat.protect', 'warn', units),
          ruleFinding('heat.resistance', 'note', units),
        ]
      : []),
    ...(isPanel(tile) ? [ruleFinding('safety.panels', 'warn', units), ruleFinding('panel.crew', 'note', units)] : []),
    ...(tileKg > valueOf('safety.lifting', 'load') && !isPanel(tile)
      ? [finding('safety.lifting', 'warn', say(words.panelLift, { weight: valueIn(tileKg, 'kg') }))]
      : []),
  ];
}
