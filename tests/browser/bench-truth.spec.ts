import { readFile } from 'node:fs/promises';

import { expect as expectSoon, test, type Page } from '@playwright/test';

import { runBed } from '@sim/bed/run.ts';
import type { BedResult, BedSetup } from '@sim/bed/types.ts';
import { formatShare } from '@sim/units/format.ts';
import { bedOf } from '@site/islands/bench/link.ts';
import { withCells } from '@site/islands/bench/start-setup.ts';
import { sweeps, valuesOf } from '@site/islands/bench/sweep/sweeps.ts';
import { causesOf } from '@site/islands/bench/why/causes.ts';
import { bench as words } from '@site/messages/en/bench.ts';

import { withoutWebGl } from './no-webgl.ts';

/** What the page shows is held to the solver run here, on its own. Software graphics take their time. */
const expect = expectSoon.configure({ timeout: 30_000 });

const LINK = 'bed=1&long=152&wide=152&bow=1.5&nw=6.35&nd=6.35&nt=6.35&comb=swirl&bare=10&age=10&do=p40_0_0';

function setup(): BedSetup {
  const reading = bedOf(LINK);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.value.setup;
}

async function pull(page: Page, link = LINK): Promise<void> {
  await page.goto(`bench/#${link}`);
  await page.getByRole('button', { name: 'Set the tile' }).click();
  await page.getByRole('button', { name: 'Pull the tile' }).click();
  await page.getByRole('slider', { name: 'My guess' }).fill('55');
  await page.getByRole('button', { name: 'Commit and pull' }).click();
  await expect(page.getByRole('definition').first()).toHaveText(/^\d+ %$/);
}

