/** A tile on its bed, looked at from all round: for tests that nothing shows, and nothing is shaded, that is not there. */
import { defaultActions } from '@sim/bed/defaults.ts';
import type { BedFrame, BedSetup } from '@sim/bed/types.ts';
import { levelRim } from '@sim/view/rim.ts';
import type { BedShown } from '@sim/view/scene/bench-view.ts';
import { QUALITIES } from '@sim/view/scene/quality.ts';
import { createBedRunner } from '@sim/worker/client.ts';
import { startSetup } from '@site/islands/bench/start-setup.ts';

import { benchCanvas } from './bench-canvas.ts';

declare global {
  interface Window {
    /** From each eye, dots of the tile's face that something darker shows through, and how many dots were looked at. */
    specks: () => Promise<{ specks: number; face: number }[]>;
    /** The floor's tone beside the bed, of 256: bare before the tile comes, and beside a pulled tile one looks through. */
    besideBed: () => Promise<{ bare: number; clear: number }>;
    /** Of the dots where a thin bed lies on the floor under a pulled tile, the share in the bare floor's tone. */
    bareOverThinBed: () => Promise<number>;
  }
}

const [WIDE, HIGH] = [782, 326];
/** All round, in steps of the arrow keys: from some eyes the sides of the ridges are seen nearly edge on. */
const EYES = 3;
const STEPS_ROUND = 25;
/** From the arris inwards the face is of one colour. */
const ARRIS_MM = 12;
/** Tones, of 256, by which a dot may be darker than the face beside it. */
const SHADES = 8;
/** Beside the tile, mm: past what is squeezed out and its own shadow, and within the grid the bed is computed on. */
const BESIDE_MM = [14, 22] as const;

const view = await benchCanvas(WIDE, HIGH);
const runner = createBedRunner();
view.setStill(true);
view.holdQuality(QUALITIES[0]!);
const common = startSetup();
const { lengthMm, widthMm, thicknessMm } = common.tile;

async function bed(setup = common): Promise<{ combed: BedFrame; laid: BedFrame }> {
  const combed: BedFrame[] = [];
  const { frame } = await runner.run(setup, { onFrame: (one) => combed.length === 0 && combed.push(one) });
  return { combed: combed[0]!, laid: levelRim(frame) };
}

async function drawn(change: () => void): Promise<void> {
  const before = view.counts().pictures;
  change();
  while (view.counts().pictures === before) await new Promise((done) => setTimeout(done, 20));
}

const show = (frame: BedFrame, held: Pick<BedShown, 'tile' | 'look' | 'pulled'>, setup = common): Promise<void> =>
  drawn(() =>
    view.show([
      { setup, frame, trowel: null, cut: null, neighbours: false, air: [], sway: { turnDeg: 0, shiftMm: 0 }, ...held },
    ]),
  );

/** The picture's dots, red only: the face is pale, mortar and clay are not. */
function reds(): Uint8ClampedArray {
  const page = new OffscreenCanvas(WIDE, HIGH).getContext('2d')!;
  view.still(WIDE, (picture) => page.drawImage(picture, 0, 0, WIDE, HIGH));
  return page.getImageData(0, 0, WIDE, HIGH).data.filter((_, at) => at % 4 === 0);
}

const middleOf = (values: number[]): number => values.sort((a, b) => a - b)[values.length >> 1]!;

/** The dots that lie where asked on a level plane, by their number in the picture. */
function dots(heightMm: number, asked: (x: number, y: number) => boolean): number[] {
  const box = document.querySelector('canvas')!.getBoundingClientRect();
  const found: number[] = [];
  for (let y = 0; y < HIGH; y++)
    for (let x = 0; x < WIDE; x++) {
      const place = view.pick(box.left + x + 0.5, box.top + y + 0.5, heightMm);
      if (place && asked(...place)) found.push(y * WIDE + x);
    }
  return found;
}

window.specks = async () => {
  const { laid } = await bed();
  await show(laid, { tile: 'down', look: 'solid', pulled: false });
  view.goTo('bench', true);
  const seen: { specks: number; face: number }[] = [];
  for (let eye = 0; eye < EYES; eye++) {
    await drawn(() => {
      for (let step = 0; step < STEPS_ROUND; step++) view.key('ArrowLeft', false);
    });
    const face = dots(
      laid.tileHeightMm + thicknessMm,
      (x, y) => Math.abs(x) < lengthMm / 2 - ARRIS_MM && Math.abs(y) < widthMm / 2 - ARRIS_MM,
    );
    const red = reds();
    // What is mirrored in the glaze comes up softly, a speck at once: it is darker than what lies to both its sides.
    const specks = face.filter((at) => Math.min(red[at - 2]!, red[at + 2]!) - red[at]! > SHADES);
    seen.push({ specks: specks.length, face: face.length });
  }
  return seen;
};

window.besideBed = async () => {
  const { combed, laid } = await bed();
  view.goTo('above', true);
  const [from, to] = BESIDE_MM;
  const right = (x: number, y: number): boolean =>
    x > lengthMm / 2 + from && x < lengthMm / 2 + to && Math.abs(y) < widthMm / 2;
  const tone = (): number => {
    const red = reds();
    return middleOf(dots(0, right).map((at) => red[at]!));
  };
  await show(combed, { tile: 'away', look: 'solid', pulled: false });
  const bare = tone();
  await show(laid, { tile: 'down', look: 'clear', pulled: true });
  return { bare, clear: tone() };
};

window.bareOverThinBed = async () => {
  const trowel = { ...common.trowel, widthMm: 6.35, depthMm: 6.35, toothMm: 6.35 };
  const tile = { ...common.tile, lengthMm: 1219, widthMm: 610 };
  // Ends of the bowed tile are full once it has been moved.
  const actions = [defaultActions.press, defaultActions.slide];
  const thin: BedSetup = { ...common, trowel, tile, actions, cellMm: 4 };
  const { laid } = await bed(thin);
  await show(laid, { tile: 'turned', look: 'solid', pulled: true }, thin);
  await drawn(() => view.goTo('bench', true));
  const red = reds();
  // Before the bed's near edge nothing lies but the floor.
  const floor = middleOf(dots(0, (x, y) => Math.abs(x) < 500 && y > -400 && y < -370).map((at) => red[at]!));
  const over = dots(0, (x, y) => Math.abs(x) > 400 && Math.abs(x) < 580 && Math.abs(y) < 270);
  return over.filter((at) => Math.abs(red[at]! - floor) <= SHADES).length / over.length;
};
