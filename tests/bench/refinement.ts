/** Coverage with finer and finer cells: the table of MODEL.md ("Convergence"), computed again. */
import {
  coverageAt,
  crossings,
  deepQuarters,
  eights,
  halves,
  press,
  quarters,
  type RefinedBed,
  slide,
  steadyBeds,
  swirls,
} from '../reference/refined-beds.ts';
import type { Section } from './section.ts';

const CELLS_A_PITCH = [8, 12, 16, 24];
const COMBS = 12;

const one = (bed: RefinedBed): RefinedBed[] => [bed];
const many = (bed: RefinedBed, ways: Partial<RefinedBed>[]): RefinedBed[] => ways.map((way) => ({ ...bed, ...way }));
const light = [press(10), slide(10, 0)];

const beds: [string, RefinedBed[]][] = [
  ...steadyBeds.map(([name, bed]): [string, RefinedBed[]] => [name, one(bed)]),
  ['deep quarter-inch, crowned 2 mm, moved until nearly full', one({ ...deepQuarters, bowMm: 2 })],
  ['the same, dished 2 mm', one({ ...deepQuarters, bowMm: -2 })],
  ['half-inch swirl, pressed', one({ ...halves, pattern: 'swirl', actions: [press(60)] })],
  ['half-inch swirl, moved', one({ ...halves, pattern: 'swirl', actions: [press(60), slide(60, 0)] })],
  ['the mean of twelve such swirls', many({ ...halves, actions: [press(60), slide(60, 0)] }, swirls(COMBS))],
  ['twelve quarter-inch swirls, moved', many({ ...quarters, actions: [press(23), slide(23, 0)] }, swirls(COMBS))],
  ['crossed, moved by a light hand, twelve directions', many({ ...eights, actions: light }, crossings(COMBS))],
  [
    'crossed, moved by a hard hand, twelve directions',
    many({ ...eights, actions: [press(40), slide(40, 0)] }, crossings(COMBS)),
  ],
];

export const refinementSection = (): Section => ({
  title: 'Bed solver: coverage by cells to a pitch',
  says: '8 mm notches under 152 mm, half-inch ones under 203 mm, quarter-inch ones under 152 mm, 500 Pa; the deep quarter-inch notch, 3/8 in, under 203 mm at 700 Pa. `furthest`: the furthest that one of twelve combs at 8 cells lies from its own value at 24. What must hold is tested in `tests/reference/bed-refinement.test.ts`.',
  rows: beds.map(([bed, ways]) => {
    const found = CELLS_A_PITCH.map((cells) => ways.map((way) => coverageAt(way, cells)));
    const means = found.map((values) => values.reduce((sum, value) => sum + value, 0) / values.length);
    const [coarse = [], finest = []] = [found[0], found.at(-1)];
    const furthest = Math.max(...coarse.map((value, n) => Math.abs(value - finest[n]!)));
    return {
      bed,
      ...Object.fromEntries(CELLS_A_PITCH.map((cells, n) => [`at ${cells}`, means[n]!.toFixed(4)])),
      furthest: furthest.toFixed(4),
    };
  }),
});
