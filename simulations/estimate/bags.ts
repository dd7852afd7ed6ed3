import { partBagWater, yieldLitres } from '../mortar/bag.ts';
import { valueOf } from '../rules/rulebook.ts';
import type { Job } from './job-types.ts';
import { litresPerM2, type LayerRecipe } from './layers.ts';
import { bedAt } from './notches.ts';
import type { Bags, Batches } from './plan-types.ts';

/** What a bag of this job yields, L: as its sheet says, or from water and density. */
export interface BagYield {
  least: number;
  usual: number;
  most: number;
  waterLPerKg: number;
}

const middle = (low: number, high: number): number => (low + high) / 2;

/** Yield of the job's bag. Less water and a denser mix yield least. */
export function bagYield({ bagKg, yieldLPerBag, waterLPerBag }: Job['mortar']): BagYield {
  const least = valueOf('mortar.water', 'least');
  const most = valueOf('mortar.water', 'most');
  const light = valueOf('mortar.density', 'least');
  const dense = valueOf('mortar.density', 'most');
  const given = waterLPerBag === null ? null : waterLPerBag / bagKg;
  const waterLPerKg = given ?? middle(least, most);
  if (yieldLPerBag !== null) return { least: yieldLPerBag, usual: yieldLPerBag, most: yieldLPerBag, waterLPerKg };
  const mix = (water: number, density: number): number =>
    yieldLitres({ bagKg, waterLPerKg: water, densityKgM3: density });
  return {
    least: mix(given ?? least, dense),
    usual: mix(waterLPerKg, middle(light, dense)),
    most: mix(given ?? most, light),
    waterLPerKg,
  };
}

/** A hair's breadth, so that 4.0000001 bags are four. */
const up = (bags: number): number => Math.ceil(bags - 1e-6);

/** Bags of which the headline speaks: the bed an upright blade leaves once flattened, at the headline's own rate. */
export function labelBags(areaM2: number, uprightBedMm: number, bagKg: number): number {
  const rate = middle(valueOf('rate.label', 'least'), valueOf('rate.label', 'most'));
  return (areaM2 * uprightBedMm * rate) / bagKg;
}

/** Bags for an area: low, to plan on, high, and what the headline would say. Rounded up. */
export function bagsFor(areaM2: number, recipes: readonly LayerRecipe[], job: Job): Omit<Bags, 'whyDiffers'> {
  const made = bagYield(job.mortar);
  const low = valueOf('bags.spread', 'low');
  const high = valueOf('bags.spread', 'high');
  const waste = 1 + job.wasteShare;
  const exact = {
    low: (areaM2 * litresPerM2(recipes, low, 0)) / made.most,
    plan: (areaM2 * litresPerM2(recipes, low, 0.5) * waste) / made.usual,
    high: (areaM2 * litresPerM2(recipes, high, 1) * waste) / made.least,
  };
  const combedBed = recipes.find((one) => one.name === 'bed');
  const upright = combedBed?.notch ? bedAt(combedBed.notch, valueOf('trowel.upright', 'upright')) : 0;
  return {
    low: up(exact.low),
    plan: up(exact.plan),
    high: up(exact.high),
    labelWouldSay: up(labelBags(areaM2, upright, job.mortar.bagKg)),
    exact,
  };
}

/** Powder to a litre of the job's mortar, kg. */
const powderPerLitre = (job: Job): number => job.mortar.bagKg / bagYield(job.mortar).usual;

/** How much to mix at a time: what is set within the pot life, and never more than a bag. */
export function batchesFor(
  areaM2: number,
  tileM2: number,
  litresM2: number,
  potLifeMin: number,
  job: Job,
): Omit<Batches, 'says'> {
  const { crew, mortar, wasteShare } = job;
  const powderM2 = litresM2 * powderPerLitre(job);
  const tiles = Math.max(1, Math.floor((potLifeMin * crew.setters) / crew.minPerTile));
  const powderKg = Math.min(mortar.bagKg, tiles * tileM2 * powderM2);
  const total = areaM2 * powderM2 * (1 + wasteShare);
  const whole = Math.floor(total / powderKg + 1e-9);
  const rest = Math.max(0, total - whole * powderKg);
  const water = bagYield(mortar).waterLPerKg;
  return {
    powderKg,
    waterL: partBagWater(powderKg, water),
    count: whole + (rest > 0.05 ? 1 : 0),
    potLifeMin,
    partBag: rest > 0.05 ? { powderKg: rest, waterL: partBagWater(rest, water) } : { powderKg: 0, waterL: 0 },
  };
}
