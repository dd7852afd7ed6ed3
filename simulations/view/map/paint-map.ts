import { CELL_STATE, type BedFrame } from '../../bed/types.ts';
import { grain } from '../grain.ts';
import type { ViewPalette } from '../palette.ts';
import { grainAt, mixTone, patternShare, stateTones } from './state-tones.ts';
import { tileWindow, type TileWindow } from './tile-window.ts';

/** How the underside is to be painted, in device pixels. */
export interface MapPaint {
  width: number;
  height: number;
  palette: ViewPalette;
  /** As the back looks once the tile is turned over its far long edge (true), or as seen through it (false). */
  turnedOver: boolean;
  /** Device pixels to a CSS pixel, so that patterns keep their size on a sharp screen. */
  scale?: number;
  /** Leaves a bare back clear, to be laid over something seen through it. */
  clearOpen?: boolean;
}

/** Slope of the mortar's face, as tone: 1 in 1 towards the light lifts by this many levels of 255. */
const HILLSHADE = 70;

/** Height of mortar that stays on the tile in each cell, mm; a picture needs the step more than the exact share. */
function stays({ state, gapMm }: BedFrame): Float32Array {
  const height = new Float32Array(state.length);
  for (let cell = 0; cell < state.length; cell++)
    if (state[cell] === CELL_STATE.bonded) height[cell] = Math.min(gapMm[cell]!, 6) / 2;
  return height;
}

/** Levels of 255 by which light from the side lifts or sinks each cell of a window. */
function lightOf(frame: BedFrame, window: TileWindow, turnedOver: boolean): Int8Array {
  const { columns, rows, cellMm } = frame;
  const height = stays(frame);
  const light = new Int8Array(columns * rows);
  const towards = turnedOver ? -1 : 1;
  for (let row = window.fromRow; row < window.toRow; row++) {
    const line = row * columns;
    const below = Math.max(0, row - 1) * columns;
    const above = Math.min(rows - 1, row + 1) * columns;
    for (let column = window.fromColumn; column < window.toColumn; column++) {
      const left = height[line + Math.max(0, column - 1)]!;
      const right = height[line + Math.min(columns - 1, column + 1)]!;
      const slope = left - right + towards * (height[above + column]! - height[below + column]!);
      light[line + column] = HILLSHADE * Math.max(-1, Math.min(1, -slope / (4 * cellMm)));
    }
  }
  return light;
}

/** Which cells are bonded, with a rim of others one cell wide: reads just outside the frame need no care. */
function bondedWithRim(frame: BedFrame): Uint8Array {
  const { columns, rows, state } = frame;
  const wide = columns + 2;
  const bonded = new Uint8Array(wide * (rows + 2));
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++)
      if (state[row * columns + column] === CELL_STATE.bonded) bonded[(row + 1) * wide + column + 1] = 1;
  }
  return bonded;
}

/** Where the pixels of one side fall, in cells from the centre of the first one. */
interface Places {
  /** The cell the pixel lies in. */
  nearest: Int32Array;
  /** The cell centre before it, and how far past that one it lies, 0…1. */
  before: Int32Array;
  past: Float64Array;
  /** The grain of sand the pixel lies on. */
  grain: Int32Array;
}

/** Places of so many pixels over the cells from one to before another; `back` runs from the last to the first. */
function placesOf(pixels: number, from: number, to: number, { back, scale }: { back: boolean; scale: number }): Places {
  const places = {
    nearest: new Int32Array(pixels),
    before: new Int32Array(pixels),
    past: new Float64Array(pixels),
    grain: new Int32Array(pixels),
  };
  for (let pixel = 0; pixel < pixels; pixel++) {
    const share = (pixel + 0.5) / pixels;
    const at = from + (back ? 1 - share : share) * (to - from) - 0.5;
    const before = Math.floor(at);
    places.nearest[pixel] = Math.min(to - 1, Math.max(from, Math.round(at)));
    places.before[pixel] = before;
    places.past[pixel] = at - before;
    places.grain[pixel] = grainAt(pixel, scale);
  }
  return places;
}

/**
 * The tile's underside as pixels: bonded mortar, bare back, shut-in air and skinned contact, each by tone and pattern.
 * @returns RGBA, row-major; joints and everything outside the tile are transparent
 */
export function paintMap(frame: BedFrame, paint: MapPaint): Uint8ClampedArray<ArrayBuffer> {
  const { width, height, turnedOver } = paint;
  const scale = paint.scale ?? 1;
  const tones = stateTones(paint.palette);
  const window = tileWindow(frame);
  const light = lightOf(frame, window, turnedOver);
  const bonded = bondedWithRim(frame);
  const wide = frame.columns + 2;
  const across = placesOf(width, window.fromColumn, window.toColumn, { back: false, scale });
  // y grows away from the viewer: the top of a plan is the greatest y; turned over the far edge it is the least.
  const up = placesOf(height, window.fromRow, window.toRow, { back: !turnedOver, scale });
  const pixels = new Uint8ClampedArray(width * height * 4);
  const tone: [number, number, number] = [0, 0, 0];
  for (let line = 0; line < height; line++) {
    const row = up.nearest[line]!;
    const low = (up.before[line]! + 1) * wide + 1;
    const v = up.past[line]!;
    for (let dot = 0; dot < width; dot++) {
      const column = across.nearest[dot]!;
      const cell = row * frame.columns + column;
      let state = frame.state[cell]!;
      if (state === CELL_STATE.outside || state === CELL_STATE.joint) continue;
      const corner = low + across.before[dot]!;
      const low0 = bonded[corner]!;
      const low1 = bonded[corner + 1]!;
      const high0 = bonded[corner + wide]!;
      const high1 = bonded[corner + wide + 1]!;
      const count = low0 + low1 + high0 + high1;
      if (count === 4) state = CELL_STATE.bonded;
      else if (count > 0) {
        // Smooth the step between cells: a front is a line, not a stair.
        const u = across.past[dot]!;
        const share = (low0 * (1 - u) + low1 * u) * (1 - v) + (high0 * (1 - u) + high1 * u) * v;
        if (share >= 0.5) state = CELL_STATE.bonded;
        else if (state === CELL_STATE.bonded) state = nearestBare(frame, column, row);
      }
      if (paint.clearOpen && state === CELL_STATE.open) continue;
      mixTone(state, grain(across.grain[dot]!, up.grain[line]!), patternShare(state, dot, line, scale), tones, tone);
      const at = (line * width + dot) * 4;
      const lit = light[cell]!;
      pixels[at] = tone[0] + lit;
      pixels[at + 1] = tone[1] + lit;
      pixels[at + 2] = tone[2] + lit;
      pixels[at + 3] = 255;
    }
  }
  return pixels;
}

/** The state to show where smoothing takes a bonded cell away: that of a bare neighbour. */
function nearestBare(frame: BedFrame, column: number, row: number): number {
  for (let dy = -1; dy <= 1; dy++) {
    for (let dx = -1; dx <= 1; dx++) {
      const c = column + dx;
      const r = row + dy;
      if (c < 0 || r < 0 || c >= frame.columns || r >= frame.rows) continue;
      const state = frame.state[r * frame.columns + c]!;
      if (state === CELL_STATE.open || state === CELL_STATE.trapped || state === CELL_STATE.skinned) return state;
    }
  }
  return CELL_STATE.bonded;
}
