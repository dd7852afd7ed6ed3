import { drawMap, type MapDrawing } from '@sim/view/map/draw-map.ts';
import type { Pen } from '@sim/view/pen.ts';
import { drawPlan } from '@sim/view/map/draw-plan.ts';

import type { FlatFrame } from './picture.ts';

/** Draws what the two-dimensional bench shows: the combed bed, the tile on it, or its back. */
export function drawFlat(pen: Pen, { frame, as }: FlatFrame, drawing: Omit<MapDrawing, 'turnedOver'>): void {
  if (as === 'map') drawMap(pen, frame, { ...drawing, turnedOver: true });
  else drawPlan(pen, frame, { ...drawing, covered: as === 'covered' });
}
