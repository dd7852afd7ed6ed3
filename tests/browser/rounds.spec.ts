import { expect, type Page, test } from '@playwright/test';

import { bank } from '@quiz/bank.ts';
import { compose } from '@quiz/engine/compose.ts';
import { roundRefs } from '@quiz/engine/round.ts';
import { accessible } from './watch.ts';

const SEED = 7;
const ITEMS = 5;

/** Answers the open question with the key, by the keyboard alone, as the bank itself computes it. */
async function answerByKeys(page: Page, right: string, kind: string): Promise<void> {
  const form = page.locator('form');
  if (kind === 'number') {
    await form.locator('#number-answer').focus();
    await page.keyboard.type(right);
    return;
  }
  if (kind === 'order') {
    // Brings each letter up to its place with the buttons.
    const texts = right.split('|');
    for (const [place, text] of texts.entries()) {
      const row = form.locator('ol li', { hasText: text });
      for (;;) {
        const at = await form
          .locator('ol li')
          .evaluateAll((rows, wanted) => rows.findIndex((one) => one.textContent?.includes(wanted)), text);
        if (at <= place) break;
        await row.getByRole('button', { name: /^Move up/ }).focus();
        await page.keyboard.press('Enter');
      }
    }
    return;
  }
  if (kind === 'mark') {
    await page.locator(`.cells input[value="${right}"]`).focus();
    await page.keyboard.press('Space');
    return;
  }
  const letters = kind === 'judge' ? right.split(' ') : [...right];
  for (const letter of letters) {
    await form.locator(`input[value="${letter}"]`).first().focus();
    await page.keyboard.press('Space');
  }
}

test('a round of five by the keyboard alone: every key marked right, reasons and sources shown', async ({ page }) => {
  await page.goto('rounds/');
  await accessible(page);
  await page.getByLabel('Round number').fill(String(SEED));
  await page.locator('.switch label', { hasText: '5' }).first().click();
  await page.getByRole('button', { name: 'Begin' }).focus();
  await page.keyboard.press('Enter');
  const refs = roundRefs(bank, { seed: SEED, items: ITEMS, modules: [] });
  expect(new Set(refs.map(({ template }) => template)).size).toBe(ITEMS);
  for (const [at, ref] of refs.entries()) {
    const { item, key } = compose(bank, ref, 'imperial');
    await expect(page.getByRole('heading', { name: `Question ${at + 1} of ${ITEMS}` })).toBeVisible();
    if (at === 0) await accessible(page);
    const right =
      item.form.kind === 'order'
        ? [...key.right]
            .map((letter) =>
              item.form.kind === 'order' ? item.form.choices.find((choice) => choice.letter === letter)?.text : '',
            )
            .join('|')
        : key.right;
    await answerByKeys(page, right, item.form.kind);
    await page.getByRole('button', { name: 'Check' }).focus();
    await page.keyboard.press('Enter');
    await expect(page.locator('.verdict')).toHaveText(/Right/);
    await expect(page.locator('.feedback .status').first()).toBeAttached();
    if (at === 0) await accessible(page);
    await page.getByRole('button', { name: at === ITEMS - 1 ? 'See the result' : 'Next question' }).focus();
    await page.keyboard.press('Enter');
  }
  await expect(page.locator('.score')).toHaveText('5 of 5');
  await accessible(page);
});

test('an answer that cannot be read is no wrong answer, and nothing typed is lost', async ({ page }) => {
  // The first number question of the bank in a round by itself.
  const seed = Array.from({ length: 400 }, (_, n) => n).find((n) => {
    const [ref] = roundRefs(bank, { seed: n, items: 1, modules: [] });
    return ref && compose(bank, ref, 'imperial').item.form.kind === 'number';
  });
  await page.goto(`rounds/#seed=${seed}&items=1&mode=mixed`);
  const box = page.locator('#number-answer');
  await box.fill('about half');
  await page.getByRole('button', { name: 'Check' }).click();
  await expect(page.locator('form .field-error')).toContainText('no number is written');
  await expect(box).toHaveValue('about half');
  await expect(page.getByRole('heading', { name: 'Question 1 of 1' })).toBeVisible();
});

test('a round put aside is there again after a reload, and what was missed can be asked again', async ({ page }) => {
  await page.goto(`rounds/#seed=${SEED}&items=5&mode=mixed`);
  await page.getByRole('button', { name: 'Leave it out' }).click();
  await page.getByRole('button', { name: 'Next question' }).click();
  await page.getByRole('button', { name: 'Put it aside' }).click();
  await page.reload();
  await expect(page.getByRole('button', { name: 'Go on: 1 of 5 answered' })).toBeVisible();
  await page.getByRole('button', { name: /missed/ }).click();
  await expect(page.getByRole('heading', { name: 'Question 1 of 1' })).toBeVisible();
});

test('the units may be switched until something is answered; then the round keeps its own', async ({ page }) => {
  await page.goto(`rounds/#seed=${SEED}&items=5&mode=mixed&modules=2`);
  await expect(page.getByRole('heading', { name: 'Question 1 of 5' })).toBeVisible();
  const before = await page.locator('.question').innerText();
  await page.locator('.head-tools input[value="metric"]').check({ force: true });
  await expect.poll(() => page.locator('.question').innerText()).not.toBe(before);
  // From the first answer on the round keeps its units, and says so when the page has others.
  await page.getByRole('button', { name: 'Leave it out' }).click();
  await page.getByRole('button', { name: 'Next question' }).click();
  const second = await page.locator('.question').innerText();
  await page.locator('.head-tools input[value="imperial"]').check({ force: true });
  await expect(page.getByText('This round stays in millimetres')).toBeVisible();
  expect(await page.locator('.question').innerText()).toBe(second);
});

test('a round’s link opened while the page is already there begins that round', async ({ page }) => {
  await page.goto('rounds/');
  await expect(page.getByRole('button', { name: 'Begin' })).toBeVisible();
  await page.evaluate((seed) => (location.hash = `seed=${seed}&items=5&mode=mixed&units=metric`), SEED);
  await expect(page.getByRole('heading', { name: 'Question 1 of 5' })).toBeVisible();
  // It is asked as the link says, though the page is in inches.
  await expect(page.getByText('This round stays in millimetres')).toBeVisible();
});

test('the map of wrong ideas is readable', async ({ page }) => {
  await page.goto('rounds/ideas/');
  await expect(page.getByRole('heading', { name: 'The average hides the void' })).toBeVisible();
  await accessible(page);
});
