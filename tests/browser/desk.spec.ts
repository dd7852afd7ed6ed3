import { expect, test, type Page } from '@playwright/test';

import { bank } from '@quiz/bank.ts';
import { readRound, type ClassRound } from '@quiz/records/class-round.ts';
import { writeHandIn, writeHandInFile } from '@quiz/records/hand-in.ts';
import { seatItems } from '@quiz/records/mark-class.ts';
import { accessible, fits } from './watch.ts';

const round: ClassRound = {
  code: 'MILL-3', bank: bank.version, modules: [], items: 4, pass: 0.75, perSeat: true, units: 'imperial', due: null,
}; // prettier-ignore

const rightAnswers = (of: ClassRound, seat: number): string[] => seatItems(bank, of, seat).map(({ key }) => key.right);
const file = (seat: number, name: string, answers: string[]) => ({
  name: `${name}.json`,
  mimeType: 'application/json',
  buffer: Buffer.from(writeHandInFile({ round, seat, name, answers, at: 29_000_000 })),
});

async function setRound(page: Page): Promise<void> {
  await page.goto('desk/');
  await page.getByLabel('Code of the round').fill('MILL-3');
  await page.getByLabel('Questions', { exact: true }).fill('4');
  await page.getByLabel('Pass mark').fill('75');
  await page.getByLabel('Seats', { exact: true }).fill('12');
  await page.getByRole('button', { name: 'Set this round' }).click();
  await expect(page.getByRole('heading', { name: 'MILL-3' })).toBeVisible();
}

