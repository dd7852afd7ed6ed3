import type { AreaPlan, ExplainedDecision } from '@sim/estimate/plan-types.ts';
import type { Subject } from '@sim/rules/order.ts';
import type { RuleId } from '@sim/rules/rulebook.ts';
import { formatGap, formatLength, formatShare, type UnitSystem } from '@sim/units/format.ts';
import { sayValue } from '@sim/rules/say.ts';
import { plainNumber } from '@sim/units/plain-number.ts';
import { formatBar, formatSpan } from '@sim/units/span.ts';
import type { plan as words } from '@site/messages/en/plan.ts';

type Words = typeof words;
export type LineId = keyof Words['lines'];
export type SectionId = keyof Words['sections'];

/** One line of a plan: what to do in a few words, why in sentences, and the rules that say so. */
export interface PlanLine {
  readonly id: LineId;
  readonly value: string;
  readonly says: readonly string[];
  readonly rules: readonly RuleId[];
  readonly decision?: ExplainedDecision;
}

export interface PlanSection {
  readonly id: SectionId;
  readonly lines: readonly PlanLine[];
}

const joined = (parts: readonly string[], by = ', '): string => parts.filter((part) => part !== '').join(by);

/** Litres as a shop counts them, or US quarts. */
export const volume = (litres: number, units: UnitSystem): string =>
  units === 'imperial' ? `${plainNumber(litres / 0.946353)} qt` : `${plainNumber(litres)} L`;
/** Kilograms or pounds of powder. */
export const mass = (kilograms: number, units: UnitSystem): string =>
  units === 'imperial' ? `${plainNumber(kilograms / 0.45359237)} lb` : `${plainNumber(kilograms)} kg`;

/** The lines of an area's plan, in the order of the work. */
export function planSections(area: AreaPlan, units: UnitSystem, words: Words): PlanSection[] {
  const length = (mm: number): string => formatLength(mm, units);
  const gap = (mm: number): string => formatGap(mm, units);
  const decisionOf = (subject: Subject): ExplainedDecision | undefined =>
    area.decisions.find((one) => one.subject === subject);
  const line = (
    id: LineId,
    value: string,
    says: readonly string[],
    rules: readonly RuleId[],
    subject?: Subject,
  ): PlanLine => {
    const decision = subject ? decisionOf(subject) : undefined;
    return { id, value, says, rules, ...(decision ? { decision } : {}) };
  };
  return [
    { id: 'before', lines: before(area, line, units, words) },
    {
      id: 'trowel',
      lines: [
        line('notch', area.notch.label, [area.notchSays], ['bed.need', 'trowel.no-standard'], 'notch'),
        line(
          'comb',
          joined([words.along[area.comb.along], words.angle(area.comb.angleDeg)]),
          [area.comb.says],
          area.comb.along === 'cable' ? ['comb.cable'] : ['comb.short-side', 'comb.straight', 'trowel.angle'],
        ),
        ...(area.flattenRidges
          ? [
              line(
                'ridges',
                words.ridges,
                [],
                area.mortarColour === 'white-for-glass' ? ['glass.flatten'] : ['mosaic.flatten'],
              ),
            ]
          : []),
        line('back', words.butter[area.butterHow], [area.butterSays], ['butter.size', 'butter.for-95']),
        line(
          'method',
          joined([words.method[area.method], area.travelMm > 0 ? words.travel(length(area.travelMm)) : '']),
          [area.methodSays],
          area.travelMm > 0 ? ['set.across', 'set.travel'] : ['set.long-edge'],
        ),
      ],
    },
    {
      id: 'bed',
      lines: [
        line('coverage', formatShare(area.minCoverage), [], [], 'coverage'),
        line(
          'predicted',
          words.expected(
            formatShare(area.predicted.low),
            formatShare(area.predicted.median),
            formatShare(area.predicted.high),
          ),
          [words.chance(formatShare(area.predicted.chanceOfPass), area.predicted.draws)],
          ['model.draws', 'model.pressing'],
        ),
        line(
          'meanBed',
          words.bedLine(gap(area.meanBedMm), gap(area.bedLimitMm.least), length(area.bedLimitMm.most)),
          [],
          ['bed.least', area.mortarKind === 'large-and-heavy' ? 'bed.most-heavy' : 'bed.most-thin-set'],
        ),
      ],
    },
    { id: 'joints', lines: joints(area, line, units, words) },
    { id: 'mortar', lines: mortar(area, line, units, words) },
    {
      id: 'while',
      lines: [
        line(
          'ahead',
          words.tilesAhead(area.spreadAhead),
          [area.spreadSays],
          ['time.ahead', 'time.weather', 'time.no-skin'],
        ),
        line(
          'pull',
          words.pull(area.pull.tiles, area.pull.of),
          [area.pull.says],
          ['sampling.tiles', 'sampling.routine'],
        ),
      ],
    },
  ];
}

