/** A tile on its bed, looked at from all round: for a test that nothing of the bed shows through its face. */
import { levelRim } from '@sim/view/rim.ts';
import { QUALITIES, type Quality } from '@sim/view/scene/quality.ts';
import { createBedRunner } from '@sim/worker/client.ts';
import { startSetup } from '@site/islands/bench/start-setup.ts';

import { benchCanvas } from './bench-canvas.ts';

declare global {
  interface Window {
    /** From each eye, dots of the tile's face that something darker shows through, and how many dots were looked at. */
    specks: (quality: Quality['name']) => Promise<{ specks: number; face: number }[]>;
  }
}

const [WIDE, HIGH] = [782, 326];
/** All round, in steps of the arrow keys: from some eyes the sides of the ridges are seen nearly edge on. */
const EYES = 12;
const STEPS_ROUND = 5;
/** From the arris inwards the face is of one colour. */
const ARRIS_MM = 12;
/** Tones, of 256, by which a dot may be darker than the face beside it. */
const SHADES = 8;

const view = benchCanvas(WIDE, HIGH);
const runner = createBedRunner();

/** The picture's dots, red only: the face is pale, mortar and clay are not. */
function reds(): Uint8ClampedArray {
  const page = new OffscreenCanvas(WIDE, HIGH).getContext('2d')!;
  view.still(WIDE, (picture) => page.drawImage(picture, 0, 0, WIDE, HIGH));
  return page.getImageData(0, 0, WIDE, HIGH).data.filter((_, at) => at % 4 === 0);
}

function look(lengthMm: number, widthMm: number, topMm: number): { specks: number; face: number } {
  const red = reds();
  const box = document.querySelector('canvas')!.getBoundingClientRect();
  let face = 0;
  let specks = 0;
  for (let y = 0; y < HIGH; y++)
    for (let x = 0; x < WIDE; x++) {
      const place = view.pick(box.left + x + 0.5, box.top + y + 0.5, topMm);
      if (!place || Math.abs(place[0]) > lengthMm / 2 - ARRIS_MM || Math.abs(place[1]) > widthMm / 2 - ARRIS_MM)
        continue;
      const at = y * WIDE + x;
      face += 1;
      // The window mirrored in the glaze comes up softly, a speck at once: it is darker than what lies to both its sides.
      if (Math.min(red[at - 2]!, red[at + 2]!) - red[at]! > SHADES) specks += 1;
    }
  return { specks, face };
}

window.specks = async (quality) => {
  const setup = startSetup();
  const { frame } = await runner.run(setup, { onFrame: () => undefined });
  view.setStill(true);
  view.holdQuality(QUALITIES.find(({ name }) => name === quality)!);
  view.show([
    {
      setup,
      frame: levelRim(frame),
      tile: 'down',
      look: 'solid',
      pulled: false,
      trowel: null,
      cut: null,
      neighbours: false,
      air: [],
      sway: { turnDeg: 0, shiftMm: 0 },
    },
  ]);
  view.goTo('bench', true);
  const { lengthMm, widthMm, thicknessMm } = setup.tile;
  const pictures = (): number => view.counts().pictures;
  const seen: { specks: number; face: number }[] = [];
  for (let eye = 0; eye < EYES; eye++) {
    const before = pictures();
    for (let step = 0; step < STEPS_ROUND; step++) view.key('ArrowLeft', false);
    while (pictures() === before) await new Promise((done) => setTimeout(done, 20));
    seen.push(look(lengthMm, widthMm, frame.tileHeightMm + thicknessMm));
  }
  return seen;
};
