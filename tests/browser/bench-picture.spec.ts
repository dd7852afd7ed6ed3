import { expect as expectSoon, test, type Page } from '@playwright/test';

import { rested, stage, told } from './parts/bench-stage.ts';

/** Software graphics on a busy machine take their time. */
const expect = expectSoon.configure({ timeout: 30_000 });

const SMALL = 'bench/#bed=1&long=152&wide=152&nw=6.35&nd=6.35&nt=6.35';

/** Motion is watched elsewhere; here it would only be waited for. */
test.use({ viewport: { width: 480, height: 420 }, contextOptions: { reducedMotion: 'reduce' } });

const drawn = (page: Page): Promise<void> => expect(stage(page)).toHaveAttribute('data-quality', /light|plain|fine/);

test('the picture of the bench: on demand, by keys, wheel, trowel and pointer, and after the graphics were lost', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await page.goto(SMALL);
  // The picture is opened when it comes into view.
  await stage(page).scrollIntoViewIfNeeded();
  await drawn(page);
  await test.step('is drawn on demand, and turns by keys', async () => {
    // The machine is still being measured for a while, which draws too.
    const still = await rested(page);
    await stage(page).focus();
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('3');
    await expect.poll(async () => (await told(page)).pictures).toBeGreaterThan(still.pictures);
  });
  await test.step('the wheel scrolls the page and does not zoom the picture', async () => {
    const before = await rested(page);
    await page.evaluate(() => scrollTo(0, 0));
    await stage(page).hover();
    const top = await page.evaluate(() => scrollY);
    await page.mouse.wheel(0, 400);
    await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(top + 100);
    expect((await told(page)).eye.distanceMm).toBe(before.eye.distanceMm);
  });
  const middle = async (): Promise<[number, number]> => {
    await stage(page).evaluate((box) => box.scrollIntoView({ block: 'center' }));
    const box = (await stage(page).boundingBox())!;
    return [box.x + box.width / 2, box.y + box.height / 2];
  };
  await test.step('dragging the trowel combs the bed the way it is drawn', async () => {
    await page.getByRole('button', { name: 'Above' }).click();
    await page.getByRole('button', { name: 'Trowel', exact: true }).click();
    const [x, y] = await middle();
    await page.mouse.move(x - 110, y);
    await page.mouse.down();
    for (let n = 1; n <= 11; n++) await page.mouse.move(x - 110 + n * 20, y);
    await page.mouse.up();
    await expect.poll(() => page.url()).toContain('comb=drawn&dir=0');
    await expect(page.getByText(/Taken from your stroke: .*straight/)).toBeVisible();
  });
  await test.step('a push and a slide are made with the pointer on the tile', async () => {
    await page.getByRole('button', { name: 'Set the tile' }).click();
    const done = page.getByRole('list', { name: 'What was done' }).getByRole('listitem');
    await page.getByRole('button', { name: 'Push', exact: true }).first().click();
    await page.mouse.click(...(await middle()));
    await expect(done).toHaveCount(2);
    await page.getByRole('button', { name: 'Slide', exact: true }).click();
    const [x, y] = await middle();
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 15, y);
    await page.mouse.move(x + 30, y);
    await page.mouse.up();
    await expect(done.last()).toContainText('Slide');
  });
  await test.step('lost graphics come back', async () => {
    await page.evaluate(() => {
      const canvas = document.querySelector<HTMLCanvasElement>('[role=application] canvas');
      const lose = canvas?.getContext('webgl2')?.getExtension('WEBGL_lose_context');
      lose?.loseContext();
      setTimeout(() => lose?.restoreContext(), 1000);
    });
    await expect(page.getByText('The graphics were interrupted')).toBeVisible();
    await expect(page.getByText('The graphics were interrupted')).toBeHidden();
    const before = await told(page);
    await stage(page).focus();
    await page.keyboard.press('ArrowRight');
    await expect.poll(async () => (await told(page)).pictures).toBeGreaterThan(before.pictures);
  });
});
