import { expect as expectSoon, test, type Page } from '@playwright/test';

/** Software graphics on a busy machine take their time. */
const expect = expectSoon.configure({ timeout: 30_000 });

const SMALL = 'bench/#bed=1&long=152&wide=152&nw=6.35&nd=6.35&nt=6.35';
const stage = (page: Page): ReturnType<Page['locator']> => page.getByRole('application');

interface Counts {
  pictures: number;
  geometries: number;
  textures: number;
}

/** What the picture holds now; it tells when asked by an event. */
async function counts(page: Page): Promise<Counts> {
  await page.evaluate(() => dispatchEvent(new Event('bench-count')));
  return JSON.parse((await stage(page).getAttribute('data-counts')) ?? '{}') as Counts;
}

const drawn = (page: Page): Promise<void> => expect(stage(page)).toHaveAttribute('data-quality', /light|plain|fine/);

test.describe('the picture of the bench', () => {
  test.setTimeout(300_000);
  test.use({ viewport: { width: 640, height: 600 } });

  test('is drawn on demand, and turns by keys', async ({ page }) => {
    await page.goto(SMALL);
    await drawn(page);
    await page.waitForTimeout(2500);
    const still = await counts(page);
    await page.waitForTimeout(1500);
    expect((await counts(page)).pictures).toBe(still.pictures);
    await stage(page).focus();
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('3');
    await expect.poll(async () => (await counts(page)).pictures).toBeGreaterThan(still.pictures);
  });

  test('the wheel scrolls the page and does not zoom the picture', async ({ page }) => {
    await page.goto(SMALL);
    await drawn(page);
    await stage(page).hover();
    await page.mouse.wheel(0, 400);
    await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(100);
  });

  test('dragging the trowel combs the bed the way it is drawn', async ({ page }) => {
    await page.goto(SMALL);
    await drawn(page);
    await page.getByRole('button', { name: 'Above' }).click();
    await page.waitForTimeout(1500);
    await page.getByRole('button', { name: 'Trowel', exact: true }).click();
    const box = (await stage(page).boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x - 110, y);
    await page.mouse.down();
    for (let n = 1; n <= 22; n++) await page.mouse.move(x - 110 + n * 10, y);
    await page.mouse.up();
    await expect.poll(() => page.url()).toContain('comb=drawn&dir=0');
    await expect(page.getByText(/Taken from your stroke: .*straight/)).toBeVisible();
  });

  test('a push and a slide are made with the pointer on the tile', async ({ page }) => {
    await page.goto(SMALL);
    await drawn(page);
    await page.getByRole('button', { name: 'Above' }).click();
    await page.getByRole('button', { name: 'Set the tile' }).click();
    await page.waitForTimeout(2500);
    const middle = async (): Promise<[number, number]> => {
      const box = (await stage(page).boundingBox())!;
      return [box.x + box.width / 2, box.y + box.height / 2];
    };
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

  test('lost graphics come back', async ({ page }) => {
    await page.goto(SMALL);
    await drawn(page);
    await page.evaluate(() => {
      const canvas = document.querySelector<HTMLCanvasElement>('[role=application] canvas');
      const lose = canvas?.getContext('webgl2')?.getExtension('WEBGL_lose_context');
      lose?.loseContext();
      setTimeout(() => lose?.restoreContext(), 1500);
    });
    await expect(page.getByText('The graphics were interrupted')).toBeVisible();
    await expect(page.getByText('The graphics were interrupted')).toBeHidden({ timeout: 30_000 });
    const before = await counts(page);
    await stage(page).focus();
    await page.keyboard.press('ArrowRight');
    await expect.poll(async () => (await counts(page)).pictures).toBeGreaterThan(before.pictures);
  });
});
