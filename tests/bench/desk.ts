/**
 * The desk's load, run by `npm run bench:desk`: 500 hand-ins of 20 items read and marked again, and the sheets and keys
 * of 40 seats. Each is to take at most 5 s on one core.
 */
import { bank } from '../../quiz-bank/bank.ts';
import { sheetsOf } from '../../quiz-bank/paper/sheets.ts';
import type { ClassRound } from '../../quiz-bank/records/class-round.ts';
import { collect } from '../../quiz-bank/records/collect.ts';
import { writeHandIn } from '../../quiz-bank/records/hand-in.ts';
import { markHandIn, seatItems, seatShelf } from '../../quiz-bank/records/mark-class.ts';
import { classStatistics } from '../../quiz-bank/records/statistics.ts';

const BUDGET_MS = 5000;
const round: ClassRound = {
  code: 'LOAD-1',
  bank: bank.version,
  modules: [],
  items: 20,
  pass: 0.8,
  perSeat: true,
  units: 'imperial',
  due: null,
};

async function handIns(): Promise<number> {
  const right = new Map(
    Array.from(
      { length: 40 },
      (_, at) => [at + 1, seatItems(bank, round, at + 1).map(({ key }) => key.right)] as const,
    ),
  );
  const dropped = Array.from({ length: 500 }, (_, at) => {
    const seat = (at % 40) + 1;
    const answers = (right.get(seat) ?? []).map((answer, slot) => ((at + slot) % 3 === 0 ? '' : answer));
    const text = writeHandIn({ round, seat, name: `Learner ${at}`, answers, at });
    return { name: `${at}.txt`, bytes: text.length, text: () => Promise.resolve(text) };
  });
  const begun = performance.now();
  const { taken } = await collect(dropped, round, []);
  const items = seatShelf(bank, round);
  const marks = taken.map(({ handIn }) => markHandIn(handIn, round, items(handIn.seat)));
  classStatistics(marks.map((one) => one.marks.map((mark) => mark.points)));
  if (marks.length !== 500) throw new Error(`Only ${marks.length} of 500 hand-ins were marked.`);
  return performance.now() - begun;
}

function papers(): number {
  const begun = performance.now();
  const sheets = sheetsOf(
    bank,
    round,
    Array.from({ length: 40 }, (_, at) => at + 1),
  );
  if (sheets.length !== 40) throw new Error('Forty sheets were asked for.');
  return performance.now() - begun;
}

const rows = [
  { what: '500 hand-ins of 20 items, read and marked', ms: Math.round(await handIns()), budgetMs: BUDGET_MS },
  { what: '40 seats of 20 items, sheets and keys', ms: Math.round(papers()), budgetMs: BUDGET_MS },
];
if (process.argv.includes('--json')) process.stdout.write(`${JSON.stringify(rows)}\n`);
else for (const { what, ms, budgetMs } of rows) process.stdout.write(`${what}: ${ms} ms of ${budgetMs}\n`);
process.exitCode = rows.every(({ ms, budgetMs }) => ms <= budgetMs) ? 0 : 1;
