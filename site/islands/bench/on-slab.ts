import type { TileSetup } from '@sim/bed/types.ts';
import { slabPlan } from '@sim/view/scene/slab-plan.ts';

import type { Spot } from './stroke.ts';

/** Whether a place lies on the shown piece of floor. */
export const onSlab = ([x, y]: Spot, tile: TileSetup): boolean => {
  const { left, right, near, far } = slabPlan(tile.lengthMm, tile.widthMm);
  return x >= left && x <= right && y >= near && y <= far;
};
