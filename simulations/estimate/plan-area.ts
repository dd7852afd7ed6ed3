import { ruleById, valueOf } from '../rules/rulebook.ts';
import { sayRule } from '../rules/say.ts';
import type { UnitSystem } from '../units/format.ts';
import { predictDone } from './as-done.ts';
import { assemblyFindings } from './assembly-findings.ts';
import { areaCautions } from './cautions.ts';
import { planCoverage } from './coverage-plan.ts';
import { explain } from './explain.ts';
import { planFlatness } from './floor-plan.ts';
import type { Area, Job } from './job-types.ts';
import { planJoints } from './joint-plan.ts';
import { layerRecipes, litresPerM2 } from './layers.ts';
import { chooseMortar } from './mortar-kind.ts';
import { movementJoints } from './movement.ts';
import { planNotch } from './notch-plan.ts';
import { bedAt } from './notches.ts';
import type { AreaPlan, Finding } from './plan-types.ts';
import { predict, type SettingChoice } from './predict.ts';
import { finding, lengthValue, ruleFinding, type Speaker, valueIn } from './say-finding.ts';
import { butterByRule, combDirection, methodFor } from './setting.ts';
import type { SpreadOptions } from './spread/spread.ts';
import { isJointFrom } from './joint-limits.ts';
import { isMosaic } from './tile-facts.ts';
import { planWall } from './wall-load.ts';
import { words } from './words/en.ts';
import { planBags, planBatches, planLayers, planPull, planSpread } from './work-plan.ts';

/** What an area is planned with. */
export interface AreaContext {
  job: Job;
  say: Speaker;
  units: UnitSystem;
  spread: SpreadOptions;
}

/** Tiles to buy for, and to lift from: whole ones that cover the area with their joints. */
const tileCount = ({ areaM2, jointMm, tile }: Area): number =>
  Math.max(1, Math.round((areaM2 * 1e6) / ((tile.lengthMm + jointMm) * (tile.widthMm + jointMm))));

/** Butter by rule where one speaks; else where the prediction without it is not sure enough. */
function planButter(area: Area, setting: Omit<SettingChoice, 'butterHow'>, { job, spread }: AreaContext) {
  const byRule = butterByRule(area, job.standards);
  if (byRule) {
    const choice = { ...setting, butterHow: byRule.how };
    return { ...byRule, predicted: predict(area, job, choice, spread) };
  }
  const bare = predict(area, job, { ...setting, butterHow: 'none' }, spread);
  if (bare.chanceOfPass >= valueOf('butter.unsure', 'share'))
    return { how: 'none' as const, rule: 'butter.for-95' as const, predicted: bare };
  return {
    how: 'flat' as const,
    rule: 'butter.unsure' as const,
    predicted: predict(area, job, { ...setting, butterHow: 'flat' }, spread),
  };
}

/** How the blade is held, in words. */
const heldAt = (angleDeg: number, say: Speaker): string =>
  angleDeg >= valueOf('trowel.upright', 'upright')
    ? words.upright
    : say(words.orSteeper, { angle: valueIn(angleDeg, '°') });

