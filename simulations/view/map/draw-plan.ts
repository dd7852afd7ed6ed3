import type { BedFrame } from '../../bed/types.ts';
import { grain } from '../grain.ts';
import { readColour, type ViewPalette } from '../palette.ts';
import type { Pen } from '../pen.ts';
import { emptyField, shadeHeights } from '../scene/shade-heights.ts';
import type { MapPlace } from './draw-map.ts';

/** A bed from above, as light from the left shows it. */
export interface PlanDrawing {
  /** Device pixels. */
  width: number;
  height: number;
  palette: ViewPalette;
  /** The tile lies on the bed: its pieces hide what is under them. */
  covered?: boolean;
}

/** Darkening along the edge of a piece, over a cell. */
const EDGE = 0.72;

/** How light a tile's face is at a cell: 1, darker along its edges, 0 where no piece lies. */
function faceOf(frame: BedFrame, row: number, column: number): number {
  const { columns, rows, gapMm } = frame;
  const lies = (at: number, along: number): boolean =>
    at >= 0 && at < rows && along >= 0 && along < columns && !Number.isNaN(gapMm[at * columns + along]!);
  if (!lies(row, column)) return 0;
  const inside = lies(row - 1, column) && lies(row + 1, column) && lies(row, column - 1) && lies(row, column + 1);
  return inside ? 1 : EDGE;
}

/**
 * The mortar on the floor seen from above, as pixels: ridges lit from the left, valleys darker, bare floor plain; with the
 * tile on it where that is asked for.
 * @returns RGBA, row-major, the greatest y on top
 */
export function paintPlan(frame: BedFrame, drawing: PlanDrawing): Uint8ClampedArray<ArrayBuffer> {
  const { width, height, palette, covered = false } = drawing;
  const field = emptyField(frame.columns, frame.rows, frame.cellMm);
  field.heights.set(frame.mortarMm);
  shadeHeights(field, null);
  const mortar = readColour(palette.mortar);
  const floor = readColour(palette.concrete);
  const glaze = readColour(palette.glaze);
  const pixels = new Uint8ClampedArray(width * height * 4);
  for (let line = 0; line < height; line++) {
    const row = Math.min(frame.rows - 1, Math.floor((1 - (line + 0.5) / height) * frame.rows));
    for (let dot = 0; dot < width; dot++) {
      const column = Math.min(frame.columns - 1, Math.floor(((dot + 0.5) / width) * frame.columns));
      const cell = row * frame.columns + column;
      const slope = (field.shade[cell * 4]! - 127.5) / 127.5;
      const open = field.shade[cell * 4 + 2]! / 255;
      const face = covered ? faceOf(frame, row, column) : 0;
      const ground = face > 0 ? glaze : frame.mortarMm[cell]! > 0.02 ? mortar : floor;
      const light = face || (1 - 0.55 * slope) * (0.45 + 0.6 * open) + 0.06 * (grain(dot, line) - 0.5);
      const at = (line * width + dot) * 4;
      for (let channel = 0; channel < 3; channel++) pixels[at + channel] = ground[channel]! * light;
      pixels[at + 3] = 255;
    }
  }
  return pixels;
}

/** Draws a bed from above, to scale and centred. */
export function drawPlan(pen: Pen, frame: BedFrame, drawing: PlanDrawing): MapPlace {
  const aspect = frame.columns / frame.rows;
  const width = Math.max(1, Math.round(Math.min(drawing.width, drawing.height * aspect)));
  const height = Math.max(1, Math.round(width / aspect));
  const place = {
    left: Math.round((drawing.width - width) / 2),
    top: Math.round((drawing.height - height) / 2),
    width,
    height,
  };
  pen.clearRect(0, 0, drawing.width, drawing.height);
  const pixels = paintPlan(frame, { ...drawing, width, height });
  pen.putImageData(new ImageData(pixels, width, height), place.left, place.top);
  return place;
}
