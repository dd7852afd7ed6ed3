import type { AirPocket, BedFrame } from '../../bed/types.ts';
import type { ViewPalette } from '../palette.ts';
import type { Pen } from '../pen.ts';
import { MOST_COLUMNS } from '../shut-in.ts';
import type { MapPlace } from './draw-map.ts';
import { tileWindow } from './tile-window.ts';

/** Half the height of a number's plate, CSS pixels. */
const HALF = 9;

/** Where a pocket falls on a map of the turned tile, device pixels. */
export function pocketSpot(frame: BedFrame, place: MapPlace, { xMm, yMm }: AirPocket): [x: number, y: number] {
  const window = tileWindow(frame);
  const column = (xMm - frame.originMm[0]) / frame.cellMm + 0.5;
  const row = (yMm - frame.originMm[1]) / frame.cellMm + 0.5;
  return [
    place.left + ((column - window.fromColumn) / (window.toColumn - window.fromColumn)) * place.width,
    // Turned over its far edge, what was near is on top.
    place.top + ((row - window.fromRow) / (window.toRow - window.fromRow)) * place.height,
  ];
}

/** Numbers the pockets of shut-in air on a map of the turned tile, the largest first. */
export function markPockets(
  pen: Pen,
  frame: BedFrame,
  place: MapPlace,
  pockets: readonly AirPocket[],
  { palette, scale = 1 }: { palette: ViewPalette; scale?: number },
): void {
  pen.font = `700 ${12 * scale}px system-ui, sans-serif`;
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';
  pen.lineWidth = scale;
  const marked = pockets.slice(0, MOST_COLUMNS).map((pocket, n) => ({ spot: pocketSpot(frame, place, pocket), n }));
  // Where numbers meet, that of the larger pocket lies on top.
  for (const { spot, n } of marked.reverse()) {
    const [x, y] = spot;
    pen.beginPath();
    pen.arc(x, y, HALF * scale, 0, 2 * Math.PI);
    pen.fillStyle = palette.paper;
    pen.fill();
    pen.strokeStyle = palette.ink;
    pen.stroke();
    pen.fillStyle = palette.ink;
    pen.fillText(String(n + 1), x, y + scale);
  }
}
