import { expect, test, type Page } from '@playwright/test';

const LESSON = '/lessons/what-the-ridges-are-for/';

/** Answers each question that is open, the first of every list and one of every number, until none is left. */
async function answerAll(page: Page, questions: number): Promise<void> {
  for (let question = 1; question <= questions; question += 1) {
    await expect(page.getByRole('heading', { name: new RegExp(`${question} of ${questions}`) })).toBeVisible();
    const form = page.locator('article.question');
    for (const list of await form.locator('fieldset').all()) await list.locator('input').first().check({ force: true });
    const number = form.locator('#number-answer');
    if (await number.isVisible()) await number.fill('1');
    await form.getByRole('button', { name: 'Check', exact: true }).click();
    await page.getByRole('button', { name: /Next|See the result/ }).click();
  }
}

const answersKept = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise((done) => {
        const opening = indexedDB.open('ridge-to-bed');
        opening.onsuccess = () => {
          const count = opening.result.transaction('answers').objectStore('answers').count();
          count.onsuccess = () => {
            opening.result.close();
            done(count.result);
          };
        };
      }),
  );

test('what was learned while the clock ran years ahead comes back, and its answers are kept', async ({ page }) => {
  // The same questions every time.
  await page.addInitScript(() => {
    crypto.getRandomValues = <T extends ArrayBufferView | null>(array: T): T => {
      if (array instanceof Uint32Array) array.fill(7);
      return array;
    };
  });
  await page.clock.setFixedTime(new Date('2031-05-01T10:00:00'));
  await page.goto(LESSON);
  await page.getByRole('button', { name: 'I have done this module' }).click();
  await page.getByRole('button', { name: 'Take the three' }).click();
  await answerAll(page, 3);
  await expect.poll(() => answersKept(page)).toBe(3);

  await page.clock.setFixedTime(new Date('2026-03-01T19:00:00'));
  await page.goto('/');
  await expect(page.locator('[data-module="what-the-ridges-are-for"]')).toHaveAttribute('data-state', 'done');
  await page.goto('/review/');
  const begin = page.getByRole('button', { name: /Begin: \d questions/ });
  const due = Number(/\d/.exec((await begin.textContent()) ?? '')?.[0]);
  expect(due).toBeGreaterThanOrEqual(3);
  await begin.click();
  await answerAll(page, due);
  await expect.poll(() => answersKept(page)).toBe(3 + due);
  // Asked again, they are dated anew: not due on the same day, and due in their time.
  await page.goto('/review/');
  await expect(page.getByRole('table')).toBeVisible();
  await expect(page.getByRole('row', { name: /today/ })).toHaveCount(0);
  const later = await page.getByRole('row', { name: /in \d+ days|tomorrow/ }).count();
  expect(later).toBeGreaterThanOrEqual(due);
  await page.clock.setFixedTime(new Date('2026-12-01T19:00:00'));
  await page.goto('/review/');
  await expect(page.getByRole('row', { name: /today/ })).toHaveCount(later);
});
