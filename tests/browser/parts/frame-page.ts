/** The bench's picture by itself: what one picture asks of the script and of the graphics at each setting. */
import { defaultActions, defaultSetup } from '@sim/bed/defaults.ts';
import type { BedSetup } from '@sim/bed/types.ts';
import { levelRim } from '@sim/view/rim.ts';
import type { BedShown } from '@sim/view/scene/bench-view.ts';
import { QUALITIES, type Quality } from '@sim/view/scene/quality.ts';
import { createBedRunner } from '@sim/worker/client.ts';
import { withCells } from '@site/islands/bench/start-setup.ts';

import { benchCanvas } from './bench-canvas.ts';

export interface FrameAsked {
  tile: Partial<BedSetup['tile']>;
  quality: Quality['name'];
  panes: 1 | 2;
}

export interface FrameCost {
  calls: number;
  triangles: number;
  textures: number;
  /** Script's time for a picture while the eye turns, and while the tile moves and its shadow with it, ms, in order. */
  turningMs: number[];
  movingMs: number[];
  /** Pictures a second while the eye is turned with each of the page's. */
  aSecond: number;
}

declare global {
  interface Window {
    frameCost: (asked: FrameAsked) => Promise<FrameCost>;
  }
}

/** What the graphics do after a call is not the script's: calls that draw are counted and then left out. */
function leaveGraphicsOut(): void {
  const nothing = (): void => undefined;
  WebGL2RenderingContext.prototype.drawElements = nothing;
  WebGL2RenderingContext.prototype.drawArrays = nothing;
}

const PICTURES = 60;
const view = await benchCanvas(880, 440);
const runner = createBedRunner();

let lastMs = 0;
const { requestAnimationFrame: atNext } = window;
window.requestAnimationFrame = (draw) =>
  atNext((now) => {
    const [from, before] = [performance.now(), view.counts().pictures];
    draw(now);
    if (view.counts().pictures > before) lastMs = performance.now() - from;
  });

async function drawn(change: () => void): Promise<number> {
  const before = view.counts().pictures;
  change();
  while (view.counts().pictures === before) await new Promise((done) => setTimeout(done, 0));
  return lastMs;
}

window.frameCost = async ({ tile, quality, panes }) => {
  const setup = defaultSetup();
  Object.assign(setup.tile, tile);
  setup.actions = [{ ...defaultActions.press }];
  const { frame } = await runner.run(withCells(setup), { onFrame: () => undefined });
  const bed: BedShown = {
    setup,
    frame: levelRim(frame),
    tile: 'down',
    look: 'clear',
    pulled: false,
    trowel: { x: 0, y: -100, alongDeg: 90 },
    cut: { along: 'length', atMm: 0 },
    neighbours: true,
    air: [],
    sway: { turnDeg: 0, shiftMm: 0 },
  };
  view.setStill(true);
  view.holdQuality(QUALITIES.find(({ name }) => name === quality)!);
  view.goTo('bench', true);
  const beds = Array.from({ length: panes }, () => bed);
  await drawn(() => view.show(beds));
  const { calls, triangles, textures } = view.counts();
  leaveGraphicsOut();
  const turningMs: number[] = [];
  const movingMs: number[] = [];
  for (let n = 0; n < PICTURES; n++) {
    turningMs.push(await drawn(() => view.key('ArrowLeft', false)));
    const sway = { turnDeg: 0.1 + (n % 2) * 0.4, shiftMm: n % 5 };
    movingMs.push(await drawn(() => view.show(beds.map((one) => ({ ...one, sway })))));
  }
  const [from, before] = [performance.now(), view.counts().pictures];
  for (let n = 0; n < PICTURES; n++) {
    view.key('ArrowLeft', false);
    await new Promise(atNext);
  }
  const aSecond = ((view.counts().pictures - before) * 1000) / (performance.now() - from);
  return { calls, triangles, textures, turningMs, movingMs, aSecond };
};
