import { expect as expectSoon, type Locator, type Page } from '@playwright/test';

/** Software graphics on a busy machine take their time. */
const expect = expectSoon.configure({ timeout: 30_000 });

/** How long nothing may be drawn until the picture counts as still, ms. */
const REST_MS = 800;

/** The bench's picture on its page. */
export const stage = (page: Page): Locator => page.getByRole('application');

/** What the picture tells of itself: pictures drawn and beds shown so far, and where the eye stands. */
export interface Told {
  pictures: number;
  frames: number;
  eye: { azimuthDeg: number; elevationDeg: number; distanceMm: number };
}

/** What the picture holds now; it tells when asked by an event. */
export async function told(page: Page): Promise<Told> {
  await page.evaluate(() => dispatchEvent(new Event('bench-count')));
  return JSON.parse((await stage(page).getAttribute('data-counts')) ?? '{}') as Told;
}

/** What it holds once no picture is drawn any more: what was asked for has been drawn, and the machine been measured. */
export async function rested(page: Page): Promise<Told> {
  let last = await told(page);
  await expect(async () => {
    const before = last;
    await page.waitForTimeout(REST_MS);
    last = await told(page);
    expect(last.pictures).toBe(before.pictures);
  }).toPass();
  return last;
}
