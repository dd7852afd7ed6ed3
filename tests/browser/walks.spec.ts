/**
 * Three whole evenings and mornings, each on one screen: an apprentice on a phone in the dark theme and millimetres, an
 * instructor on a projector, a shop owner on a laptop who has no mouse. WALK_PICTURES=folder keeps a picture of each
 * step, to be looked at.
 */
import { expect, type Page, test } from '@playwright/test';

import { accessible, fits, watch } from './watch.ts';

const pictures = process.env['WALK_PICTURES'];

/** What must hold wherever a walk stops: nothing sticks out, and it is usable by everyone. */
const stopper =
  (page: Page, walk: string) =>
  async (name: string): Promise<void> => {
    await fits(page);
    await accessible(page);
    if (pictures) await page.screenshot({ path: `${pictures}/${walk}-${name}.png`, fullPage: true });
  };

test.describe('an apprentice’s evening', () => {
  test.use({ viewport: { width: 360, height: 800 }, hasTouch: true, isMobile: true, colorScheme: 'dark' });

  test('a module from the guess to the pressed ridge, an eye trained, the record carried away', async ({ page }) => {
    test.slow();
    const seen = watch(page);
    const stop = stopper(page, 'apprentice');
    await page.goto('');
    await page.locator('.head-tools input[value="metric"]').check({ force: true });
    await stop('home');
    await page.getByRole('link', { name: 'Begin with module 1' }).tap();

    const figure = page.getByRole('figure', { name: /Press only/ });
    await figure.scrollIntoViewIfNeeded();
    await figure.getByRole('slider').fill('85');
    await figure.getByRole('button', { name: /Set and pull/ }).tap();
    await expect(figure.locator('dl.readings').first()).toContainText('The bed gave');
    await figure.getByRole('radio', { name: 'move across' }).check({ force: true });
    await stop('figure');

    const check = page.getByRole('region', { name: 'Check yourself' });
    await check.getByRole('button', { name: 'Take the three' }).tap();
    for (let at = 1; at <= 3; at++) {
      await expect(check.getByRole('heading', { name: new RegExp(`${at} of 3`) })).toBeVisible();
      await check.getByRole('button', { name: 'Leave it out' }).tap();
      if (at === 1) await stop('question');
      await check.getByRole('button', { name: /Next|See the result/ }).tap();
    }
    await expect(check.getByText('0 of 3.')).toBeVisible();
    await page.getByRole('button', { name: 'I have done this module' }).tap();
    await expect(page.getByText('The ridge is pressed')).toBeVisible();
    await stop('done');

    await page.goto('eye/');
    await page.getByRole('button', { name: 'Count it' }).tap();
    await expect(page.getByText(/^[01] of 1$/)).toBeVisible();
    await stop('eye');

    await page.goto('record/');
    await expect(page.getByRole('row', { name: /What the ridges are for/ })).toContainText('done');
    await stop('record');
    const saved = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as a file' }).tap();
    expect((await saved).suggestedFilename()).toMatch(/\.json$/);

    await page.goto('');
    await expect(page.getByRole('link', { name: /Go on with module 2/ })).toBeVisible();
    await stop('home-again');
    seen.clean();
  });
});