type MakeLine = (
  id: LineId,
  value: string,
  says: readonly string[],
  rules: readonly RuleId[],
  subject?: Subject,
) => PlanLine;

function before(area: AreaPlan, line: MakeLine, units: UnitSystem, words: Words): PlanLine[] {
  const { flatnessRequired: flat } = area;
  const met = flat.met === null ? words.met.unknown : flat.met ? words.met.yes : words.met.no;
  const pairs = [words.flat(formatLength(flat.dipMm, units), formatSpan(flat.overMm, units))];
  if (flat.shortDipMm !== null && flat.shortOverMm !== null)
    pairs.push(words.flat(formatLength(flat.shortDipMm, units), formatBar(flat.shortOverMm, units)));
  return [line('flatness', `${joined(pairs)}: ${met}`, [flat.says], [flat.rule, 'flatness.first'], 'flatness')];
}

function joints(area: AreaPlan, line: MakeLine, units: UnitSystem, words: Words): PlanLine[] {
  const { movement } = area;
  return [
    line('joint', formatLength(area.minJointMm, units), [], [], 'joint'),
    line(
      'offset',
      area.decisions.some((one) => one.subject === 'offset') ? formatShare(area.maxOffsetShare) : words.noLimit,
      [],
      ['offset.third'],
      'offset',
    ),
    line(
      'lippage',
      words.lippage(formatLength(area.maxLippageMm, units), formatGap(area.expectedLippageMm, units)),
      [],
      ['lippage.bow', 'lippage.actual'],
      'lippage',
    ),
    line(
      'movement',
      words.movement(formatSpan(movement.leastMm, units), formatSpan(movement.mostMm, units)),
      [movement.says],
      [movement.rule, 'movement.where'],
    ),
    ...(area.wallKgM2 === null
      ? []
      : [
          line(
            'wall',
            sayValue({ value: area.wallKgM2, unit: 'kg/m²' }, units),
            [],
            ['substrate.wall-limits', 'tile.weights'],
          ),
        ]),
  ];
}

function mortar(area: AreaPlan, line: MakeLine, units: UnitSystem, words: Words): PlanLine[] {
  const { bags, batches } = area;
  const { partBag } = batches;
  return [
    line(
      'mortarKind',
      joined([words.mortar[area.mortarKind], words.colour[area.mortarColour]]),
      [area.mortarSays],
      ['class.heavy'],
      'mortar',
    ),
    // A tile on its one bed needs no list.
    ...(area.layers.length < 2
      ? []
      : [
          line(
            'layers',
            area.layers
              .map((layer) => `${words.layerNames[layer.name]} ${formatGap(layer.thicknessMm, units)}`)
              .join('; '),
            [],
            [...new Set(area.layers.map((layer) => layer.rule))],
          ),
        ]),
    line(
      'bags',
      words.bagCount(bags.plan) + words.bagRange(bags.low, bags.high),
      [],
      ['mortar.density', 'mortar.water', 'waste.mortar', 'bags.round-up', 'bags.spread'],
    ),
    line('label', words.bagCount(bags.labelWouldSay), [bags.whyDiffers], ['rate.label']),
    line(
      'batches',
      `${batches.count} × ${mass(batches.powderKg, units)} + ${volume(batches.waterL, units)}`,
      [batches.says],
      ['time.pot-life', 'mortar.part-bag'],
    ),
    ...(partBag.powderKg > 0
      ? [
          line(
            'partBag',
            `${mass(partBag.powderKg, units)} + ${volume(partBag.waterL, units)}`,
            [],
            ['mortar.part-bag'],
          ),
        ]
      : []),
  ];
}