test.describe('the class desk', () => {
  test('sets a round as a link that holds everything after the #', async ({ page }) => {
    await setRound(page);
    const link = await page.getByLabel('Link for the class').inputValue();
    expect(readRound(link.split('#')[1] ?? '')).toEqual(round);
    await expect(page.getByRole('img', { name: /Square code of the link/ })).toBeVisible();
    await expect(page.getByLabel('Name at seat 12')).toBeVisible();
  });

  test('names each box that cannot be used, and keeps it', async ({ page }) => {
    await page.goto('desk/');
    await page.getByLabel('Code of the round').fill('a b');
    await page.getByLabel('Questions', { exact: true }).fill('99');
    await page.getByLabel('Seats', { exact: true }).fill('400');
    await page.getByRole('button', { name: 'Set this round' }).click();
    await expect(page.getByText('Give two to twelve letters')).toBeVisible();
    await expect(page.getByText('Give a whole number from 1 to 40.')).toHaveCount(2);
    await expect(page.getByLabel('Code of the round')).toHaveValue('a b');
  });

  test('marks again from the answers, names the bad files one by one, and keeps all on reload', async ({ page }) => {
    await setRound(page);
    await page.getByRole('tab', { name: 'Hand-ins' }).click();
    const good = rightAnswers(round, 3);
    const cut = writeHandIn({ round, seat: 5, name: 'Cut', answers: good, at: 1 }).slice(0, 60);
    await page.setInputFiles('input[type=file]', [
      file(3, 'Ada', good),
      file(4, '=cmd()', ['', '', '', '']),
      { name: 'cut.txt', mimeType: 'text/plain', buffer: Buffer.from(cut) },
      { name: 'photo.png', mimeType: 'image/png', buffer: Buffer.from([0x89, 0x50, 0x4e, 0x47, 0xff, 0xfe]) },
      { name: '\u202egnp.exe', mimeType: 'text/plain', buffer: Buffer.from('<script>alert(1)</script>') },
      { name: 'again.json', mimeType: 'application/json', buffer: file(3, 'Ada', good).buffer },
    ]);
    await expect(page.getByText('2 hand-ins taken.')).toBeVisible();
    const refused = page.getByRole('table', { name: 'Not taken' });
    await expect(refused.getByRole('row', { name: /cut\.txt It is cut off/ })).toBeVisible();
    await expect(refused.getByRole('row', { name: /photo\.png It is not a hand-in: not text/ })).toBeVisible();
    await expect(refused.getByRole('row', { name: /again\.json The same hand-in is here already/ })).toBeVisible();
    await expect(refused.getByRole('row')).toHaveCount(5);
    await page.getByRole('tab', { name: 'Marks' }).click();
    const marks = page.getByRole('region', { name: 'Marks by learner' });
    await expect(marks.getByRole('row', { name: /Ada 100 % . passed/ })).toBeVisible();
    await expect(marks.getByRole('row', { name: /=cmd\(\) 0 % . not passed/ })).toBeVisible();
    await expect(page.getByText('not given under ten learners')).toBeVisible();
    await page.reload();
    await page.getByRole('tab', { name: 'Marks' }).click();
    await expect(marks.getByRole('row', { name: /Ada 100 % . passed/ })).toBeVisible();
    const saved = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as CSV' }).click();
    let text = '';
    for await (const piece of await (await saved).createReadStream()) text += String(piece);
    expect(text).toContain("'=cmd()");
  });

  test('erases everything, but only after asking', async ({ page }) => {
    await setRound(page);
    await page.getByRole('tab', { name: 'Keep and erase' }).click();
    await page.getByRole('button', { name: 'Erase everything of the desk' }).click();
    await page.getByRole('button', { name: 'Yes, erase it all' }).click();
    await expect(page.getByText('Everything of the desk was erased.')).toBeVisible();
    await page.reload();
    await expect(page.getByLabel('Code of the round')).toBeVisible();
    await expect(page.getByRole('heading', { name: 'MILL-3' })).toHaveCount(0);
  });

  for (const width of [360, 1280])
    test(`is accessible at ${width} px`, async ({ page }) => {
      await page.setViewportSize({ width, height: 800 });
      await setRound(page);
      await page.getByRole('tab', { name: 'Hand-ins' }).click();
      await page.setInputFiles('input[type=file]', [file(1, 'Ada', rightAnswers(round, 1)), file(2, 'x'.repeat(60), rightAnswers(round, 2))]); // prettier-ignore
      await expect(page.getByText('2 hand-ins taken.')).toBeVisible();
      await page.getByRole('tab', { name: 'Hands-on' }).click();
      await page.getByLabel('Learner', { exact: true }).fill('Ada');
      await page.getByRole('button', { name: 'Judge and keep' }).click();
      for (const tab of ['Round', 'Hand-ins', 'Marks', 'Hands-on', 'Keep and erase']) {
        await page.getByRole('tab', { name: tab }).click();
        if (tab === 'Marks') await expect(page.getByRole('region', { name: 'Marks by learner' })).toBeVisible();
        await accessible(page);
        await fits(page);
      }
    });
});

test.describe('taking a class’s round', () => {
  test('a learner answers, hands in, and the desk marks it', async ({ page, browser }) => {
    await setRound(page);
    const link = await page.getByLabel('Link for the class').inputValue();
    const learner = await (await browser.newContext()).newPage();
    await learner.goto(link);
    await learner.getByRole('button', { name: 'Begin' }).click();
    await expect(learner.getByText('Write your name')).toBeVisible();
    await learner.getByLabel('Your name').fill('Bo Marsh');
    await learner.getByLabel('Your seat').fill('7');
    await learner.getByRole('button', { name: 'Begin' }).click();
    for (let at = 1; at <= 4; at++) {
      await expect(learner.getByRole('heading', { name: `Question ${at} of 4` })).toBeVisible();
      // The first of each list: an answer to judge wants a verdict and a reason.
      for (const list of await learner.locator('fieldset.choices').all()) await list.locator('input').first().check();
      await learner.getByRole('button', { name: at === 4 ? 'To the hand-in' : 'Next' }).click();
    }
    await expect(learner.getByRole('img', { name: /Square code of your hand-in/ })).toBeVisible();
    await accessible(learner);
    const line = await learner.getByLabel('The hand-in as a line of text').inputValue();
    await learner.close();
    await page.getByRole('tab', { name: 'Hand-ins' }).click();
    await page.getByLabel('Paste lines of text').fill(`${line}\nnonsense`);
    await page.getByRole('button', { name: 'Take these lines' }).click();
    await expect(page.getByText('One hand-in taken.')).toBeVisible();
    await expect(page.getByRole('row', { name: /pasted text 2/ })).toBeVisible();
    await page.getByRole('tab', { name: 'Marks' }).click();
    await expect(page.getByRole('row', { name: /7 Bo Marsh/ })).toBeVisible();
  });

  test('a link that is cut off says so', async ({ page }) => {
    await page.goto('desk/take/#class1.1.MILL');
    await expect(page.getByText('There is no round in this address')).toBeVisible();
  });
});

