import { expect, test, type Page } from '@playwright/test';

import { addArea, freshDraft, MOST_AREAS, setAreaBoxes, type Draft } from '@site/islands/job/draft.ts';
import { linkHash } from '@site/islands/job/link.ts';
import { accessible, fits } from './watch.ts';

const line = (page: Page, id: string) => page.locator(`[data-line="${id}"]`).first();
const planned = async (page: Page) => {
  await page.goto('job/');
  await expect(line(page, 'coverage').locator('.value')).toHaveText('80 %');
};

/** Stops a reckoning at the first share of it that the page shows: it is over too soon to be watched from outside. */
const stopUnderWay = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<{ share: number; label: string }>((done) => {
        const look = (): void => {
          const bar = document.querySelector<HTMLProgressElement>('#plan-progress');
          const button = [...document.querySelectorAll('button')].find((one) => one.textContent === 'Cancel');
          if (!bar || !button || bar.value === 0) return;
          watch.disconnect();
          done({ share: bar.value, label: bar.labels[0]?.textContent ?? '' });
          button.click();
        };
        const watch = new MutationObserver(look);
        watch.observe(document.body, { subtree: true, childList: true, attributes: true });
        look();
      }),
  );

test.describe('the job sheet', () => {
  test('plans the job it opens with, and follows a change', async ({ page }) => {
    await planned(page);
    await page.getByLabel('Place', { exact: true }).selectOption('interior-wet');
    await expect(line(page, 'coverage').locator('.value')).toHaveText('95 %');
  });

  test('opens every line to its reason and source', async ({ page }) => {
    await planned(page);
    const lines = page.locator('[data-line]');
    const count = await lines.count();
    expect(count).toBeGreaterThan(15);
    for (let at = 0; at < count; at++) {
      const one = lines.nth(at);
      await one.locator('summary').first().click();
      await expect(one.locator('.reason .status').first(), (await one.getAttribute('data-line')) ?? '').toBeVisible();
    }
  });

  test('names what was wrong beside the box, keeps it, and plans on when it is put right', async ({ page }) => {
    await planned(page);
    const joint = page.getByLabel('Joint', { exact: true });
    await joint.fill('wide');
    await expect(page.getByText('This is not a length; type one such as')).toBeVisible();
    await expect(joint).toHaveValue('wide');
    await expect(joint).toHaveAttribute('aria-invalid', 'true');
    await expect(page.getByText('Area 1 is left out of the plan')).toBeVisible();
    await joint.fill('-3');
    await expect(page.getByText(/Give a number from 0 in to/)).toBeVisible();
    await page.getByLabel('Length', { exact: true }).fill('4000 ft');
    await expect(page.getByText(/Give a number from/).first()).toBeVisible();
    await page.getByLabel('Length', { exact: true }).fill('24');
    await joint.fill('1/4');
    await expect(page.getByText('is left out of the plan')).toHaveCount(0);
  });

  test('a fold stays open while its boxes are filled in, and the plan follows what is really done', async ({
    page,
  }) => {
    await planned(page);
    await page.getByText('How it is really done').click();
    const expected = line(page, 'predicted').locator('.value');
    const straight = await expected.textContent();
    await page.getByLabel('Combed').selectOption('swirl');
    await expect(expected).not.toHaveText(straight ?? '');
    const moved = page.getByLabel('Moved there and back', { exact: true });
    await moved.fill('far');
    await expect(page.getByText('This is not a length; type one such as')).toBeVisible();
    await moved.fill('0');
    await page.getByLabel('No back coat is given').check();
    await expect(moved).toBeVisible();
    await expect(page.getByText('It is combed in swirls')).toBeVisible();
  });

  test('shows how far the reckoning is, lets it be stopped and begun again, and leaves a fold as it was', async ({
    page,
  }) => {
    test.slow(); // twenty areas are a long page
    // A quick machine is done before the page has the patience to show a bar; here it shows it at once.
    await page.addInitScript((patience) => {
      const wait = window.setTimeout.bind(window);
      const sooner = (call: TimerHandler, ms?: number): number => wait(call, ms === patience ? 0 : ms);
      window.setTimeout = sooner as typeof window.setTimeout;
    }, 500);
    // As many areas as a sheet holds, each done otherwise than asked, so that there is something to wait for.
    let big: Draft = freshDraft('imperial');
    while (big.areas.length < MOST_AREAS) big = addArea(big);
    for (const { id } of big.areas)
      big = setAreaBoxes(big, id, { combed: 'swirl', moved: '0', area: String(100 + id), length: '36', width: '18' });
    await page.goto(`job/${linkHash(big)}`);
    const first = await stopUnderWay(page);
    expect(first.label).toBe('Working out the plan');
    expect(first.share).toBeGreaterThan(0);
    expect(first.share).toBeLessThan(1);
    await expect(page.getByRole('progressbar')).toBeHidden();
    await expect(page.getByText('The plan was stopped before it was done')).toBeVisible();
    await expect(page.locator('[data-plan]')).toHaveCount(0);
    await page.getByRole('button', { name: 'Work it out again' }).click();
    await expect(page.locator('[data-plan]')).toHaveCount(MOST_AREAS, { timeout: 30_000 });

    const fold = page.locator('details', { hasText: 'How it is really done' }).first();
    await fold.locator('summary').click();
    const combed = fold.getByLabel('Combed');
    // A change of every area, since one alone is planned too soon to be stopped; the watch begins before it.
    const stopped = stopUnderWay(page);
    await page.getByLabel('Standards').selectOption({ index: 1 });
    await stopped;
    await expect(page.getByText('what stands here is from before the last change')).toBeVisible();
    await expect(combed).toBeVisible();
    await combed.selectOption('straight');
    await expect(combed).toHaveValue('straight');
    await fold.getByLabel('Pressed').selectOption('light');
    await expect(page.getByText('It is laid with a light hand').first()).toBeVisible({ timeout: 30_000 });
    await expect(combed).toBeVisible();
  });

  test('takes a step back and forward again', async ({ page }) => {
    await planned(page);
    const joint = page.getByLabel('Joint', { exact: true });
    await page.getByRole('button', { name: 'Joint: more' }).click();
    await expect(joint).toHaveValue('1/4');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(joint).toHaveValue('3/16');
    await page.keyboard.press('Control+Shift+z');
    await expect(joint).toHaveValue('1/4');
  });

  test('keeps the job on reload, and carries it by link into another browser', async ({ page, browser }) => {
    await planned(page);
    await page.getByLabel('Name of the job').fill('Mill Street hall');
    await page.getByLabel('Width', { exact: true }).fill('not yet known');
    await page.reload();
    await expect(page.getByLabel('Width', { exact: true })).toHaveValue('not yet known');
    await page.getByRole('button', { name: 'Make a link' }).click();
    const link = await page.getByLabel('Link to this job').inputValue();
    const other = await browser.newPage();
    await other.goto(link);
    await expect(other.getByLabel('Name of the job')).toHaveValue('Mill Street hall');
    await expect(other.getByLabel('Width', { exact: true })).toHaveValue('not yet known');
    await other.close();
  });

  test('a broken link leaves what was here', async ({ page }) => {
    await planned(page);
    await page.getByLabel('Name of the job').fill('Kept');
    await page.goto('job/#job1.abcdef');
    await expect(page.getByText('The link is cut off or altered')).toBeVisible();
    await expect(page.getByLabel('Name of the job')).toHaveValue('Kept');
  });

  test('plans several areas, and counts their bags together', async ({ page }) => {
    await planned(page);
    await page.getByRole('button', { name: 'Duplicate' }).click();
    await expect(page.locator('[data-plan]')).toHaveCount(2);
    await expect(page.getByText('The whole job:')).toBeVisible();
    await page.getByRole('button', { name: 'Remove' }).first().click();
    await expect(page.locator('[data-plan]')).toHaveCount(1);
  });

  test('shows the maker’s notch as overriding', async ({ page }) => {
    await planned(page);
    await page.getByText('The maker’s written instructions').click();
    await page.getByLabel('Notch the maker asks for').selectOption('square');
    await page.getByLabel('Its width').fill('3/8');
    await page.getByLabel('Its depth').fill('3/8');
    await expect(page.getByText(/The maker’s instruction stands in place of our choice/)).toBeVisible();
  });

  test('speaks both systems of units', async ({ page }) => {
    await planned(page);
    await page.getByLabel('millimetres and metres').check({ force: true });
    await expect(page.getByLabel('Joint', { exact: true })).toHaveValue('5');
    await expect(line(page, 'meanBed').locator('.value')).toContainText('mm');
  });

  test('saves a table that a spreadsheet opens safely', async ({ page }) => {
    await planned(page);
    await page.getByText('More about this area').click();
    await page.getByLabel('Name of the area').fill('=HYPERLINK("x")');
    await expect(page.getByRole('heading', { name: '=HYPERLINK' })).toBeVisible();
    const saved = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as CSV' }).click();
    const stream = await (await saved).createReadStream();
    let text = '';
    for await (const piece of stream) text += String(piece);
    expect(text).toContain('Coverage to reach');
    expect(text).toContain(`"'=HYPERLINK(""x"")"`);
    expect(text).not.toMatch(/^"?=/m);
  });

  for (const width of [360, 1280])
    test(`is accessible at ${width} px, opened out`, async ({ page }) => {
      await page.setViewportSize({ width, height: 800 });
      await planned(page);
      for (const summary of await page.locator('main details > summary').all())
        if (await summary.isVisible()) await summary.click();
      await accessible(page);
      await fits(page);
    });
});

test.describe('on paper', () => {
  for (const format of ['Letter', 'A4'] as const)
    test(`one area fits one page of ${format}`, async ({ page }) => {
      await planned(page);
      const paper = (await page.pdf({ format })).toString('latin1');
      expect(paper.match(/\/Type\s*\/Page[^s]/g)).toHaveLength(1);
    });
});

test('shows the bed of one tile when asked, in words and figures too', async ({ page }) => {
  await planned(page);
  await page.getByRole('button', { name: 'Show the bed of one tile' }).click();
  await expect(page.locator('.bed figcaption')).toContainText(/Coverage is \d+ %/, { timeout: 30_000 });
  await page.locator('summary', { hasText: 'The bed in figures' }).click();
  await expect(page.locator('.bed table')).toContainText('%');
  await page.getByLabel('Usual sizes').selectOption({ label: '12 × 12 in' });
  await expect(page.getByText('The job was changed since')).toBeVisible();
});

test('paper of a full sheet: heat, several layers and work done otherwise still fit one page', async ({ page }) => {
  await planned(page);
  await page.getByLabel('Under the tile').selectOption('heated-mat');
  await page.getByText('How it is really done').click();
  await page.getByLabel('Combed').selectOption('swirl');
  await page.getByLabel('Pressed').selectOption('light');
  await page.getByLabel('No back coat is given').check();
  await expect(line(page, 'layers').locator('.value')).toContainText('Over the cable');
  await expect(page.getByText('The back coat that this sheet asks for is left out')).toBeVisible();
  for (const format of ['Letter', 'A4'] as const) {
    const paper = (await page.pdf({ format })).toString('latin1');
    expect(paper.match(/\/Type\s*\/Page[^s]/g), format).toHaveLength(1);
  }
});
