/** The lessons' figures and worked examples against published figures, cases and arithmetic by hand. */
import { describe, expect, it } from 'vitest';

import { everyCause } from '@sim/judge/causes.ts';
import { riseInJoints, jointShare } from '@sim/mortar/squeeze-up.ts';
import { valueOf } from '@sim/rules/rulebook.ts';
import { inches, squareFeet } from '@sim/units/length.ts';
import { countBags } from '@site/islands/figures/bags.ts';
import { noSigns } from '@sim/judge/whole-pull.ts';
import { causeWords } from '@site/messages/en/figures/cause.ts';
import { likelyCauses } from '@site/islands/figures/cause.ts';
import { readClock, wedge } from '@site/islands/figures/clock.ts';
import { squeeze } from '@site/islands/figures/squeeze.ts';
import { bagRules } from '@site/lessons/worked/bag-rules.ts';
import { bagsWorked } from '@site/lessons/worked/bags.ts';
import { clockWorked, weatherShares } from '@site/lessons/worked/clock.ts';
import { dipWorked } from '@site/lessons/worked/dip.ts';
import { buildUps, layersWorked } from '@site/lessons/worked/layers.ts';
import { mosaicWorked } from '@site/lessons/worked/mosaic.ts';
import { bedAt, notchById } from '@site/lessons/worked/notch.ts';
import { allDemands, demandOf } from '@site/lessons/worked/place.ts';
import { slideWorked } from '@site/lessons/worked/slide.ts';
import { ICE_GROWTH, litresInVoids, terraceWorked } from '@site/lessons/worked/terrace.ts';

const limits = { leastMm: valueOf('bed.least', 'bed'), riseShare: valueOf('mosaic.rise', 'share') };

describe('squeeze-up', () => {
  // A practitioner's case: mini-subway sheets in a shower set with a 1/4 × 3/8 floor notch, joints 1/8 in. By hand:
  // 3.4 mm beaten in to 2.4 mm under 1 in squares sends 4.7 mm up joints that are 21 % of the plan; 1 × 2 in, 6 mm.
  it('agrees with the case of the floor notch under mosaics', () => {
    expect(jointShare(inches(1), inches(1), inches(1 / 8))).toBeCloseTo(0.21, 2);
    expect(jointShare(inches(1), inches(2), inches(1 / 8))).toBeCloseTo(0.16, 2);
    const sheet = { combedMm: 3.37, bedMm: 2.38, pieceLengthMm: 25.4, jointMm: 3.175 };
    expect(riseInJoints({ ...sheet, pieceWidthMm: 25.4 })).toBeCloseTo(4.7, 1);
    expect(riseInJoints({ ...sheet, pieceWidthMm: 50.8 })).toBeCloseTo(6.1, 1);
    expect(mosaicWorked.riseMm).toBeCloseTo(4.7, 1);
  });
  it('conserves the mortar: under the pieces and in the joints there is what was combed', () => {
    const now = squeeze(
      { notch: notchById('1-2-1-2-in-square'), angleDeg: 60, pieceMm: 40, jointMm: 4, thicknessMm: 8 },
      limits,
    );
    expect(now.bedMm + now.riseMm * now.jointShare).toBeCloseTo(now.combedMm, 9);
  });
  it('calls a small V starved at any angle one keeps, and the floor notch too full', () => {
    const setup = { angleDeg: 45, pieceMm: inches(1), jointMm: inches(1 / 8), thicknessMm: 6 };
    expect(squeeze({ ...setup, notch: notchById('3-16-5-32-in-v') }, limits).verdict).toBe('starved');
    expect(squeeze({ ...setup, notch: notchById('1-4-3-8-in-square') }, limits).verdict).toBe('full');
    expect(squeeze({ ...setup, notch: notchById('1-2-1-2-in-square') }, limits).verdict).toBe('over');
    expect(squeeze({ ...setup, angleDeg: 60, notch: notchById('1-4-1-4-in-square') }, limits).verdict).toBe('clear');
  });
});

