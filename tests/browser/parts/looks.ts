/** The pages and states whose look is held by pictures, and how each is reached. */
import { expect, type Locator, type Page } from '@playwright/test';

import { bank } from '@quiz/bank.ts';
import { type ClassRound, writeRound } from '@quiz/records/class-round.ts';
import { writeHandIn } from '@quiz/records/hand-in.ts';
import { seatItems } from '@quiz/records/mark-class.ts';

export interface Look {
  name: string;
  path: string;
  /** What must be there before the picture is taken. */
  ready: (page: Page) => Promise<void>;
  /** What chance or the address of this machine decides. */
  mask?: (page: Page) => Locator[];
  flat?: true;
}

const ROUND: ClassRound = {
  code: 'MILL-3', bank: bank.version, modules: [], items: 10, pass: 0.8, perSeat: true, units: 'imperial', due: null,
}; // prettier-ignore

/** A hand-in of that round with every second question right, the others left out. */
function handIn(seat: number, name: string): string {
  const answers = seatItems(bank, ROUND, seat).map(({ key }, at) => (at % 2 === 0 ? key.right : ''));
  return writeHandIn({ round: ROUND, seat, name, answers, at: 29_000_000 });
}

async function setRound(page: Page): Promise<void> {
  await page.getByLabel('Code of the round').fill(ROUND.code);
  await page.getByRole('button', { name: 'Set this round' }).click();
  await expect(page.getByRole('img', { name: /Square code/ })).toBeVisible();
}

/** Brings the tabs of the desk to the top, so that what stands under them is in the picture. */
const toTabs = (page: Page): Promise<void> => page.getByRole('tablist').evaluate((tabs) => tabs.scrollIntoView());

const heading =
  (name: string | RegExp) =>
  async (page: Page): Promise<void> =>
    expect(page.getByRole('heading', { name }).first()).toBeVisible();