/** Plans one area: every line of its sheet, with the rule behind it. */
export function planArea(area: Area, context: AreaContext): AreaPlan {
  const { job, say, units } = context;
  const { standards } = job;
  const { tile } = area;
  const mosaic = isMosaic(tile);
  const coverage = planCoverage(area, job, say);
  const minCoverage = coverage.decision.value;
  const mortar = chooseMortar(area, job.instructions);
  const coated = (butterByRule(area, standards)?.how ?? 'none') !== 'none';
  const notch = planNotch({ area, standards, minCoverage, mostMm: mortar.mostMm, coated }, job, say);
  const setting = methodFor(area, notch.notch);
  const spread = planSpread(area, job, say);
  const way = {
    notch: notch.notch,
    angleDeg: notch.angleDeg,
    flatten: notch.flattenRidges,
    method: setting.method,
    travelMm: setting.travelMm,
    swirled: false,
    light: false,
    openMin: spread.openMin,
    minCoverage,
  };
  const butter = planButter(area, way, context);
  const asPlanned = { setting: { ...way, butterHow: butter.how }, predicted: butter.predicted, coatRule: butter.rule };
  const asDone = predictDone(area, job, asPlanned, context.spread, say);
  const recipes = layerRecipes(area, standards, notch.notch, butter.how);
  const layers = planLayers(recipes, area.areaM2);
  const meanBedMm = bedAt(notch.notch, notch.angleDeg);
  const coatMm = layers.find((layer) => layer.name === 'back-coat')?.thicknessMm ?? 0;
  const floor = planFlatness(area, standards, { meanMm: meanBedMm + coatMm, mostMm: mortar.mostMm }, say, units);
  const joints = planJoints(area, standards, say, units);
  const movement = movementJoints(area, standards);
  const wall = planWall(area, litresPerM2(recipes, valueOf('bags.spread', 'low'), 0.5), say);
  const direction = combDirection(area);
  const tiles = tileCount(area);
  const findings: Finding[] = [
    ...coverage.findings,
    ...notch.findings,
    ...floor.findings,
    ...joints.findings,
    ...assemblyFindings(area, layers, say, units),
    ...settingFindings(area, { setting, mortar, meanBedMm, coatMm, predicted: asDone.predicted, minCoverage }, context),
    ...asDone.findings,
    ...wall.findings,
    ...spread.findings,
    ...areaCautions(area, mortar.kind, say, units),
  ];
  return {
    name: area.name,
    areaM2: area.areaM2,
    tiles,
    notch: notch.notch,
    notchSays: notch.notchSays,
    bedNeedMm: notch.bedNeedMm,
    alternatives: notch.alternatives,
    rejected: notch.rejected,
    overridden: notch.overridden,
    comb: {
      directionDeg: direction.directionDeg,
      along: direction.along,
      angleDeg: notch.angleDeg,
      keyCoat: true,
      says: say(
        { 'short-side': words.combShort, 'either-side': words.combSquare, cable: words.combCable }[direction.along],
        { held: heldAt(notch.angleDeg, say) },
      ),
    },
    butterBack: butter.how !== 'none',
    butterHow: butter.how,
    butterSays: mosaic
      ? words.butterMosaic
      : { none: words.butterNone, flat: words.butterFlat, combed: words.butterCombed }[butter.how],
    flattenRidges: notch.flattenRidges,
    method: setting.method,
    methodSays: say(words.methods[setting.method], { travel: lengthValue(setting.travelMm) }),
    travelMm: setting.travelMm,
    mortarKind: mortar.kind,
    mortarColour: mortar.colour,
    mortarSays:
      say(words.mortar[mortar.kind], { most: lengthValue(mortar.mostMm) }) +
      { any: '', white: words.mortarWhite, 'white-for-glass': words.mortarGlass }[mortar.colour],
    bedLimitMm: { least: valueOf('bed.least', 'bed'), most: mortar.mostMm },
    minCoverage,
    predicted: asDone.predicted,
    done: asDone.done,
    meanBedMm,
    minJointMm: joints.minJointMm,
    maxOffsetShare: joints.maxOffsetShare,
    maxLippageMm: joints.maxLippageMm,
    expectedLippageMm: joints.expectedLippageMm,
    flatnessRequired: floor.flatness,
    layers,
    bags: planBags(area, recipes, job, say),
    batches: planBatches(area, recipes, job, say),
    spreadAhead: spread.spreadAhead,
    openMin: spread.openMin,
    spreadSays: spread.spreadSays,
    movement: {
      leastMm: movement.leastMm,
      mostMm: movement.mostMm,
      rule: movement.decision.rule,
      says: say(words.movement, {
        least: lengthValue(movement.leastMm, 'span'),
        most: lengthValue(movement.mostMm, 'span'),
      }),
    },
    wallKgM2: wall.kgM2,
    pull: planPull(tiles, say),
    decisions: [coverage.decision, floor.decision, ...joints.decisions, movement.decision].map((one) =>
      explain(one, units),
    ),
    findings: [
      ...findings,
      finding(direction.rule, 'note', sayRule(ruleById(direction.rule), units)),
      ...(butter.how === 'none' ? [] : [ruleFinding(butter.rule, 'note', units)]),
      ruleFinding(setting.rule, 'note', units),
      ruleFinding('comb.key-coat', 'note', units),
      ruleFinding('comb.to-the-line', 'note', units),
      ruleFinding('time.finger', 'note', units),
      ruleFinding('movement.where', 'note', units),
      ruleFinding('sampling.tiles', 'note', units),
      finding('model.draws', 'note', words.honest),
    ],
  };
}

interface SettingFacts {
  setting: ReturnType<typeof methodFor>;
  mortar: ReturnType<typeof chooseMortar>;
  meanBedMm: number;
  coatMm: number;
  predicted: AreaPlan['predicted'];
  minCoverage: number;
}

function settingFindings(area: Area, facts: SettingFacts, { say }: AreaContext): Finding[] {
  const { setting, mortar, meanBedMm, coatMm, predicted, minCoverage } = facts;
  const found: Finding[] = [];
  const narrow = !isJointFrom(area.jointMm, setting.travelMm);
  if (setting.method === 'slide' && narrow)
    found.push(
      finding(
        'set.joint-limits',
        'warn',
        say(words.narrowJoint, { joint: lengthValue(area.jointMm), travel: lengthValue(setting.travelMm) }),
      ),
    );
  if (meanBedMm + coatMm > mortar.mostMm + 1e-6)
    found.push(
      finding(
        mortar.kind === 'large-and-heavy' ? 'bed.most-heavy' : 'bed.most-thin-set',
        'warn',
        say(words.thickBed, { bed: lengthValue(meanBedMm + coatMm, 'gap'), most: lengthValue(mortar.mostMm) }),
      ),
    );
  if (mortar.overridden)
    found.push(
      finding(
        'coverage.maker',
        'warn',
        say(words.mortarMaker, { kind: words.kinds[mortar.kind], ours: words.kinds[mortar.overridden] }),
      ),
    );
  if (predicted.chanceOfPass < valueOf('butter.unsure', 'share'))
    found.push(
      finding(
        'model.draws',
        'warn',
        say(isMosaic(area.tile) ? words.lowChanceMosaic : words.lowChance, {
          chance: valueIn(predicted.chanceOfPass, 'share'),
          need: valueIn(minCoverage, 'share'),
        }),
      ),
    );
  return found;
}
