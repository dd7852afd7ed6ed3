/** The bench page drawn by the processor: how long a picture takes, and a slider's way to the picture. */
import type { Browser, Page } from '@playwright/test';

import { LONG_MS } from '../../site/islands/bench/waits-for-rest.ts';
import { yardstick } from './marches.ts';
import { middle, type Section } from './section.ts';

const SLIDER_BUDGET_MS = 100;
const TASK_BUDGET_MS = 200;
const TURNS = 24;
const SLIDES = 9;

/** A hand on a slider: so many steps a second, for so long. */
const STEPS_A_SECOND = 30;
const DRAG_MS = 3000;
/** Under a moving hand new beds are to follow each other at least this quickly. */
const FOLLOW_BUDGET_MS = 200;

/** Frames of beds shown so far and pictures finished, which the stage tells when asked, and the page's long tasks. */
const WATCH = `
  window.pictures = () => {
    dispatchEvent(new Event('bench-count'));
    const counts = document.querySelector('[role=application]')?.dataset.counts;
    return { frames: 0, without: 0, pictures: 0, finished: 0, ...JSON.parse(counts ?? '{}') };
  };
  window.slider = () => {
    const found = [...document.querySelectorAll('input[type=range]')].find((one) =>
      one.labels?.[0]?.textContent?.includes('Angle of the blade'),
    );
    if (!found) throw new Error('The slider of the angle is not there.');
    return found;
  };
  window.stepped = (slider, up) => {
    const was = slider.value;
    if (up) slider.stepUp();
    else slider.stepDown();
    slider.dispatchEvent(new Event('input', { bubbles: true }));
    return slider.value !== was;
  };
  window.longMs = [];
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) window.longMs.push(duration);
  }).observe({ type: 'longtask', buffered: true });`;

declare global {
  interface Window {
    pictures: () => Record<'frames' | 'without' | 'pictures' | 'finished', number>;
    slider: () => HTMLInputElement;
    stepped: (slider: HTMLInputElement, up: boolean) => boolean;
    longMs: number[];
  }
}

/** The longest the page could not answer since it was asked last, ms; what is under 50 ms no browser tells. */
const longest = (page: Page): Promise<number> =>
  page.evaluate(() => Math.round(Math.max(0, ...window.longMs.splice(0))));

const still = async (page: Page): Promise<void> => {
  for (let before = -1, now = 0; before !== now; now = await page.evaluate(() => window.pictures().finished)) {
    before = now;
    await page.waitForTimeout(1500);
  }
};

/** The bed combed in swirls, worked and pulled: the most there is to draw. */
async function pull(page: Page): Promise<void> {
  await page.getByLabel('How it is drawn').selectOption('swirl');
  await page.getByRole('button', { name: 'Set the tile' }).first().click();
  await page.getByRole('button', { name: 'Slide across the ridges' }).click();
  await still(page);
  await page.getByRole('button', { name: 'Pull the tile' }).first().click();
  await page.getByRole('button', { name: 'Pull without a guess' }).click();
  await still(page);
}

/** The tile made shorter and longer again, as typed. */
async function resize(page: Page): Promise<void> {
  const length = page.getByLabel('Length', { exact: true });
  const was = await length.inputValue();
  for (const next of [String(Number(was) * 0.9), was]) {
    await length.fill(next);
    await page.keyboard.press('Tab');
    await still(page);
  }
}

/** Turning by keys, each as soon as the picture before is finished. */
const turn = (page: Page): Promise<number> =>
  page.evaluate(async (turns) => {
    const stage = document.querySelector<HTMLElement>('[role=application]');
    const begun = performance.now();
    const first = window.pictures().finished;
    for (let n = 0; n < turns; n += 1) {
      const before = window.pictures().finished;
      stage?.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowLeft', bubbles: true }));
      while (window.pictures().finished === before) await new Promise(requestAnimationFrame);
    }
    return (performance.now() - begun) / (window.pictures().finished - first);
  }, TURNS);

/** A slider moved a step: from the event to when the new bed is given to the graphics, and to when they have drawn it, ms. */
const slideOnce = (page: Page, up: boolean): Promise<{ shown: number; drawn: number }> =>
  page.evaluate(async (rising) => {
    const until = async (reached: () => boolean): Promise<void> => {
      while (!reached()) await new Promise((later) => setTimeout(later));
    };
    const slider = window.slider();
    const before = window.pictures();
    const begun = performance.now();
    window.stepped(slider, rising);
    await until(() => window.pictures().frames > before.frames);
    const { without } = window.pictures();
    await until(() => window.pictures().pictures > without);
    const shown = performance.now() - begun;
    await until(() => window.pictures().finished > without);
    return { shown, drawn: performance.now() - begun };
  }, up);

/** The same so many times, and before each how many times slower than the yardstick's this machine is just then; the middles. */
async function slide(page: Page, slower: () => number): Promise<Record<'shown' | 'drawn' | 'slower', number>> {
  const rows: Record<'shown' | 'drawn' | 'slower', number>[] = [];
  for (let n = 0; n < SLIDES; n += 1) {
    await page.waitForTimeout(1500);
    const times = slower();
    rows.push({ slower: times, ...(await slideOnce(page, n % 2 === 1)) });
  }
  const middleOf = (key: 'shown' | 'drawn' | 'slower'): number => middle(rows.map((row) => row[key]));
  return { shown: middleOf('shown'), drawn: middleOf('drawn'), slower: Math.max(1, middleOf('slower')) };
}

