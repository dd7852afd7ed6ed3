import { stateTone, stateTones } from '@sim/view/map/state-tones.ts';
import type { ViewPalette } from '@sim/view/palette.ts';

import type { Sheet } from './sharp-canvas.ts';

/** Fills a swatch as the map paints one state of a cell, so that the key cannot disagree with the map. */
export function paintMark({ pen, width, height, scale }: Sheet, state: number, palette: ViewPalette): void {
  const tones = stateTones(palette);
  const pixels = new ImageData(width, height);
  const tone: [number, number, number] = [0, 0, 0];
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      stateTone(state, x, y, scale, tones, tone);
      pixels.data.set([tone[0], tone[1], tone[2], 255], (y * width + x) * 4);
    }
  }
  pen.putImageData(pixels, 0, 0);
}
