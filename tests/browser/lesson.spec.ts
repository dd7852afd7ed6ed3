import { expect, type Locator, type Page, test } from '@playwright/test';

import { accessible, fits, watch } from './watch.ts';

const path = '/lessons/what-the-ridges-are-for/';

test('a lesson asks first, then shows the bed, and every number has its source', async ({ page }) => {
  const seen = watch(page);
  await page.goto(path);
  await accessible(page);

  const mark = page.getByRole('link', { name: /^Source: ANSI A108\.5/ }).first();
  await expect(mark).toHaveAttribute('href', /\/sources\/#coverage\./);

  const figure = page.getByRole('figure', { name: /Press only/ });
  await figure.scrollIntoViewIfNeeded();
  const slider = figure.getByRole('slider');
  await expect(figure.locator('canvas')).toHaveCount(0);

  // Committing to nothing is refused in words, and the figure stays shut.
  await figure.getByRole('button', { name: /Set and pull/ }).click();
  await expect(figure.getByText('Move the slider to your guess first.')).toBeVisible();
  await expect(figure.locator('canvas')).toHaveCount(0);

  await slider.focus();
  for (let i = 0; i < 20; i += 1) await page.keyboard.press('ArrowRight');
  await expect(figure.getByText('70 %', { exact: true })).toBeVisible();
  await figure.getByRole('button', { name: /Set and pull/ }).click();

  const readings = figure.locator('dl.readings').first();
  await expect(readings).toContainText('You said');
  await expect(readings).toContainText('70 %');
  await expect(figure.locator('canvas')).toHaveCount(2);
  const coverage = figure.locator('.live-now dd').first();
  const pressed = parseInt((await coverage.textContent()) ?? '', 10);
  await figure.getByRole('radio', { name: 'move across' }).check({ force: true });
  await expect.poll(async () => parseInt((await coverage.textContent()) ?? '', 10)).toBeGreaterThan(pressed + 10);

  await figure.getByText('Table', { exact: true }).click();
  await expect(figure.getByRole('row', { name: /Coverage/ }).first()).toBeVisible();
  await accessible(page);
  for (const width of [360, 1280]) {
    await page.setViewportSize({ width, height: 800 });
    await fits(page);
  }
  seen.clean();
});

/** The lesson's figure after a guess of 40 %. */
async function pulledFigure(page: Page): Promise<Locator> {
  await page.goto(path);
  const figure = page.getByRole('figure', { name: /Press only/ });
  await figure.scrollIntoViewIfNeeded();
  await figure.getByRole('slider').fill('40');
  await figure.getByRole('button', { name: /Set and pull/ }).click();
  return figure;
}

test('a live figure follows a hand that moves on without a rest', async ({ page }) => {
  const figure = await pulledFigure(page);
  await expect(figure.locator('.live-now dd').first()).toBeVisible();
  await figure.getByRole('radio', { name: 'move across' }).check({ force: true });
  const slider = figure.getByLabel('How far it is moved, one way');
  // Steps follow each other more quickly than a bed is computed, until five new outcomes have been read.
  await slider.evaluate(async (knob: HTMLInputElement) => {
    const outcome = (): string => knob.closest('figure')?.querySelector('.live-now')?.textContent ?? '';
    const read = new Set([outcome()]);
    for (let up = true; read.size < 6; read.add(outcome())) {
      const was = knob.value;
      if (up) knob.stepUp();
      else knob.stepDown();
      if (knob.value === was) up = !up;
      knob.dispatchEvent(new Event('input', { bubbles: true }));
      await new Promise((later) => setTimeout(later));
    }
  });
});

test('the guess and the truth are kept', async ({ page }) => {
  const figure = await pulledFigure(page);
  await expect(figure.locator('dl.readings').first()).toContainText('The bed gave');
  const kept = () =>
    page.evaluate(
      () =>
        new Promise<{ guess: number; truth: number }[]>((resolve) => {
          const opening = indexedDB.open('ridge-to-bed');
          opening.onsuccess = () => {
            const all = opening.result.transaction('predictions').objectStore('predictions').getAll();
            all.onsuccess = () => resolve(all.result as { guess: number; truth: number }[]);
          };
        }),
    );
  await expect.poll(async () => (await kept()).length).toBe(1);
  const [first] = await kept();
  expect(first?.guess).toBe(0.4);
  expect(first?.truth).toBeGreaterThan(0.3);
});
