import { CELL_STATE, type BedFrame } from '../../bed/types.ts';
import type { ViewPalette } from '../palette.ts';
import { stateTone, stateTones } from './state-tones.ts';
import { tileWindow } from './tile-window.ts';

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

/** Height of mortar that stays on the tile at a cell, mm; a picture needs the step more than the exact share. */
function stays(frame: BedFrame, column: number, row: number): number {
  const c = Math.min(frame.columns - 1, Math.max(0, column));
  const r = Math.min(frame.rows - 1, Math.max(0, row));
  const cell = r * frame.columns + c;
  return frame.state[cell] === CELL_STATE.bonded ? Math.min(frame.gapMm[cell]!, 6) / 2 : 0;
}

/** Share of bonded cells among the four around a point given in cells from the centre of cell (0,0). */
function bondedAround(frame: BedFrame, x: number, y: number): number {
  const column = Math.floor(x);
  const row = Math.floor(y);
  const u = x - column;
  const v = y - row;
  const at = (c: number, r: number): number => {
    if (c < 0 || r < 0 || c >= frame.columns || r >= frame.rows) return 0;
    return frame.state[r * frame.columns + c] === CELL_STATE.bonded ? 1 : 0;
  };
  return (
    (at(column, row) * (1 - u) + at(column + 1, row) * u) * (1 - v) +
    (at(column, row + 1) * (1 - u) + at(column + 1, row + 1) * u) * v
  );
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
  const acrossCells = window.toColumn - window.fromColumn;
  const upCells = window.toRow - window.fromRow;
  const pixels = new Uint8ClampedArray(width * height * 4);
  const tone: [number, number, number] = [0, 0, 0];
  for (let line = 0; line < height; line++) {
    const share = (line + 0.5) / height;
    // y grows away from the viewer: the top of a plan is the greatest y; turned over the far edge it is the least.
    const y = window.fromRow + (turnedOver ? share : 1 - share) * upCells - 0.5;
    const row = Math.min(window.toRow - 1, Math.max(window.fromRow, Math.round(y)));
    for (let dot = 0; dot < width; dot++) {
      const x = window.fromColumn + ((dot + 0.5) / width) * acrossCells - 0.5;
      const column = Math.min(window.toColumn - 1, Math.max(window.fromColumn, Math.round(x)));
      let state = frame.state[row * frame.columns + column]!;
      if (state === CELL_STATE.outside || state === CELL_STATE.joint) continue;
      // Smooth the step between cells: a front is a line, not a stair.
      const bonded = bondedAround(frame, x, y);
      if (bonded >= 0.5) state = CELL_STATE.bonded;
      else if (state === CELL_STATE.bonded) state = nearestBare(frame, column, row);
      if (paint.clearOpen && state === CELL_STATE.open) continue;
      stateTone(state, dot, line, scale, tones, tone);
      const towards = turnedOver ? -1 : 1;
      const slope =
        stays(frame, column - 1, row) -
        stays(frame, column + 1, row) +
        towards * (stays(frame, column, row + 1) - stays(frame, column, row - 1));
      const light = (HILLSHADE * Math.max(-1, Math.min(1, -slope / (4 * frame.cellMm)))) | 0;
      const at = (line * width + dot) * 4;
      pixels[at] = tone[0] + light;
      pixels[at + 1] = tone[1] + light;
      pixels[at + 2] = tone[2] + light;
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
