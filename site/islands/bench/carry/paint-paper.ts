import type { BedFrame, BedResult } from '@sim/bed/types.ts';
import { drawMap } from '@sim/view/map/draw-map.ts';
import { markPockets } from '@sim/view/map/mark-pockets.ts';
import { tileWindow, windowAspect } from '@sim/view/map/tile-window.ts';
import { penOf } from '@sim/view/pen.ts';
import { drawSection } from '@sim/view/section/draw-section.ts';
import { CLOSE_UP, type Profile } from '@sim/view/section/profile.ts';

import type { Bench } from '../bench.svelte.ts';
import { paperPalette as palette } from '../palette-now.ts';
import { drawFlat } from '../draw-flat.ts';
import { paintMark } from '../paint-mark.ts';
import { flatFrame } from '../picture.ts';
import type { Sheet } from '../sharp-canvas.ts';

/** Dots to a millimetre of paper (about 200 to the inch), and to a CSS pixel, by which patterns are sized. */
const DOTS_A_MM = 8;
const SCALE = (DOTS_A_MM * 25.4) / 96;
/** Sizes on the sheet, mm: the picture's and the map's width, a long tile's map, the section, a swatch of the key. */
const PICTURE_MM = 186;
const MAP_MM = 105;
const LONG_MAP_MM = 182;
const SECTION_MM = [182, 24] as const;
const KEY_MM = [10, 5] as const;

const onPaper = ([width, height]: readonly [number, number]): [number, number] => [
  width * DOTS_A_MM,
  height * DOTS_A_MM,
];

/**
 * Draws on a canvas of the given size, off the page first: of strokes made while it prints a browser may keep the
 * strokes and lose their patterns, of a picture copied whole it keeps the picture.
 */
function paint(onto: HTMLCanvasElement, size: [number, number], draw: (sheet: Sheet) => void): void {
  const canvas = document.createElement('canvas');
  for (const one of [canvas, onto]) [one.width, one.height] = [Math.round(size[0]), Math.round(size[1])];
  const pen = penOf(canvas);
  if (pen) draw({ pen, width: canvas.width, height: canvas.height, scale: SCALE });
  penOf(onto)?.drawImage(canvas, 0, 0);
}

/** Where the kept bed stands in the picture. */
export type KeptPlace = 'left' | 'above' | 'none';

/**
 * The picture as it stands on the screen; the bed from above where there is none in depth.
 * @returns where the kept bed is seen in it, when there is one
 */
export function paintPicture(canvas: HTMLCanvasElement, bench: Bench): KeptPlace {
  const wide = PICTURE_MM * DOTS_A_MM;
  const copied = bench.still?.(wide, (picture) =>
    paint(canvas, [picture.width, picture.height], ({ pen }) => pen.drawImage(picture, 0, 0)),
  );
  const flat = flatFrame(bench);
  // Two beds are laid out by the longer side of the picture.
  if (copied) return canvas.height > canvas.width ? 'above' : 'left';
  if (!flat) return 'none';
  paint(canvas, [wide, wide / 2.5], ({ pen, ...size }) => drawFlat(pen, flat, { ...size, palette }));
  return 'none';
}

/** The section, as close as on the screen. @returns how many times taller than long it is drawn */
export function paintSection(
  canvas: HTMLCanvasElement,
  profile: Profile,
  { thicknessMm, close }: { thicknessMm: number; close: boolean },
): number {
  let taller = 1;
  paint(canvas, onPaper(SECTION_MM), ({ pen, scale, ...size }) => {
    const stretch = close ? CLOSE_UP : {};
    taller = drawSection(pen, { ...size, profile, thicknessMm, palette, pixelScale: scale, ...stretch }).taller;
  });
  return taller;
}

/** Whether a tile is so long that its map takes the sheet's whole width. */
export const isLong = (frame: BedFrame): boolean => windowAspect(tileWindow(frame)) > 3;

/** The coverage map with its numbered pockets. */
export function paintMapSheet(canvas: HTMLCanvasElement, frame: BedFrame, pockets: BedResult['pockets']): void {
  const wide = isLong(frame) ? LONG_MAP_MM : MAP_MM;
  paint(canvas, onPaper([wide, wide / windowAspect(tileWindow(frame))]), ({ pen, ...size }) => {
    const place = drawMap(pen, frame, { ...size, palette, turnedOver: true });
    markPockets(pen, frame, place, pockets, { palette, scale: size.scale });
  });
}

/** A swatch of the map's key. */
export const paintKey = (canvas: HTMLCanvasElement, state: number): void =>
  paint(canvas, onPaper(KEY_MM), (sheet) => paintMark(sheet, state, palette));
