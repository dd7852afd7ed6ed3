import type { StandardSet } from '../rules/rule.ts';
import { valueOf } from '../rules/rulebook.ts';
import { setHabits } from '../rules/sets.ts';
import type { Area, Job, JobTile } from './job-types.ts';

/** What a job says when it says nothing: ordinary, and each repeated under `assumed`. */
export const jobDefaults = (standards: StandardSet): Omit<Job, 'areas' | 'trowelsAtHand' | 'instructions'> => ({
  standards,
  mortar: {
    bagKg: valueOf(setHabits[standards].bag, 'mass'),
    yieldLPerBag: null,
    waterLPerBag: null,
    openMin: null,
    potLifeMin: null,
    stiffness: 'holds',
    priceEach: null,
    bagsAtHand: null,
  },
  crew: { minPerTile: 4, setters: 1, temperatureC: 21, wind: 'still' },
  wasteShare: valueOf('waste.mortar', 'usual'),
});

/** The part of an area that its defaults hang on. */
interface GivenArea {
  exposure?: Area['exposure'] | undefined;
  membrane?: Area['membrane'] | undefined;
  pattern?: Area['pattern'] | undefined;
  tile: { material?: JobTile['material'] | undefined; lengthMm: number; widthMm: number; back?: string | undefined };
}

export function areaDefaults(given: GivenArea, index: number, standards: StandardSet): Area {
  const { tile } = given;
  const small = Math.min(tile.lengthMm, tile.widthMm) <= valueOf('mosaic.piece', 'edge');
  const sheet = tile.material === 'mosaic' && !small;
  const { usual, straightedgeMm } = setHabits[standards];
  return {
    name: `Area ${index + 1}`,
    areaM2: 0,
    surface: 'floor',
    exposure: 'interior-dry',
    heated: given.membrane === 'heated-mat',
    sun: false,
    overRoom: false,
    substrate: 'concrete',
    flatnessMm: null,
    flatnessOverMm: straightedgeMm(),
    fallRunMm: null,
    membrane: 'none',
    pattern: 'grid',
    offsetShare: given.pattern === 'offset' ? 1 / 3 : 0,
    mockUpApproved: false,
    jointMm: usual.jointMm,
    tile: {
      material: 'porcelain',
      lengthMm: 0,
      widthMm: 0,
      thicknessMm: small || sheet ? valueOf('mosaic.piece', 'thickness') : usual.thicknessMm,
      edge: 'calibrated',
      back: 'flat',
      reliefMm: tile.back === 'ribbed' ? valueOf('tile.ribs', 'usual') : 0,
      measuredBowMm: null,
      sizeVariationMm: null,
      pieceMm: sheet ? valueOf('mosaic.piece', 'usual') : null,
      light: false,
      moistureSensitive: false,
    },
    technique: { comb: 'straight', press: 'untold', moveMm: null, bareBack: false },
  };
}
