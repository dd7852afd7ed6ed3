import type { TileSetup } from '@sim/bed/types.ts';

/** From the tile's edge to the blade, and the least side of a bed that the blade does not hide from the viewer, mm. */
const REST_MM = 14;
const HIDDEN_MM = 200;

/**
 * The trowel rests where its last stroke ended, past the tile's edge, leaning the way it was drawn: towards the viewer,
 * and behind a bed so small that the blade would hide it.
 */
export function trowelRest(
  { lengthMm, widthMm }: TileSetup,
  directionDeg: number,
): { x: number; y: number; alongDeg: number } {
  const away = ((directionDeg % 180) + 180) % 180;
  const alongDeg = Math.min(lengthMm, widthMm) < HIDDEN_MM ? away : away + 180;
  const turn = (alongDeg * Math.PI) / 180;
  const [x, y] = [Math.cos(turn), Math.sin(turn)];
  const reach = Math.min(lengthMm / Math.abs(x), widthMm / Math.abs(y)) / 2 + REST_MM;
  return { x: reach * x, y: reach * y, alongDeg };
}