export const looks: readonly Look[] = [
  { name: 'home', path: '', ready: heading(/The bed you cannot see/) },
  { name: 'course', path: 'lessons/', ready: heading('The course') },
  { name: 'teach', path: 'lessons/setting/teach/', ready: heading('Setting') },
  { name: 'lesson', path: 'lessons/setting/', ready: heading('Setting') },
  {
    name: 'figure',
    path: 'lessons/what-the-ridges-are-for/',
    ready: async (page) => {
      const figure = page.getByRole('figure', { name: /Press only/ });
      await figure.scrollIntoViewIfNeeded();
      await figure.getByRole('slider').fill('85');
      await figure.getByRole('button', { name: /Set and pull/ }).click();
      await expect(figure.locator('dl.readings').first()).toContainText('The bed gave');
      await figure.evaluate((it) => it.scrollIntoView());
    },
  },
  {
    name: 'job',
    path: 'job/',
    ready: async (page) => expect(page.locator('[data-line="coverage"]')).toBeVisible({ timeout: 20_000 }),
  },
  {
    name: 'round',
    path: 'rounds/',
    ready: async (page) => expect(page.getByRole('button', { name: 'Begin' })).toBeVisible(),
    mask: (page) => [page.getByLabel('Round number')],
  },
  { name: 'question', path: 'rounds/#seed=7&items=5&mode=mixed', ready: heading('Question 1 of 5') },
  {
    name: 'answer',
    path: 'rounds/#seed=7&items=5&mode=mixed',
    ready: async (page) => {
      await heading('Question 1 of 5')(page);
      for (const list of await page.locator('fieldset.choices').all()) await list.locator('input').first().check();
      await page.getByRole('button', { name: 'Check' }).click();
      await expect(page.locator('.verdict')).toBeVisible();
      await page.locator('.verdict').evaluate((verdict) => verdict.scrollIntoView());
    },
  },
  { name: 'ideas', path: 'rounds/ideas/', ready: heading('The wrong ideas') },
  {
    name: 'bench',
    path: 'bench/#bed=1&comb=swirl&do=p200_0_0~s200_6_2_0_20',
    flat: true,
    ready: async (page) => {
      await page.getByRole('button', { name: 'Set the tile' }).click();
      await page.getByRole('button', { name: 'Pull the tile' }).click();
      await page.getByRole('button', { name: 'Pull without a guess' }).click();
      await expect(page.getByText(/Coverage\s\d+\s%/).first()).toBeVisible({ timeout: 20_000 });
    },
  },
  {
    name: 'eye',
    path: 'eye/',
    ready: async (page) => {
      await expect(page.locator('figure canvas')).toBeVisible({ timeout: 20_000 });
    },
  },
  {
    name: 'search',
    path: 'search/?q=coverage',
    ready: async (page) => expect(page.locator('main li a').first()).toBeVisible(),
  },
  {
    name: 'record',
    path: 'record/',
    ready: async (page) => {
      await expect(page.getByText('Nothing yet.')).toBeVisible();
      await expect(page.getByRole('button', { name: 'Ask the browser to keep it' })).toBeVisible();
    },
  },
  {
    name: 'review',
    path: 'review/',
    ready: async (page) => expect(page.getByText('Nothing has been learned yet')).toBeVisible(),
  },
  { name: 'terms', path: 'terms/', ready: heading('Terms') },
  {
    name: 'desk',
    path: 'desk/',
    ready: setRound,
    mask: (page) => [page.getByLabel('Link for the class'), page.getByRole('img', { name: /Square code/ })],
  },
  {
    name: 'hand-ins',
    path: 'desk/',
    ready: async (page) => {
      await setRound(page);
      await page.getByRole('tab', { name: 'Hand-ins' }).click();
      await page.getByLabel('Paste lines of text').fill('What is no hand-in is told apart.');
      await page.getByRole('button', { name: 'Take these lines' }).click();
      await expect(page.getByRole('table', { name: 'Not taken' })).toBeVisible();
      await toTabs(page);
    },
  },
  {
    name: 'marks',
    path: 'desk/',
    ready: async (page) => {
      await setRound(page);
      await page.getByRole('tab', { name: 'Hand-ins' }).click();
      await page.getByLabel('Paste lines of text').fill(`${handIn(3, 'Ada Pell')}\n${handIn(9, 'Cy Fenn')}`);
      await page.getByRole('button', { name: 'Take these lines' }).click();
      await expect(page.getByText('2 hand-ins taken.')).toBeVisible();
      await page.getByRole('tab', { name: 'Marks' }).click();
      await expect(page.getByRole('row', { name: /9 Cy Fenn/ })).toBeVisible();
      await toTabs(page);
    },
  },
  {
    name: 'hands-on',
    path: 'desk/',
    ready: async (page) => {
      await page.getByRole('tab', { name: 'Hands-on' }).click();
      await page.getByRole('application', { name: /Outline of tile 1/ }).click({ position: { x: 40, y: 40 } });
      await page.getByRole('application', { name: /Outline of tile 1/ }).evaluate((it) => it.scrollIntoView());
      await expect(page.getByText('(1 of 144 squares bare)')).toBeVisible();
    },
  },
  {
    name: 'take',
    path: `desk/take/#${writeRound(ROUND)}`,
    ready: async (page) => {
      await page.getByRole('button', { name: 'Begin' }).click();
      await expect(page.getByText('Write your name')).toBeVisible();
    },
  },
  {
    name: 'paper',
    path: `desk/paper/#${writeRound(ROUND)}.seats2`,
    ready: async (page) => {
      await expect(page.getByText('2 sheets are ready.')).toBeVisible();
      await page
        .locator('[data-sheet]')
        .first()
        .evaluate((sheet) => sheet.scrollIntoView());
    },
  },
  {
    name: 'crew',
    path: 'crew/',
    ready: async (page) => {
      await page.getByLabel('Heated floors').check();
      await expect(page.getByText('Electrical heat under tile.')).toBeVisible();
    },
  },
  { name: 'sources', path: 'sources/#coverage.wet', ready: heading('Sources') },
  { name: 'privacy', path: 'privacy/', ready: heading('What stays where') },
  { name: 'missing', path: 'nowhere/', ready: heading('No such page') },
];
