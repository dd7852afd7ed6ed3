import { readFileSync } from 'node:fs';

import { expect as expectSoon, type Page, test } from '@playwright/test';

import { rested, stage, told } from './parts/bench-stage.ts';

/** Software graphics on a busy machine take their time. */
const expect = expectSoon.configure({ timeout: 30_000 });

const SMALL = 'bench/#bed=1&long=152&wide=152&bow=0&nw=6.35&nd=6.35&nt=6.35&do=p40_0_0';

/** Sets the tile as it lies, and pulls it with the guess that is offered. */
async function pull(page: Page): Promise<void> {
  for (const name of ['Set the tile', 'Pull the tile', 'Commit and pull'])
    await page.getByRole('button', { name }).click();
}

const unfold = (page: Page): Promise<void> =>
  page.evaluate(() =>
    document.querySelectorAll<HTMLDetailsElement>('main details').forEach((fold) => (fold.open = true)),
  );

test.describe('the pace of the bench', () => {
  test.setTimeout(120_000);
  test.use({ viewport: { width: 640, height: 700 }, contextOptions: { reducedMotion: 'reduce' } });

  test('graphics that fall behind are given no more pictures, and the page goes on; once they are done, the last view is drawn', async ({
    page,
  }) => {
    // Marked so, the page's own graphics never seem to be done.
    await page.addInitScript(() => {
      const plain = Object.getOwnPropertyDescriptor(WebGL2RenderingContext.prototype, 'getSyncParameter')
        ?.value as WebGL2RenderingContext['getSyncParameter'];
      WebGL2RenderingContext.prototype.getSyncParameter = function (sync, name) {
        return 'behind' in document.documentElement.dataset
          ? this.UNSIGNALED
          : (plain.call(this, sync, name) as number);
      };
    });
    await page.goto(SMALL);
    await stage(page).scrollIntoViewIfNeeded();
    await expect(stage(page)).toHaveAttribute('data-quality', /light|plain|fine/);
    const before = await rested(page);
    await page.evaluate(() => (document.documentElement.dataset['behind'] = ''));
    await stage(page).focus();
    for (let n = 0; n < 12; n++) {
      await page.keyboard.press('ArrowLeft');
      await page.waitForTimeout(50);
    }
    const behind = await told(page);
    expect(behind.pictures - before.pictures).toBeLessThanOrEqual(2);
    // What does not need them answers as ever.
    await page.getByRole('button', { name: 'Fanned' }).click();
    await expect.poll(() => page.url()).toContain('comb=fan');
    await page.evaluate(() => delete document.documentElement.dataset['behind']);
    await expect.poll(async () => (await told(page)).pictures).toBeGreaterThan(behind.pictures);
    expect((await rested(page)).eye.azimuthDeg).toBe(before.eye.azimuthDeg - 12 * 7);
  });

  test('after the pull a slider keeps the back in sight, and the full bed follows on the glance', async ({ page }) => {
    await page.goto(SMALL);
    await pull(page);
    const back = page.getByRole('figure', { name: 'The back of the tile, turned over' });
    await expect(back).toBeVisible();
    await unfold(page);
    const blade = page.getByLabel('Angle of the blade');
    const said = back.locator('figcaption');
    const steep = await said.textContent();
    await back.evaluate((plate) => {
      new MutationObserver(() => {
        if (!plate.isConnected) document.documentElement.dataset['gone'] = '';
      }).observe(document.body, { childList: true, subtree: true });
    });
    for (let n = 0; n < 20; n++) await blade.press('ArrowLeft');
    await expect(said).not.toHaveText(steep ?? '');
    // What the last glance was followed by is the bed that the same set-up gives when it is put on the bench anew.
    await rested(page);
    const flat = await said.textContent();
    await expect(page.locator('html')).not.toHaveAttribute('data-gone');
    await page.reload();
    await pull(page);
    await expect(said).toHaveText(flat ?? '');
  });

  test('where a bed takes long to come about, a step of a slider shows the floor combed for it; the outcome follows at rest', async ({
    page,
  }) => {
    // A bed comes about slowly, and while the page is marked so not at all; combing does as ever.
    await page.addInitScript((delayMs) => {
      const post = Object.getOwnPropertyDescriptor(Worker.prototype, 'postMessage')?.value as (data: unknown) => void;
      Worker.prototype.postMessage = function (data: { kind?: string }) {
        const later = (): void => {
          if ('held' in document.documentElement.dataset) setTimeout(later, 50);
          else post.call(this, data);
        };
        if (data.kind === 'start') {
          document.documentElement.dataset['asked'] = String(performance.now());
          setTimeout(later, delayMs);
        } else post.call(this, data);
      };
    }, 600);
    await page.goto(SMALL);
    await pull(page);
    const back = page.getByRole('figure', { name: 'The back of the tile, turned over' });
    await expect(back).toBeVisible();
    await unfold(page);
    await rested(page);
    // What makes the worker quick has ended too: none of it is to be held.
    await page.waitForFunction(() => performance.now() - Number(document.documentElement.dataset['asked']) > 2500);
    const ahead = page.getByText('The floor combed anew');
    await expect(ahead).toBeHidden();
    const before = await page.getByRole('region', { name: 'What came of it' }).textContent();
    const blade = page.getByLabel('Angle of the blade');
    const seen = async (): Promise<number> => (await told(page)).frames;
    await page.evaluate(() => (document.documentElement.dataset['held'] = ''));
    for (let n = 0; n < 4; n++) {
      const frames = await seen();
      await blade.press('ArrowLeft');
      await expect.poll(seen).toBeGreaterThan(frames);
    }
    await expect(ahead).toBeVisible();
    // What was found before stands meanwhile, and is shown to be older.
    await expect(back).toBeVisible();
    expect(await page.getByRole('region', { name: 'What came of it' }).textContent()).toBe(before);
    await expect(page.locator('strong.old')).toHaveText(/^Coverage \d+ %/);
    // On paper the figures have their own bed beside them, from above: the floor in the picture is another's.
    const paper = await page.evaluate(() => {
      dispatchEvent(new Event('beforeprint'));
      const { width, height } = document.querySelector<HTMLCanvasElement>('.bed-paper canvas.picture')!;
      dispatchEvent(new Event('afterprint'));
      return width / height;
    });
    expect(paper).toBeCloseTo(2.5, 2);
    await page.evaluate(() => delete document.documentElement.dataset['held']);
    await expect(ahead).toBeHidden();
    await expect(page.getByRole('region', { name: 'What came of it' })).not.toHaveText(before ?? '');
    await expect(page.locator('strong.old')).toHaveCount(0);
  });

  for (const pulled of [false, true])
    test(`a hand that moves on without a rest sees bed after bed${pulled ? ', after the pull too' : ''}`, async ({
      page,
    }) => {
      await page.goto(`${SMALL}&comb=swirl`);
      await expect(stage(page)).toHaveAttribute('data-quality', /light|plain|fine/);
      if (pulled) {
        await pull(page);
      }
      await rested(page);
      await unfold(page);
      // Steps follow each other more quickly than any bed is computed, until five beds have been seen.
      await page.getByLabel('Angle of the blade').evaluate(async (slider: HTMLInputElement) => {
        const beds = (): number => {
          dispatchEvent(new Event('bench-count'));
          const counts = document.querySelector<HTMLElement>('[role=application]')?.dataset['counts'] ?? '{}';
          return (JSON.parse(counts) as { frames: number }).frames;
        };
        const before = beds();
        for (let n = 0; beds() < before + 5; n++) {
          if (n % 28 < 14) slider.stepDown();
          else slider.stepUp();
          slider.dispatchEvent(new Event('input', { bubbles: true }));
          await new Promise((later) => setTimeout(later));
        }
        slider.value = '45';
        slider.dispatchEvent(new Event('input', { bubbles: true }));
      });
      await expect.poll(() => page.url()).toContain('angle=45');
    });

  test('a slider ends the full run under way, and while it moves over a combed floor nothing says that a bed is computed', async ({
    page,
  }) => {
    // No worker hears of a whole bed, so that each stays under way however quick the machine is; combing goes on.
    await page.addInitScript(() => {
      const post = Object.getOwnPropertyDescriptor(Worker.prototype, 'postMessage')?.value as (data: unknown) => void;
      Worker.prototype.postMessage = function (data: { kind: string }) {
        if (data.kind !== 'start') post.call(this, data);
      };
    });
    await page.goto(SMALL);
    const computing = page.getByLabel('Computing the bed');
    await expect(computing).toBeVisible();
    await unfold(page);
    await page.getByLabel('Angle of the blade').evaluate(async (slider: HTMLInputElement) => {
      for (let n = 0; n < 20; n++) {
        slider.stepDown();
        slider.dispatchEvent(new Event('input', { bubbles: true }));
        await new Promise((later) => setTimeout(later, 60));
      }
    });
    expect(await computing.isVisible()).toBe(false);
    // Once the hand rests the full run begins.
    await expect(computing).toBeVisible();
  });

  test('a file saved before the new outcome is there tells the bed that its figures came of', async ({ page }) => {
    // Marked so, no worker hears of another bed: the one before stands.
    await page.addInitScript(() => {
      const post = Object.getOwnPropertyDescriptor(Worker.prototype, 'postMessage')?.value as (data: unknown) => void;
      Worker.prototype.postMessage = function (data: unknown) {
        if (!('deaf' in document.documentElement.dataset)) post.call(this, data);
      };
    });
    await page.goto(SMALL);
    await pull(page);
    const save = page.getByRole('button', { name: 'Save the figures' });
    await expect(save).toBeEnabled();
    const saved = async (): Promise<{ link: string; setup: { trowel: { angleDeg: number } }; result: object }> => {
      const [file] = await Promise.all([page.waitForEvent('download'), save.click()]);
      return JSON.parse(readFileSync(await file.path(), 'utf8')) as Awaited<ReturnType<typeof saved>>;
    };
    const before = await saved();
    await unfold(page);
    await page.evaluate(() => (document.documentElement.dataset['deaf'] = ''));
    await page.getByLabel('Angle of the blade').press('ArrowLeft');
    await expect.poll(() => page.url()).not.toContain(before.link);
    // And the page shows that what stands there is older than what was asked.
    const figures = page.getByRole('region', { name: 'What came of it' }).locator('..');
    await expect(figures).toHaveCSS('opacity', '0.5');
    await expect(figures).toHaveAttribute('aria-busy', 'true');
    const after = await saved();
    expect(after).toEqual(before);
  });
});