describe('worked examples', () => {
  it('the dip: 3/32 in and 1/4 in are 11/32 in, over the 1/4 in that thin-set allows', () => {
    expect(dipWorked.bedMm.imperial).toBeCloseTo(inches(11 / 32), 9);
    expect(dipWorked.overMm.imperial).toBeCloseTo(inches(1 / 8), 9);
    expect(dipWorked.bedMm.metric).toBeCloseTo(6 + 2.38125, 9); // a dip of 6 mm
    for (const units of ['imperial', 'metric'] as const) {
      expect(dipWorked.bedMm[units]).toBeGreaterThan(dipWorked.thinSetMm[units]);
      expect(dipWorked.bedMm[units]).toBeLessThan(dipWorked.heavyMm[units]);
      // The prediction's answer, more than three times as thick, is right for either reader.
      expect(dipWorked.bedMm[units] / dipWorked.leastMm[units]).toBeGreaterThan(3);
    }
  });
  it('the mat: its hollows take 1.5 to 2.5 L/m² (case of a packed mat), and the bed under it is within the rule', () => {
    expect(layersWorked.cavityMm).toBeGreaterThan(1.5);
    expect(layersWorked.cavityMm).toBeLessThan(2.6);
    expect(layersWorked.underMm).toBeGreaterThanOrEqual(valueOf('membrane.bond', 'least'));
    expect(layersWorked.underMm).toBeLessThanOrEqual(valueOf('membrane.bond', 'most'));
    expect(layersWorked.totalMm).toBeCloseTo(
      buildUps.find(({ id }) => id === 'mat')!.layers.reduce((sum, one) => sum + one.bedMm, 0),
      9,
    );
  });
  it('the terrace: 120 ft² of 1/8 in bed with a fifth void hold 7.1 L, and ice takes 9 % more room', () => {
    expect(litresInVoids(squareFeet(120), inches(1 / 8), 0.8)).toBeCloseTo(11.148 * 3.175 * 0.2, 3);
    expect(terraceWorked.litres).toBe('7.1');
    expect(ICE_GROWTH).toBeCloseTo(0.09, 2); // 999.8 over 916.7 kg/m³
  });
  it('the lobby: a half-inch notch shaken in a 1/8 in joint stops in the 50 to 80 % of the trainer’s case', () => {
    expect(slideWorked.end).toBeGreaterThanOrEqual(0.5);
    expect(slideWorked.end).toBeLessThan(0.8);
    expect(slideWorked.start + slideWorked.gainSlidIn).toBeCloseTo(1, 9); // travel of the notch's width closes it
  });
  it('the roof: ten degrees, a breeze and sun leave 0.65 × 0.75 × 0.5 of thirty minutes', () => {
    expect(clockWorked.openMin).toBeCloseTo(30 * 0.65 * 0.75 * 0.5, 9);
    expect(clockWorked.tiles).toBe(3);
    expect(clockWorked.wholeMin).toBe(7);
    expect(Math.floor(clockWorked.wholeMin / clockWorked.minPerTile)).toBe(clockWorked.tiles); // as printed
  });
  it('the basement: 400 ft² by hand', () => {
    const bed = bedAt(notchById('1-4-3-8-in-square'), 45); // 0.133 in, trade table of notch geometry
    expect(bed).toBeCloseTo(inches(0.1326), 2);
    const litres = 37.161 * bed * 1.2 * 1.1; // backs 20 %, waste 10 %
    expect(Number(bagsWorked.totalLitres)).toBe(Math.round(litres));
    expect(bagsWorked.bags).toBe(Math.ceil(litres / ((22.7 * 1.25) / 1.5)));
    expect(bagsWorked.labelBags).toBeLessThan(bagsWorked.bags);
    expect(bagsWorked.low).toBeLessThanOrEqual(bagsWorked.bags);
    expect(bagsWorked.high).toBeGreaterThanOrEqual(bagsWorked.bags);
  });
  it('the headline’s best area is thinner than the least bed, as the lesson says', () => {
    const litres = bagRules().yields.most;
    expect(litres / valueOf('rate.quarter-square', 'most')).toBeLessThan(valueOf('bed.least', 'bed'));
  });
});

