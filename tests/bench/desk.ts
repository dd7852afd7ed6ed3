/**
 * The desk's load: 500 hand-ins of 20 items read and marked again, and the sheets and keys of 40 seats, by the core
 * alone in Node and then by the pages in Chromium, as an instructor has it.
 */
import type { Browser } from '@playwright/test';

import { bank } from '../../quiz-bank/bank.ts';
import { sheetsOf } from '../../quiz-bank/paper/sheets.ts';
import { type ClassRound, writeRound } from '../../quiz-bank/records/class-round.ts';
import { collect } from '../../quiz-bank/records/collect.ts';
import { writeHandIn } from '../../quiz-bank/records/hand-in.ts';
import { markHandIn, seatItems, seatShelf } from '../../quiz-bank/records/mark-class.ts';
import { classStatistics } from '../../quiz-bank/records/statistics.ts';
import type { Section } from './section.ts';

const BUDGET_MS = 5000;
const HAND_INS = 500;
const SEATS = 40;
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

/** Hand-ins of learners who leave a third out. */
function handIns(): string[] {
  const right = Array.from({ length: SEATS }, (_, at) => seatItems(bank, round, at + 1).map(({ key }) => key.right));
  return Array.from({ length: HAND_INS }, (_, at) => {
    const answers = (right[at % SEATS] ?? []).map((answer, slot) => ((at + slot) % 3 === 0 ? '' : answer));
    return writeHandIn({ round, seat: (at % SEATS) + 1, name: `Learner ${at}`, answers, at });
  });
}

async function marksInNode(lines: readonly string[]): Promise<number> {
  const dropped = lines.map((text, at) => ({
    name: `${at}.txt`,
    bytes: text.length,
    text: () => Promise.resolve(text),
  }));
  const begun = performance.now();
  const { taken } = await collect(dropped, round, []);
  const items = seatShelf(bank, round);
  const marks = taken.map(({ handIn }) => markHandIn(handIn, round, items(handIn.seat)));
  classStatistics(marks.map((one) => one.marks.map((mark) => mark.points)));
  if (marks.length !== HAND_INS) throw new Error(`Only ${marks.length} of ${HAND_INS} hand-ins were marked.`);
  return performance.now() - begun;
}

function papersInNode(): number {
  const begun = performance.now();
  const seats = Array.from({ length: SEATS }, (_, at) => at + 1);
  if (sheetsOf(bank, round, seats).length !== SEATS) throw new Error('Forty sheets were asked for.');
  return performance.now() - begun;
}

/** Files dropped on the desk until the last learner's mark stands in the table. */
async function marksInPage(browser: Browser, base: string, lines: readonly string[]): Promise<number> {
  const page = await browser.newPage();
  await page.goto(`${base}/desk/`);
  await page.getByLabel('Code of the round').fill(round.code);
  await page.getByLabel('Questions', { exact: true }).fill(String(round.items));
  await page.getByLabel('Pass mark').fill(String(round.pass * 100));
  await page.getByLabel('Seats', { exact: true }).fill(String(SEATS));
  await page.getByRole('button', { name: 'Set this round' }).click();
  await page.getByRole('tab', { name: 'Hand-ins' }).click();
  // The files are handed to the input inside the page: carrying them there is none of the desk's work.
  const taken = await page.evaluate(async (texts) => {
    const input = document.querySelector<HTMLInputElement>('input[type=file]');
    if (!input) throw new Error('The desk takes no files.');
    const box = new DataTransfer();
    texts.forEach((text, at) => box.items.add(new File([text], `${at}.txt`, { type: 'text/plain' })));
    const begun = performance.now();
    input.files = box.files;
    input.dispatchEvent(new Event('change', { bubbles: true }));
    while (!document.body.textContent.includes(`${texts.length} hand-ins taken.`))
      await new Promise(requestAnimationFrame);
    return performance.now() - begun;
  }, lines);
  const marked = await page.evaluate(async () => {
    const tab = [...document.querySelectorAll<HTMLElement>('[role=tab]')].find((one) => one.innerText === 'Marks');
    const begun = performance.now();
    tab?.click();
    while (!document.body.textContent.includes('Learner 499')) await new Promise(requestAnimationFrame);
    return performance.now() - begun;
  });
  await page.close();
  return taken + marked;
}

/** The page of papers, from its address to the word that all sheets are ready. */
async function papersInPage(browser: Browser, base: string): Promise<number> {
  const page = await browser.newPage();
  const begun = performance.now();
  await page.goto(`${base}/desk/paper/#${writeRound(round)}.seats${SEATS}`);
  await page.getByText(`${SEATS} sheets are ready.`).waitFor({ timeout: 60_000 });
  const ms = performance.now() - begun;
  await page.close();
  return ms;
}

export async function deskSection(browser: Browser, base: string): Promise<Section> {
  const lines = handIns();
  const row = (what: string, where: string, ms: number): object => ({
    what,
    where,
    ms: Math.round(ms),
    budgetMs: BUDGET_MS,
    holds: ms <= BUDGET_MS,
  });
  const [marking, printing] = [`${HAND_INS} hand-ins of 20 items, read and marked`, `${SEATS} seats, sheets and keys`];
  return {
    title: 'Class desk',
    says: 'The load of a large class, by the clock. In Chromium: from dropping the files to the last mark in the table, and from opening the page of papers to the last sheet. Budget 5 s each.',
    rows: [
      row(marking, 'Node', await marksInNode(lines)),
      row(printing, 'Node', papersInNode()),
      row(marking, 'Chromium', await marksInPage(browser, base, lines)),
      row(printing, 'Chromium', await papersInPage(browser, base)),
    ],
  };
}
