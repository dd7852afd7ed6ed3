/** The bench page drawn by the processor: how long a picture takes, and a slider's way to the picture. */
import type { Browser, Page } from '@playwright/test';

import { middle, type Section } from './section.ts';

const SLIDER_BUDGET_MS = 100;
const TURNS = 24;
const SLIDES = 9;

/** Pictures drawn so far; the stage tells when asked by an event. */
const COUNT = `
  window.pictures = () => {
    dispatchEvent(new Event('bench-count'));
    return JSON.parse(document.querySelector('[role=application]')?.dataset.counts ?? '{}').pictures ?? 0;
  };`;

declare global {
  interface Window {
    pictures: () => number;
  }
}

const still = async (page: Page): Promise<void> => {
  for (let before = -1, now = 0; before !== now; now = await page.evaluate(() => window.pictures())) {
    before = now;
    await page.waitForTimeout(1500);
  }
};

/** Turning by keys, each as soon as the picture before is drawn. */
const turn = (page: Page): Promise<number> =>
  page.evaluate(async (turns) => {
    const stage = document.querySelector<HTMLElement>('[role=application]');
    const begun = performance.now();
    const first = window.pictures();
    for (let n = 0; n < turns; n += 1) {
      const before = window.pictures();
      stage?.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowLeft', bubbles: true }));
      while (window.pictures() === before) await new Promise(requestAnimationFrame);
    }
    return (performance.now() - begun) / (window.pictures() - first);
  }, TURNS);

/** A slider moved a step: from the event to the next picture. */
const slide = (page: Page): Promise<number[]> =>
  page.evaluate(async (slides) => {
    const slider = [...document.querySelectorAll<HTMLInputElement>('input[type=range]')].find((one) =>
      one.labels?.[0]?.textContent?.includes('Angle of the blade'),
    );
    if (!slider) throw new Error('The slider of the angle is not there.');
    const times: number[] = [];
    for (let n = 0; n < slides; n += 1) {
      await new Promise((later) => setTimeout(later, 1500));
      const before = window.pictures();
      const begun = performance.now();
      if (n % 2 === 0) slider.stepDown();
      else slider.stepUp();
      slider.dispatchEvent(new Event('input', { bubbles: true }));
      slider.dispatchEvent(new Event('change', { bubbles: true }));
      while (window.pictures() === before) await new Promise(requestAnimationFrame);
      times.push(performance.now() - begun);
    }
    return times;
  }, SLIDES);

const BEDS = [
  ['6 × 6 in', 'bench/#bed=1&long=152&wide=152&nw=6.35&nd=6.35&nt=6.35'],
  ['12 × 24 in', 'bench/'],
] as const;

export async function benchPageSection(browser: Browser, base: string): Promise<Section> {
  const rows: object[] = [];
  for (const [bed, path] of BEDS) {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    await page.goto(`${base}/${path}`);
    await page.evaluate(COUNT);
    await page.locator('[role=application][data-quality]').waitFor({ timeout: 60_000 });
    await still(page);
    const pictureMs = Math.round(await turn(page));
    await still(page);
    const sliderMs = Math.round(middle(await slide(page)));
    const quality = await page.locator('[role=application]').getAttribute('data-quality');
    rows.push({ bed, quality, pictureMs, sliderMs, budgetMs: SLIDER_BUDGET_MS, holds: sliderMs <= SLIDER_BUDGET_MS });
    await page.close();
  }
  return {
    title: 'Bench page without a graphics card, 1280 × 800',
    says: `Drawn by the processor (SwiftShader), at the setting the page chose by its own measurement. \`pictureMs\`: one picture while turning. \`sliderMs\`: from a slider's step to the next picture, worker's run included, the middle of ${SLIDES}; budget ${SLIDER_BUDGET_MS} ms. With a card the picture is the small part; what it then asks of the card stands in the next table.`,
    rows,
  };
}
