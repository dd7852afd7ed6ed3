import type { CaseRow } from './case-row.ts';
import { is } from './case-row.ts';
import { IN, IN2 } from './check.ts';
import { alike, judged } from './jobs.ts';

const failed = (input: Parameters<typeof judged>[0]): string =>
  judged(input)
    .limits.filter((one) => !one.holds && !one.advice)
    .map((one) => one.name)
    .join(' ');
const clean = alike(3, { coverage: 0.05 });

/** Cases about tiles that were lifted, and what they say of the work. */
export const casesOfJudging: readonly CaseRow[] = [
  {
    told: 'Glass cracked on 3/4 in spots of thin-set',
    asks: 'judgement',
    note: 'Share covered by spots is not told: 0.4.',
    answers: () => {
      const spots = {
        kind: 'glass',
        bedMm: 0.75 * IN,
        pulls: alike(3, { coverage: 0.4 }),
        signs: { ridges: 'dabs' },
      };
      return [is('verdict', judged(spots).verdict, 'fail'), is('fails on', failed(spots), 'coverage bed-most')];
    },
  },
  {
    told: 'Plank loose, ridges intact on the slab, backs clean, clips throughout',
    asks: 'cause',
    answers: () => {
      const [first, second] = judged({ pulls: clean, signs: { mortarOn: 'floor', ridges: 'standing' } }).causes;
      return [
        is('first cause', first?.name ?? '', 'skinned'),
        is('second cause', second?.name ?? '', 'not-embedded'),
        ...['Spread less', 'dampen', 'collapse', 'lift', 'clips'].map((word) =>
          is(`action says “${word}”`, first?.action.includes(word) ?? false, true),
        ),
      ];
    },
  },
  {
    told: 'Cut tiles come up spotless',
    asks: 'cause',
    answers: () => [
      is('first cause', judged({ pulls: clean, signs: { cutTilesOnly: true } }).causes[0]?.name ?? '', 'wet-back'),
    ],
  },
  {
    told: 'No mortar left on a slab with curing compound',
    asks: 'cause',
    answers: () => {
      const [first] = judged({ pulls: alike(3, { coverage: 0.95 }), signs: { mortarOn: 'tile' } }).causes;
      return [
        is('first cause', first?.name ?? '', 'sealed-base'),
        is('drops of water named', first?.action.includes('drops of water') ?? false, true),
      ];
    },
  },
  {
    told: 'A hollow mall floor that was perfectly bonded',
    asks: 'judgement',
    answers: () => {
      const heard = judged({ hollowSound: true, overMembrane: true, pulls: [] });
      const lifted = judged({ hollowSound: true, overMembrane: true, pulls: alike(3, { coverage: 0.9 }) });
      return [
        is('by sound alone', heard.verdict, 'not-enough'),
        is(
          'lift first',
          heard.findings.some((one) => one.says.includes('lift before judging')),
          true,
        ),
        is('lifted and full', lifted.verdict, 'pass'),
      ];
    },
  },
  {
    told: 'Stone of 3/8 and 3/4 in, dry and wet',
    asks: 'judgement',
    answers: () => {
      const stone = (thicknessMm: number, exposure: string, coverage: number, areaIn2: number, toCorner: number) =>
        judged({
          kind: 'stone',
          material: 'stone',
          thicknessMm,
          exposure,
          pulls: alike(3, {
            coverage,
            voids: [{ areaMm2: areaIn2 * IN2, toCornerMm: toCorner * IN, toEdgeMm: toCorner * IN }],
          }),
        }).verdict;
      return [
        is('3/8 in dry, 92 %, 1.5 in² in the middle', stone(0.375 * IN, 'interior-dry', 0.92, 1.5, 6), 'fail'),
        is('3/4 in dry, 85 %, 3 in² 3 in from a corner', stone(0.75 * IN, 'interior-dry', 0.85, 3, 3), 'pass'),
        is('the same wet', stone(0.75 * IN, 'interior-wet', 0.85, 3, 3), 'fail'),
      ];
    },
  },
];
