import { expect, type Locator, type Page, test } from '@playwright/test';

import { bank } from '@quiz/bank.ts';
import { compose } from '@quiz/engine/compose.ts';
import type { KeyedItem } from '@quiz/engine/item.ts';
import { roundRefs } from '@quiz/engine/round.ts';

const ITEMS = 10;
const KINDS = ['one', 'all', 'judge', 'number', 'order', 'mark'];

/** The first round that asks in every way there is. */
function roundOfAllKinds(): { seed: number; items: KeyedItem[] } {
  for (let seed = 1; seed < 500; seed++) {
    const items = roundRefs(bank, { seed, items: ITEMS, modules: [] }).map((ref) => compose(bank, ref, 'imperial'));
    if (new Set(items.map(({ item }) => item.form.kind)).size === KINDS.length) return { seed, items };
  }
  throw new Error('No round asks in every way.');
}

/** Presses Tab until the wanted element has the focus; nothing else moves it. */
async function tabTo(page: Page, wanted: Locator): Promise<void> {
  for (let pressed = 0; pressed < 90; pressed++) {
    if (await wanted.evaluate((one) => one === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never reached ${wanted}.`);
}

/** From the radio that Tab reaches in a group to the wanted one by arrow keys, as a browser's own groups go. */
async function pick(page: Page, group: Locator, value: string): Promise<void> {
  const wanted = group.locator(`input[value="${value}"]`);
  await tabTo(page, group.locator('input').first());
  await page.keyboard.press('Space');
  for (let pressed = 0; pressed < 40 && !(await wanted.isChecked()); pressed++) await page.keyboard.press('ArrowDown');
  await expect(wanted).toBeChecked();
}

async function answer(page: Page, { item, key }: KeyedItem): Promise<void> {
  const form = page.locator('form');
  switch (item.form.kind) {
    case 'one':
      return pick(page, form.locator('fieldset'), key.right);
    case 'judge': {
      const [verdict = '', reason = ''] = key.right.split(' ');
      await pick(page, form.locator('fieldset').first(), verdict);
      return pick(page, form.locator('fieldset').last(), reason);
    }
    case 'all':
      for (const letter of key.right) {
        await tabTo(page, form.locator(`input[value="${letter}"]`));
        await page.keyboard.press('Space');
      }
      return;
    case 'number':
      await tabTo(page, form.getByRole('textbox'));
      return page.keyboard.type(key.right);
    case 'mark':
      return pick(page, page.locator('.cells'), key.right);
    case 'order':
      for (const [place, letter] of [...key.right].entries()) {
        const text = item.form.choices.find((choice) => choice.letter === letter)?.text ?? '';
        const up = form.getByRole('button', { name: `Move up: ${text}`, exact: true });
        for (;;) {
          const rows = await form.locator('ol li > span:first-child').allTextContents();
          if (rows.indexOf(text) <= place) break;
          await tabTo(page, up);
          await page.keyboard.press('Enter');
        }
      }
  }
}

/** What a screen reader is told of the question: what is asked names the place where it is answered. */
async function told(page: Page, { item }: KeyedItem): Promise<void> {
  const main = page.getByRole('main');
  const { form } = item;
  for (const line of item.story) await expect(main).toContainText(line);
  if (item.picture) await expect(main.locator('figure')).toContainText(item.picture.words);
  if ('long' in (item.picture ?? {}))
    await expect(main.locator('figure')).toContainText((item.picture as { long: string }).long);
  if (form.kind === 'number') {
    const box = main.getByRole('textbox', { name: item.ask });
    await expect(box).toHaveAccessibleDescription(new RegExp(form.unit.replace('/', '.')));
    return;
  }
  if (form.kind === 'order') {
    const list = main.getByRole('list', { name: item.ask });
    await expect(list.getByRole('listitem')).toHaveCount(form.choices.length);
    return;
  }
  if (form.kind === 'judge') {
    for (const [group, choices] of [
      ['Verdict', form.verdicts],
      ['Deciding reason', form.choices],
    ] as const) {
      const here = main.getByRole('group', { name: group });
      await expect(here).toHaveAccessibleDescription(item.ask);
      for (const { text } of choices) await expect(here.getByRole('radio', { name: text, exact: true })).toBeEnabled();
    }
    return;
  }
  const group = main.getByRole('group', { name: item.ask });
  if (form.kind === 'mark') {
    await expect(group.getByRole('radio')).toHaveCount(form.columns * form.rows);
    await expect(group.getByRole('radio', { name: 'Square A1', exact: true })).toBeEnabled();
    return;
  }
  const role = form.kind === 'one' ? 'radio' : 'checkbox';
  for (const { text } of form.choices) await expect(group.getByRole(role, { name: text, exact: true })).toBeEnabled();
}

test('a whole round over every way of answering with Tab, arrows, Space and Enter alone', async ({ page }) => {
  const { seed, items } = roundOfAllKinds();
  await page.goto('rounds/');
  const number = page.getByLabel('Round number');
  await tabTo(page, number);
  await page.keyboard.press('Control+a');
  await page.keyboard.type(String(seed));
  await tabTo(page, page.getByRole('button', { name: 'Begin' }));
  await page.keyboard.press('Enter');
  for (const [at, keyed] of items.entries()) {
    const head = page.getByRole('heading', { name: `Question ${at + 1} of ${ITEMS}` });
    await expect(head).toBeVisible();
    await told(page, keyed);
    await answer(page, keyed);
    await tabTo(page, page.getByRole('button', { name: 'Check' }));
    await page.keyboard.press('Enter');
    const verdict = page.getByRole('heading', { level: 3, name: 'Right' });
    await expect(verdict).toBeVisible();
    // The focus stands where the reasons are, so that they are read next.
    expect(await page.locator('.after').evaluate((one) => one === document.activeElement)).toBe(true);
    await tabTo(page, page.getByRole('button', { name: at === ITEMS - 1 ? 'See the result' : 'Next question' }));
    await page.keyboard.press('Enter');
    if (at < ITEMS - 1)
      await expect(page.getByRole('heading', { name: `Question ${at + 2} of ${ITEMS}` })).toBeFocused();
  }
  await expect(page.getByRole('heading', { name: 'Result' })).toBeVisible();
  await expect(page.locator('.score')).toHaveText(`${ITEMS} of ${ITEMS}`);
  await tabTo(page, page.getByRole('region', { name: 'By module' }));
  await tabTo(page, page.getByRole('button', { name: 'New round' }));
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Begin' })).toBeVisible();
});
