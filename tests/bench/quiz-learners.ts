/**
 * Simulated learners against the diagnosing round: how often the wrong ideas a learner holds are named, and how often
 * one is named that isn't held. Run by `npm run bench`, or by itself: `node site/commands/run.mjs tests/bench/quiz-learners.ts`.
 */
import { bank } from '../../quiz-bank/bank.ts';
import { namedIdeas } from '../../quiz-bank/engine/beliefs.ts';
import { compose } from '../../quiz-bank/engine/compose.ts';
import { answerDiagnosis, openDiagnosis } from '../../quiz-bank/engine/diagnose.ts';
import { drawFrom } from '../../quiz-bank/engine/draw.ts';
import type { Decision, KeyedItem } from '../../quiz-bank/engine/item.ts';
import { selfAnswers } from '../../quiz-bank/engine/self-test.ts';
import { type IdeaId, IDEAS } from '../../quiz-bank/wrong-ideas/idea.ts';

export interface LearnerRow {
  what: string;
  learners: number;
  named: number;
  /** Share of learners of whom an idea was named that they don't hold. */
  wronged: number;
  items: number;
  goal: number;
}

type Draw = ReturnType<typeof drawFrom>;
const SLIP = 0.1;

/** Answers one decision: the idea held where it is offered, else right; with a slip, any of the others alike. */
function decide(decision: Decision, held: readonly IdeaId[], draw: Draw, wrongs: readonly string[]): string {
  const own = Object.entries(decision.ideas).filter(([, idea]) => held.includes(idea));
  const meant = own.length > 0 ? draw.pick(own)[0] : decision.right;
  if (!draw.chance(SLIP)) return meant;
  const others = [decision.right, ...wrongs].filter((answer) => answer !== meant);
  return others.length === 0 ? meant : draw.pick(others);
}

/** The whole answer of a simulated learner, as text. */
export function answerOf(keyed: KeyedItem, held: readonly IdeaId[], draw: Draw): string {
  const { form } = keyed.item;
  const { decisions } = keyed.key;
  const first = decisions[0];
  if (!first) return '';
  const letters = 'choices' in form ? form.choices.map(({ letter }) => letter) : [];
  const wrongLetters = (right: string) => letters.filter((letter) => letter !== right);
  if (form.kind === 'one') return decide(first, held, draw, wrongLetters(first.right));
  if (form.kind === 'judge') {
    const second = decisions[1];
    const verdict = decide(first, held, draw, first.right === 'yes' ? ['no'] : ['yes']);
    return second ? `${verdict} ${decide(second, held, draw, wrongLetters(second.right))}` : verdict;
  }
  if (form.kind === 'all') {
    const ticked = letters.filter((_, at) => {
      const decision = decisions[at];
      return decision && decide(decision, held, draw, [decision.right === 'on' ? 'off' : 'on']) === 'on';
    });
    return ticked.length === 0 ? '-' : ticked.join('');
  }
  // Numbers, orders and places: the key, an idea's answer, or one that shows nothing.
  const { right, wrong } = selfAnswers(keyed);
  const stray = wrong.filter(({ idea }) => idea === null).map(({ answer }) => answer);
  const own = wrong.filter(({ idea }) => idea !== null && held.includes(idea as IdeaId)).map(({ answer }) => answer);
  const meant = own.length > 0 ? draw.pick(own) : right;
  if (!draw.chance(SLIP)) return meant;
  const others = [right, ...wrong.map(({ answer }) => answer), ...stray].filter((answer) => answer !== meant);
  return others.length === 0 ? meant : draw.pick(others);
}

function play(seed: number, held: readonly IdeaId[], most: number): { named: IdeaId[]; items: number } {
  const plan = { seed, most, modules: [], units: 'metric' as const };
  const draw = drawFrom('learner', seed, held.join());
  let now = openDiagnosis(bank, plan);
  while (now.next) now = answerDiagnosis(bank, plan, now, answerOf(now.next, held, draw));
  return { named: namedIdeas(now.beliefs), items: now.asked.length };
}

/** Shares named over `learners` simulated learners: holders of one idea, of two, of none. */
export function measureLearners(learners = 500): LearnerRow[] {
  const run = (
    what: string,
    most: number,
    goal: number,
    holds: (seed: number) => IdeaId[],
    good: (named: IdeaId[], held: IdeaId[]) => boolean,
  ): LearnerRow => {
    let named = 0;
    let items = 0;
    let wronged = 0;
    for (let seed = 0; seed < learners; seed++) {
      const held = holds(seed);
      const done = play(seed, held, most);
      if (good(done.named, held)) named++;
      if (done.named.some((idea) => !held.includes(idea))) wronged++;
      items += done.items;
    }
    return {
      what,
      learners,
      named: named / learners,
      wronged: wronged / learners,
      items: items / learners,
      goal,
    };
  };
  const all = (named: IdeaId[], held: IdeaId[]): boolean => held.every((idea) => named.includes(idea));
  return [
    run(
      'one idea held, named within 12 items',
      12,
      0.95,
      (seed) => [IDEAS[seed % IDEAS.length] ?? 'skin-is-fine'],
      all,
    ),
    run('two ideas held, both named within 20 items', 20, 0.85, (seed) => drawFrom('two', seed).some(IDEAS, 2), all),
    run(
      'none held, none named within 12 items',
      12,
      0.95,
      () => [],
      (named) => named.length === 0,
    ),
  ];
}

/** Median time to make one item of each template without a kept solver run among its pictures, ms. */
export function measureMaking(seeds = 40): { medianMs: number; slowest: string; slowestMs: number } {
  const times = bank.templates.map(({ id }) => {
    const taken = Array.from({ length: seeds }, (_, seed) => {
      const start = performance.now();
      compose(bank, { template: id, seed, slot: 0 }, 'imperial');
      return performance.now() - start;
    }).sort((a, b) => a - b);
    return { id, ms: taken[Math.floor(seeds / 2)] ?? 0 };
  });
  const sorted = [...times].sort((a, b) => a.ms - b.ms);
  const slowest = sorted.at(-1);
  return {
    medianMs: sorted[Math.floor(sorted.length / 2)]?.ms ?? 0,
    slowest: slowest?.id ?? '',
    slowestMs: slowest?.ms ?? 0,
  };
}

if (process.argv[1]?.endsWith('quiz-learners.ts')) {
  const learners = Number(process.argv[2] ?? 500);
  for (const row of measureLearners(learners))
    process.stdout.write(
      `${row.what}: ${(row.named * 100).toFixed(1)} % of ${row.learners} (goal ${row.goal * 100} %), one wrongly of ${(row.wronged * 100).toFixed(1)} %, ${row.items.toFixed(1)} items on average\n`,
    );
  const making = measureMaking();
  process.stdout.write(
    `one item: ${making.medianMs.toFixed(2)} ms median, slowest ${making.slowest} ${making.slowestMs.toFixed(2)} ms\n`,
  );
}
