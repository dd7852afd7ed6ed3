/** The bench's picture by itself on a small canvas, with beds from the worker: for tests of what it leaves behind. */
import { defaultSetup } from '@sim/bed/defaults.ts';
import type { BedSetup } from '@sim/bed/types.ts';
import type { BedShown } from '@sim/view/scene/bench-view.ts';
import { QUALITIES } from '@sim/view/scene/quality.ts';
import { createBedRunner } from '@sim/worker/client.ts';

import { benchCanvas } from './bench-canvas.ts';

export interface Held {
  pictures: number;
  geometries: number;
  textures: number;
}

declare global {
  interface Window {
    /** Computes so many different beds one after another, from a number on, and draws each; says what is held after. */
    showBeds: (count: number, from: number) => Promise<Held>;
  }
}

const view = await benchCanvas(96, 64);
// What is held does not hang on how finely it is drawn, the time does.
view.holdQuality({ ...QUALITIES[0]!, shadowTexels: 64 });
view.setStill(true);
const runner = createBedRunner();

/** Beds of changing size, comb and pieces, so that every mesh is made anew. */
function bed(n: number): BedSetup {
  const setup = defaultSetup();
  Object.assign(setup.tile, { lengthMm: 60 + 8 * (n % 5), widthMm: 50, bowLengthMm: 0.3 * (n % 2) });
  if (n % 4 === 3) setup.tile.pieces = { along: 2, across: 2, jointMm: 3 };
  Object.assign(setup.trowel, { widthMm: 6, depthMm: 5 + (n % 3), toothMm: 6 });
  setup.comb.pattern = n % 3 === 0 ? 'swirl' : 'straight';
  setup.actions = [{ do: 'press', forceN: 10, atX: 0, atY: 0 }];
  setup.cellMm = 2;
  return setup;
}

// Nobody looks on: pictures follow one another without waiting for a screen.
window.requestAnimationFrame = (draw) => setTimeout(() => draw(performance.now()), 0) as unknown as number;

const drawn = async (): Promise<void> => {
  const before = view.counts().pictures;
  while (view.counts().pictures === before) await new Promise((done) => requestAnimationFrame(done));
};

window.showBeds = async (count, from) => {
  for (let n = from; n < from + count; n += 1) {
    const setup = bed(n);
    const { frame } = await runner.run(setup, { onFrame: () => undefined });
    const shown: BedShown = {
      setup,
      frame,
      tile: n % 2 === 0 ? 'down' : 'turned',
      look: n % 2 === 0 ? 'clear' : 'solid',
      pulled: n % 2 === 1,
      trowel: null,
      cut: n % 6 === 0 ? { along: 'length', atMm: 0 } : null,
      neighbours: n % 4 === 0,
      air: [],
      sway: { turnDeg: 0, shiftMm: 0 },
    };
    // Every tenth time two beds stand side by side, as when they are compared.
    view.show(n % 10 === 9 ? [shown, shown] : [shown]);
    await drawn();
  }
  return view.counts();
};
