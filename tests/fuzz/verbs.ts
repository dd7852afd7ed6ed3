import { judgeVerb } from '@sim/calc/judge.ts';
import { parseInput } from '@sim/calc/input.ts';
import { mark } from '@sim/calc/mark.ts';
import { planVerb } from '@sim/calc/plan.ts';
import { round } from '@sim/calc/round.ts';
import { set } from '@sim/calc/set.ts';
import { readJob } from '@sim/estimate/job.ts';
import { readSetup } from '@sim/bed/read-setup.ts';
import { mortarWords } from '@sim/rules/mortar-words.ts';
import { readPull } from '@sim/judge/read-pull.ts';
import type { Verb } from '@sim/calc/verb.ts';
import { bank } from '@quiz/bank.ts';

import { refused, type Outcome, type Reader } from './reader.ts';

const small = {
  tile: { lengthMm: 60, widthMm: 40, bowLengthMm: 0.2, twistMm: 0.1, pieces: { along: 1, across: 1, jointMm: 3 } },
  trowel: { shape: 'square', widthMm: 6.35, depthMm: 6.35, toothMm: 6.35, angleDeg: 60, wearMm: 0 },
  comb: { pattern: 'swirl', directionDeg: 90, keyCoatMm: 0, flattened: false, edgeBareMm: 0, seed: 3 },
  mortar: { yieldPa: 500, viscosityPaS: 10, ageMin: 2 },
  actions: [
    { do: 'press', forceN: 20, atX: 5, atY: 0 },
    { do: 'slide', forceN: 20, strokeMm: 4, strokes: 2, directionDeg: 0, speedMmS: 20 },
    { do: 'tap', energyJ: 0.2, blows: 2 },
  ],
  cellMm: 1.5,
};
const told = {
  tile: {
    lengthMm: 60, widthMm: 40, readings: { alongMm: [0, 0.2, 0.1], diagonalsMm: [[0, 0.1], [0, -0.1]] },
    relief: { shape: 'dots', pitchMm: 12, depthMm: 0.5, directionDeg: 0, raisedShare: 0.4 },
  },
  floor: { readings: { gridMm: [[0, 0.1], [0, 0.2]] } },
  trowel: { shape: 'v', widthMm: 6, depthMm: 5, toothMm: 0, angleDeg: 60, wearMm: 0, yawDeg: 20 },
  comb: { pattern: 'drawn', path: [[-20, 0], [0, 5], [25, 0]] },
  mortar: { twoPlates: { massKg: 1, volumeMl: 50, diameterMm: 150 }, weather: { temperatureC: 30, wind: 'breeze', sun: true, air: 'dry' } },
  actions: [{ do: 'twist', forceN: 20, angleDeg: 2, strokes: 2, speedMmS: 20 }, { do: 'vibrate', seconds: 1 }, { do: 'lift' }],
  cellMm: 1.5,
}; // prettier-ignore
const job = {
  standards: 'north-america',
  areas: [
    {
      name: 'Hall floor', areaM2: 18.6, surface: 'floor', exposure: 'interior-dry', heated: false, substrate: 'concrete',
      flatnessMm: 3, flatnessOverMm: 3050, membrane: 'none', pattern: 'offset', offsetShare: 0.5, jointMm: 3.2,
      tile: { material: 'porcelain', lengthMm: 610, widthMm: 305, thicknessMm: 9, edge: 'rectified', back: 'flat', reliefMm: 0, measuredBowMm: null },
    },
  ],
  trowelsAtHand: null,
  instructions: { notch: null, minCoverage: null, mortarClass: null },
  mortar: { bagKg: 22.7, yieldLPerBag: null, priceEach: null },
  crew: { minPerTile: 4, setters: 1, temperatureC: 21, wind: 'still' },
  wasteShare: 0.1,
}; // prettier-ignore
const pull = {
  standards: 'north-america', exposure: 'interior-wet', surface: 'floor', kind: 'tile', material: 'porcelain', thicknessMm: 9,
  pulls: [
    { coverage: 0.96, backCoatOnly: false, voids: [{ areaMm2: 900, toCornerMm: 120, toEdgeMm: 60 }] },
    { coverage: 0.97, backCoatOnly: false, voids: [] },
    { coverage: 0.91, backCoatOnly: false, voids: [] },
  ],
  hollowSound: null,
}; // prettier-ignore
const ask = { seed: 7, items: 2, lessons: ['setting'], units: 'imperial' };
const handIn = { ...ask, bank: bank.version, mode: 'mixed', answers: ['A', '12 1/2'] };

/** A tile the size of a floor tile in fine cells, as when the tile or the cell is left out. */
const isLargeBed = (input: unknown): boolean => {
  const reading = readSetup(input, mortarWords());
  if (!reading.ok) return false;
  const { tile, cellMm } = reading.value.setup;
  return tile.lengthMm * tile.widthMm > 20_000 * cellMm * cellMm;
};

/** A verb as the command line meets it: text in, JSON or sentences out. Work that takes long is done only in `use`. */
const verbReader = (
  name: string,
  good: readonly object[],
  verb: Verb,
  reading?: (input: unknown) => ReturnType<Verb>,
): Reader => ({
  name: `calc ${name}`,
  good: good.map((one) => JSON.stringify(one)),
  json: true,
  read: (text): Outcome => {
    const input = parseInput(text);
    if (!input.ok) return refused(input.faults);
    const answer = (reading ?? verb)(input.value);
    return answer.ok ? { state: 'taken', value: reading ? input.value : answer.value } : refused(answer.faults);
  },
  use: (input) => {
    if (!reading) return input;
    const answer = verb(input);
    if (!answer.ok) throw new Error('taken by the reader, refused by the verb');
    return answer.value;
  },
  mostUses: reading ? 120 : Infinity,
});

export const verbReaders: readonly Reader[] = [
  { ...verbReader('set', [small, told], set, (input) => readSetup(input, mortarWords())), isDear: isLargeBed },
  verbReader('plan', [job], planVerb, readJob),
  verbReader('judge', [pull], judgeVerb, readPull),
  verbReader('round', [ask], round),
  verbReader('mark', [handIn], mark),
];
