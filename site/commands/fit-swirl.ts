/**
 * Fits the cost of a swirl (rule `model.swirl`) to runs of the bed solver drawn at random and prints what to write in the
 * rule, and how far it is off, on the beds it was fitted to and on as many others. To be run when the solver changes.
 */
import { swirledCoverage, type SwirlCost } from '../../simulations/estimate/spread/swirl.ts';
import { swirlPairs, type SwirlPair } from '../../tests/reference/swirl-beds.ts';

const COUNT = 96;
const FITTED_TO = 1;
const HELD_OUT = 2;

const offBy = (pairs: readonly SwirlPair[], cost: SwirlCost): number[] =>
  pairs.map((pair) => swirledCoverage(pair.straight, pair, cost) - pair.swirled);
const spread = (errors: readonly number[]): number =>
  Math.sqrt(errors.reduce((sum, error) => sum + error * error, 0) / errors.length);
const mean = (errors: readonly number[]): number => errors.reduce((sum, error) => sum + error, 0) / errors.length;

/** Steps of one value at a time, halved when none betters the fit: four values and a smooth error need no more. */
function fit(pairs: readonly SwirlPair[]): SwirlCost {
  let best: SwirlCost = { from: 150, to: 450, pressed: 0.4, breaks: 0.5 };
  let least = spread(offBy(pairs, best));
  for (let step = 0.5; step > 1e-3;) {
    let better = false;
    for (const key of Object.keys(best) as (keyof SwirlCost)[])
      for (const times of [1 + step, 1 / (1 + step)]) {
        const tried = { ...best, [key]: best[key] * times };
        const off = spread(offBy(pairs, tried));
        if (tried.to <= tried.from || off >= least) continue;
        best = tried;
        least = off;
        better = true;
      }
    if (!better) step /= 2;
  }
  return best;
}

const pairs = swirlPairs(FITTED_TO, COUNT);
const others = swirlPairs(HELD_OUT, COUNT);
const cost = fit(pairs);
const say = (name: string, errors: readonly number[]): string =>
  `${name}: ${errors.length} beds, off by ${(100 * spread(errors)).toFixed(1)} points (root mean square), ` +
  `${(100 * mean(errors)).toFixed(1)} on the whole, ${(100 * Math.max(...errors.map(Math.abs))).toFixed(1)} at the most\n`;
process.stdout.write(`${JSON.stringify(cost)}\n`);
process.stdout.write(say('fitted to', offBy(pairs, cost)));
process.stdout.write(say('held out', offBy(others, cost)));
