import { coldFactor, openMinutes, tilesAhead } from '../mortar/weather.ts';
import { valueOf } from '../rules/rulebook.ts';
import { setHabits } from '../rules/sets.ts';
import type { Area, Job } from './job-types.ts';
import { bagsFor, batchesFor } from './bags.ts';
import { litresPerM2, type LayerRecipe } from './layers.ts';
import type { Bags, Batches, Finding, Layer, PullPlan } from './plan-types.ts';
import { stillBad } from './pull.ts';
import { finding, lengthValue, type Speaker, valueIn } from './say-finding.ts';
import { isMosaic } from './tile-facts.ts';
import { words } from './words/en.ts';

/** Open time of the job's mortar in its weather, min. */
const openTime = (area: Area, job: Job): number =>
  openMinutes(
    job.mortar.openMin ?? valueOf('class.open', 'normal'),
    valueOf('time.reference', 'temperature'),
    { temperatureC: job.crew.temperatureC, wind: job.crew.wind, sun: area.sun },
    {
      stepK: valueOf('time.weather', 'step'),
      warmer: valueOf('time.weather', 'warmer'),
      breeze: valueOf('time.weather', 'breeze'),
      wind: valueOf('time.weather', 'wind'),
      sun: valueOf('time.weather', 'sun'),
    },
  );

/** A quarter longer is worth a word. */
const NOTICEABLY = 1.25;

/** How far ahead to spread, and whether it is a day for mortar. */
export function planSpread(area: Area, job: Job, say: Speaker) {
  const openMin = openTime(area, job);
  const tiles = tilesAhead(openMin, job.crew.minPerTile);
  const values = {
    open: valueIn(Math.round(openMin), 'min'),
    pace: valueIn(job.crew.minPerTile, 'min'),
    tiles: valueIn(tiles, 'count'),
    pieces: words.pieces[isMosaic(area.tile) ? 'sheet' : 'tile'],
  };
  const { climate } = setHabits[job.standards];
  const least = valueOf(climate, 'least');
  const most = valueOf(climate, 'most');
  const t = job.crew.temperatureC;
  const findings: Finding[] =
    t < least || t > most
      ? [
          finding(
            climate,
            'warn',
            say(words.tooCold, {
              temperature: valueIn(t, '°C'),
              least: valueIn(least, '°C'),
              most: valueIn(most, '°C'),
            }),
          ),
        ]
      : [];
  const from = valueOf('time.cold', 'from');
  const slower = coldFactor(t, from, valueOf('time.cold', 'step'));
  if (slower >= NOTICEABLY)
    findings.push(
      finding(
        'time.cold',
        'note',
        say(words.cold, {
          temperature: valueIn(t, '°C'),
          times: valueIn(Math.round(slower * 10) / 10, 'times'),
          from: valueIn(from, '°C'),
        }),
      ),
    );
  return { openMin, spreadAhead: tiles, spreadSays: say(tiles > 1 ? words.spread : words.spreadOne, values), findings };
}

/** The layers with their litres, at the blade angle the plan reckons with. */
export const planLayers = (recipes: readonly LayerRecipe[], areaM2: number): Layer[] =>
  recipes.map(({ name, notch, rule, thicknessAt }) => {
    const thicknessMm = thicknessAt(valueOf('bags.spread', 'low'), 0.5);
    return { name, notch, rule, thicknessMm, litres: thicknessMm * areaM2 };
  });

/** Bags of an area, and why the bag's headline says something else. */
export function planBags(area: Area, recipes: readonly LayerRecipe[], job: Job, say: Speaker): Bags {
  const bags = bagsFor(area.areaM2, recipes, job);
  const bed = recipes.find((one) => one.name === 'bed');
  const low = valueOf('bags.spread', 'low');
  return {
    ...bags,
    whyDiffers: say(words.bagsWhy, {
      label: valueIn(bags.labelWouldSay, 'count'),
      angle: valueIn(low, '°'),
      bed: lengthValue(bed?.thicknessAt(low, 0) ?? 0, 'gap'),
      layers: recipes.length > 1 ? words.bagsWhyLayers : '',
      waste: valueIn(job.wasteShare, 'share'),
    }),
  };
}

/** Minutes a batch lasts where the bag says nothing: less in heat, as open time is, and no longer in the cold. */
const potLife = (temperatureC: number): number => {
  const warmer = (temperatureC - valueOf('time.reference', 'temperature')) / valueOf('time.weather', 'step');
  return Math.round(valueOf('time.pot-life', 'hours') * 60 * Math.min(1, valueOf('time.weather', 'warmer') ** warmer));
};

export function planBatches(area: Area, recipes: readonly LayerRecipe[], job: Job, say: Speaker): Batches {
  const potLifeMin = job.mortar.potLifeMin ?? potLife(job.crew.temperatureC);
  const { lengthMm, widthMm } = area.tile;
  const batches = batchesFor(
    area.areaM2,
    (lengthMm * widthMm) / 1e6,
    litresPerM2(recipes, valueOf('bags.spread', 'low'), 0.5),
    potLifeMin,
    job,
  );
  const last = batches.partBag;
  return {
    ...batches,
    says:
      say(words.batches, {
        powder: valueIn(batches.powderKg, 'kg'),
        water: valueIn(batches.waterL, 'L'),
        count: valueIn(batches.count, 'count'),
        pot: valueIn(potLifeMin, 'min'),
      }) +
      (last.powderKg > 0
        ? say(words.batchesLast, { powder: valueIn(last.powderKg, 'kg'), water: valueIn(last.waterL, 'L') })
        : ''),
  };
}

const SIZES = [3, 5, 10, 20, 30, 59];

/** How many tiles to lift, and what passing tells: exact, in words. */
export function planPull(tiles: number, say: Speaker): PullPlan {
  const lift = Math.min(tiles, valueOf('sampling.tiles', 'tiles'));
  const { share, method } = stillBad(tiles, lift);
  const table = SIZES.filter((size) => size <= tiles).map((size) => ({
    tiles: size,
    stillBad: stillBad(tiles, size).share,
  }));
  const more = table.find((row) => row.tiles === 10);
  return {
    tiles: lift,
    of: tiles,
    stillBad: share,
    method,
    table,
    says:
      tiles < valueOf('sampling.tiles', 'tiles')
        ? say(words.pullAll, { tiles: valueIn(tiles, 'count') })
        : say(words.pull, {
            tiles: valueIn(lift, 'count'),
            bad: valueIn(share, 'share'),
            more: more
              ? say(words.pullMore, { tiles: valueIn(more.tiles, 'count'), bad: valueIn(more.stillBad, 'share') })
              : '',
          }),
  };
}
