import { airPathMm, bareStripContact, crownContact, dabContact, restingContact } from '@sim/estimate/contact.ts';
import { bedAt, nameNotch } from '@sim/estimate/notches.ts';
import type { AreaPlan } from '@sim/estimate/plan-types.ts';
import { riseInJoints } from '@sim/mortar/squeeze-up.ts';
import { valueOf } from '@sim/rules/rulebook.ts';
import { between, is, type CaseRow } from './case-row.ts';
import { FT2, IN } from './check.ts';
import { areaOf, oblong, square } from './jobs.ts';

export const notchOf = (width: number, depth: number, shape: 'square' | 'v' = 'square') =>
  nameNotch({ shape, widthMm: width * IN, depthMm: depth * IN, toothMm: shape === 'v' ? 0 : width * IN });
type Named = ReturnType<typeof notchOf>;
/** A job whose notch is told, not chosen. */
export const withNotch = ({ shape, widthMm, depthMm, toothMm }: Named) => ({
  instructions: { notch: { shape, widthMm, depthMm, toothMm } },
});
export const says = (plan: AreaPlan, rule: string, severity: string): boolean =>
  plan.findings.some((one) => one.rule === rule && one.severity === severity);

const quarter = notchOf(1 / 4, 1 / 4);
const half = notchOf(1 / 2, 1 / 2);

