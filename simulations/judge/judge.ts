import type { Assumed } from '../estimate/job-types.ts';
import type { Finding } from '../estimate/plan-types.ts';
import { MISS } from '../estimate/pull.ts';
import { finding, ruleFinding, type Speaker, speakerFor, valueIn } from '../estimate/say-finding.ts';
import { valueOf } from '../rules/rulebook.ts';
import { setHabits } from '../rules/sets.ts';
import type { UnitSystem } from '../units/format.ts';
import { causesOf } from './causes.ts';
import { averageContact, contactOf, limitsOf } from './limits.ts';
import type { JudgedLimit, JudgeOptions, Judgement, Pull } from './pull-types.ts';
import { words } from './words/en.ts';

export { readPull } from './read-pull.ts';

/** A tile well bedded, beside poorer ones: something else than coverage is at work too. */
const WELL_BEDDED = 0.95;
/** So far under the least, a tile is another kind of tile than the well bedded one. */
const FAR_UNDER = 0.2;

function verdictOf(pull: Pull, limits: readonly JudgedLimit[], required: number): Judgement['verdict'] {
  const enough = pull.pulls.length >= valueOf('sampling.tiles', 'tiles');
  const broken = limits.some(
    (one) => !one.holds && !one.advice && one.name !== 'coverage' && one.name !== 'tiles-lifted',
  );
  if (broken) return 'fail';
  if (!enough) return pull.pulls.some((tile) => contactOf(tile) < required) ? 'fail' : 'not-enough';
  return limits.every((one) => one.holds || one.advice) ? 'pass' : 'fail';
}

/** Of an endless floor, the share of bad tiles that this many good ones leave likely (binomial, exact). */
const stillBadAfter = (tiles: number): number => 1 - MISS ** (1 / tiles);

function sentenceOf(pull: Pull, verdict: Judgement['verdict'], limits: readonly JudgedLimit[], say: Speaker): string {
  const lifted = pull.pulls.length;
  const values = { tiles: valueIn(lifted, 'count'), least: valueIn(valueOf('sampling.tiles', 'tiles'), 'count') };
  if (verdict === 'not-enough') return say(lifted === 0 ? words.soundOnly : words.fewPass, values);
  if (verdict === 'pass') return say(words.pass, { ...values, bad: valueIn(stillBadAfter(lifted), 'share') });
  const failed = limits.find((one) => !one.holds && !one.advice);
  if (lifted >= valueOf('sampling.tiles', 'tiles') && failed?.name === 'coverage')
    return say(words.failAverage, {
      found: valueIn(averageContact(pull.pulls), 'share'),
      required: valueIn(failed.required, 'share'),
    });
  return say(words.failSingle, { why: failed?.says ?? '' });
}

function findingsOf(
  pull: Pull,
  limits: readonly JudgedLimit[],
  required: number,
  say: Speaker,
  units: UnitSystem,
): Finding[] {
  const { pulls } = pull;
  const found: Finding[] = [];
  pulls.forEach((tile, n) => {
    if (tile.backCoatOnly)
      found.push(finding('pull.back-coat-only', 'warn', say(words.backCoat, { n: valueIn(n + 1, 'count') })));
  });
  const contacts = pulls.map(contactOf);
  const poorest = Math.min(1, ...contacts);
  const best = Math.max(0, ...contacts);
  const average = averageContact(pulls);
  if (average >= required && poorest < required)
    found.push(
      finding(
        'void.support',
        'warn',
        say(words.poorest, { found: valueIn(poorest, 'share'), required: valueIn(required, 'share') }),
      ),
    );
  if (average < required && best >= WELL_BEDDED && poorest < required - FAR_UNDER)
    found.push(finding('board.fasteners', 'warn', words.notOnlyCoverage));
  for (const limit of limits) if (!limit.holds && limit.advice) found.push(finding(limit.rule, 'warn', limit.says));
  if (pull.hollowSound === true) {
    found.push(ruleFinding('sampling.sound', 'note', units));
    if (pull.overMembrane) found.push(finding('sampling.sound', 'note', words.hollowOver));
    if (pulls.length > 0 && average >= required) found.push(finding('sampling.sound', 'note', words.hollowButFull));
  }
  if (pulls.length < valueOf('sampling.tiles', 'tiles')) found.push(ruleFinding('sampling.tiles', 'warn', units));
  return found;
}

/**
 * Judges lifted tiles by the limits of their place and kind, and says what likely went wrong.
 * @param pull as `readPull` returns it
 */
export function judgePull(pull: Pull, options: JudgeOptions = {}, assumed: Assumed = {}): Judgement {
  const units = options.units ?? setHabits[pull.standards].units;
  const say = speakerFor(units);
  const { limits, required } = limitsOf(pull, say);
  const verdict = verdictOf(pull, limits, required);
  return {
    verdict,
    says: sentenceOf(pull, verdict, limits, say),
    limits,
    causes: causesOf(pull, averageContact(pull.pulls), required),
    findings: findingsOf(pull, limits, required, say, units),
    stillBad: verdict === 'pass' ? stillBadAfter(pull.pulls.length) : null,
    assumed,
  };
}