test.describe('the bench tells the truth', () => {
  test.setTimeout(180_000);
  // A small picture is quick without a graphics card.
  test.use({ viewport: { width: 480, height: 420 }, contextOptions: { reducedMotion: 'reduce' } });

  test('guess and reasons, files, two beds and the record hold what runs of their own give', async ({ page }) => {
    await pull(page);
    const base = runBed(setup()).result.coverage;
    await test.step('guess, truth, and reasons that are runs of their own with one thing changed', async () => {
      await expect(page.getByText(`Coverage ${formatShare(base)}; you said 55 %.`)).toBeVisible();
      const table = page.getByRole('table', { name: /one thing changed at a time/ });
      const causes = causesOf(setup());
      expect(causes.map(({ id }) => id)).toEqual(
        expectSoon.arrayContaining(['mortar', 'collapse', 'air', 'bow', 'skin', 'edge', 'pattern']),
      );
      for (const cause of causes) {
        const direct = runBed(cause.setup).result.coverage;
        const row = table.getByRole('row', { name: words.why.causes[cause.id] });
        await expect(row.getByRole('cell').first()).toHaveText(formatShare(direct));
        const points = Math.round((direct - base) * 100);
        await expect(row.getByRole('cell').nth(1)).toHaveText(
          `${points > 0 ? '+' : points < 0 ? '−' : ''}${Math.abs(points)}`,
        );
      }
      await expect(page.getByText(/What would have helped most|No single change/)).toBeVisible();
    });
    await test.step('the figures saved are the run’s, and their link brings the bed back; the picture has picture, map and words', async () => {
      const figures = page.waitForEvent('download');
      await page.getByRole('button', { name: 'Save the figures' }).click();
      const file = JSON.parse(await readFile(await (await figures).path(), 'utf8')) as {
        kind: string;
        version: number;
        link: string;
        setup: BedSetup;
        result: BedResult;
      };
      expect([file.kind, file.version, file.link]).toEqual(['ridge-to-bed bed', 1, LINK]);
      expect(file.setup).toEqual(JSON.parse(JSON.stringify(setup())));
      expect(file.result).toEqual(JSON.parse(JSON.stringify(runBed(file.setup).result)));
      const picture = page.waitForEvent('download');
      await page.getByRole('button', { name: 'Save the picture' }).click();
      const png = await readFile(await (await picture).path());
      const seen = await page.evaluate(async (base64) => {
        const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
        const image = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
        const sheet = new OffscreenCanvas(image.width, image.height);
        const pen = sheet.getContext('2d')!;
        pen.drawImage(image, 0, 0);
        // How many tones each tenth of the sheet's height holds: an empty band would hold one.
        const tones = Array.from({ length: 10 }, (_, n) => {
          const high = Math.floor(image.height / 10);
          const { data } = pen.getImageData(0, n * high, image.width, high);
          const found = new Set<number>();
          for (let at = 0; at < data.length; at += 4)
            found.add((data[at]! >> 3) * 1024 + (data[at + 1]! >> 3) * 32 + (data[at + 2]! >> 3));
          return found.size;
        });
        return { wide: image.width, tones };
      }, png.toString('base64'));
      expect(seen.wide).toBe(1600);
      expect(seen.tones.filter((count) => count > 4).length).toBeGreaterThanOrEqual(8);
    });
    await test.step('two beds at one eye, both numbers from their own runs, and back to one', async () => {
      await page.getByRole('button', { name: 'combed straight' }).click();
      await expect(page.getByText('They differ in one thing.')).toBeVisible();
      const straight = withCells({ ...setup(), comb: { ...setup().comb, pattern: 'straight', directionDeg: 90 } });
      const [kept, now] = [setup(), straight].map((one) => formatShare(runBed(one).result.coverage));
      await expect(page.getByRole('row', { name: `Coverage ${kept} ${now}` })).toBeVisible();
      await expect(page.getByText(`Kept: ${kept}; on the bench: ${now}`)).toBeVisible();
      await page.getByRole('button', { name: 'Change places' }).click();
      await expect(page.getByRole('row', { name: `Coverage ${now} ${kept}` })).toBeVisible();
      await page.getByRole('button', { name: 'Let the kept bed go' }).click();
      await expect(page.getByRole('button', { name: 'Keep this bed' })).toBeVisible();
    });
    // The guess stands in the learner's record, once, with what the bed gave.
    await page.goto('record/');
    const kept = page.getByRole('row', { name: /setting bench/ });
    await expect(kept).toHaveCount(1);
    await expect(kept).toContainText(`55 %${formatShare(base)}`);
  });

  test('a curve is drawn from runs, can be stopped, and then begins anew', async ({ page }) => {
    await withoutWebGl(page);
    // A large tile takes long enough to be stopped.
    await page.goto('bench/#bed=1&comb=swirl');
    await page.getByLabel('Control', { exact: true }).selectOption('bow');
    const draw = page.getByRole('button', { name: 'Draw the curve' });
    await draw.click();
    const stop = page.locator('.sweep').getByRole('button', { name: 'Stop' });
    await expect(page.locator('.sweep svg circle').first()).toBeAttached();
    await stop.click();
    await expect(stop).toHaveCount(0);
    const stopped = await page.locator('.sweep svg circle').count();
    expect(stopped).toBeLessThan(9);
    await page.waitForTimeout(1200);
    expect(await page.locator('.sweep svg circle').count()).toBe(stopped);
    await page.evaluate((link) => location.replace(`#${link}`), LINK);
    await expect(page.getByLabel('How it is drawn')).toHaveValue('swirl');
    await draw.click();
    await expect(page.locator('.sweep svg circle')).toHaveCount(9);
    await page.getByText('The curve as a table').click();
    const bow = sweeps.find(({ id }) => id === 'bow')!;
    for (const [at, value] of valuesOf(bow).entries()) {
      const direct = runBed(withCells(bow.with(setup(), value))).result.coverage;
      await expect(page.locator('.sweep tbody tr').nth(at).getByRole('cell').last()).toHaveText(formatShare(direct));
    }
  });
});
