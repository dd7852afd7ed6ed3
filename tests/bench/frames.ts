/** What one picture of the bench asks: draw calls, triangles and the script's own time, at each setting. */
import type { Browser } from '@playwright/test';

import { KEPT_UP_TO_MS } from '../../simulations/view/scene/quality.ts';
import type { FrameAsked } from '../browser/parts/frame-page.ts';
import { servePart } from '../browser/parts/serve-part.ts';
import { middle, type Section } from './section.ts';

const SCRIPT_BUDGET_MS = 4;
const CALLS_BUDGET = 60;
const TRIANGLES_BUDGET = 1_000_000;

const BEDS: readonly [name: string, tile: FrameAsked['tile'], panes: FrameAsked['panes']][] = [
  ['12 × 24 in', { lengthMm: 610, widthMm: 305 }, 1],
  ['mosaic of 2 × 2 in', { lengthMm: 305, widthMm: 305, pieces: { along: 6, across: 6, jointMm: 3 } }, 1],
  ['two of 12 × 24 in', { lengthMm: 610, widthMm: 305 }, 2],
];

export async function framesSection(browser: Browser): Promise<Section> {
  const rows: object[] = [];
  const part = await servePart('frame-page.ts');
  try {
    for (const [bed, tile, panes] of BEDS)
      for (const quality of ['light', 'plain', 'fine'] as const) {
        const page = await browser.newPage({ viewport: { width: 960, height: 600 } });
        await page.goto(part.url);
        await page.waitForFunction(() => 'frameCost' in window);
        const cost = await page.evaluate((asked) => window.frameCost(asked), { tile, quality, panes });
        await page.close();
        const turningMs = Math.round(middle(cost.turningMs) * 10) / 10;
        const movingMs = Math.round(middle(cost.movingMs) * 10) / 10;
        rows.push({
          bed,
          quality,
          calls: cost.calls,
          triangles: cost.triangles,
          textures: cost.textures,
          turningMs,
          movingMs,
          aSecond: Math.round(cost.aSecond),
          holds:
            Math.max(turningMs, movingMs) <= SCRIPT_BUDGET_MS &&
            cost.calls <= CALLS_BUDGET * panes &&
            cost.triangles <= TRIANGLES_BUDGET,
        });
      }
  } finally {
    await part.stop();
  }
  return {
    title: 'One picture of the bench: what it asks of script and graphics',
    says: `A pressed bed with everything shown at once (clear tile, cut, neighbours, trowel). \`calls\` and \`triangles\`: one picture, shadows drawn anew. \`turningMs\`, \`movingMs\`: the script's time for a picture while the eye turns and while the tile moves with its shadow, the calls that draw left out; the middle of 60. \`aSecond\`: pictures a second so while the eye turns all the time; a screen's 60 are the most. Budgets: ${CALLS_BUDGET} calls a bed, a million triangles, ${SCRIPT_BUDGET_MS} ms of the 16.7 ms that 60 pictures a second leave, so that a card has ${KEPT_UP_TO_MS} ms for the rest. At the finest setting that asks for at most ${(TRIANGLES_BUDGET * 60) / 1e6} million triangles a second. **The card itself is not measured**: there is none here; what the page reaches without one, at the setting it finds by itself, the table before says. A setting whose picture takes a card over ${KEPT_UP_TO_MS} ms is left again for the one below, and so is one at which the page waits for the card and shows 30 a second where a screen shows 60 (both tested); so of a card 60 a second ask only that it draws the lowest setting in ${KEPT_UP_TO_MS} ms.`,
    rows,
  };
}
