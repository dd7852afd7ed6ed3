import { expect, test, type Locator } from '@playwright/test';

/** A reader's own few colours: the browser takes every ground away and shows every border. */
test.use({ contextOptions: { forcedColors: 'active' } });

const ground = (one: Locator): Promise<string> => one.evaluate((node) => getComputedStyle(node).backgroundColor);
const edge = (one: Locator): Promise<string> => one.evaluate((node) => getComputedStyle(node).borderBottomColor);

test('in a reader’s own few colours what is chosen still differs from what is not, and what is not has no line under it', async ({
  page,
}) => {
  await page.goto('bench/');
  const canvas = await ground(page.locator('html'));
  const straight = page.getByRole('button', { name: 'Straight', exact: true });
  const swirls = page.getByRole('button', { name: 'Swirls' });
  const pairs: [chosen: Locator, other: Locator][] = [
    [straight, swirls],
    [page.locator('.parts a[aria-current]'), page.locator('.parts a:not([aria-current])').first()],
    [
      page.locator('[data-preference=units] label:has(:checked)'),
      page.locator('[data-preference=units] label:not(:has(:checked))'),
    ],
  ];
  for (const [chosen, other] of pairs) expect(await ground(chosen)).not.toBe(await ground(other));
  for (const other of [swirls, pairs[1]![1]]) expect(await edge(other)).toBe(canvas);
  await swirls.click();
  await expect.poll(() => ground(swirls)).not.toBe(await ground(straight));
  const steps = page.locator('.steps li');
  expect(await edge(steps.first())).not.toBe(await edge(steps.nth(1)));
});
