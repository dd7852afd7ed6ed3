import type { AirPocket, BedFrame } from '../../bed/types.ts';
import type { ViewPalette } from '../palette.ts';
import type { Pen } from '../pen.ts';
import { MOST_COLUMNS } from '../shut-in.ts';
import type { MapPlace } from './draw-map.ts';
import { tileWindow } from './tile-window.ts';

/** A place on a drawing, device pixels. */
export type Spot = [x: number, y: number];

/** Half the height of a number's plate, and of the dot where its pocket is when it stands aside, CSS pixels. */
const HALF = 9;
const DOT = 2.5;

/** How far aside a number is tried, in plates, and in how many directions. */
const ASIDE = [1.1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5];
const DIRECTIONS = 32;

/** Where a pocket falls on a map of the turned tile, device pixels. */
export function pocketSpot(frame: BedFrame, place: MapPlace, { xMm, yMm }: AirPocket): Spot {
  const window = tileWindow(frame);
  const column = (xMm - frame.originMm[0]) / frame.cellMm + 0.5;
  const row = (yMm - frame.originMm[1]) / frame.cellMm + 0.5;
  return [
    place.left + ((column - window.fromColumn) / (window.toColumn - window.fromColumn)) * place.width,
    // Turned over its far edge, what was near is on top.
    place.top + ((row - window.fromRow) / (window.toRow - window.fromRow)) * place.height,
  ];
}

/**
 * Where numbers stand: each on its spot, or as near beside it as no number before it stands. One that has no room
 * within a few plates stays on its spot.
 * @param spots the most important first
 * @param plate least distance between two numbers
 */
export function standApart(spots: readonly Spot[], plate: number, { left, top, width, height }: MapPlace): Spot[] {
  const stand: Spot[] = [];
  const free = ([x, y]: Spot): boolean => stand.every((other) => Math.hypot(other[0] - x, other[1] - y) >= plate);
  const inside = ([x, y]: Spot): boolean =>
    x - plate / 2 >= left && x + plate / 2 <= left + width && y - plate / 2 >= top && y + plate / 2 <= top + height;
  const beside = ([x, y]: Spot): Spot[] =>
    ASIDE.flatMap((plates) =>
      Array.from({ length: DIRECTIONS }, (_, n): Spot => {
        const turn = (2 * Math.PI * n) / DIRECTIONS;
        return [x + plates * plate * Math.cos(turn), y + plates * plate * Math.sin(turn)];
      }),
    );
  for (const spot of spots)
    stand.push(free(spot) ? spot : (beside(spot).find((one) => inside(one) && free(one)) ?? spot));
  return stand;
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
  pen.strokeStyle = palette.ink;
  const spots = pockets.slice(0, MOST_COLUMNS).map((pocket) => pocketSpot(frame, place, pocket));
  const plates = standApart(spots, 2 * HALF * scale + scale, place);
  const disc = ([x, y]: Spot, radius: number, fill: string): void => {
    pen.beginPath();
    pen.arc(x, y, radius * scale, 0, 2 * Math.PI);
    pen.fillStyle = fill;
    pen.fill();
    pen.stroke();
  };
  spots.forEach((spot, n) => {
    const plate = plates[n]!;
    if (plate === spot) return;
    pen.beginPath();
    pen.moveTo(...spot);
    pen.lineTo(...plate);
    pen.stroke();
    disc(spot, DOT, palette.paper);
  });
  // Where numbers still meet, that of the larger pocket lies on top.
  for (const [n, plate] of [...plates.entries()].reverse()) {
    disc(plate, HALF, palette.paper);
    pen.fillStyle = palette.ink;
    pen.fillText(String(n + 1), plate[0], plate[1] + scale);
  }
}