/** A slider under a hand that never rests: how many beds are put before the eye, and the longest time between two, ms. */
const drag = (page: Page): Promise<{ beds: number; longest: number }> =>
  page.evaluate(
    async ({ ms, every }) => {
      const slider = window.slider();
      const begun = performance.now();
      let [up, next, last, longest, beds] = [true, 0, begun, 0, 0];
      let { frames } = window.pictures();
      while (performance.now() - begun < ms) {
        if (performance.now() - begun >= next) {
          next += every;
          if (!window.stepped(slider, up)) up = !up;
        }
        const now = window.pictures().frames;
        if (now > frames) {
          longest = Math.max(longest, performance.now() - last);
          last = performance.now();
          beds += now - frames;
          frames = now;
        }
        await new Promise((later) => setTimeout(later));
      }
      return { beds, longest: Math.max(longest, performance.now() - last) };
    },
    { ms: DRAG_MS, every: 1000 / STEPS_A_SECOND },
  );

const BEDS = [
  ['6 × 6 in', 'bench/#bed=1&long=152&wide=152&nw=6.35&nd=6.35&nt=6.35', false],
  ['12 × 24 in', 'bench/', false],
  ['12 × 24 in, swirled, pulled', 'bench/', true],
  ['24 × 48 in, quarter-inch notch', 'bench/#bed=1&long=1219&wide=610&nw=6.35&nd=6.35&nt=6.35', false],
  ['the same, swirled, pulled', 'bench/#bed=1&long=1219&wide=610&nw=6.35&nd=6.35&nt=6.35', true],
] as const;

export async function benchPageSection(browser: Browser, base: string): Promise<Section> {
  const rows: object[] = [];
  const timesSlower = yardstick();
  for (const [bed, path, pulled] of BEDS) {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    await page.addInitScript(WATCH);
    await page.goto(`${base}/${path}`);
    await page.locator('[role=application][data-quality]').waitFor({ timeout: 60_000 });
    await still(page);
    const openTaskMs = await longest(page);
    // All folds open: what they show is drawn anew with each change.
    await page.evaluate(() =>
      document.querySelectorAll('main details').forEach((fold) => fold.setAttribute('open', '')),
    );
    if (pulled) await pull(page);
    const pictureMs = Math.round(await turn(page));
    await still(page);
    const { slower, shown, drawn } = await slide(page, timesSlower);
    const sliderMs = Math.round(shown);
    const dragged = await drag(page);
    await still(page);
    await resize(page);
    const taskMs = await longest(page);
    const isWithin = (ms: number, budgetMs: number): boolean => ms / slower <= budgetMs;
    const quality = await page.locator('[role=application]').getAttribute('data-quality');
    rows.push({
      bed,
      quality,
      slower: Math.round(slower * 10) / 10,
      pictureMs,
      sliderMs,
      sliderBudgetMs: SLIDER_BUDGET_MS,
      seenMs: Math.round(drawn),
      beds: dragged.beds,
      betweenMs: Math.round(dragged.longest),
      betweenBudgetMs: FOLLOW_BUDGET_MS,
      openTaskMs,
      taskMs,
      taskBudgetMs: TASK_BUDGET_MS,
      holds:
        isWithin(sliderMs, SLIDER_BUDGET_MS) &&
        isWithin(taskMs, TASK_BUDGET_MS) &&
        isWithin(dragged.longest, FOLLOW_BUDGET_MS),
    });
    await page.close();
  }
  return {
    title: 'Bench page without a graphics card, 1280 × 800',
    says: `Drawn by the processor (SwiftShader), at the setting the page chose by its own measurement. \`slower\`: how many times slower than the yardstick's machine this one was at that row, by the quicker of two heap marches before each of the slider's steps, the middle; a budget is the yardstick's, so a row holds when its figures divided by that do. \`pictureMs\`: one picture while turning, finished by the graphics. \`sliderMs\`: from a slider's step to the picture of the new bed given to the graphics, worker's run included, the middle of ${SLIDES}; after the pull it shows what the whole work comes to, computed anew, or, where the floor changes and that is reckoned to take over ${LONG_MS.newFloor} ms, the floor combed for it, and the outcome follows when the hand rests. \`seenMs\`: until the processor has drawn it, for which a card takes a few ms. \`beds\`: beds put before the eye while the slider moves ${STEPS_A_SECOND} steps a second for ${DRAG_MS / 1000} s without a rest; \`betweenMs\`: the longest between two of them. \`openTaskMs\`: the longest the page could not answer while it opened; \`taskMs\`: while it was worked, turned, its slider moved and its tile resized, budget ${TASK_BUDGET_MS} ms; every fold is open. With a card the picture is the small part; what it then asks of the card stands in the next table.`,
    rows,
  };
}
