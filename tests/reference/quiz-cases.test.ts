import { expect, test } from 'vitest';

import { leastFall } from '@sim/estimate/floor-plan.ts';
import { tilesAhead } from '@sim/mortar/weather.ts';
import { valueOf } from '@sim/rules/rulebook.ts';
import { lippageShare } from '@sim/tile/lippage.ts';
import { meanBedMm } from '@sim/trowel/notch.ts';
import { feet, inches } from '@sim/units/length.ts';
import { bank } from '@quiz/bank.ts';
import { compose } from '@quiz/engine/compose.ts';
import { atAngle, square, vee } from '@quiz/jobs/trowels.ts';

/** Cases that practitioners have written about, in our words, and the question that asks each. */
const cases: [what: string, template: string][] = [
  ['a kitchen floor half loose: small notch, swirls, open seams', 'finding-the-cause/loose-kitchen'],
  ['V ridges left standing under mosaic', 'small-tile-and-mosaics/vee-under-a-sheet'],
  ['mesh sheets on a floor notch: mortar up in the joints', 'small-tile-and-mosaics/squeeze-up'],
  ['tiles that merely rest on their ridges', 'what-the-ridges-are-for/first-touch'],
  ['a half-inch notch and a narrow joint', 'setting/room-in-the-joint'],
  ['a deep pattern on the back', 'buttering-the-back/relief-takes'],
  ['a long wall tile: which way to comb', 'large-tile-and-panels/how-many-times-shorter'],
  ['mortar kept back from the line', 'combing/bare-strip'],
  ['a tile on five dabs', 'pulling-a-tile/five-dabs'],
  ['hollow tiles counted on that floor', 'how-much-to-buy/tiles-on-a-floor'],
  ['glass on thick spots', 'small-tile-and-mosaics/glass-on-its-bed'],
  ['ridges intact, backs clean, clips throughout', 'finding-the-cause/what-to-do-next-time'],
  ['cut tiles come up spotless', 'finding-the-cause/read-the-signs'],
  ['no mortar left on a sealed slab', 'finding-the-cause/test-that-settles-it'],
  ['a hollow floor that was well bonded', 'pulling-a-tile/it-sounds-hollow'],
  ['how much a lifted tile must show, by place and void', 'pulling-a-tile/three-tiles-lifted'],
  ['bowed planks at a quarter-inch joint', 'bowed-tile/lippage-allowed'],
  ['half bond for 12 × 24', 'large-tile-and-panels/half-bond'],
  ['the longest offset', 'bowed-tile/longest-offset'],
  ['what a third does for a bowed plank', 'bowed-tile/lip-from-offset'],
  ['a crowned plank on a quarter-inch notch', 'bowed-tile/middle-of-a-bow'],
  ['a dip packed with mortar', 'flat-first/bed-within-its-mortar'],
  ['a roof deck that failed', 'wet-outdoors-heated/deck-gate'],
  ['the fall of that deck', 'wet-outdoors-heated/fall-of-a-deck'],
  ['a mat whose cavities are filled first', 'under-boards-and-membranes/mat-cavities'],
  ['a board bedded like the tile on it', 'under-boards-and-membranes/two-layers'],
  ['two bags for 473 ft²', 'how-much-to-buy/enough-on-the-truck'],
  ['200 ft² with a 1/4 × 3/8', 'how-much-to-buy/bags-for-a-floor'],
  ['powder by the bed', 'how-much-to-buy/powder-from-the-bed'],
  ['a small batch of a 10 kg bag', 'mixing/part-bag-water'],
  ['a beginner’s pace', 'time-and-weather/spread-ahead'],
];

test.each(cases)('%s is asked by %s', (_, template) => {
  expect(compose(bank, { template, seed: 1, slot: 0 }, 'imperial').key.why.length).toBeGreaterThan(0);
});

/** What those cases come to by the code that keys the questions; the figures are the cases' own, with their tolerance. */
test.each<[what: string, found: number, expected: number, within: number]>([
  ['fully crushed, a 3/16 × 5/32 V leaves at 45°, mm', meanBedMm(atAngle(vee(3 / 16, 5 / 32), 45)), 1.4, 0.2],
  ['a 1/4 × 3/8 leaves at 45°, mm', meanBedMm(atAngle(square(1 / 4, 3 / 8, 1 / 4), 45)), 3.4, 0.1],
  [
    '1/4 square ridges flattened, mm (a trade article: 1/8 in)',
    meanBedMm(atAngle(square(1 / 4), 90)),
    inches(1 / 8),
    0.01,
  ],
  ['lip at half offset, of the bow', lippageShare(1 / 2), 1, 0.05],
  ['lip at a third', lippageShare(1 / 3), 0.89, 0.05],
  ['lip at a quarter', lippageShare(1 / 4), 0.75, 0.05],
  ['longest offset of a 24 in tile, mm', valueOf('offset.third', 'share') * inches(24), 203, 3],
  ['fall over 22 ft, mm', leastFall(feet(22)), 140, 5],
  ['tiles ahead at 45 min a tile and 15 min open', tilesAhead(15, 45), 1, 0],
])('%s', (_, found, expected, within) => {
  expect(Math.abs(found - expected)).toBeLessThanOrEqual(within);
});
