import { expect as expectSoon, test, type CDPSession, type Page } from '@playwright/test';

import { stage, told, type Told } from './parts/bench-stage.ts';

/** Software graphics on a busy machine take their time. */
const expect = expectSoon.configure({ timeout: 20_000 });

const SMALL = 'bench/#bed=1&long=152&wide=152&nw=6.35&nd=6.35&nt=6.35&do=p40_0_0';
type Spot = [x: number, y: number];

const scrolled = (page: Page): Promise<number> => page.evaluate(() => scrollY);

const eye = async (page: Page): Promise<Told['eye']> => (await told(page)).eye;

/** Fingers that go down, along their paths together, and up. */
async function fingers(hand: CDPSession, paths: Spot[][]): Promise<void> {
  const at = (n: number): { x: number; y: number; id: number }[] =>
    paths.map((path, id) => ({ x: path[n]![0], y: path[n]![1], id }));
  const count = paths[0]!.length;
  await hand.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0) });
  for (let n = 1; n < count; n++)
    await hand.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(n) });
  await hand.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

const line = ([x, y]: Spot, [dx, dy]: Spot): Spot[] =>
  Array.from({ length: 13 }, (_, n) => [x + (dx * n) / 12, y + (dy * n) / 12]);

/** The bench on a phone with its picture in the middle of the screen. */
async function open(page: Page): Promise<{ hand: CDPSession; middle: Spot }> {
  await page.goto(SMALL);
  await expect(stage(page)).toHaveAttribute('data-quality', /light|plain|fine/);
  return { hand: await page.context().newCDPSession(page), middle: await middleOf(page) };
}

async function middleOf(page: Page): Promise<Spot> {
  await stage(page).evaluate((box) => box.scrollIntoView({ block: 'center' }));
  await page.waitForTimeout(300);
  const box = (await stage(page).boundingBox())!;
  return [box.x + box.width / 2, box.y + box.height / 2];
}

test.describe('the bench under a finger', () => {
  test.setTimeout(120_000);
  test.use({
    viewport: { width: 360, height: 800 },
    hasTouch: true,
    isMobile: true,
    contextOptions: { reducedMotion: 'reduce' },
  });

  test('a finger scrolls past, turns, comes nearer, takes hold, draws the trowel and taps the tile', async ({
    page,
  }) => {
    const { hand, middle: first } = await open(page);
    await test.step('up and down scrolls the page over the picture, sideways turns the view, two fingers come nearer', async () => {
      const [x, y] = first;
      const before = await eye(page);
      const top = await scrolled(page);
      await fingers(hand, [line([x, y], [0, -120])]);
      await expect.poll(() => scrolled(page)).toBeGreaterThan(top + 60);
      expect(await eye(page)).toEqual(before);

      const again = await middleOf(page);
      const rest = await scrolled(page);
      await fingers(hand, [line([again[0] - 60, again[1]], [120, 0])]);
      await expect.poll(async () => (await eye(page)).azimuthDeg).toBeLessThan(before.azimuthDeg - 20);
      expect((await eye(page)).elevationDeg).toBe(before.elevationDeg);
      expect(await scrolled(page)).toBe(rest);

      await fingers(hand, [line([again[0] - 20, again[1]], [-60, 0]), line([again[0] + 20, again[1]], [60, 0])]);
      await expect.poll(async () => (await eye(page)).distanceMm).toBeLessThan(0.6 * before.distanceMm);
    });
    await test.step('a tap takes hold of the picture, a tap beside it lets go', async () => {
      const middle = await middleOf(page);
      await fingers(hand, [[middle, middle]]);
      await expect(page.getByText('The picture turns under your finger')).toBeVisible();
      const before = await eye(page);
      const top = await scrolled(page);
      await fingers(hand, [line(middle, [0, 90])]);
      await expect.poll(async () => (await eye(page)).elevationDeg).toBeGreaterThan(before.elevationDeg + 10);
      expect(await scrolled(page)).toBe(top);
      await page.locator('h1').tap();
      await expect(page.getByText('The picture turns under your finger')).toBeHidden();
    });
    await test.step('the trowel is drawn by a finger and the page stays where it is; a touch taps the laid tile', async () => {
      await page.getByRole('button', { name: 'Above' }).tap();
      await page.getByRole('button', { name: 'Trowel', exact: true }).tap();
      const [x, y] = await middleOf(page);
      const top = await scrolled(page);
      await fingers(hand, [line([x, y + 70], [0, -140])]);
      await expect.poll(() => page.url()).toContain('comb=drawn');
      await expect(page.getByText(/Taken from your stroke: .*straight.* at 90°/)).toBeVisible();
      expect(await scrolled(page)).toBe(top);

      await page.getByRole('button', { name: 'Set the tile' }).tap();
      await page.getByRole('button', { name: 'Tap', exact: true }).tap();
      const middle = await middleOf(page);
      await fingers(hand, [[middle, middle]]);
      const done = page.getByRole('list', { name: 'What was done' }).getByRole('listitem');
      await expect(done).toHaveCount(2);
      await expect(done.last()).toContainText('Tap');
    });
  });
});