test('the papers: a sheet and a key a seat, each on pages of its own', async ({ page }) => {
  await setRound(page);
  await page.getByRole('link', { name: 'Question sheets and keys on paper' }).click();
  await expect(page.getByText('12 sheets are ready.')).toBeVisible();
  await expect(page.locator('[data-sheet]')).toHaveCount(12);
  await page.getByLabel('Both').check({ force: true });
  await expect(page.locator('[data-key]')).toHaveCount(12);
  const key = await page.locator('[data-key="3"] li').allTextContents();
  expect(key).toHaveLength(4);
  const paper = (await page.pdf({ format: 'A4' })).toString('latin1');
  // Four questions are a page or two, with the heading on the first; a key is one.
  const pages = (paper.match(/\/Type\s*\/Page[^s]/g) ?? []).length;
  expect(pages).toBeGreaterThanOrEqual(24);
  expect(pages).toBeLessThanOrEqual(36);
});

test('two tabs of the desk hold one book', async ({ page, context }) => {
  await setRound(page);
  const other = await context.newPage();
  await other.goto('desk/');
  await other.getByLabel('Name at seat 2').fill('Cy');
  await other.getByLabel('Name at seat 2').blur();
  await expect(page.getByLabel('Name at seat 2')).toHaveValue('Cy');
  await page.getByLabel('Name at seat 1', { exact: true }).fill('Ada');
  await page.getByLabel('Name at seat 1', { exact: true }).blur();
  await expect(other.getByLabel('Name at seat 1', { exact: true })).toHaveValue('Ada');
  await other.reload();
  await expect(other.getByLabel('Name at seat 2')).toHaveValue('Cy');
});

test('a book that this edition cannot read is put aside, never written over', async ({ page }) => {
  await page.goto('desk/');
  await expect(page.getByLabel('Code of the round')).toBeVisible();
  const shelf = (key: string, value?: unknown) =>
    page.evaluate(
      ([at, given]) =>
        new Promise((resolve, reject) => {
          const opening = indexedDB.open('ridge-to-bed.desk', 1);
          opening.onsuccess = () => {
            const table = opening.result.transaction('book', 'readwrite').objectStore('book');
            const asked = given === undefined ? table.get(at as string) : table.put(given, at as string);
            asked.onsuccess = () => resolve(asked.result);
            asked.onerror = () => reject(new Error(String(asked.error)));
          };
        }),
      [key, value],
    );
  await shelf('book', { ridgeToBed: 'desk', version: 9, years: 'of work' });
  await page.reload();
  await expect(page.getByText('It was put aside, not erased')).toBeVisible();
  await setRound(page);
  expect(await shelf('book.unread')).toEqual({ ridgeToBed: 'desk', version: 9, years: 'of work' });
});

test('a name that is markup is shown as text and runs nothing', async ({ page }) => {
  const name = '<img src=x onerror="window.broken=1">';
  await setRound(page);
  await page.getByRole('tab', { name: 'Hand-ins' }).click();
  await page.setInputFiles('input[type=file]', [file(2, name, rightAnswers(round, 2))]);
  await page.getByRole('tab', { name: 'Marks' }).click();
  await expect(page.getByRole('row', { name: /100 % . passed/ })).toContainText(name);
  expect(await page.evaluate(() => 'broken' in window)).toBe(false);
});
