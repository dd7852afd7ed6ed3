import { bagYield } from '@sim/estimate/bags.ts';
import { leastFall } from '@sim/estimate/floor-plan.ts';
import { bedAt } from '@sim/estimate/notches.ts';
import { partBagWater } from '@sim/mortar/bag.ts';
import { lippageShare } from '@sim/tile/lippage.ts';
import { between, is, type CaseRow } from './case-row.ts';
import { notchOf, says, withNotch } from './cases-of-bed.ts';
import { FT2, IN } from './check.ts';
import { areaOf, jobOf, oblong, planOf, square } from './jobs.ts';

const quarter = notchOf(1 / 4, 1 / 4);
const bagKg = 22.7;
const made = (): number => bagYield(jobOf(square(12)).mortar).usual;

/** Cases about layout, build-up, quantities and time. */
export const casesOfJobs: readonly CaseRow[] = [
  {
    told: '8 × 36 planks, bowed, 1/4 in joints',
    asks: 'plan',
    answers: () => {
      const plan = areaOf(oblong(36, 8), { jointMm: IN / 4 });
      const note = plan.findings.find((one) => one.rule === 'lippage.wide' && one.severity === 'note');
      return [
        between('lip over the warp, mm', plan.maxLippageMm, 0.79, 1.6),
        is('boundary named', note?.says.includes('1/32') ?? false, true),
      ];
    },
  },
  {
    told: 'Half bond asked for with 12 × 24',
    asks: 'plan',
    answers: () => {
      const plan = areaOf(oblong(24, 12), { pattern: 'offset', offsetShare: 0.5 });
      return [
        is('stopped', says(plan, 'offset.third', 'stop'), true),
        between('longest offset, mm', plan.maxOffsetShare * 24 * IN, 200, 206),
      ];
    },
  },
  {
    told: 'Does a third bond cure a bowed plank?',
    asks: 'plan',
    answers: () => [
      between('lip at half', lippageShare(1 / 2), 0.95, 1.05),
      between('lip at a third', lippageShare(1 / 3), 0.84, 0.94),
      between('lip at a quarter', lippageShare(1 / 4), 0.7, 0.8),
    ],
  },
  {
    told: 'Floor out of flat packed with mortar: tiles sank',
    asks: 'plan',
    answers: () => {
      const plan = areaOf(square(24), { flatnessMm: 12, flatnessOverMm: 3048 });
      return [
        is('stopped', says(plan, 'bed.no-leveller', 'stop'), true),
        is(
          'later lips named',
          plan.findings.some((one) => one.rule === 'bed.shrinks'),
          true,
        ),
        between('thin-set’s most, mm', areaOf(square(6)).bedLimitMm.most, 6.35, 6.35),
        between('large-and-heavy’s most, mm', plan.bedLimitMm.most, 12.7, 12.7),
      ];
    },
  },
  {
    told: 'Roof deck of 22 × 77 ft failed in four years',
    asks: 'plan',
    answers: () => {
      const plan = areaOf(square(12), {
        exposure: 'exterior',
        substrate: 'plywood',
        membrane: 'backer-board',
        overRoom: true,
        fallRunMm: 22 * 304.8,
      });
      return [
        is('build-up refused', says(plan, 'exterior.gate', 'stop'), true),
        between('fall over 22 ft, mm', leastFall(22 * 304.8), 135, 145),
        between('coverage to reach', plan.minCoverage, 0.95, 0.95),
      ];
    },
  },
  {
    told: 'Cavities of an uncoupling mat filled first',
    asks: 'quantity',
    answers: () => {
      const plan = areaOf(square(18), { membrane: 'uncoupling-mat', areaM2: 1 });
      const litres = plan.layers.find((layer) => layer.name === 'cavities')?.litres ?? 0;
      return [between('powder more, kg/m²', (litres * bagKg) / made(), 1.5, 4)];
    },
  },
  {
    told: 'Backer board screwed down dry',
    asks: 'quantity',
    answers: () => {
      const plan = areaOf(
        square(6),
        { membrane: 'backer-board', substrate: 'plywood', areaM2: 20 },
        withNotch(quarter),
      );
      return [
        is('layers', plan.layers.map((layer) => layer.name).join(' '), 'under-board bed'),
        between('ft² a bag, both layers, as planned', 20 / FT2 / plan.bags.exact.plan, 32, 60),
        between('ft² a bag, both layers, at best', 20 / FT2 / plan.bags.exact.low, 32, 60),
      ];
    },
  },
  {
    told: '473 ft² of 13 in tile bought with two bags',
    asks: 'quantity',
    answers: () => {
      const plan = planOf(square(13), { areaM2: 44 }, { mortar: { bagsAtHand: 2 }, ...withNotch(quarter) });
      const alarm = plan.findings.some((one) => one.rule === 'bags.spread' && one.severity === 'stop');
      return [between('bags', plan.bags.plan, 5, 8), is('alarm', alarm, true)];
    },
  },
  {
    told: '200 ft² with a 1/4 × 3/8',
    asks: 'quantity',
    answers: () => {
      const plan = areaOf(square(12), { areaM2: 18.6 });
      return [is('notch', plan.notch.label, '1/4 × 3/8 in square'), between('bags', plan.bags.plan, 4, 4)];
    },
  },
  {
    told: 'Rates by notch, US practice',
    asks: 'quantity',
    answers: () =>
      (
        [
          [1 / 4, 1 / 4, 2.1, 3.5],
          [1 / 4, 3 / 8, 2.6, 4.7],
          [1 / 2, 1 / 2, 4.1, 7],
          [3 / 4, 3 / 4, 5.2, 9.4],
        ] as const
      ).map(([width, depth, least, most]) => {
        const notch = notchOf(width, depth);
        return between(`${notch.label}, kg/m²`, (bedAt(notch, 45) * bagKg) / made(), least, most);
      }),
  },
  {
    told: '10 kg needs 3 L, only 2 kg is wanted',
    asks: 'quantity',
    answers: () => [between('water, L', partBagWater(2, 3 / 10), 0.59, 0.61)],
  },
  {
    told: '45 to 50 minutes a tile',
    asks: 'plan',
    answers: () =>
      [45, 50].map((minPerTile) =>
        between(`tiles ahead at ${minPerTile} min`, areaOf(square(24), {}, { crew: { minPerTile } }).spreadAhead, 1, 1),
      ),
  },
];