test.describe('an instructor’s class', () => {
  test.use({ viewport: { width: 1920, height: 1080 } });

  test('the wall, a round for twelve, a hand-in, the marks, the paper', async ({ page, browser }) => {
    test.slow();
    const seen = watch(page);
    const stop = stopper(page, 'instructor');
    await page.goto('');
    await page.getByRole('link', { name: 'Demonstrations on the wall' }).click();
    await page.waitForURL('**/bench/wall/');
    await expect(page.getByText('Combed. Ask the class before you go on.')).toBeVisible();
    await stop('wall');
    await page.keyboard.press('PageDown');
    await expect(page.getByText(/^Set\. Hands up/)).toBeVisible();
    await page.keyboard.press('2');
    await expect(page.getByRole('heading', { name: 'Slide across or along?' })).toBeVisible();

    await page.goto('desk/');
    await page.getByLabel('Code of the round').fill('MILL-3');
    await page.getByLabel('Questions', { exact: true }).fill('4');
    await page.getByLabel('Seats', { exact: true }).fill('12');
    await stop('desk-new');
    await page.getByRole('button', { name: 'Set this round' }).click();
    await expect(page.getByRole('heading', { name: 'MILL-3' })).toBeVisible();
    await stop('desk-set');
    const link = await page.getByLabel('Link for the class').inputValue();

    const learner = await (await browser.newContext({ viewport: { width: 360, height: 800 } })).newPage();
    const atSeat = stopper(learner, 'learner');
    await learner.goto(link);
    await learner.getByLabel('Your name').fill('Bo Marsh');
    await learner.getByLabel('Your seat').fill('7');
    await atSeat('begin');
    await learner.getByRole('button', { name: 'Begin' }).click();
    for (let at = 1; at <= 4; at++) {
      await expect(learner.getByRole('heading', { name: `Question ${at} of 4` })).toBeVisible();
      for (const list of await learner.locator('fieldset.choices').all()) await list.locator('input').first().check();
      if (at === 1) await atSeat('question');
      await learner.getByRole('button', { name: at === 4 ? 'To the hand-in' : 'Next' }).click();
    }
    const line = await learner.getByLabel('The hand-in as a line of text').inputValue();
    await atSeat('hand-in');
    await learner.close();

    await page.getByRole('tab', { name: 'Hand-ins' }).click();
    await page.getByLabel('Paste lines of text').fill(line);
    await page.getByRole('button', { name: 'Take these lines' }).click();
    await expect(page.getByText('One hand-in taken.')).toBeVisible();
    await stop('desk-taken');
    await page.getByRole('tab', { name: 'Marks' }).click();
    await expect(page.getByRole('row', { name: /7 Bo Marsh/ })).toBeVisible();
    await stop('desk-marks');

    await page.getByRole('tab', { name: 'Round' }).click();
    await page.getByRole('link', { name: 'Question sheets and keys on paper' }).click();
    await expect(page.getByText('12 sheets are ready.')).toBeVisible();
    await stop('paper');
    seen.clean();
  });
});

test.describe('a shop owner’s morning, without a mouse', () => {
  test.use({ viewport: { width: 1280, height: 800 } });

  /** Tab until what has the focus is called so; a person would stop looking after a while too. */
  async function tabTo(page: Page, name: RegExp): Promise<void> {
    for (let n = 0; n < 120; n++) {
      await page.keyboard.press('Tab');
      const called = await page.evaluate(() => {
        const at = document.activeElement;
        const labels = at instanceof HTMLInputElement || at instanceof HTMLSelectElement ? [...(at.labels ?? [])] : [];
        return [at?.getAttribute('aria-label'), ...labels.map((one) => one.textContent), at?.textContent]
          .join(' ')
          .trim();
      });
      if (name.test(called)) return;
    }
    throw new Error(`Nothing called ${String(name)} takes the focus.`);
  }

  test('a job planned and printed, the card of a new helper signed', async ({ page }) => {
    test.slow();
    const seen = watch(page);
    const stop = stopper(page, 'owner');
    await page.goto('');
    await tabTo(page, /Plan a job/);
    await page.keyboard.press('Enter');
    await page.waitForURL('**/job/');
    await tabTo(page, /Name of the job/);
    await page.keyboard.type('Mill Street hall');
    await tabTo(page, /^\s*Place/);
    await page.keyboard.press('ArrowDown');
    await expect(page.getByLabel('Place', { exact: true })).toHaveValue('interior-wet');
    await expect(page.locator('[data-line="coverage"] .value')).toHaveText('95 %');
    await stop('job');
    await tabTo(page, /^Coverage to reach/);
    await page.keyboard.press('Enter');
    await expect(page.locator('[data-line="coverage"] .status').first()).toBeVisible();
    for (const format of ['Letter', 'A4'] as const)
      expect((await page.pdf({ format })).toString('latin1').match(/\/Type\s*\/Page[^s]/g)).toHaveLength(1);
    if (pictures) await page.pdf({ format: 'Letter', path: `${pictures}/owner-job.pdf` });

    await page.goto('');
    await tabTo(page, /Print a crew card/);
    await page.keyboard.press('Enter');
    await page.waitForURL('**/crew/');
    await tabTo(page, /^Shop/);
    await page.keyboard.type('Mill Street Tile');
    await tabTo(page, /Heated floors/);
    await page.keyboard.press('Space');
    await expect(page.getByText('Electrical heat under tile.')).toBeVisible();
    await tabTo(page, /Mixes a batch.*Seen by/);
    await page.keyboard.type('A. Foreman');
    await stop('crew');
    if (pictures) await page.pdf({ format: 'Letter', path: `${pictures}/owner-crew.pdf` });
    seen.clean();
  });
});
