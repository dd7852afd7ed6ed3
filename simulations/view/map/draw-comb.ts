import type { CombSetup, TrowelSetup } from '../../bed/types.ts';
import { combField } from '../../trowel/comb.ts';
import { ridgeHeightMm } from '../../trowel/notch.ts';
import { readColour, type ViewPalette } from '../palette.ts';
import type { Pen } from '../pen.ts';

/** A small patch of combed mortar from above. */
export interface CombDrawing {
  /** Device pixels. */
  width: number;
  height: number;
  palette: ViewPalette;
  /** Length of floor across the picture, mm. */
  acrossMm: number;
}

/** Draws a comb as it leaves the floor, to scale, lit from the left: ridges dark-edged, valleys deep. */
export function drawComb(pen: Pen, comb: CombSetup, trowel: TrowelSetup, drawing: CombDrawing): void {
  const { width, height, palette, acrossMm } = drawing;
  const cell = acrossMm / width;
  const field = combField(comb, trowel, cell, acrossMm, cell * height);
  const spot = { heightMm: 0, footMm: 0 };
  const at = (x: number, y: number): number => {
    field((x + 0.5 - width / 2) * cell, (height / 2 - y - 0.5) * cell, spot);
    return spot.heightMm;
  };
  const full = Math.max(0.1, ridgeHeightMm(trowel));
  const ridge = readColour(palette.mortarLight);
  const valley = readColour(palette.mortarDark);
  const pixels = new Uint8ClampedArray(width * height * 4);
  for (let y = 0; y < height; y++) {
    let before = at(-1, y);
    for (let x = 0; x < width; x++) {
      const here = at(x, y);
      const light = 0.35 * Math.max(-1, Math.min(1, (here - before) / full));
      before = here;
      const share = Math.max(0, Math.min(1, here / full + light));
      const to = (y * width + x) * 4;
      for (let channel = 0; channel < 3; channel++)
        pixels[to + channel] = valley[channel]! + (ridge[channel]! - valley[channel]!) * share;
      pixels[to + 3] = 255;
    }
  }
  pen.putImageData(new ImageData(pixels, width, height), 0, 0);
}