/** Cases about what the bed comes to under the tile. */
export const casesOfBed: readonly CaseRow[] = [
  {
    told: '13 in porcelain, at most a 1/4 × 1/4, swirled, no back coat: most tiles under 40 %',
    asks: 'plan',
    note: 'Movement and push are not told: rule model.untold takes a light hand and no movement. Leaned on and not moved the model sees more, which fails the floor too.',
    answers: () => {
      const under = { membrane: 'backer-board', substrate: 'plywood' };
      const done = (technique: object) =>
        areaOf(
          square(13),
          { ...under, technique: { comb: 'swirl', bareBack: true, ...technique } },
          withNotch(quarter),
        );
      const light = done({});
      return [
        between('coverage as told', light.predicted.median, 0.25, 0.65),
        between('coverage, leaned on and not moved', done({ press: 'usual', moveMm: 0 }).predicted.median, 0.25, 0.8),
        is('swirls named', says(light, 'comb.straight', 'warn'), true),
        is('board’s own bed asked for', says(light, 'board.bed', 'note') || says(light, 'board.bed', 'warn'), true),
        is(
          'stiffness asked for',
          light.findings.some((one) => one.rule === 'substrate.stiffness'),
          true,
        ),
      ];
    },
  },
  {
    told: '5/32 or 3/16 in V ridges left standing under wet mosaic: 8–12 % contact',
    asks: 'plan',
    answers: () => {
      const vee = notchOf(3 / 16, 5 / 32, 'v');
      const plan = areaOf({ ...square(1), thicknessMm: 6 }, { exposure: 'interior-wet' });
      return [
        between('contact of standing ridges', restingContact(vee, 45, 0.5), 0.05, 0.25),
        between('bed when crushed, blade at 45°, mm', bedAt(vee, 45), 1.2, 2),
        is('notch', plan.notch.label, '1/4 × 1/4 in square'),
        is('ridges levelled', plan.flattenRidges, true),
        is('V refused for', plan.rejected.find((one) => one.notch.shape === 'v')?.rule ?? 'nothing', 'bed.least'),
      ];
    },
  },
  {
    told: 'Mesh sheets in a shower on a 1/4 × 3/8: mortar up in the joints',
    asks: 'plan',
    note: 'Size of the pieces and thickness (1 in, 6 mm) are ours.',
    answers: () => {
      const bed = { combedMm: bedAt(notchOf(1 / 4, 3 / 8), 45), bedMm: valueOf('bed.least', 'bed'), jointMm: IN / 8 };
      const rise = riseInJoints({ ...bed, pieceLengthMm: IN, pieceWidthMm: IN });
      const plan = areaOf(
        { ...oblong(2, 1), material: 'ceramic', thicknessMm: 6 },
        { surface: 'wall', exposure: 'interior-wet', substrate: 'cement-board', jointMm: IN / 8 },
      );
      return [
        between('rise, share of the tile', rise / 6, 0.6, 1.1),
        is('notch', plan.notch.label, '1/4 × 1/4 in square'),
        is(
          'no V offered',
          plan.alternatives.every((one) => one.shape !== 'v'),
          true,
        ),
      ];
    },
  },
  {
    told: 'Tiles that merely rest on equal square ridges: about 50 %',
    asks: 'coverage',
    answers: () => [
      between('contact by geometry', restingContact(quarter, 45, 0.5), 0.4, 0.6),
      is('fails a dry floor', restingContact(quarter, 45, 0.5) < valueOf('coverage.dry', 'share'), true),
    ],
  },
  {
    told: '1/2 in notch, 1/8 in joint, slid only a little: long straight voids',
    asks: 'plan',
    note: 'Size and push are not told: 24 × 24 in, and rule model.untold takes a light hand. Leaned on over the whole 1/8 in the model sees five points over the band; its low end lies in it.',
    answers: () => {
      const plan = areaOf(
        square(24),
        { jointMm: IN / 8, technique: { moveMm: IN / 8, bareBack: true } },
        withNotch(half),
      );
      const leaned = areaOf(
        square(24),
        { jointMm: IN / 8, technique: { press: 'usual', moveMm: IN / 8, bareBack: true } },
        withNotch(half),
      );
      return [
        between('travel asked for, mm', plan.travelMm, 11.7, 13.7),
        is('joint named', says(plan, 'set.joint-limits', 'warn'), true),
        between('coverage as told', plan.predicted.median, 0.5, 0.8),
        between('low end, leaned on', leaned.predicted.low, 0.5, 0.8),
      ];
    },
  },
  {
    told: '12 in porcelain with a deep back pattern on a 3/8 in notch: poor contact',
    asks: 'plan',
    note: 'Depth of the pattern is not told: 1 mm. The mortar it takes is asked for within 30 %.',
    answers: () => {
      const deep = notchOf(1 / 4, 3 / 8);
      const plan = (reliefMm: number, bareBack = false) =>
        areaOf({ ...square(12), reliefMm }, { technique: { bareBack } }, withNotch(deep));
      const litres = (one: AreaPlan): number => one.layers.find((layer) => layer.name === 'back-coat')?.litres ?? 0;
      return [
        between('bed that 1 mm takes, share', 1 / bedAt(deep, 45), 0.3 * 0.7, 0.3 * 1.3),
        is('prediction falls', plan(1, true).predicted.median < plan(0, true).predicted.median - 0.03, true),
        is('a coat is asked for', plan(1).butterBack, true),
        between('its mortar, litres a m²', litres(plan(1)) / 10, 1, 2.5),
      ];
    },
  },
  {
    told: '12 × 48 wall tile: which way to comb',
    asks: 'plan',
    answers: () => {
      const tile = { lengthMm: 48 * IN, widthMm: 12 * IN };
      const plan = areaOf(oblong(48, 12), { surface: 'wall', substrate: 'cement-board' });
      return [
        is('along', plan.comb.along, 'short-side'),
        between('ratio of the air’s ways out', airPathMm(tile, 0) / airPathMm(tile, 90), 4, 4),
      ];
    },
  },
  {
    told: 'Half an inch kept bare along two edges of a 12 × 12',
    asks: 'coverage',
    answers: () => [
      between(
        'most contact there can be',
        bareStripContact({ lengthMm: 12 * IN, widthMm: 12 * IN }, IN / 2, { along: 1, across: 1 }),
        0.908,
        0.928,
      ),
    ],
  },
  {
    told: '18 in porcelain on five dabs, 735 ft²',
    asks: 'coverage',
    note: 'Dabs the size of a golf ball, 41 cm³, pressed to 1/8 and 1/4 in.',
    answers: () => [
      between('contact at 1/4 in', dabContact(5, 41_000, IN / 4, (18 * IN) ** 2), 0.1, 0.4),
      between('contact at 1/8 in', dabContact(5, 41_000, IN / 8, (18 * IN) ** 2), 0.1, 0.4),
      between('tiles', areaOf(square(18), { areaM2: 735 * FT2 }).tiles, 320, 335),
    ],
  },
  {
    told: '6 × 36 plank, crowned, on a 1/4 × 1/4: empty in the middle',
    asks: 'plan',
    note: 'Crown 1.3 mm and mean gap 2.8 mm are the case’s own assumptions.',
    answers: () => {
      const plan = areaOf(oblong(36, 6));
      return [
        between('contact at the crown', crownContact(bedAt(quarter, 45), 2.8, 1.3), 0.5, 0.8),
        is('1/4 × 1/4 refused for', plan.rejected.find((n) => n.notch.label === quarter.label)?.rule ?? '', 'bed.need'),
        is('mortar', plan.mortarKind, 'large-and-heavy'),
        is('a coat is asked for', plan.butterBack, true),
      ];
    },
  },
];
