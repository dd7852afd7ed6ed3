import { PlaneGeometry, type BufferAttribute, type BufferGeometry } from 'three';

import type { BedFrame } from '../../bed/types.ts';
import { floorAt, type SlabPlan } from './slab-plan.ts';

/** The lines stand clear of the squeeze-up so that they stay readable. */
export const CHALK_CLEAR_MM = 7;
const CHALK_WIDE_MM = 3.4;
const CHALK_SWATCH_MM = 130;

/** A line snapped on the floor along the tile's length or width, `at` mm from its middle. */
export function chalkStrip(frame: BedFrame, plan: SlabPlan, along: 'length' | 'width', at: number): BufferGeometry {
  const [from, to] = along === 'length' ? [plan.left, plan.right] : [plan.near, plan.far];
  const geometry = new PlaneGeometry(1, 1, 48, 1);
  const place = geometry.getAttribute('position') as BufferAttribute;
  const uv = geometry.getAttribute('uv') as BufferAttribute;
  for (let n = 0; n < place.count; n++) {
    const run = from + (place.getX(n) + 0.5) * (to - from);
    const acrossShare = place.getY(n) + 0.5;
    const off = at + (acrossShare - 0.5) * CHALK_WIDE_MM * (along === 'length' ? 1 : -1);
    const [x, y] = along === 'length' ? [run, off] : [off, run];
    place.setXYZ(n, x, floorAt(frame, x, y) + 0.15, -y);
    uv.setXY(n, run / CHALK_SWATCH_MM, acrossShare);
  }
  geometry.computeVertexNormals();
  return geometry;
}