describe('bags', () => {
  const job = (areaFt2: number, notch: string) => ({
    areaM2: squareFeet(areaFt2),
    notch: notchById(notch),
    angleDeg: 45,
    buttered: false,
    wasteShare: 0,
  });
  // A floor of 473 ft² was bought two bags of 50 lb; from published rates 5 to 6 with 1/4 × 1/4, 6 to 8 with 1/4 × 3/8.
  it('wants far more than the two bags bought for 473 ft²', () => {
    expect(countBags(job(473, '1-4-1-4-in-square'), bagRules()).bags).toBeGreaterThanOrEqual(5);
    const deeper = countBags(job(473, '1-4-3-8-in-square'), bagRules()).bags;
    expect(deeper).toBeGreaterThanOrEqual(6);
    expect(deeper).toBeLessThanOrEqual(8);
  });
  // How-to article: 200 ft² at 60 to 70 ft² a bag is 3.07, so 4 bags.
  it('buys four for 200 ft² with 1/4 × 3/8', () => {
    expect(countBags({ ...job(200, '1-4-3-8-in-square'), wasteShare: 0.1 }, bagRules()).bags).toBe(4);
  });
});

describe('the clock', () => {
  const rules = { shares: weatherShares(), referenceC: 23, leastC: 10, mostC: 27, coldFromC: 21, coldStepK: 10 };
  const calm = { temperatureC: 23, wind: 'still', sun: false } as const;
  it('leaves the bag’s minutes alone in the bag’s own climate', () => {
    expect(readClock(30, calm, 5, rules).openMin).toBeCloseTo(30, 9);
    expect(readClock(30, calm, 5, rules).tiles).toBe(6);
  });
  it('spreads for one tile at a beginner’s 45 minutes a tile (case)', () => {
    expect(readClock(20, calm, 45, rules)).toMatchObject({ tiles: 1, warning: 'one' });
  });
  it('doubles the cure for each step below 21 °C (article on climate)', () => {
    expect(readClock(30, { ...calm, temperatureC: 11 }, 5, rules).cureTimes).toBeCloseTo(2, 9);
    expect(readClock(30, { ...calm, temperatureC: 1 }, 5, rules).cureTimes).toBeCloseTo(4, 9);
  });
  it('draws a quarter of an hour as a quarter turn', () => {
    expect(wedge(15, 10)).toMatch(/ 10\.00 -?0\.00z$/);
  });
});

describe('coverage by place', () => {
  it('asks as the rules do', () => {
    expect(demandOf('dry', 'tile').share).toBe(0.8); // ANSI A108.5
    expect(demandOf('shower', 'tile').share).toBe(0.95);
    expect(demandOf('terrace', 'tile').share).toBe(0.95);
    expect(demandOf('dry', 'stone').share).toBe(0.95); // TCNA Handbook
    expect(demandOf('dry', 'panelFloor').share).toBe(0.85); // ANSI A108.19
    expect(demandOf('dry', 'panelWall').share).toBe(0.8);
    expect(demandOf('shower', 'panelWall')).toMatchObject({ share: 0.95, borrowed: true });
  });
  it('never asks less of a wet place than of a dry one', () => {
    for (const { kind, place, share } of allDemands())
      expect(share, `${kind} ${place}`).toBeGreaterThanOrEqual(demandOf('dry', kind).share);
  });
});

describe('the path to a cause', () => {
  const first = (signs: Partial<typeof noSigns>, coverage: number | null = null) =>
    likelyCauses({ signs: { ...noSigns, ...signs }, coverage }, 0.8)[0]?.name;
  // Practitioners' cases: a long plank with standing ridges and clean backs; a slab sealed by curing compound; cut tiles
  // spotless from saw water.
  it('reads the cases', () => {
    expect(first({ mortarOn: 'floor', ridges: 'standing' })).toBe('skinned');
    expect(first({ mortarOn: 'tile' })).toBe('sealed-base');
    expect(first({ cutTilesOnly: true, mortarOn: 'floor' })).toBe('wet-back');
    expect(first({ crackOverSeam: true })).toBe('unbedded-board');
    expect(first({ ridges: 'crushed', mortarOn: 'both' }, 0.5)).toBe('too-little-mortar');
    expect(first({ ridges: 'flat', mortarOn: 'both' }, 0.97)).toBe('other-causes');
  });
  it('says nothing before anything was seen', () => {
    expect(first({})).toBeUndefined();
  });
  // Each of these is first of its case above or in `cases-judge.test.ts`; on paper stands the whole list.
  it('names on paper every cause once, with a test and what to do', () => {
    const causes = everyCause();
    expect(causes.map((one) => one.name).toSorted()).toEqual(Object.keys(causeWords.tests).toSorted());
    for (const { says, action } of causes) expect([says, action].every((text) => text.endsWith('.'))).toBe(true);
  });
});
